"""Every field of the spec, by its path in the file, read off the model once."""

from __future__ import annotations

import types
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any, Literal, Union, get_args, get_origin

from pydantic import BaseModel
from pydantic.fields import FieldInfo

from ..lengths import Length
from .about import About
from .model import Spec
from .quantities import Quantity
from .table import Measured

Kind = Literal["length", "lengths", "count", "text", "choice", "switch", "quantity"]
"""A switch is true or false; what it means stands for true. A quantity is a number with a unit of its own."""
STYLE = "style"
"""The field that chooses among the kinds of one table, ``heading.style``."""


@dataclass(frozen=True, slots=True)
class SpecField:
    """One field: where it stands, what it takes, and what is said about it."""

    path: str
    """"panel.width"; a field of no table is its own name, "title"."""
    kind: Kind
    about: About
    required: bool
    default: Any
    """What stands where an optional field is left out."""
    choices: tuple[str, ...] = ()
    styles: tuple[str, ...] = ()
    """The styles of its table that have it, "eyelets"; empty where it is there whatever is chosen."""
    quantity: type[Quantity] | None = None
    """Of a quantity, which: a share, a weight."""

    @property
    def table(self) -> str:
        """"panel"; "" for a field of no table."""
        return self.path.rpartition(".")[0]

    @property
    def name(self) -> str:
        return self.path.rpartition(".")[2]

    @property
    def chooser(self) -> str:
        """The path of the field that decides whether this one is there, ``heading.style``; "" where none does."""
        return f"{self.table}.{STYLE}" if self.styles else ""

    def there(self, chosen: Mapping[str, Any]) -> bool:
        """Whether it is there with what is ``chosen``, values by path; of what is not chosen yet, nothing is."""
        return not self.styles or chosen.get(self.chooser) in self.styles


def _fields(model: type[BaseModel], before: str = "") -> Iterator[SpecField]:
    for name, info in model.model_fields.items():
        kinds = _tables_of(info.annotation)
        if _is_choice(info):
            yield from _fields_of_kinds(f"{before}{name}", info, kinds)
        elif kinds:
            yield from _fields(kinds[0], f"{before}{name}.")
        else:
            yield _field(f"{before}{name}", info)


def _fields_of_kinds(path: str, info: FieldInfo, kinds: list[type[BaseModel]]) -> Iterator[SpecField]:
    """The choice among several kinds of one table, and the fields of each; one that several share comes once."""
    styles = tuple(_style(kind) for kind in kinds)
    measured = any(isinstance(item, Measured) for item in info.metadata)
    defaults = [kind.model_fields[STYLE].default for kind in kinds if not kind.model_fields[STYLE].is_required()]
    if not info.is_required():
        defaults = [getattr(info.default, STYLE)]
    usual = defaults[0] if defaults else None
    yield SpecField(f"{path}.{STYLE}", "choice", _about(info), usual is None, usual, styles)
    found: dict[str, list[tuple[str, FieldInfo]]] = {}
    for style, kind in zip(styles, kinds, strict=True):
        for name, each in kind.model_fields.items():
            if name != STYLE and (not measured or name in getattr(kind, "HANGS_BY", ())):
                found.setdefault(name, []).append((style, each))
    for name, having in found.items():
        field = _field(f"{path}.{name}", having[0][1])
        assert all(_field(field.path, each) == field for _, each in having), f"{field.path} has two meanings"
        yield SpecField(
            field.path, field.kind, field.about, measured or field.required, None if measured else field.default,
            field.choices, () if len(having) == len(styles) else tuple(style for style, _ in having),
            field.quantity,
        )  # fmt: skip


def _style(kind: type[BaseModel]) -> str:
    (style,) = get_args(kind.model_fields[STYLE].annotation)
    return str(style)


def _is_choice(info: FieldInfo) -> bool:
    kinds = _tables_of(info.annotation)
    return bool(kinds) and STYLE in kinds[0].model_fields


def _tables(model: type[BaseModel], before: str = "") -> Iterator[tuple[str, str]]:
    for name, info in model.model_fields.items():
        kinds = _tables_of(info.annotation)
        if _is_choice(info):
            about = _about(info)
            yield f"{before}{name}", f"{about.meaning[0].upper()}{about.meaning[1:]}, and what belongs to it."
        elif kinds:
            yield f"{before}{name}", kinds[0].__doc__ or ""
            yield from _tables(kinds[0], f"{before}{name}.")


def _tables_of(annotation: Any) -> list[type[BaseModel]]:
    """The one table that a field is, or the several that it can be; none where it is a value."""
    if get_origin(annotation) in (Union, types.UnionType):
        return [table for each in get_args(annotation) for table in _tables_of(each)]
    return [annotation] if isinstance(annotation, type) and issubclass(annotation, BaseModel) else []


def _about(info: FieldInfo) -> About:
    return next(item for item in info.metadata if isinstance(item, About))


def _field(path: str, info: FieldInfo) -> SpecField:
    kind, choices = _kind(info.annotation)
    required = info.is_required()
    quantity = _quantity(info.annotation)
    return SpecField(path, kind, _about(info), required, None if required else info.default, choices, (), quantity)


def _quantity(annotation: Any) -> type[Quantity] | None:
    """The quantity that a field is; None where it is something else."""
    kinds = get_args(annotation) or (annotation,)
    return next((kind for kind in kinds if isinstance(kind, type) and issubclass(kind, Quantity)), None)


def _kind(annotation: Any) -> tuple[Kind, tuple[str, ...]]:
    if get_origin(annotation) in (Union, types.UnionType):
        annotation = next(item for item in get_args(annotation) if item is not type(None))
    if get_origin(annotation) is Literal:
        return "choice", get_args(annotation)
    if get_origin(annotation) is tuple:
        return "lengths", ()
    if _quantity(annotation):
        return "quantity", ()
    kinds: dict[type, Kind] = {Length: "length", bool: "switch", int: "count", str: "text"}
    return kinds[annotation], ()


def fields_of(model: type[BaseModel], before: str = "") -> Mapping[str, SpecField]:
    """The fields of ``model`` by path, each path with ``before`` in front of it."""
    return types.MappingProxyType({field.path: field for field in _fields(model, before)})


FIELDS: Mapping[str, SpecField] = fields_of(Spec)
"""By path, in the order of the file."""
TABLES: Mapping[str, str] = types.MappingProxyType(dict(_tables(Spec)))
"""What each table holds, by its path."""
