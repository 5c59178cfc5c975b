"""The stages of the work, in their order: sides and bottom first, then the top, measured up from the finished hem.

J. W. Stephenson, Cutting and Draping (1905) has the order, and that a panel is tried on the rod before its last
stitching.
"""

from __future__ import annotations

from collections.abc import Iterator

from ..planning import Plan
from ..planning.choices import MADE_WITHIN
from ..planning.lines import line_of
from ..templates import Choices
from ..templates.said import plain
from .carried import letting_out, tucking
from .cautions import HEAT, hanging_cautions
from .ends import ends
from .finishing import corner_steps, lining_steps, side_steps
from .headings import HEADING_WORK
from .hems import HEM_WORK
from .measuring import cutting, getting_ready, looking, marking_the_lines, measuring, unpicks
from .pictures.hung import compared, measured, off
from .step import Stage, Step
from .top import refolding


def stages_of(plan: Plan, choices: Choices, several_windows: bool = False) -> tuple[Stage, ...]:
    """Every stage that has something to do."""
    found = (
        getting_ready(plan, choices),
        measuring(plan),
        marking_the_lines(plan),
        looking(plan),
        cutting(plan),
        Stage("Sides", tuple(side_steps(plan))),
        _pinning(plan),
        _sewing(plan),
        _heading(plan, choices),
        _hanging(plan),
        _adjusting(plan, several_windows),
        Stage("Later", tuple(letting_out(plan))),
    )
    return tuple(stage for stage in found if stage.steps)


def _pinning(plan: Plan) -> Stage:
    """The hem folded, pressed and pinned, and what lies in it; then all panels held against each other."""
    steps = (*HEM_WORK[plan.hem.style].steps(plan, plan.hem), *corner_steps(plan))
    cautions = () if unpicks(plan) else (HEAT,)
    return Stage("Press and pin the hem", steps, cautions, gate=_gate(plan), gate_view=compared(plan))


def _gate(plan: Plan) -> str:
    """What is compared before anything is sewn; nothing where there is one panel alone."""
    if plan.panels == 1:
        return ""
    within = plain(plan, MADE_WITHIN)
    if plan.spec.sides.split > 1 and not plan.drop.level:
        return (
            "All panels to this point. Lay those that hang side by side beside each other, top edges level: each hem "
            f"must run on from the other within {within}."
        )
    return (
        "All panels to this point. Lay them one on another, all the same side up, top edges level: the hems must lie "
        f"edge on edge within {within}."
    )


def _sewing(plan: Plan) -> Stage:
    steps = HEM_WORK[plan.hem.style].sewing(plan, plan.hem)
    return Stage(f"{steps[0].title} the hem", steps)


def _heading(plan: Plan, choices: Choices) -> Stage:
    work = HEADING_WORK[plan.heading.style]
    return Stage(
        work.stage_of(plan.heading),
        (
            *tucking(plan),
            *refolding(plan, work.holds_the_fold),
            *lining_steps(plan),
            *work.steps(plan, plan.heading, choices),
        ),
    )


def _hanging(plan: Plan) -> Stage:
    work, line = HEADING_WORK[plan.heading.style], line_of(plan.spec)
    said = (
        work.put_on(plan, plan.heading),
        f"Hang the panel on the rod by {work.hung_by(plan.heading)} and let it settle.",
        work.held_to(plan, plan.heading),
        f"Measure to {line.the} at both edges and in the middle: the hem must end {ends(plan)}.",
    )
    step = Step(
        "On the rod",
        " ".join(filter(None, said)),
        view=work.on_the_rod(plan, plan.heading) or measured(plan),
        uses=work.holding(plan.heading),
    )
    return Stage("Hang", (step,), hanging_cautions(plan))


def _adjusting(plan: Plan, several_windows: bool) -> Stage:
    near, far = (plain(plan, MADE_WITHIN * times) for times in (2, 1))
    window = " --window NAME" if several_windows else ""
    text = (
        f"Off by more than {far} anywhere? Then templategen adjust SPEC{window} --stitched --hangs \"left {near} low, "
        'middle good, right good" says what to do with the least unpicking; write in it what you measured, left and '
        "right as seen from the front."
    )
    return Stage("Adjust", (Step("Adjust", text, view=off(plan)),))


def step_count(stages: tuple[Stage, ...]) -> int:
    """How many steps there are in all of them."""
    return sum(len(stage.steps) for stage in stages)


def common_steps(stages: list[tuple[Stage, ...]]) -> Iterator[Step]:
    """The steps with which every part begins, word for word, and that are done once."""
    for each in zip(*(part[0].steps for part in stages), strict=False):
        if each[0].on != "once" or any(step != each[0] for step in each):
            return
        yield each[0]
