"""A PDF read with PDFium: the one module that knows it. Hostile files end in :class:`TooMuch` or in Refusal."""

from __future__ import annotations

import ctypes
import math
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pypdfium2
import pypdfium2.raw as pdfium

from ..errors import Fault, Refusal
from ..lengths import MM_PER_INCH
from ..writers.numbers import POINTS_PER_MM
from .geometry import Box, Letter, Matrix, Stroke
from .limits import DEEPEST, MOST_LETTERS, MOST_OBJECTS, MOST_PAGES, MOST_POINTS, MOST_STROKES
from .outlines import Kind, Step, lines_of, thin_bars_of
from .page import File, Page, Picture
from .user_units import user_units

_SPARE = 0.3
"""How far outside the visible box half a line's width may reach, in mm: nothing of it is missed."""
_FEW = 12
"""Steps of a filled outline that are read whatever its size: a line and its tick have ten."""
_LARGE = 15.0
"""An outline of more steps is read from this size, in mm."""
_PRINTING = 1 << 2


class TooMuch(Exception):
    """More than a check takes on: the message says of what."""


class Reader:
    """An open PDF. Raises Refusal where it is locked, or cannot be opened."""

    def __init__(self, path: Path) -> None:
        try:
            self._document = pypdfium2.PdfDocument(path)
            self._pages = len(self._document)
        except pypdfium2.PdfiumError as error:
            raise Refusal(Fault(str(path), "", _why_not(error))) from None
        if not self._pages:
            raise Refusal(Fault(str(path), "", "this PDF has no pages"))
        if self._pages > MOST_PAGES:
            right = f"more than {MOST_PAGES:,} pages; a kit has far fewer: is this the file?"
            raise Refusal(Fault(str(path), f"{self._pages:,} pages", right))
        self._units = user_units(path)

    @property
    def file(self) -> File:
        raw = self._document.raw
        duplex = pdfium.FPDF_VIEWERREF_GetDuplex(raw)
        return File(
            pages=self._pages,
            asks_actual_size=not pdfium.FPDF_VIEWERREF_GetPrintScaling(raw),
            asks_two_sides=duplex in (pdfium.DuplexFlipShortEdge, pdfium.DuplexFlipLongEdge),
            attachments=max(0, pdfium.FPDFDoc_GetAttachmentCount(raw)),
            may_be_printed=bool(pdfium.FPDF_GetDocUserPermissions(raw) & _PRINTING),
        )

    def page(self, index: int) -> Page | None:
        """The page, counted from 0; None where it cannot be read."""
        try:
            page = self._document[index]
        except pypdfium2.PdfiumError:
            return None
        try:
            return _Scene(page.raw, index, self._units.get(index, 1.0)).page()
        finally:
            page.close()

    def picture(self, index: int) -> Picture | None:
        """The page drawn, as finely as is allowed, up to 300 points to the inch; None where it cannot be."""
        try:
            page = self._document[index]
            wide, high = page.get_size()
            if wide <= 0 or high <= 0:
                return None
            scale = min(300 / 72, math.sqrt(MOST_POINTS / (wide * high)))
            bitmap = page.render(scale=scale, grayscale=True, may_draw_forms=False, draw_annots=False)
        except (pypdfium2.PdfiumError, MemoryError, ValueError):
            return None
        rows, columns, stride = bitmap.height, bitmap.width, bitmap.stride
        points = bytes(bitmap.buffer)
        if stride != columns:
            points = b"".join(points[row * stride : row * stride + columns] for row in range(rows))
        mm = self._units.get(index, 1.0) / (scale * POINTS_PER_MM)
        page.close()
        return Picture(points, columns, rows, mm)


class _Scene:
    """One page walked through, forms within forms, every matrix applied."""

    def __init__(self, raw: Any, index: int, user_unit: float) -> None:
        self.raw, self.index, self.user_unit = raw, index, user_unit
        box = pdfium.FS_RECTF()
        pdfium.FPDF_GetPageBoundingBox(raw, box)
        self.turn = 90 * (max(0, pdfium.FPDFPage_GetRotation(raw)) % 4)
        wide, high = box.right - box.left, box.top - box.bottom
        self.base = _as_shown(self.turn, wide, high).then(_scaled(user_unit / POINTS_PER_MM))
        self.base = Matrix(e=-box.left, f=-box.bottom).then(self.base)
        if self.turn % 180:
            wide, high = high, wide
        self.width, self.height = (side * user_unit / POINTS_PER_MM for side in (wide, high))
        self.visible = Box(0, 0, self.width, self.height)
        self.objects = self.cut = 0
        self.strokes: list[Stroke] = []
        self.pictures: list[float] = []
        self.fonts: dict[int, str] = {}

    def page(self) -> Page:
        count = pdfium.FPDFPage_CountObjects(self.raw)
        self._walk((pdfium.FPDFPage_GetObject(self.raw, i) for i in range(count)), self.base, 0)
        letters = tuple(self._letters())
        # Letters of a text that is spoken otherwise than it is drawn all get one place, and inside a form a wrong one.
        places = Counter(letter.at for letter in letters if letter.text != " ")
        self.cut += sum(
            not (letter.text == " " or places[letter.at] > 1 or self.visible.holds(letter.at, _SPARE))
            for letter in letters
        )
        return Page(
            self.index + 1,
            self.width,
            self.height,
            self.turn,
            self.user_unit,
            tuple(self.strokes),
            letters,
            self.cut,
            tuple(self.pictures),
            frozenset(name for name in self.fonts.values() if name),
        )

    def _walk(self, objects: Iterator[Any], matrix: Matrix, depth: int) -> None:
        if depth > DEEPEST:
            raise TooMuch(f"forms nested more than {DEEPEST} deep")
        for each in objects:
            self.objects += 1
            if self.objects > MOST_OBJECTS:
                raise TooMuch(f"more than {MOST_OBJECTS:,} things drawn on page {self.index + 1}")
            match pdfium.FPDFPageObj_GetType(each):
                case pdfium.FPDF_PAGEOBJ_PATH:
                    self._path(each, _matrix_of(each).then(matrix), matrix)
                case pdfium.FPDF_PAGEOBJ_TEXT:
                    self._font(each)
                case pdfium.FPDF_PAGEOBJ_IMAGE:
                    self._picture(each, _matrix_of(each).then(matrix))
                case pdfium.FPDF_PAGEOBJ_FORM:
                    inner = range(max(0, pdfium.FPDFFormObj_CountObjects(each)))
                    inside = (pdfium.FPDFFormObj_GetObject(each, i) for i in inner)
                    self._walk(inside, _matrix_of(each).then(matrix), depth + 1)

    def _path(self, each: Any, matrix: Matrix, container: Matrix) -> None:
        fill, stroked = ctypes.c_int(), ctypes.c_int()
        pdfium.FPDFPath_GetDrawMode(each, fill, stroked)
        if not (fill.value or stroked.value):
            return
        count = pdfium.FPDFPath_CountSegments(each)
        if not stroked.value and count > _FEW and not self._is_large(each, matrix):
            return
        steps = _steps((pdfium.FPDFPath_GetPathSegment(each, i) for i in range(count)), matrix)
        found = list(lines_of(steps)) if stroked.value else thin_bars_of(steps)
        if len(self.strokes) + len(found) > MOST_STROKES:
            raise TooMuch(f"more than {MOST_STROKES:,} lines on page {self.index + 1}")
        self.strokes += found
        seen = self.visible.within(_clip_of(each, container))
        self.cut += sum(not (seen.holds(line.start, _SPARE) and seen.holds(line.end, _SPARE)) for line in found)

    def _is_large(self, each: Any, matrix: Matrix) -> bool:
        """Whether a filled shape might hold a bar: letters drawn as outlines are many, and small."""
        edges = [ctypes.c_float() for _ in range(4)]
        if not pdfium.FPDFPageObj_GetBounds(each, *edges):
            return False
        left, low, right, high = (edge.value for edge in edges)
        return max(right - left, high - low) * max(map(abs, self.base[:4])) >= _LARGE

    def _picture(self, each: Any, matrix: Matrix) -> None:
        wide, high = ctypes.c_uint(), ctypes.c_uint()
        across = math.hypot(matrix.a, matrix.b)
        if pdfium.FPDFImageObj_GetImagePixelSize(each, wide, high) and across > 0:
            self.pictures.append(wide.value / across * float(MM_PER_INCH))

    def _font(self, each: Any) -> None:
        font = pdfium.FPDFTextObj_GetFont(each)
        if not font:
            return
        key = ctypes.addressof(font.contents)
        if key not in self.fonts:
            name = ctypes.create_string_buffer(128)
            pdfium.FPDFFont_GetBaseFontName(font, name, 128)
            said = name.value.decode("utf-8", "replace") or "a font without a name"
            self.fonts[key] = "" if pdfium.FPDFFont_GetIsEmbedded(font) else said

    def _letters(self) -> Iterator[Letter]:
        text = pdfium.FPDFText_LoadPage(self.raw)
        if not text:
            return
        try:
            count = pdfium.FPDFText_CountChars(text)
            if count > MOST_LETTERS:
                raise TooMuch(f"more than {MOST_LETTERS:,} letters on page {self.index + 1}")
            x, y = ctypes.c_double(), ctypes.c_double()
            for i in range(count):
                code = pdfium.FPDFText_GetUnicode(text, i)
                if code < 32 or not pdfium.FPDFText_GetCharOrigin(text, i, x, y):
                    continue
                letter = Letter(chr(code) if code < 0x110000 else "?", self.base.point(x.value, y.value))
                yield letter
        finally:
            pdfium.FPDFText_ClosePage(text)


def _why_not(error: pypdfium2.PdfiumError) -> str:
    if error.err_code == pdfium.FPDF_ERR_PASSWORD:
        return "this PDF is locked with a password; open it with its password, save it without one, and check that"
    return "this PDF is damaged and cannot be opened; get the file again, or make the kit again"


def _as_shown(turn: int, wide: float, high: float) -> Matrix:
    """From the page as it is written to the page as it is shown, turned clockwise."""
    match turn:
        case 90:
            return Matrix(0, -1, 1, 0, 0, wide)
        case 180:
            return Matrix(-1, 0, 0, -1, wide, high)
        case 270:
            return Matrix(0, 1, -1, 0, high, 0)
        case _:
            return Matrix()


def _scaled(factor: float) -> Matrix:
    return Matrix(a=factor, d=factor)


def _matrix_of(each: Any) -> Matrix:
    raw = pdfium.FS_MATRIX()
    if not pdfium.FPDFPageObj_GetMatrix(each, raw):
        return Matrix()
    return Matrix(raw.a, raw.b, raw.c, raw.d, raw.e, raw.f)


def _clip_of(each: Any, container: Matrix) -> Box:
    """The box round what the path is clipped to."""
    seen = Box(-math.inf, -math.inf, math.inf, math.inf)
    clip = pdfium.FPDFPageObj_GetClipPath(each)
    for i in range(max(0, pdfium.FPDFClipPath_CountPaths(clip)) if clip else 0):
        count = max(0, pdfium.FPDFClipPath_CountPathSegments(clip, i))
        segments = (pdfium.FPDFClipPath_GetPathSegment(clip, i, j) for j in range(min(count, 1000)))
        points = [point for _, point, _ in _steps(segments, container)]
        if points:
            xs, ys = [point.x for point in points], [point.y for point in points]
            seen = seen.within(Box(min(xs), min(ys), max(xs), max(ys)))
    return seen


_KINDS = {
    pdfium.FPDF_SEGMENT_MOVETO: Kind.BEGIN,
    pdfium.FPDF_SEGMENT_LINETO: Kind.LINE,
}


def _steps(segments: Iterator[Any], matrix: Matrix) -> Iterator[Step]:
    x, y = ctypes.c_float(), ctypes.c_float()
    for segment in segments:
        pdfium.FPDFPathSegment_GetPoint(segment, x, y)
        kind = _KINDS.get(pdfium.FPDFPathSegment_GetType(segment), Kind.CURVE)
        yield Step(kind, matrix.point(x.value, y.value), bool(pdfium.FPDFPathSegment_GetClose(segment)))
