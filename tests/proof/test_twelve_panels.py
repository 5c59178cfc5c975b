"""Twelve kits, printed by an engine from outside, cut out, taped together and measured."""

from __future__ import annotations

import pytest

from .kits import PANELS, Panel, made
from .measuring import bar_errors, gauge_errors, reach_errors, sight, stair_errors, strip_errors
from .telling import HEADING, row

TRUE = 0.1
"""Millimetres, over the whole length of a panel: a fifth of a pencil line."""
TRUE_BAR = 0.05


@pytest.fixture(scope="module", params=PANELS.values(), ids=PANELS)
def panel(request: pytest.FixtureRequest) -> Panel:
    chosen: Panel = request.param
    return chosen


@pytest.fixture(scope="module", autouse=True)
def heading() -> None:
    print(f"\n{HEADING}")


def test_every_loop_stands_where_it_belongs_on_the_taped_strip(panel: Panel) -> None:
    errors = strip_errors(panel, sight(panel).taped["spacing strip"])
    print(row(panel, made(panel), sight(panel)))
    assert len(errors.marks) == panel.count
    assert max(errors.marks) <= TRUE
    assert errors.right_edge <= TRUE
    assert errors.strays == ()
    assert errors.bend <= TRUE


def test_teeth_alone_put_the_pieces_in_the_order_of_their_numbers(panel: Panel) -> None:
    taped, record = sight(panel).taped, made(panel).record
    of = {piece["template"]: piece["of"] for piece in record["pieces"]}
    assert {name: [paper.piece.number for paper in each.papers] for name, each in taped.items()} == {
        name: list(range(1, count + 1)) for name, count in of.items()
    }


def test_a_join_fits_no_other_join_of_its_kit(panel: Panel) -> None:
    papers = [paper for taped in sight(panel).taped.values() for paper in taped.papers]
    rights = [right for paper in papers if (right := paper.pairs[1]) is not None]
    lefts = [left for paper in papers if (left := paper.pairs[0]) is not None]
    assert sum(right.meets(left) for right in rights for left in lefts) == len(rights) == len(lefts)


def test_check_lengths_over_the_joins_are_true(panel: Panel) -> None:
    """Those over two or three joins from tick to tick, the whole from edge to edge."""
    checks = sight(panel).checks
    assert {(check.joins, check.error) for check in checks if check.error > TRUE} == set()


def test_every_join_has_a_check_length_over_it_and_the_whole_has_one(panel: Panel) -> None:
    for name, taped in sight(panel).taped.items():
        checks = [check for check in sight(panel).checks if check.template == name]
        spanned = [label for check in checks if not check.whole for label in check.joins]
        joins = len(taped.papers) - 1
        assert len(spanned) == len(set(spanned)) == joins
        assert [check.joins for check in checks if check.whole] == ([tuple(spanned)] if joins else [])
        assert all(len(check.joins) in (2, 3) or joins == 1 for check in checks if not check.whole)


def test_both_bars_of_every_sheet_are_true(panel: Panel) -> None:
    seen = sight(panel)
    assert len(seen.bars) == 2 * len(made(panel).kit.sheets)
    assert max(bar_errors(seen)) <= TRUE_BAR


def test_gauges_and_ladder_show_the_lengths_asked_for(panel: Panel) -> None:
    errors = gauge_errors(made(panel), sight(panel))
    assert {name: worst for name, each in errors.items() if (worst := max(each)) > TRUE} == {}


def test_the_steps_of_the_hem_gauge_can_be_felt_where_they_belong(panel: Panel) -> None:
    assert max(stair_errors(made(panel), sight(panel).taped["hem gauge card"])) <= TRUE


def test_match_lines_end_where_the_paper_ends(panel: Panel) -> None:
    """Within the width of a line, also where a card with stairs is in two pieces."""
    errors = [error for taped in sight(panel).taped.values() for error in reach_errors(taped)]
    assert max(errors) <= 0.3
