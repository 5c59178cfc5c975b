"""A kit: every template and the work order laid out on sheets of one paper."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from ..drawing import Drawing, Item, Line, LineType, Ring
from ..drawing.blocks import Block
from ..errors import Fault, Refusal
from ..papers import Paper
from .area import Area
from .flowing import flow
from .free_places import free_places
from .furniture import Bar, bars, live_area, sheet_items
from .packing import pack
from .pieces import Piece
from .slicing import items_of
from .splitting import split

WORDS = "work order"
CORRECTED = "Corrected for a printer that prints {across} % across and {along} % along."


@dataclass(frozen=True, slots=True)
class Correction:
    """What a printer makes of a length: printed over asked, for each axis of the sheet."""

    across: Fraction = Fraction(1)
    along: Fraction = Fraction(1)

    def on_page(self, x: Fraction, y: Fraction) -> tuple[Fraction, Fraction]:
        """The point of the page that comes out of the printer at this one."""
        return x / self.across, y / self.along

    @property
    def remark(self) -> str:
        """What every sheet says of it; nothing where there is nothing to correct."""
        if self == Correction():
            return ""
        across, along = (f"{float(ratio) * 100:.2f}" for ratio in (self.across, self.along))
        return CORRECTED.format(across=across, along=along)


@dataclass(frozen=True, slots=True)
class Placed:
    """A piece on a sheet.

    ``x``, ``y`` is where the point of the datum edge at which the piece begins
    lies, in mm from the sheet's lower left corner, as it is to come out of the printer.
    """

    piece: Piece
    x: Fraction
    y: Fraction
    turn: int
    """Anticlockwise, in degrees: 0 or 90."""
    items: tuple[Item, ...]
    """In the drawing's coordinates."""

    @property
    def line_types(self) -> set[LineType]:
        """The types of line that stand on it."""
        return {item.kind for item in self.items if isinstance(item, Line | Ring)}

    @property
    def direction(self) -> tuple[int, int]:
        """The unit vector along the datum edge, on the sheet."""
        return (0, 1) if self.turn else (1, 0)

    @property
    def inward(self) -> tuple[int, int]:
        """The unit vector from the datum edge to the side that the template lies on."""
        side = self.piece.drawing.inward
        return (-side, 0) if self.turn else (0, side)

    def at(self, along: Fraction) -> tuple[Fraction, Fraction]:
        """Where on the sheet the point of the datum edge at ``along`` lies."""
        dx, dy = self.direction
        offset = along - self.piece.start
        return self.x + dx * offset, self.y + dy * offset


@dataclass(frozen=True, slots=True)
class Sheet:
    """One page, finished: what a writer needs and no more. Millimetres, as printed."""

    number: int
    holds: tuple[str, ...]
    placed: tuple[Placed, ...]
    items: tuple[Item, ...]
    bars: tuple[Bar, ...]


@dataclass(frozen=True, slots=True)
class Kit:
    """All sheets of a job."""

    title: str
    subject: str
    """One line on what it is, for the file's own description."""
    paper: Paper
    correction: Correction
    drawings: tuple[Drawing, ...]
    words: tuple[Block, ...]
    sheets: tuple[Sheet, ...]


def lay_out(
    title: str,
    subject: str,
    words: Sequence[Block],
    drawings: Sequence[Drawing],
    paper: Paper,
    margins: tuple[Fraction, Fraction, Fraction, Fraction],
    correction: Correction | None = None,
) -> Kit:
    """Everything on sheets: words first, then the pieces of all drawings together.

    ``margins`` are left, right, top and bottom, in mm. Raises Refusal where the
    paper is too small to hold the bars or a template.
    """
    correction = correction or Correction()
    whole = _inside(paper, margins, correction)
    live = live_area(whole)
    _refuse_small(paper, live)
    pages = flow(words, live) if words else []
    placed = _place_all(drawings, live, paper)
    total = len(pages) + len(placed)
    sheets: list[Sheet] = []
    for number in range(1, total + 1):
        on_it = placed[number - len(pages) - 1] if number > len(pages) else []
        items = pages[number - 1] if number <= len(pages) else []
        used = {kind for each in on_it for kind in each.line_types}
        sheets.append(
            Sheet(
                number,
                (WORDS,) if number <= len(pages) else tuple(dict.fromkeys(each.piece.drawing.name for each in on_it)),
                tuple(on_it),
                (*sheet_items(whole, title, number, total, paper.shown, used, correction.remark), *items),
                bars(whole),
            )
        )
    return Kit(title, subject, paper, correction, tuple(drawings), tuple(words), tuple(sheets))


def _inside(paper: Paper, margins: tuple[Fraction, Fraction, Fraction, Fraction], correction: Correction) -> Area:
    """The area inside the margins, as it will come out of the printer."""
    left, right, top, bottom = margins
    return Area(
        left * correction.across,
        bottom * correction.along,
        (paper.width - right) * correction.across,
        (paper.height - top) * correction.along,
    )


def _refuse_small(paper: Paper, live: Area) -> None:
    if live.width < 108 or live.height < 108:
        raise Refusal(
            Fault(
                "paper",
                f"{float(paper.width):g} x {float(paper.height):g} mm",
                "too small: inside the margins and beside the bars it must leave at least 108 x 108 mm; "
                "write a larger paper.name or smaller paper.margins",
            )
        )


def _place_all(drawings: Sequence[Drawing], live: Area, paper: Paper) -> list[list[Placed]]:
    """Every piece of every drawing, packed; a list for each sheet."""
    turned: list[tuple[Piece, int, tuple[Item, ...]]] = []
    groups: list[int] = []
    joins = 0
    for group, drawing in enumerate(drawings):
        pieces, turn = _cut_up(drawing, live, joins, paper)
        joins += len(pieces) - 1
        groups += [group] * len(pieces)
        turned += [(piece, turn, tuple(items)) for piece, items in zip(pieces, items_of(pieces), strict=True)]
    sizes = [_size(piece, turn) for piece, turn, _ in turned]
    sheets: list[list[Placed]] = []
    for (piece, turn, items), spot in zip(turned, pack(sizes, groups, live.width, live.height), strict=True):
        while len(sheets) <= spot.sheet:
            sheets.append([])
        x, y = datum_of(piece, turn, live.left + spot.left, live.top - spot.top)
        sheets[spot.sheet].append(Placed(piece, x, y, turn, items))
    return sheets


def _cut_up(drawing: Drawing, live: Area, first_join: int, paper: Paper) -> tuple[tuple[Piece, ...], int]:
    """The pieces of ``drawing`` and how they are turned: the fewest pieces, upright where there is a choice."""
    upright = 90 * (drawing.quarter_turns % 2)
    ways: list[tuple[int, int, tuple[Piece, ...]]] = []
    places = free_places(drawing) if drawing.length > min(live.width, live.height) else None
    for turn in (0, 90):
        along, across = (live.height, live.width) if turn else (live.width, live.height)
        if drawing.depth <= across:
            pieces = split(drawing, along, first_join, places)
            ways.append((len(pieces), turn != upright, pieces))
    if not ways:
        need = float(drawing.depth)
        raise Refusal(
            Fault(
                "paper",
                f"{float(paper.width):g} x {float(paper.height):g} mm",
                f"too small for the {drawing.name}, which is {need:.0f} mm across; inside the margins and beside the "
                f"bars there are {float(live.width):.0f} x {float(live.height):.0f} mm: write a larger paper.name",
            )
        )
    _, off, pieces = min(ways, key=lambda way: way[:2])
    return pieces, upright if not off else 90 - upright


def _size(piece: Piece, turn: int) -> tuple[Fraction, Fraction]:
    depth = Fraction(piece.drawing.depth)
    return (depth, piece.length) if turn else (piece.length, depth)


def datum_of(piece: Piece, turn: int, left: Fraction, top: Fraction) -> tuple[Fraction, Fraction]:
    """Where the piece's own point (start, 0) comes to lie, its box having this left and top on the sheet."""
    high = Fraction(piece.drawing.high)
    if turn:
        return left + high, top - piece.length
    return left, top - high


