"""The first page: two bars to measure, what the readings mean, and a map of all that follows."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

from ..document.blocks import Blanks, Block, Figure, Heading, NumberRow, Paragraph, Remark
from ..drawing import Item, Line, LineType, Look, Solid, Text, capitalised, rectangle, width_of
from ..lengths import Tape
from ..papers import Paper
from .area import Area
from .flowing import paged
from .furniture import FOUR_INCHES, Says, bars, beyond_the_bars, live_area
from .joined_map import joined_maps
from .readings import findings
from .sheet_map import Room, sheet_map
from .strips import Sizes, height_of, strips_of

if TYPE_CHECKING:
    from .kit import Correction
    from .placed import Placed

CHECK = "print check"
"""What a sheet of the first page holds."""
INSET = Fraction(5, 2)
"""From the frame to what stands in it, in mm: our choice, so that the frame is seen by itself."""
_CORNER = 8
"""Length of a corner mark's arms, in mm."""
_ARROW = 3.6
_BLANK = 28
"""Length of a line to write a reading on, in mm."""
_BODY = (10.0, 9.5)
"""Sizes of what is said, in points: the second where that helps."""
_SMALL = 8.8
"""The size of what stands on the maps, in points."""
_COLUMN, _PAGE = 180, 225
"""Width and height of the live area on which type has these sizes, in mm; on larger paper it grows."""
_LARGEST = 2.0
"""How many times it may: our choice, because the page is still read at a table."""
_SPARE = 1
"""Left of a page that the map fills, in mm."""


@dataclass(frozen=True, slots=True)
class PrintCheck:
    """What the first page is to know besides the sheets."""

    tape: Tape
    """In whose units readings and lengths stand first."""
    closing: tuple[str, ...] = ()
    """How nearly everything must close: sentences, as they are to be printed."""


@dataclass(frozen=True, slots=True)
class FirstPage:
    """The first page, laid out: the items of each sheet of it, and the words."""

    inside: Area
    """The area inside its frame, in which it carries what every sheet carries."""
    sheets: tuple[tuple[Item, ...], ...] = ()
    words: tuple[Block, ...] = ()


@dataclass(frozen=True, slots=True)
class _Job:
    """What is to be told of."""

    check: PrintCheck
    placed: Sequence[Sequence[Placed]]
    between: int
    """Pages between the first page and the first sheet with pieces."""
    paper: Paper
    correction: Correction

    @property
    def printed(self) -> tuple[float, float]:
        """Width and height of a sheet as it comes out of the printer, which is how pieces lie on it, in mm."""
        return float(self.paper.width * self.correction.across), float(self.paper.height * self.correction.along)


@dataclass(frozen=True, slots=True)
class _Setting:
    """Sizes of type, and the column that is set in them."""

    sizes: Sizes
    column: Area

    @classmethod
    def of(cls, live: Area, body: float, look: Look) -> _Setting:
        """Words of ``body`` points on a usual sheet; on large paper type grows, and the column with it."""
        grown = min(max(min(float(live.width) / _COLUMN, float(live.height) / _PAGE), 1.0), _LARGEST)
        right = min(live.right, live.left + Fraction(_COLUMN * grown))
        sizes = Sizes(*(look.size(size * grown) for size in (body, _SMALL, 2 * body, 1.3 * body)))
        return cls(sizes, Area(live.left, live.bottom, right, live.top))

    @property
    def width(self) -> float:
        return float(self.column.width)

    @property
    def height(self) -> float:
        return float(self.column.height)


def first_page(
    check: PrintCheck,
    placed: Sequence[Sequence[Placed]],
    between: int,
    whole: Area,
    paper: Paper,
    correction: Correction,
    says: Says,
) -> FirstPage:
    """The first page of a kit whose pieces lie on sheets as ``placed``, after ``between`` pages of words.

    ``whole`` is the area inside the margins, as it comes out of the printer;
    ``says`` is what every sheet carries. The
    type is a little smaller where that saves a sheet or a list of names; where
    all does not fit one, the maps follow on sheets of their own.
    """
    inside = whole.inset(INSET)
    live = live_area(inside, says)
    job = _Job(check, placed, between, paper, correction)
    settings = list(dict.fromkeys(_Setting.of(live, size, says.look) for size in _BODY))
    pointers = list(_pointers(inside, live, settings[0].sizes.body, says.look))
    words = _words(job, beside=bool(pointers))
    pages, maps = _on_one(job, words, settings) or _on_several(job, words, settings[0])
    sheets = tuple((*_frame(whole), *(() if i else pointers), *page) for i, page in enumerate(pages))
    return FirstPage(inside, sheets, (*words, *maps))


def _on_one(
    job: _Job, words: Sequence[Block], settings: Sequence[_Setting]
) -> tuple[list[list[Item]], list[Block]] | None:
    """All on one sheet, and the blocks of the maps; None where it does not fit.

    Of ``settings`` the first that fits, or the first with which every piece has
    room for its name.
    """
    fitting: list[tuple[list[list[Item]], list[Block]]] = []
    for setting in settings:
        said = strips_of(words, setting.width, setting.sizes)
        maps = _maps(job, 1, height_of(said), setting)
        pages, _ = paged([*said, *strips_of(maps, setting.width, setting.sizes)], setting.column)
        if len(pages) == 1:
            fitting.append((pages, maps))
            if all(block.words for block in maps if isinstance(block, Figure)):
                return pages, maps
    return fitting[0] if fitting else None


def _on_several(job: _Job, words: Sequence[Block], setting: _Setting) -> tuple[list[list[Item]], list[Block]]:
    """The items of each of several sheets, and the blocks of the maps.

    The maps name pages, whose numbers follow from how many sheets the maps take.
    """
    said, _ = paged(strips_of(words, setting.width, setting.sizes), setting.column)
    sheets = 1
    while True:
        maps = _maps(job, len(said) + sheets, 0, setting)
        pages, _ = paged(strips_of(maps, setting.width, setting.sizes), setting.column)
        if len(pages) <= sheets:
            return [*said, *pages, *([[]] * (sheets - len(pages)))], maps
        sheets = len(pages)


def _maps(job: _Job, sheets: int, taken: float, setting: _Setting) -> list[Block]:
    """The map of the sheets, that of the joins, and how nearly all must close.

    ``sheets`` is how many the first page takes, ``taken`` what of their sheet's
    height is taken already; the first map is as large as the rest leaves room for.
    """
    sizes, width = setting.sizes, setting.width
    closing: list[Block] = [Paragraph(line) for line in job.check.closing]
    if not job.placed:
        return closing
    first = sheets + job.between + 1
    heading = Heading("3  Where each piece is")
    joined = [*joined_maps(job.placed, first, width, sizes.small, job.check.tape), *closing]
    left = setting.height - taken - height_of(strips_of([heading, *joined], width, sizes)) - _SPARE
    page = setting.height - height_of(strips_of([heading], width, sizes)) - _SPARE
    return [
        heading,
        *sheet_map(job.placed, first, job.printed, Room(width, left, page, sizes.body), sizes.small),
        *joined,
    ]


def _words(job: _Job, beside: bool) -> list[Block]:
    """All that is said before the maps; ``beside`` where readings can be written beside the bars."""
    name = job.paper.shown
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
            f"Lay a steel rule along the bars at the foot and up the right-hand edge, from tick to tick; write {where} "
            "what they measure. The frame must show on all four sides: if not, write wider paper.margins in the spec."
        ),
        *(() if beside else (blanks,)),
        Heading("2  What the readings mean: the first line that fits"),
        findings(job.paper, job.check.tape, (job.correction.across, job.correction.along)),
    ]


def _frame(whole: Area) -> list[Item]:
    """A thin line exactly on the margins, with a heavy mark in each corner."""
    items: list[Item] = [*rectangle(LineType.THIN, whole.left, whole.bottom, whole.right, whole.top)]
    for x, dx in ((whole.left, _CORNER), (whole.right, -_CORNER)):
        for y, dy in ((whole.bottom, _CORNER), (whole.top, -_CORNER)):
            items += [Line(LineType.TRIM, x, y, x + dx, y), Line(LineType.TRIM, x, y, x, y + dy)]
    return items


def _pointers(inside: Area, live: Area, size: float, look: Look) -> Iterator[Item]:
    """An arrow head at either bar, and a line to write its reading on; nothing where one of them has no room."""
    across, along = bars(inside, look)
    said = "This bar measures", "And this one"
    needed = width_of(said[0], size, True) + _ARROW + _BLANK + 6
    beyond = beyond_the_bars(look)
    left, low = float(across.start[0] + FOUR_INCHES) + beyond, float(along.start[1] + FOUR_INCHES) + beyond
    if float(inside.right) - left < needed or float(live.top) - low < needed:
        return
    middle, half, drop = float(across.start[1]) + 0.9, _ARROW / 2, size * 0.12
    yield Solid(((left, middle), (left + _ARROW, middle + half), (left + _ARROW, middle - half)))
    yield Text(left + _ARROW + 1.5, middle - drop, said[0], size, bold=True)
    start = left + _ARROW + width_of(said[0], size, True) + 3.5
    yield Line(LineType.THIN, start, middle - drop, start + _BLANK, middle - drop)
    middle = float(along.start[0]) - 0.9
    yield Solid(((middle, low), (middle + half, low + _ARROW), (middle - half, low + _ARROW)))
    yield Text(middle + drop, low + _ARROW + 1.5, said[1], size, bold=True, turn=90)
    start = low + _ARROW + width_of(said[1], size, True) + 3.5
    yield Line(LineType.THIN, middle + drop, start, middle + drop, start + _BLANK)
