"""Pack: blocks and runs onto sheets, as few as can be found."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache
from typing import Generic, NamedTuple, TypeVar

from ..free_places import Care
from .arranging import Arrangement, Placed, arrange
from .bound import Bound, bound_for
from .greedy import greedily
from .rectangles import GAP, MICROMETRES, Free, Size, Slot, Spot, Strips, in_mm
from .sharing import members_of, share

MOST_SEARCHED = 7
"""Up to so many blocks every way of sharing sheets is tried; more are placed one by one. Our choice."""
_MORE_SHEETS = 3
"""So many sheets more than the fewest, and one for each eight of them, joins may cost that are placed with care."""

P = TypeVar("P")


@dataclass(frozen=True, slots=True)
class Run(Generic[P]):
    """A long template that is cut to fit; all runs of one packing are equally deep. Millimetres."""

    length: Fraction
    cut: Callable[[Sequence[Fraction], Care], Sequence[P] | None]
    """Its pieces for rooms of these lengths, in order; None where no joins fall so with this care."""
    fewest: Callable[[Fraction, Care], int | None]
    """Into how few pieces no longer than this it can be cut with this care; None where it cannot."""


@dataclass(frozen=True, slots=True)
class Packing(Generic[P]):
    """Where everything lies."""

    blocks: tuple[Spot, ...]
    runs: tuple[tuple[tuple[P, Spot], ...], ...]
    """For each run its pieces; a piece's spot is turned where it runs down the sheet."""
    sheets: int
    bound: Bound


class _Sheet(NamedTuple):
    """One sheet with blocks on it, by number, and what is free."""

    blocks: tuple[tuple[int, Placed], ...]
    free: tuple[Free, ...]


@dataclass(frozen=True, slots=True)
class _Job(Generic[P]):
    """What is to be packed, in micrometres."""

    blocks: Sequence[Size]
    runs: Sequence[Run[P]]
    sheet: Size
    depth: int
    shortest: int
    overlap: Fraction
    overhead: int
    """What a join and a gap take of a piece of a run."""

    def need_of(self, run: Run[P]) -> int:
        """What a run needs of the slots' lengths, of each but for what a join takes."""
        return -int(-(run.length - self.overlap) * MICROMETRES // 1)

    @property
    def need(self) -> int:
        return sum(map(self.need_of, self.runs))

    @property
    def least(self) -> int:
        """The least side of anything."""
        sides = [min(size) for size in self.blocks]
        return min([*sides, self.depth, self.shortest]) if self.runs else min(sides, default=0)

    @property
    def longest(self) -> Run[P] | None:
        return max(self.runs, key=lambda run: run.length, default=None)

    def fewest(self, length: int) -> int | None:
        """How many pieces no longer than this the longest run takes, with the most care that will do."""
        if self.longest is None:
            return 1
        counts = (self.longest.fewest(in_mm(length) - GAP, care) for care in Care)
        return next((count for count in counts if count is not None), None)

    def for_length(self) -> Strips:
        """Slots are worth their length but for what a join takes: what a run could fill at best."""
        return self._strips(lambda length: length - self.overhead)

    def for_few_pieces(self) -> Strips:
        """The same, and long ones are liked more than many."""
        return replace(self.for_length(), liking=lambda length: length**3)

    def for_joins(self) -> Strips:
        """Slots are worth what pieces of their length come to on the longest run, where its joins may fall."""
        need = self.need_of(self.longest) if self.longest else 0

        @cache
        def worth(length: int) -> int:
            pieces = self.fewest(length)
            return length - self.overhead if pieces is None else -(-need // pieces)

        return self._strips(worth)

    def _strips(self, worth: Callable[[int], int]) -> Strips:
        return Strips(self.depth, self.shortest, worth, worth)


def pack(
    blocks: Sequence[Size],
    runs: Sequence[Run[P]],
    depth: Fraction,
    overlap: Fraction,
    shortest: Fraction,
    sheet: Size,
) -> Packing[P]:
    """Everything on sheets: ``blocks`` whole and turned where it helps, ``runs`` cut to fit what is free.

    ``depth`` is that of all runs, ``overlap`` what a join takes of their length,
    ``shortest`` the least length of a piece, in mm. Every block must fit an empty
    sheet, and a run's piece as well.
    """
    piece = Size.of_piece(shortest, depth)
    # A room may be just as long as a sheet, whose size is rounded down.
    least = Size.of_sheet(shortest, depth).width
    job = _Job(blocks, runs, sheet, piece.height, least, overlap, Size.of_piece(overlap, overlap).width)
    for_joins = job.for_joins()
    bound = bound_for(blocks, job.need, for_joins, job.overhead, job.least, sheet)
    pieces = job.fewest(max(sheet)) or 0
    ways = ((job.for_length(), True), (job.for_length(), False), (job.for_few_pieces(), False), (for_joins, False))

    @cache
    def candidates(strips: Strips, upright: bool) -> list[_Candidate]:
        """The fewest sheets first. Where blocks lie does not hang on the care, so each way is worked out once."""
        return sorted(_candidates(job, strips, upright), key=lambda each: len(each.on))

    for care in Care:
        best: _Found[P] | None = None
        for strips, upright in ways if runs else ways[:2]:
            found = _first_that_fits(job, candidates(strips, upright), care, best)
            if found is not None and (best is None or found.cost < best.cost):
                best = found
            if best is not None and best.cost <= (bound.sheets, pieces):
                break
        if best is not None:
            return _packing(job, best, bound)
    raise AssertionError("a run that can be cut for one sheet can be cut for many")


class _Candidate(NamedTuple):
    """Sheets that may hold everything: empty ones, then those that blocks lie on."""

    on: list[_Sheet]
    strips: Strips


class _Found(NamedTuple, Generic[P]):
    """A candidate that holds everything, and where the pieces of its runs lie."""

    sheets: list[_Sheet]
    filled: list[list[tuple[P, int, Slot]]]

    @property
    def cost(self) -> tuple[int, int]:
        """Sheets; of two ways that take as many, the one with fewer pieces is the better."""
        return len(self.sheets), sum(map(len, self.filled))


def _first_that_fits(
    job: _Job[P], candidates: Sequence[_Candidate], care: Care, best: _Found[P] | None
) -> _Found[P] | None:
    """The first candidate that everything fits; None where there is none as small as the best."""
    for candidate in candidates:
        if best is not None and len(candidate.on) > len(best.sheets):
            return None
        filled = _fill(job, candidate, care)
        if filled is not None:
            return _Found(candidate.on, filled)
    return None


def _candidates(job: _Job[P], strips: Strips, upright: bool) -> Iterator[_Candidate]:
    """For each number of sheets with blocks on them, as many empty ones as the runs need, and a few more."""
    searched = len(job.blocks) <= MOST_SEARCHED
    ways = _shared(job, strips, upright) if searched else _one_by_one(job)
    empty = _Sheet((), (Free(0, 0, *job.sheet),))
    for sheets in ways:
        if not job.runs:
            yield _Candidate(sheets, strips)
            continue
        room = sum(strips.room(sheet.free) for sheet in sheets)
        least = max(0, -(-(job.need - room) // strips.room(empty.free)))
        for more in range(least, least + _MORE_SHEETS + (len(sheets) + least) // 8):
            yield _Candidate([empty] * more + sheets, strips)


def _shared(job: _Job[P], strips: Strips, upright: bool) -> list[list[_Sheet]]:
    """For each number of sheets the blocks may be dealt out to, the way that leaves most room for the runs."""
    arranged: dict[int, Arrangement] = {}
    alike: dict[tuple[Size, ...], Arrangement | None] = {}
    liked = strips.liked if job.runs else (lambda free: 0)
    for group in range(1, 1 << len(job.blocks)):
        fewer = group & (group - 1)
        if fewer and (fewer not in arranged or group ^ fewer not in arranged):
            continue
        sizes = tuple(job.blocks[i] for i in members_of(group))
        if sizes not in alike:
            enough_paper = sum(size.area for size in sizes) <= job.sheet.area
            alike[sizes] = arrange(sizes, job.sheet, job.least, liked, upright) if enough_paper else None
        found = alike[sizes]
        if found is not None:
            arranged[group] = found
    room = {group: strips.room(found.free) if job.runs else 0 for group, found in arranged.items()}
    return [
        [
            _Sheet(tuple(zip(members_of(group), arranged[group].placed, strict=True)), arranged[group].free)
            for group in sorted(way.groups, key=lambda group: group & -group)
        ]
        for way in share(len(job.blocks), room).values()
    ]


def _one_by_one(job: _Job[P]) -> Iterator[list[_Sheet]]:
    """Too many blocks to try every way: each in turn where it fits best, in several orders."""
    for placed, free in greedily(job.blocks, job.sheet, job.least):
        on_sheets: list[list[tuple[int, Placed]]] = [[] for _ in free]
        for number, (sheet, spot) in enumerate(placed):
            on_sheets[sheet].append((number, spot))
        yield [_Sheet(tuple(blocks), tuple(rest)) for blocks, rest in zip(on_sheets, free, strict=True)]


def _fill(job: _Job[P], candidate: _Candidate, care: Care) -> list[list[tuple[P, int, Slot]]] | None:
    """The runs cut to fit what is free, each into the fewest and longest slots; None where they do not fit."""
    slots = [
        (number, slot)
        for number, sheet in enumerate(candidate.on)
        for free in sheet.free
        for slot in candidate.strips.slots(free)
    ]
    filled: list[list[tuple[P, int, Slot]]] = []
    for run in job.runs:
        found = _cut_to_fit(job, run, slots, care)
        if found is None:
            return None
        pieces, taken = found
        filled.append([(piece, *slots[i]) for piece, i in zip(pieces, taken, strict=True)])
        slots = [slot for i, slot in enumerate(slots) if i not in taken]
    return filled


def _cut_to_fit(
    job: _Job[P], run: Run[P], slots: Sequence[tuple[int, Slot]], care: Care
) -> tuple[Sequence[P], list[int]] | None:
    """The pieces of a run and the slots they take, by number, in order."""
    longest_first = sorted(range(len(slots)), key=lambda i: (-slots[i][1].length, i))
    fewest = run.fewest(in_mm(slots[longest_first[0]][1].length) - GAP, care) if slots else None
    if fewest is None:
        return None
    need, room = job.need_of(run), 0
    for count, i in enumerate(longest_first, 1):
        room += slots[i][1].length - job.overhead
        if room >= need and count >= fewest:
            taken = sorted(longest_first[:count])
            pieces = run.cut([in_mm(slots[i][1].length) - GAP for i in taken], care)
            if pieces is not None:
                return pieces, taken
    return None


def _packing(job: _Job[P], found: _Found[P], bound: Bound) -> Packing[P]:
    """What was found, with the sheets that anything lies on numbered: first those that hold pieces of runs."""
    with_runs = sorted({number for pieces in found.filled for _, number, _ in pieces})
    without = [number for number, sheet in enumerate(found.sheets) if sheet.blocks and number not in with_runs]
    used = [*with_runs, *without]
    number_of = {old: new for new, old in enumerate(used)}
    blocks = {
        i: Spot(number_of[number], in_mm(at.left), in_mm(at.top), at.turned)
        for number in used
        for i, at in found.sheets[number].blocks
    }
    runs = tuple(
        tuple(
            (piece, Spot(number_of[number], in_mm(slot.left), in_mm(slot.top), slot.upright))
            for piece, number, slot in pieces
        )
        for pieces in found.filled
    )
    # The bound by rows knows no sheet with pieces lying both ways round: where one saves a sheet, it is not held to.
    bound = replace(bound, by_rows=min(bound.by_rows, len(used)))
    return Packing(tuple(blocks[i] for i in range(len(job.blocks))), runs, len(used), bound)
