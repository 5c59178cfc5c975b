"""Rolls: a page as long as it takes, templates whole as far as a page can be long, and no paper for nothing."""

from __future__ import annotations

from fractions import Fraction

import pytest

from templategen import Options, make_kit, make_plan, read_spec
from templategen.drawing import Text
from templategen.errors import Refusal
from templategen.layout import CHECK, WORDS, Kit
from templategen.papers import LONGEST
from tests.bench.jobs import ORDINARY
from tests.proof.crossing import crossed, inside, margins, outside, piece_box


def _kit(width: int, roll: str, *only: str, printer: str = "") -> Kit:
    text = ORDINARY.replace('width = "54 in"', f'width = "{width} in"').replace(
        'length = "60 in"', f'length = "{width} in"'
    )
    return make_kit(make_plan(read_spec(text + printer)), Options(paper=roll, only=only, despite_stops=True))


def _pieces(kit: Kit, name: str) -> int:
    return sum(each.piece.drawing.name == name for sheet in kit.sheets for each in sheet.placed)


@pytest.mark.parametrize("roll", ["roll-297mm", "roll-24in", "roll-36in", "roll-1067mm"])
def test_a_kit_on_a_roll_is_one_page_with_everything_in_one_piece(roll: str) -> None:
    kit = _kit(54, roll)
    (page,) = kit.sheets
    assert set(page.holds) == {WORDS, *(drawing.name for drawing in kit.drawings)}
    assert all(_pieces(kit, drawing.name) == 1 for drawing in kit.drawings)


@pytest.mark.parametrize("roll", ["roll-297mm", "roll-24in", "roll-36in"])
@pytest.mark.parametrize("printer", ["", '[printer]\nacross = "99 mm"\nalong = "98 mm"\n'])
def test_nothing_touches_anything_on_a_roll(roll: str, printer: str) -> None:
    kit = _kit(54, roll, printer=printer)
    frame = margins(kit, 10, 10, 10, 18)
    assert list(crossed(kit)) == []
    assert list(outside(kit, frame)) == []
    assert all(inside(piece_box(placed), frame) for sheet in kit.sheets for placed in sheet.placed)


@pytest.mark.parametrize("width", [20, 54, 150, 180])
def test_a_page_is_no_longer_than_what_is_on_it(width: int) -> None:
    """A strip alone: its length, the margins, and what every sheet carries in head and foot, to a centimetre."""
    kit = _kit(width, "roll-297mm", "spacing strip")
    (page,) = kit.sheets
    (strip,) = page.placed
    lies_along = strip.direction == (0, 1)
    length = float(strip.piece.length if lies_along else strip.piece.drawing.depth)
    furniture = 10 + 18 + 11 + 12.5
    assert float(kit.paper.height) <= max(length, 108) + furniture + 10


@pytest.mark.parametrize(("width", "pieces"), [(196, 1), (200, 2), (300, 2), (500, 3)])
def test_a_template_is_cut_only_where_no_page_can_be_as_long(width: int, pieces: int) -> None:
    """ISO 32000-1, Annex C: a page is at most 14,400 units, 200 in; 2 in of it are margins and what it carries."""
    kit = _kit(width, "roll-24in", "spacing strip")
    assert _pieces(kit, "spacing strip") == pieces
    assert kit.paper.height <= LONGEST == Fraction(5080)


def test_pieces_of_a_long_strip_lie_side_by_side_on_one_page() -> None:
    kit = _kit(500, "roll-24in", "spacing strip")
    assert len(kit.sheets) == 1
    assert float(kit.paper.height) < 500 * 25.4 / 3 + 120


def test_a_roll_has_no_page_of_its_own_to_be_tried_first_unless_that_alone_is_asked_for() -> None:
    assert all(CHECK not in sheet.holds for sheet in _kit(54, "roll-24in").sheets)
    assert _kit(54, "roll-24in", CHECK).sheets[0].holds == (CHECK,)


def test_words_on_a_roll_are_set_in_columns_of_a_readable_width() -> None:
    kit = _kit(54, "roll-36in")
    words = [item for item in kit.sheets[0].items if isinstance(item, Text) and item.turn == 0 and item.size > 8]
    assert max(float(item.bounds.right - item.bounds.left) for item in words) < 260


def test_a_roll_too_narrow_for_the_bars_is_refused() -> None:
    with pytest.raises(Refusal, match="at least 108 x 108 mm"):
        _kit(54, "roll 120 mm")
