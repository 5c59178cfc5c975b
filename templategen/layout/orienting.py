"""Orienting: one kit on sheets that are upright, on their side, or whichever takes fewer of them.

All pages of a file are alike. The margins stay with the sides that they are
named for, as the sheet is read; so do the printer's bars.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import TYPE_CHECKING, Literal

from ..errors import Refusal
from ..papers import Paper

if TYPE_CHECKING:
    from .kit import Kit

Orientation = Literal["portrait", "landscape", "least"]


def oriented(lay: Callable[[Paper], Kit], paper: Paper, orientation: Orientation) -> Kit:
    """What ``lay`` makes of ``paper`` in that orientation.

    Portrait is the paper as it is, landscape has its longer side across. Least
    is the one of these that takes fewer sheets: portrait where they are equal,
    or the only one that can be laid out. Raises Refusal where none can.
    """
    if orientation == "portrait":
        return lay(paper)
    if orientation == "landscape":
        return lay(turned(paper) if paper.width < paper.height else paper)
    kits: list[Kit] = []
    refusals: list[Refusal] = []
    for each in (paper, turned(paper)):
        try:
            kits.append(lay(each))
        except Refusal as refusal:
            refusals.append(refusal)
    if not kits:
        raise refusals[0]
    return min(kits, key=lambda kit: len(kit.sheets))


def turned(paper: Paper) -> Paper:
    """The paper by a quarter of a turn."""
    return replace(paper, width=paper.height, height=paper.width)
