"""What is said of headings, new and old, must agree with the rest of the spec."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from ..errors import Fault
from ..lengths import NOTHING, Length
from .catalogue import FIELDS
from .finishing import shared_out
from .values import example

if TYPE_CHECKING:
    from .agreement import Answers


def heading_faults(answers: Answers) -> Iterator[Fault]:
    """Every fault between fields of headings and of the panel and rod they are for."""
    yield from _old_heading(answers)
    yield from _loops(answers)
    yield from _rings(answers)
    yield from _tape(answers)
    yield from _inset(answers)
    yield from _eyelets(answers)


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


def _loops(answers: Answers) -> Iterator[Fault]:
    allowances = answers.all_of("heading.lower_allowance", "heading.upper_turn")
    whole = "heading.loop_length" if answers.given("heading.loop_length") else "panel.casing"
    length = answers.all_of(whole) if answers.given(whole) else None  # without a casing, that is the fault
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
    inset, made = answers.values.get("heading.edge_inset"), made_width(answers)
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


def made_width(answers: Answers) -> Length | None:
    """How wide a panel is made; None where it cannot be said."""
    if answers.given("sides.finished_width"):
        return answers.values.get("sides.finished_width")
    found = answers.all_of("panel.width", "sides.split", "sides.hem", "sides.turn_under")
    if found is None:
        return None
    width, split, hem, turn = found
    return shared_out(width, split, hem + turn)
