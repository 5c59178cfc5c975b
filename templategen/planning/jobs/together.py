"""What is kept alike over the windows: how each finish line follows, and which window's numbers contradict it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from types import MappingProxyType

from ...lengths import NOTHING, Length
from ...spec import Spec, Together
from ..choices import MADE_WITHIN
from ..drop import hang_when_done
from ..figures import Figure, Notice
from ..making import make_plan
from ..plan import Plan
from ..wording import near, say, term
from .plan import WindowPlan

Kept = tuple[tuple[WindowPlan, ...], list[Notice]]


def keep_alike(windows: tuple[WindowPlan, ...], together: Together) -> Kept:
    """The windows as they come out when ``together`` is kept, and a notice for each that contradicts it."""
    match together.keep:
        case "floor line":
            return windows, _off_the_line(windows)
        case "head height":
            return windows, _heads(windows)
        case "finished length":
            return _one_length(windows, together.finished_length)
    return windows, []


def _off_the_line(windows: Sequence[WindowPlan]) -> list[Notice]:
    """Hems that do not hang as far above their floor as most of the others."""
    tape = windows[0].plan.tape
    asked = [window.plan.drop.clearance for window in windows]
    usual = max(asked, key=asked.count)
    return [
        Notice(
            "hems_off_line",
            "warning",
            f"One floor line is kept, and the hem of {window.label} is to hang {say(tape, window.plan.drop.clearance)} "
            f"above the floor, the others {say(tape, usual)}: write one drop.clearance for all.",
        )
        for window in windows
        if window.plan.drop.clearance != usual
    ]


def head_height(plan: Plan) -> Length | None:
    """From the top of the rod down to the floor, as the window's own numbers have it; None without panel.length.

    The finished panel hangs its length and its heading's offset below the top
    of the rod, and the floor lies its clearance lower.
    """
    finished = finished_length(plan)
    return None if finished is None else finished + hang_when_done(plan.spec).offset + plan.drop.clearance


def finished_length(plan: Plan) -> Length | None:
    """Top edge to finished bottom edge, at the first floor mark; None where the panel's length is not known."""
    figure = plan.figures.get("finished_length")
    return figure.value if figure else None


def _heads(windows: Sequence[WindowPlan]) -> list[Notice]:
    """Rods that, by their windows' numbers, hang higher or lower than the middle one of all."""
    tape = windows[0].plan.tape
    heights = [(window, height) for window in windows if (height := head_height(window.plan)) is not None]
    notices = [
        Notice(
            "head_unknown",
            "note",
            f"One head height is kept, and {window.label} cannot be held against the others: write its panel.length.",
        )
        for window in windows
        if window.plan.spec.panel.length is None
    ]
    if not heights:
        return notices
    middle = sorted(height for _, height in heights)[(len(heights) - 1) // 2]
    for window, height in heights:
        off = height - middle
        if abs(off) > MADE_WITHIN:
            way = "more" if off > NOTHING else "less"
            text = (
                f"One head height is kept, and by its numbers the rod of {window.label} hangs {say(tape, height)} "
                f"above the floor, {near(tape, abs(off))} {way} than the middle one of all, {say(tape, middle)}. "
                "Measure the rod, the panel's length and the floor mark again; panels are made within "
                f"{say(tape, MADE_WITHIN)} (UFGS-12491N)."
            )
            notices.append(Notice("heads_differ", "warning", text))
    return notices


def _one_length(windows: tuple[WindowPlan, ...], asked: Length | None) -> Kept:
    """Every panel made to one finished length: the one that is asked for, else the least that any comes to."""
    tape = windows[0].plan.tape
    own = [length for window in windows if (length := finished_length(window.plan)) is not None]
    length = asked if asked is not None else min(own, default=None)
    made: list[WindowPlan] = []
    notices: list[Notice] = []
    for window in windows:
        was = finished_length(window.plan)
        if was is None or length is None:
            text = f"One finished length is kept, and {window.label} cannot follow it: write its panel.length."
            notices.append(Notice("length_unknown", "warning", text))
            made.append(window)
            continue
        plan = _made_to(window.plan, was - length, length)
        made.append(replace(window, plan=plan))
        notices += _follows(window.label, window.plan, plan)
        if len({mark.finish for mark in plan.drop.marks}) > 1:
            text = (
                f"One finished length is kept, and the floor of {window.label} is uneven: its panels come to "
                f"{say(tape, length)} at the first floor mark, and follow the floor from there."
            )
            notices.append(Notice("length_slopes", "note", text))
    return tuple(made), notices


def _made_to(plan: Plan, shorter: Length, length: Length) -> Plan:
    """The plan with its panels made so much shorter, which its hem hangs higher by."""
    if not shorter:
        return plan
    asked, tape = plan.spec.drop.clearance, plan.tape
    made = make_plan(_with_clearance(plan.spec, asked + shorter))
    longer = shorter < NOTHING
    way = term(tape, -1 if longer else 1, "made longer" if longer else "made shorter", abs(shorter))
    working = f"asked for {say(tape, asked)} {way}, so that the finished length is {say(tape, length)} at every window"

    def told(figure: Figure) -> Figure:
        return replace(figure, working=working) if figure.key == "clearance" else figure

    return replace(
        made,
        sections=tuple(replace(section, figures=tuple(map(told, section.figures))) for section in made.sections),
        figures=MappingProxyType({key: told(figure) for key, figure in made.figures.items()}),
    )


def _with_clearance(spec: Spec, clearance: Length) -> Spec:
    return spec.model_copy(update={"drop": spec.drop.model_copy(update={"clearance": clearance})})


def _follows(label: str, asked: Plan, made: Plan) -> list[Notice]:
    """What one length for all means for a window that asked for another, where that can be seen."""
    tape, was, now = asked.tape, asked.drop.clearance, made.drop.clearance
    if abs(now - was) <= MADE_WITHIN:
        return []
    down = now < NOTHING <= was
    hangs = f"lies {say(tape, abs(now))} on" if now < NOTHING else f"hangs {say(tape, now)} above"
    text = (
        f"One finished length is kept, so the hem of {label} {hangs} the floor, where {say(tape, was)} above it was "
        f"asked for. Hang its rod {near(tape, abs(now - was))} {'higher' if now < was else 'lower'}, or keep the floor "
        "line instead."
    )
    return [Notice("off_its_floor", "warning" if down else "note", text)]
