"""The work order of one plan: what is made, the stages of the work with a box for each panel, every number."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from itertools import count

from ..document.blocks import Block, Gate, Heading, NumberRow, Numbers, Paragraph, Remark
from ..document.blocks import Step as StepBlock
from ..planning import Notice, Plan, marks_said
from ..planning.lines import line_of
from ..templates.places import MOST_PLACES, place_of
from ..templates.said import unit_of
from .headings import HEADING_WORK
from .step import Stage, Step

LEVELS = {"stop": "Stop", "warning": "Warning", "note": "Note"}
NUMBERS = ("drop", "hem", "heading", "hang", "offcut")
"""Sections of the plan by key, what is needed first first; any others follow."""
MOST_NAMED = 4
"""Templates that a step names one by one: our choice; of more, the first and the last."""


def remarks(notices: Iterable[Notice]) -> Iterator[Block]:
    """What looks wrong."""
    return (Remark(LEVELS[notice.level], notice.text) for notice in notices)


def stage_blocks(
    stages: Iterable[Stage], plan: Plan, templates: Sequence[str] = (), first: int = 1
) -> Iterator[Block]:
    """Stages with their cautions, steps and gates; the steps numbered through, from ``first`` on."""
    numbers = count(first)
    for stage in stages:
        yield Heading(stage.title)
        yield from stage.before
        yield from stage.cautions
        for step in stage.steps:
            yield _step_block(step, next(numbers), plan, templates)
        if stage.gate:
            yield Gate(stage.gate, stage.gate_view)


def _step_block(step: Step, number: int, plan: Plan, templates: Sequence[str]) -> Block:
    """With a box for every panel that it is done to: one of those made, or of those bought."""
    boxes = {"once": 1, "panel": plan.panels, "bought": plan.spec.panel.count}[step.on]
    return StepBlock(
        number,
        step.text,
        boxes,
        "" if step.on == "once" else "panel",
        step.title,
        step.view,
        tuple(name for use in step.uses for name in called(use, templates)),
    )


def called(family: str, templates: Sequence[str]) -> tuple[str, ...]:
    """The templates of a family as they are called on paper: "cut gauge 2, north"; of many the first and the last."""
    found = {name: re.match(r" ?(\d*)", name[len(family) :]) for name in templates if name.startswith(family)}
    # Windows share what is alike, so that a part's gauges need not come in the order of their numbers.
    names = sorted(found, key=lambda name: int(each[1] or 0) if (each := found[name]) else 0)
    return tuple(names) if len(names) <= MOST_NAMED else (f"{names[0]} to {names[-1]}",)


def in_short(plan: Plan) -> str:
    """What is made, in a sentence."""
    spec, panels, tape = plan.spec, plan.panels, plan.tape
    made = HEADING_WORK[plan.heading.style].made(plan, plan.heading)
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


def numbers(plan: Plan) -> Iterator[Block]:
    """Every number of the plan, section by section, and the places of the marks along the heading."""
    by_key = {section.key: section for section in plan.sections}
    keys = [key for key in NUMBERS if key in by_key]
    yield Heading("Every number, and how it came about")
    for key in [*keys, *(key for key in by_key if key not in keys)]:
        section = by_key[key]
        rows = [NumberRow(each.label, plan.tape.show_both(each.value), each.working) for each in section.figures]
        rows += [NumberRow(each.label, each.shown, each.working) for each in section.amounts]
        if key == "drop" and not plan.drop.level:
            rows += _cut_lines(plan)
        yield Numbers(tuple(rows), section.title)
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
