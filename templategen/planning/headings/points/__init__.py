"""Rings, clips and hooks: what holds a panel at points along its top.

Each holds it a drop p below the top of the rod, at a height h below the
panel's own top edge; the two kinds differ in what is usual and in words.
"""

from __future__ import annotations

from ..face import HeadingKind
from .advice import point_notices
from .laying_out import doubled, explain, figures, hang, hang_figures, lay_out
from .plan import PointPlan

RINGS = HeadingKind(
    name="rings",
    title="Rings or clips",
    marks_said="Where the rings or clips hold",
    edge="top",
    hang=hang,
    explain=explain,
    doubled=doubled,
    lay_out=lay_out,
    hang_figures=hang_figures,
    figures=figures,
    notices=point_notices,
)
HOOKS = HeadingKind(
    name="hooks",
    title="The hooks",
    marks_said="Where the hooks are",
    edge="top",
    hang=hang,
    explain=explain,
    doubled=doubled,
    lay_out=lay_out,
    hang_figures=hang_figures,
    figures=figures,
    notices=point_notices,
)

__all__ = ["HOOKS", "RINGS", "PointPlan"]
