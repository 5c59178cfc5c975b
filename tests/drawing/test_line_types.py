"""Line types: widths a home printer can draw, dashes after ISO 128."""

from __future__ import annotations

import pytest

from templategen.drawing import LineType


def test_no_line_is_under_half_a_point() -> None:
    """Common practice, no source: thinner lines break up on home printers."""
    assert all(kind.width >= 0.5 * 25.4 / 72 for kind in LineType)


def test_each_line_type_looks_different() -> None:
    looks = {(kind.width, kind.dashes) for kind in LineType}
    assert len(looks) == len(LineType)


@pytest.mark.parametrize(
    ("kind", "dashes"),
    [
        (LineType.FOLD, (12, 3)),
        (LineType.STITCH, (12, 18)),
        (LineType.CENTRE, (24, 3, 0.5, 3)),
        (LineType.MATCH, (24, 3, 0.5, 3, 0.5, 3)),
    ],
)
def test_dashes_are_those_of_iso_128(kind: LineType, dashes: tuple[float, ...]) -> None:
    """ISO 128-2, lengths of line elements in line widths: dash 12, long dash 24, gap 3, space 18, dot 1/2
    (values from memory)."""
    assert kind.dashes == pytest.approx([length * kind.width for length in dashes])


def test_outlines_and_cuts_are_continuous() -> None:
    """ISO 128-2, type 01: continuous (from memory)."""
    assert not LineType.CUT.dashes and not LineType.TRIM.dashes
