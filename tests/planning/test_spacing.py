"""Equal division."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from templategen.lengths import NOTHING, Length, Tape, inches
from templategen.planning.spacing import fewest, pitch, positions, stepped_off

from .building import planned

counts = st.integers(2, 400)
widths = st.integers(1, 60_000).map(lambda mm: Length(Fraction(mm)))
shares = st.fractions(0, Fraction(49, 100), max_denominator=1000)


@given(widths, shares, counts)
def test_like_linspace(width: Length, share: Fraction, count: int) -> None:
    inset = width * share
    found = [float(at.mm) for at in positions(width, inset, count)]
    assert np.allclose(found, np.linspace(float(inset.mm), float((width - inset).mm), count), rtol=1e-12)


@given(widths, shares, counts)
def test_even_symmetric_and_inside(width: Length, share: Fraction, count: int) -> None:
    inset = width * share
    places = positions(width, inset, count)
    apart = pitch(width, inset, count)
    assert places[0] == inset and places[-1] == width - inset
    assert all(right - left == apart for left, right in pairwise(places))
    assert all(a + b == width for a, b in zip(places, reversed(places), strict=True))


@given(widths, shares, st.integers(10, 1000).map(lambda mm: Length(Fraction(mm))))
def test_the_fewest_odd_number_that_keeps_the_limit(width: Length, share: Fraction, limit: Length) -> None:
    inset = width * share
    count = fewest(width, inset, limit, 3, 100_001)
    assert count % 2 == 1 and count >= 3
    assert pitch(width, inset, count) <= limit
    assert count == 3 or pitch(width, inset, count - 2) > limit


def test_never_more_than_the_most() -> None:
    assert fewest(inches(54), inches(1), inches("1/100"), 3, 2001) == 2001


def test_stepping_off_a_rounded_spacing_ends_out() -> None:
    """114/29 in read as 3 15/16 in is 3/16 in out at the end of 30 marks (derived), and the plan says so."""
    tape = Tape.of("inch", None)
    assert stepped_off(tape, inches(Fraction(114, 29)), 30) == inches("3/16")
    assert stepped_off(tape, inches("103/16"), 9) == NOTHING
    changes = {"panel.width": "116 1/2 in", "heading.count": 30, "heading.edge_inset": "1 1/4 in"}
    working = planned(changes).figures["loop_pitch"].working
    assert "stepped off as it is shown, the last would come 3/16 in out" in working
