"""What is needed, against values worked by hand and laws that hold for any kind of heading and hem."""

from __future__ import annotations

from fractions import Fraction
from math import ceil
from typing import Any

import pytest
from hypothesis import given

from templategen.document.blocks import Heading, Numbers, Points
from templategen.document.on_paper import OnPaper
from templategen.drawing import Drawing
from templategen.lengths import Length, Tape, inches, millimetres
from templategen.planning import JobPlan, Plan, make_plan
from templategen.planning.headings import HEADINGS
from templategen.planning.hems import HEMS
from templategen.spec import Spec
from templategen.templates import draw_templates
from templategen.work_order.needs import Seam, Thing, job_needs, needs
from templategen.work_order.needs.amounts import enough, seams_with, together
from templategen.work_order.needs.headings import HEADING_NEEDS
from templategen.work_order.needs.hems import HEM_NEEDS
from templategen.work_order.needs.seams import seams_of
from templategen.work_order.needs.things import things_of
from templategen.work_order.needs.thread import FACTORS, WASTE, bought, reel, thread_for
from templategen.work_order.needs.tools import tools_of, unpicks
from tests.jobs import building
from tests.planning.building import planned
from tests.strategies import kind_specs

INCH, METRIC = Tape.of("inch"), Tape.of("metric")
ALL_OVER = {"panel.count": 2, "panel.width": "40 in", "panel.length": "90 in"}


def seams(plan: Plan) -> dict[str, Length]:
    """The whole length of the seams of each name."""
    return {name: sum_of(alike) for (name, _, _), alike in seams_with(seams_of(plan)).items()}


def sum_of(alike: list[Seam]) -> Length:
    return Length(sum((seam.total.mm for seam in alike), Fraction(0)))


def things(plan: Plan) -> dict[str, int | Length]:
    return {thing.name: thing.amount for thing in things_of(plan)}


def tools(plan: Plan) -> str:
    return "; ".join(tools_of(plan, seams_of(plan)))


def drawn(plan: Plan) -> list[Drawing]:
    return draw_templates(plan)


def rows(plan: Plan | JobPlan, drawings: list[Drawing], printed: OnPaper | None = None) -> dict[str, tuple[str, str]]:
    """Every row of the blocks: value and working by label."""
    blocks = needs(plan, drawings, printed) if isinstance(plan, Plan) else job_needs(plan, drawings, printed)
    tables = [block for block in blocks if isinstance(block, Numbers)]
    return {row.label: (row.value, row.working) for table in tables for row in table.rows}


# --- thread ------------------------------------------------------------------------------------------


def test_a_seam_of_220_cm_takes_550_cm_of_thread() -> None:
    """The worked example for stitch type 301 (ISO 4915) at 2.5, before what is lost; an extract of a stitch table."""
    seam = Seam("seam", millimetres(2200), 1)
    assert thread_for([seam]) == millimetres(5500) * (1 + WASTE)
    assert Fraction(10, 100) <= WASTE <= Fraction(15, 100), "10 to 15 % is added: the same procedures"


def test_a_zigzag_takes_seven_times_its_seam() -> None:
    """Stitch type 304 in the table of Carr and Latham, as an extract has it."""
    assert FACTORS["zigzag"] == 7 and FACTORS["machine"] == Fraction(5, 2)


def test_thread_is_bought_in_whole_yards_or_metres_rounded_up() -> None:
    assert bought(METRIC, millimetres(6325)) == "7 m"
    assert bought(METRIC, millimetres(7000)) == "7 m"
    assert bought(INCH, inches(36)) == "1 yd"
    assert bought(INCH, inches(Fraction(36001, 1000))) == "2 yd"


def test_a_reel_is_never_said_to_hold_more_than_it_does() -> None:
    """100 m are 109.36 yd."""
    assert (reel(METRIC), reel(INCH)) == ("100 m", "109 yd (100 m)")


def test_a_length_that_must_be_had_is_rounded_up_in_either_unit() -> None:
    """63 sixteenths of an inch are 100.0125 mm, between 100 and 100.1; 4 in are 101.6 mm."""
    assert enough(METRIC, millimetres(100)) == "100 mm (3 15/16 in)"
    assert enough(INCH, inches(4)) == "4 in (102 mm)"
    assert enough(METRIC, millimetres("1001/10")) == "101 mm (4 in)"


# --- by hand -----------------------------------------------------------------------------------------


def test_the_reading_room_by_hand() -> None:
    """Four panels 54 in wide; 36 loops 1 1/8 in wide, 16 from a strip, so three strips; each loop is sewn on twice."""
    assert seams(planned()) == {
        "hem": inches(216),
        "long seams for loops": inches(162),
        "ends of loops": inches(81),
        "loops, sewn on": inches(81),
    }
    # (216 + 162) × 2.5 + 81 × 7 + 81 × 4 = 1836; 1836 × 1.15 = 2111.4 in = 58.65 yd
    assert thread_for(seams_of(planned())) == inches(Fraction(21114, 10))
    value, working = rows(planned(), drawn(planned()))["thread to match the panels"]
    assert value == "59 yd" and "by machine 378 in × 2.5" in working and "a reel holds 109 yd" in working


def test_a_gathering_tape_has_two_rows_and_two_ends() -> None:
    plan = planned({**ALL_OVER, **_only("gathering tape"), "heading.tape_width": "1 in", "heading.drop": "2 in"})
    found = seams(plan)
    assert (found["tape, its edges"], found["tape, its ends"]) == (inches(160), inches(4))
    # 40 + 2 × 3/4 for each of two panels
    assert things(plan)["gathering tape, 1 in wide"] == inches(83)
    assert things(plan)["hooks"] == things(plan)["rings or gliders"] == plan.counts["hooks_needed"]


def test_pleats_are_sewn_down_and_caught_at_the_foot_by_hand() -> None:
    """Five pleats on each of two panels, the heading 4 in deep; finished 24 of 40 in: 3.2 in in a pleat."""
    changes = {"heading.drop": "2 in", "heading.pleats": 5, "heading.finished_width": "24 in"}
    plan = planned({**ALL_OVER, **_only("pinch pleats"), **changes})
    found = seams(plan)
    assert found["pleats"] == inches(40)
    assert found["feet of the pleats"] == 10 * inches(Fraction(32, 10)) / 6
    assert things(plan)["hooks"] == 14 and things(plan)["stiffening, 4 in deep"] == inches(80)
    boxes = planned({**ALL_OVER, **_only("box pleats"), **changes})
    assert seams(boxes)["feet of the pleats"] == 10 * inches(Fraction(16, 10))


def test_eyelets_are_counted_with_one_to_try() -> None:
    plan = planned({**ALL_OVER, **_only("eyelets"), "heading.eyelet_inside": "1 in", "heading.count": 8})
    assert things(plan)["eyelets, 1 in inside and 2 in outside"] == 17
    assert "punch" in tools(plan) and "closes the eyelets" in tools(plan)
    assert "punch" not in tools(planned())


@pytest.mark.parametrize(
    ("changes", "names", "by_hand"),
    [
        ({"heading.style": "rings", "heading.held_by": "sewn rings"}, {"rings", "button thread"}, True),
        ({"heading.style": "rings", "heading.held_by": "clips"}, {"clips"}, False),
        ({"heading.style": "hooks", "heading.fixed": "sewn on"}, {"hooks", "rings", "button thread"}, True),
        ({"heading.style": "hooks", "heading.fixed": "pinned on", "heading.hooks_on": "gliders"},
         {"hooks", "gliders"}, False),
    ],
)  # fmt: skip
def test_rings_clips_and_hooks(changes: dict[str, Any], names: set[str], by_hand: bool) -> None:
    plan = planned({**ALL_OVER, **_only("rings"), "heading.drop": "2 in", "heading.count": 7, **changes})
    found = {name: amount for name, amount in things(plan).items() if not name.startswith("pins")}
    assert found.keys() == names
    assert {amount for name, amount in found.items() if name != "button thread"} == {14}
    assert found.get("button thread", inches(252)) == inches(252), "14 × 18 in"
    assert ("by hand" in tools(plan)) == by_hand


def test_tabs_are_sewn_on_with_two_rows_by_machine() -> None:
    plan = planned({**ALL_OVER, **_only("tabs"), "heading.count": 5, "heading.tab_width": "2 in"})
    found = seams(plan)
    assert found["tabs, sewn on"] == found["ends of tabs"] == inches(2) * 20
    assert "thimble" not in tools(plan)


def test_other_cloth_is_asked_for_only_where_the_offcuts_do_not_yield_the_pieces() -> None:
    assert not [name for name in things(planned()) if name.startswith("other cloth")]
    plan = planned({"drop.floor_marks": ["0 in"], "drop.rod_to_floor": None, "panel.hem": "0 in",
                    "panel.turn_under": "0 in"})  # fmt: skip
    assert plan.offcut.pieces is not None and not plan.offcut.pieces.available_unpicked
    assert things(plan)["other cloth for loops, in strips 2 3/4 in wide"] == 36 * inches("13/4")
    assert seams(plan)["long seams for loops"] == 36 * inches("13/4")


@pytest.mark.parametrize(
    ("changes", "found"),
    [
        ({}, {"hem": 80}),
        ({"hem.style": "equal double fold", "hem.turn_under": None}, {"hem": 80}),
        ({"hem.style": "single fold with tape", "hem.turn_under": None}, {"hem tape, sewn on": 80, "hem": 80}),
        ({"hem.style": "single fold with tape", "hem.turn_under": None, "hem.held_by": "bonding"}, {}),
        ({"hem.style": "faced"}, {"facing, sewn on": 80, "facing, its upper edge": 80}),
        ({"hem.style": "border", "hem.turn_under": None}, {"border, sewn on": 80, "border, its back edge": 80}),
        ({"hem.style": "border", "hem.turn_under": None, "hem.own_hem": "1 in"},
         {"border, sewn on": 80, "border's seam, neatened": 80, "border's hem": 80}),
    ],
)  # fmt: skip
def test_the_seams_of_each_hem(changes: dict[str, Any], found: dict[str, int]) -> None:
    plan = planned({**ALL_OVER, **_only("casing"), **changes})
    assert seams(plan) == {name: inches(length) for name, length in found.items()}
    if not found:
        assert "sewing machine" not in tools(plan) and "snips" not in tools(plan), "nothing is sewn at all"


def test_what_each_hem_takes_besides_thread() -> None:
    """40 in wide, two panels, half an inch more at each end: 2 × 41."""
    tape = {"hem.style": "single fold with tape", "hem.turn_under": None}
    assert things(planned({**ALL_OVER, **tape}))["hem tape"] == inches(82)
    assert things(planned({**ALL_OVER, **tape, "hem.held_by": "bonding"}))["bonding web"] == inches(80)
    faced = things(planned({**ALL_OVER, "hem.style": "faced", "hem.depth": "4 in", "hem.turn_under": "1/2 in"}))
    assert faced["strips of other cloth for the facing, 5 in × 41 in"] == 2


def test_side_hems_run_the_length_of_the_cut_cloth_with_the_opened_top() -> None:
    """90 + casing 3 opened − cut line; one new edge on each of two panels; the top's row over it is closed again."""
    plan = planned({**ALL_OVER, "sides.finished_width": "30 in"})
    found = seams(plan)
    assert found["side hems"] == 2 * (inches(93) - plan.figures["cut_line"].value)
    assert found["top, closed again"] == 2 * inches(4)
    split = planned({**ALL_OVER, "sides.split": 2})
    assert seams(split)["side hems"] == 2 * found["side hems"]


def test_side_hems_of_a_panel_whose_length_nobody_gave_are_not_guessed() -> None:
    plan = planned({"panel.length": None, "drop.rod_to_floor": None, "sides.finished_width": "30 in"})
    found = rows(plan, drawn(plan))
    assert found["side hems"][0] == "not known" and "write panel.length" in found["side hems"][1]
    assert "without side hems, whose length is not known" in found["thread to match the panels"][1]


def test_mitres_are_sewn_by_hand_at_two_corners_of_each_panel() -> None:
    """Hem 4 in, side hem 1 in: the seam is √17 in; 4 (1 + 1) = 8 in of the side hem are opened, 4 lie under the hem."""
    plan = planned({**ALL_OVER, "sides.mitre": True, "sides.hem": "1 in", "sides.turn_under": "1 in",
                    "hem.turn_under": "4 in"})  # fmt: skip
    found = seams(plan)
    assert float(found["mitres"].inches) == pytest.approx(4 * 17**0.5)
    assert found["side hems, above the mitres"] == inches(16)


def test_pockets_of_weights() -> None:
    """40 in, no further apart than 24: 3 on each panel. Pocket 1 1/4 + 2 × 1/4 wide, 2 × (1 1/4 + 1/4) long."""
    plan = planned({**ALL_OVER, "weights.every": "24 in"})
    assert seams(plan)["pockets for weights"] == 6 * inches("19/4")
    assert seams(plan)["pockets, sewn to the hem"] == 6 * inches("7/4")
    assert things(plan)["weights, 1 in across"] == 6
    assert things(plan)["pieces of cloth for pockets, 1 3/4 in × 3 in"] == 6


def test_a_lining_has_thread_of_its_own() -> None:
    plan = planned({**ALL_OVER, "lining.cut_shorter": "5 in"})
    long, found = plan.figures["lining_cut_length"].value, seams(plan)
    assert found["lining, its sides"] == 4 * long
    assert found["lining, its hem"] == found["lining, sewn in"] == inches(76)
    told = rows(plan, drawn(plan))
    of_it = (4 * long + inches(152)) * Fraction(5, 2) * Fraction(115, 100)
    assert told["thread to match the lining"][0] == f"{ceil(of_it / inches(36))} yd"


def test_a_top_folded_anew_is_stitched_unless_the_heading_holds_it() -> None:
    rings = {**_only("rings"), "heading.drop": "2 in", "panel.casing": "1/2 in"}
    assert seams(planned({**ALL_OVER, **rings, **_old_rings()}))["top, folded anew"] == inches(80)
    tape = {**_only("gathering tape"), "heading.drop": "2 in", "panel.casing": "1/2 in"}
    assert "top, folded anew" not in seams(planned({**ALL_OVER, **tape, **_old_rings()}))


@pytest.mark.parametrize(("way", "name"), [("tuck", "tuck"), ("hem", "hem, again after washing")])
def test_what_is_carried_for_shrinkage_is_sewn(way: str, name: str) -> None:
    plan = planned({**ALL_OVER, "fabric.shrinkage": "3 %", "fabric.shrinkage_in": way})
    assert seams(plan)[name] == inches(80) and unpicks(plan)


def test_pins_stand_a_hands_breadth_apart() -> None:
    """54 in: 13 1/2 spaces of 4 in, so 14 of them and 15 pins, on four panels."""
    assert things(planned())["pins, a hand's breadth apart"] == 60


def test_an_unpicker_is_asked_for_only_where_something_is_unpicked() -> None:
    casing = {**ALL_OVER, **_only("casing"), "panel.hem": "0 in", "panel.turn_under": "0 in"}
    assert "unpicker" not in tools(planned(casing))
    assert "unpicker" in tools(planned({**casing, "panel.hem": "20 in"}))


def test_card_by_the_drawings() -> None:
    plan = planned()
    cards = [each for each in drawn(plan) if each.name in ("hem gauge card", "cut gauge")]
    area = sum(float(each.length) * float(each.depth) for each in cards) / 25.4**2
    assert rows(plan, drawn(plan))["card"][0] == f"at least {ceil(area)} sq in"
    assert "card" not in rows(plan, [])


def test_paper_and_adhesive_tape_are_told_once_the_layout_is_known() -> None:
    plan = planned()
    strip = next(each for each in drawn(plan) if each.name == "spacing strip")
    told = rows(plan, drawn(plan), OnPaper(9, {"spacing strip": 5}))
    assert told["paper"][0] == "9 sheets"
    assert told["adhesive tape for the joins"][0] == enough(plan.tape, Length(Fraction(strip.depth) * 5))
    assert not {"paper", "adhesive tape for the joins"} & rows(plan, drawn(plan)).keys()


def test_the_blocks_in_order() -> None:
    title, ready, sewn, points = needs(planned(), drawn(planned()))
    assert isinstance(title, Heading) and title.text == "What is needed"
    assert isinstance(ready, Numbers) and isinstance(sewn, Numbers) and isinstance(points, Points)
    assert points.rows[0].startswith("A steel or wooden rule") and len(set(points.rows)) == len(points.rows)


# --- several windows ---------------------------------------------------------------------------------


def test_alike_things_of_several_windows_are_added_up_and_stand_once() -> None:
    """8 panels of 54 in and 2 of 42: 432 + 84 in of hem; 15 and 12 pins on each."""
    told = rows(building.planned(), [])
    assert told["hem"] == ("516 in (13107 mm)", "8 × 54 in + 2 × 42 in")
    assert told["pins, a hand's breadth apart"][0] == "144"
    assert "west window: 2 × 12" in told["pins, a hand's breadth apart"][1]


def test_things_that_differ_in_size_stay_apart() -> None:
    east, west = Thing("tape 1 in wide", inches(3), ""), Thing("tape 2 in wide", inches(4), "")
    found = together({"east": [east], "west": [west]})
    assert [thing.amount for thing in found] == [inches(3), inches(4)]


def test_what_one_window_alone_needs_is_told_without_its_name() -> None:
    (alone,) = together({"east": [Thing("hooks", 4, "4 × 1")], "west": []})
    assert alone == Thing("hooks", 4, "4 × 1")


# --- laws --------------------------------------------------------------------------------------------


def test_every_kind_says_what_it_needs() -> None:
    assert HEADING_NEEDS.keys() == HEADINGS.keys() and HEM_NEEDS.keys() == HEMS.keys()


@given(kind_specs())
def test_what_holds_of_any_kind(spec: Spec) -> None:
    """All laws of one spec, since to find one that can be read takes longer than any of them."""
    plan = make_plan(spec)
    _every_seam_is_positive_and_nothing_needed_is_negative(plan)
    _thread_rises_with_the_panels(spec, plan)
    _metric_and_inch_agree(spec, plan)
    _there_is_a_tool_for_every_way_of_sewing(plan)


def _every_seam_is_positive_and_nothing_needed_is_negative(plan: Plan) -> None:
    for seam in seams_of(plan):
        assert seam.times > 0 and (seam.each is None or seam.each.mm > 0), seam
    for thing in things_of(plan):
        assert (thing.amount.mm if isinstance(thing.amount, Length) else thing.amount) > 0, thing
    labels = [row for block in needs(plan, drawn(plan)) if isinstance(block, Numbers) for row in block.rows]
    assert all(row.value and row.working for row in labels)
    assert len({row.label for row in labels}) == len(labels)


def _thread_rises_with_the_panels(spec: Spec, plan: Plan) -> None:
    twice = spec.model_copy(update={"panel": spec.panel.model_copy(update={"count": 2 * spec.panel.count})})
    once, more = (thread_for(seams_of(each)) for each in (plan, make_plan(twice)))
    assert more > once or not once.mm


def _metric_and_inch_agree(spec: Spec, one: Plan) -> None:
    """The same panels need the same, whatever the numbers are shown in."""
    other = spec.model_copy(update={"units": "metric" if spec.units == "inch" else "inch", "tape_step": None})
    two = make_plan(other)
    assert seams_of(one) == seams_of(two)
    assert [thing.amount for thing in things_of(one)] == [thing.amount for thing in things_of(two)]
    assert len(list(tools_of(one, seams_of(one)))) == len(list(tools_of(two, seams_of(two))))


def _there_is_a_tool_for_every_way_of_sewing(plan: Plan) -> None:
    ways = {seam.way for seam in seams_of(plan)}
    assert ("sewing machine" in tools(plan)) == bool(ways & {"machine", "zigzag"})
    assert "hand" not in ways or "thimble" in tools(plan)


def _only(style: str) -> dict[str, Any]:
    """The reading room's heading taken away, another style in its place."""
    of_loops = ("count", "edge_inset", "loop_length", "loop_width", "lower_allowance", "upper_turn")
    return {f"heading.{name}": None for name in of_loops} | {"heading.style": style}


def _old_rings() -> dict[str, Any]:
    return {"panel.heading.style": "rings", "panel.heading.drop": "2 in", "panel.heading.set_below": "0 in",
            "drop.hung_by": "old heading"}  # fmt: skip
