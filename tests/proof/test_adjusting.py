"""Adjusting strips on paper: rendered, joined by their marks, and every line where it is wanted."""

from __future__ import annotations

import json

import pytest

from templategen import make_plan, read_spec
from templategen.adjusting import adjusting_files
from templategen.planning.adjusting import adjust
from templategen.spec.hangs import read_hangs

from .kits import PANELS, loop_positions, millimetres, spec_text
from .measuring import STRIP, nearest_errors, see

TRUE = 0.1
"""Millimetres, over the whole width and all its joins."""
SAID = "left 3/8 in low, middle good, right 5/16 in high"


@pytest.mark.parametrize(("name", "stitched"), [("54 in, 8 loops, letter", True), ("1370 mm, 8 loops, letter", False)])
def test_every_line_is_where_something_is_moved(name: str, stitched: bool) -> None:
    panel = PANELS[name]
    plan = make_plan(read_spec(spec_text(panel)))
    adjustment = adjust(plan, read_hangs(SAID, plan.spec.units), stitched=stitched)
    kit, files = adjusting_files(plan, adjustment)
    strip = "adjusting strip" if stitched else "hem adjusting strip"
    assert [drawing.name for drawing in kit.drawings] == [strip]
    seen = see(files["kit.pdf"], json.loads(files["kit.json"]))
    strokes = [stroke for row in seen.taped[strip].strokes(*STRIP) for stroke in row]
    width = float(millimetres(panel.width, panel.units))
    if stitched:
        taken = adjustment.taken
        assert taken is not None
        touched = [int(move.label) - 1 for move in taken.at_heading]
        wanted = [float(loop_positions(panel)[i]) for i in touched]
    else:
        wanted = [width * part / 6 for part in range(7)]
    assert max(nearest_errors(wanted, strokes)) <= TRUE
    assert abs(strokes[-1].at - width) <= TRUE
