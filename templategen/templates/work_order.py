"""The work order: the numbers, the order of work, the cautions, a box for each panel."""

from __future__ import annotations

from collections.abc import Iterator

from ..drawing.blocks import Blanks, Block, Heading, NumberRow, Numbers, Paragraph, Remark, Step
from ..lengths import Length
from ..planning import SECTIONS, Plan
from .choices import Choices
from .places import MOST_PLACES, place_of

LEVELS = {"stop": "Stop", "warning": "Warning", "note": "Note"}
NUMBERS = ("From the floor to the cut", "The new hem", "The loops", "How it hangs", "The offcut")
"""Sections of the plan, what is needed first first."""


def words(plan: Plan, choices: Choices | None = None) -> list[Block]:
    """The whole work order, in the order in which it is read; ``choices`` are those that the kit is made with."""
    panels = plan.spec.panel.count
    choices = choices or Choices()
    steps = [*_preparing(plan, choices), *_hemming(plan), *_heading(plan, choices)]
    return [
        Heading("Work order", first=True),
        Paragraph(_in_short(plan)),
        *(Remark(LEVELS[notice.level], notice.text) for notice in plan.notices),
        Heading("Stop and check before you cut"),
        Paragraph(
            "Measure again, with a steel or wooden rule. If one of these is off by more than "
            f"{_plain(plan, plan.tape.step * 4)}, do not cut: put it right in the measurements and make the kit again."
        ),
        Blanks(tuple(_checks(plan)), panels),
        Heading("The order of work"),
        *(
            Step(number, text, panels, "panel") if on_each else Step(number, text)
            for number, (text, on_each) in enumerate(steps, 1)
        ),
        *_numbers(plan),
        Heading("Take care"),
        *(Remark(word, text) for word, text in _cautions(plan)),
    ]


def _in_short(plan: Plan) -> str:
    spec, panels, tape = plan.spec, plan.spec.panel.count, plan.tape
    each = "1 panel," if panels == 1 else f"{panels} panels, all alike, each"
    return (
        f"{spec.title}: {each} {tape.show(spec.panel.width)} wide, with {plan.heading.count} loops on the back of its "
        f"casing, for a rod {tape.show(spec.rod.diameter)} thick. Heights are measured up from the old bottom edge, "
        "distances along the top from the left end, the back of the panel towards you. Every number is rounded by "
        f"itself to {tape.read(tape.step).plain}: “a hair over”, or +, means up to half of that more than it says; "
        "“a hair under”, or −, as much less."
    )


def _checks(plan: Plan) -> Iterator[NumberRow]:
    tape = plan.tape
    yield NumberRow("Width of the panel, side hem to side hem", tape.show(plan.spec.panel.width))
    ends = plan.drop.marks[:1] if plan.drop.level else (plan.drop.marks[0], plan.drop.marks[-1])
    for mark in ends:
        where = "" if plan.drop.level else f", {place_of(plan, mark)}"
        for name, height in (("floor mark", mark.floor), ("cut line", mark.cut)):
            way = "down" if height.mm < 0 else "up"
            yield NumberRow(f"Old bottom edge {way} to the {name}{where}", tape.show(abs(height)))


def _preparing(plan: Plan, choices: Choices) -> Iterator[tuple[str, bool]]:
    """Steps up to the cut, and whether each is done on every panel."""
    yield (
        "Measure both bars on every sheet with a steel rule. Each must be right to half a millimetre in 100 mm; "
        "if one is not, do not use the sheets: set the printer to actual size, or, where a sheet without a correction "
        "is still a little out, write what its bars measure under [printer] and make the kit again.",
        False,
    )
    yield (
        f"Cut out the templates. {_taping(choices)}, if it is in pieces: at each join cut the right-hand piece along "
        "its heavy trim line and lay it on the left-hand piece, trimmed edge on the match line, so that letters, "
        "distances and rings meet and every little figure is closed. Check with a steel rule: each length over two or "
        "three joins, and the whole, must be right within what stands beside it. Glue the hem gauge card and the cut "
        "gauge to card.",
        False,
    )
    yield (
        "Hang each panel, washed or pressed as it will be kept and without weights, until it has settled. Mark the "
        "floor with pins at both edges and in the middle, where it is not marked yet.",
        True,
    )
    if min(mark.cut for mark in plan.drop.marks) < plan.spec.panel.hem:
        yield (
            "Mark the old bottom edge with a thread, unpick the old hem and press it flat: the cut line comes on it. "
            "From here on the thread is the old bottom edge; the pins stay in.",
            True,
        )
    yield (
        "Lay the panel flat, back towards you. Lay the cut gauge's floor mark line on each pin; mark the cut line and "
        "the finish line. Join the marks right across with a long rule.",
        True,
    )
    several = ": first one panel, which goes through all the steps and is hung and looked at, then the others"
    in_turn = several if plan.spec.panel.count > 1 else ""
    yield f"Do the checks above. When they agree, cut on the cut line{in_turn}.", True


def _hemming(plan: Plan) -> Iterator[tuple[str, bool]]:
    hem = plan.hem
    yield (
        "Turn-under: lay the hem gauge card's base edge on the raw edge, mark fold-to line 1, bring the raw edge to "
        f"the mark and press a fold {_plain(plan, hem.turn_under)} deep.",
        True,
    )
    yield (
        "Hem: lay the base edge on that fold, mark fold-to line 2, bring the fold to the mark, press a hem "
        f"{_plain(plan, hem.depth)} deep, and pin it. It is stitched when the panel has hung and is right.",
        True,
    )


def _heading(plan: Plan, choices: Choices) -> Iterator[tuple[str, bool]]:
    loops = plan.heading
    yield f"{_strips(plan)} Press the tube {_plain(plan, loops.width)} wide.", False
    yield (
        f"Lay the tube on the loop ladder and cut {plan.counts['loops_needed']} loops "
        f"{_plain(plan, loops.length)} long. Neaten the ends with a close zigzag.",
        False,
    )
    yield _marking(plan, choices), True
    yield (
        "By hand, and through the back layer of the casing only, so that no stitch shows in front: sew the lower end "
        f"of each loop to the casing's stitch line, {_plain(plan, loops.lower_allowance)} of it below the seam; turn "
        f"{_plain(plan, loops.upper_turn)} of its upper end under, towards the casing, and sew that fold "
        f"{_plain(plan, loops.upper_seam)} below the panel's top edge.",
        True,
    )
    yield (
        "Hang the panel on the rod by its loops. Look, measure to the floor, adjust the pinned hem, and only then "
        f"stitch it, {_plain(plan, plan.hem.stitch_line)} above the finished edge.",
        True,
    )


def _taping(choices: Choices) -> str:
    strip = "half strip" if choices.half_strip else "spacing strip"
    if choices.strips == 1:
        return f"Tape the {strip} together"
    return f"Tape each of the {choices.strips} {strip}s together by its own letters"


def _marking(plan: Plan, choices: Choices) -> str:
    """How the strip is laid to the casing: once, or half by half."""
    several = (
        f" There are {choices.strips} of them, all alike: as many panels can be marked at once."
        if choices.strips > 1
        else ""
    )
    if not choices.half_strip:
        return (
            f"Pin {'a' if several else 'the'} spacing strip to the back of the casing, its upper edge on the panel's "
            f"top edge, its ends at the side edges. Mark the centre of every loop.{several}"
        )
    middle = f" That end is mark {plan.heading.count // 2 + 1} itself." if plan.heading.count % 2 else ""
    return (
        "Measure the panel's width and mark its centre on the top edge with a pin. The back towards you, pin "
        f"{'a' if several else 'the'} half strip to the casing, number 1 upright, its upper edge on the panel's top "
        "edge, its left end at the left side edge. Its other end must come to the centre; if not, measure the panel "
        f"again.{middle} Mark the centre of every loop of the left half. Turn the strip end for end, its other long "
        "edge to the top edge, so that the other numbers are upright and the same end lies at the centre; mark the "
        f"right half.{several}"
    )


def _strips(plan: Plan) -> str:
    """How the strips for the loops are come by, and sewn."""
    offcut, panel = plan.offcut, plan.spec.panel
    needed, wide = offcut.strips_needed, _plain(plan, plan.heading.strip)
    sew = (
        "Fold it lengthwise, right side in; sew the long edge with a seam allowance of "
        f"{_plain(plan, plan.spec.heading.seam_allowance)}, and turn it."
    )
    if not needed or not offcut.strips_unpicked:
        return f"Make a strip of other cloth {wide} wide, in pieces long enough for whole loops. {sew}"
    hemmed = needed > offcut.strips_clear and bool(panel.hem)
    first = "Let down the old hem of the offcuts and press it flat. " if hemmed else ""
    source = "from the offcuts"
    if needed > offcut.strips_unpicked:
        source = f"{offcut.strips_unpicked} of them from the offcuts and the rest from other cloth"
    cut = "a strip" if needed == 1 else f"{needed} strips"
    return (
        f"{first}Cut {cut} {wide} wide, as long as a panel is wide with its side hems unpicked, {source}. {sew}"
    )


def _plain(plan: Plan, length: Length) -> str:
    """A length as it is said in a sentence about the work: what rounding took away is said with the numbers."""
    return plan.tape.read(length).plain


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
            centres = (f"{mark.label}: {plan.tape.read(mark.at).label}" for mark in plan.heading.marks)
            places = "; ".join(centre.replace(" ", "\N{NO-BREAK SPACE}") for centre in centres)
            unit = "inches" if plan.tape.units == "inch" else "millimetres"
            yield Paragraph(f"Loop centres, in {unit} from the left end: {places}.")


def _cut_lines(plan: Plan) -> Iterator[NumberRow]:
    for number, mark in enumerate(plan.drop.marks, 1):
        yield NumberRow(
            f"cut line at mark {number}",
            plan.tape.show_both(mark.cut),
            f"{place_of(plan, mark)}; floor mark {plan.tape.show(mark.floor)}",
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
