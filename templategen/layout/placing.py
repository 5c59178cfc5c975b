"""Placing: all drawings cut up and packed, so that they take the fewest sheets."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cache, partial

from ..drawing import USUAL, Drawing, Look
from ..errors import Fault, Refusal
from ..lengths import Tape
from ..papers import Paper
from .area import Area
from .free_places import FreePlaces, free_places
from .packing import Bound, Run, Size, Spot, pack
from .pieces import Piece
from .placed import Placed, datum_of
from .slicing import items_of
from .splitting import OVERLAP, fewest_pieces, renumbered, shortest, split, split_into


@dataclass(frozen=True, slots=True)
class _Block:
    """A piece that is printed as it is."""

    piece: Piece

    @property
    def upright(self) -> int:
        """How it is turned to be read upright."""
        return 90 * (self.piece.drawing.quarter_turns % 2)

    @property
    def size(self) -> Size:
        """Its size, read upright."""
        depth = Fraction(self.piece.drawing.depth)
        wide, high = (depth, self.piece.length) if self.upright else (self.piece.length, depth)
        return Size.of_piece(wide, high)


@dataclass(frozen=True, slots=True)
class Packed:
    """Where every piece is to lie, before anything of it is drawn."""

    pieces: Mapping[str, Sequence[tuple[Piece, Spot, int]]]
    """Of each drawing, by its name: its pieces in order, each with its spot and how it is turned there, in degrees."""
    sheets: int
    bound: Bound
    """How few sheets there could be."""

    @property
    def count(self) -> int:
        """Of pieces."""
        return sum(map(len, self.pieces.values()))


def pack_all(
    drawings: Sequence[Drawing], live: Area, paper: Paper, tape: Tape, look: Look = USUAL
) -> Packed:
    """Every piece of every drawing on as few sheets as can be.

    A drawing that fits a sheet stays whole. Of those that do not, the ones as deep
    as the longest are cut to fit what is left beside the others; the rest are cut
    into the fewest pieces. ``tape`` is what distances are shown on, and where joins are to fall.
    """
    step = tape.step.mm
    _refuse_too_deep(drawings, live, paper)
    cut_up = [drawing for drawing in drawings if not _fits(drawing, live)]
    depth = max(cut_up, key=lambda drawing: drawing.length).depth if cut_up else 0
    runs = [drawing for drawing in cut_up if drawing.depth == depth]
    blocks = [
        _Block(piece)
        for drawing in drawings
        if drawing not in runs
        for piece in _pieces_of(drawing, live, step, look)
    ]
    packing = pack(
        blocks=[block.size for block in blocks],
        runs=[_run(drawing, free_places(drawing, step, look)) for drawing in runs],
        depth=Fraction(depth),
        overlap=OVERLAP,
        shortest=min([shortest(look), *(length for drawing in runs for length in _ways(drawing, live))]),
        sheet=Size.of_sheet(live.width, live.height),
    )
    found: dict[str, list[tuple[Piece, Spot, int]]] = {drawing.name: [] for drawing in drawings}
    for block, spot in zip(blocks, packing.blocks, strict=True):
        turn = 90 - block.upright if spot.turned else block.upright
        found[block.piece.drawing.name].append((block.piece, spot, turn))
    for pieces in packing.runs:
        for piece, spot in pieces:
            found[piece.drawing.name].append((piece, spot, 90 if spot.turned else 0))
    return Packed(found, packing.sheets, packing.bound)


def put_down(packed: Packed, live: Area, tape: Tape, look: Look = USUAL) -> list[list[Placed]]:
    """Everything drawn and put down, a list for each sheet; joins are numbered through the kit."""
    placed: list[list[Placed]] = [[] for _ in range(packed.sheets)]
    joins = 0
    for each in packed.pieces.values():
        pieces = renumbered([piece for piece, _, _ in each], joins)
        joins += len(pieces) - 1
        for piece, items, (_, spot, turn) in zip(pieces, items_of(pieces, tape, look), each, strict=True):
            x, y = datum_of(piece, turn, live.left + spot.left, live.top - spot.top)
            placed[spot.sheet].append(Placed(piece, x, y, turn, tuple(items)))
    return placed


def _run(drawing: Drawing, places: FreePlaces) -> Run[Piece]:
    """A drawing to be cut to fit. Packing asks again and again for the same rooms: answers are remembered."""
    cut = cache(partial(split_into, drawing, places))
    return Run(
        drawing.length,
        lambda rooms, care: cut(tuple(rooms), care),
        cache(partial(fewest_pieces, drawing, places)),
    )


def _ways(drawing: Drawing, live: Area) -> list[Fraction]:
    """How long a piece of ``drawing`` may be, lying across the sheet and along it, where it is not too deep."""
    lying = (live.width, live.height), (live.height, live.width)
    return [along for along, across in lying if _goes(Fraction(drawing.depth), across)]


def _fits(drawing: Drawing, live: Area) -> bool:
    return any(_goes(drawing.length, along) for along in _ways(drawing, live))


def _goes(length: Fraction, room: Fraction) -> bool:
    """Whether packing will say that it goes into the room, to the micrometre."""
    return Size.of_piece(length, length).fits(Size.of_sheet(room, room))


def _pieces_of(drawing: Drawing, live: Area, step: Fraction, look: Look) -> Sequence[Piece]:
    """The drawing whole where it fits, else the fewest pieces."""
    if _fits(drawing, live):
        return (Piece(drawing, 1, 1, None, None),)
    return split(drawing, max(_ways(drawing, live)), 0, free_places(drawing, step, look))


def _refuse_too_deep(drawings: Sequence[Drawing], live: Area, paper: Paper) -> None:
    faults = [
        Fault(
            "paper",
            paper.size,
            f"too small for the {drawing.name}, which is {float(drawing.depth):.0f} mm across; inside the margins and "
            f"beside the bars there are {float(live.width):.0f} x {float(live.height):.0f} mm: write a larger "
            "paper.name",
        )
        for drawing in drawings
        if not _ways(drawing, live)
    ]
    if faults:
        raise Refusal(*faults)
