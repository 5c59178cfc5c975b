"""Laws of finding bars: whatever a page does to them as a whole, they are found, and what it did is read off them."""

from __future__ import annotations

import math
from fractions import Fraction
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from templategen.checking.bars import Bar, find_bars
from templategen.checking.causes import cause_of
from templategen.checking.geometry import Letter, Matrix, Point, Stroke
from templategen.checking.papers_of_pages import paper_said
from templategen.checking.sheets import Sheet, sheets_of
from templategen.checking.size_findings import true_sizes
from templategen.drawing import LARGE, USUAL, Line, Look, Text
from templategen.layout.area import Area
from templategen.layout.furniture import Says, sheet_items
from templategen.layout.kit import CORRECTED

WHOLE = Area(*map(Fraction, (10, 18, 206, 269)))


def _sheet(remark: str = "", look: Look = USUAL) -> tuple[list[Stroke], list[Letter]]:
    """The furniture of a sheet as strokes and letters, each letter a third of its size wide."""
    strokes, letters = [], []
    for item in sheet_items(WHOLE, Says("Reading room, east window", "letter", remark, look), 3, 8, []):
        if isinstance(item, Line):
            strokes.append(Stroke(Point(*map(float, (item.x1, item.y1))), Point(*map(float, (item.x2, item.y2)))))
        elif isinstance(item, Text) and item.turn == 0:
            for run, x, y in item.runs():
                for i, each in enumerate(run.text):
                    letters.append(Letter(each, Point(x + i * item.size * 0.13, y)))
    return strokes, letters


def _moved(matrix: Matrix, strokes: list[Stroke]) -> list[Stroke]:
    return [Stroke(matrix.point(*line.start), matrix.point(*line.end)) for line in strokes]


def _turn(degrees: float) -> tuple[float, float, float, float]:
    cos, sin = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    return cos, sin, -sin, cos


def _only(sheets: list[Sheet]) -> tuple[Sheet, Bar, Bar]:
    (sheet,) = sheets
    assert sheet.across and sheet.along
    return sheet, sheet.across, sheet.along


@given(
    st.floats(0.3, 3),
    st.floats(0.85, 1.15),
    st.sampled_from([0, 90, 180, 270]) | st.floats(0, 360),
    st.booleans(),
    st.floats(-500, 500),
    st.randoms(use_true_random=False),
    st.sampled_from([USUAL, LARGE]),
)
def test_scale_stretch_turn_and_mirror_are_read_off_the_bars(
    scale: float, stretch: float, degrees: float, mirrored: bool, moved: float, order: Random, look: Look
) -> None:
    along = scale * stretch
    matrix = Matrix(-scale if mirrored else scale, 0, 0, along).then(Matrix(*_turn(degrees), moved, -moved))
    strokes, letters = _sheet("", look)
    strokes = _moved(matrix, strokes)
    order.shuffle(strokes)
    strokes = [line.turned_round if i % 2 else line for i, line in enumerate(strokes)]
    letters = [Letter(each.text, matrix.point(*each.at)) for each in letters]
    sheet, across, upward = _only(sheets_of(1, find_bars(strokes), letters))
    assert across.ratio == pytest.approx(scale, rel=1e-6) and upward.ratio == pytest.approx(along, rel=1e-6)
    assert sheet.mirrored == mirrored
    expected = degrees + 180 * mirrored
    assert math.cos(math.radians(sheet.turn - expected)) == pytest.approx(1, abs=1e-6)
    assert sheet.off_square < 1e-3
    assert sheet.head and (sheet.head.number, sheet.head.of, sheet.head.paper) == (3, 8, "letter")
    assert sheet.head.title == "Reading room, east window"


@given(st.integers(1, 3), st.integers(1, 3), st.floats(0.25, 0.7))
def test_sheets_put_together_on_a_page_are_each_found(columns: int, rows: int, scale: float) -> None:
    strokes, letters = _sheet()
    all_strokes, all_letters = [], []
    for column in range(columns):
        for row in range(rows):
            matrix = Matrix(scale, 0, 0, scale, 216 * scale * column, 279 * scale * row)
            all_strokes += _moved(matrix, strokes)
            all_letters += [Letter(each.text, matrix.point(*each.at)) for each in letters]
    sheets = sheets_of(1, find_bars(all_strokes), all_letters)
    assert len(sheets) == columns * rows
    assert all(sheet.across and sheet.along and sheet.head for sheet in sheets)
    assert all(sheet.ratios == pytest.approx((scale, scale)) for sheet in sheets)


numbers = st.floats(0, 300)
strokes_anywhere = st.builds(lambda a, b, c, d: Stroke(Point(a, b), Point(c, d)), numbers, numbers, numbers, numbers)


@given(st.lists(strokes_anywhere, max_size=40))
def test_no_bars_are_found_among_lines_that_lie_anyhow(strokes: list[Stroke]) -> None:
    assert find_bars(strokes) == []


@pytest.mark.parametrize("drop", range(4))
def test_a_bar_without_one_of_its_ticks_is_none(drop: int) -> None:
    strokes, _ = _sheet()
    ticks = [line for line in strokes if line.length < 3]
    strokes.remove(ticks[drop])
    assert len(find_bars(strokes)) == 1


points = st.builds(Point, st.floats(), st.floats())


@given(st.lists(st.builds(Stroke, points, points), max_size=9))
def test_numbers_that_are_none_do_no_harm(strokes: list[Stroke]) -> None:
    assert len(find_bars(strokes + _sheet()[0])) == 2


@pytest.mark.parametrize("look", [USUAL, LARGE])
def test_a_correction_is_read_from_the_head(look: Look) -> None:
    """In large print it takes several rows."""
    strokes, letters = _sheet(CORRECTED.format(across="99.20", along="100.60", doubt=""), look)
    matrix = Matrix(1 / 0.992, 0, 0, 1 / 1.006)
    letters = [Letter(each.text, matrix.point(*each.at)) for each in letters]
    sheet, across, along = _only(sheets_of(1, find_bars(_moved(matrix, strokes)), letters))
    assert sheet.head and sheet.head.corrected == (0.992, 1.006)
    assert true_sizes(sheet) == pytest.approx((1, 1)) and across.ratio > 1 > along.ratio


LETTER, A4, A3 = (215.9, 279.4), (210.0, 297.0), (297.0, 420.0)


@pytest.mark.parametrize(
    ("ratio", "page", "paper", "said"),
    [
        # Geometry of paper sizes: an A4 page fitted on letter paper 94.07 %, a letter page on A4 97.27 %.
        (0.9407, LETTER, A4, "an A4 page fitted on letter paper"),
        (0.9727, A4, LETTER, "a letter page fitted on A4 paper"),
        (0.9407, A4, A4, "an A4 page fitted on letter paper"),
        (0.9727, LETTER, LETTER, "a letter page fitted on A4 paper"),
        (0.9727, A4, None, "a letter page fitted on A4 paper"),
        # ISO 216: from one size of the A series to the next, the square root of two.
        (math.sqrt(2), A3, A4, "an A4 page fitted on A3 paper"),
        (0.9, LETTER, LETTER, "a scale of 90 % was set"),
        (1.03, LETTER, LETTER, "a scale of 103 % was set"),
        (1.0337, LETTER, LETTER, "printing without borders"),
        (571 / 612, A4, LETTER, "fitted on A4 paper inside margins of about 4 mm"),
        (720 / 792, LETTER, LETTER, "fitted inside margins of about 10 mm"),
        (0.5, (107.95, 139.7), LETTER, "the page itself was made smaller"),
        (297 / 279.4, A4, LETTER, "a letter page made to fill A4 paper"),
    ],
)
def test_the_likely_cause_of_a_scale_is_named(
    ratio: float, page: tuple[float, float], paper: tuple[float, float] | None, said: str
) -> None:
    assert said in cause_of(ratio, page, paper)


def test_a_page_that_lies_flat_is_fitted_as_it_lies() -> None:
    assert "fitted on A4 paper" in cause_of(210 / 279.4, A4[::-1], LETTER)
    assert "fitted on A4 paper" in cause_of(210 / 215.9, A4[::-1], LETTER, turned=True)


def test_papers_are_read_by_name_and_by_size() -> None:
    assert paper_said("A4") == (210, 297)
    assert paper_said("letter") == (215.9, 279.4)
    assert paper_said("ANSI C") == pytest.approx((17 * 25.4, 22 * 25.4))
    assert paper_said("200 x 280.5 mm") == paper_said("200x280.5mm") == (200, 280.5)
    assert paper_said("1.2.3 x 4 mm") is None and paper_said("parchment") is None
