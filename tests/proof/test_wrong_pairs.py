"""A wrong neighbour, a piece turned upside down and a skipped piece show at once: on the pictures of whole kits."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest

from templategen.drawing import Item, Line, LineType
from templategen.layout import Placed
from templategen.layout.joins import PITCH, POINT, TOOTH

from .joining import Lying, NoFit, Pair, Paper, beside
from .kits import CROWDED, PANELS, Panel, made
from .measuring import errors_at, is_mark, sight, strip_errors
from .redrawing import redrawn
from .seeing import Stroke
from .wrong_pairs import Tried, all_tried, margins

SEEN = 1.0
"""Our choice: in mm, three times the width of the lines; who sees a line broken by that much stops and looks."""
TRIED = {
    name: panel
    for name, panel in (PANELS | CROWDED).items()
    if name
    in {
        "42 in, 4 loops, letter", "60 1/3 in, 7 loops, letter", "96 in, 22 loops, A4", "120 in, 25 loops, letter",
        "1370 mm, 8 loops, letter", "3000 mm, 13 loops, A4", *CROWDED,
    }
}  # fmt: skip
"""Letter and A4, inches and millimetres, 5 to 15 pieces; one with a gauge of two pieces, two crowded."""


@pytest.fixture(scope="module", params=TRIED)
def name(request: pytest.FixtureRequest) -> str:
    chosen: str = request.param
    return chosen


@pytest.fixture(scope="module")
def tried(name: str) -> Iterator[list[Tried]]:
    papers = [paper for taped in sight(TRIED[name]).taped.values() for paper in taped.papers]
    found = all_tried(papers)
    print(f"\n{name:<28} {margins(found)}")
    yield found


def test_of_all_pairs_of_ends_only_the_right_ones_join(tried: list[Tried]) -> None:
    assert {(t.left, t.right) for t in tried if t.joins and not t.upside_down} == {
        (t.left, t.right) for t in tried if t.belongs
    }
    assert sum(t.belongs for t in tried) >= 4


def test_a_wrong_neighbour_has_two_teeth_off_by_a_pitch_at_least(tried: list[Tried]) -> None:
    """Pieces of another template, whose marks stand elsewhere, by a millimetre."""
    for t in tried:
        if not t.belongs and not t.upside_down:
            same = t.left.rstrip(" 0123456789") == t.right.rstrip(" 0123456789")
            assert t.teeth_off >= 2, t
            assert t.nearest >= (float(PITCH) - 0.1 if same else 0.3), t


def test_a_piece_upside_down_has_every_tooth_off_and_its_marks_and_the_wrong_ends(tried: list[Tried]) -> None:
    for t in tried:
        if t.upside_down:
            assert not t.joins, t
            assert t.teeth_off >= 4, t
            assert t.marks_off >= SEEN, t
            assert t.ends_off, t
            if t.left.rstrip(" 0123456789") == t.right.rstrip(" 0123456789"):
                assert t.nearest >= SEEN, t


def test_after_a_skipped_piece_four_teeth_are_off(name: str) -> None:
    """On a crowded strip, whose marks stand nearer to each other, two at least; the most differ by more."""
    papers = sight(TRIED[name]).taped["spacing strip"].papers
    off = []
    for one, other in zip(papers, papers[2:], strict=False):
        right, left = one.pairs[1], other.pairs[0]
        assert right is not None and left is not None
        with pytest.raises(NoFit):
            beside(right, Lying(), left)
        off.append(len(right.strangers(left)))
    assert min(off) >= (2 if name in CROWDED else 4)


@pytest.mark.parametrize("panel", CROWDED.values(), ids=CROWDED, scope="module")
class TestOfCrowdedStrips:
    def test_every_loop_stands_where_it_belongs(self, panel: Panel) -> None:
        errors = strip_errors(panel, sight(panel).taped["spacing strip"])
        assert max(errors.marks) <= 0.1 and errors.right_edge <= 0.1 and errors.bend <= 0.1

    def test_every_join_is_crowded_and_says_so(self, panel: Panel) -> None:
        kit = made(panel).kit
        strips = [each for sheet in kit.sheets for each in sheet.placed if each.piece.drawing.name == "spacing strip"]
        for placed in strips:
            said = " ".join(item.text for item in placed.items if hasattr(item, "text"))
            assert "Marks stand close at join" in said
            for join in placed.piece.joins:
                assert join.crowded and join.label in said.split("Marks stand close at join")[1]

    def test_a_mark_that_lies_whole_in_the_overlap_is_on_both_pieces(self, panel: Panel) -> None:
        """From 6 mm before the match line to 10 mm beyond it, as they are cut; a line's width short of that."""
        strip = sight(panel).taped["spacing strip"]
        rows = strip.strokes(2.0, 7.0)
        for i in range(len(rows) - 1):
            pair = strip.papers[i + 1].pairs[0]
            assert pair is not None
            join = strip.along(i + 1, pair.upper)
            overlap = [
                float(mark.at.mm)
                for mark in made(panel).plan.heading.marks
                if join - 5.5 < float(mark.at.mm) < join + 9.5
            ]
            assert len(overlap) >= 1
            for row in (rows[i], rows[i + 1]):
                assert max(errors_at(overlap, filter(is_mark, _apart(row, join)))) <= 0.1

    def test_no_registration_mark_is_printed_over_a_mark(self, panel: Panel) -> None:
        for sheet in made(panel).kit.sheets:
            for placed in sheet.placed:
                if placed.piece.joins:
                    assert list(_printed_over(placed)) == []


def _apart(row: list[Stroke], join: float) -> list[Stroke]:
    """The strokes that are not the match line itself."""
    return [stroke for stroke in row if abs(stroke.at - join) > 0.2]


def _printed_over(placed: Placed) -> Iterator[tuple[Item, Item]]:
    """Registration marks and lines of the drawing itself that touch."""
    drawn = set(placed.piece.drawing.items)
    own = [item for item in placed.items if isinstance(item, Line) and item in drawn]
    rings = [item for item in placed.items if type(item).__name__ == "Ring"]
    for ring in rings:
        box = ring.bounds
        for line in own:
            if line.kind is not LineType.CUT and not line.runs_along and line.bounds.meets(box, 0.3):
                yield ring, line


def _papers_of_redrawn(change: str) -> list[Paper]:
    """The papers of a small kit on which the left side of piece 3 is drawn wrong."""
    kit = made(PANELS["42 in, 4 loops, letter"])

    def redraw(placed: Placed, item: Item) -> Item | None:
        join, piece = placed.piece.left, placed.piece
        if piece.drawing.name != "spacing strip" or piece.number != 3 or join is None or not isinstance(item, Line):
            return item
        slanted = item.x1 != item.x2 and item.y1 != item.y2
        if change == "without points" and slanted:
            return None
        if change == "a point moved" and slanted:
            return replace(item, x1=min(item.x1, join.at + TOOTH + POINT), y1=item.y1 + 1, y2=item.y2 + 1)
        return item

    return redrawn(kit, redraw)


@pytest.mark.parametrize("change", ["without points", "a point moved"])
def test_a_figure_that_is_not_closed_keeps_a_piece_from_joining(change: str) -> None:
    """The looking must be able to fail."""
    papers = {p.piece.number: p for p in _papers_of_redrawn(change) if p.piece.template == "spacing strip"}
    right, left = papers[2].pairs[1], papers[3].pairs[0]
    assert isinstance(right, Pair) and isinstance(left, Pair)
    assert right.strangers(left) == []
    assert not right.meets(left)


def test_redrawing_alone_keeps_no_piece_from_joining() -> None:
    papers = {p.piece.number: p for p in _papers_of_redrawn("") if p.piece.template == "spacing strip"}
    right, left = papers[2].pairs[1], papers[3].pairs[0]
    assert right is not None and left is not None and right.meets(left)
