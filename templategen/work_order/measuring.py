"""From the templates to the cut: what is got ready, measured, marked, looked at and checked."""

from __future__ import annotations

from collections.abc import Iterator

from ..document.blocks import Blanks, NumberRow, Paragraph
from ..lengths import NOTHING, Length
from ..planning import Plan
from ..planning.drop import least_cut, marked_by_new
from ..planning.lines import line_of
from ..planning.plan import DropMark
from ..templates import Choices
from ..templates.places import place_of
from ..templates.said import plain
from .cautions import BLADES, HEAT
from .ends import apart, ends
from .pictures.before_the_cut import cut, lines, look, looked_at, pins
from .pictures.finishing import let_down
from .pictures.hung import checked
from .pictures.ready import bars, taping
from .step import Stage, Step


def getting_ready(plan: Plan, choices: Choices) -> Stage:
    """The sheets and the templates, once."""
    return Stage(
        "Get ready",
        (
            Step(
                "Bars",
                "Measure both bars on every sheet with a steel rule. Each must be right to half a millimetre in "
                "100 mm; if one is not, do not use the sheets: set the printer to actual size, or, where a sheet "
                "without a correction is still a little out, write what its bars measure under [printer] and make the "
                "kit again.",
                "once",
                view=bars(),
            ),
            Step(
                "Templates",
                f"Cut out the templates. {_taping(plan, choices)}: at each join cut the right-hand piece along "
                "its heavy trim line and lay it on the left-hand piece, trimmed edge on the match line, so that "
                "letters, distances and rings meet and every little figure is closed. Check with a steel rule: each "
                "length over two or three joins, and the whole, must be right within what stands beside it. Glue "
                "every template that is called a card, and every cut gauge, to stiff card.",
                "once",
                view=taping(),
            ),
        ),
    )


def _taping(plan: Plan, choices: Choices) -> str:
    if not plan.heading.marks:
        return "Tape together what is in pieces"
    heading, strips = plan.heading, choices.strips * (2 if plan.heading.mirrored else 1)
    strip = "half strip" if choices.half_strip else "spacing strip"
    if not heading.spaced:
        strip = f"{heading.thing} strip"
    if strips == 1:
        return f"Tape the {strip} together, if it is in pieces"
    return f"Tape each of the {strips} {strip}s together by its own letters, if it is in pieces"


def unpicks(plan: Plan) -> bool:
    """Whether the cut line comes on the old hem, so that it is let down first."""
    return least_cut(plan.drop) < plan.spec.panel.hem


def measuring(plan: Plan) -> Stage:
    """Hung as it was, marked, held against the numbers; the old hem let down where the cut line comes on it."""
    return Stage("Measure", tuple(_measuring(plan)), (HEAT,) if unpicks(plan) else ())


def _measuring(plan: Plan) -> Iterator[Step]:
    line = line_of(plan.spec)
    yield Step(
        "Pins",
        f"Hang {'each' if plan.spec.panel.count > 1 else 'the'} panel by {_hung_by(plan)}, washed or pressed as it "
        f"will be kept and without weights, until it has settled. Put a pin into the cloth where it meets {line.the}, "
        "at both edges and in the middle, if it is not marked yet: right through, so that it shows on the back.",
        "bought",
        view=pins(plan),
    )
    spec, found = plan.spec, [_width(plan), *(_floor(plan, *each) for each in _checked(plan))]
    flat = "; ".join(f"{row.label[0].lower()}{row.label[1:]}, {row.value}" for row in found)
    said = f"laid flat, {flat}"
    if spec.drop.rod_to_floor is not None:
        said = f"from the top of the rod down to {line.the}, {plan.tape.show(spec.drop.rod_to_floor)}; then, {said}"
    yield Step(
        "Check",
        f"Measure with a steel or wooden rule: {said}. If one is off by more than {_tolerance(plan)}, put it right in "
        "the measurements and make the kit again.",
        "bought",
        view=checked(plan),
    )
    if unpicks(plan):
        yield Step(
            "Unpick",
            "Mark the old bottom edge with a thread, unpick the old hem and press it flat: the cut line comes on it. "
            "From here on the thread is the old bottom edge; the pins stay in.",
            "bought",
            view=let_down(plan),
        )


def _hung_by(plan: Plan) -> str:
    """What it hung by when its floor was marked."""
    if marked_by_new(plan.spec):
        return "its new heading"
    return f"its {plan.spec.panel.heading.style.removeprefix('back ')}"


def marking_the_lines(plan: Plan) -> Stage:
    """Cut line and finish line, by the gauge."""
    name = line_of(plan.spec).name
    pins = "each pin; mark the cut line and the finish line. Join the marks right across with a long rule."
    if plan.drop.above_marks:
        pins = (
            "the highest pin; mark the cut line and the finish line there, and at the same heights above the old "
            "bottom edge at both edges. Join the marks right across with a long rule."
        )
    text = (
        "Lay the panel flat, back towards you. Lay the cut gauge on it, its arrow towards the heading, the left end of "
        f"its {name} mark line on {pins}"
    )
    if not plan.drop.level:
        text += (
            " With the back up, left and right change sides: cut gauge 1, for the left edge as seen from the front, "
            "lies at your right."
        )
    return Stage("Mark", (Step("Lines", text, "bought", view=lines(plan), uses=("cut gauge",)),))


def looking(plan: Plan) -> Stage:
    """The marked panel hung once more as it hung when its floor was marked: how its lines must stand there."""
    each = "each" if plan.spec.panel.count > 1 else "the"
    text = (
        f"Before anything is cut, hang {each} panel again by {_hung_by(plan)} and let it settle. {_stands(plan)}. "
        "If it does not, do not cut: mark it again."
    )
    return Stage("Hang and look", (Step("Look", text, "bought", view=look(plan)),))


def _stands(plan: Plan) -> str:
    """How the finish line stands to the pins, and why it is not where the hem will end.

    By the plan's own heights: the clearance, less the hang shift and what a tuck takes up. Where the finished edge
    comes below the panel's own cloth, under a border, it is the cut line that is seen; where the panel ends above the
    floor there are no pins in it, and it is held against the floor.
    """
    drop, line = plan.drop, line_of(plan.spec)
    mark = drop.gauged[0]
    pins = f"the highest {line.name} pin" if drop.above_marks else f"the {line.name} pins"
    what, height = looked_at(plan)
    below = height - mark.finish
    stands = f"The {what} must stand {apart(plan, height - mark.floor, line.the if mark.floor < NOTHING else pins)}"
    moved = [
        f"{how} {plain(plan, abs(by))}"
        for how, by in (
            (f"the new heading {'lifts it' if drop.hang_shift > NOTHING else 'lets it down'}", drop.hang_shift),
            ("the tuck lifts it", drop.tuck),
            ("below it the hem takes", below),
        )
        if plan.tape.read(by).value
    ]
    return f"{stands}: {' and '.join(moved)}, so that it ends {ends(plan)}" if moved else stands


def cutting(plan: Plan) -> Stage:
    """What is measured again before anything is cut, and the cut."""
    tolerance = _tolerance(plan)
    pieces = plan.offcut.pieces
    keep = f" Keep the offcuts for the {pieces.pieces.thing}s." if pieces and pieces.strips_unpicked else ""
    return Stage(
        "Stop and check before you cut",
        (Step("Cut", f"When they agree, cut on the cut line. Take the pins out.{keep}", "bought", cut(plan)),),
        (BLADES,),
        (
            Paragraph(
                "Measure again, with a steel or wooden rule. If one of these is off by more than "
                f"{tolerance}, do not cut: put it right in the measurements and make the kit again."
            ),
            Blanks(tuple(_checks(plan)), plan.spec.panel.count, "panel"),
        ),
    )


def _tolerance(plan: Plan) -> str:
    """Our choice: four steps of the tape, 1/4 in by sixteenths, is what a slip of the rule comes to and no more."""
    return plain(plan, plan.tape.step * 4)


def _checks(plan: Plan) -> Iterator[NumberRow]:
    yield _width(plan)
    for mark, where in _checked(plan):
        yield _floor(plan, mark, where)
        yield _height(plan, "cut line", mark.cut, where)


def _checked(plan: Plan) -> Iterator[tuple[DropMark, str]]:
    """The floor mark of a level floor, else those at both edges; and where each is, in words that follow its name."""
    drop = plan.drop
    for mark in drop.gauged if drop.level else (drop.marks[0], drop.marks[-1]):
        yield mark, "" if drop.level and not drop.above_marks else f", {place_of(plan, mark)}"


def _width(plan: Plan) -> NumberRow:
    return NumberRow("Width of the panel, side hem to side hem", plan.tape.show(plan.spec.panel.width))


def _floor(plan: Plan, mark: DropMark, where: str) -> NumberRow:
    return _height(plan, f"{line_of(plan.spec).name} mark", mark.floor, where)


def _height(plan: Plan, name: str, height: Length, where: str) -> NumberRow:
    way = "down" if height.mm < 0 else "up"
    return NumberRow(f"Old bottom edge {way} to the {name}{where}", plan.tape.show(abs(height)))
