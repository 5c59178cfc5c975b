"""The work order: the numbers, the order of work, the cautions, a box for each panel."""

from __future__ import annotations

from collections.abc import Iterator

from ..drawing.blocks import Blanks, Block, Heading, NumberRow, Numbers, Paragraph, Remark, Step
from ..lengths import Length
from ..planning import Plan

WORDS = {"stop": "Stop", "warning": "Warning", "note": "Note"}


def words(plan: Plan) -> list[Block]:
    """The whole work order, in the order in which it is read."""
    return [
        Heading(plan.spec.title, first=True),
        Paragraph(_in_short(plan)),
        *_notices(plan, "stop", "warning"),
        Heading("Before you cut"),
        Paragraph(
            "Measure again, with a steel or wooden rule. If one of these is off by more than "
            f"{_show(plan, plan.tape.step * 4)}, do not cut: correct the spec and make the kit again."
        ),
        Blanks(_checks(plan)),
        Heading("The numbers"),
        Numbers(tuple(_numbers(plan))),
        Heading("The order of work"),
        *(Step(i, text, plan.spec.panel.count) for i, text in enumerate(_steps(plan), 1)),
        *_notices(plan, "note", heading="Notes"),
        Heading("Take care"),
        *(Remark(word, text) for word, text in _cautions(plan)),
    ]


def _show(plan: Plan, length: Length) -> str:
    return plan.tape.read(length).plain


def _in_short(plan: Plan) -> str:
    spec, panels = plan.spec, plan.spec.panel.count
    each = "1 panel" if panels == 1 else f"{panels} panels, all alike,"
    return (
        f"{each} {plan.tape.show(spec.panel.width)} wide, with {plan.heading.count} loops on the back of the casing "
        f"of each, for a rod {plan.tape.show(spec.rod.diameter)} thick. Heights are measured up from the old "
        "bottom edge, distances along the top from the left end, the back of the panel towards you."
    )


def _notices(plan: Plan, *levels: str, heading: str = "") -> Iterator[Block]:
    chosen = [notice for notice in plan.notices if notice.level in levels]
    if chosen and heading:
        yield Heading(heading)
    for notice in chosen:
        yield Remark(WORDS[notice.level], notice.text)


def _checks(plan: Plan) -> tuple[NumberRow, ...]:
    figures = plan.figures
    rows = [
        NumberRow("Width of the panel, side hem to side hem", plan.tape.show(plan.spec.panel.width)),
        NumberRow("Old bottom edge up to the floor mark", plan.tape.show(figures["floor_line"].value)),
        NumberRow("Old bottom edge up to the cut line", plan.tape.show(figures["cut_line"].value)),
    ]
    return tuple(rows)


def _numbers(plan: Plan) -> Iterator[NumberRow]:
    for figure in plan.figures.values():
        yield NumberRow(figure.label, plan.tape.show_both(figure.value), figure.working)
    counts = plan.counts
    yield NumberRow(
        "loops in all", str(counts["loops_needed"]), f"{counts['loops']} on each of {counts['panels']} panels"
    )
    if not plan.drop.level:
        for number, mark in enumerate(plan.drop.marks, 1):
            yield NumberRow(
                f"cut line at floor mark {number}",
                plan.tape.show_both(mark.cut),
                f"{plan.tape.show(mark.at)} from the left edge; floor mark {plan.tape.show(mark.floor)}",
            )


def _steps(plan: Plan) -> list[str]:
    loops, hem = plan.heading, plan.hem
    all_loops = plan.counts["loops_needed"]

    def show(length: Length) -> str:
        return plan.tape.show(length)

    return [
        "Measure both bars on every sheet with a steel rule. Each must be right to half a millimetre in 100 mm "
        "(1/64 in in 4 in); if it is not, do not use the sheets: set the printer to actual size, or put the "
        "readings into the spec.",
        "Cut out the templates. Tape the pieces of the spacing strip together, letter to letter: trim one piece at "
        "its match line, lay it on the tongue of the other so that rings, crosses and teeth meet. Prove each join "
        "with a rule over its check length. Glue the hem gauge card and the cut gauge to card.",
        "Mark the floor on each panel as it hangs, with pins, where it is not marked yet.",
        f"Lay the panel flat, back towards you. Lay the cut gauge on each floor mark: mark the cut line and the "
        f"finish line, which stands {show(plan.figures['finish_line'].value)} above the old bottom edge.",
        "Do the three checks above on every panel. Then cut on the cut line, all panels to this point.",
        f"Turn-under: lay the hem gauge card's base edge on the raw edge, mark fold-to line 1, bring the raw edge to "
        f"it and press a fold {show(hem.turn_under)} deep.",
        f"Hem: base edge on that fold, mark fold-to line 2, bring the fold to it and press a hem {show(hem.depth)} "
        f"deep. Pin; stitch {show(hem.stitch_line)} above the finished edge once the panel has hung and is right.",
        f"Cut {plan.counts['strips_needed']} strips {show(loops.strip)} wide across the offcuts. Fold each "
        f"lengthwise, right side in, sew its long edge, turn it, press it {show(loops.width)} wide with the seam "
        "in the middle.",
        f"Lay the tube on the loop ladder and cut {all_loops} loops {show(loops.length)} long.",
        "Pin the spacing strip to the casing, back of the panel towards you, its arrow edge along the top edge and "
        "its ends at the side edges. Mark the centre of every loop.",
        f"Sew the lower end of each loop on the casing's stitch line, {show(loops.lower_allowance)} of it below the "
        f"seam. Turn {show(loops.upper_turn)} under at its upper end and sew that {show(loops.upper_seam)} below the "
        "top edge. Sew through the back of the casing only as far as it stays open for nothing else.",
        "Hang the panel on the rod by its loops. Look, measure to the floor, and only then stitch the hem.",
    ]


def _cautions(plan: Plan) -> Iterator[tuple[str, str]]:
    yield (
        "Heat",
        "Press cloth and templates with a dry iron at the cloth's own setting, never over laser printing; try a "
        "corner first. Keep curtains clear of heaters (fire services ask for at least 12 in, 30 cm, from a fixed "
        "baseboard heater and 3 ft, 90 cm, from a portable one), candles and cookers.",
    )
    yield (
        "Load",
        "Hold the weight of the hung panels against what the maker says of rod and brackets. Where fixings go into "
        "the building, or a ladder is needed and you are not sure, ask a licensed trade.",
    )
    yield "Cords", "No loose or looped cord or long tie within a child's reach (EN 13120, ANSI/WCMA A100.1)."
    if plan.drop.clearance.mm < 0:
        yield "Trips", "This panel lies on the floor: not where people walk, not on stairs, not near an exit."
    yield (
        "Flame",
        "In public places curtains are held to codes (NFPA 701, BS 5867-2, EN 13773). Nothing here says that altered "
        "cloth keeps a rating, and washing can remove a treatment: ask your local authority.",
    )
    yield "Blades", "Cut away from the hand that holds; count the pins out and in again."
