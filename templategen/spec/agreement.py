"""What the fields must agree on with one another; each check looks only at fields that were read."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from typing import Any

from ..bars import Reading, Readings, faults_in
from ..errors import Fault
from ..lengths import NOTHING, Length
from ..lengths.showing import STEPS
from ..papers import paper_named, unknown_paper
from .catalogue import FIELDS
from .cloth_agreement import cloth_faults
from .finishing import shared_out
from .typed import as_typed
from .values import example


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
    yield from _old_heading(answers)
    yield from _hems(answers)
    yield from _border(answers)
    yield from _sides(answers)
    yield from _lining(answers)
    yield from _loops(answers)
    yield from _rings(answers)
    yield from _tape(answers)
    yield from _inset(answers)
    yield from _eyelets(answers)
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


def _old_heading(answers: Answers) -> Iterator[Fault]:
    old, new = answers.values.get("panel.heading.style"), answers.values.get("heading.style")
    hung_by = answers.typed("drop.hung_by")
    if hung_by == '"casing"' and old not in ("casing", None):
        yield Fault(
            "drop.hung_by", hung_by,
            f"the panel came with {old}, by panel.heading.style; write \"old heading\" or \"new heading\"",
        )
    casing = answers.values.get("panel.casing")
    if casing is None or casing:
        return
    need = "the panel came with a casing" if old == "casing" else ""
    if new == "back loops" and not need:
        need = "loops are sewn to one"
    if need:
        missing = "no casing at all" if answers.given("panel.casing") else "missing"
        yield Fault(
            "panel.casing", answers.typed("panel.casing"),
            f"{missing}, and {need}; write {FIELDS['panel.casing'].about.meaning}, for example "
            f"{example(FIELDS['panel.casing'], answers.values.get('units'))}",
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
    made = _made_width(answers)
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


def _made_width(answers: Answers) -> Length | None:
    """How wide a panel is made; None where it cannot be said."""
    if answers.given("sides.finished_width"):
        return answers.values.get("sides.finished_width")
    found = answers.all_of("panel.width", "sides.split", "sides.hem", "sides.turn_under")
    if found is None:
        return None
    width, split, hem, turn = found
    return shared_out(width, split, hem + turn)


def _loops(answers: Answers) -> Iterator[Fault]:
    allowances = answers.all_of("heading.lower_allowance", "heading.upper_turn")
    whole = "heading.loop_length" if answers.given("heading.loop_length") else "panel.casing"
    length = answers.all_of(whole)
    if allowances and length and allowances[0] + allowances[1] >= length[0]:
        blamed = next(
            (path for path in ("heading.loop_length", "heading.upper_turn", "heading.lower_allowance")
             if answers.given(path)),
            "panel.casing",
        )
        loop = "the loop" if whole == "heading.loop_length" else "the loop, as long as panel.casing is deep,"
        yield Fault(
            blamed, answers.typed(blamed),
            "heading.lower_allowance and heading.upper_turn together take all of "
            f"{loop} {answers.typed(whole)}; write a longer heading.loop_length or smaller allowances",
        )


def _rings(answers: Answers) -> Iterator[Fault]:
    if answers.values.get("heading.hooks_on") == "gliders" and answers.given("heading.ring_inside"):
        yield Fault(
            "heading.ring_inside", answers.typed("heading.ring_inside"),
            'not used where heading.hooks_on is "gliders"; leave it out, or write hooks_on = "rings"',
        )
    lengths = answers.all_of("panel.heading.drop", "rod.diameter")
    if answers.values.get("panel.heading.style") == "rings" and lengths and lengths[0] < lengths[1]:
        yield Fault(
            "panel.heading.drop", answers.typed("panel.heading.drop"),
            f"less than the rod is thick, {answers.typed('rod.diameter')}, and a ring round it holds the cloth below "
            "its underside; measure from the top of the rod, and write at least as much",
        )


def _tape(answers: Answers) -> Iterator[Fault]:
    if answers.given("heading.pocket") and answers.given("heading.set_below"):
        yield Fault(
            "heading.pocket", answers.typed("heading.pocket"),
            "heading.set_below says too where the hooks hold; write one or the other",
        )
    lengths = answers.all_of("heading.pocket", "heading.tape_width")
    if lengths and lengths[0] > lengths[1]:
        width = answers.typed("heading.tape_width") or "1 in where it is left out"
        yield Fault(
            "heading.pocket", answers.typed("heading.pocket"),
            f"below the tape's lower edge; write at most heading.tape_width, {width}",
        )


def _inset(answers: Answers) -> Iterator[Fault]:
    inset, made = answers.values.get("heading.edge_inset"), _made_width(answers)
    if inset is None or made is None or not NOTHING < made <= inset * 2:
        return
    half = f"half of panel.width, {answers.typed('panel.width')}"
    if answers.given("sides.finished_width"):
        half = f"half of sides.finished_width, {answers.typed('sides.finished_width')}"
    elif answers.values.get("sides.split") != 1:
        half = f"half of what each panel is wide once it is split in {answers.typed('sides.split')}"
    yield Fault(
        "heading.edge_inset", answers.typed("heading.edge_inset"),
        f"past the middle of the panel; write less than {half}",
    )


def _eyelets(answers: Answers) -> Iterator[Fault]:
    for inner, outer, why in (
        ("heading.eyelet_inside", "heading.eyelet_outside", "an eyelet's rim lies outside its opening"),
        ("heading.cut_circle", "heading.eyelet_outside", "the ring has to cover the edge of the hole"),
    ):
        lengths = answers.all_of(inner, outer)
        if lengths and lengths[0] >= lengths[1]:
            yield Fault(
                inner, answers.typed(inner),
                f"as wide as the whole ring or wider, and {why}; write less than {outer}, {answers.typed(outer)}",
            )
    old = answers.all_of("panel.heading.eyelet_centre", "panel.heading.eyelet_inside")
    if old and old[0] * 2 <= old[1]:
        yield Fault(
            "panel.heading.eyelet_centre", answers.typed("panel.heading.eyelet_centre"),
            "so near the top edge that the eyelet's opening would run out of the cloth; write more than half of "
            f"panel.heading.eyelet_inside, {answers.typed('panel.heading.eyelet_inside')}",
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
