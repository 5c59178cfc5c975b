"""Schematic pictures of what each field of a spec measures, and how: the parts that are about a field say so."""

from .table import GUIDES
from .trees import Guide, guide_setting, guide_trees
from .unseen import UNSEEN

__all__ = ["GUIDES", "UNSEEN", "Guide", "guide_setting", "guide_trees"]
