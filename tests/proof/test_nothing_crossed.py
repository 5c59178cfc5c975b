"""Nothing on a sheet is cut off, and nothing that is to be read has anything else running through it."""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

import pytest
from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis import strategies as st

from templategen import Options, make_kit, make_plan, read_spec
from templategen.drawing import Text
from templategen.layout import Kit
from tests.strategies import toml_text, workshop_literals

from .crossing import crossed, margins, outside
from .kits import PANELS, Panel, made

_MARGINS = (10.0, 10.0, 10.0, 18.0)
"""Left, right, top and bottom, in mm: what a spec asks for that says nothing of margins."""
_ROOMY = 60
"""Loops this far apart, in mm, always leave a place for a join between them."""

some_kits = settings(
    max_examples=24, database=None, deadline=None, phases=[Phase.explicit, Phase.generate],
    suppress_health_check=[HealthCheck.too_slow],
)  # fmt: skip
alike = seed(20)
"""The laws try the same texts, so that each kit is made once for all of them."""


@st.composite
def spec_texts(draw: st.DrawFn) -> str:
    """A spec such as a workroom meets, for one of the usual papers."""
    paper = draw(st.sampled_from(["letter", "a4", "legal", "tabloid", "a3"]))
    chosen = {
        "paper.name": f'"{paper}"',
        "paper.orientation": f'"{draw(st.sampled_from(["portrait", "landscape"]))}"',
        "paper.half_strip": draw(st.sampled_from(["true", "false"])),
        "paper.strips": str(draw(st.integers(1, 2))),
        "paper.large_print": draw(st.sampled_from(["true", "false"])),
    }
    return toml_text(draw(workshop_literals()) | chosen)


@lru_cache(maxsize=32)
def _kit(text: str) -> Kit:
    return make_kit(make_plan(read_spec(text)), Options(despite_stops=True))


def _joins_on_loops(kit: Kit) -> list[str]:
    """Joins that run through a loop though loops stand far apart."""
    strip = kit.drawings[0]
    pitch = strip.marks[1].at - strip.marks[0].at
    return [
        f"join {join.label} of the {placed.piece.drawing.name}, at {float(join.at):.1f} mm"
        for sheet in kit.sheets
        for placed in sheet.placed
        if (join := placed.piece.right) is not None and join.crowded and pitch > _ROOMY
    ]


def _unless_crowded(kit: Kit) -> list[str]:
    """What is crossed on a kit none of whose joins had to be put where marks stand close."""
    pieces = [placed.piece for sheet in kit.sheets for placed in sheet.placed]
    return [] if any(join.crowded for piece in pieces for join in piece.joins) else list(crossed(kit))


@pytest.mark.parametrize("panel", PANELS.values(), ids=PANELS)
class TestOfTwelvePanels:
    def test_nothing_sticks_out(self, panel: Panel) -> None:
        kit = made(panel).kit
        assert list(outside(kit, margins(kit, *_MARGINS))) == []

    def test_nothing_is_crossed(self, panel: Panel) -> None:
        assert list(crossed(made(panel).kit)) == []

    def test_nothing_is_crossed_on_its_half_strips(self, panel: Panel) -> None:
        kit = make_kit(made(panel).plan, Options(only=("spacing strip",), half_strip=True, strips=2))
        assert list(crossed(kit)) == []
        assert list(outside(kit, margins(kit, *_MARGINS))) == []

    def test_no_join_runs_through_a_loop(self, panel: Panel) -> None:
        assert _joins_on_loops(made(panel).kit) == []


@alike
@some_kits
@given(spec_texts())
def test_nothing_sticks_out_of_any_kit(text: str) -> None:
    kit = _kit(text)
    assert list(outside(kit, margins(kit, *_MARGINS))) == []


@alike
@some_kits
@given(spec_texts())
def test_nothing_is_crossed_in_any_kit(text: str) -> None:
    assert _unless_crowded(_kit(text)) == []


@alike
@some_kits
@given(spec_texts())
def test_joins_run_through_loops_only_where_loops_stand_close(text: str) -> None:
    assert _joins_on_loops(_kit(text)) == []


def test_a_word_moved_onto_a_line_is_seen() -> None:
    """The looking must be able to find something."""
    kit = made(PANELS["48 in, 3 loops, A4"]).kit
    sheet = next(sheet for sheet in kit.sheets if sheet.placed)
    first = sheet.placed[0]
    word = Text(first.piece.start, first.piece.drawing.low, "reading room", 12)
    moved = replace(first, items=(*first.items, word))
    wrong = replace(kit, sheets=(replace(sheet, placed=(moved, *sheet.placed[1:])),))
    assert any("'reading room'" in fault for fault in crossed(wrong))
    assert any("'reading room'" in fault for fault in outside(wrong, margins(wrong, *_MARGINS)))


@pytest.mark.parametrize("count", [945, 946, 947, 948])
def test_the_last_loop_of_very_many_has_its_label_to_itself(count: int) -> None:
    """Where only every so many loops carry a label, the last does too, and may stand close to one of those."""
    text = f"""
title = "Village library"
units = "metric"
rod = {{length = "1 m", diameter = "20 mm"}}
panel = {{count = 1, width = "202 mm", length = "2 m", casing = "80 mm", hem = "50 mm", turn_under = "10 mm"}}
drop = {{floor_marks = ["300 mm"], hung_by = "casing", clearance = "10 mm"}}
hem = {{depth = "100 mm", turn_under = "15 mm"}}
heading = {{style = "back loops", count = {count}, edge_inset = "23 mm"}}
paper = {{name = "legal"}}
"""
    assert not list(crossed(_kit(text)))
