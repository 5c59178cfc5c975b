"""The pleat strip as data: the laws of every template, and what it and the work order say of either side."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from templategen import Choices, Options, draw_templates, make_kit
from templategen.drawing import Drawing, Text
from templategen.errors import Refusal
from templategen.planning import Plan
from tests.planning.building import job
from tests.planning.test_headings_by_hand import PLEATED, PLEATS, with_heading
from tests.planning.test_pleats import pleated_jobs
from tests.work_order.said import words

from . import test_templates as laws

LAW = laws.test_every_template_is_whole_and_no_text_of_it_is_touched_in_large_print_too


@settings(max_examples=8, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(pleated_jobs())
def test_the_laws_of_every_template_hold_for_pleats(changes: dict[str, Any]) -> None:
    LAW.hypothesis.inner_test(job(changes))  # type: ignore[attr-defined]


def _strips(plan: Plan) -> list[Drawing]:
    return draw_templates(plan, ("pleat strip",))


def _words(plan: Plan, choices: Choices | None = None) -> str:
    return " ".join(str(block) for block in words(plan, choices))


def test_a_pair_has_a_strip_for_either_side_each_the_other_turned_over() -> None:
    left, right = _strips(with_heading("pinch pleats", PLEATED, **PLEATS))
    assert (left.name, right.name) == ("pleat strip for left panels", "pleat strip for right panels")
    assert [(mark.label, left.end - mark.at) for mark in reversed(left.marks)] == list(right.marks)
    assert left.ends == right.ends[::-1] == ("leading edge of the panel", "return edge of the panel")
    for strip, side in ((left, "left"), (right, "right")):
        assert f"For panels that hang on the {side}, seen from the front." in strip.caption


@pytest.mark.parametrize(("edge", "ends"), [("left", ("return", "leading")), ("right", ("leading", "return"))])
def test_the_leading_edge_is_named_as_it_lies_from_the_back(edge: str, ends: tuple[str, str]) -> None:
    """Left as seen from the front is right as seen from the back, the trade's way of marking a heading."""
    (strip,) = _strips(with_heading("box pleats", PLEATED | {"panel.leading_edge": edge}, **PLEATS))
    edges = dict(zip(ends, ("left", "right"), strict=True))
    assert strip.ends == tuple(f"{end} edge of the panel" for end in ends)
    first, last = (0, -1) if edges["return"] == "left" else (-1, 0)
    assert strip.marks[first].label == "1a" and strip.marks[last].label == "13b"


def test_the_return_is_written_where_there_is_one_and_room_for_it() -> None:
    def said(changes: dict[str, Any]) -> list[float]:
        (strip,) = _strips(with_heading("pinch pleats", PLEATED | {"panel.leading_edge": "left"} | changes, **PLEATS))
        return [float(item.x) for item in strip.items if isinstance(item, Text) and item.text == "return"]

    # Leading edge on the left from the front, so on the right from the back: the return is the left 3 in.
    assert said({}) == [pytest.approx(1.5 * 25.4)]
    assert said({"rod.returns": "0 in"}) == said({"rod.returns": "1/2 in"}) == []
    alone = {"panel.count": 1, "rod.length": "49 in", "rod.overlap": "0 in"}
    assert said(alone) == [pytest.approx(1.5 * 25.4), pytest.approx(142.5 * 25.4)]


def test_the_work_order_speaks_of_the_strips_there_are() -> None:
    pair = with_heading("pinch pleats", PLEATED, **PLEATS)
    words = _words(pair, Choices(strips=2, half_strip=True))
    assert "Tape each of the 4 pleat strips together" in words and "There are 2 of either, all alike" in words
    assert "It is a whole strip, not a half one: pleats do not stand alike from both edges." in words
    assert "half of them the mirror image of the others" in words and "spacing strip" not in words
    assert "(on right panels from the right end)" in words
    alike = with_heading("pinch pleats", PLEATED | {"panel.leading_edge": "left"}, **PLEATS)
    words = _words(alike)
    assert "Tape the pleat strip together" in words and "2 panels, all alike, each" in words
    assert "half of them" not in words and "right panels" not in words


def test_a_half_strip_asked_for_is_refused_where_nothing_stands_alike_from_both_edges() -> None:
    plan = with_heading("pinch pleats", PLEATED, **PLEATS)
    with pytest.raises(Refusal) as refused:
        make_kit(plan, Options(half_strip=True))
    assert [(fault.field, fault.read) for fault in refused.value.faults] == [("--half-strip", "")]
    assert "no strip can be halved; leave it out" in str(refused.value)
    in_the_spec = make_kit(with_heading("pinch pleats", PLEATED | {"paper.half_strip": True}, **PLEATS))
    assert [drawing.name for drawing in in_the_spec.drawings[:2]] == [drawing.name for drawing in _strips(plan)]


@pytest.mark.parametrize(("style", "way"), [
    ("pinch pleats", "right side out, so that the cloth between them stands out at the front"),
    ("box pleats", "right side out, so that the cloth between them stands out at the front"),
    ("inverted box pleats", "right side in, so that the cloth between them stands out at the back"),
])  # fmt: skip
def test_inverted_pleats_are_folded_to_the_back_and_others_to_the_front(style: str, way: str) -> None:
    """Derived: cloth folded with its right sides together has its fold on the wrong side, and the other way round."""
    assert way in _words(with_heading(style, PLEATED, **PLEATS))
