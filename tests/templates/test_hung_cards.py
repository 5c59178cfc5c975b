"""The tab card, the hook height card and the ring height card at full scale, as data; the strip of points."""

from __future__ import annotations

import os
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from templategen import Choices, draw_templates, make_plan
from templategen.document.blocks import Step
from templategen.drawing import Drawing, Line, LineType, Text
from templategen.lengths import inches
from templategen.planning import Plan
from templategen.planning.headings.tabs import TabPlan
from tests.planning.building import job
from tests.planning.hung_jobs import changes
from tests.planning.test_points import HOOKS, RINGS, TRACK
from tests.planning.test_tabs import TABS
from tests.work_order.said import words

from .telling import tell

GOLDENS = Path(__file__).parent / "goldens"
few = settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.too_slow])
CASING = {
    **{f"heading.{field}": None for field in ("count", "loop_length", "loop_width", "lower_allowance", "upper_turn")},
    "heading.style": "casing",
    "heading.depth": "4 in",
}
LOW_RINGS = {**RINGS, "heading.set_below": "1 in"}


def _drawings(typed: dict[str, Any]) -> list[Drawing]:
    plan = make_plan(job(typed))
    return [*draw_templates(plan), *draw_templates(plan, ("spacing strip",), Choices(half_strip=True))]


def _card(typed: dict[str, Any], name: str) -> tuple[Plan, Drawing]:
    plan = make_plan(job(typed))
    (card,) = draw_templates(plan, (name,))
    return plan, card


@pytest.mark.parametrize(
    ("name", "typed"), [("tab card", TABS), ("hook height card", HOOKS), ("ring height card", LOW_RINGS)]
)
def test_the_drawing_is_the_one_agreed_on(name: str, typed: dict[str, Any]) -> None:
    """Rewritten with GOLDENS=write; read the difference before it is committed."""
    _, card = _card(typed, name)
    golden = GOLDENS / f"{card.file_name}.txt"
    if os.environ.get("GOLDENS") == "write":
        golden.write_text(tell(card))
    assert tell(card) == golden.read_text()


@few
@given(changes(wide=True))
def test_nothing_outside_every_mark_a_line_and_the_lane_free(typed: dict[str, Any]) -> None:
    """The laws of every template, for headings with tabs and points."""
    for drawing in _drawings(typed):
        reach: dict[Fraction, float] = {}
        low, high = drawing.lane
        for item in drawing.items:
            box = item.bounds
            assert drawing.start - 0.01 <= box.left and box.right <= drawing.end + 0.01, (drawing.name, item)
            assert drawing.low - 0.01 <= box.bottom and box.top <= drawing.high + 0.01, (drawing.name, item)
            if isinstance(item, Line) and item.x1 == item.x2 and 0 in (item.y1, item.y2):
                long = float(item.y1 + item.y2) * drawing.inward
                reach[Fraction(item.x1)] = max(reach.get(Fraction(item.x1), 0.0), long)
            if isinstance(item, Line) and (item.runs_along or {item.x1, item.x2} <= {drawing.start, drawing.end}):
                continue
            if isinstance(item, Line) and item.kind is LineType.CUT:
                continue  # the upright edge of a ledge
            assert box.top <= low + 0.3 or box.bottom >= high - 0.3, (drawing.name, item)
        assert all(reach[mark.at] >= 8 for mark in drawing.marks), drawing.name


@few
@given(changes())
def test_no_two_texts_touch_and_no_line_runs_through_one(typed: dict[str, Any]) -> None:
    for drawing in _drawings(typed):
        texts = [item for item in drawing.items if isinstance(item, Text)]
        for i, text in enumerate(texts):
            box = text.bounds
            assert not any(box.meets(other.bounds) for other in texts[i + 1 :]), (drawing.name, text)
            for line in (item for item in drawing.items if isinstance(item, Line)):
                over = line.bounds
                along = over.left < box.right - 0.15 and over.right > box.left + 0.15
                across = over.bottom < box.top - 0.15 and over.top > box.bottom + 0.15
                assert not (along and across), (drawing.name, text, line)


def test_the_tab_card_shows_where_the_panels_edge_the_fold_and_the_cut_come() -> None:
    plan, card = _card({**TABS, "rod.diameter": "1 in", "heading.gap": "2 in"}, "tab card")
    assert isinstance(plan.heading, TabPlan)
    at = {mark.label: mark.at for mark in card.marks}
    assert at["top edge, one end"] == inches("1/2").mm
    assert float(at["fold"] * 2) / 25.4 == pytest.approx(7.671, abs=5e-4)
    assert at["cut 1"] - at["top edge, other end"] == inches("1/2").mm


def test_the_tab_card_shows_where_a_tab_leaves_the_rod() -> None:
    """Derived: R (2 pi - 2 a) of it lies on the rod, cos a = R / s: D = 1, g = 2 in: 1.7722 in."""
    _, card = _card({**TABS, "rod.diameter": "1 in", "heading.gap": "2 in"}, "tab card")
    fine = sorted({item.x1 for item in card.items if isinstance(item, Line) and item.kind is LineType.THIN
                   and item.x1 == item.x2})  # fmt: skip
    assert float(fine[1] - fine[0]) / 25.4 == pytest.approx(1.7722, abs=5e-4)


@pytest.mark.parametrize(("typed", "name"), [(HOOKS, "hook height card"), (LOW_RINGS, "ring height card")])
def test_a_height_card_is_cut_so_that_its_ledge_is_the_panels_edge(typed: dict[str, Any], name: str) -> None:
    plan, card = _card(typed, name)
    at = {mark.label: mark.at for mark in card.marks}
    below = plan.figures["held_below_edge"].value.mm
    assert at["panel's top edge"] - at[f"{plan.heading.thing}s"] == below
    assert at["rod's top"] - at["rod's underside"] == inches("3/4").mm
    assert at["rod's top"] - at["panel's top edge"] == (inches(2).mm - below)
    narrow, wide = card.outline.span(below / 2), card.outline.span(below + 1)
    assert wide != narrow


def test_a_height_card_of_rings_that_hold_the_edge_begins_at_it() -> None:
    _, card = _card(RINGS, "ring height card")
    assert [mark.label for mark in card.marks if mark.at == 0] == ["panel's top edge"]
    assert "Lay its lower edge level" in card.caption[0]


def test_gliders_have_a_track() -> None:
    _, card = _card(TRACK, "hook height card")
    assert {"track's top", "track's underside"} <= {mark.label for mark in card.marks}


@pytest.mark.parametrize(
    ("typed", "there"),
    [(TABS, {"tab card"}), (HOOKS, {"hook height card"}), (RINGS, {"ring height card"})],
)
def test_each_heading_has_its_own_card_and_no_others(typed: dict[str, Any], there: set[str]) -> None:
    cards = {"tab card", "hook height card", "ring height card", "loop ladder"}
    assert {drawing.name for drawing in _drawings(typed)} & cards == there


def _steps(typed: dict[str, Any]) -> str:
    return "\n".join(block.text for block in words(make_plan(job(typed))) if isinstance(block, Step))


def test_the_work_order_says_how_each_is_made() -> None:
    tabs = _steps(TABS)
    order = [tabs.index(step) for step in ("Lay a tube on the tab card", "Pin the spacing strip", "Lay both ends")]
    assert order == sorted(order)
    assert "36 in all" in tabs and "Hang the panel on the rod by its tabs" in tabs
    assert "Lay the ring height card" not in _steps(RINGS) and "at the very top edge" in _steps(RINGS)
    assert "1 in below the top edge" in _steps(LOW_RINGS) and "Sew a ring" in _steps(LOW_RINGS)
    clips = _steps({**RINGS, "heading.held_by": "clips"})
    assert "Put a clip on at each mark" in clips and "Sew a ring" not in clips
    assert "Sew a hook" in _steps(HOOKS)
    assert "Push the pin of a hook" in _steps({**HOOKS, "heading.fixed": "pinned on"})


def test_what_is_several_is_not_called_it() -> None:
    for panels, strips in ((4, "Press each in half"), (1, "Press it in half")):
        said = _steps({"hem.style": "border", "hem.turn_under": None, "panel.count": panels, "drop.rod_to_floor": None})
        assert strips in said
        assert ("Hang each panel by" in said) == (panels > 1)
    assert "Fold each strip lengthwise" in _steps(TABS) and "Press each tube" in _steps(TABS)
    assert "the rod by its rings" in _steps(RINGS)
    assert "the rod by its clips" in _steps({**RINGS, "heading.held_by": "clips"})


def test_a_side_hem_runs_up_inside_the_doubled_top_and_a_lining_goes_under_the_new_fold() -> None:
    narrower = {"sides.finished_width": "40 in", "lining.ends_above": "1 in", "heading.edge_inset": None}
    kept = _steps(narrower)
    assert "Unpick the doubled top" in kept and "stitch it as it was" in kept and "on the new edge" in kept
    anew = _steps({**narrower, **CASING})
    steps = ("Unpick the doubled top", "The top is folded to the back", "Cut the lining", "the casing card's")
    order = [anew.index(step) for step in steps]
    assert order == sorted(order) and "stitch it as it was" not in anew


@pytest.mark.parametrize(("typed", "name"), [(RINGS, "ring"), (LOW_RINGS, "ring"), (HOOKS, "hook"), (TRACK, "hook")])
def test_every_height_card_is_held_to_the_hung_panel(typed: dict[str, Any], name: str) -> None:
    _card(typed, f"{name} height card")
    assert f"Hold the {name} height card to it" in _steps(typed)
