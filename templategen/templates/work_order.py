"""The work order: the numbers, the order of work, the cautions, a box for each panel."""

from __future__ import annotations

from collections.abc import Iterator

from ..drawing.blocks import Blanks, Block, Heading, NumberRow, Numbers, Paragraph, Remark, Step
from ..planning import SECTIONS, Plan

WORDS = {"stop": "Stop", "warning": "Warning", "note": "Note"}


MOST_PLACES = 60
"""Loop centres written out in the work order; beyond that the strip and the plan have them."""
NUMBERS = ("From the floor to the cut", "The new hem", "The loops", "How it hangs", "The offcut")
"""Sections of the plan, what is needed first first."""


def words(plan: Plan) -> list[Block]:
    """The whole work order, in the order in which it is read."""
    panels = plan.spec.panel.count
    return [
        Heading(plan.spec.title, first=True),
        Paragraph(_in_short(plan)),
        *_notices(plan, "stop", "warning"),
        Heading("Stop and check before you cut"),
        Paragraph(
            "Measure again, with a steel or wooden rule. If one of these is off by more than "
            f"{plan.tape.show(plan.tape.step * 4)}, do not cut: correct the spec and make the kit again."
        ),
        Blanks(_checks(plan)),
        Heading("The order of work"),
        *(
            Step(number, text, panels if on_each else 1, "panel")
            for number, (text, on_each) in enumerate([*_preparing(plan), *_hemming(plan), *_heading(plan)], 1)
        ),
        *_numbers(plan),
        *_notices(plan, "note", heading="Notes"),
        Heading("Take care"),
        *(Remark(word, text) for word, text in _cautions(plan)),
    ]


def _in_short(plan: Plan) -> str:
    spec, panels, tape = plan.spec, plan.spec.panel.count, plan.tape
    each, its = ("1 panel,", "its") if panels == 1 else (f"{panels} panels, all alike, each", "its")
    return (
        f"{each} {tape.show(spec.panel.width)} wide, with {plan.heading.count} loops on the back of {its} casing, "
        f"for a rod {tape.show(spec.rod.diameter)} thick. Heights are measured up from the old bottom edge, "
        "distances along the top from the left end, the back of the panel towards you."
    )


def _notices(plan: Plan, *levels: str, heading: str = "") -> Iterator[Block]:
    chosen = [notice for notice in plan.notices if notice.level in levels]
    if chosen and heading:
        yield Heading(heading)
    for notice in chosen:
        yield Remark(WORDS[notice.level], notice.text)


def _checks(plan: Plan) -> tuple[NumberRow, ...]:
    tape, mark = plan.tape, plan.drop.marks[0]
    where = "" if plan.drop.level else ", at the left edge"
    return (
        NumberRow("Width of the panel, side hem to side hem", tape.show(plan.spec.panel.width)),
        NumberRow(f"Old bottom edge up to the floor mark{where}", tape.show(mark.floor)),
        NumberRow(f"Old bottom edge up to the cut line{where}", tape.show(mark.cut)),
    )


def _preparing(plan: Plan) -> Iterator[tuple[str, bool]]:
    """Steps up to the cut, and whether each is done on every panel."""
    tape = plan.tape
    yield (
        "Measure both bars on every sheet with a steel rule. Each must be right to half a millimetre in 100 mm; "
        "if one is not, do not use the sheets: set the printer to actual size, or put the readings into the spec.",
        False,
    )
    yield (
        "Cut out the templates. Tape the spacing strip together, letter to letter: trim one piece at its match line, "
        "lay it on the other so that rings, crosses and teeth meet, and prove the join with a rule over its check "
        "length. Glue the hem gauge card and the cut gauge to card.",
        False,
    )
    yield "Mark the floor with pins on each panel as it hangs, where it is not marked yet.", True
    yield (
        "Lay the panel flat, back towards you. Lay the cut gauge on each floor mark; mark the cut line at its foot, "
        f"and the finish line, {tape.show(plan.drop.marks[0].finish)} above the old bottom edge"
        f"{'' if plan.drop.level else ' at the left edge'}.",
        True,
    )
    yield "Do the checks above. When they agree on every panel, cut on the cut line.", True


def _hemming(plan: Plan) -> Iterator[tuple[str, bool]]:
    hem, tape = plan.hem, plan.tape
    yield (
        "Turn-under: lay the hem gauge card's base edge on the raw edge, mark fold-to line 1, bring the raw edge to "
        f"it and press a fold {tape.show(hem.turn_under)} deep.",
        True,
    )
    yield (
        "Hem: lay the base edge on that fold, mark fold-to line 2, bring the fold to it, press a hem "
        f"{tape.show(hem.depth)} deep, and pin it. It is stitched when the panel has hung and is right.",
        True,
    )


def _heading(plan: Plan) -> Iterator[tuple[str, bool]]:
    loops, tape, counts = plan.heading, plan.tape, plan.counts
    strips = "1 strip" if counts["strips_needed"] == 1 else f"{counts['strips_needed']} strips"
    yield (
        f"Cut {strips} {tape.show(loops.strip)} wide, each as long as a panel is wide, from the offcuts. Fold "
        f"lengthwise, right side in; sew the long edge with a seam allowance of "
        f"{tape.show(plan.spec.heading.seam_allowance)}; turn it and press it {tape.show(loops.width)} wide.",
        False,
    )
    yield (
        f"Lay the tube on the loop ladder and cut {counts['loops_needed']} loops {tape.show(loops.length)} long.",
        False,
    )
    yield (
        "Pin the spacing strip to the casing, back of the panel towards you, its arrow to the top edge and its ends "
        "at the side edges. Mark the centre of every loop.",
        True,
    )
    yield (
        f"Sew the lower end of each loop on the casing's stitch line, {tape.show(loops.lower_allowance)} of it below "
        f"the seam. Turn {tape.show(loops.upper_turn)} of its upper end under and sew that "
        f"{tape.show(loops.upper_seam)} below the top edge. Catch only the back layer of the casing, so that no "
        "stitch shows in front.",
        True,
    )
    yield (
        "Hang the panel on the rod by its loops. Look, measure to the floor, adjust the pinned hem, and only then "
        f"stitch it, {tape.show(plan.hem.stitch_line)} above the finished edge.",
        True,
    )


def _numbers(plan: Plan) -> Iterator[Block]:
    """Every number of the plan, section by section, and the places of the loops."""
    sections = dict(SECTIONS)
    for name in NUMBERS:
        figures = [plan.figures[key] for key in sections[name] if key in plan.figures]
        rows = [NumberRow(each.label, plan.tape.show_both(each.value), each.working) for each in figures]
        if name == "From the floor to the cut" and not plan.drop.level:
            rows += _cut_lines(plan)
        yield Heading(name)
        yield Numbers(tuple(rows))
        if name == "The loops" and plan.heading.count <= MOST_PLACES:
            places = "; ".join(f"{mark.label}: {plan.tape.read(mark.at).label}" for mark in plan.heading.marks)
            unit = "inches" if plan.tape.units == "inch" else "millimetres"
            yield Paragraph(f"Loop centres, in {unit} from the left end: {places}.")


def _cut_lines(plan: Plan) -> Iterator[NumberRow]:
    for number, mark in enumerate(plan.drop.marks, 1):
        yield NumberRow(
            f"cut line at mark {number}",
            plan.tape.show_both(mark.cut),
            f"{plan.tape.show(mark.at)} from the left edge, where the floor mark is {plan.tape.show(mark.floor)}",
        )


def _cautions(plan: Plan) -> Iterator[tuple[str, str]]:
    yield (
        "Heat",
        "Press cloth and templates with a dry iron at the cloth's own setting, never over laser printing; try a "
        "corner first. Keep curtains clear of heaters (fire services ask for at least 12 in, 30 cm, from a fixed "
        "baseboard heater and 3 ft, 90 cm, from a portable one), of candles and of cookers.",
    )
    yield (
        "Load",
        "Hold the weight of the hung panels against what the maker says of rod and brackets. For fixings into the "
        "building, and where you are not sure, ask a licensed trade. Stand on a proper ladder.",
    )
    yield "Cords", "No loose or looped cord and no long tie within a child's reach (EN 13120, ANSI/WCMA A100.1)."
    if plan.drop.clearance.mm < 0:
        yield "Trips", "This panel lies on the floor: not where people walk, not on stairs, not near an exit."
    yield (
        "Flame",
        "In public places curtains are held to codes (NFPA 701, BS 5867-2, EN 13773). Nothing here says that altered "
        "cloth keeps a rating, and washing can remove a treatment: ask your local authority.",
    )
    yield "Blades", "Cut away from the hand that holds. Count the pins out and in again."
