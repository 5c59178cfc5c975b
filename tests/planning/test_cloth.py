"""The cloth: shrinkage, repeat, lots, load, cover, leftovers; each held against print, geometry, or laws."""

from __future__ import annotations

import json
from fractions import Fraction
from itertools import pairwise
from typing import Any

import numpy as np
import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from templategen.lengths import NOTHING, Length, inches, millimetres
from templategen.planning import Plan, make_plan, plan_record, tell_plan
from templategen.planning.cloth.cover import takes_up
from templategen.planning.cloth.load import cloth_length, reactions, weigh
from templategen.planning.cloth.repeat import plan_repeat, raised_to, remainder
from templategen.planning.cloth.shrinkage import made_for
from templategen.planning.fullness import panels_for
from templategen.spec import Spec
from templategen.spec.fabric import Fabric
from templategen.spec.quantities import ClothWeight, Mass, Percent, Times
from templategen.writers.text import text as as_text
from tests.strategies import specs as any_specs
from tests.strategies import workshop_specs
from tests.work_order.said import words

from .building import codes, job, length, notice, planned
from .jobs import specs as absurd_specs

few = settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.too_slow])

# Marked on its new heading, nothing shifts: finish = mark + 3/4 in, and the panel is 96 in long.
NEW: dict[str, Any] = {"drop.hung_by": "new heading", "drop.rod_to_floor": None}


def cloth(**changes: Any) -> dict[str, Any]:
    return {**NEW, **{f"fabric.{name}": value for name, value in changes.items()}}


def amount(plan: Plan, key: str) -> Fraction:
    (found,) = [each.value for section in plan.sections for each in section.amounts if each.key == key]
    return found


# --- shrinkage ----------------------------------------------------------------------------------------


def test_astm_d3691_shrinkage() -> None:
    """ASTM D3691/D3691M-09, Table 1: 3 % after five launderings; 84 in lose 2.52 in."""
    assert inches(84) * Percent(Fraction(3)).share == inches("2.52")
    made = made_for(inches(84), Fraction(3, 100))
    assert made - made * Fraction(3, 100) == inches(84)
    assert float(made.inches) == pytest.approx(86.598, abs=0.0005)  # derived: 84 / 0.97
    assert float((made - inches(84) * Fraction(103, 100)).inches) == pytest.approx(0.078, abs=0.0005)


@few
@given(workshop_specs(), st.fractions(Fraction(1, 10), 25, max_denominator=20), st.sampled_from(["hem", "tuck"]))
def test_washed_and_let_out_the_panel_is_as_long_as_was_wanted(spec: Spec, share: Fraction, where: str) -> None:
    """The cloth itself is shrunk: what is left of it, folded as the plan says, ends where it should."""
    assume(spec.panel.length is not None)
    before = make_plan(spec)
    fabric = Fabric(shrinkage=Percent(share), shrinkage_in=where)
    plan = make_plan(spec.model_copy(update={"fabric": fabric}))
    wanted = max(spec.panel.length - mark.finish for mark in before.drop.marks)
    assume(wanted > NOTHING)
    kept = 1 - share / 100
    assert plan.shrinkage is not None and plan.shrinkage.carried_in == where
    raw = max(spec.panel.length - mark.cut for mark in plan.drop.marks)  # top edge to raw edge, as it is cut
    if where == "hem":
        assert raw * kept == wanted + before.hem.allowance  # folded again to the hem that was asked for
        assert plan.hem.allowance == before.hem.allowance + plan.shrinkage.extra
        for old, new in zip(before.drop.marks, plan.drop.marks, strict=True):
            assert old.finish == new.finish  # before it is washed it ends where it should, too
    else:
        hung = max(spec.panel.length - mark.finish for mark in plan.drop.marks)
        assert hung * kept == wanted and raw == hung + before.hem.allowance
        assert hung - plan.drop.tuck == wanted
        figures = plan.figures
        assert 2 * figures["tuck_depth"].value == plan.drop.tuck
        assert figures["tuck_upper_line"].value - figures["tuck_lower_line"].value == plan.drop.tuck
    rule = plan.shrinkage.length * (1 + share / 100) * kept
    assert plan.shrinkage.length - rule == plan.shrinkage.short_by_rule * kept > NOTHING


def test_the_hem_that_carries_it_is_what_the_card_and_the_steps_show() -> None:
    """81 5/8 in finished and 4 5/8 in of hem, 3 % of it lost: 86 1/4 in x 3/97 is carried."""
    plan = planned(cloth(shrinkage="3 %"))
    extra = inches(Fraction("86.25") * 3 / 97)
    assert plan.hem.depth == inches(4) + extra and plan.figures["shrinkage_extra"].value == extra
    assert plan.figures["hem_after_washing"].value == inches(4)
    assert plan.figures["hem_depth"].working.startswith("as given 4 in + carried for shrinkage 2 11/16 in")
    assert any(line.length == plan.hem.depth for line in plan.hem.lines)
    assert amount(plan, "shrinkage") == 3


def test_cloth_that_was_washed_carries_nothing() -> None:
    for none in (cloth(shrinkage="3 %", washed=True), cloth(shrinkage="0 %"), NEW):
        plan = planned(none)
        assert plan.shrinkage is None and plan.drop == planned(NEW).drop
        assert not {"cloth", "load", "cover", "leftovers"} & {section.key for section in plan.sections}


# --- repeat -------------------------------------------------------------------------------------------


def test_the_pattern_falls_where_a_rule_says() -> None:
    """Derived: finish 14 3/8 in; a place 5 in up, repeated every 12 in, is next at 17: 2 5/8 in above the hem."""
    plan = planned(cloth(repeat="12 in", repeat_at=["5 in"]))
    assert plan.figures["repeat_falls"].value == inches("21/8") == plan.figures["repeat_wanted"].value


@few
@given(
    st.fractions(20, 900, max_denominator=8).map(Length),
    st.lists(st.fractions(0, 3000, max_denominator=8).map(Length), min_size=1, max_size=6),
)
def test_raised_patterns_fall_alike_and_none_is_raised_by_a_whole_repeat(repeat: Length, above: list[Length]) -> None:
    wanted = above[0]
    for place, raised in zip(above, raised_to(tuple(above), wanted, repeat), strict=True):
        assert NOTHING <= raised < repeat and remainder(place + raised - wanted, repeat) == NOTHING


@pytest.mark.parametrize("top", [{}, {"heading.top_cut": "1 in"}, {"heading.style": "casing", "heading.depth": "4 in"}])
@pytest.mark.parametrize("wanted", ["0 in", "2 in", "11 7/8 in"])
def test_the_top_cut_that_a_notice_names_brings_the_pattern_there(top: dict[str, Any], wanted: str) -> None:
    if "heading.style" in top:  # a casing has none of the loops' fields
        loops = ("count", "edge_inset", "loop_length", "loop_width", "lower_allowance", "upper_turn")
        top = {**top, **{f"heading.{name}": None for name in loops}}
    before = {**cloth(repeat="12 in", repeat_at=["5 in"], repeat_above_hem=wanted), "drop.hung_by": "casing", **top}
    text = notice(planned(before), "repeat_moves").text
    cut = text.partition("heading.top_cut ")[2].partition(":")[0].removeprefix("about ")
    after = planned({**before, "heading.top_cut": cut})
    off = plan_repeat(after.spec, after.drop, after.top)
    assert off is not None
    apart = min(off.raised[0], off.repeat - off.raised[0])
    assert apart <= inches("1/32")  # the cut was read off a tape of sixteenths


def test_panels_that_differ_are_moved_to_where_it_costs_least() -> None:
    spec = {"repeat": "12 in", "repeat_at": ["5 in", "7 in", "5 in", "5 in"]}
    plan = planned(cloth(**spec))
    found = plan_repeat(plan.spec, plan.drop, plan.top)
    assert found is not None
    # Three panels stand 2 in below the fourth; cut tops take 3 1/2 in for the casing anew, so 10 is the less.
    assert [each.inches for each in found.raised] == [0, 10, 0, 0]
    text = notice(plan, "repeat_moves").text
    assert "on panel 2 10 in higher (heading.top_cut 6 1/2 in: its top edge 10 in below the old)" in text


# --- lots ---------------------------------------------------------------------------------------------


def test_lots_end_alike() -> None:
    """Each lot's cut line leaves as much cloth above it as the marked panel's does."""
    plan = planned({**NEW, "panel.lots": ["95 1/2 in", "96 1/4 in"]})
    kept = length("96 in") - plan.figures["cut_line"].value
    assert length("95 1/2 in") - plan.figures["cut_line_lot_2"].value == kept
    assert length("96 1/4 in") - plan.figures["cut_line_lot_3"].value == kept
    assert plan.offcut.depth == plan.figures["cut_line_lot_2"].value  # what every panel yields at least
    text = notice(plan, "lots_differ").text
    assert "lot 2 is 1/2 in shorter, and cut 9 1/4 in up; lot 3 is 1/4 in longer, and cut 10 in up" in text


def test_a_lot_whose_old_hem_is_in_the_way_is_named() -> None:
    """Cut 9 3/4 in up on the marked panel, 1 3/4 in up on the other, and the old hem is 2 in deep."""
    assert "its old hem unpicked first" in notice(planned({**NEW, "panel.lots": ["88 in"]}), "lots_differ").text
    assert "unpicked" not in notice(planned({**NEW, "panel.lots": ["88 1/4 in"]}), "lots_differ").text


# --- load ---------------------------------------------------------------------------------------------


def test_continuous_beam_reactions_in_print() -> None:
    """T. G. Hicks, Civil Engineering Formulas, Table 2.1, Uniformly Loaded Continuous Beams over Equal Spans.

    The shear left and right of each support up to the middle one, in w l: what the support bears is their sum.
    """
    table = {
        2: ("0 1/2",),
        3: ("0 3/8", "5/8 5/8"),
        4: ("0 4/10", "6/10 5/10"),
        5: ("0 11/28", "17/28 15/28", "13/28 13/28"),
        6: ("0 15/38", "23/38 20/38", "18/38 19/38"),
        7: ("0 41/104", "63/104 55/104", "49/104 51/104", "53/104 53/104"),
        8: ("0 56/142", "86/142 75/142", "67/142 70/142", "72/142 71/142"),
    }
    for supports, printed in table.items():
        values = [sum(map(Fraction, each.split()), Fraction(0)) / (supports - 1) for each in printed]
        assert list(reactions(supports))[: len(values)] == values
        assert reactions(supports) == reactions(supports)[::-1]


@pytest.mark.parametrize("supports", [2, 3, 4, 7, 12])
def test_reactions_against_a_beam_of_finite_elements(supports: int) -> None:
    """Euler-Bernoulli beam elements, assembled and solved as numbers: knows nothing of three moments."""
    nodes = supports
    stiff = np.array([[12, 6, -12, 6], [6, 4, -6, 2], [-12, -6, 12, -6], [6, 2, -6, 4]], dtype=float)
    load = np.array([-1 / 2, -1 / 12, -1 / 2, 1 / 12])
    whole, force = np.zeros((2 * nodes, 2 * nodes)), np.zeros(2 * nodes)
    for span in range(nodes - 1):
        at = slice(2 * span, 2 * span + 4)
        whole[at, at] += stiff
        force[at] += load
    turns = np.arange(1, 2 * nodes, 2)
    moved = np.zeros(2 * nodes)
    moved[turns] = np.linalg.solve(whole[np.ix_(turns, turns)], force[turns])
    borne = (whole @ moved - force)[0::2] / (nodes - 1)
    assert [float(each) for each in reactions(supports)] == pytest.approx(list(borne), abs=1e-12)
    assert sum(reactions(supports)) == 1


def test_what_hangs_is_weighed_by_hand() -> None:
    """Derived: 96 − 9 3/4 + 3 in of cloth 54 in wide, and nine loops of 3 1/4 by 2 3/4 in, at 200 g/m2."""
    plan = planned({**cloth(weight="200 g/m2"), "rod.brackets": 3})
    square_inches = Fraction("89.25") * 54 + 9 * Fraction("3.25") * Fraction("2.75")
    panel = square_inches * Fraction("25.4") ** 2 / 10**6 * 200 / 1000
    assert amount(plan, "panel_weight") == panel and amount(plan, "hung_weight") == 4 * panel
    assert amount(plan, "bracket_load_closed") == 4 * panel * Fraction(5, 8)
    assert amount(plan, "bracket_load_open") == 2 * panel
    alone = planned({**cloth(weight="200 g/m2"), "panel.count": 1})
    assert amount(alone, "bracket_load_open") == amount(alone, "hung_weight")
    one_way = planned({**cloth(weight="200 g/m2"), "rod.opens": "one way"})
    assert amount(one_way, "bracket_load_open") == 4 * panel


def test_loads_are_rounded_up() -> None:
    metric, inch = job({"units": "metric"}), job()
    assert weigh(metric, Fraction(101, 100)) == "1.1 kg (2.3 lb)"
    assert weigh(inch, Fraction("0.45359237")) == "1.0 lb (0.5 kg)"


@few
@given(workshop_specs(), st.integers(0, 25), st.sampled_from(["hem", "tuck"]), st.booleans())
def test_all_the_cloth_is_accounted_for(spec: Spec, share: int, where: str, cut_top: bool) -> None:
    """Finished + folded + cut off = bought, whatever is carried and wherever."""
    top_cut = millimetres(30) if cut_top else NOTHING
    heading = spec.heading.model_copy(update={"top_cut": top_cut})
    fabric = Fabric(weight=ClothWeight(Fraction(200)), shrinkage=Percent(Fraction(share)), shrinkage_in=where)
    known = spec.panel.model_copy(update={"length": spec.panel.length or inches(96)})
    level = spec.drop.model_copy(update={"floor_marks": spec.drop.floor_marks[:1]})
    changes = {"fabric": fabric, "heading": heading, "panel": known, "drop": level}
    plan = make_plan(spec.model_copy(update=changes))
    panel, mark = plan.spec.panel, plan.drop.marks[0]
    assert panel.length is not None
    old_top = panel.header + panel.casing
    bought = panel.length + old_top + panel.top_turn + panel.hem + panel.turn_under
    hung = cloth_length(plan.spec, plan.drop, plan.top)
    off = mark.cut + panel.hem + panel.turn_under  # below the cut line, the old hem let down; negative where short
    off += top_cut + old_top + panel.top_turn if cut_top else NOTHING  # the strip, and what is left of the back layer
    assert hung is not None and hung + off == bought
    finished = panel.length - plan.top.lowered - mark.finish - plan.drop.tuck
    back = plan.top.needed + heading.top_turn if cut_top else old_top + panel.top_turn
    assert finished + plan.drop.tuck + plan.hem.allowance + back == hung


# --- cover --------------------------------------------------------------------------------------------


def test_ufgs_fullness() -> None:
    """UFGS-12491N, drapery section: 200, 250, 300 % are 2, 2.5, 3 times rod + overlaps + returns."""
    plan = planned({"rod.fullness": "2.5 times", "rod.overlap": "3 in", "rod.returns": "3 in"})
    for key, times, panels in (("2", 2, 3), ("2_5", Fraction(5, 2), 4), ("3", 3, 4), ("1_5", Fraction(3, 2), 2)):
        assert amount(plan, f"panels_for_{key}") == panels == panels_for(plan.spec, Fraction(times))
    shown = {each.key: each.working for section in plan.sections for each in section.amounts}
    assert "250 % (UFGS-12491N)" in shown["panels_for_2_5"] and "wanted" in shown["panels_for_2_5"]
    assert "69 in" in shown["panels_for_2"]


def test_how_a_heading_takes_its_cloth_up() -> None:
    spec = job()
    assert takes_up(spec) == "flat"
    for style, how in (("casing", "gathered"), ("gathering tape", "gathered"), ("box pleats", "pleated")):
        heading = spec.heading.model_copy(update={"style": style})
        assert takes_up(spec.model_copy(update={"heading": heading})) == how


def test_loops_lie_side_by_side_on_the_rod() -> None:
    """Derived: two panels of nine loops, 1 1/8 in each, stand 20 1/4 in wide; a sixth of the rod would be 10."""
    plan = planned({"rod.glass": "40 in"})
    assert plan.figures["stack_back"].value == inches("81/4")
    assert "would be 10 in" in plan.figures["stack_back"].working
    few_loops = planned({"rod.glass": "40 in", "panel.count": 1, "heading.count": 3})
    assert few_loops.figures["stack_back"].value == inches(20)  # a third, at one end
    assert few_loops.figures["rod_beside_glass"].value == inches(10)


# --- leftovers ----------------------------------------------------------------------------------------


def test_what_is_left_over_and_what_it_yields() -> None:
    """Offcut 12 1/8 in with its hem let down, one strip of 2 3/4 in: 9 3/8 in by 54 in, from each of four panels."""
    plan = planned(cloth(leftovers=True))
    assert plan.figures["left_depth"].value == inches("75/8")
    assert amount(plan, "tie_backs") == 8  # two of 24 by 7 in from each
    assert amount(plan, "facing_strips") == 4  # 4 5/8 + 1/2 in deep
    upright = planned(cloth(leftovers=True, tie_back_length="9 in", tie_back_width="5 in"))
    assert amount(upright, "tie_backs") == 40  # ten upright, and not six lying
    none = planned({**cloth(leftovers=True), "drop.floor_marks": ["3 in"]})
    assert none.figures["left_depth"].value == NOTHING and amount(none, "tie_backs") == 0


# --- all of it ----------------------------------------------------------------------------------------

EVERYTHING: dict[str, Any] = {
    **NEW, "fabric.weight": "220 g/m2", "fabric.shrinkage": "3 %", "fabric.repeat": "12 in",
    "fabric.repeat_at": ["5 in", "7 in", "5 in", "6 in"], "fabric.leftovers": True, "rod.fullness": "2 times",
    "rod.glass": "40 in", "rod.brackets": 3, "rod.bracket_rating": "5 kg", "panel.lots": ["95 in", "96 in"],
}  # fmt: skip


@st.composite
def fabrics(draw: st.DrawFn, spec: Spec) -> Spec:
    """A spec with anything the reader takes said of its cloth, its rod's load and its lots."""
    def some(least: int, most: int) -> st.SearchStrategy[Length]:
        return st.fractions(least, most, max_denominator=16).map(Length)

    repeat = draw(st.none() | some(1, 60_000).filter(bool))
    places = draw(st.sampled_from([1, spec.panel.count])) if repeat else 0
    fabric = Fabric(
        weight=draw(st.none() | st.fractions(10, 2000, max_denominator=9).map(ClothWeight)),
        shrinkage=draw(st.none() | st.fractions(0, 25, max_denominator=9).map(Percent)),
        shrinkage_in=draw(st.sampled_from(["hem", "tuck"])),
        repeat=repeat,
        repeat_at=tuple(draw(some(0, 60_000)) for _ in range(min(places, 12))) if places <= 12 else (NOTHING,),
        repeat_above_hem=draw(st.none() | some(0, 60_000)),
        leftovers=draw(st.booleans()),
    )
    rod = spec.rod.model_copy(update={
        "fullness": draw(st.none() | st.fractions(1, 10, max_denominator=999).map(Times)),
        "glass": draw(st.none() | some(1, 60_000)),
        "brackets": draw(st.integers(2, 50)),
        "bracket_rating": draw(st.none() | st.fractions(1, 1000, max_denominator=9).map(Mass)),
    })
    lots = tuple(draw(st.lists(some(1, 60_000), max_size=3)))
    drop = spec.drop.model_copy(update={
        "to": draw(st.sampled_from(["floor", "sill", "apron", "radiator"])),
        "follows": draw(st.sampled_from(["marks", "highest"])),
    })
    panel = spec.panel.model_copy(update={"lots": lots})
    return spec.model_copy(update={"fabric": fabric, "rod": rod, "panel": panel, "drop": drop})


@settings(few, max_examples=60)
@given((absurd_specs() | any_specs()).flatmap(fabrics))
def test_whatever_is_said_of_the_cloth_the_plan_can_be_told(spec: Spec) -> None:
    plan = make_plan(spec)
    assert all(len(line) <= 96 for line in tell_plan(plan).splitlines())
    assert len({each.code for each in plan.notices}) == len(plan.notices)
    figures = [each.key for section in plan.sections for each in section.figures]
    amounts = [each.key for section in plan.sections for each in section.amounts]
    assert len(set(figures)) == len(figures) and len(set(amounts)) == len(amounts)
    assert json.loads(json.dumps(plan_record(plan), allow_nan=False))["title"] == spec.title
    assert as_text(words(plan))


def test_inch_and_metric_agree() -> None:
    inch, metric = planned(EVERYTHING), planned({**EVERYTHING, "units": "metric"})
    assert {key: each.value for key, each in inch.figures.items()} == {k: e.value for k, e in metric.figures.items()}
    for one, other in zip(inch.sections, metric.sections, strict=True):
        assert [each.value for each in one.amounts] == [each.value for each in other.amounts]
    assert codes(inch) == codes(metric)


def test_all_of_it_is_told_and_recorded() -> None:
    plan = planned(EVERYTHING)
    told = tell_plan(plan)
    assert max(map(len, told.splitlines())) <= 96
    for title in ("The cloth", "How full, and how it opens", "The load", "Cloth left over"):
        assert title in told
    amounts = plan_record(plan)["amounts"]
    assert isinstance(amounts, dict)
    assert amounts["shrinkage"] == {"value": 3.0, "unit": "%", "shown": "3 %", "working": "of its length, as given"}
    keys = [each.key for section in plan.sections for each in section.amounts]
    assert list(amounts) == keys and all(a != b for a, b in pairwise(sorted(keys)))


LIMITS: list[tuple[str, str, dict[str, Any], dict[str, Any]]] = [
    ("shrinks_much", "warning", cloth(shrinkage="3.1 %"), cloth(shrinkage="3 %")),
    # a tuck of half of 81 5/8 q / (1 - q) reaches below a hem of 2 in and 1/2 in from q = 5/86.625 on
    ("tuck_hangs_out", "warning",
     {**cloth(shrinkage="5.8 %", shrinkage_in="tuck"), "hem.depth": "2 in"},
     {**cloth(shrinkage="5.7 %", shrinkage_in="tuck"), "hem.depth": "2 in"}),
    ("repeat_moves", "warning",
     cloth(repeat="12 in", repeat_at=["5 in"], repeat_above_hem="2 9/16 in"),
     cloth(repeat="12 in", repeat_at=["5 in"], repeat_above_hem="2 5/8 in")),
    # 9 3/4 in to the cut and 2 3/8 in of hem are spare; the casing is made anew, 3 1/2 in
    ("repeat_too_short", "warning",
     cloth(repeat="40 in", repeat_at=["14 3/8 in"], repeat_above_hem="12 3/16 in"),
     cloth(repeat="40 in", repeat_at=["14 3/8 in"], repeat_above_hem="12 1/8 in")),
    # cut 9 3/4, hem and turn-under 2 3/8: a lot 12 1/8 in shorter just does
    ("lot_too_short", "stop", {**NEW, "panel.lots": ["83 13/16 in"]}, {**NEW, "panel.lots": ["83 7/8 in"]}),
    ("lots_differ", "note", {**NEW, "panel.lots": ["95 15/16 in"]}, {**NEW, "panel.lots": ["96 in"]}),
    ("less_full_than_wanted", "warning", {"rod.fullness": "3.61 times"}, {"rod.fullness": "3.6 times"}),
    # 18 loops of 1 1/8 in are 20 1/4 in; (60 - glass) / 2 is beside the glass
    ("stack_covers_glass", "note", {"rod.glass": "19 9/16 in"}, {"rod.glass": "19 1/2 in"}),
    # two of four panels on an end bracket, 1264.5 g
    ("bracket_overloaded", "warning",
     {**cloth(weight="200 g/m2"), "rod.bracket_rating": "1264 g"},
     {**cloth(weight="200 g/m2"), "rod.bracket_rating": "1265 g"}),
]  # fmt: skip


@pytest.mark.parametrize(
    ("code", "level", "outside", "inside"), LIMITS, ids=[f"{at:02d} {case[0]}" for at, case in enumerate(LIMITS)]
)
def test_a_notice_and_just_inside_its_limit(
    code: str, level: str, outside: dict[str, Any], inside: dict[str, Any]
) -> None:
    assert notice(planned(outside), code).level == level
    assert code not in codes(planned(inside))


def test_what_a_notice_names_puts_it_right() -> None:
    """The rod that clears the glass, the panels that are full enough, the hem that the shortest lot allows."""
    text = notice(planned({"rod.glass": "40 in"}), "stack_covers_glass").text
    rod = text.partition("would have to be ")[2].partition(" long")[0]
    assert "stack_covers_glass" not in codes(planned({"rod.glass": "40 in", "rod.length": rod}))
    text = notice(planned({"rod.fullness": 4}), "less_full_than_wanted").text
    assert "it takes 5 panels" in text
    assert "less_full_than_wanted" not in codes(planned({"rod.fullness": 4, "panel.count": 5}))
    short = {**NEW, "panel.lots": ["83 in"]}
    text = notice(planned(short), "lot_too_short").text
    assert "A hem 3 1/8 in deep would just do." in text
    assert "lot_too_short" not in codes(planned({**short, "hem.depth": "3 1/8 in"}))


def test_a_hem_that_takes_no_more_for_being_deeper_has_a_tuck(monkeypatch: pytest.MonkeyPatch) -> None:
    """A hem that is sewn on takes none of the panel's cloth, however deep it is."""
    from dataclasses import replace

    from templategen.planning.cloth import shrinkage
    from templategen.planning.hems import HEMS

    sewn_on = replace(
        HEMS["double fold"],
        plan=lambda spec, hem: replace(HEMS["double fold"].plan(spec, hem), allowance=inches("-1/2")),
    )
    monkeypatch.setattr(shrinkage, "HEMS", {"double fold": sewn_on})
    plan = planned(cloth(shrinkage="3 %"))
    assert plan.shrinkage is not None and plan.shrinkage.carried_in == "tuck"
    assert "shrinkage_in_tuck" in codes(plan)
    monkeypatch.undo()
    assert "shrinkage_in_tuck" not in codes(planned(cloth(shrinkage="3 %")))
