"""Pack: blocks and runs onto sheets, as few as can be found."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import Generic, NamedTuple, TypeVar

from .arranging import Arrangement, Placed, arrange
from .bound import Bound, bound_for
from .greedy import greedily
from .rectangles import GAP, MICROMETRES, Free, Size, Slot, Spot, Strips, in_mm
from .sharing import members_of, share

MOST_SEARCHED = 7
"""Up to so many blocks every way of sharing sheets is tried; more are placed one by one. Our choice."""
_MORE_SHEETS = 3
"""So many sheets more than the fewest, and one for each eight of them, joins may cost that keep clear of everything."""

P = TypeVar("P")


@dataclass(frozen=True, slots=True)
class Run(Generic[P]):
    """A long template that is cut to fit; all runs of one packing are equally deep. Millimetres."""

    length: Fraction
    cut: Callable[[Sequence[Fraction], bool], Sequence[P] | None]
    """Its pieces for rooms of these lengths, in order; None where no joins fall so.

    Asked to keep joins clear of everything, or to join at any cost.
    """
    fewest: Callable[[Fraction], int | None]
    """Into how few pieces no longer than this it can be cut, joins clear of everything; None where it cannot."""


@dataclass(frozen=True, slots=True)
class Packing(Generic[P]):
    """Where everything lies."""

    blocks: tuple[Spot, ...]
    runs: tuple[tuple[tuple[P, Spot], ...], ...]
    """For each run its pieces; a piece's spot is turned where it runs down the sheet."""
    sheets: int
    bound: Bound


_Filled = list[list[tuple[P, int, Slot]]]
"""For each run its pieces, each with its sheet and slot."""


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

    @property
    def overhead(self) -> int:
        """What a join and a gap take of a piece of a run."""
        return -int(-(self.overlap + GAP) * MICROMETRES // 1)

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

    def by_length(self) -> Strips:
        """Slots are worth their length but for what a join takes: what a run could fill at best."""
        return Strips(self.depth, self.shortest, lambda length: length - self.overhead)

    def by_joins(self) -> Strips:
        """Slots are worth what pieces of their length come to on the longest run, where its joins may fall."""
        longest = max(self.runs, key=lambda run: run.length, default=None)
        if longest is None:
            return self.by_length()
        need, fewest = self.need_of(longest), longest.fewest

        @cache
        def worth(length: int) -> int:
            pieces = fewest(in_mm(length) - GAP)
            return length - self.overhead if pieces is None else -(-need // pieces)

        return Strips(self.depth, self.shortest, worth)


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
    job = _Job(blocks, runs, sheet, depth=piece.height, shortest=piece.width, overlap=overlap)
    by_joins = job.by_joins()
    bound = bound_for(blocks, job.need, by_joins, job.overhead, job.least, sheet)
    for clear in (True, False):
        best = _first_that_fits(job, _candidates(job, job.by_length()), clear)
        if runs and (best is None or best[0].sheets > bound.sheets):
            others = _candidates(job, by_joins)
            fewer = [each for each in others if best is None or each.sheets < best[0].sheets]
            best = _first_that_fits(job, fewer, clear) or best
        if best is not None:
            candidate, filled = best
            return _packing(job, candidate.on, filled, bound)
    raise AssertionError("a run that can be cut for one sheet can be cut for many")


def _first_that_fits(
    job: _Job[P], candidates: Iterable[_Candidate], clear: bool
) -> tuple[_Candidate, _Filled[P]] | None:
    """The candidate of the fewest sheets that everything fits, and what lies where."""
    for candidate in sorted(candidates, key=lambda each: each.sheets):
        filled = _fill(job, candidate, clear)
        if filled is not None:
            return candidate, filled
    return None


class _Candidate(NamedTuple):
    """Sheets that may hold everything: empty ones, then those that blocks lie on."""

    on: list[_Sheet]
    strips: Strips

    @property
    def sheets(self) -> int:
        return len(self.on)


def _candidates(job: _Job[P], strips: Strips) -> Iterator[_Candidate]:
    """For each number of sheets with blocks on them, as many empty ones as the runs need, and a few more."""
    ways = _shared(job, strips) if len(job.blocks) <= MOST_SEARCHED else _one_by_one(job)
    empty = _Sheet((), (Free(0, 0, *job.sheet),))
    for sheets in ways:
        if not job.runs:
            yield _Candidate(sheets, strips)
            continue
        room = sum(strips.room(sheet.free) for sheet in sheets)
        least = max(0, -(-(job.need - room) // strips.room(empty.free)))
        for more in range(least, least + _MORE_SHEETS + (len(sheets) + least) // 8):
            yield _Candidate([empty] * more + sheets, strips)


def _shared(job: _Job[P], strips: Strips) -> list[list[_Sheet]]:
    """For each number of sheets the blocks may be dealt out to, the way that leaves most room for the runs."""
    arranged: dict[int, Arrangement] = {}
    alike: dict[tuple[Size, ...], Arrangement | None] = {}
    worth = strips.room if job.runs else (lambda free: 0)
    for group in range(1, 1 << len(job.blocks)):
        fewer = group & (group - 1)
        if fewer and (fewer not in arranged or group ^ fewer not in arranged):
            continue
        sizes = tuple(job.blocks[i] for i in members_of(group))
        if sizes not in alike:
            enough_paper = sum(size.area for size in sizes) <= job.sheet.area
            alike[sizes] = arrange(sizes, job.sheet, job.least, worth) if enough_paper else None
        found = alike[sizes]
        if found is not None:
            arranged[group] = found
    return [
        [
            _Sheet(tuple(zip(members_of(group), arranged[group].placed, strict=True)), arranged[group].free)
            for group in sorted(way.groups, key=lambda group: group & -group)
        ]
        for way in share(len(job.blocks), {group: found.worth for group, found in arranged.items()}).values()
    ]


def _one_by_one(job: _Job[P]) -> Iterator[list[_Sheet]]:
    """Too many blocks to try every way: each in turn where it fits best, in several orders."""
    for placed, free in greedily(job.blocks, job.sheet, job.least):
        on_sheets: list[list[tuple[int, Placed]]] = [[] for _ in free]
        for number, (sheet, spot) in enumerate(placed):
            on_sheets[sheet].append((number, spot))
        yield [_Sheet(tuple(blocks), tuple(rest)) for blocks, rest in zip(on_sheets, free, strict=True)]


def _fill(job: _Job[P], candidate: _Candidate, clear: bool) -> _Filled[P] | None:
    """The runs cut to fit what is free, each into the fewest and longest slots; None where they do not fit."""
    slots = [
        (number, slot)
        for number, sheet in enumerate(candidate.on)
        for free in sheet.free
        for slot in candidate.strips.slots(free)
    ]
    filled: _Filled[P] = []
    for run in job.runs:
        found = _cut_to_fit(job, run, slots, clear)
        if found is None:
            return None
        pieces, taken = found
        filled.append([(piece, *slots[i]) for piece, i in zip(pieces, taken, strict=True)])
        slots = [slot for i, slot in enumerate(slots) if i not in taken]
    return filled


def _cut_to_fit(
    job: _Job[P], run: Run[P], slots: Sequence[tuple[int, Slot]], clear: bool
) -> tuple[Sequence[P], list[int]] | None:
    """The pieces of a run and the slots they take, by number, in order."""
    longest_first = sorted(range(len(slots)), key=lambda i: (-slots[i][1].length, i))
    fewest = run.fewest(in_mm(slots[longest_first[0]][1].length) - GAP) if clear and slots else 1
    if fewest is None:
        return None
    need, room = job.need_of(run), 0
    for count, i in enumerate(longest_first, 1):
        room += slots[i][1].length - job.overhead
        if room >= need and count >= fewest:
            taken = sorted(longest_first[:count])
            pieces = run.cut([in_mm(slots[i][1].length) - GAP for i in taken], clear)
            if pieces is not None:
                return pieces, taken
    return None


def _packing(job: _Job[P], sheets: Sequence[_Sheet], filled: _Filled[P], bound: Bound) -> Packing[P]:
    """The sheets numbered so that the first piece of the first run lies on the first of them."""
    used = dict.fromkeys(
        [number for pieces in filled for _, number, _ in pieces]
        + [number for number, sheet in enumerate(sheets) if sheet.blocks]
    )
    number_of = {old: new for new, old in enumerate(used)}
    blocks = {
        i: Spot(number_of[number], in_mm(at.left), in_mm(at.top), at.turned)
        for number, sheet in enumerate(sheets)
        for i, at in sheet.blocks
    }
    runs = tuple(
        tuple(
            (piece, Spot(number_of[number], in_mm(slot.left), in_mm(slot.top), slot.upright))
            for piece, number, slot in pieces
        )
        for pieces in filled
    )
    return Packing(tuple(blocks[i] for i in range(len(job.blocks))), runs, len(used), bound)
