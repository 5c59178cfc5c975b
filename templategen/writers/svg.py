"""A drawing to SVG: true-size millimetres, text as outlines, so it looks alike on every machine.

The one module that knows svgwrite, which takes no exact numbers and is in maintenance mode.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache
from io import StringIO
from typing import Any

import svgwrite
from fontTools.pens.svgPathPen import SVGPathPen
from fontTools.pens.transformPen import TransformPen
from fontTools.ttLib import TTFont

from ..drawing import MM_PER_POINT, Drawing, Item, Line, LineType, Ring, Solid, Text, set_text
from ..drawing.faces import face
from .numbers import decimal

_TURNS = {0: (1, 0), 90: (0, 1), 180: (-1, 0), 270: (0, -1)}
_ROOM = 1
"""Around the drawing, in mm: half an outline's width and to spare."""


def svg(drawing: Drawing, items: Iterable[Item]) -> str:
    """``items`` of ``drawing`` as an SVG file whose user unit is a millimetre, read upright.

    Raises MissingGlyph where a text holds a character that the font lacks.
    """
    upright = drawing.quarter_turns % 2 == 1
    low, high = float(drawing.low), float(drawing.high)
    start, end = float(drawing.start), float(drawing.end)
    wide, tall = (high - low, end - start) if upright else (end - start, high - low)
    wide, tall = decimal(wide + 2 * _ROOM), decimal(tall + 2 * _ROOM)
    sheet = svgwrite.Drawing(
        size=(f"{wide}mm", f"{tall}mm"), viewBox=f"0 0 {wide} {tall}", debug=False, profile="full"
    )
    sheet.set_desc(title=f"{drawing.name[0].upper()}{drawing.name[1:]}", desc=f"{drawing.caption} Scale 1:1.")
    place = sheet.g(transform=_placing(drawing, upright), fill="none", stroke="black", stroke_linecap="butt")
    groups: dict[LineType, Any] = {}
    for item in items:
        if isinstance(item, Line | Ring):
            group = groups.get(item.kind)
            if group is None:
                group = groups[item.kind] = place.add(_group(sheet, item.kind))
            group.add(_stroke(sheet, item))
        elif isinstance(item, Solid):
            points = [(decimal(x), decimal(y)) for x, y in item.points]
            place.add(sheet.polygon(points, fill="black", stroke="none"))
        else:
            place.add(_lettering(sheet, item))
    sheet.add(place)
    out = StringIO()
    sheet.write(out, pretty=False)
    return out.getvalue() + "\n"


def _placing(drawing: Drawing, upright: bool) -> str:
    """From the drawing's axes, y upward, to the file's, y downward."""
    low, high = float(drawing.low), float(drawing.high)
    start, end = float(drawing.start), float(drawing.end)
    if upright:
        # (x, y) -> (high - y, end - x)
        return f"matrix(0 -1 -1 0 {decimal(_ROOM + high)} {decimal(_ROOM + end)})"
    return f"matrix(1 0 0 -1 {decimal(_ROOM - start)} {decimal(_ROOM + high)})" if low <= high else ""


def _group(sheet: svgwrite.Drawing, kind: LineType) -> Any:
    dashes = {"stroke_dasharray": " ".join(f"{length:g}" for length in kind.dashes)} if kind.dashes else {}
    return sheet.g(class_=kind.name.lower(), stroke_width=kind.width, **dashes)


def _stroke(sheet: svgwrite.Drawing, item: Line | Ring) -> Any:
    if isinstance(item, Ring):
        return sheet.circle((decimal(item.x), decimal(item.y)), decimal(item.radius))
    return sheet.line((decimal(item.x1), decimal(item.y1)), (decimal(item.x2), decimal(item.y2)))


def _lettering(sheet: svgwrite.Drawing, text: Text) -> Any:
    """The text's glyph outlines as one path, its words beside it for who cannot see it."""
    setting = set_text(text.text, text.size, text.bold)
    cos, sin = _TURNS[text.turn]
    back = setting.width * text.anchor.value
    x, y = float(text.x) - cos * back, float(text.y) - sin * back
    glyphs, characters, em = _glyphs(text.bold)
    pen = SVGPathPen(glyphs, ntos=lambda number: f"{number:.3f}".rstrip("0").rstrip("."))
    for run in setting.runs:
        scale = run.size * MM_PER_POINT / em
        along = run.dx
        for character in run.text:
            name = characters[ord(character)]
            place = (
                cos * scale,
                sin * scale,
                -sin * scale,
                cos * scale,
                x + cos * along - sin * run.dy,
                y + sin * along + cos * run.dy,
            )
            glyphs[name].draw(TransformPen(pen, place))
            along += glyphs[name].width * scale
    outline = sheet.path(pen.getCommands(), fill="black", stroke="none")
    outline.set_desc(title=text.text)
    return outline


@cache
def _glyphs(bold: bool) -> tuple[Any, dict[int, str], int]:
    """The face's outlines, its characters' glyph names, and its units to the em."""
    font = TTFont(face(bold).path, lazy=True)
    return font.getGlyphSet(), font.getBestCmap(), font["head"].unitsPerEm
