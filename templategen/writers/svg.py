"""A sheet to SVG: true-size millimetres, text as outlines, so it looks alike on every machine.

The one module that knows svgwrite, which takes no exact numbers and is in maintenance mode.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from io import StringIO
from math import ceil
from typing import Any

import svgwrite

from ..drawing import MM_PER_POINT, TURNS, USUAL, Item, Line, LineType, Look, Ring, Solid, Text, capitalised
from ..layout import Placed, Sheet
from .numbers import decimal
from .outlines import font


def svg(sheet: Sheet, width: Fraction, height: Fraction, description: str, look: Look = USUAL) -> str:
    """``sheet``, of this width and height in mm, as an SVG file whose user unit is a millimetre.

    Raises MissingGlyph where a text holds a character that the font lacks.
    """
    wide, tall = _whole_pixels(float(width)), _whole_pixels(float(height))
    title = ", ".join(sheet.holds)
    page = svgwrite.Drawing(
        size=(f"{wide}mm", f"{tall}mm"), viewBox=f"0 0 {wide} {tall}", debug=False, profile="full"
    )
    page.set_desc(title=capitalised(title), desc=description)
    letters = _Letters(page)
    for placed in sheet.placed:
        page.add(_group_of(page, _placing(height, placed), placed.items, letters, look))
    page.add(_group_of(page, f"matrix(1 0 0 -1 0 {decimal(height)})", sheet.items, letters, look))
    out = StringIO()
    page.write(out, pretty=False)
    return out.getvalue() + "\n"


def _group_of(page: svgwrite.Drawing, placing: str, items: Iterable[Item], letters: _Letters, look: Look) -> Any:
    """Items that share their coordinates, those of a line type together."""
    place = page.g(transform=placing, fill="none", stroke="black")
    groups: dict[LineType, Any] = {}
    for item in items:
        if isinstance(item, Line | Ring):
            group = groups.get(item.kind)
            if group is None:
                group = groups[item.kind] = place.add(_line_group(page, item.kind, look))
            group.add(_stroke(page, item))
        elif isinstance(item, Solid):
            points = [(decimal(x), decimal(y)) for x, y in item.points]
            place.add(page.polygon(points, fill="black", stroke="none"))
        else:
            place.add(letters.set(item))
    return place


def _whole_pixels(mm: float) -> float:
    """``mm`` made longer to a whole number of CSS pixels of 1/96 in.

    Browsers round a file's size to whole pixels and then scale what is in it to
    that: a strip of 3 m would come out a sixth of a millimetre short.
    """
    return decimal(ceil(mm * 96 / 25.4 - 1e-9) * 25.4 / 96)


def _placing(height: Fraction, placed: Placed) -> str:
    """From a placed piece's axes, y upward, to the file's, y downward from the top."""
    x, y = placed.at(Fraction(0))
    axes = "0 -1 -1 0" if placed.turn else "1 0 0 -1"
    return f"matrix({axes} {decimal(x)} {decimal(height - y)})"


def _line_group(page: svgwrite.Drawing, kind: LineType, look: Look) -> Any:
    style = {"stroke_linecap": "square"}
    if kind.dashes:
        style = {"stroke_dasharray": " ".join(f"{length:g}" for length in look.dashes(kind))}
    return page.g(class_=kind.name.lower(), stroke_width=look.width(kind), **style)


def _stroke(page: svgwrite.Drawing, item: Line | Ring) -> Any:
    if isinstance(item, Ring):
        return page.circle((decimal(item.x), decimal(item.y)), decimal(item.radius))
    return page.line((decimal(item.x1), decimal(item.y1)), (decimal(item.x2), decimal(item.y2)))


class _Letters:
    """The glyphs that a file needs, each defined once and used wherever it stands."""

    def __init__(self, page: svgwrite.Drawing) -> None:
        self._page = page
        self._defined: dict[tuple[bool, str], str] = {}

    def set(self, text: Text) -> Any:
        """``text`` as glyph outlines, its words beside them for who cannot see them."""
        cos, sin = TURNS[text.turn]
        face = font(text.bold)
        line = self._page.g()
        line.set_desc(title=text.text)
        for run, x, y in text.runs():
            scale = run.size * MM_PER_POINT / face.em
            along = 0.0
            for character in run.text:
                place = (cos * scale, sin * scale, -sin * scale, cos * scale, x + cos * along, y + sin * along)
                if outline := self._outline(text.bold, character):
                    line.add(self._page.use(outline, transform=f"matrix({' '.join(f'{n:.6g}' for n in place)})"))
                along += face.advances[character] * face.em * scale
        return line

    def _outline(self, bold: bool, character: str) -> str:
        """A reference to the glyph's outline, defined at first use; "" for a blank."""
        key = (bold, character)
        if key not in self._defined:
            commands = font(bold).outline(character)
            name = f"{'b' if bold else 'r'}{ord(character):x}"
            if commands:
                self._page.defs.add(self._page.path(commands, id=name, fill="black", stroke="none"))
            self._defined[key] = f"#{name}" if commands else ""
        return self._defined[key]
