"""Orienting: one kit on sheets that are upright, on their side, or whichever takes fewer of them.

All pages of a file are alike. The margins stay with the sides that they are
named for, as the sheet is read; so do the printer's bars.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from ..errors import Refusal
from ..papers import Orientation, Paper

if TYPE_CHECKING:
    from .kit import Kit


def oriented(lay: Callable[[Paper], Kit], paper: Paper, orientation: Orientation) -> Kit:
    """What ``lay`` makes of ``paper`` in that orientation.

    Portrait is the paper as it is, landscape has its longer side across. Least
    is the one of these that takes fewer sheets: portrait where they are equal,
    or the only one that can be laid out. Raises Refusal where none can.
    """
    if orientation == "portrait":
        return lay(paper)
    if orientation == "landscape":
        return lay(paper.turned if paper.width < paper.height else paper)
    kits: list[Kit] = []
    refusals: list[Refusal] = []
    for each in (paper, paper.turned):
        try:
            kits.append(lay(each))
        except Refusal as refusal:
            refusals.append(refusal)
    if not kits:
        raise refusals[0]
    return min(kits, key=lambda kit: len(kit.sheets))
