"""The top folded anew: its geometry against a strip of cloth that is really folded, and what is said of it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from templategen.lengths import NOTHING, Length, inches, millimetres
from templategen.planning.doubled import rows_left
from templategen.planning.headings import HEADINGS
from templategen.planning.top import plan_top
from templategen.spec.model import Spec

from .building import codes, job, notice, planned
from .tops import CASING, TAPE, casing, tape

few = settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])


@dataclass(frozen=True)
class Point:
    """A point of a strip of cloth: how far along it lies from the raw edge, and where it has come by folding."""

    along: int
    at: int
    turned: bool = False
    """Whether its wrong side is up."""


def lying_flat(length: int) -> list[Point]:
    """A strip of so many millimetres, a point for each of them, its raw edge at nought."""
    return [Point(at, at) for at in range(length + 1)]


def fold(strip: list[Point], line: int) -> list[Point]:
    """Bring the edge, and all above the crease half-way to it, to the line: as it is done with cloth and iron.

    The fold law of FM 10-16, General Fabric Repair, 24 May 2000: a line 1 in from the edge turns 1/2 in.
    """
    both = edge_of(strip) + line  # twice where the crease comes
    return [
        Point(point.along, both - point.at, not point.turned) if 2 * point.at < both else point for point in strip
    ]


def edge_of(strip: list[Point]) -> int:
    return min(point.at for point in strip)


def folded_top(length: int, turn: int, depth: int) -> list[Point]:
    """A top with so much turned under and so much doubled, by two lines and two folds."""
    strip = lying_flat(length)
    if turn:
        strip = fold(strip, 2 * turn)
    return fold(strip, edge_of(strip) + 2 * depth) if depth else strip


@st.composite
def tops(draw: st.DrawFn) -> Spec:
    """A casing of whole millimetres that becomes another one, deeper or shallower, or after a cut."""
    header = draw(st.integers(0, 40))
    changes = {
        "panel.header": f"{header} mm",
        "panel.casing": f"{draw(st.integers(30, 90))} mm",
        "panel.top_turn": f"{draw(st.integers(0, 15))} mm",
        "panel.length": "600 mm",
        "heading.header": f"{draw(st.integers(0, 40))} mm",
        "heading.depth": f"{draw(st.integers(30, 150))} mm",
        "heading.top_turn": f"{draw(st.integers(0, 25))} mm",
        "heading.top_cut": f"{draw(st.sampled_from([0, 0, 20, 60, 140]))} mm",
        "drop.rod_to_floor": None,
    }
    return job({**CASING, **changes})


@few
@given(tops())
def test_the_new_top_edge_and_the_old_holes_lie_where_folded_cloth_has_them(spec: Spec) -> None:
    panel, heading, top = spec.panel, spec.heading, plan_top(spec)
    turn, depth, body = whole(panel.top_turn), whole(panel.header + panel.casing), 400
    strip = folded_top(turn + depth + body, turn, depth)
    old_edge = edge_of(strip)
    rows = {old_edge + row for row in (whole(panel.header), depth) if row}
    holes = {point.along for point in strip if point.at in rows}
    if not top.refolded:
        assert top.lowered == NOTHING and whole(top.needed) <= depth
        return
    # Cut through every layer, if it is cut, and let down flat; what hangs together with the body is left.
    cut = turn + depth + whole(heading.top_cut) if heading.top_cut else 0
    refolded = [Point(point.along, point.along - cut) for point in strip if point.along >= cut]
    if heading.top_turn:
        refolded = fold(refolded, 2 * whole(heading.top_turn))
    refolded = fold(refolded, edge_of(refolded) + 2 * whole(top.needed))
    edge, hanging = edge_of(refolded), body - whole(top.lowered)
    assert refolded[-1].at - edge == hanging
    # All the cloth is accounted for: what hangs, what is doubled, what is turned under; the rest was cut off.
    assert len(refolded) - 1 == hanging + whole(top.needed) + whole(heading.top_turn)
    crease = max(point.along for point in refolded if point.at == edge)
    shown = {point.at - edge for point in refolded if point.along >= crease and point.along in holes}
    assert shown == {whole(row) for row in rows_left(spec, heading, top.needed)}


def whole(length: Length) -> int:
    """Whole millimetres; this test has no others."""
    assert length.mm.denominator == 1
    return int(length.mm)


NEW = {"drop.hung_by": "new heading", "drop.rod_to_floor": None}
CASES: list[tuple[str, str, dict[str, Any], dict[str, Any]]] = [
    # 3 in is doubled now
    ("top_refolded", "note", {"heading.depth": "3 1/16 in"}, {"heading.depth": "3 in"}),
    ("top_cut_through", "note", {"heading.top_cut": "2 15/16 in"}, {"heading.top_cut": "3 in"}),
    ("top_cut_deep", "note", {"heading.top_cut": "3 1/16 in"}, {"heading.top_cut": "3 in"}),
]


@pytest.mark.parametrize(("code", "level", "beyond", "inside"), CASES)
def test_every_notice(code: str, level: str, beyond: dict[str, Any], inside: dict[str, Any]) -> None:
    assert notice(casing(beyond), code).level == level
    assert code not in codes(casing(inside))


def test_old_holes_show_until_the_new_edge_is_below_them() -> None:
    """The old row is 3 in below the old top edge. The new edge comes depth + 1/2 - 3 in below it."""
    text = notice(casing({"heading.depth": "5 1/2 in"}), "old_holes_show").text
    assert "0 in below the new top edge" in text
    assert "old_holes_show" not in codes(casing({"heading.depth": "5 9/16 in"}))
    assert "2 in below the new top edge" in notice(casing({"heading.depth": "3 1/2 in"}), "old_holes_show").text


def test_holes_that_are_cut_off_do_not_show() -> None:
    headed = {"panel.header": "1 in", "panel.casing": "2 in"}
    assert "old_holes_show" not in codes(casing({**headed, "heading.top_cut": "3 1/16 in"}))
    # a cut 2 in down: the new edge is 2 + 2 + 1/2 in below the old one, past the old row 3 in down
    assert "old_holes_show" not in codes(casing({"heading.header": "0 in", "heading.top_cut": "2 in"}))


def test_a_top_that_is_cut_and_not_folded_is_a_raw_edge() -> None:
    raw = {"heading.top_cut": "3 in", "heading.top_fold": "0 in", "heading.top_turn": "1/2 in"}
    plan = tape(raw)
    assert notice(plan, "top_raw").level == "warning"
    assert plan.top.lowered == inches(3) and plan.top.reach == NOTHING
    assert "top_raw" not in codes(tape({**raw, "heading.top_fold": "1/16 in"}))
    assert "top_doubled" not in plan.figures


def openings(monkeypatch: pytest.MonkeyPatch, reach: str) -> None:
    """Let a panel that came with a tape have openings down to ``reach``, as one that came with eyelets has."""
    kind = HEADINGS["gathering tape"]
    table = {**HEADINGS, kind.name: replace(kind, openings=lambda spec, heading: inches(reach))}
    monkeypatch.setattr("templategen.planning.top.HEADINGS", table)


CAME_WITH = {
    "panel.heading.style": "gathering tape",
    "panel.heading.drop": "1 in",
    "panel.heading.set_below": "1 in",
    "drop.hung_by": "old heading",
}


def test_openings_are_cut_off_or_told_of(monkeypatch: pytest.MonkeyPatch) -> None:
    openings(monkeypatch, "5/2")
    assert "stay on the front" in notice(casing(CAME_WITH), "old_openings_stay").text
    assert "old_openings_stay" in codes(casing({**CAME_WITH, "heading.top_cut": "2 7/16 in"}))
    assert "old_openings_stay" not in codes(casing({**CAME_WITH, "heading.top_cut": "2 1/2 in"}))
    # the new edge comes depth + 1/2 - 3 in below the old one
    shallow = notice(casing({**CAME_WITH, "heading.depth": "4 in"}), "old_openings_stay").text
    assert "on the front, down to 1 in below the new top edge" in shallow
    deep = notice(casing({**CAME_WITH, "heading.depth": "6 in"}), "old_openings_stay").text
    assert "doubled cloth at the back" in deep and "Write 2 1/2 in or more as heading.top_cut" in deep


def test_a_cut_is_deep_only_past_the_openings(monkeypatch: pytest.MonkeyPatch) -> None:
    openings(monkeypatch, "4")
    assert "top_cut_deep" not in codes(casing({**CAME_WITH, "heading.top_cut": "4 in"}))
    assert "top_cut_deep" in codes(casing({**CAME_WITH, "heading.top_cut": "4 1/16 in"}))


def test_a_panel_that_the_fold_makes_too_short_is_stopped_with_its_number() -> None:
    short = {**NEW, "drop.floor_marks": ["13 in"], "panel.length": "20 in"}
    plan = casing({"drop.floor_marks": ["6 in"], "drop.rod_to_floor": None, "heading.top_cut": "8 in"})
    assert "panel_too_short" in codes(plan) and plan.stops
    assert "panel_too_short" not in codes(casing({"drop.floor_marks": ["6 in"], "drop.rod_to_floor": None}))
    assert "finish_in_heading" in codes(casing({**short, "heading.top_cut": "6 in"}))


def test_the_fold_lines_follow_the_fold_law() -> None:
    """FM 10-16: a line twice as far from the edge as the fold is deep."""
    figures = casing({"heading.depth": "4 in", "heading.top_turn": "3/4 in"}).figures
    assert figures["top_fold_to_turn"].value == inches("3/2")
    assert figures["top_fold_to_depth"].value == inches(8)
    plain = casing({"heading.depth": "4 in", "heading.top_turn": "0 in"}).figures
    assert "top_fold_to_turn" not in plain and plain["top_fold_to_depth"].label == "fold to"
    assert not {"top_lowered", "top_fold_to_depth"} & planned().figures.keys()


def test_a_top_that_came_single_is_folded_for_the_first_time() -> None:
    single = {**CAME_WITH, **TAPE, "panel.casing": "0 in", "heading.top_turn": "0 mm", **CAME_WITH}
    plan = planned(single)
    assert plan.top.lowered == plan.top.needed == millimetres(Fraction("38.1"))
    assert "none is doubled now" in notice(plan, "top_refolded").text
