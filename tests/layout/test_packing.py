"""Packing: everything lies apart and inside, on as few sheets as there can be, held against a packing library."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import combinations
from math import ceil

import pytest
import rectpack
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from templategen import make_kit, make_plan, read_spec
from templategen.errors import Refusal
from templategen.layout.free_places import Care
from templategen.layout.packing import GAP, MOST_SEARCHED, Packing, Run, Size, pack
from templategen.layout.packing.rectangles import Free, Strips
from tests.bench.jobs import ORDINARY, stage_curtain
from tests.bench.sheets import Kit, kits

from .laws import alike, kit_of, kit_texts

WIDE, HIGH = Fraction(1854, 10), Fraction(2279, 10)
"""What letter paper leaves free, in mm."""
OVERLAP, SHORTEST, DEPTH = Fraction(16), Fraction(60), Fraction(58)
often = settings(max_examples=60, derandomize=True, deadline=None, phases=[Phase.explicit, Phase.generate])

Blocks = list[tuple[int, int]]
Piece = tuple[int, Fraction]
"""Of which run, and how long, in mm."""


def blocks(most: int) -> st.SearchStrategy[Blocks]:
    return st.lists(st.tuples(st.integers(25, 180), st.integers(25, 220)), max_size=most)


def lengths() -> st.SearchStrategy[list[Fraction]]:
    """Of runs that fit no sheet whole."""
    return st.lists(st.integers(2300, 90_000).map(lambda tenths: Fraction(tenths, 10)), max_size=3)


def _run(number: int, length: Fraction) -> Run[Piece]:
    """A run that can be joined anywhere."""

    def cut(rooms: Sequence[Fraction], care: Care) -> list[Piece] | None:
        if sum(rooms) - OVERLAP * (len(rooms) - 1) < length:
            return None
        pieces, rest = [], length + OVERLAP * (len(rooms) - 1)
        for i, room in enumerate(rooms):
            pieces.append((number, min(room, rest - SHORTEST * (len(rooms) - 1 - i))))
            rest -= pieces[-1][1]
        return pieces

    return Run(length, cut, lambda longest, care: ceil((length - OVERLAP) / (longest - OVERLAP)))


def _packed(sizes: Blocks, runs: Sequence[Fraction] = ()) -> Packing[Piece]:
    return pack(
        [Size.of_piece(Fraction(wide), Fraction(high)) for wide, high in sizes],
        [_run(number, length) for number, length in enumerate(runs)],
        DEPTH,
        OVERLAP,
        SHORTEST,
        Size.of_sheet(WIDE, HIGH),
    )


def _boxes(sizes: Blocks, packing: Packing[Piece]) -> Iterator[tuple[int, Fraction, Fraction, Fraction, Fraction]]:
    """Sheet, left, top, right and bottom of everything."""
    for (wide, high), spot in zip(sizes, packing.blocks, strict=True):
        across, down = (high, wide) if spot.turned else (wide, high)
        yield spot.sheet, spot.left, spot.top, spot.left + across, spot.top + down
    for pieces in packing.runs:
        for (_, length), spot in pieces:
            across, down = (DEPTH, length) if spot.turned else (length, DEPTH)
            yield spot.sheet, spot.left, spot.top, spot.left + across, spot.top + down


@often
@given(blocks(12), lengths())
def test_everything_lies_apart_and_inside(sizes: Blocks, runs: list[Fraction]) -> None:
    packing = _packed(sizes, runs)
    boxes = list(_boxes(sizes, packing))
    assert all(left >= 0 and top >= 0 and right <= WIDE and bottom <= HIGH for _, left, top, right, bottom in boxes)
    for one, other in combinations(boxes, 2):
        if one[0] == other[0]:
            apart = (one[3], other[3], one[4], other[4]), (other[1], one[1], other[2], one[2])
            assert any(end + GAP <= start for end, start in zip(*apart, strict=True))
    assert {box[0] for box in boxes} == set(range(packing.sheets))


@often
@given(blocks(12), lengths())
def test_a_run_is_all_there_in_order(sizes: Blocks, runs: list[Fraction]) -> None:
    for length, pieces in zip(runs, _packed(sizes, runs).runs, strict=True):
        covered = sum((piece for (_, piece), _ in pieces), Fraction(0)) - OVERLAP * (len(pieces) - 1)
        assert covered == length
        assert [spot.sheet for _, spot in pieces] == sorted(spot.sheet for _, spot in pieces)


@often
@given(blocks(12), lengths())
def test_no_packing_takes_fewer_sheets_than_its_bound(sizes: Blocks, runs: list[Fraction]) -> None:
    packing = _packed(sizes, runs)
    assert packing.bound.by_area <= packing.sheets
    assert packing.bound.by_rows <= packing.sheets


def _by_the_library(sizes: Blocks) -> int:
    """The fewest sheets that rectpack finds with any of its guillotine, skyline and maximal-rectangle methods."""
    scale, gap = 10, 20
    counts = []
    for name in dir(rectpack):
        if not name.startswith(("Guillotine", "Skyline", "MaxRects")):
            continue
        packer = rectpack.newPacker(pack_algo=getattr(rectpack, name), rotation=True)
        for number, (wide, high) in enumerate(sizes):
            packer.add_rect(wide * scale + gap, high * scale + gap, number)
        packer.add_bin(int(WIDE * scale) + gap, int(HIGH * scale) + gap, count=len(sizes))
        packer.pack()
        if len(packer.rect_list()) == len(sizes):
            counts.append(len(packer))
    return min(counts)


@settings(max_examples=40, derandomize=True, deadline=None, phases=[Phase.explicit, Phase.generate])
@given(blocks(MOST_SEARCHED).filter(bool))
def test_blocks_take_no_more_sheets_than_with_the_library_and_no_fewer_than_the_bound(sizes: Blocks) -> None:
    """rectpack 0.2: what it finds can be done, so the bound must not be above it."""
    ours, theirs = _packed(sizes), _by_the_library(sizes)
    assert ours.bound.sheets <= ours.sheets <= theirs


@settings(max_examples=15, derandomize=True, deadline=None, phases=[Phase.explicit, Phase.generate])
@given(st.lists(st.tuples(st.integers(40, 180), st.integers(40, 220)), min_size=9, max_size=40))
def test_many_blocks_take_about_as_few_sheets_as_with_the_library(sizes: Blocks) -> None:
    ours, theirs = _packed(sizes), _by_the_library(sizes)
    assert ours.bound.sheets <= ours.sheets <= theirs + max(1, theirs // 8)


@often
@given(kit_texts())
@alike
def test_no_kit_takes_fewer_sheets_than_its_bound(text: str) -> None:
    kit = kit_of(text)
    assert kit.bound.sheets <= sum(bool(sheet.placed) for sheet in kit.sheets)


def test_a_piece_is_cut_shorter_where_that_saves_a_sheet() -> None:
    """A gauge and a ladder share a sheet with the end of a strip, which fits beside the gauge and no longer."""
    gauge, ladder, card = (87, 136), (165, 75), (172, 203)
    packing = _packed([gauge, ladder, card], [Fraction(13716, 10)])
    assert packing.sheets == packing.bound.sheets == 4
    (pieces,) = packing.runs
    assert min(length for (_, length), _ in pieces) < Fraction(3, 4) * max(length for (_, length), _ in pieces)


def test_a_block_is_turned_where_that_saves_a_sheet() -> None:
    packing = _packed([(100, 180), (180, 80)])
    assert packing.sheets == 1
    assert sum(spot.turned for spot in packing.blocks) == 1


def test_a_stage_curtain_of_a_hundred_feet_takes_about_the_fewest_sheets() -> None:
    kit = make_kit(make_plan(read_spec(stage_curtain())))
    sheets = sum(bool(sheet.placed) for sheet in kit.sheets)
    assert len(kit.drawings[0].marks) == 150
    assert kit.bound.sheets <= sheets <= kit.bound.sheets + 1


def test_a_thousand_feet_are_refused_with_the_limit() -> None:
    with pytest.raises(Refusal, match=r"panel\.width: read .1000 ft. – .*60 m \(about 196 ft\)"):
        read_spec(ORDINARY.replace('width = "54 in"', 'width = "1000 ft"'))


@pytest.fixture(scope="module")
def sixty() -> list[Kit]:
    return list(kits())


def test_of_sixty_kits_nearly_all_take_the_fewest_sheets_and_none_two_more(sixty: list[Kit]) -> None:
    assert len(sixty) == 60
    assert len({(kit.width, kit.paper) for kit in sixty}) == 60
    assert {kit.templates for kit in sixty} == {1, 2, 3, 4}
    assert all(kit.sheets >= kit.bound for kit in sixty)
    assert sum(kit.sheets == kit.bound for kit in sixty) >= 57
    assert all(kit.sheets <= kit.bound + 1 for kit in sixty)


@often
@given(st.integers(1, 3000), st.integers(1, 3000))
def test_room_is_what_the_slots_are_worth_one_by_one(width: int, height: int) -> None:
    strips = Strips(60, 110, lambda length: length - 16, lambda length: length**3)
    free = Free(5, 7, width, height)
    slots = strips.slots(free)
    assert strips.room([free, free]) == 2 * sum(slot.length - 16 for slot in slots)
    assert strips.liked([free]) == sum(slot.length**3 for slot in slots)
    assert all(slot.length >= 110 for slot in slots)
    for slot in slots:
        wide, high = (60, slot.length) if slot.upright else (slot.length, 60)
        assert 5 <= slot.left <= slot.left + wide <= 5 + width and 7 <= slot.top <= slot.top + high <= 7 + height
