"""Every notice: what calls it up, and what is just inside the limit and does not."""

from __future__ import annotations

import re
from typing import Any

import pytest

from templategen.lengths import Tape, inches
from templategen.planning.wording import near

from .building import codes, length, notice, planned

NEW = {"drop.hung_by": "new heading", "drop.rod_to_floor": None}
"""Marked on its new heading, so that nothing shifts: finish = mark + 3/4, cut = mark - 3 7/8."""


def marked(*marks: str) -> dict[str, Any]:
    return {**NEW, "drop.floor_marks": [f"{mark} in" for mark in marks]}


CASES: list[tuple[str, str, dict[str, Any], dict[str, Any]]] = [
    # the rod in its tube: 1 15/16 in needs 3.043, 1 7/8 needs 2.945, and the casing is 3 in deep
    ("casing_too_tight", "stop", {"rod.diameter": "1 15/16 in"}, {"rod.diameter": "1 7/8 in"}),
    ("casing_too_tight", "stop", {"rod.diameter": "2 in"}, {"rod.diameter": "2 in", **NEW}),
    # 3/4 in needs a tube of 1.178; the loop has 1 in sewn in
    ("loop_too_tight", "stop", {"heading.loop_length": "2 1/8 in"}, {"heading.loop_length": "2 3/16 in"}),
    ("loop_tight", "note", {"heading.loop_length": "2 7/16 in"}, {"heading.loop_length": "2 1/2 in"}),
    ("seam_above_top", "stop", {"heading.loop_length": "4 1/16 in"}, {"heading.loop_length": "4 in"}),
    # along the heading: loops 1 1/8 in wide
    ("loop_over_edge", "stop", {"heading.edge_inset": "1/2 in"}, {"heading.edge_inset": "9/16 in"}),
    ("loop_near_edge", "warning", {"heading.edge_inset": "3/4 in"}, {"heading.edge_inset": "13/16 in"}),
    ("loops_overlap", "stop", {"heading.count": 47}, {"heading.count": 46}),
    ("loops_sag", "warning", {"heading.max_pitch": "6 3/8 in"}, {"heading.max_pitch": "6 7/16 in"}),
    ("loops_sag", "warning", {"heading.count": 7, "cloth": "heavy"}, {"heading.count": 7, "cloth": "medium"}),
    ("loops_sag", "warning", {"heading.count": 6, "cloth": "medium"}, {"heading.count": 6, "cloth": "light"}),
    ("even_loops", "note", {"heading.count": 8}, {"heading.count": 9}),
    # the floor
    ("hang_shift", "note", {}, NEW),
    ("all_heading", "stop", {**NEW, "panel.length": "3 in"}, {**NEW, "panel.length": "3 1/16 in"}),
    ("finish_in_heading", "stop", marked("92 1/4"), marked("92 3/16")),
    ("hem_in_heading", "stop", marked("88 1/4"), marked("88 3/16")),
    ("floor_by_rod", "note", {"drop.floor_marks": None}, {}),
    ("floor_unchecked", "note", {"panel.length": None}, {}),
    (
        "floor_disagrees",
        "warning",
        {"drop.floor_marks": ["13 1/2 in"]},
        {"drop.floor_marks": ["13 17/32 in"]},
    ),
    ("floor_mark_jumps", "warning", marked("13", "13", "13 9/32", "13"), marked("13", "13", "13 1/4", "13")),
    ("floor_mark_jumps", "warning", marked("12", "13", "13", "13"), marked("12", "12 1/3", "12 2/3", "13")),
    ("floor_slopes", "warning", marked("13", "13.55"), marked("13", "13.54")),
    ("floor_uneven", "note", marked("13", "13 1/32"), marked("13", "13")),
    ("breaks_on_floor", "note", {"drop.clearance": "-1/16 in"}, {"drop.clearance": "0 in"}),
    ("clearance_unusual", "note", {"drop.clearance": "5/16 in"}, {"drop.clearance": "3/8 in"}),
    ("clearance_unusual", "note", {"drop.clearance": "2 1/16 in"}, {"drop.clearance": "2 in"}),
    ("clearance_unusual", "note", {"drop.clearance": "0 in"}, {"drop.clearance": "-1/4 in"}),
    # the old hem, 2 in with 3/8 in turned under
    ("panel_too_short", "stop", marked("1 7/16"), marked("1 1/2")),
    ("let_down_old_hem", "warning", marked("3 13/16"), marked("3 7/8")),
    ("unpick_old_hem", "note", marked("5 13/16"), marked("5 7/8")),
    # the new hem
    ("hem_shallow", "warning", {"hem.depth": "1 15/16 in"}, {"hem.depth": "2 in"}),
    (
        "hem_shallow",
        "warning",
        {"hem.depth": "2 15/16 in", "cloth": "heavy"},
        {"hem.depth": "3 in", "cloth": "heavy"},
    ),
    (
        "turn_shows",
        "note",
        {"hem.turn_under": "3 15/16 in", "cloth": "light"},
        {"hem.turn_under": "4 in", "cloth": "light"},
    ),
    # the offcut: three strips of 2 3/4 in, one from each panel
    ("loops_from_offcuts", "note", marked("8 5/8"), marked("8 9/16")),
    ("unpick_for_loops", "note", marked("8 9/16"), marked("8 5/8")),
    ("unpick_for_loops", "note", marked("4 1/4"), marked("4 3/16")),
    ("loops_short", "warning", marked("4 3/16"), marked("4 1/4")),
    # fullness on a rod of 60 in
    (
        "not_covered",
        "warning",
        {"panel.count": 1, "panel.width": "59 15/16 in"},
        {"panel.count": 1, "panel.width": "60 in"},
    ),
    ("fullness_low", "warning", {"panel.width": "22 7/16 in"}, {"panel.width": "22 1/2 in"}),
    ("fullness_high", "warning", {"panel.width": "60 1/16 in"}, {"panel.width": "60 in"}),
]


@pytest.mark.parametrize(
    ("code", "level", "outside", "inside"),
    CASES,
    ids=[f"{number:02d} {case[0]}" for number, case in enumerate(CASES)],
)
def test_a_notice_and_just_inside_its_limit(
    code: str, level: str, outside: dict[str, Any], inside: dict[str, Any]
) -> None:
    assert notice(planned(outside), code).level == level
    assert code not in codes(planned(inside))


def test_a_good_job_has_nothing_but_notes() -> None:
    assert codes(planned()) == {"hang_shift", "loops_from_offcuts"}


def said(changes: dict[str, Any], code: str, before: str) -> str:
    """The length that a notice gives after certain words."""
    found = re.search(rf"{before} (\d+(?: \d+/\d+)?|\d+/\d+) (in|mm)", notice(planned(changes), code).text)
    assert found, notice(planned(changes), code).text
    return f"{found[1]} {found[2]}"


CURES: list[tuple[str, dict[str, Any], str, str]] = [
    ("loop_too_tight", {"heading.loop_length": "2 in"}, "at least", "heading.loop_length"),
    ("loop_tight", {"heading.loop_length": "2 3/8 in"}, "cut the loops", "heading.loop_length"),
    ("seam_above_top", {"heading.loop_length": "4.03 in"}, "at most", "heading.loop_length"),
    ("loop_over_edge", {"heading.edge_inset": "1/3 in"}, "at least", "heading.edge_inset"),
    ("loop_near_edge", {"heading.edge_inset": "5/8 in"}, "at least", "heading.edge_inset"),
    ("casing_too_tight", {"panel.casing": "1 1/10 in"}, "at least", "panel.casing"),
    ("loop_too_tight", {"rod.diameter": "2 in"}, "Use a rod", "rod.diameter"),
    ("hem_shallow", {"hem.depth": "1 in"}, "medium cloth:", "hem.depth"),
    ("panel_too_short", marked("1"), "A hem", "hem.depth"),
    ("loops_short", marked("4 3/16"), "every loop", "heading.loop_width"),
    ("floor_mark_jumps", marked("13", "15", "14"), "If it is wrong,", "drop.floor_marks.1"),
]


@pytest.mark.parametrize("units", ["inch", "metric"])
@pytest.mark.parametrize(
    ("code", "changes", "before", "field"), CURES, ids=[f"{case[0]} {case[3]}" for case in CURES]
)
def test_the_number_in_a_notice_puts_it_right(
    code: str, changes: dict[str, Any], before: str, field: str, units: str
) -> None:
    """What the notice says, typed as its tape shows it, is enough: it is rounded to the safe side."""
    changes = {**changes, "units": units}
    cure: Any = said(changes, code, f"{before}(?: about)?")
    if field == "drop.floor_marks.1":
        field, cure = (
            "drop.floor_marks",
            [changes["drop.floor_marks"][0], cure, changes["drop.floor_marks"][2]],
        )
    cured = {**changes, field: cure}
    if code == "loop_too_tight" and field == "rod.diameter":
        cured["heading.loop_length"] = said(changes, code, "room for")
    assert code not in codes(planned(cured))


def test_counts_in_notices_put_it_right() -> None:
    for changes, code, words in (
        ({"heading.count": 5}, "loops_sag", r"(\d+) loops would"),
        ({"heading.count": 60}, "loops_overlap", r"(\d+) fit"),
        ({"panel.count": 1, "panel.width": "65 in"}, "fullness_low", r"takes (\d+) panel"),
        ({"panel.count": 1, "panel.width": "20 in"}, "not_covered", r"(\d+) to fall"),
    ):
        found = re.search(words, notice(planned(changes), code).text)
        assert found, notice(planned(changes), code).text
        field = "heading.count" if code.startswith("loops") else "panel.count"
        assert code not in codes(planned({**changes, field: int(found[1])}))


def test_loops_as_close_as_they_fit_but_not_close_enough() -> None:
    """A limit that loops of this width cannot keep: as many as fit are chosen, and the sagging is told."""
    plan = planned({"heading.count": None, "heading.max_pitch": "1 in"})
    assert plan.heading.pitch > plan.heading.thing_width
    assert "That takes 53 loops, narrower than 15/16 in, or a wider limit." in notice(plan, "loops_sag").text
    assert "as many as fit" in plan.figures["loop_pitch"].working


def test_too_short_for_any_hem() -> None:
    """First a shallower hem, then equal turns, then a facing, then a greater clearance."""
    assert "A hem 3 1/2 in deep would just do." in notice(planned(marked("1")), "panel_too_short").text
    equal = {**marked("4"), "hem.turn_under": "4 in"}
    assert "A hem and a turn-under of 3 9/16 in each" in notice(planned(equal), "panel_too_short").text
    assert "Face it: sew on a strip" in notice(planned(marked("-2")), "panel_too_short").text
    gone = {**marked("-3"), "units": "inch"}
    text = notice(planned(gone), "panel_too_short").text
    assert text.endswith("make the clearance at least 3/8 in more.")
    text = notice(planned({**gone, "drop.clearance": "1 1/8 in"}), "panel_too_short").text
    assert "Face it" in text


def test_the_old_crease_shows_where_the_panel_is_let_down_past_it() -> None:
    assert "goes into the new hem." in notice(planned(marked("2")), "let_down_old_hem").text
    deep = {**marked("-1"), "panel.hem": "5 in"}
    text = notice(planned(deep), "let_down_old_hem").text
    assert "will show on the front, 1/4 in above the new bottom edge" in text


def test_old_stitch_holes_show_where_they_come_above_the_finish_line() -> None:
    text = notice(planned({**marked("4"), "panel.hem": "6 in"}), "unpick_old_hem").text
    assert "stitch holes come 1 1/4 in above the new bottom edge" in text


def test_a_raw_edge_has_no_old_hem_to_speak_of() -> None:
    raw = {"panel.hem": "0 in", "panel.turn_under": "0 in"}
    assert "old hem" not in notice(planned(raw), "loops_from_offcuts").text
    assert "old hem" not in notice(planned({**marked("3"), **raw}), "panel_too_short").text
    assert "old hem" not in notice(planned({**marked("4"), **raw}), "loops_short").text


def test_loops_that_cannot_come_from_the_offcuts_are_bought() -> None:
    text = notice(planned(marked("4 3/16")), "loops_short").text
    assert "36 short. They take 3 strips of other cloth, 2 3/4 in wide and 52 in long." in text
    longer = {
        "panel.width": "4 in",
        "panel.casing": "5 in",
        "heading.loop_length": "5 in",
        "heading.count": 3,
    }
    text = notice(planned({**marked("13 5/8"), **longer}), "loops_short").text
    assert "12 short. They take 12 strips of other cloth, 2 3/4 in wide and 5 in long." in text


def test_a_rod_too_thick_for_any_loop_on_this_heading() -> None:
    text = notice(planned({"rod.diameter": "2 in", **NEW}), "loop_too_tight").text
    assert "at least 4 3/16 in long, and this heading has room for 4 in at most" in text
    assert text.endswith("Use a rod 1 7/8 in thick at most.")


def test_the_hang_shift_is_told_with_its_numbers() -> None:
    text = notice(planned(), "hang_shift").text
    assert "while it hung by its casing" in text
    assert "upper seam lies 3/4 in below the top edge" in text
    assert "higher" in text
    lower = planned({"panel.header": "2 in", "heading.loop_length": "6 in"})
    assert lower.drop.hang_shift < length("0 in")
    assert " lower, and" in notice(lower, "hang_shift").text
    assert "its header stands 2 in above the rod" in notice(lower, "hang_shift").text


def test_an_odd_mark_is_named() -> None:
    text = notice(planned(marked("13", "13 1/4", "14 1/2", "13 3/4", "14")), "floor_mark_jumps").text
    assert text.startswith("Floor mark 3 of 5, 14 1/2 in, stands 1 in above the line through the others")
    assert "13 1/2 in would be in line" in text


def test_a_floor_that_bends_has_no_odd_mark() -> None:
    found = codes(planned(marked("13", "14", "15", "14", "13")))
    assert "floor_mark_jumps" not in found and "floor_slopes" in found


def test_a_great_many_marks_are_not_weighed_one_by_one() -> None:
    marks = ["13"] * 150 + ["14"]
    assert "floor_slopes" in codes(planned(marked(*marks)))


def test_a_shortfall_smaller_than_the_tape_reads_is_never_called_nothing() -> None:
    tape = Tape.of("inch")
    assert near(tape, inches("1/100")) == "less than 1/16 in"
    assert near(tape, inches("1/32")) == "about 1/16 in"
    assert near(tape, inches(0)) == "0 in"
