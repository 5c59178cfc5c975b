"""A kit for a sill, its hem level and its cloth still to shrink: cut gauge and hem gauge card, printed and measured."""

from __future__ import annotations

import json
from fractions import Fraction

from templategen import kit_files, make_plan
from tests.planning.building import job

from .measuring import GAUGE, nearest_errors, see

TRUE = 0.1
"""Millimetres: a fifth of a pencil line."""
INCH = 25.4


def test_the_gauges_of_a_hem_that_carries_cloth_measure_what_was_worked_out_by_hand() -> None:
    """96 in long, marked at 40 and 41 in on its new heading, 1/4 in above the higher: 54 3/4 in to the finished edge.

    With 4 in of hem and 5/8 in turned under 59 3/8 in; 4 % of it will go, so 59 3/8 / 24 is carried.
    """
    spec = job({
        "drop.to": "sill", "drop.follows": "highest", "drop.hung_by": "new heading", "drop.rod_to_floor": None,
        "drop.floor_marks": ["40 in", "41 in"], "drop.clearance": "1/4 in", "fabric.shrinkage": "4 %",
    })  # fmt: skip
    kit, files = kit_files(make_plan(spec))
    seen = see(files["kit.pdf"], json.loads(files["kit.json"]))
    hem = Fraction(4) + Fraction("59.375") / 24
    wanted = {
        "cut gauge": [hem + Fraction(5, 8), hem + Fraction(5, 8) - Fraction(1, 4)],
        "hem gauge card": [Fraction(5, 8), hem, hem + Fraction(5, 8), hem - Fraction(1, 8), Fraction(5, 4), 2 * hem],
    }
    for name, places in wanted.items():
        strokes = [stroke for row in seen.taped[name].strokes(*GAUGE) for stroke in row]
        assert max(nearest_errors([float(place) * INCH for place in places], strokes)) <= TRUE, name
    assert [mark["label"] for piece in json.loads(files["kit.json"])["pieces"] if piece["template"] == "cut gauge"
            for mark in piece["marks"]] == ["cut line", "finish line", "sill mark"]  # fmt: skip
    assert kit.sheets
