"""The first page: what stands on it, and that its maps show every piece where it is."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import Phase, given, settings

from templategen import Options, make_kit, make_plan, read_spec
from templategen.document.blocks import Figure, Paragraph
from templategen.drawing import Bounds, Line, LineType, Ring, Solid, Text
from templategen.layout import CHECK, WORDS, Kit, Placed, Sheet
from templategen.layout.budget_words import first_page_lines
from templategen.layout.sheet_map import MOST_SHEETS
from tests.bench.jobs import ORDINARY
from tests.proof.crossing import crossed, margins, outside, piece_box

from .laws import alike, kit_of, kit_texts

some = settings(max_examples=15, derandomize=True, deadline=None, phases=[Phase.explicit, Phase.generate])
_NARROW = 'margins = { left = "3 mm", right = "3 mm", top = "3 mm", bottom = "3 mm" }'
_SMALL = f'width = "150 mm"\nheight = "150 mm"\n{_NARROW}'
_FLAT = 'width = "430 mm"\nheight = "180 mm"'
PAPERS = {name: f'name = "{name}"' for name in ("a4", "letter", "legal", "a3", "a0")} | {
    "150 x 150 mm": _SMALL, "430 x 180 mm": _FLAT,
}  # fmt: skip


def _job(width: int, count: int, paper: str) -> str:
    """The ordinary job on a panel of this width in inches."""
    text = ORDINARY.replace('width = "54 in"', f'width = "{width} in"').replace(
        'length = "60 in"', f'length = "{min(width + 2, 2300)} in"'
    )
    return text.replace('style = "back loops"', f'style = "back loops", count = {count}') + f"[paper]\n{paper}\n"


def _kit(text: str, paper: str = "") -> Kit:
    """A kit of all templates with a page of words; on paper that takes no card, of what it takes."""
    return kit_of(text, only=("spacing strip", "loop ladder") if paper == "150 x 150 mm" else ())


def _checks(kit: Kit) -> list[Sheet]:
    return [sheet for sheet in kit.sheets if sheet.holds == (CHECK,)]


def _with_pieces(kit: Kit) -> list[Sheet]:
    return [sheet for sheet in kit.sheets if sheet.placed]


def _rectangles(items: tuple[object, ...], kind: LineType) -> list[Bounds]:
    """Four lines in a row that go round: their boxes, in the order in which they are drawn."""
    lines = [item for item in items if isinstance(item, Line)]
    found = []
    for i in range(len(lines) - 3):
        sides = lines[i : i + 4]
        ends = [(side.x2, side.y2) == (after.x1, after.y1) for side, after in pairwise([*sides, sides[0]])]
        if all(ends) and all(side.kind is kind for side in sides):
            xs, ys = [float(side.x1) for side in sides], [float(side.y1) for side in sides]
            found.append(Bounds(min(xs), min(ys), max(xs), max(ys)))
    return found


def _said(sheet: Sheet) -> list[str]:
    return [item.text for item in sheet.items if isinstance(item, Text)]


@pytest.mark.parametrize("name", ["letter", "a4"])
def test_an_ordinary_kit_has_it_all_on_one_sheet(name: str) -> None:
    kit = make_kit(make_plan(read_spec(_job(54, 9, PAPERS[name]))))
    (first,) = _checks(kit)
    assert first is kit.sheets[0] and kit.sheets[1].holds == (WORDS,)
    said = _said(first)
    assert "Print this page first, by itself" in said
    assert {f"page {sheet.number}" for sheet in _with_pieces(kit)} <= set(said)
    (closing,) = first_page_lines(kit.budgets, kit.tape)
    assert closing[:40] in " ".join(said)


@some
@given(kit_texts())
@alike
def test_what_the_first_page_says_is_of_a_size_that_can_be_read(text: str) -> None:
    """8.5 points and up, but for what every sheet carries in its head and beside its bars."""
    kit = kit_of(text)
    carried = {text for sheet in kit.sheets for text in _said(sheet) if not sheet.placed} & {
        text for text in _said(_with_pieces(kit)[0])
    }
    for sheet in _checks(kit):
        sizes = [item.size for item in sheet.items if isinstance(item, Text) and item.text not in carried]
        assert min(sizes) >= 8.5


@some
@given(kit_texts())
@alike
def test_pages_are_counted_through_whatever_the_first_page_takes(text: str) -> None:
    kit = kit_of(text)
    assert [sheet.number for sheet in kit.sheets] == list(range(1, len(kit.sheets) + 1))
    assert all(f"page {sheet.number} of {len(kit.sheets)}" in _said(sheet) for sheet in kit.sheets)
    kinds = ["check" if s.holds == (CHECK,) else "words" if s.holds == (WORDS,) else "pieces" for s in kit.sheets]
    assert kinds == sorted(kinds, key=["check", "words", "pieces"].index)
    assert set(kinds) == {"check", "words", "pieces"}


def _at_scale(kit: Kit, placed: Placed, picture: Bounds) -> Bounds:
    """Where a piece belongs on a picture of its sheet."""
    wide = float(kit.paper.width * kit.correction.across)
    high = float(kit.paper.height * kit.correction.along)
    scale = (picture.right - picture.left) / wide
    assert (picture.top - picture.bottom) / high == pytest.approx(scale)
    box = piece_box(placed)
    return Bounds(
        picture.left + box.left * scale, picture.bottom + box.bottom * scale,
        picture.left + box.right * scale, picture.bottom + box.top * scale,
    )  # fmt: skip


@some
@given(kit_texts())
@alike
def test_every_piece_stands_on_the_map_once_at_its_scaled_place(text: str) -> None:
    kit = kit_of(text)
    sheets = _with_pieces(kit)
    if len(sheets) > MOST_SHEETS:
        return
    # The first on each sheet is its frame.
    drawn = [box for check in _checks(kit) for box in _rectangles(check.items, LineType.THIN)[1:]]
    drawn = [box for box in drawn if box.right - box.left < 150]
    assert len(drawn) == len(sheets) + sum(len(sheet.placed) for sheet in sheets)
    for sheet in sheets:
        picture = drawn.pop(0)
        for placed in sheet.placed:
            assert tuple(drawn.pop(0)) == pytest.approx(tuple(_at_scale(kit, placed, picture)), abs=1e-6)


@some
@given(kit_texts())
@alike
def test_under_every_picture_stands_the_page_it_is_of(text: str) -> None:
    kit = kit_of(text)
    captions = [
        item
        for check in _checks(kit)
        for item in check.items
        if isinstance(item, Text) and item.bold and item.text.startswith("page ") and " of " not in item.text
    ]
    if len(_with_pieces(kit)) <= MOST_SHEETS:
        assert [caption.text for caption in captions] == [f"page {sheet.number}" for sheet in _with_pieces(kit)]


@pytest.mark.parametrize("name", ["letter", "a4", "legal"])
@pytest.mark.parametrize("width", [54, 120, 240])
def test_the_taped_strip_is_drawn_to_scale_with_every_join_and_page(name: str, width: int) -> None:
    kit = _kit(_job(width, 2 * (width // 12) + 1, PAPERS[name]))
    boxes = [box for check in _checks(kit) for box in _rectangles(check.items, LineType.MARK)]
    placed = {each.piece.number: (each.piece, sheet.number) for sheet in _with_pieces(kit) for each in sheet.placed
              if each.piece.drawing.name == "spacing strip"}  # fmt: skip
    pieces = [placed[number] for number in sorted(placed)]
    strip = boxes[: len(pieces)]
    seen = [
        (piece.right.at if piece.right else piece.drawing.end) - (piece.left.at if piece.left else piece.drawing.start)
        for piece, _ in pieces
    ]
    scale = (strip[0].right - strip[0].left) / float(seen[0])
    assert sum(seen) == Fraction(254, 10) * width
    assert [box.right - box.left for box in strip] == pytest.approx([float(length) * scale for length in seen])
    heights = [box.top for box in strip]
    assert all(one != other for one, other in pairwise(heights)), "neighbours stand at different heights"
    said = [item for check in _checks(kit) for item in check.items if isinstance(item, Text)]
    for (piece, page), box in zip(pieces, strip, strict=True):
        within = {item.text for item in said if _inside(item, box)}
        assert {str(piece.number), f"page {page}"} <= within
    letters = [piece.right.label for piece, _ in pieces if piece.right]
    assert all(letter in {item.text for item in said} for letter in letters)
    assert any(f"Spacing strip: {len(pieces)} pieces, {width} in" in item.text for item in said)


def _inside(text: Text, box: Bounds) -> bool:
    own = text.bounds
    return own.left >= box.left and own.right <= box.right and own.bottom >= box.bottom and own.top <= box.top


@pytest.mark.parametrize("name", PAPERS)
@pytest.mark.parametrize(("width", "count"), [(40, 5), (54, 9), (120, 13), (300, 31), (700, 71), (1500, 151)])
def test_nothing_touches_anything_from_one_sheet_to_more_than_are_drawn(name: str, width: int, count: int) -> None:
    margin = (3, 3, 3, 3) if name == "150 x 150 mm" else (10, 10, 10, 18)
    kit = _kit(_job(width, count, PAPERS[name]), name)
    checks = replace(kit, sheets=tuple(_checks(kit)))
    assert list(crossed(checks)) == []
    assert list(outside(checks, margins(kit, *margin))) == []
    assert all(sheet.items for sheet in checks.sheets)


def test_those_jobs_run_from_one_sheet_to_more_than_are_drawn() -> None:
    counts = {
        len(_with_pieces(_kit(_job(width, count, PAPERS[name]))))
        for name, width, count in [("a0", 54, 9), ("a4", 54, 9), ("letter", 700, 71), ("letter", 1500, 151)]
    }
    assert min(counts) == 1 and any(20 < count <= MOST_SHEETS for count in counts) and max(counts) > MOST_SHEETS


@pytest.mark.parametrize(("width", "count"), [(300, 31), (700, 71), (2300, 231)])
def test_where_names_have_no_room_a_list_says_where_each_piece_is(width: int, count: int) -> None:
    """Read back as a person would: "7 to 9 on page 8"."""
    kit = _kit(_job(width, count, PAPERS["letter"]))
    said = [block.text.replace("\N{NO-BREAK SPACE}", " ") for block in kit.check if isinstance(block, Paragraph)]
    words = " ".join(text for text in said if " on page " in text)
    if not words:
        assert all(block.words for block in kit.check if isinstance(block, Figure))
        return
    listed = words.partition("Spacing strip, piece by piece: ")[2].partition(".")[0]
    told: dict[int, int] = {}
    numbers: list[int] = []
    for part in listed.split(", "):
        run, _, page = part.partition(" on page ")
        low, _, high = run.partition(" to ")
        numbers += range(int(low), int(high or low) + 1)
        if page:
            told |= dict.fromkeys(numbers, int(page))
            numbers = []
    assert told == {
        placed.piece.number: sheet.number
        for sheet in _with_pieces(kit)
        for placed in sheet.placed
        if placed.piece.drawing.name == "spacing strip"
    }


def test_a_kit_of_the_check_alone_maps_nothing() -> None:
    kit = make_kit(make_plan(read_spec(ORDINARY)), Options(only=("print check",)))
    assert [sheet.holds for sheet in kit.sheets] == [(CHECK,)]
    assert not any("Where each piece is" in text for text in _said(kit.sheets[0]))
    assert not any(isinstance(block, Figure) for block in kit.check)


def test_named_templates_are_mapped_and_no_others() -> None:
    kit = make_kit(make_plan(read_spec(ORDINARY)), Options(only=("print check", "cut gauge")))
    said = " ".join(_said(kit.sheets[0]))
    assert "page 2" in said and "cut gauge" in said and "spacing strip" not in said


def test_a_bar_has_a_line_to_write_its_reading_on_wherever_it_is() -> None:
    """Beside the bars where there is room, among the words where there is none."""
    for name in PAPERS:
        sheet = _checks(_kit(_job(54, 9, PAPERS[name]), name))[0]
        said = _said(sheet)
        beside = {"This bar measures", "And this one"} <= set(said)
        assert beside != any("Bar across the sheet" in text for text in said), name
        blanks = [i for i in sheet.items if isinstance(i, Line) and i.kind is LineType.THIN and 25 < _length(i) < 80]
        assert len(blanks) >= 2
        assert beside == any(isinstance(item, Solid) for item in sheet.items)
        assert not any(isinstance(item, Ring) for item in sheet.items)


def _length(line: Line) -> float:
    return abs(float(line.x2 - line.x1)) + abs(float(line.y2 - line.y1))
