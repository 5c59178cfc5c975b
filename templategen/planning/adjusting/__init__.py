"""After hanging: a panel that hangs wrong, and what puts it right with the least unpicking."""

from .adjustment import Adjustment, Move, Remedy
from .hung import Hung, Place, hung
from .making import adjust
from .record import adjustment_record
from .telling import tell_adjustment

__all__ = [
    "Adjustment",
    "Hung",
    "Move",
    "Place",
    "Remedy",
    "adjust",
    "adjustment_record",
    "hung",
    "tell_adjustment",
]
