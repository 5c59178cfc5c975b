"""Plan to drawings: one module a template, each at full scale and ignorant of paper."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Protocol

from ..drawing import USUAL, Drawing, Look
from ..planning import Plan
from . import (
    casing_card,
    cut_gauge,
    eyelet_card,
    half_strip,
    heading_card,
    hem_gauge_card,
    hook_height_card,
    loop_ladder,
    mitre_card,
    pleat_strip,
    spacing_strip,
    tab_card,
    tape_card,
)
from .choices import Choices
from .strips import copies


class Draw(Protocol):
    """Draws one kind of template, as many as the plan asks for."""

    def __call__(self, plan: Plan, look: Look = USUAL) -> list[Drawing]: ...


TEMPLATES: Mapping[str, Draw] = MappingProxyType(
    {
        "spacing strip": spacing_strip.draw,
        "pleat strip": pleat_strip.draw,
        "heading card": heading_card.draw,
        "hem gauge card": hem_gauge_card.draw,
        "mitre card": mitre_card.draw,
        "cut gauge": cut_gauge.draw,
        "loop ladder": loop_ladder.draw,
        "eyelet card": eyelet_card.draw,
        "tab card": tab_card.draw,
        "hook height card": hook_height_card.draw,
        "ring height card": hook_height_card.draw_for_rings,
        "casing card": casing_card.draw,
        "tape card": tape_card.draw,
    }
)
"""Every template by its name. A new one is a module and a line here."""

STRIP = "spacing strip"
STRIPS = frozenset({STRIP, "half strip"})
"""What the spacing strip is called when it is drawn: whole or half, by choice."""


def draw_templates(plan: Plan, only: tuple[str, ...] = (), choices: Choices | None = None) -> list[Drawing]:
    """The drawings of all templates, or of those named in ``only``, made as ``choices`` say."""
    choices = choices or Choices()
    drawings: list[Drawing] = []
    for name, draw in TEMPLATES.items():
        if only and name not in only:
            continue
        if name == STRIP:
            for strip in (half_strip.draw if choices.half_strip else draw)(plan, choices.look):
                drawings += copies(strip, choices.strips)
        elif name == "pleat strip":
            for strip in draw(plan, choices.look):
                drawings += copies(strip, choices.strips)
        else:
            drawings += draw(plan, choices.look)
    return drawings


__all__ = ["STRIP", "STRIPS", "TEMPLATES", "Choices", "draw_templates"]
