"""Lots of panels whose lengths differ, held against the panel that was marked."""

from __future__ import annotations

from ..lengths import NOTHING, Length
from ..spec import Spec


def longer(spec: Spec) -> tuple[Length, ...]:
    """How much longer each other lot is than the panel that was marked; negative where it is shorter."""
    if spec.panel.length is None:
        return ()
    return tuple(length - spec.panel.length for length in spec.panel.lots)


def shorter(spec: Spec) -> Length:
    """How much shorter the shortest lot is than the panel that was marked; nothing where none is."""
    return max((-each for each in longer(spec) if each < NOTHING), default=NOTHING)
