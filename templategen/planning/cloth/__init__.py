"""The cloth itself: shrinkage, repeat, lots, load, cover, leftovers; a module each.

Each shows nothing where the spec says nothing of it.
"""

from __future__ import annotations

from collections.abc import Sequence

from ...spec import Spec
from ..figures import Notice, Section
from ..plan import DropPlan, HeadingPlan, HemPlan, OffcutPlan, Pieces, ShrinkagePlan, TopPlan
from .cover import cover_amounts, cover_figures, cover_notices, plan_stack
from .leftovers import leftover_amounts, leftover_figures, leftover_notices
from .load import load_amounts, load_figures, load_notices, plan_load
from .lots import lot_figures, lot_notices
from .repeat import plan_repeat, repeat_figures, repeat_notices
from .shrinkage import hem_figures, plan_hem, shrinkage_amounts, shrinkage_figures, shrinkage_notices


def cloth_part(
    spec: Spec,
    drop: DropPlan,
    hem: HemPlan,
    top: TopPlan,
    heading: HeadingPlan,
    offcut: OffcutPlan,
    shrinkage: ShrinkagePlan | None,
) -> tuple[Sequence[Section], Sequence[Notice]]:
    """The sections and the notices of all that is said of the cloth."""
    pieces: Pieces | None = offcut.pieces.pieces if offcut.pieces else None
    repeat, load, stack = plan_repeat(spec, drop, top), plan_load(spec, drop, top, pieces), plan_stack(spec, heading)
    cloth = (*shrinkage_figures(spec, hem, shrinkage), *repeat_figures(spec, repeat), *lot_figures(spec, drop))
    over = leftover_amounts(spec, drop, hem, offcut)
    sections = (
        Section("cloth", "The cloth", cloth, shrinkage_amounts(shrinkage)),
        Section("cover", "How full, and how it opens", cover_figures(spec, heading, stack), cover_amounts(spec)),
        Section("load", "The load", load_figures(load), load_amounts(spec, load)),
        Section("leftovers", "Cloth left over", leftover_figures(spec, offcut), over),
    )
    notices = (
        *shrinkage_notices(spec, hem, shrinkage),
        *repeat_notices(spec, drop, top, repeat),
        *lot_notices(spec, drop, hem),
        *cover_notices(spec, stack),
        *leftover_notices(spec, drop, hem),
        *load_notices(spec, load),
    )
    return sections, notices


__all__ = ["cloth_part", "hem_figures", "plan_hem"]
