"""What a double fold needs: the turn-under lies inside it, and one row holds both."""

from __future__ import annotations

from collections.abc import Iterator

from ....planning import Plan
from ....planning.plan import HemPlan
from ..amounts import Seam
from .face import HemNeeds, row


def seams(plan: Plan, hem: HemPlan) -> Iterator[Seam]:
    """The one row."""
    yield row(plan)


DOUBLE_FOLD = HemNeeds(name="double fold", seams=seams)
EQUAL_FOLD = HemNeeds(name="equal double fold", seams=seams)
