"""How deep cloth folds between two eyelets: closed forms against a relaxed chain of points, and against tables."""

from __future__ import annotations

import math
from fractions import Fraction
from functools import cache

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from templategen.lengths import NOTHING, Length, inches, millimetres
from templategen.planning.folds import Fold, fold, turning_ring

LINKS = 60


@cache
def relaxed(chord: float) -> tuple[float, float]:
    """Depth, and the angle at its end, of a chain of stiff links 1 long in all whose ends are ``chord`` apart.

    It knows no elliptic integral: the bending of its joints, the sum of the squares of the angles between links, is
    made as small as it can be by Newton's method with the two ends held.
    """
    link = 1 / LINKS
    turns = np.diff(np.eye(LINKS), axis=0)
    stiff = 2 * turns.T @ turns / link
    at = (np.arange(LINKS) + 0.5) / LINKS
    angles = np.cos(np.pi * at) * math.acos(chord) * 1.3
    pulls = np.zeros(2)
    for _ in range(60):
        cos, sin = np.cos(angles), np.sin(angles)
        ends = np.array([cos.sum() * link - chord, sin.sum() * link])
        slopes = np.vstack([-sin, cos]) * link
        bend = stiff - np.diag((pulls[0] * cos + pulls[1] * sin) * link)
        system = np.block([[bend, slopes.T], [slopes, np.zeros((2, 2))]])
        step = np.linalg.solve(system, -np.concatenate([stiff @ angles + slopes.T @ pulls, ends]))
        angles, pulls = angles + step[:LINKS], pulls + step[LINKS:]
        if np.abs(step[:LINKS]).max() < 1e-12:
            break
    heights = np.concatenate([[0.0], np.cumsum(np.sin(angles)) * link])
    return float(heights.max()), float(1.5 * angles[0] - 0.5 * angles[1])


@pytest.mark.parametrize("fullness", [1.1, 1.5, 2.0])
def test_a_relaxed_chain_comes_as_far_out_and_leaves_the_rod_as_steeply(fullness: float) -> None:
    """To a part in two thousand of the cloth, and to half a degree: the chain has 60 links."""
    depth, angle = relaxed(1 / fullness)
    found = fold(millimetres(1000), Length(Fraction(1000) / Fraction(fullness)))
    assert float(found.depth.mm) == pytest.approx(1000 * depth, abs=0.5)
    assert math.degrees(math.asin(min(1, found.steepness))) == pytest.approx(math.degrees(angle), abs=0.5)


def test_a_fold_that_crosses_the_rod_squarely_is_gausss_constant_times_its_chord_deep() -> None:
    """The rectangular elastica is 1 / agm(1, sqrt 2) = 0.8346268416740732 times as high as it is wide (Gauss's
    constant, value from memory, OEIS A014549)."""
    # K(1/2) = Gamma(1/4)^2 / (4 sqrt pi) and 2 E - K = pi / (2 K) by Legendre's relation.
    k = math.gamma(0.25) ** 2 / (4 * math.sqrt(math.pi))
    length = k / (math.pi / (2 * k))
    found = fold(millimetres(1000), Length(Fraction(1000 / (length * 1.0000001))))
    assert float(found.depth.mm) * length / 1000 == pytest.approx(0.8346268416740732, abs=1e-6)
    assert found.steepness == pytest.approx(1)


def test_creased_cloth_is_a_right_triangle() -> None:
    """Half the cloth is the long side, half the chord a short one: 5, 4, 3 (Euclid I.47)."""
    assert fold(inches(10), inches(8)).creased == inches(3)
    assert fold(millimetres(130), millimetres(50)).creased == millimetres(60)


def test_stretched_cloth_has_no_folds_and_no_ring_follows_it() -> None:
    for chord in (inches(7), inches(8)):
        assert fold(inches(7), chord) == Fold(NOTHING, NOTHING, 0.0)
    assert turning_ring(inches(1), fold(inches(7), inches(7))) is None


def test_a_ring_leans_with_the_cloth_until_its_opening_is_as_narrow_as_the_rod() -> None:
    """An opening d wide, seen aslant by t, is d cos t wide: the projection of a circle."""
    found = fold(inches(7), inches(5))
    ring = turning_ring(inches(1), found)
    assert ring is not None
    angle = relaxed(5 / 7)[1]
    assert float(ring.mm) * math.sin(angle) == pytest.approx(25.4, abs=0.1)
    assert turning_ring(inches(1), fold(inches(7), inches(2))) == inches(1)


@settings(max_examples=60, deadline=None)
@given(st.fractions(10, 1000, max_denominator=50), st.fractions(0, 1, max_denominator=200))
def test_round_folds_lie_within_creased_ones_and_deepen_as_the_panel_is_pushed_together(
    pitch: Fraction, share: Fraction
) -> None:
    cloth = Length(pitch)
    found, closer = fold(cloth, cloth * share), fold(cloth, cloth * share * Fraction(9, 10))
    assert NOTHING <= found.depth <= found.creased <= cloth / 2
    assert found.depth <= closer.depth and found.creased <= closer.creased
    assert 0 <= found.steepness <= closer.steepness <= 1 or closer.steepness == pytest.approx(1)


def test_pushed_right_together_a_fold_is_half_its_cloth_deep() -> None:
    assert fold(inches(8), NOTHING).depth == fold(inches(8), NOTHING).creased == inches(4)
