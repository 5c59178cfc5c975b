"""From a file to what stands on its pages: the steps of a check that touch the file."""

from __future__ import annotations

import time
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from ..errors import Fault, Refusal
from ..layout.furniture import BAR, BAR_ACROSS, HOW
from ..lengths import MM_PER_INCH
from .bars import TooManyPairs, find_bars
from .limits import MOST_BYTES, SECONDS_OF_DRAWING
from .page import File, Page
from .pictures import bars_in
from .reading import Reader, TooMuch
from .sheets import Looked, sheets_of

_SAYS, _NAMES = ("".join(words.split()) for words in (HOW.partition(",")[0], BAR_ACROSS))
_TAIL = 2048
_DRAWN_IN_VAIN = 12
"""So many pages are drawn and found without bars before a file without a word of a kit is taken for another's."""


def look_at(path: Path) -> tuple[File, list[Looked], list[int]]:
    """The file, its pages with their sheets, and the numbers of pages that cannot be read.

    Raises Refusal where it cannot be judged: no PDF, damaged, locked, too much, or no kit.
    """
    refuse_what_is_no_pdf(path)
    reader = Reader(path)
    file = reader.file
    try:
        pages = [reader.page(index) for index in range(file.pages)]
        looked = _with_sheets(reader, [page for page in pages if page])
    except TooMuch as much:
        right = f"too much to check ({much}); a kit holds far less: is this the file?"
        raise Refusal(Fault(str(path), "", right)) from None
    unreadable = [index + 1 for index, page in enumerate(pages) if page is None]
    if not any(each.sheets for each in looked):
        raise Refusal(Fault(str(path), "", _no_kit(looked, unreadable)))
    return file, looked, unreadable


def refuse_what_is_no_pdf(path: Path) -> None:
    """Raises Refusal for what a look at the first and last bytes tells; OSError where it cannot be read."""
    try:
        size = path.stat().st_size
    except (FileNotFoundError, NotADirectoryError):
        raise Refusal(Fault(str(path), "", "there is no such file; name a kit's PDF file")) from None
    if path.is_dir():
        raise Refusal(Fault(str(path), "", "this is a folder; name a PDF file, such as kit.pdf in it"))
    if not path.is_file():  # a pipe, which might never end
        raise Refusal(Fault(str(path), "", "this is not an ordinary file; name a kit's PDF file"))
    with path.open("rb") as file:
        if size > MOST_BYTES:
            right = f"more than {MOST_BYTES // 2**20} MiB; a kit is far smaller: is this the file?"
            raise Refusal(Fault(str(path), f"{size // 2**20} MiB", right))
        if size == 0:
            raise Refusal(Fault(str(path), "", "this file is empty; get it again, or make the kit again"))
        # ISO 32000-1, Annex H.3: a header within the first 1,024 bytes is accepted.
        if b"%PDF-" not in file.read(1024):
            raise Refusal(Fault(str(path), "", "this is no PDF; name the kit's PDF file"))
        file.seek(max(0, size - _TAIL))
        # 7.5.5: the last line is the marker of the end.
        if b"%%EOF" not in file.read().rstrip(b"\0\r\n\t "):
            right = "this PDF breaks off before its end; get the file again, or make the kit again"
            raise Refusal(Fault(str(path), "", right))


def _with_sheets(reader: Reader, pages: Sequence[Page]) -> list[Looked]:
    """Each page with the sheets on it; pages without a bar among their lines are drawn and looked at."""
    looked = [_read(page) for page in pages]
    until = time.monotonic() + SECONDS_OF_DRAWING
    in_vain = 0
    known = any(each.sheets or each.says_how for each in looked)
    for i, each in enumerate(looked):
        if each.sheets or time.monotonic() > until or not (known or in_vain < _DRAWN_IN_VAIN):
            continue
        looked[i] = _drawn(reader, each)
        known = known or bool(looked[i].sheets)
        in_vain += not looked[i].sheets
    return looked


def _read(page: Page) -> Looked:
    try:
        sheets = sheets_of(page.number, find_bars(page.strokes), page.letters)
    except TooManyPairs:
        sheets = []
    said = "".join(letter.text for letter in page.letters if letter.text != " ")
    return Looked(page, tuple(sheets), _SAYS in said, _NAMES in said, 0.0)


def _drawn(reader: Reader, each: Looked) -> Looked:
    picture = reader.picture(each.page.number - 1)
    if picture is None:
        return each
    unit = float(MM_PER_INCH) * each.page.user_unit
    grain = max([picture.mm, *(unit / dots for dots in each.page.pictures if dots > 0)])
    try:
        sheets = sheets_of(each.page.number, bars_in(picture, grain), each.page.letters, picture=True)
    except TooManyPairs:
        return each
    smallest = min((ratio for sheet in sheets for ratio in sheet.ratios if ratio), default=1.0)
    return replace(each, sheets=tuple(sheets), within=grain / 2 / (float(BAR) * smallest))


def _no_kit(looked: Sequence[Looked], unreadable: Sequence[int]) -> str:
    if any(each.says_how for each in looked):
        return (
            "this says that it is a kit, but the bars that prove its size are gone or too blurred to be measured; "
            "print the kit's own kit.pdf instead"
        )
    if unreadable and not looked:
        return "this PDF is damaged: none of its pages can be read; get the file again, or make the kit again"
    return "no sheet of a kit is in this PDF: none of its pages has the two bars that prove the size; name a kit's PDF"
