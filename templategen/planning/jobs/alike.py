"""Windows whose panels are made alike: one part, with the panels, offcuts and pieces of all of them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from types import MappingProxyType
from typing import Any

from ...spec import Spec
from ..advice import offcut_notices, worst_first
from ..figures import Figure, Notice, Section
from ..headings import HEADINGS
from ..making import counts_of
from ..offcut import plan_offcut
from ..plan import Plan
from ..widths import made_count
from .plan import Part, WindowPlan, listed, with_labels


def parts_of(windows: Sequence[WindowPlan]) -> tuple[Part, ...]:
    """Every window in one part, in the order of the parts' first windows."""
    groups: list[tuple[tuple[Any, ...], list[WindowPlan]]] = []
    for window in windows:
        made = _made(window.plan)
        group = next((group for like, group in groups if like == made), None)
        if group is None:
            groups.append((made, [window]))
        else:
            group.append(window)
    return tuple(_part(group) for _, group in groups)


def _made(plan: Plan) -> tuple[Any, ...]:
    """What two windows must have in common for their panels to be made alike.

    That is all but what their rods are long and how many panels hang there,
    and what these make of the heading.
    """
    spec = plan.spec
    own = {"title": "", "panel": spec.panel.model_copy(update={"count": 1}), "rod": spec.rod.diameter}
    given = [value for key, value in (spec.__dict__ | own).items()]
    return (plan.width, plan.drop, plan.hem, plan.top, plan.heading, given)


def _part(windows: Sequence[WindowPlan]) -> Part:
    labels = tuple(window.label for window in windows)
    first = windows[0].plan
    if len(windows) == 1:
        return Part(labels, first)
    spec = _pooled(windows)
    offcut = plan_offcut(spec, first.drop, HEADINGS[first.heading.style].pieces(first.heading))
    pooled = replace(
        first,
        spec=spec,
        panels=made_count(spec),
        offcut=offcut,
        sections=_sections(windows),
        counts=MappingProxyType(counts_of(spec, first.heading, offcut)),
        notices=worst_first([*_notices(windows), *offcut_notices(spec, offcut)]),
    )
    return Part(labels, pooled)


def _pooled(windows: Sequence[WindowPlan]) -> Spec:
    """The spec of the first window, with the panels of all of them."""
    spec = windows[0].plan.spec
    panels = sum(window.plan.spec.panel.count for window in windows)
    title = listed([window.label for window in windows])
    return spec.model_copy(update={"title": title, "panel": spec.panel.model_copy(update={"count": panels})})


def _sections(windows: Sequence[WindowPlan]) -> tuple[Section, ...]:
    """The figures of all the windows: once where they agree, else one for each window, by its label."""
    found: dict[str, Section] = {}
    rows: dict[str, dict[str, list[tuple[str, Figure]]]] = {}
    for window in windows:
        for section in window.plan.sections:
            found.setdefault(section.key, section)
            for figure in section.figures:
                rows.setdefault(section.key, {}).setdefault(figure.key, []).append((window.label, figure))
    return tuple(
        replace(section, figures=tuple(each for figures in rows[key].values() for each in _rows(figures, len(windows))))
        for key, section in found.items()
    )


def _rows(figures: Sequence[tuple[str, Figure]], windows: int) -> Iterable[Figure]:
    _, first = figures[0]
    if len(figures) == windows and all(figure == first for _, figure in figures):
        return [first]
    return [replace(figure, label=f"{figure.label}, {label}") for label, figure in figures]


def _notices(windows: Sequence[WindowPlan]) -> list[Notice]:
    """What the windows are warned of: once where all are, else with their labels; offcuts are judged together."""
    having: dict[Notice, list[str]] = {}
    for window in windows:
        of_offcuts = {notice.code for notice in offcut_notices(window.plan.spec, window.plan.offcut)}
        for notice in window.plan.notices:
            if notice.code not in of_offcuts:
                having.setdefault(notice, []).append(window.label)
    return [
        with_labels(notice, labels if len(labels) < len(windows) else ()) for notice, labels in having.items()
    ]
