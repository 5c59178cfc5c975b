"""What the fields must agree on with one another; each check looks only at fields that were read."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from typing import Any

from ..bars import Reading, Readings, faults_in
from ..errors import Fault
from ..lengths import NOTHING
from ..lengths.showing import STEPS
from ..papers import paper_named, unknown_paper
from .cloth_agreement import cloth_faults
from .heading_agreement import heading_faults, made_width
from .typed import as_typed


class Answers:
    """Every field's value by path, as far as it could be read.

    A field that was left out has its default. One that was typed but could not
    be read, or is required and missing, is not in ``values``.
    """

    def __init__(
        self, values: Mapping[str, Any], raw: Mapping[str, Any], misnamed: Collection[str] = ()
    ) -> None:
        self.values = values
        self._raw = raw
        self._misnamed = misnamed

    def typed(self, path: str) -> str:
        """What was typed there; "" where nothing was."""
        if path not in self._raw:
            return ""
        value = self._raw[path]
        return "an empty list" if value == [] else as_typed(value)

    def given(self, path: str) -> bool:
        """Whether it was typed, be it under a name that is not quite right."""
        return path in self._raw or path in self._misnamed or path.partition(".")[0] in self._misnamed

    def all_of(self, *paths: str) -> tuple[Any, ...] | None:
        """The values there; None where one is missing, left out, or could not be read."""
        values = tuple(self.values.get(path) for path in paths)
        return None if None in values else values


def disagreements(answers: Answers) -> Iterator[Fault]:
    """Every fault between fields that are each right in themselves."""
    yield from _drop(answers)
    yield from _hems(answers)
    yield from _border(answers)
    yield from _sides(answers)
    yield from _lining(answers)
    yield from heading_faults(answers)
    yield from _paper(answers)
    yield from _printer(answers)
    yield from _step(answers)
    yield from cloth_faults(answers)


def _drop(answers: Answers) -> Iterator[Fault]:
    marked = answers.values.get("drop.floor_marks")
    if marked != ():  # some marks, or marks that could not be read: then those are the fault
        return
    if not answers.given("drop.rod_to_floor"):
        yield Fault(
            "drop.floor_marks", answers.typed("drop.floor_marks"),
            'nothing says where the floor is; write floor_marks, for example ["13 5/8 in"], or rod_to_floor',
        )
    elif not answers.given("panel.length"):
        yield Fault(
            "panel.length", "",
            "missing, and needed where only drop.rod_to_floor says where the floor is; write the length from "
            "top edge to bottom edge, measured flat, or mark the floor and write drop.floor_marks",
        )


def _hems(answers: Answers) -> Iterator[Fault]:
    pairs = (
        ("hem.turn_under", "hem.depth"), ("panel.turn_under", "panel.hem"), ("sides.turn_under", "sides.hem"),
        ("lining.turn_under", "lining.hem"), ("sides.old_turn_under", "sides.old_hem"),
    )
    for inner, outer in pairs:
        lengths = answers.all_of(inner, outer)
        if not lengths or lengths[0] <= lengths[1]:
            continue
        right = f"deeper than the hem it is turned under in; write at most {outer}, {answers.typed(outer)}"
        if not lengths[1]:
            right = f"nothing can be turned under where {outer} is 0, a raw edge; write 0, or the depth of the hem"
        yield Fault(inner, answers.typed(inner), right)


def _border(answers: Answers) -> Iterator[Fault]:
    lengths = answers.all_of("hem.own_hem", "hem.depth")
    if lengths and lengths[0] * 2 > lengths[1]:
        yield Fault(
            "hem.own_hem", answers.typed("hem.own_hem"),
            f"more than half of hem.depth, {answers.typed('hem.depth')}; write less, or leave it out for a border that "
            "is doubled",
        )


def _lining(answers: Answers) -> Iterator[Fault]:
    if answers.given("lining.cut_shorter") and answers.given("lining.ends_above"):
        yield Fault(
            "lining.ends_above", answers.typed("lining.ends_above"),
            "lining.cut_shorter is there too, and each follows from the other; leave one out",
        )


def _sides(answers: Answers) -> Iterator[Fault]:
    asked = answers.all_of("sides.finished_width", "panel.width")
    split = answers.values.get("sides.split")
    if asked and split and split > 1:
        yield Fault(
            "sides.finished_width", answers.typed("sides.finished_width"),
            "a width and sides.split are both there; leave one out: panels that are split come out alike",
        )
    for one, other in (("old_hem", "old_turn_under"), ("old_turn_under", "old_hem")):
        if answers.given(f"sides.{one}") and not answers.given(f"sides.{other}"):
            yield Fault(f"sides.{other}", "", f"missing, and needed with sides.{one}; write both, or neither")
    if answers.values.get("sides.mitre") and not answers.given("sides.hem"):
        yield Fault(
            "sides.hem", "",
            "missing, and needed with sides.mitre, as the fold follows from it; write the finished depth of the side "
            "hem that the corner has, measured, or the new one's",
        )
    allowances = answers.all_of("sides.hem", "sides.turn_under")
    made = made_width(answers)
    if not asked and made is not None and made <= NOTHING:
        yield Fault(
            "sides.split", answers.typed("sides.split"),
            f"with sides.hem and sides.turn_under at every cut nothing is left of panel.width, "
            f"{answers.typed('panel.width')}; split it in fewer, or take narrower side hems",
        )
    if not asked or not allowances:
        return
    if asked[0] + allowances[0] + allowances[1] > asked[1]:
        yield Fault(
            "sides.finished_width", answers.typed("sides.finished_width"),
            f"with sides.hem and sides.turn_under it takes more than panel.width, {answers.typed('panel.width')}; "
            "write less",
        )


def _paper(answers: Answers) -> Iterator[Fault]:
    named, wide, high, roll = (answers.given(f"paper.{name}") for name in ("name", "width", "height", "roll"))
    if roll and (named or wide or high):
        there = ", ".join(f"paper.{name}" for name in ("name", "width", "height") if answers.given(f"paper.{name}"))
        yield Fault(
            "paper.roll", answers.typed("paper.roll"),
            f"a roll is known by its width alone, and {there} is there too; write one or the other",
        )
    if named and (wide or high):
        yield Fault(
            "paper.name", answers.typed("paper.name"),
            "a name and a size of its own; write the name alone, or width and height without a name",
        )
    elif wide != high and not roll:
        missing, there = ("height", "width") if wide else ("width", "height")
        yield Fault(
            f"paper.{missing}", "",
            f"missing, and needed with paper.{there}; write both, or the paper's name",
        )
    name = answers.values.get("paper.name")
    if named and name is not None and paper_named(name) is None:
        yield Fault("paper.name", answers.typed("paper.name"), unknown_paper(name))


def _printer(answers: Answers) -> Iterator[Fault]:
    paths = "printer.across", "printer.along"
    bar = answers.values.get("printer.bar")
    if answers.given("printer.bar"):
        for path in paths:
            if not answers.given(path):
                yield Fault(path, "", "missing, and needed with printer.bar; write what that bar measures")
    if answers.given("printer.bar") and bar is None:  # it could not be read, and that is the fault
        return
    across, along = (
        Reading(answers.values[path], bar) if answers.given(path) and path in answers.values else None for path in paths
    )
    yield from faults_in(
        Readings(across, along), (paths[0], answers.typed(paths[0])), (paths[1], answers.typed(paths[1]))
    )


def _step(answers: Answers) -> Iterator[Fault]:
    found = answers.all_of("tape_step", "units")
    if found and found[0] not in STEPS[found[1]]:
        unit = "in" if found[1] == "inch" else "mm"
        steps = ", ".join(f"“{step.exact(unit)}”" for step in STEPS[found[1]])
        yield Fault(
            "tape_step", answers.typed("tape_step"),
            f"no tape is divided so where units are {found[1]}; write one of {steps}",
        )
