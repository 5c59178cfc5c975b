"""The casing a panel came with: a tube along its top that the rod is pushed through."""

from __future__ import annotations

from ...lengths import Tape
from ...spec import Spec
from ..wording import near
from .face import Hang, HeadingKind


def hang(spec: Spec) -> Hang:
    """The rod lifts the casing's top; the header stands above it. Offset: -header - take-up(casing)."""
    panel = spec.panel
    return Hang.of_tube("casing", panel.header, panel.casing, spec.rod.diameter)


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by its casing, as a clause."""
    standing = f"its header stands {near(tape, hang.below_top)} above the rod and " if hang.below_top else ""
    return (
        f"by its casing, {standing}the casing, {near(tape, hang.tube_depth)} deep, "
        f"takes up {near(tape, hang.take_up)} going round the rod"
    )


CASING = HeadingKind(name="casing", edge="casing", hang=hang, explain=explain)
