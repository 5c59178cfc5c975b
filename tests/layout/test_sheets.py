"""Laws of sheets: pieces lie beside each other inside the margins, and the list of them tells the truth."""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations

import pytest
from hypothesis import Phase, given, settings

from templategen import Options, make_kit, make_plan, read_spec
from templategen.document.blocks import Paragraph
from templategen.drawing import Line, LineType, Ring, Text
from templategen.layout import Placed
from templategen.layout.area import Area
from templategen.layout.flowing import flow
from templategen.layout.furniture import KEY
from templategen.layout.packing import GAP
from templategen.writers.kit_json import kit_record
from tests.bench.jobs import ORDINARY as _ORDINARY
from tests.proof.crossing import inside, margins, piece_box

from .laws import alike, kit_of, kit_texts

often = settings(max_examples=15, derandomize=True, deadline=None, phases=[Phase.explicit, Phase.generate])


@often
@given(kit_texts())
@alike
def test_no_two_pieces_of_a_sheet_overlap(text: str) -> None:
    kit = kit_of(text)
    for sheet in kit.sheets:
        for one, other in combinations(sheet.placed, 2):
            assert not piece_box(one).meets(piece_box(other), float(GAP) - 1e-6)


@often
@given(kit_texts())
@alike
def test_every_piece_lies_inside_the_margins_once(text: str) -> None:
    kit = kit_of(text)
    frame = margins(kit, 10, 10, 10, 18)
    assert all(inside(piece_box(placed), frame) for sheet in kit.sheets for placed in sheet.placed)
    placed = [(each.piece.drawing.name, each.piece.number) for sheet in kit.sheets for each in sheet.placed]
    assert len(placed) == len(set(placed))
    for drawing in kit.drawings:
        of = next(each.piece.of for sheet in kit.sheets for each in sheet.placed if each.piece.drawing is drawing)
        assert {number for name, number in placed if name == drawing.name} == set(range(1, of + 1))


@often
@given(kit_texts())
@alike
def test_the_list_puts_marks_where_datum_and_direction_put_them(text: str) -> None:
    kit = kit_of(text)
    across, along = float(kit.correction.across), float(kit.correction.along)
    record = kit_record(kit)
    for piece in record["pieces"]:
        (dx, dy), (ix, iy) = piece["direction"], piece["inward"]
        assert {abs(dx), abs(dy)} == {abs(ix), abs(iy)} == {0, 1}
        assert dx * ix + dy * iy == 0
        for mark in [*piece["marks"], *piece["match_lines"]]:
            offset = mark["along_mm"] - piece["along_mm"][0]
            assert mark["x_mm"] == pytest.approx(piece["datum"]["x_mm"] + dx * offset / across, abs=1e-5)
            assert mark["y_mm"] == pytest.approx(piece["datum"]["y_mm"] + dy * offset / along, abs=1e-5)
            assert 0 <= mark["x_mm"] <= record["paper"]["width_mm"]
            assert 0 <= mark["y_mm"] <= record["paper"]["height_mm"]


@often
@given(kit_texts())
@alike
def test_the_list_names_every_mark_of_every_template(text: str) -> None:
    kit = kit_of(text)
    record = kit_record(kit)
    for drawing in kit.drawings:
        listed = {
            (mark["label"], mark["along_mm"])
            for piece in record["pieces"]
            if piece["template"] == drawing.name
            for mark in piece["marks"]
        }
        assert listed == {(mark.label, round(float(mark.at), 6)) for mark in drawing.marks}


def _reach(placed: Placed, at: Fraction) -> float:
    """How far inward from the datum edge a continuous line stands at ``at``."""
    side = placed.piece.drawing.inward
    lines = [item for item in placed.items if isinstance(item, Line) and item.x1 == item.x2 == at]
    spans = sorted(
        sorted((side * float(line.y1), side * float(line.y2))) for line in lines if not line.kind.dashes
    )
    reach = 0.0
    for low, high in spans:
        if low <= reach:
            reach = max(reach, high)
    return reach


@often
@given(kit_texts())
@alike
def test_every_listed_mark_is_a_line_of_eight_millimetres_from_the_datum_edge(text: str) -> None:
    for sheet in kit_of(text).sheets:
        for placed in sheet.placed:
            short = [mark for mark in placed.piece.marks if _reach(placed, mark.at) < 8]
            assert short == [], f"{placed.piece.drawing.name}, piece {placed.piece.number}"


@often
@given(kit_texts())
@alike
def test_every_sheet_lists_its_two_bars(text: str) -> None:
    kit = kit_of(text)
    bars = kit_record(kit)["bars"]
    assert [bar["page"] for bar in bars] == [sheet.number for sheet in kit.sheets for _ in range(2)]
    assert {bar["nominal_mm"] for bar in bars} == {100.0}


@often
@given(kit_texts())
@alike
def test_no_two_joins_of_a_kit_have_one_letter(text: str) -> None:
    kit = kit_of(text)
    pieces = [placed.piece for sheet in kit.sheets for placed in sheet.placed]
    letters = [piece.right.label for piece in pieces if piece.right]
    assert len(letters) == len(set(letters))


@pytest.mark.parametrize("name", ["letter", "a4", "legal", "tabloid", "a3"])
def test_every_sheet_says_what_it_is_and_how_to_print_it(name: str) -> None:
    kit = make_kit(make_plan(read_spec(_ORDINARY)), Options(paper=name))
    for sheet in kit.sheets:
        said = [item.text for item in sheet.items if isinstance(item, Text)]
        assert kit.title in said and f"page {sheet.number} of {len(kit.sheets)}" in said
        paper = {"a4": "A4", "a3": "A3"}.get(name, name)
        assert any(text.startswith(f"Print at actual size, 100 %, one-sided, on {paper} paper. Then") for text in said)
        assert {"100 mm across", "4 in across", "100 mm along", "4 in along"} <= set(said)


@pytest.mark.parametrize("name", ["letter", "a4", "legal", "tabloid", "a3"])
def test_every_sheet_explains_the_line_types_that_stand_on_it(name: str) -> None:
    kit = make_kit(make_plan(read_spec(_ORDINARY)), Options(paper=name))
    for sheet in (sheet for sheet in kit.sheets if sheet.placed):  # in pictures of the work each line has its own words
        used = {item.kind for placed in sheet.placed for item in placed.items if isinstance(item, Line | Ring)}
        said = {item.text for item in sheet.items if isinstance(item, Text)}
        assert {KEY[kind] for kind in used if kind in KEY} == said & set(KEY.values())
        assert used - set(KEY) <= {LineType.THIN}


def test_a_correction_is_said_on_every_sheet() -> None:
    text = f'{_ORDINARY}\n[printer]\nacross = "99.2 mm"\nalong = "98.5 mm"\n'
    kit = make_kit(make_plan(read_spec(text)))
    remark = "Corrected for a printer that prints 99.20 % across and 98.50 % along."
    assert all(any(remark in item.text for item in sheet.items if isinstance(item, Text)) for sheet in kit.sheets)


def test_words_are_set_a_little_smaller_where_that_saves_a_page() -> None:
    area = Area(Fraction(10), Fraction(20), Fraction(190), Fraction(270))
    line = Paragraph("Measure with a steel or wooden rule, not a cloth tape, and measure twice before cutting once.")
    sizes = []
    for count in range(1, 140):
        pages = flow([line] * count, area)
        sizes.append({item.size for page in pages for item in page if isinstance(item, Text)})
        assert all(area.bottom <= item.bounds.bottom + 1 for page in pages for item in page)
    assert {11.0} in sizes and {10.5} in sizes and {10.0} in sizes
    assert all(len(size) == 1 and min(size) >= 10 for size in sizes)
