"""The tab card and the height cards on paper: rendered, cut out, taped together where they are in pieces, measured."""

from __future__ import annotations

import json
import math
from dataclasses import replace
from functools import lru_cache
from typing import Any

import pytest
from hypothesis import HealthCheck, Phase, given, settings

from templategen import Options, kit_files, make_kit, make_plan
from templategen.drawing import Line
from templategen.layout import Kit
from templategen.templates.hook_height_card import TREAD, WIDTH
from tests.planning.building import job
from tests.planning.hung_jobs import changes
from tests.planning.test_points import HOOKS, RINGS
from tests.planning.test_tabs import TABS

from .crossing import crossed, margins, outside
from .joining import Taped
from .measuring import GAUGE, Sight, nearest_errors, reach_errors, see
from .redrawing import redrawn_pdf

TRUE = 0.1
"""Millimetres."""
OUTLINE = 0.5
"""The pen for outlines, in mm."""
INCH = 25.4


def _tab(rod: float, gap: float, ends: float) -> list[float]:
    """Where the lines of a tab card belong, by the law of the teardrop, worked here and not by the program."""
    radius, below = rod / 2, rod / 2 + gap
    leaning = math.acos(radius / below)
    round_it = radius * (2 * math.pi - 2 * leaning) + 2 * math.sqrt(below**2 - radius**2)
    lying = radius * (math.pi - leaning)
    middle = ends + round_it / 2
    return [0, ends, middle - lying, middle, middle + lying, ends + round_it, 2 * ends + round_it]


CARDS: dict[str, tuple[str, dict[str, Any], list[float]]] = {
    "1 in rod, 2 in gap": (
        "tab card",
        {**TABS, "rod.diameter": "1 in", "heading.gap": "2 in"},
        _tab(INCH, 2 * INCH, INCH / 2),
    ),
    "28 mm rod, 300 mm gap, in pieces": (
        "tab card",
        {**TABS, "units": "metric", "paper.name": "a4", "rod.diameter": "28 mm", "heading.gap": "300 mm",
         "heading.end_allowance": "20 mm", "heading.tab_width": "35 mm"},
        _tab(28, 300, 20),
    ),
    "hooks 3/8 in below the edge": (
        "hook height card",
        {**HOOKS, "heading.set_below": "3/8 in"},
        [INCH * at for at in (0, 3 / 8, 2 - 3 / 4, 2)],
    ),
    "rings 1 in below, 400 mm under the rod, in pieces": (
        "ring height card",
        {**RINGS, "units": "metric", "paper.name": "a4", "heading.set_below": "1 in", "heading.drop": "400 mm"},
        [0, INCH, 400 - 0.75 * INCH, 400],
    ),
}  # fmt: skip


@lru_cache(maxsize=4)
def _seen(case: str) -> tuple[Kit, Sight]:
    name, typed, _ = CARDS[case]
    kit, files = kit_files(make_plan(job(typed)), Options(only=(name,), despite_stops=True))
    return kit, see(files["kit.pdf"], json.loads(files["kit.json"]))


def _worst(name: str, seen: Sight, places: list[float]) -> float:
    strokes = [stroke for row in seen.taped[name].strokes(*GAUGE) for stroke in row]
    return max(nearest_errors(places, strokes))


@pytest.mark.parametrize("case", CARDS)
def test_every_line_is_where_it_belongs(case: str) -> None:
    name, _, places = CARDS[case]
    _, seen = _seen(case)
    worst = _worst(name, seen, places)
    print(f"\n{case:<52} {len(seen.taped[name].papers)} pieces, worst error {worst:.4f} mm")
    assert worst <= TRUE
    assert (len(seen.taped[name].papers) > 1) is case.endswith("in pieces")
    assert all(check.error <= TRUE for check in seen.checks)


def _ledge(card: Taped) -> float:
    """Where the ledge is, along the card: the outline's stroke beyond the narrow part."""
    low, high = float(WIDTH + TREAD * 0.25), float(WIDTH + TREAD * 0.75)
    strokes = [stroke for row in card.strokes(low, high) for stroke in row if abs(stroke.ink - OUTLINE) < 0.05]
    return strokes[0].at


@pytest.mark.parametrize(("case", "below"), [(list(CARDS)[2], 3 / 8 * INCH), (list(CARDS)[3], INCH)])
def test_the_ledge_is_at_the_panels_edge(case: str, below: float) -> None:
    taped = _seen(case)[1].taped[CARDS[case][0]]
    assert abs(_ledge(taped) - below) <= TRUE
    assert all(error <= 0.3 for error in reach_errors(taped))


def test_a_fold_moved_by_three_tenths_is_seen() -> None:
    """The measuring must be able to fail."""
    case = next(iter(CARDS))
    name, _, places = CARDS[case]
    kit, _ = _seen(case)

    def moved(_: object, item: Any) -> Any:
        if isinstance(item, Line) and item.x1 == item.x2 and abs(float(item.x1) - places[3]) < 1e-6:
            return replace(item, x1=item.x1 + 0.3, x2=item.x2 + 0.3)
        return item

    record = kit_files(make_plan(job(CARDS[case][1])), Options(only=(name,)))[1]["kit.json"]
    assert _worst(name, see(redrawn_pdf(kit, moved), json.loads(record)), places) > TRUE


@settings(max_examples=12, deadline=None, derandomize=True, phases=[Phase.explicit, Phase.generate],
          suppress_health_check=[HealthCheck.too_slow])  # fmt: skip
@given(changes())
def test_nothing_is_crossed_and_nothing_sticks_out_of_any_kit(typed: dict[str, Any]) -> None:
    kit = make_kit(make_plan(job(typed)), Options(despite_stops=True))
    assert list(outside(kit, margins(kit, 10.0, 10.0, 10.0, 18.0))) == []
    pieces = [placed.piece for sheet in kit.sheets for placed in sheet.placed]
    if not any(join.crowded for piece in pieces for join in piece.joins):
        assert list(crossed(kit)) == []
