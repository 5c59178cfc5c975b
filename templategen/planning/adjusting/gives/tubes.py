"""A tube round the rod, moved at its upper seam: a second row below it raises the panel, the seam moved up lowers."""

from __future__ import annotations

from ....lengths import NOTHING, Length
from ... import hanging


def shifted(diameter: Length, depth: Length, lift: Length, spare: Length) -> tuple[Length, Length]:
    """How far below its upper seam the new row of a tube lies for this lift, and the lift it then gives.

    A negative distance lies above the old seam, at most ``spare`` of it. The rod still passes the tube.
    """
    apart = max(hanging.rows_apart(diameter, depth, lift), -max(spare, NOTHING))
    return apart, lift_of(diameter, depth, apart)


def lift_of(diameter: Length, depth: Length, apart: Length) -> Length:
    """How far the panel rises when the seam of a tube of ``depth`` comes so far below its old one."""
    return apart + hanging.take_up(diameter, depth - apart) - hanging.take_up(diameter, depth)


def limits(diameter: Length, depth: Length, spare: Length) -> tuple[Length, Length]:
    """The most that the panel rises while the rod passes, and the most that it comes down."""
    most = max(NOTHING, depth - hanging.least_tube(diameter))
    return lift_of(diameter, depth, most), -lift_of(diameter, depth, -max(spare, NOTHING))
