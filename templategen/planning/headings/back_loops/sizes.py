"""The sizes and the number of loops: as given, or chosen."""

from __future__ import annotations

from ....lengths import Length
from ....spec import Spec
from ....spec.headings import BackLoops
from ...doubled import doubled_now
from ...heading_choices import INSET_BEYOND_HALF, INSET_STEP, LOOP_WIDTH, NARROW_SHARE, PITCH_LIMITS
from ...widths import made_width
from .. import along


def loop_length(spec: Spec, heading: BackLoops) -> Length:
    """Cut length. A sewn-in loop is as long as the casing is deep: common practice, no source."""
    given = heading.loop_length
    return spec.panel.casing if given is None else given


def tube_depth(spec: Spec, heading: BackLoops) -> Length:
    """Lower seam to upper seam: the cut length less what is sewn in at either end."""
    return loop_length(spec, heading) - heading.lower_allowance - heading.upper_turn


def upper_seam(spec: Spec, heading: BackLoops) -> Length:
    """Top edge of the panel down to a loop's upper seam; the lower seam lies on the casing's stitch line."""
    return doubled_now(spec) - tube_depth(spec, heading)


def loop_width(spec: Spec, heading: BackLoops) -> Length:
    """Finished width: given, or chosen, and then narrower on a very narrow panel."""
    given = heading.loop_width
    return min(LOOP_WIDTH, made_width(spec) * NARROW_SHARE) if given is None else given


def edge_inset(spec: Spec, heading: BackLoops) -> Length:
    """Panel edge to the first centre: given (the spec's reader holds it short of the middle), or chosen."""
    if heading.edge_inset is not None:
        return heading.edge_inset
    wanted = loop_width(spec, heading) / 2 + INSET_BEYOND_HALF
    rounded_up = INSET_STEP * -(-wanted.mm // INSET_STEP.mm)
    return min(rounded_up, made_width(spec) * NARROW_SHARE)


def pitch_limit(spec: Spec, heading: BackLoops) -> Length:
    """How far apart loops may stand: given, or by the weight of the cloth."""
    given = heading.max_pitch
    return PITCH_LIMITS[spec.cloth] if given is None else given


def loop_count(spec: Spec, heading: BackLoops) -> int:
    """Loops on each panel: given, or the fewest that hold the edge up, odd so that one is on the centre."""
    inset, width = edge_inset(spec, heading), loop_width(spec, heading)
    return along.count_along(spec, heading, inset, width, pitch_limit(spec, heading))
