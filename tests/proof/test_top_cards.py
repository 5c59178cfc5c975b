"""The tape card and the casing card printed, cut out and measured against what was asked for."""

from __future__ import annotations

import json

import pytest

from templategen import Options, kit_files
from templategen.planning import Plan
from tests.planning.tops import casing, tape

from .measuring import GAUGE, nearest_errors, see

TRUE = 0.1
"""Millimetres: a fifth of a pencil line."""
HEADED = {"panel.header": "1 in", "panel.casing": "2 in", "heading.header": "4/7 in", "heading.depth": "1 6/7 in"}
CARDS = {
    # lines in inches below the panel's top edge
    "tape card": (tape({"heading.tape_top": "6/7 in", "heading.pocket": "1/3 in"}), [6 / 7, 6 / 7 + 1 / 3, 13 / 7]),
    "casing card": (casing(HEADED), [4 / 7, 1, 17 / 7]),
}


@pytest.mark.parametrize("name", CARDS)
def test_every_line_stands_where_it_belongs_below_the_top_edge(name: str) -> None:
    plan: Plan
    plan, below = CARDS[name]
    _, files = kit_files(plan, Options(only=(name,)))
    seen = [stroke for row in see(files["kit.pdf"], json.loads(files["kit.json"])).taped[name].strokes(*GAUGE)
            for stroke in row]  # fmt: skip
    top_edge = max(stroke.at for stroke in seen)
    assert max(nearest_errors([top_edge - 25.4 * inches for inches in below], seen)) <= TRUE
    assert len(seen) == len(below) + 2, "its lines, and its own two edges"
