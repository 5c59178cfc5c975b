"""A double fold of equal turns: the raw edge lies in the hem's lower fold, twice the depth below the finished edge."""

from __future__ import annotations

from ...spec import Spec
from ...spec.hems import EqualFold
from . import double_fold
from .double_fold import DoubleFoldPlan
from .face import HemKind


def plan(spec: Spec, hem: EqualFold) -> DoubleFoldPlan:
    """As a double fold whose turn-under is as deep as the hem: raw edge 2 h below the finished edge."""
    return double_fold.double_fold(hem.style, hem.depth, hem.depth)


EQUAL_FOLD = HemKind(
    name="equal double fold",
    plan=plan,
    terms=double_fold.terms,
    figures=double_fold.figures,
    notices=double_fold.notices,
    said=double_fold.said,
    shallower=double_fold.shallower_equal,
)
