"""A kit: every template and the work order laid out on sheets of one paper."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from ..document.blocks import Block
from ..document.on_paper import OnPaper
from ..drawing import USUAL, Drawing, Item, Look
from ..errors import Fault, Refusal
from ..lengths import Tape
from ..misprints import likely_misprints
from ..papers import Orientation, Paper
from .area import Area
from .budget_words import first_page_lines
from .error_budget import Budget, budgets, step_of
from .first_page import CHECK, FirstPage, PrintCheck, first_page
from .flowing import flow
from .furniture import Bar, Says, bars, least_live, live_area, sheet_items
from .orienting import oriented
from .packing import Bound
from .placed import Placed
from .placing import pack_all, put_down
from .rolls import above, foot, height_at_the_foot, page_of

WORDS = "work order"
CORRECTED = "Corrected for a printer that prints {across} % across and {along} % along{doubt}."


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
        doubt = " (“fit to page”?)" if likely_misprints(self.across, self.along) else ""
        return f"{CORRECTED.format(across=across, along=along, doubt=doubt)} Measure both bars."


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
    tape: Tape
    """What distances are shown on."""
    drawings: tuple[Drawing, ...]
    words: tuple[Block, ...]
    check: tuple[Block, ...]
    """The words of the first page; none where the kit has none."""
    sheets: tuple[Sheet, ...]
    bound: Bound
    """How few sheets its templates could take at all."""
    budgets: tuple[Budget, ...]
    """How far out the far mark of each template may come, in the order of the drawings."""
    fingerprint: str = ""
    """Of all that it is made from; "" where it carries nothing to be made from again."""
    look: Look = USUAL
    """How large its type is and how heavy its lines are."""

    @property
    def with_templates(self) -> int:
        """How many of its sheets hold templates."""
        return sum(bool(sheet.placed) for sheet in self.sheets)


@dataclass(frozen=True, slots=True)
class Contents:
    """What a kit is laid out from, whatever the paper."""

    title: str
    subject: str
    words: Callable[[OnPaper | None], Sequence[Block]]
    """What is said, by how the templates come to lie on sheets; of a roll, whose length hangs on the words, by None."""
    drawings: Sequence[Drawing]
    margins: tuple[Fraction, Fraction, Fraction, Fraction]
    """Left, right, top and bottom, in mm."""
    tape: Tape
    """What distances are shown on."""
    correction: Correction = Correction()
    check: bool = True
    """Whether there is a first page."""
    fingerprint: str = ""
    """As the kit's."""
    look: Look = USUAL
    """How large type is and how heavy lines are; the drawings are made with it already."""

    def says(self, paper: Paper) -> Says:
        """What every sheet says, on this paper."""
        return Says(self.title, paper.shown, self.correction.remark, self.look)


def lay_out(contents: Contents, paper: Paper, orientation: Orientation = "portrait") -> Kit:
    """Everything on sheets: the first page, words, then the pieces of all drawings together.

    Raises Refusal where the paper is too small to hold the bars or a template.
    """
    if paper.roll:
        return _rolled(contents, paper)
    return oriented(lambda each: _laid_out(contents, each), paper, orientation)


def _rolled(contents: Contents, roll: Paper) -> Kit:
    """Everything on a roll, the words below the templates; a page to be tried first would be as long as the rest."""
    live = _free(contents, roll, 0)
    _refuse_small(roll, live, contents.look)
    words = height_at_the_foot(contents.words(None), live, contents.look) if contents.drawings else 0
    contents = replace(contents, check=contents.check and not contents.drawings)

    def cost(page: Paper) -> tuple[int, int]:
        if not contents.drawings:
            return len(_laid_out(contents, page).sheets), 0
        packed = pack_all(contents.drawings, _free(contents, page, words), page, contents.tape, contents.look)
        return packed.sheets, packed.count

    page = page_of(cost, roll, above(live, words), contents.drawings, contents.correction.along, contents.look)
    return _laid_out(contents, page, words)


def _free(contents: Contents, paper: Paper, foot_height: int) -> Area:
    """What a page leaves for templates, above words of this height."""
    whole = _inside(paper, contents.margins, contents.correction)
    return above(live_area(whole, contents.says(paper)), foot_height)


def _laid_out(contents: Contents, paper: Paper, foot_height: int = 0) -> Kit:
    """Everything on sheets of ``paper`` as it is; the words at the foot of the first, where that is kept for them."""
    correction, look, says = contents.correction, contents.look, contents.says(paper)
    whole = _inside(paper, contents.margins, correction)
    live = live_area(whole, says)
    _refuse_small(paper, live, look)
    free = above(live, foot_height)
    packed = pack_all(contents.drawings, free, paper, contents.tape, look)
    placed = put_down(packed, free, contents.tape, look)
    words = contents.words(None if paper.roll else _on_paper(placed))
    at_the_foot = flow(words, foot(live, foot_height), look)[0] if foot_height else []
    pages = flow(words, live, look) if words and not foot_height else []
    budgeted = budgets(placed, contents.drawings, correction, step_of(contents.tape))
    front = FirstPage(whole)
    if contents.check:
        check = PrintCheck(contents.tape, tuple(first_page_lines(budgeted, contents.tape)))
        front = first_page(check, placed, len(pages), whole, paper, correction, says)
    said = [*((CHECK, front.inside, items) for items in front.sheets), *((WORDS, whole, items) for items in pages)]
    total = len(said) + len(placed)
    sheets: list[Sheet] = []
    for name, area, items in said:
        number = len(sheets) + 1
        furniture = sheet_items(area, says, number, total, ())
        sheets.append(Sheet(number, (name,), (), (*furniture, *items), bars(area, look)))
    for on_it in placed:
        number = len(sheets) + 1
        used = {kind for each in on_it for kind in each.line_types}
        below = at_the_foot if number == len(said) + 1 else []
        holds = dict.fromkeys([*([WORDS] if below else []), *(each.piece.drawing.name for each in on_it)])
        furniture = sheet_items(whole, says, number, total, used)
        sheets.append(Sheet(number, tuple(holds), tuple(on_it), (*furniture, *below), bars(whole, look)))
    return Kit(
        title=contents.title,
        subject=contents.subject,
        paper=paper,
        correction=correction,
        tape=contents.tape,
        drawings=tuple(contents.drawings),
        words=tuple(words),
        check=front.words,
        sheets=tuple(sheets),
        bound=packed.bound,
        budgets=tuple(budgeted),
        fingerprint=contents.fingerprint,
        look=look,
    )


def _on_paper(sheets: Sequence[Sequence[Placed]]) -> OnPaper:
    """What the words may say of it."""
    joins = {placed.piece.drawing.name: placed.piece.of - 1 for sheet in sheets for placed in sheet}
    return OnPaper(len(sheets), joins)


def _inside(paper: Paper, margins: tuple[Fraction, Fraction, Fraction, Fraction], correction: Correction) -> Area:
    """The area inside the margins, as it will come out of the printer."""
    left, right, top, bottom = margins
    return Area(
        left * correction.across,
        bottom * correction.along,
        (paper.width - right) * correction.across,
        (paper.height - top) * correction.along,
    )


def _refuse_small(paper: Paper, live: Area, look: Look) -> None:
    usual = "" if look == USUAL else ", or leave paper.large_print out"
    least = least_live(look)
    if min(live.width, live.height) < least:
        raise Refusal(
            Fault(
                "paper",
                paper.size,
                f"too small: inside the margins and beside the bars it must leave at least {least} x {least} "
                f"mm; write a larger paper.name or smaller paper.margins{usual}",
            )
        )
