"""All guides by key. One that is of a style has it in its key: "heading: eyelets", "heading: eyelets, closer"."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial
from types import MappingProxyType

from ..document.view import View
from . import cloth, floor, hems, hems_sewn_on, lining, panel, sheet, sides, window
from .headings import back_loops, casing, eyelets, gathering_tape, hanging, pleats, tabs, top

PLEATED = ("pinch pleats", "box pleats", "inverted box pleats")
_OLD = "panel.heading"

GUIDES: Mapping[str, Callable[[], View]] = MappingProxyType({
    "window": window.window,
    "rod from above": window.from_above,
    "panel": panel.flat,
    "panel cut across": panel.cut_across,
    "panels": panel.alike,
    "old heading: back loops": back_loops.old,
    "old heading: tabs": tabs.old,
    "old heading: rings": partial(hanging.ring_across, _OLD),
    "old heading: hooks": partial(hanging.hook_across, _OLD, "", "A hook that it came with, cut across"),
    "old heading: eyelets": eyelets.old,
    **{
        f"old heading: {style}": partial(hanging.hook_across, _OLD, "", "A hook behind an old pleat, cut across")
        for style in PLEATED
    },
    "old heading: gathering tape": partial(
        hanging.hook_across, _OLD, "", "A hook in the old tape's pocket, cut across"
    ),
    "floor": floor.hanging,
    "floor marks": floor.marks,
    "hem: double fold": hems.double_fold,
    "hem: equal double fold": hems.equal_fold,
    "hem: single fold with tape": hems.single_fold,
    "hem: faced": hems_sewn_on.faced,
    "hem: border": hems_sewn_on.border,
    "heading top": top.top,
    "heading: back loops": back_loops.sewn,
    "heading: back loops, closer": back_loops.alone,
    "heading: casing": casing.flat,
    "heading: casing, closer": casing.across_it,
    "heading: tabs": tabs.hung,
    "heading: tabs, closer": tabs.across_it,
    "heading: rings": hanging.rings,
    "heading: rings, closer": hanging.ring_across,
    "heading: hooks": hanging.hooks,
    "heading: hooks, closer": hanging.hook_across,
    "heading: eyelets": eyelets.flat,
    "heading: eyelets, closer": eyelets.ring,
    **{f"heading: {style}": partial(pleats.front, style) for style in PLEATED},
    **{f"heading: {style}, closer": pleats.hook for style in PLEATED},
    "heading: gathering tape": gathering_tape.gathered,
    "heading: gathering tape, closer": gathering_tape.tape,
    "sides": sides.narrower,
    "sides: split": sides.split,
    "sides: hems": sides.hems,
    "sides: corners": sides.corners,
    "weights": lining.weights,
    "lining": lining.hung,
    "lining cut across": lining.cut_across,
    "lining as cut": lining.as_cut,
    "cloth": cloth.pattern,
    "cloth: shrinkage": cloth.shrinkage,
    "cloth: tie-back": cloth.tie_back,
    "sheet": sheet.size,
    "sheet: margins": sheet.margins,
    "roll": sheet.roll,
    "strips": sheet.strips,
})  # fmt: skip
"""In the order of measuring."""
