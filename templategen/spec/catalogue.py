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

Kind = Literal["length", "lengths", "count", "text", "choice", "switch"]
"""A switch is true or false; what it means stands for true."""


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

    @property
    def table(self) -> str:
        """"panel"; "" for a field of no table."""
        return self.path.rpartition(".")[0]

    @property
    def name(self) -> str:
        return self.path.rpartition(".")[2]


def _fields(model: type[BaseModel], before: str = "") -> Iterator[SpecField]:
    for name, info in model.model_fields.items():
        if table := _table(info):
            yield from _fields(table, f"{before}{name}.")
        else:
            yield _field(f"{before}{name}", info)


def _tables(model: type[BaseModel], before: str = "") -> Iterator[tuple[str, str]]:
    for name, info in model.model_fields.items():
        if table := _table(info):
            yield f"{before}{name}", table.__doc__ or ""
            yield from _tables(table, f"{before}{name}.")


def _table(info: FieldInfo) -> type[BaseModel] | None:
    annotation = info.annotation
    return annotation if isinstance(annotation, type) and issubclass(annotation, BaseModel) else None


def _field(path: str, info: FieldInfo) -> SpecField:
    about = next(item for item in info.metadata if isinstance(item, About))
    kind, choices = _kind(info.annotation)
    required = info.is_required()
    return SpecField(path, kind, about, required, None if required else info.default, choices)


def _kind(annotation: Any) -> tuple[Kind, tuple[str, ...]]:
    if get_origin(annotation) in (Union, types.UnionType):
        annotation = next(item for item in get_args(annotation) if item is not type(None))
    if get_origin(annotation) is Literal:
        return "choice", get_args(annotation)
    if get_origin(annotation) is tuple:
        return "lengths", ()
    kinds: dict[type, Kind] = {Length: "length", bool: "switch", int: "count", str: "text"}
    return kinds[annotation], ()


FIELDS: Mapping[str, SpecField] = types.MappingProxyType({field.path: field for field in _fields(Spec)})
"""By path, in the order of the file."""
TABLES: Mapping[str, str] = types.MappingProxyType(dict(_tables(Spec)))
"""What each table holds, by its path."""
