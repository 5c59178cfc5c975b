"""The sizes and the number of eyelets: as given, or chosen."""

from __future__ import annotations

from ....lengths import NOTHING, Length
from ....spec import Spec
from ....spec.headings import Eyelets
from ...doubled import doubled_now
from ...fullness import share
from ...heading_choices import (
    CLOTH_ROUND_EYELET,
    CLOTH_ROUND_RIM,
    CUT_BEYOND_RING,
    EYELET_INSET_BEYOND,
    EYELET_PITCHES,
    EYELET_RIM,
    INSET_STEP,
    LEAST_RIM_GAP,
    NARROW_SHARE,
)
from ...widths import made_width

FEWEST, MOST = 2, 2000
"""A spec may ask for so many; both are even."""


def outside(heading: Eyelets) -> Length:
    """Outer diameter of a ring: given, or with a rim of the usual width."""
    given = heading.eyelet_outside
    return heading.eyelet_inside + 2 * EYELET_RIM if given is None else given


def cut_circle(heading: Eyelets) -> Length:
    """The hole in the cloth: given, or a little wider than the ring's opening, within the ring."""
    if heading.cut_circle is not None:
        return heading.cut_circle
    wanted = heading.eyelet_inside + CUT_BEYOND_RING
    return min(wanted, (heading.eyelet_inside + outside(heading)) / 2)


def cloth_round(heading: Eyelets) -> Length:
    """Cloth from a ring's centre up to the edge, and down to where the cloth is single, where it is chosen."""
    return max(heading.eyelet_inside / 2 + CLOTH_ROUND_EYELET, outside(heading) / 2 + CLOTH_ROUND_RIM)


def centre(spec: Spec, heading: Eyelets) -> Length:
    """Top edge down to the rings' centres: given, or far enough down that the ring stands clear of the edge.

    Rounded up, but not so far that the top would have to be folded anew for that alone.
    """
    return _centre(spec, heading, cloth_round(heading))


def _centre(spec: Spec, heading: Eyelets, least: Length) -> Length:
    if heading.eyelet_centre is not None:
        return heading.eyelet_centre
    there = _there(spec, heading) if heading.band is None else heading.band
    return max(least, min(_stepped(least), there - least))


def band(spec: Spec, heading: Eyelets) -> Length:
    """How deep the cloth is doubled for the rings: given, or down to as far below them as it takes."""
    if heading.band is not None:
        return heading.band
    least = cloth_round(heading)
    return _centre(spec, heading, least) + least


def doubled_there(spec: Spec, heading: Eyelets) -> Length:
    """How deep the cloth is doubled in the end: what was there, where that is left as it is."""
    return max(_there(spec, heading), band(spec, heading))


def _there(spec: Spec, heading: Eyelets) -> Length:
    """How deep it is doubled already; not at all where something is cut off the top."""
    return doubled_now(spec) if heading.top_cut == NOTHING else NOTHING


def edge_inset(spec: Spec, heading: Eyelets) -> Length:
    """Panel edge to the first centre: given, or chosen clear of the edge, and on one side of the side hem's end."""
    if heading.edge_inset is not None:
        return heading.edge_inset
    half = outside(heading) / 2
    wanted = half + EYELET_INSET_BEYOND
    hem = heading.side_hem
    if hem is not None and wanted - half < hem < wanted + half:
        inside = hem - half
        wanted = inside if inside >= half + LEAST_RIM_GAP else hem + half
    return min(_stepped(wanted), made_width(spec) * NARROW_SHARE)


def _stepped(wanted: Length) -> Length:
    """Rounded up to what every tape is marked with."""
    return INSET_STEP * -(-wanted.mm // INSET_STEP.mm)


def pitch_limit(spec: Spec, heading: Eyelets) -> Length:
    """How far apart eyelets may stand: given; or 8 in, and less down to 6 in where the wall is near.

    Pushed together, a fold reaches half the spacing back from the rod.
    """
    if heading.max_pitch is not None:
        return heading.max_pitch
    closest, widest = EYELET_PITCHES
    if spec.rod.projection is None:
        return widest
    return max(closest, min(widest, 2 * spec.rod.projection))


def most_apart(span: Length, ring: Length) -> int:
    """The most eyelets, an even number, that stand over ``span`` with cloth between their rings; two at the least."""
    spaces = -(-span.mm // ring.mm) - 1
    most = max(FEWEST, min(int(spaces) + 1, MOST))
    return most - most % 2


def fewest(span: Length, limit: Length) -> int:
    """The fewest eyelets, an even number, over ``span`` and no further apart than ``limit``."""
    count = max(FEWEST, int(-(-span.mm // limit.mm)) + 1)
    return count + count % 2


def eyelet_count(spec: Spec, heading: Eyelets) -> int:
    """Eyelets on each panel: given, or the fewest, even so that both edges turn to the wall."""
    if heading.count is not None:
        return heading.count
    span = made_width(spec) - 2 * edge_inset(spec, heading)
    return min(fewest(span, pitch_limit(spec, heading)), most_apart(span, outside(heading)))


def rod_spacing(spec: Spec, count: int) -> Length:
    """Centre to centre on the rod: the panel's share of the run, from its first eyelet to its last, evenly parted.

    The edges beyond the end eyelets turn to the wall and cover nothing.
    """
    return share(spec) / (count - 1)
