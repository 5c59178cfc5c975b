"""Pleats folded by hand: laws, what is chosen, and when they are remarked on."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from templategen.lengths import NOTHING, Length, inches
from templategen.planning import Plan, plan_record, tell_plan
from templategen.planning.headings.pleats import PleatPlan

from .building import codes, planned
from .test_headings_by_hand import LOOPS, PLEATED, PLEATS, with_heading

few = settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.too_slow])
STYLES = ("pinch pleats", "box pleats", "inverted box pleats")


def laid(plan: Plan) -> PleatPlan:
    assert isinstance(plan.heading, PleatPlan)
    return plan.heading


@st.composite
def pleated_jobs(draw: st.DrawFn) -> dict[str, Any]:
    """Changes to the first window that pleat it, in sixteenths of an inch, where there is cloth and room for it."""

    def some(least: int, most: int) -> str:
        return f"{draw(st.integers(least * 16, most * 16))}/16 in"

    heading = {
        "heading.style": draw(st.sampled_from(STYLES)), "heading.drop": some(1, 4),
        "heading.set_below": some(0, 3), "heading.heading_depth": some(1, 6), "heading.finished_width": some(18, 40),
        "heading.last_back": draw(st.none() | st.just("2 1/3 in")),
        "heading.pleats": draw(st.none() | st.integers(2, 20)),
    }  # fmt: skip
    return {f"heading.{name}": None for name in LOOPS} | heading | {
        "panel.width": some(41, 150), "panel.count": draw(st.integers(1, 4)),
        "rod.returns": some(1, 6) if draw(st.booleans()) else "0 in",
        "panel.leading_edge": draw(st.sampled_from(["pair", "left", "right"])),
    }  # fmt: skip


@few
@given(pleated_jobs())
def test_all_cloth_is_accounted_for_and_every_line_is_on_it(changes: dict[str, Any]) -> None:
    """First + pleats + spaces + last = flat; the same without the pleats = finished (How to Make Draperies)."""
    plan = planned(changes)
    pleats = laid(plan)
    kept = pleats.first + (pleats.pleats - 1) * pleats.space + pleats.last
    assert kept == pleats.finished and kept + pleats.pleats * pleats.pleat == pleats.flat == plan.width
    places = [mark.at for mark in pleats.marks]
    assert len(places) == 2 * pleats.pleats and all(a < b for a, b in pairwise([NOTHING, *places, plan.width]))
    by_label = {mark.label: mark.at for mark in pleats.marks}
    for number in range(1, pleats.pleats + 1):
        assert abs(by_label[f"{number}b"] - by_label[f"{number}a"]) == pleats.pleat
    # The first pleat is at the return edge, which is where the leading edge is not.
    assert by_label["1a"] == (pleats.first if pleats.leading == "right" else pleats.flat - pleats.first)


@few
@given(pleated_jobs())
def test_panels_of_a_pair_are_mirror_images_and_both_are_told(changes: dict[str, Any]) -> None:
    plan = planned(changes)
    assert laid(plan).mirrored == (changes["panel.leading_edge"] == "pair" and changes["panel.count"] > 1)
    marks = plan_record(plan)["marks"]
    assert isinstance(marks, dict) and ("top, right panels" in marks) == laid(plan).mirrored
    told = " ".join(tell_plan(plan).split())
    assert ("on right panels from the right end" in told) == laid(plan).mirrored
    if laid(plan).mirrored:
        left, right = (
            {each["label"]: each["at"]["mm"] for each in marks[key]} for key in ("top", "top, right panels")
        )
        assert left.keys() == right.keys()
        assert all(left[label] + right[label] == pytest.approx(float(plan.width.mm)) for label in left)


@few
@given(pleated_jobs())
def test_from_pleats_to_the_same_pleats_nothing_shifts(changes: dict[str, Any]) -> None:
    """The panel came pleated and is pleated anew, its top not folded again."""
    hung = {f"panel.{name}": changes[name] for name in ("heading.style", "heading.drop", "heading.set_below")}
    plan = planned(changes | hung | {"drop.hung_by": "old heading", "heading.heading_depth": "3 in"})
    assert not plan.top.refolded and plan.drop.hang_shift == NOTHING


def test_typed_in_millimetres_the_pleats_are_the_same() -> None:
    """The booklet's panel, every number times 25.4."""
    typed = {"rod.length": "2489.2 mm", "rod.overlap": "50.8 mm", "rod.returns": "76.2 mm", "panel.width": "3657.6 mm"}
    metric = with_heading("pinch pleats", PLEATED | typed | {"units": "metric"}, **PLEATS)
    inch = with_heading("pinch pleats", PLEATED, **PLEATS)
    assert metric.heading == inch.heading


def test_a_panel_that_covers_the_rod_alone_has_a_return_at_either_end() -> None:
    """Derived: rod 49 + 2 × return 3 = 55 in finished; both outer pleats stand at a corner of the rod."""
    alone = {"rod.length": "49 in", "rod.returns": "3 in", "panel.width": "130 in", "panel.count": 1}
    pleats = laid(with_heading("pinch pleats", alone, **PLEATS))
    assert (pleats.finished, pleats.first, pleats.last) == (inches(55), inches(3), inches(3))
    assert pleats.first + (pleats.pleats - 1) * pleats.space + pleats.last == inches(55)
    assert laid(with_heading("pinch pleats", alone, **PLEATS, last_back="2 in")).last == inches(2)
    assert laid(with_heading("pinch pleats", alone | {"panel.count": 2}, **PLEATS)).last == inches(2)
    assert laid(with_heading("pinch pleats", alone | {"rod.returns": "0 in"}, **PLEATS)).last == inches(2)


@pytest.mark.parametrize(("style", "fields", "least", "most"), [
    ("pinch pleats", {"fingers": 3}, "3", "7"), ("pinch pleats", {"fingers": 2}, "2", "5"),
    ("box pleats", {}, "3", "9"), ("inverted box pleats", {}, "3", "9"),
])  # fmt: skip
def test_pleats_that_were_chosen_are_good_ones(style: str, fields: dict[str, Any], least: str, most: str) -> None:
    """Our choices, by kind and fingers; a finger of two is as deep as one of three."""
    for flat in range(60, 150, 7):
        plan = with_heading(style, {"panel.width": f"{flat} in"}, **PLEATS, **fields, finished_width="40 in")
        assert inches(least) <= laid(plan).pleat <= inches(most) and not codes(plan) & {"pleats_thin", "pleats_thick"}
        assert plan.figures["pleat_size"].value == Length(Fraction(flat - 40) / laid(plan).pleats * inches(1).mm)


BOX = {**PLEATS, "finished_width": "18 in", "pleats": 4}
NOTICES: list[tuple[str, str, dict[str, Any], dict[str, Any], dict[str, Any], dict[str, Any]]] = [
    # code, style, fields, rest, fields just inside, rest just inside; four panels, 54 in wide
    ("pleat_spaces_wide", "pinch pleats", {**PLEATS, "finished_width": "22 1/16 in", "pleats": 4}, {},
     {**PLEATS, "finished_width": "22 in", "pleats": 4}, {}),
    ("hooks_below_pleats", "pinch pleats", {**PLEATS, "set_below": "3 1/16 in"}, {},
     {**PLEATS, "set_below": "3 in"}, {}),
    ("not_in_pairs", "pinch pleats", PLEATS, {"panel.count": 3}, PLEATS, {"panel.count": 4}),
    ("not_in_pairs", "pinch pleats", PLEATS, {"panel.count": 3}, PLEATS,
     {"panel.count": 3, "panel.leading_edge": "left"}),
    ("pleats_thin", "pinch pleats", {**PLEATS, "finished_width": "24 in", "pleats": 16, "fingers": 2}, {},
     {**PLEATS, "finished_width": "24 in", "pleats": 15, "fingers": 2}, {}),
    ("pleats_thick", "pinch pleats", {**PLEATS, "finished_width": "24 in", "pleats": 5, "fingers": 2}, {},
     {**PLEATS, "finished_width": "24 in", "pleats": 6, "fingers": 2}, {}),
    # three times is full for pinch pleats; a box as wide as its space takes as much (Stephenson 1905)
    ("pleat_fullness", "pinch pleats", BOX, {}, {**BOX, "finished_width": "21 5/8 in"}, {}),
    ("pleat_fullness", "box pleats", {**BOX, "finished_width": "17 15/16 in"}, {}, BOX, {}),
]  # fmt: skip


@pytest.mark.parametrize(("code", "style", "fields", "rest", "inside", "rest_inside"), NOTICES)
def test_each_notice_is_given_and_not_just_inside_its_limit(
    code: str, style: str, fields: dict[str, Any], rest: dict[str, Any],
    inside: dict[str, Any], rest_inside: dict[str, Any],
) -> None:  # fmt: skip
    assert code in codes(with_heading(style, rest, **fields))
    assert code not in codes(with_heading(style, rest_inside, **inside))


def test_what_a_notice_advises_puts_it_right() -> None:
    """Derived: 22 1/16 - 4 in of spaces, at most 6 in each: four spaces, five pleats of 6.4 in."""
    wide = {**PLEATS, "finished_width": "22 1/16 in", "pleats": 4}
    (said,) = [n.text for n in with_heading("pinch pleats", **wide).notices if n.code == "pleat_spaces_wide"]
    assert "5 pleats would stand within that, each of about 6 3/8 in of cloth" in said
    assert not codes(with_heading("pinch pleats", **{**wide, "pleats": 5})) & {"pleat_spaces_wide", "pleats_thick"}


@pytest.mark.parametrize(
    ("flat", "pleated", "count", "depth"),
    [("236", "92", 18, "4"), ("162.8", "62", 12, "4.2"), ("120", "56", 8, "4"), ("200", "80", 20, "3"),
     ("144", "48", 12, "4")],
)  # fmt: skip
def test_flat_width_is_pleated_width_and_twice_the_depth_of_every_pleat(
    flat: str, pleated: str, count: int, depth: str
) -> None:
    """NIMI, Government of India, CITS Apparel: Dress Making, Trade Practical, page 203 (92 cm, 18 pleats 4 cm deep: 236
    cm) and the exercises of page 205 (answers derived by its rule). A pleat's cloth is twice its depth."""
    fields = {**PLEATS, "finished_width": f"{pleated} cm", "pleats": count}
    plan = with_heading("box pleats", {"panel.width": f"{flat} cm"}, **fields)
    assert laid(plan).pleat == Length(2 * Fraction(depth) * 10)


def test_three_fingers_an_inch_deep_take_six_inches() -> None:
    """How to Pinch Pleat Drapes (a magazine's page): each section of three 1 in pleats needs 6 in of cloth."""
    plan = with_heading("pinch pleats", **{**PLEATS, "finished_width": "24 in", "pleats": 5})
    assert laid(plan).pleat == inches(6) and plan.figures["finger_depth"].value == inches(1)
