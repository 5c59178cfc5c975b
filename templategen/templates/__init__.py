"""Plan to drawings: one module a template, each at full scale and ignorant of paper."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from ..drawing import Drawing
from ..planning import Plan
from . import cut_gauge, hem_gauge_card, loop_ladder, spacing_strip

TEMPLATES: Mapping[str, Callable[[Plan], list[Drawing]]] = MappingProxyType(
    {
        "spacing strip": spacing_strip.draw,
        "hem gauge card": hem_gauge_card.draw,
        "cut gauge": cut_gauge.draw,
        "loop ladder": loop_ladder.draw,
    }
)
"""Every template by its name. A new one is a module and a line here."""


def draw_templates(plan: Plan, only: tuple[str, ...] = ()) -> list[Drawing]:
    """The drawings of all templates, or of those named in ``only``."""
    return [drawing for name, draw in TEMPLATES.items() if not only or name in only for drawing in draw(plan)]


__all__ = ["TEMPLATES", "draw_templates"]
