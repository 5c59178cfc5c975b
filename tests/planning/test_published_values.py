"""The planner against figures in print, each under its source's name, and geometry worked from them."""

from __future__ import annotations

from fractions import Fraction

import pytest

from templategen.lengths import Length, inches
from templategen.planning.hanging import least_tube, passes, take_up
from templategen.planning.hems.face import fold_to
from templategen.planning.spacing import pitch, positions

from .building import codes, length, planned


def in_inches(found: Length) -> float:
    return float(found.inches)


# --- the rod in its tube ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("diameter", "depth", "drop", "lost"),
    [("1", "2", 1.599, 0.401), ("5/8", "3/2", 1.270, 0.230)],
)
def test_derived_teardrop(diameter: str, depth: str, drop: float, lost: float) -> None:
    """Derived: D = 1, c = 2: drop 1.599, take-up 0.401; D = 5/8, c = 1 1/2: drop 1.270, take-up 0.230."""
    found = take_up(inches(diameter), inches(depth))
    assert in_inches(found) == pytest.approx(lost, abs=0.0005)
    assert in_inches(inches(depth) - found) == pytest.approx(drop, abs=0.0005)


def test_derived_least_tube() -> None:
    """Derived: a 1 in rod needs a tube of 1.571 in, so "diameter plus half an inch" is too tight."""
    assert in_inches(least_tube(inches(1))) == pytest.approx(1.571, abs=0.0005)
    assert not passes(inches(1), inches("3/2"))


def test_stephenson_1905_pole_casing() -> None:
    """J. W. Stephenson, Cutting and Draping, 1905: a 1 in pole, 1 7/8 in between the stitch lines."""
    assert passes(inches(1), inches("15/8"))


@pytest.mark.parametrize(("diameter", "casing"), [("3/4", "3/2"), ("1", "2"), ("11/8", "11/4")])
def test_manual_of_home_making_casings(diameter: str, casing: str) -> None:
    """A Manual of Home-Making, Portieres: twice the rod's diameter. It passes, and no notice comes."""
    assert passes(inches(diameter), inches(casing))
    loop = f"{inches(casing).inches + 1} in"
    plan = planned({"rod.diameter": f"{diameter} in", "heading.loop_length": loop})
    assert not codes(plan) & {"loop_too_tight", "loop_tight"}


# --- hems --------------------------------------------------------------------------------------------


def test_fm_10_16_double_fold_hem() -> None:
    """FM 10-16, 24 May 2000, single-edge hem: lines 1 in, then 2 in, give a 1/2 in turn and a 1 in hem."""
    hem = planned({"hem.depth": "1 in", "hem.turn_under": "1/2 in"}).hem
    assert (hem.fold_to_turn, hem.fold_to_depth, hem.allowance) == (inches(1), inches(2), inches("3/2"))


def test_derived_double_hem_of_equal_turns() -> None:
    """Derived: of equal turns, the raw edge lies twice the depth below the finished edge."""
    plan = planned({"hem.depth": "4 in", "hem.turn_under": "4 in"})
    mark = plan.drop.marks[0]
    assert mark.finish - mark.cut == fold_to(inches(4)) == plan.hem.fold_to_depth


def test_newspaper_1935_hem_depths() -> None:
    """Newspaper, 24 May 1935 (Papers Past EG19350524.2.6.2): 3 in on heavy floor-length curtains."""
    assert "hem_shallow" not in codes(planned({"cloth": "heavy", "hem.depth": "3 in"}))
    assert "hem_shallow" in codes(planned({"cloth": "heavy", "hem.depth": "2 in"}))


def test_newspaper_1935_sheers() -> None:
    """The same newspaper: on sheers both turns are equal so that the raw edge does not show."""
    equal = {"cloth": "light", "hem.depth": "3 in", "hem.turn_under": "3 in"}
    assert "turn_shows" not in codes(planned(equal))
    assert "turn_shows" in codes(planned({**equal, "hem.turn_under": "1 in"}))


@pytest.mark.parametrize("hem", ["3 in", "4 in"])
def test_manual_of_home_making_full_length_hem(hem: str) -> None:
    """A Manual of Home-Making: a 3 in hem suits full length. Common practice: 2 to 4 in."""
    assert "hem_shallow" not in codes(planned({"hem.depth": hem}))


# --- spacing -----------------------------------------------------------------------------------------


def test_woodworkers_journal_spacing() -> None:
    """Woodworker's Journal, spacing of fasteners: 36 in with 5 marks inside it: 6, 12, 18, 24, 30."""
    assert positions(inches(36), inches(6), 5) == tuple(inches(n) for n in (6, 12, 18, 24, 30))


def test_derived_stepping_error() -> None:
    """Derived: 114/29 in stepped off as 3 15/16 is 3/16 in out at the end; from one zero nothing gathers."""
    apart = pitch(inches(114), inches(0), 30)
    assert apart == inches("114/29")
    tape = planned().tape
    assert tape.read(apart).value == inches("63/16")
    assert 29 * inches("63/16") - inches(114) == inches("3/16")
    assert positions(inches(114), inches(0), 30)[-1] == inches(114)


def test_common_practice_loops() -> None:
    """Common practice, no source: an odd number, about ten inches apart at most, as long as the casing is
    deep, a little finger's width in from the edge."""
    chosen = dict.fromkeys(
        ("heading.count", "heading.edge_inset", "heading.loop_length", "heading.loop_width")
    )
    loops = planned(chosen).heading
    assert loops.count == 7
    assert loops.pitch <= inches(10)
    assert loops.length == inches(3)
    assert inches("3/8") <= loops.edge_inset - loops.width / 2 <= inches("3/4")


def test_derived_strip() -> None:
    """Derived: loops folded from a strip, one long seam: 2 (width + seam allowance)."""
    assert planned({"heading.seam_allowance": "1/4 in"}).heading.strip == inches("11/4")


# --- floor and fullness ------------------------------------------------------------------------------


@pytest.mark.parametrize("clearance", ["3/8 in", "1 in", "2 in"])
def test_published_clearances(clearance: str) -> None:
    """UFGS-12491N, 1 in; Te Ao Hou no. 11, July 1955, 1 to 2 in; A Manual of Home-Making, 2 in."""
    assert "clearance_unusual" not in codes(planned({"drop.clearance": clearance}))


def test_ufgs_12491n_fullness_counts_overlap_and_returns() -> None:
    """UFGS-12491N, drapery section: 200 % is 2 times rod + overlap + returns; the overlap at least 3 in."""
    plan = planned(
        {
            "rod.length": "101 in",
            "rod.overlap": "3 in",
            "rod.returns": "2 in",
            "panel.count": 4,
            "panel.width": "54 in",
        }
    )
    assert plan.ratios["fullness"] == Fraction(216, 108) == 2


def test_ufgs_12491n_panels_within_a_quarter_inch() -> None:
    """UFGS-12491N: panels are made within 1/4 in, so the two ways to the floor may differ by that."""
    by_rod = planned().figures["computed_floor_line"].value
    for off, wrong in (("1/4 in", False), ("9/32 in", True)):
        marked = f"{float((by_rod + length(off)).mm) - 1e-9:.9f} mm"
        assert ("floor_disagrees" in codes(planned({"drop.floor_marks": [marked]}))) is wrong


# --- a whole panel, by hand --------------------------------------------------------------------------


def test_loops_on_a_panel_marked_by_its_casing_lift_it_by_about_their_upper_seam() -> None:
    """Derived: hang shift = (upper seam + take-up of the loops) - (header + take-up of the casing)."""
    plan = planned()
    rod = inches("3/4")
    by_hand = inches("3/4") + take_up(rod, inches("9/4")) - take_up(rod, inches(3))
    assert plan.heading.upper_seam == inches("3/4")
    assert plan.drop.hang_shift == by_hand
    assert in_inches(by_hand) == pytest.approx(0.767, abs=0.02)


def test_panel_figures_by_hand() -> None:
    """Marked on its new heading: 13 5/8 + 3/4 = 14 3/8; less 4 and 5/8, 9 3/4; less 2, 7 3/4."""
    plan = planned({"drop.hung_by": "new heading", "drop.rod_to_floor": None})
    mark = plan.drop.marks[0]
    assert (mark.finish, mark.cut) == (inches("115/8"), inches("39/4"))
    assert (plan.offcut.depth, plan.offcut.unpicked) == (inches("39/4"), inches("97/8"))
    assert plan.offcut.clear == inches("31/4")
    assert plan.counts["loops_per_strip"] == 16
    assert [plan.counts[key] for key in ("strips_clear", "strips_as_cut", "strips_unpicked")] == [8, 12, 16]
    assert plan.counts["loops_available"] == 192
