"""Eyelets: published sizes, how a panel hangs by them, what is chosen, and every notice with its limit."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from templategen.errors import Refusal
from templategen.lengths import NOTHING, Length, inches, millimetres
from templategen.planning import Plan, tell_plan
from templategen.planning.headings import HEADINGS

from .building import codes, job, length, notice, planned

EYELETS: dict[str, Any] = {
    **{f"heading.{name}": None for name in ("loop_length", "loop_width", "lower_allowance", "upper_turn")},
    "heading.style": "eyelets",
    "heading.count": None,
    "heading.edge_inset": None,
    "heading.eyelet_inside": "1 in",
    "heading.cut_circle": "1 1/8 in",
}
"""The first window's panels, with rings 1 in wide inside on its rod of 3/4 in."""
FLAT = {"panel.count": 1, "rod.length": "40 in"}
"""54 in of cloth on 40 in of rod."""
CAME_WITH = {
    "panel.heading.style": "eyelets",
    "panel.heading.eyelet_inside": "1 in",
    "panel.heading.eyelet_centre": "1 1/2 in",
    "drop.hung_by": "old heading",
}
HANG = ("hang_shift", "above_rod", "eyelet_centre", "top_lowered")


def eyelets(changes: dict[str, Any] | None = None) -> Plan:
    return planned(EYELETS | (changes or {}))


def moved(**changes: Any) -> dict[str, Any]:
    return {f"heading.{name}": value for name, value in changes.items()}


class TestPublishedValues:
    def test_rings_over_the_rod(self) -> None:
        """30 to 40 % wider inside: Singer, Sewing Custom Curtains, Shades, and Top Treatments (read in an extract). A
        home sewing magazine's guide to drapes has 1 9/16 in for a rod of at most 1 3/8 in, 14 %."""
        for rod, ring in (("1 in", "1.3 in"), ("1 in", "1.4 in"), ("1 3/8 in", "1 9/16 in")):
            plan = eyelets({"rod.diameter": rod, **moved(eyelet_inside=ring, cut_circle=None)})
            assert not {"eyelet_tight", "eyelet_loose"} & codes(plan)

    def test_six_to_eight_inches_apart_and_an_even_number(self) -> None:
        """The same guide: an even number for each panel, 6 to 8 in apart; here for its cloth of 54 in."""
        plan = eyelets()
        assert plan.heading.count % 2 == 0
        assert inches(6) <= plan.heading.pitch <= inches(8)

    def test_an_inch_of_cloth_above_and_below_the_opening(self) -> None:
        """At least 1 in (2.5 cm) above and below the inside edge of the rings: Singer, as above."""
        plan = eyelets(moved(eyelet_inside="1 9/16 in", cut_circle=None))
        above = plan.heading.centre - plan.heading.inside / 2
        assert above >= millimetres(25)
        assert plan.heading.band - plan.heading.centre - plan.heading.inside / 2 >= millimetres(25)

    def test_the_panel_hangs_from_the_top_of_the_ring_and_its_edge_stands_above_the_rod(self) -> None:
        """Singer: the finished length is measured from where the inside of the grommet sits on the rod, and the top
        edge is above that. In figures: offset - (e - r)."""
        spec = job(EYELETS | moved(eyelet_centre="1 3/4 in"))
        hang = HEADINGS["eyelets"].hang(spec, spec.heading)
        assert hang.offset == -(inches("7/4") - inches("1/2"))

    def test_run_over_spaces_and_the_depth_they_leave(self) -> None:
        """54 in of cloth on 27 in of rod, twice as full: derived, a crease of sqrt(3)/4 of the spacing."""
        plan = eyelets({"panel.count": 1, "rod.length": "27 in", **moved(count=10, edge_inset="2 1/4 in")})
        assert plan.heading.pitch == inches("11/2")
        assert plan.heading.spacing == inches(3)
        assert float(plan.figures["fold_creased"].value.mm) == pytest.approx(25.4 * (5.5**2 - 9) ** 0.5 / 2)


CASES: list[tuple[str, str, dict[str, Any], dict[str, Any]]] = [
    # a rod of 3/4 in; 3/22 more is 0.8523 in, 40 % more 1.05 in
    ("eyelet_too_tight", "stop", moved(eyelet_inside="3/4 in"), moved(eyelet_inside="0.76 in")),
    ("eyelet_tight", "warning", moved(eyelet_inside="0.852 in"), moved(eyelet_inside="0.853 in")),
    ("eyelet_loose", "note", moved(eyelet_inside="1.051 in"), moved(eyelet_inside="1.05 in")),
    # 7 3/14 in of cloth over 5 5/7 in of rod crosses it at 53.3 degrees
    ("eyelet_binds", "warning", {**FLAT, **moved(eyelet_inside="0.93 in")}, {**FLAT, **moved(eyelet_inside="0.94 in")}),
    ("cut_circle_guessed", "note", moved(cut_circle=None), {}),
    ("cut_circle_narrow", "warning", moved(cut_circle="15/16 in"), moved(cut_circle="1 in")),
    ("cut_circle_wide", "stop", moved(cut_circle="2 in", eyelet_outside=None),
     moved(cut_circle="1 15/16 in", eyelet_outside=None)),
    # rings 2 in wide outside, in a casing of 3 in that stays as it is
    ("eyelet_over_top", "stop", moved(eyelet_centre="15/16 in"), moved(eyelet_centre="1 in")),
    ("eyelet_near_top", "warning", moved(eyelet_centre="37.6 mm"), moved(eyelet_centre="37.7 mm")),
    (
        "eyelet_off_band",
        "stop",
        moved(eyelet_centre="2 1/16 in", band="3 in"),
        moved(eyelet_centre="2 in", band="3 in"),
    ),
    (
        "eyelet_near_band_edge",
        "warning",
        moved(eyelet_centre="38.6 mm", band="2 in"),
        moved(eyelet_centre="38.5 mm", band="2 in"),
    ),
    ("eyelet_over_edge", "stop", moved(edge_inset="15/16 in"), moved(edge_inset="1 in")),
    ("eyelet_near_edge", "warning", moved(edge_inset="1 3/16 in"), moved(edge_inset="1 1/4 in")),
    (
        "eyelet_on_side_hem",
        "warning",
        moved(edge_inset="1 3/4 in", side_hem="13/16 in"),
        moved(edge_inset="1 3/4 in", side_hem="3/4 in"),
    ),
    (
        "eyelet_on_side_hem",
        "warning",
        moved(edge_inset="1 3/4 in", side_hem="2 11/16 in"),
        moved(edge_inset="1 3/4 in", side_hem="2 3/4 in"),
    ),
    ("edge_behind_folds", "note", moved(count=8, edge_inset="3 7/16 in"), moved(count=8, edge_inset="3 3/8 in")),
    # 50 1/2 in from the first centre to the last
    ("eyelets_overlap", "stop", moved(count=28), moved(count=26)),
    ("eyelets_far_apart", "warning", moved(count=8, max_pitch="7 3/16 in"), moved(count=8, max_pitch="7 1/4 in")),
    (
        "eyelets_far_apart",
        "warning",
        {"panel.width": "59 9/16 in", **moved(count=8)},
        {"panel.width": "59 1/2 in", **moved(count=8)},
    ),
    (
        "eyelets_far_apart",
        "warning",
        {"rod.projection": "3 9/16 in", **moved(count=8)},
        {"rod.projection": "3 5/8 in", **moved(count=8)},
    ),
    (
        "eyelets_close",
        "note",
        {"panel.width": "57 7/16 in", **moved(count=10)},
        {"panel.width": "57 1/2 in", **moved(count=10)},
    ),
    ("odd_eyelets", "warning", moved(count=9), moved(count=8)),
    # eight of them: folds 3.05 in deep, half the spacing 3.61 in
    (
        "folds_press_on_wall",
        "warning",
        {"rod.projection": "3 in", **moved(count=8)},
        {"rod.projection": "3 1/16 in", **moved(count=8)},
    ),
    (
        "folds_press_when_open",
        "note",
        {"rod.projection": "3 5/8 in", **moved(count=8, edge_inset="1 9/16 in")},
        {"rod.projection": "3 5/8 in", **moved(count=8, edge_inset="1 5/8 in")},
    ),
    ("eyelets_no_overlap", "warning", {"rod.overlap": "1/16 in"}, {"rod.overlap": "0 in"}),
    ("eyelets_no_return", "note", {"rod.returns": "1/16 in"}, {"rod.returns": "0 in"}),
]


@pytest.mark.parametrize(
    ("code", "level", "outside", "inside"), CASES, ids=[f"{number:02d} {case[0]}" for number, case in enumerate(CASES)]
)
def test_a_notice_and_just_inside_its_limit(
    code: str, level: str, outside: dict[str, Any], inside: dict[str, Any]
) -> None:
    assert notice(eyelets(outside), code).level == level
    assert code not in codes(eyelets(inside))


def test_a_good_job_has_nothing_but_how_it_hangs() -> None:
    assert codes(eyelets({"rod.projection": "4 in"})) == {"hang_shift"}


def test_where_folds_press_on_the_wall_the_spacing_that_is_named_clears_it() -> None:
    text = notice(eyelets({"rod.projection": "3 in", **moved(count=8)}), "folds_press_on_wall").text
    most = length(text.partition("at most ")[2].partition(" apart")[0].partition(" (")[0])
    chosen = eyelets({"rod.projection": "3 in", **moved(max_pitch=most.exact("in"))})
    assert chosen.heading.count % 2 == 0 and "folds_press_on_wall" not in codes(chosen)


def test_a_near_wall_brings_the_eyelets_closer_but_no_closer_than_is_usual() -> None:
    assert eyelets({"rod.projection": "3 1/4 in"}).heading.pitch <= inches("13/2")
    assert "no more than 6 in apart" in eyelets({"rod.projection": "1 in"}).figures["eyelet_pitch"].working


def test_end_rings_are_chosen_on_one_side_of_the_side_hems_end() -> None:
    for hem, inset in (("3/4 in", "1 3/4 in"), ("1 in", "2 in"), ("2 1/4 in", "1 1/4 in"), ("4 in", "1 3/4 in")):
        plan = eyelets(moved(side_hem=hem))
        assert plan.heading.edge_inset == length(inset)
        assert not {"eyelet_on_side_hem", "eyelet_near_edge"} & codes(plan)


def test_the_top_stays_as_it_is_where_it_is_doubled_deep_enough_and_is_folded_anew_where_not() -> None:
    """75 mm, the usual casing in millimetres, holds a ring 25 mm wide inside with 25 mm of cloth above and below."""
    assert not eyelets({"panel.casing": "75 mm", **moved(eyelet_inside="25 mm")}).top.refolded
    anew = eyelets({"panel.casing": "74 mm", **moved(eyelet_inside="25 mm")})
    assert anew.top.refolded and anew.top.needed >= anew.heading.centre + anew.heading.outside / 2


def test_from_eyelets_to_the_same_eyelets_nothing_shifts() -> None:
    plan = eyelets(CAME_WITH | moved(eyelet_centre="1 1/2 in"))
    assert plan.drop.hang_shift == NOTHING and not plan.top.refolded


def test_from_a_casing_to_eyelets_and_back_nothing_shifts() -> None:
    there = eyelets(moved(eyelet_centre="1 1/2 in"))
    back = planned(
        EYELETS
        | CAME_WITH
        | {"heading.style": "casing", "heading.eyelet_inside": None, "heading.cut_circle": None}
    )
    assert not there.top.refolded and not back.top.refolded
    assert there.drop.hang_shift == -back.drop.hang_shift != NOTHING


def _faults(changes: dict[str, Any]) -> dict[str, str]:
    with pytest.raises(Refusal) as refused:
        job(EYELETS | changes)
    return {fault.field: str(fault) for fault in refused.value.faults}


def test_what_cannot_be_is_refused_by_name() -> None:
    assert "missing" in _faults(moved(eyelet_inside=None))["heading.eyelet_inside"]
    wrong = _faults(CAME_WITH | moved(eyelet_outside="1 in") | {"panel.heading.eyelet_centre": "1/2 in"})
    assert set(wrong) == {"heading.eyelet_inside", "heading.cut_circle", "panel.heading.eyelet_centre"}
    assert '"1 in"' in wrong["heading.eyelet_inside"] and "heading.eyelet_outside" in wrong["heading.cut_circle"]
    assert set(_faults(moved(eyelet_inside="-1 in", eyelet_centre="13 in"))) == {
        "heading.eyelet_inside",
        "heading.eyelet_centre",
    }
    assert job(EYELETS | CAME_WITH | moved(eyelet_outside="1.2 in"))


few = settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])


@st.composite
def jobs(draw: st.DrawFn) -> dict[str, Fraction | int | None]:
    """Sizes in sixteenths of an inch, from the ordinary to the odd, by path; counts as they are."""
    inside = draw(st.integers(8, 60))
    return {
        "rod.diameter": draw(st.integers(4, 40)),
        "rod.length": draw(st.integers(200, 4000)),
        "rod.projection": draw(st.none() | st.integers(16, 160)),
        "panel.width": draw(st.integers(100, 3000)),
        "panel.casing": draw(st.integers(1, 120)),
        "heading.eyelet_inside": inside,
        "heading.eyelet_outside": draw(st.none() | st.integers(inside + 1, 2 * inside)),
        "heading.eyelet_centre": draw(st.none() | st.integers(8, 80)),
        "heading.side_hem": draw(st.none() | st.integers(0, 60)),
        "heading.max_pitch": draw(st.none() | st.integers(20, 200)),
    }


def _typed(sizes: dict[str, Any], unit: str) -> dict[str, Any]:
    part = Fraction(1, 16) if unit == "in" else Fraction(254, 160)
    typed = {path: None if size is None else f"{float(size * part)!r} {unit}" for path, size in sizes.items()}
    return EYELETS | typed | {"heading.cut_circle": None, "units": "inch" if unit == "in" else "metric"}


@few
@given(jobs())
def test_chosen_eyelets_are_even_in_number_lie_apart_and_on_the_cloth(sizes: dict[str, Any]) -> None:
    plan = planned(_typed(sizes, "in"))
    heading = plan.heading
    assert all(len(line) <= 96 for line in tell_plan(plan).splitlines())
    assert heading.count % 2 == 0
    assert heading.inside < heading.cut_circle < heading.outside
    places = [mark.at for mark in heading.marks]
    assert all(NOTHING < at < plan.width for at in places)
    assert all(a + b == plan.width for a, b in zip(places, reversed(places), strict=True))
    stops = {stop.code for stop in plan.stops}
    half = heading.outside / 2
    assert ("eyelets_overlap" in stops) == (heading.pitch <= heading.outside)
    assert ("eyelet_over_edge" in stops) == (places[0] < half)
    assert ("eyelet_over_top" in stops) == (heading.centre < half)
    assert "eyelet_off_band" not in stops and heading.centre + half <= heading.band


@few
@given(jobs())
def test_inch_and_metric_agree(sizes: dict[str, Any]) -> None:
    inch, metric = planned(_typed(sizes, "in")), planned(_typed(sizes, "mm"))
    assert {key: figure.value for key, figure in inch.figures.items()} == {
        key: figure.value for key, figure in metric.figures.items()
    }
    assert codes(inch) == codes(metric)


@few
@given(jobs())
def test_all_cloth_is_accounted_for(sizes: dict[str, Any]) -> None:
    """The panel's length is what was lowered at its top, what hangs, the hem's allowance, and what is cut off below."""
    plan = planned(_typed(sizes, "in"))
    whole: Length = plan.top.lowered + plan.figures["finished_length"].value + plan.hem.allowance
    assert whole + plan.drop.marks[0].cut == inches(96)
    assert plan.drop.hang_shift - plan.top.lowered == (
        plan.heading.above - plan.figures["take_up_old"].value - plan.spec.panel.header
    )
