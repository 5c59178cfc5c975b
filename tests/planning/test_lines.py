"""What a panel hangs to: the words, the usual distances, the harm; and a level hem over marks that differ."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from templategen.document.blocks import Block
from templategen.lengths import inches
from templategen.planning import make_plan, tell_plan
from templategen.planning.lines import LINES
from templategen.spec import FIELDS, Spec
from templategen.templates import draw_templates
from templategen.work_order import record
from templategen.writers.text import text as as_text
from tests.strategies import workshop_specs
from tests.work_order.said import words

from .building import codes, notice, planned

few = settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.too_slow])
NEW: dict[str, Any] = {"drop.hung_by": "new heading", "drop.rod_to_floor": None}


def to(line: str, clearance: str, **others: Any) -> dict[str, Any]:
    return {**NEW, "drop.to": line, "drop.clearance": clearance, **others}


def test_every_line_has_its_words() -> None:
    assert tuple(LINES) == FIELDS["drop.to"].choices
    assert all(line.usual[0] < line.usual[1] for line in LINES.values())


@few
@given(workshop_specs(), st.sampled_from(["sill", "apron", "radiator"]))
def test_what_it_hangs_to_changes_words_and_no_number(spec: Spec, line: str) -> None:
    other = spec.model_copy(update={"drop": spec.drop.model_copy(update={"to": line})})
    one, two = make_plan(spec), make_plan(other)
    assert (one.drop, one.hem, one.heading, one.offcut) == (two.drop, two.hem, two.heading, two.offcut)
    assert {key: each.value for key, each in one.figures.items()} == {k: e.value for k, e in two.figures.items()}


@pytest.mark.parametrize(
    ("line", "clearance", "marks"),
    [
        ("sill", "1/4 in", ["30 in", "30 1/4 in"]),
        ("apron", "-1 in", ["26 in", "26 1/4 in", "26 7/8 in"]),
        ("radiator", "12 in", ["34 in", "36 in"]),
        ("sill", "-1 in", ["30 in", "31 in", "35 in", "30 in"]),
        ("apron", "1 in", ["92 in"]),
        ("radiator", "-1 in", ["34 in"]),
        ("sill", "1 in", []),
        ("sill", "0 in", ["30 in"]),
    ],
)
def test_nothing_is_said_of_the_floor_where_a_panel_does_not_reach_it(
    line: str, clearance: str, marks: list[str]
) -> None:
    """In the plan, the work order and the templates; the spec's own field names and advice to hang lower apart."""
    rod = {"drop.rod_to_floor": "62 in", "drop.hung_by": "casing"}
    plan = planned({**to(line, clearance), **rod, "drop.floor_marks": marks or None})
    told = tell_plan(plan) + _without_record(words(plan)) + str(draw_templates(plan))
    for allowed in ("floor_marks", "drop.floor", '"floor"', "full length", "floor-length"):
        told = told.replace(allowed, "")
    assert "floor" not in told.lower()
    assert line in told


def _without_record(blocks: list[Block]) -> str:
    """All but the record at the end, which says every field by its name in the spec."""
    return as_text(blocks[: next(i for i, block in enumerate(blocks) if getattr(block, "text", "") == record.TITLE)])


LIMITS: list[tuple[str, str, dict[str, Any], dict[str, Any]]] = [
    # the sill: Te Ao Hou no. 11, July 1955, 1/16 to 1/4 in; up to 1/2 in is common practice
    ("clearance_unusual", "note", to("sill", "1/32 in"), to("sill", "1/16 in")),
    ("clearance_unusual", "note", to("sill", "9/16 in"), to("sill", "1/2 in")),
    ("clearance_unusual", "note", to("sill", "0 in"), to("sill", "1/4 in")),
    ("breaks_on_sill", "note", to("sill", "-1/16 in"), to("sill", "0 in")),
    # the apron: UFGS-12491N, 1 in below it
    ("clearance_unusual", "note", to("apron", "-15/16 in"), to("apron", "-1 in")),
    ("clearance_unusual", "note", to("apron", "-4 1/16 in"), to("apron", "-4 in")),
    # a heater: fire services, at least 12 in, 30 cm
    ("near_radiator", "warning", to("radiator", "11 15/16 in"), to("radiator", "12 in")),
    ("before_radiator", "warning", to("radiator", "-1/16 in"), to("radiator", "0 in")),
    # a hem: newspaper, 24 May 1935 (Papers Past EG19350524.2.6.2), 1 in on short curtains
    ("hem_shallow", "warning",
     to("sill", "1/4 in", **{"hem.depth": "15/16 in"}), to("sill", "1/4 in", **{"hem.depth": "1 in"})),
    ("breaks_on_floor", "note", to("floor", "-1/16 in"), to("sill", "-1/16 in")),
    # level by the highest
    ("level_at_highest", "note",
     to("floor", "1 in", **{"drop.follows": "highest", "drop.floor_marks": ["13 in", "13 1/16 in"]}),
     to("floor", "1 in", **{"drop.follows": "highest", "drop.floor_marks": ["13 in", "13 in"]})),
    ("floor_slopes", "warning",
     to("floor", "1 in", **{"drop.floor_marks": ["13 in", "20 in", "27 in"]}),
     to("floor", "1 in", **{"drop.follows": "highest", "drop.floor_marks": ["13 in", "20 in", "27 in"]})),
    # an odd mark matters to a level hem where it is the highest
    ("floor_mark_jumps", "warning",
     to("floor", "1 in", **{"drop.follows": "highest", "drop.floor_marks": ["13 in", "13 in", "14 in", "13 in"]}),
     to("floor", "1 in", **{"drop.follows": "highest", "drop.floor_marks": ["13 in", "13 in", "12 in", "13 in"]})),
]  # fmt: skip


@pytest.mark.parametrize(
    ("code", "level", "outside", "inside"), LIMITS, ids=[f"{at:02d} {case[0]}" for at, case in enumerate(LIMITS)]
)
def test_a_notice_and_just_inside_its_limit(
    code: str, level: str, outside: dict[str, Any], inside: dict[str, Any]
) -> None:
    assert notice(planned(outside), code).level == level
    assert code not in codes(planned(inside))


def test_ufgs_apron_length() -> None:
    """UFGS-12491N: apron length is 1 in below the apron: the finish line lies 1 in below the mark of its edge."""
    plan = planned(to("apron", "-1 in", **{"drop.floor_marks": ["30 in"]}))
    assert plan.figures["finish_line"].value == inches(29)
    assert plan.figures["finish_line"].working == "apron line 30 in − hang shift 0 in − clearance 1 in"


def test_what_is_said_of_heat_names_the_fire_services_distance() -> None:
    text = notice(planned(to("radiator", "2 in")), "near_radiator").text
    assert "at least 12 in" in text and "electric" in text


@few
@given(workshop_specs())
def test_a_level_hem_clears_the_highest_mark_and_no_other_by_less(spec: Spec) -> None:
    plan = make_plan(spec.model_copy(update={"drop": spec.drop.model_copy(update={"follows": "highest"})}))
    over = [mark.finish + plan.drop.hang_shift - mark.floor for mark in plan.drop.marks]
    assert plan.drop.level and min(over) == spec.drop.clearance
    (gauged,) = plan.drop.gauged
    assert gauged.finish + plan.drop.hang_shift - gauged.floor == spec.drop.clearance


def test_a_level_hem_on_stairs_has_one_gauge_for_its_highest_mark() -> None:
    stairs = {"drop.follows": "highest", "drop.floor_marks": ["13 in", "20 in", "27 in"]}
    plan = planned(to("floor", "1 in", **stairs))
    assert plan.figures["floor_line"].value == inches(13) and plan.figures["highest_mark"].value == inches(27)
    assert plan.figures["finish_line"].value == inches(28)
    assert plan.figures["finish_line"].working == "highest floor mark 27 in − hang shift 0 in + clearance 1 in"
    text = notice(plan, "level_at_highest").text
    assert text.endswith("there it ends 1 in above the floor, and at the lowest 15 in above the floor.")
    (gauge,) = [drawing for drawing in draw_templates(plan) if drawing.name.startswith("cut gauge")]
    assert gauge.caption[0].startswith("For the highest floor mark, at the right edge as seen from the front;")
    marks = {mark.label: mark.at for mark in gauge.marks}
    assert marks["finish line"] - marks["floor mark"] == inches(1).mm
    assert "on the highest pin" in " ".join(as_text(words(plan)).split())
    several = [d for d in draw_templates(planned({**to("floor", "1 in", **stairs), "drop.follows": "marks"}))
               if d.name.startswith("cut gauge")]  # fmt: skip
    assert len(several) == 3


def test_carried_cloth_is_in_the_work_order() -> None:
    tuck = {**NEW, "fabric.shrinkage": "3 %", "fabric.shrinkage_in": "tuck"}
    said = " ".join(as_text(words(planned(tuck))).split())
    assert "Tuck. On the back, draw two lines across, 4 1/2 in and 7 in above the finish line." in said
    assert "take out the tuck's stitches" in said
    hem = " ".join(as_text(words(planned({**tuck, "fabric.shrinkage_in": "hem"}))).split())
    assert "unpick the hem, hang the panel, pin the hem anew, 4 in deep" in hem and "Tuck." not in hem
    assert "has shrunk" not in as_text(words(planned(NEW)))
