"""Where the tape lies, how wide it gathers, how many hooks it takes: as given, or chosen."""

from __future__ import annotations

from ....lengths import Length
from ....spec import Spec
from ....spec.headings import GatheringTape
from ...fullness import share
from ...heading_choices import DIVISION, HOOKS_EVERY, NARROW_TAPE, NARROW_TAPE_TOP, WIDE_TAPE_TOP
from ...widths import made_width

QUARTERS = 4


def tape_top(heading: GatheringTape) -> Length:
    """Panel's top edge down to the tape's upper edge."""
    if heading.tape_top is not None:
        return heading.tape_top
    return NARROW_TAPE_TOP if heading.tape_width <= NARROW_TAPE else WIDE_TAPE_TOP


def hook_set(heading: GatheringTape) -> Length:
    """Panel's top edge down to where the hooks hold: as given, or by the pocket; else the middle of the tape."""
    if heading.set_below is not None:
        return heading.set_below
    return tape_top(heading) + (heading.tape_width / 2 if heading.pocket is None else heading.pocket)


def fold(heading: GatheringTape) -> Length:
    """How deep the top is folded: as given, or so that its edge lies under the middle of the tape."""
    return tape_top(heading) + heading.tape_width / 2 if heading.top_fold is None else heading.top_fold


def gathered(spec: Spec, heading: GatheringTape) -> Length:
    """How wide a panel is when its tape is drawn up: as given, or its share, but never wider than it is flat."""
    return min(share(spec), made_width(spec)) if heading.gathered_width is None else heading.gathered_width


def divisions(spec: Spec) -> int:
    """Into how many equal parts the panel is divided: quarters, or quarters divided until none is too long."""
    return QUARTERS * int(-(-made_width(spec).mm // (QUARTERS * DIVISION).mm))


def hook_limit(heading: GatheringTape) -> Length:
    """How far apart two hooks are at most."""
    return HOOKS_EVERY if heading.max_pitch is None else heading.max_pitch


def hook_count(spec: Spec, heading: GatheringTape) -> int:
    """Hooks on each panel: as given, or the fewest that stand close enough, one at either end."""
    if heading.count is not None:
        return heading.count
    return 1 + max(1, int(-(-gathered(spec, heading).mm // hook_limit(heading).mm)))
