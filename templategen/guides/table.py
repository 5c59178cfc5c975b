"""All guides by key. One that is of a style has it in its key: "heading: eyelets"."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from ..document.view import View
from . import floor, hems, panel, window
from .headings import back_loops

GUIDES: Mapping[str, Callable[[], View]] = MappingProxyType({
    "window": window.window,
    "rod from above": window.from_above,
    "panel": panel.flat,
    "panel cut across": panel.cut_across,
    "panels": panel.alike,
    "floor": floor.hanging,
    "floor marks": floor.marks,
    "hem: double fold": hems.double_fold,
    "heading: back loops": back_loops.sewn,
    "heading: back loops, one by itself": back_loops.alone,
    "old heading: back loops": back_loops.old,
})
"""In the order of measuring."""
