"""Sheets to PDF 1.7: true to size, one-sided, every glyph embedded, its own spec attached."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from io import BytesIO

from reportlab import rl_config
from reportlab.pdfbase import pdfdoc, pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

from ..drawing import TURNS, Item, Line, LineType, Look, Ring, Solid, Text, capitalised
from ..drawing.faces import face
from ..layout import Correction, Kit, Sheet
from .numbers import POINTS_PER_MM

# Streams are compressed and no more: text armour would make files a quarter longer.
# Set here because the environment can change reportlab's defaults.
rl_config.useA85 = 0


def pdf(kit: Kit, attachments: Mapping[str, str] | None = None) -> bytes:
    """The kit as a PDF file; ``attachments`` are texts by file name, carried inside it.

    The same kit gives the same bytes on every run. Raises MissingGlyph before
    anything is written where a text holds a character that the font lacks.
    """
    buffer = BytesIO()
    canvas = Canvas(
        buffer,
        pagesize=(float(kit.paper.width) * POINTS_PER_MM, float(kit.paper.height) * POINTS_PER_MM),
        pageCompression=1,
        invariant=1,
        pdfVersion=(1, 7),
        initialFontName=_font(False),
        initialFontSize=10,
        lang="en",
    )
    _describe(canvas, kit)
    if attachments:
        _attach(canvas, attachments)
    bookmarked: set[str] = set()
    for sheet in kit.sheets:
        _bookmark(canvas, sheet, bookmarked)
        _draw_sheet(canvas, sheet, kit.correction, kit.look)
        canvas.showPage()
    canvas.save()
    return buffer.getvalue()


def _describe(canvas: Canvas, kit: Kit) -> None:
    canvas.setTitle(kit.title)
    canvas.setSubject(kit.subject)
    if kit.fingerprint:
        canvas.setKeywords(f"Fingerprint {kit.fingerprint}")
    canvas.setCreator("templategen")
    canvas.setAuthor("")
    canvas.setViewerPreference("PrintScaling", "None")
    canvas.setViewerPreference("Duplex", "Simplex")
    canvas.setViewerPreference("DisplayDocTitle", "true")


def _bookmark(canvas: Canvas, sheet: Sheet, bookmarked: set[str]) -> None:
    """An outline entry for the first sheet of each template."""
    for name in sheet.holds:
        if name not in bookmarked:
            bookmarked.add(name)
            canvas.bookmarkPage(name)
            canvas.addOutlineEntry(capitalised(name), name, 0)


def _attach(canvas: Canvas, attachments: Mapping[str, str]) -> None:
    """Embedded files (ISO 32000-1, 7.11.4), which reportlab has no call for."""
    document = canvas._doc
    names: list[object] = []
    for name, text in sorted(attachments.items()):
        stream = pdfdoc.PDFStream(
            pdfdoc.PDFDictionary({"Type": pdfdoc.PDFName("EmbeddedFile")}), text.encode("utf-8"), filters=[]
        )
        embedded = document.Reference(stream)
        file = pdfdoc.PDFDictionary(
            {
                "Type": pdfdoc.PDFName("Filespec"),
                "F": pdfdoc.PDFString(name),
                "UF": pdfdoc.PDFString(name),
                "EF": pdfdoc.PDFDictionary({"F": embedded, "UF": embedded}),
            }
        )
        names += [pdfdoc.PDFString(name), document.Reference(file)]
    tree = pdfdoc.PDFDictionary({"Names": pdfdoc.PDFArray(names)})
    document.Catalog.Names = pdfdoc.PDFDictionary({"EmbeddedFiles": tree})


@dataclass(frozen=True, slots=True)
class Frame:
    """From millimetres of a drawing, or of the sheet, to points of the page."""

    x: float
    y: float
    turn: int
    across: float
    """Points for a millimetre across the sheet, the printer's error undone."""
    along: float

    def point(self, x: float, y: float) -> tuple[float, float]:
        if self.turn:
            x, y = -y, x
        return (self.x + x) * self.across, (self.y + y) * self.along


def _draw_sheet(canvas: Canvas, sheet: Sheet, correction: Correction, look: Look) -> None:
    lines: dict[LineType, list[tuple[float, float, float, float]]] = {}
    texts: list[tuple[Frame, Text]] = []
    for frame, items in frames(sheet, correction):
        for item in items:
            if isinstance(item, Line):
                start = frame.point(float(item.x1), float(item.y1))
                lines.setdefault(item.kind, []).append((*start, *frame.point(float(item.x2), float(item.y2))))
            elif isinstance(item, Text):
                texts.append((frame, item))
            else:
                _draw_shape(canvas, frame, item, look)
    for kind, segments in lines.items():
        _set_line(canvas, kind, look)
        canvas.lines(segments)
    _draw_texts(canvas, texts)


def frames(sheet: Sheet, correction: Correction) -> list[tuple[Frame, tuple[Item, ...]]]:
    """All that stands on ``sheet``, group by group, with the frame that takes it to the page."""
    across = POINTS_PER_MM / float(correction.across)
    along = POINTS_PER_MM / float(correction.along)
    placed = [
        (Frame(float(x), float(y), each.turn, across, along), each.items)
        for each in sheet.placed
        for x, y in [each.at(Fraction(0))]
    ]
    return [(Frame(0, 0, 0, across, along), sheet.items), *placed]


def _set_line(canvas: Canvas, kind: LineType, look: Look) -> None:
    canvas.setLineWidth(look.width(kind) * POINTS_PER_MM)
    # Continuous lines end square, which closes the corners of outlines; dashes keep their lengths.
    canvas.setLineCap(0 if kind.dashes else 2)
    canvas.setDash([length * POINTS_PER_MM for length in look.dashes(kind)])


def _draw_shape(canvas: Canvas, frame: Frame, item: Ring | Solid, look: Look) -> None:
    if isinstance(item, Ring):
        _set_line(canvas, item.kind, look)
        x, y = frame.point(float(item.x), float(item.y))
        rx, ry = float(item.radius) * frame.across, float(item.radius) * frame.along
        canvas.ellipse(x - rx, y - ry, x + rx, y + ry)
        return
    outline = canvas.beginPath()
    for i, (along, across) in enumerate(item.points):
        (outline.lineTo if i else outline.moveTo)(*frame.point(float(along), float(across)))
    outline.close()
    canvas.drawPath(outline, stroke=0, fill=1)


def _draw_texts(canvas: Canvas, texts: Iterable[tuple[Frame, Text]]) -> None:
    writer = canvas.beginText()
    for frame, text in texts:
        runs = list(text.runs())
        cos, sin = TURNS[(text.turn + frame.turn) % 360]
        built = len(runs) > 1
        if built:
            # One text to a reader aloud or a search, whatever the runs it is built of (ISO 32000-1, 14.9.4).
            spoken = text.text.encode("utf-16-be").hex().upper()
            writer._code.append(f"/Span <</ActualText <FEFF{spoken}>>> BDC")
        for run, x, y in runs:
            writer.setFont(_font(text.bold), run.size)
            if sin or cos < 0:
                writer.setTextTransform(cos, sin, -sin, cos, *frame.point(x, y))
            else:
                writer.setTextOrigin(*frame.point(x, y))
            # Every run sets its own place, so none need be measured for the next one, as textOut would.
            writer.textLine(run.text)
        if built:
            writer._code.append("EMC")
    canvas.drawText(writer)


def _font(bold: bool) -> str:
    """The name under which reportlab knows the face, registered at first use."""
    chosen = face(bold)
    if chosen.name not in pdfmetrics.getRegisteredFontNames():
        pdfmetrics.registerFont(TTFont(chosen.name, str(chosen.path)))
    return chosen.name


