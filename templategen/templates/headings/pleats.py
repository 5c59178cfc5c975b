"""What is written of pleats folded by hand."""

from __future__ import annotations

from ...planning import Plan
from ...planning.headings.pleats import PleatPlan
from ...spec.headings import PinchPleats
from .face import HeadingCaptions


def strip(plan: Plan, pleats: PleatPlan) -> tuple[str, ...]:
    """What the lines are."""
    fingers = ("Short lines: the fingers.",) if isinstance(pleats.given, PinchPleats) else ()
    return ("a and b of one number are brought together.", *fingers)


def card(plan: Plan, pleats: PleatPlan) -> tuple[str, ...]:
    """What the heading card measures."""
    return ("Sew each pleat from the top edge down to its stitch line.",)


def _captions(name: str) -> HeadingCaptions[PleatPlan]:
    return HeadingCaptions(name=name, strip=strip, card=card)


PINCH_PLEATS = _captions("pinch pleats")
BOX_PLEATS = _captions("box pleats")
INVERTED_BOX_PLEATS = _captions("inverted box pleats")
