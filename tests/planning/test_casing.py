"""A casing stitched anew: its rows, the old ones in its way, and what can be wrong with it."""

from __future__ import annotations

from typing import Any

import pytest

from templategen.lengths import inches
from templategen.planning.headings import HEADINGS
from templategen.planning.headings.casing import CasingPlan

from .building import codes, job, length, notice
from .tops import CASING, casing

HEADED = {"panel.header": "1 in", "panel.casing": "2 in", "heading.depth": None}
"""A header of 1 in over a casing of 2 in, as the panel came."""
CASES: list[tuple[str, str, dict[str, Any], dict[str, Any]]] = [
    # 3/4 in: at least 1.178 in, easily 1 1/2 in (A Manual of Home-Making, Portieres: 3/4 -> 1 1/2 in)
    ("new_casing_too_tight", "stop", {"heading.depth": "1 1/8 in"}, {"heading.depth": "1 3/16 in"}),
    ("new_casing_tight", "note", {"heading.depth": "1 7/16 in"}, {"heading.depth": "1 1/2 in"}),
    # heading 1 1/2 in (limp) to 2 in (firm): A Manual of Home-Making
    ("header_flops", "note", {"heading.header": "1 9/16 in"}, {"heading.header": "1 1/2 in"}),
    ("header_flops", "note", {"heading.header": "2 1/16 in", "cloth": "heavy"},
     {"heading.header": "2 in", "cloth": "heavy"}),
    ("header_low", "note", {"heading.header": "7/16 in"}, {"heading.header": "1/2 in"}),
    ("header_low", "note", {"heading.header": "1/16 in"}, {"heading.header": "0 in"}),
    # an old row 1 in down, a new casing without a header from 0 to 2 in
    ("old_row_in_casing", "note", {**HEADED, "heading.header": "0 in", "heading.depth": "2 in"},
     {**HEADED, "heading.header": "1 in", "heading.depth": "1 3/4 in"}),
    ("rows_meet", "note", {"heading.depth": "2 15/16 in"}, {"heading.depth": "2 7/8 in"}),
    ("rows_meet", "note", {"heading.depth": "2 15/16 in"}, {"heading.depth": "3 in"}),
]  # fmt: skip


@pytest.mark.parametrize(("code", "level", "beyond", "inside"), CASES)
def test_every_notice(code: str, level: str, beyond: dict[str, Any], inside: dict[str, Any]) -> None:
    assert notice(casing(beyond), code).level == level
    assert code not in codes(casing(inside))


def test_rows_that_are_there_are_not_stitched_again() -> None:
    def rows(changes: dict[str, Any]) -> tuple[tuple[str, ...], tuple[str, ...]]:
        heading = casing(changes).heading
        assert isinstance(heading, CasingPlan)
        return tuple(row.exact("in") for row in heading.new_rows), tuple(row.exact("in") for row in heading.unpicked)

    assert rows({}) == (("2 in",), ())
    assert rows(HEADED) == ((), ())
    assert rows({**HEADED, "heading.depth": "3/2 in"}) == (("5/2 in",), ())
    assert rows({**HEADED, "heading.header": "1/2 in", "heading.depth": "2 in"}) == (("1/2 in", "5/2 in"), ("1 in",))
    # folded anew: every row is new, and nothing is left to stop the rod
    assert rows({**HEADED, "heading.depth": "4 in"}) == (("1 in", "5 in"), ())


RULE_OF_THUMB = [
    # pi / 2 D against D + 1/2 in, worked with pi to 12 places and not by the planner
    ("3/4 in", "1.178097245096", "1.25", "more"),
    ("2 in", "3.141592653590", "2.5", "too little: the rod does not pass"),
    ("4 in", "6.283185307180", "4.5", "too little: the rod does not pass"),
]


@pytest.mark.parametrize(("rod", "least", "thumb", "verdict"), RULE_OF_THUMB)
def test_the_rule_of_thumb_is_held_against_half_the_girth(rod: str, least: str, thumb: str, verdict: str) -> None:
    plan = casing({"rod.diameter": rod, "heading.depth": "8 in", "panel.casing": "9 in"})
    figure = plan.figures["casing_least"]
    assert float(figure.value.inches) == pytest.approx(float(least), abs=1e-7)
    assert figure.working.endswith(verdict)
    assert plan.tape.show(abs(inches(thumb) - figure.value)).split(",")[0] in figure.working


def test_a_deeper_casing_hangs_lower_only_by_what_it_takes_up_less() -> None:
    """Stitched from 3 in to 2 in: take-up of 2 in less that of 3 in, by the table of checks.md's law."""
    spec = job(CASING)
    kind = HEADINGS["casing"]
    old, new = kind.hang(spec, spec.panel.heading), kind.hang(spec, spec.heading)
    assert old.tube and new.tube
    assert casing().drop.hang_shift == new.tube.take_up - old.tube.take_up
    assert length("1/32 in") > casing().drop.hang_shift > length("0 in")
