"""What is said of the cloth and of the rod's load must agree with the rest of the spec."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from ..errors import Fault
from .catalogue import FIELDS
from .values import example

if TYPE_CHECKING:
    from .agreement import Answers

_NEEDED = (
    # a field, one that it is of no use without, and why
    ("rod.bracket_rating", "fabric.weight", "to say what hangs on a bracket"),
    ("fabric.repeat", "fabric.repeat_at", "to say where the pattern falls"),
    ("fabric.repeat_at", "fabric.repeat", "to say where the pattern falls"),
    ("fabric.repeat_above_hem", "fabric.repeat", "to say where the pattern falls"),
    ("panel.lots", "panel.length", "to hold the other lots against it"),
    ("fabric.weight", "panel.length", "to say how much cloth hangs"),
)


def cloth_faults(answers: Answers) -> Iterator[Fault]:
    """Every fault between these fields."""
    missing: dict[str, Fault] = {}
    for path, needed, why in _NEEDED:
        if answers.typed(path) and not answers.given(needed):
            missing.setdefault(needed, _missing(answers, needed, path, why))
    if _to_shrink(answers) and not answers.given("panel.length"):
        missing.setdefault(
            "panel.length", _missing(answers, "panel.length", "fabric.shrinkage", "to say how much it will lose"))
    yield from missing.values()
    yield from _repeats(answers)


def _missing(answers: Answers, needed: str, path: str, why: str) -> Fault:
    field = FIELDS[needed]
    sample = example(field, answers.values.get("units"))
    right = f"missing, and needed with {path} {why}; write {field.about.meaning}, for example {sample}"
    return Fault(needed, answers.typed(needed), right)


def _to_shrink(answers: Answers) -> bool:
    shrinkage = answers.values.get("fabric.shrinkage")
    return shrinkage is not None and shrinkage.value > 0 and not answers.values.get("fabric.washed")


def _repeats(answers: Answers) -> Iterator[Fault]:
    found = answers.all_of("fabric.repeat_at", "panel.count")
    if found and len(found[0]) not in (0, 1, found[1]):
        yield Fault(
            "fabric.repeat_at", answers.typed("fabric.repeat_at"),
            f"one for each panel, or one for all; write {found[1]} lengths, as panel.count is {found[1]}, or one",
        )
