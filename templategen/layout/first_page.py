"""The first page: two bars to measure, what the readings mean, and a map of all that follows."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

from ..drawing import Item, Line, LineType, Solid, Text, capitalised, rectangle, width_of
from ..drawing.blocks import Blanks, Block, Heading, NumberRow, Paragraph, Remark
from ..lengths import Tape
from ..papers import Paper
from .area import Area
from .flowing import Sizes, Strip, height_of, paged, strips_of
from .furniture import FOUR_INCHES, bars, live_area
from .joined_map import joined_maps
from .readings import called, findings
from .sheet_map import Room, sheet_map

if TYPE_CHECKING:
    from .kit import Correction, Placed

CHECK = "print check"
"""What a sheet of the first page holds."""
INSET = Fraction(5, 2)
"""From the frame to what stands in it, in mm: our choice, so that the frame is seen by itself."""
_CORNER = 8
"""Length of a corner mark's arms, in mm."""
_ARROW = 3.6
_BLANK = 28
"""Length of a line to write a reading on, in mm."""
_SPARE = 1
"""Left of a page that the map fills, in mm."""
_COLUMN, _PAGE = 180, 225
"""Width and height of the live area on which the type has its usual size, in mm; on larger paper it grows."""
_LARGEST = 1.6
"""How many times it may: the page is still read at a table."""


@dataclass(frozen=True, slots=True)
class PrintCheck:
    """What the first page is to know besides the sheets."""

    tape: Tape
    """In whose units readings and lengths stand first."""
    closing: tuple[str, ...] = ()
    """Lines on how nearly everything must close, as they are to be printed."""


@dataclass(frozen=True, slots=True)
class FirstPage:
    """The first page, laid out: the items of each sheet of it, and the words."""

    inside: Area
    """The area inside its frame, in which it carries what every sheet carries."""
    sheets: tuple[tuple[Item, ...], ...] = ()
    words: tuple[Block, ...] = ()


def first_page(
    check: PrintCheck,
    placed: Sequence[Sequence[Placed]],
    between: int,
    whole: Area,
    paper: Paper,
    correction: Correction,
) -> FirstPage:
    """The first page of a kit whose pieces lie on sheets as ``placed``, after ``between`` pages of words.

    ``whole`` is the area inside the margins, as it comes out of the printer. It
    may take several sheets, where the paper is small.
    """
    inside = whole.inset(INSET)
    live = live_area(inside)
    sizes, width = _type_for(live)
    column = Area(live.left, live.bottom, live.left + Fraction(width), live.top)
    pointers = list(_pointers(inside, live, sizes.body))
    words = _words(check, paper, correction, beside=bool(pointers))
    printed = float(paper.width * correction.across), float(paper.height * correction.along)
    said = strips_of(words, width, sizes)
    closing: list[Block] = [Paragraph(line) for line in check.closing]
    count = 0
    pages: list[list[Item]] = []
    maps: list[Block] = []
    # The maps name pages, whose numbers follow from how many sheets the maps take.
    while len(pages) > count or not count:
        count = max(len(pages), 1)
        maps = _maps(placed, count + between + 1, printed, live, said, closing, sizes, width, check.tape)
        pages, _ = paged([*said, *strips_of(maps, width, sizes)], column)
    pages += [[]] * (count - len(pages))
    frame = _frame(whole)
    sheets = tuple((*frame, *(() if i else pointers), *page) for i, page in enumerate(pages))
    return FirstPage(inside, sheets, (*words, *maps))


def _maps(
    placed: Sequence[Sequence[Placed]],
    first: int,
    printed: tuple[float, float],
    live: Area,
    said: Sequence[Strip],
    closing: Sequence[Block],
    sizes: Sizes,
    width: float,
    tape: Tape,
) -> list[Block]:
    """The map of the sheets, as large as the page leaves room for, that of the joins, and how nearly all must close."""
    if not placed:
        return [*closing]
    heading = Heading("3  Where each piece is")
    joined = [*joined_maps(placed, first, width, sizes.small, tape), *closing]
    others = height_of(strips_of([heading, *joined], width, sizes))
    page = float(live.height)
    room = Room(width, page - height_of(said) - others - _SPARE, page - others - _SPARE, sizes.body)
    return [heading, *sheet_map(placed, first, printed, room, sizes.small), *joined]


def _type_for(live: Area) -> tuple[Sizes, float]:
    """Sizes of type and the width of the column, grown together on large paper."""
    grown = min(max(min(float(live.width) / _COLUMN, float(live.height) / _PAGE), 1.0), _LARGEST)
    return Sizes(*(size * grown for size in (10, 8.8, 20, 13))), min(float(live.width), _COLUMN * grown)


def _words(check: PrintCheck, paper: Paper, correction: Correction, beside: bool) -> list[Block]:
    """All that is said before the maps; ``beside`` where readings can be written beside the bars."""
    name = called(paper)
    where = "beside them" if beside else "down"
    bar = "100 mm, or 4 in"
    blanks = Blanks((NumberRow("Bar across the sheet", bar), NumberRow("Bar along the sheet", bar)))
    return [
        Heading("Print this page first, by itself", first=True),
        Remark("Size", "“Actual size”, 100 %, or scaling “none”. Not “fit”, “shrink”, “fill” or “borderless”."),
        Remark("Paper", f"{capitalised(name)}, the same in the print dialog as in the tray; on one side only."),
        Remark("From", "A PDF viewer that has opened the downloaded file. Browser tabs and telephones often rescale."),
        Heading("1  Measure these two before anything else"),
        Paragraph(
            "Lay a steel rule along both bars, at the foot of this sheet and up its right-hand edge, from tick to "
            f"tick; write {where} what they measure. A thin frame must run round all four sides, heavy in each corner: "
            "if some of it is cut off, write wider paper.margins in the spec and make the kit again."
        ),
        *(() if beside else (blanks,)),
        Heading("2  What the readings mean"),
        findings(paper, check.tape, (correction.across, correction.along)),
    ]


def _frame(whole: Area) -> list[Item]:
    """A thin line exactly on the margins, with a heavy mark in each corner."""
    items: list[Item] = [*rectangle(LineType.THIN, whole.left, whole.bottom, whole.right, whole.top)]
    for x, dx in ((whole.left, _CORNER), (whole.right, -_CORNER)):
        for y, dy in ((whole.bottom, _CORNER), (whole.top, -_CORNER)):
            items += [Line(LineType.TRIM, x, y, x + dx, y), Line(LineType.TRIM, x, y, x, y + dy)]
    return items


def _pointers(inside: Area, live: Area, size: float) -> Iterator[Item]:
    """An arrow head at either bar with a line to write its reading on; nothing where one of them has no room."""
    across, along = bars(inside)
    said = "This bar measures", "And this one"
    needed = width_of(said[0], size, True) + _BLANK + 10
    left, low = across.start[0] + FOUR_INCHES + 4, along.start[1] + FOUR_INCHES + 4
    if inside.right - left < needed or live.top - low < needed:
        return
    x, y = float(left), float(across.start[1]) + 0.9
    yield Solid(((x, y), (x + _ARROW, y + _ARROW / 2), (x + _ARROW, y - _ARROW / 2)))
    x += _ARROW + 1.5
    yield Text(x, y - size * 0.12, said[0], size, bold=True)
    x += width_of(said[0], size, True) + 2
    yield Line(LineType.THIN, x, y - size * 0.12, x + _BLANK, y - size * 0.12)
    x, y = float(along.start[0]) - 0.9, float(low)
    yield Solid(((x, y), (x + _ARROW / 2, y + _ARROW), (x - _ARROW / 2, y + _ARROW)))
    y += _ARROW + 1.5
    yield Text(x + size * 0.12, y, said[1], size, bold=True, turn=90)
    y += width_of(said[1], size, True) + 2
    yield Line(LineType.THIN, x + size * 0.12, y, x + size * 0.12, y + _BLANK)
