"""The work order: the numbers, the order of work, the cautions, a box for each panel."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from ..document.blocks import Blanks, Block, Heading, NumberRow, Numbers, Paragraph, Remark
from ..document.blocks import Step as StepBlock
from ..planning import Notice, Plan, marks_said
from ..planning.drop import least_cut
from ..planning.lines import line_of
from .carried import letting_out, tucking
from .cautions import cautions
from .choices import Choices
from .finishing import corner_steps, lining_steps, side_steps
from .headings import HEADING_WORDS, AnyWords
from .hems import HEM_WORDS
from .places import MOST_PLACES, place_of
from .said import Step, plain, unit_of
from .top_steps import refolding

LEVELS = {"stop": "Stop", "warning": "Warning", "note": "Note"}
NUMBERS = ("drop", "hem", "heading", "hang", "offcut")
"""Sections of the plan by key, what is needed first first; any others follow."""


def words(plan: Plan, choices: Choices | None = None) -> list[Block]:
    """The whole work order, in the order in which it is read; ``choices`` are those that the kit is made with."""
    return [
        Heading("Work order", first=True),
        Paragraph(f"{plan.spec.title}: {in_short(plan)} {reading(plan)}"),
        *remarks(plan.notices),
        *checks(plan),
        Heading("The order of work"),
        *step_blocks(steps_of(plan, choices or Choices()), plan.panels, bought=plan.spec.panel.count),
        *numbers(plan),
        Heading("Take care"),
        *(Remark(word, text) for word, text in cautions(plan)),
    ]


def remarks(notices: Iterable[Notice]) -> Iterator[Block]:
    """What looks wrong."""
    return (Remark(LEVELS[notice.level], notice.text) for notice in notices)


def checks(plan: Plan) -> list[Block]:
    """What is measured again before anything is cut."""
    return [
        Heading("Stop and check before you cut"),
        Paragraph(
            "Measure again, with a steel or wooden rule. If one of these is off by more than "
            f"{plain(plan, plan.tape.step * 4)}, do not cut: put it right in the measurements and make the kit again."
        ),
        Blanks(tuple(_checks(plan)), plan.spec.panel.count),
    ]


def steps_of(plan: Plan, choices: Choices) -> list[Step]:
    """The work, in order."""
    hem, heading = HEM_WORDS[plan.hem.style], HEADING_WORDS[plan.heading.style]
    return [
        *_preparing(plan, choices),
        *side_steps(plan),
        *hem.steps(plan, plan.hem),
        *corner_steps(plan),
        *tucking(plan),
        *refolding(plan, heading.holds_the_fold),
        *lining_steps(plan),
        *heading.steps(plan, plan.heading, choices),
        _hanging(plan, heading),
        *letting_out(plan),
    ]


def step_blocks(steps: Iterable[Step], panels: int, first: int = 1, bought: int = 0) -> Iterator[Block]:
    """Steps with their boxes, numbered from ``first`` on; ``panels`` are made of those ``bought``."""
    for number, (text, on_each) in enumerate(steps, first):
        boxes = bought if on_each == "bought" else panels
        yield StepBlock(number, text, boxes, "panel") if on_each else StepBlock(number, text)


def in_short(plan: Plan) -> str:
    """What is made, in a sentence."""
    spec, panels, tape = plan.spec, plan.panels, plan.tape
    made = HEADING_WORDS[plan.heading.style].made(plan, plan.heading)
    alike = "" if spec.sides.split > 1 and not plan.drop.level else " all alike,"
    alike = " half of them the mirror image of the others," if plan.heading.mirrored else alike
    split = f" made of {spec.panel.count}," if spec.sides.split > 1 else ""
    each = "1 panel," if panels == 1 else f"{panels} panels,{split}{alike} each"
    return (
        f"{each} {tape.show(plan.width)} wide, {made}, "
        f"for a rod {tape.show(spec.rod.diameter)} thick."
    )


def reading(plan: Plan) -> str:
    """From where everything is measured, and what the signs mean."""
    tape = plan.tape
    return (
        "Heights are measured up from the old bottom edge, "
        "distances along the top from the left end, the back of the panel towards you. Every number is rounded by "
        f"itself to {tape.read(tape.step).plain}: “a hair over”, or +, means up to half of that more than it says; "
        "“a hair under”, or −, as much less."
    )


def _checks(plan: Plan) -> Iterator[NumberRow]:
    tape = plan.tape
    yield NumberRow("Width of the panel, side hem to side hem", tape.show(plan.spec.panel.width))
    line, drop = line_of(plan.spec).name, plan.drop
    for mark in drop.gauged if drop.level else (drop.marks[0], drop.marks[-1]):
        where = "" if drop.level and not drop.above_marks else f", {place_of(plan, mark)}"
        for name, height in ((f"{line} mark", mark.floor), ("cut line", mark.cut)):
            way = "down" if height.mm < 0 else "up"
            yield NumberRow(f"Old bottom edge {way} to the {name}{where}", tape.show(abs(height)))


def _preparing(plan: Plan, choices: Choices) -> Iterator[Step]:
    """Steps up to the cut, and whether each is done on every panel."""
    line = line_of(plan.spec)
    yield (
        "Measure both bars on every sheet with a steel rule. Each must be right to half a millimetre in 100 mm; "
        "if one is not, do not use the sheets: set the printer to actual size, or, where a sheet without a correction "
        "is still a little out, write what its bars measure under [printer] and make the kit again.",
        False,
    )
    yield (
        f"Cut out the templates. {_taping(plan, choices)}: at each join cut the right-hand piece along "
        "its heavy trim line and lay it on the left-hand piece, trimmed edge on the match line, so that letters, "
        "distances and rings meet and every little figure is closed. Check with a steel rule: each length over two or "
        "three joins, and the whole, must be right within what stands beside it. Glue every card and cut gauge "
        "to card.",
        False,
    )
    yield (
        f"Hang {'each' if plan.spec.panel.count > 1 else 'the'} panel, washed or pressed as it will be kept and "
        "without weights, until it has settled. Mark "
        f"{line.the} with pins at both edges and in the middle, where it is not marked yet.",
        "bought",
    )
    if least_cut(plan.drop) < plan.spec.panel.hem:
        yield (
            "Mark the old bottom edge with a thread, unpick the old hem and press it flat: the cut line comes on it. "
            "From here on the thread is the old bottom edge; the pins stay in.",
            "bought",
        )
    yield (
        f"Lay the panel flat, back towards you. Lay the cut gauge's {line.name} mark line on {_marking(plan)}",
        "bought",
    )
    several = ": first one panel, which goes through all the steps and is hung and looked at, then the others"
    in_turn = several if plan.spec.panel.count > 1 else ""
    yield f"Do the checks above. When they agree, cut on the cut line{in_turn}.", "bought"


def _marking(plan: Plan) -> str:
    """Which pins the cut gauge is laid on, and how its lines go on."""
    if plan.drop.above_marks:
        return (
            "the highest pin; mark the cut line and the finish line there, and at the same heights above the old "
            "bottom edge at both edges. Join the marks right across with a long rule."
        )
    return "each pin; mark the cut line and the finish line. Join the marks right across with a long rule."


def _hanging(plan: Plan, heading: AnyWords) -> Step:
    hung = heading.hung or f"its {plan.heading.thing}s"
    held_to = heading.held_to(plan, plan.heading)
    return (
        f"Hang the panel on the rod by {hung}. {held_to}{' ' if held_to else ''}Look, measure to "
        f"{line_of(plan.spec).the}, adjust the pinned hem, and "
        f"only then {HEM_WORDS[plan.hem.style].fixed(plan, plan.hem)}.",
        True,
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


def numbers(plan: Plan) -> Iterator[Block]:
    """Every number of the plan, section by section, and the places of the marks along the heading."""
    by_key = {section.key: section for section in plan.sections}
    keys = [key for key in NUMBERS if key in by_key]
    for key in [*keys, *(key for key in by_key if key not in keys)]:
        section = by_key[key]
        rows = [NumberRow(each.label, plan.tape.show_both(each.value), each.working) for each in section.figures]
        rows += [NumberRow(each.label, each.shown, each.working) for each in section.amounts]
        if key == "drop" and not plan.drop.level:
            rows += _cut_lines(plan)
        yield Heading(section.title)
        yield Numbers(tuple(rows))
        if key == "heading" and plan.heading.marks and plan.heading.count <= MOST_PLACES:
            yield Paragraph(_places(plan))


def _places(plan: Plan) -> str:
    centres = (f"{mark.label}: {plan.tape.read(mark.at).label}" for mark in plan.heading.marks)
    places = "; ".join(centre.replace(" ", "\N{NO-BREAK SPACE}") for centre in centres)
    other = " (on right panels from the right end)" if plan.heading.mirrored else ""
    return f"{marks_said(plan)}, in {unit_of(plan)} from the left end{other}: {places}."


def _cut_lines(plan: Plan) -> Iterator[NumberRow]:
    for number, mark in enumerate(plan.drop.marks, 1):
        yield NumberRow(
            f"cut line at mark {number}",
            plan.tape.show_both(mark.cut),
            f"{place_of(plan, mark)}; {line_of(plan.spec).name} mark {plan.tape.show(mark.floor)}",
        )
