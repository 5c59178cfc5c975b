"""The teardrop against drawings of it, not against its own formula."""

from __future__ import annotations

import math
from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from templategen.lengths import NOTHING, Length, inches
from templategen.planning.hanging import least_tube, on_rod, passes, tab_length, take_up

from .chain import hung_chain


def taut_round(radius: float, below: float, corners: int = 6000) -> float:
    """Length of a string pulled taut round a rod and a point ``below`` its centre: the outline of the two.

    The rod is a polygon with very many corners; the string leaves it for the
    point from the corner that the point sees edge on.
    """
    angles = np.linspace(0, 2 * math.pi, corners, endpoint=False)
    x, y = radius * np.sin(angles), radius * np.cos(angles)
    bearing = np.arctan2(x, y + below)
    right, left = int(np.argmax(bearing)), int(np.argmin(bearing))
    over_the_top = np.concatenate([np.arange(left, corners), np.arange(0, right + 1)])
    xs, ys = np.append(x[over_the_top], 0.0), np.append(y[over_the_top], -below)
    return float(np.hypot(np.diff(xs, append=xs[0]), np.diff(ys, append=ys[0])).sum())


@pytest.mark.parametrize("ratio", [3.142, 3.15, 3.3, 4.0, 6.0, 12.0, 100.0])
@pytest.mark.parametrize("radius", [0.5, 9.525, 75.0])
def test_a_taut_string_round_rod_and_stitch_line_is_twice_the_tube(radius: float, ratio: float) -> None:
    depth = radius * ratio
    lost = float(take_up(Length(Fraction(2 * radius)), Length(Fraction(depth))).mm)
    assert taut_round(radius, depth - lost - radius) == pytest.approx(2 * depth, rel=2e-6)


WEIGHTS = [0.02, 0.1, 0.3, 0.6]
"""In spring constants of the chain and mm: on a rod of 20 mm they pull it from a hair to many mm below the rod."""


@pytest.mark.parametrize("weight", WEIGHTS)
def test_a_relaxed_chain_hangs_as_low_as_a_tube_of_its_length(weight: float) -> None:
    """A chain of points with a weight in it, relaxed on the rod: half of it is the tube's depth."""
    hung = hung_chain(10, weight)
    depth = hung.around / 2
    lost = float(take_up(Length(Fraction(20)), Length(Fraction(depth))).mm)
    assert lost == pytest.approx(depth - (10 + hung.below), abs=1.5e-3)


@pytest.mark.parametrize("weight", WEIGHTS)
def test_a_relaxed_chain_is_as_long_as_a_tab_that_hangs_as_low(weight: float) -> None:
    """The same chain as a tab: its lowest point is the panel's top edge. What lies on the rod is counted in whole
    steps of the chain, so it is out by as much as two of them."""
    hung = hung_chain(10, weight)
    rod, gap = Length(Fraction(20)), Length(Fraction(hung.below - 10))
    assert float(tab_length(rod, gap).mm) == pytest.approx(hung.around, rel=1.5e-5)
    assert float(on_rod(rod, gap).mm) == pytest.approx(hung.touching, abs=2 * hung.around / 500)


def test_the_relaxed_chain_tells_a_wrong_law_from_the_right_one() -> None:
    """Twice the drop, the rule of thumb, is out by far more than the chain is."""
    hung = hung_chain(10, 0.3)
    assert hung.around - 2 * (10 + hung.below) > 10


@given(st.integers(1, 150), st.integers(0, 10**6))
def test_a_tab_and_a_tube_of_the_same_teardrop_agree(rod: int, thousandths: int) -> None:
    """A tube as deep as half a tab hangs with its stitch line where the panel's top edge is, a gap under the rod."""
    diameter, gap = Length(Fraction(rod)), Length(Fraction(thousandths, 1000))
    depth = tab_length(diameter, gap) / 2
    below = depth - take_up(diameter, depth)
    # Where the gap closes, how low a tube hangs is felt in its length only by the gap's power of 3/2.
    assert abs(below - diameter - gap).mm <= Fraction(1, 10**4)
    assert on_rod(diameter, gap) <= tab_length(diameter, gap)


@given(st.integers(1, 150), st.integers(0, 10**6), st.integers(1, 10**6))
def test_a_wider_gap_takes_a_longer_tab_by_less_than_twice_as_much_more(rod: int, gap: int, more: int) -> None:
    diameter, near, far = Length(Fraction(rod)), Length(Fraction(gap, 1000)), Length(Fraction(gap + more, 1000))
    longer = tab_length(diameter, far) - tab_length(diameter, near)
    grain = Length(Fraction(4, 10**9))  # both are rounded
    assert NOTHING < longer < 2 * (far - near) + grain


def test_a_tab_without_a_gap_goes_once_round_the_rod() -> None:
    """Geometry: pi D. And twice the drop is too short by (pi - 2) D there, and by (pi - 2) R where the gap is wide."""
    rod = Length(Fraction(20))
    assert float(tab_length(rod, NOTHING).mm) == pytest.approx(20 * math.pi, abs=1e-8)
    assert on_rod(rod, NOTHING) == tab_length(rod, NOTHING)
    wide = Length(Fraction(10**7))
    assert float((tab_length(rod, wide) - 2 * (rod + wide)).mm) == pytest.approx(10 * (math.pi - 2), abs=1e-4)


@given(st.floats(0.5, 75), st.floats(0.001, 10_000))
def test_what_is_taken_up_solves_the_law(radius: float, beyond: float) -> None:
    depth = radius * (math.pi + beyond)
    lost = float(take_up(Length(Fraction(2 * radius)), Length(Fraction(depth))).mm)
    below = depth - lost - radius
    leaning = math.acos(radius / below)
    straight = math.sqrt((below - radius) * (below + radius))
    assert radius * (2 * math.pi - 2 * leaning) + 2 * straight == pytest.approx(2 * depth, rel=1e-9)


def test_take_up_lies_between_a_flat_tube_and_a_very_deep_one() -> None:
    """R (pi - 2) where the rod only just passes, R (pi/2 - 1) where the tube is endless."""
    rod = Length(Fraction(20))
    assert float(take_up(rod, least_tube(rod)).mm) == pytest.approx(10 * (math.pi - 2), abs=1e-5)
    assert float(take_up(rod, Length(Fraction(10**7))).mm) == pytest.approx(10 * (math.pi / 2 - 1), abs=1e-4)


@given(st.integers(1, 150), st.integers(1, 10**6), st.integers(1, 10**6))
def test_a_deeper_tube_loses_less_once_the_rod_passes(rod: int, beyond: int, more: int) -> None:
    diameter = Length(Fraction(rod))
    shallow = least_tube(diameter) + Length(Fraction(beyond, 1000))
    assert take_up(diameter, shallow + Length(Fraction(more, 1000))) <= take_up(diameter, shallow)


@given(st.integers(1, 150))
def test_nothing_jumps_where_the_rod_begins_to_pass(rod: int) -> None:
    diameter = Length(Fraction(rod))
    depth = least_tube(diameter)
    hair = Length(Fraction(1, 10**7))
    assert passes(diameter, depth) and not passes(diameter, depth - hair)
    assert abs(take_up(diameter, depth) - take_up(diameter, depth - hair)).mm < Fraction(1, 10**4)


@given(st.integers(1, 2400), st.integers(1, 16000))
def test_the_answer_has_nine_decimals_of_a_millimetre_and_no_more(rod: int, depth: int) -> None:
    lost = take_up(inches(Fraction(rod, 400)), inches(Fraction(depth, 400)))
    assert 10**9 % lost.mm.denominator == 0
    assert NOTHING <= lost < inches(Fraction(depth, 400))


def test_no_tube_takes_up_nothing() -> None:
    assert take_up(inches(1), NOTHING) == NOTHING
    assert take_up(NOTHING, inches(1)) == NOTHING
    assert not passes(inches(1), -inches(1))
