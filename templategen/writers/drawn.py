"""Drawing items to SVG inside a page: strokes and type in the colour of the words around them.

Type is set as outlines, since words beside a picture have their places by this family's widths and no other's.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby
from typing import TypeAlias
from xml.etree.ElementTree import Element

from ..drawing import MM_PER_POINT, TURNS, Item, Line, LineType, Ring, Solid, Text
from .elements import block, element, put
from .outlines import font

PAD = 0.6
"""Mm around a picture, so that half a line's width is not cut off at its edge."""
_Subpath: TypeAlias = list[tuple[float, float]]


class Letters:
    """The glyphs that a page needs, each defined once and used wherever it stands."""

    def __init__(self) -> None:
        self._defined: dict[str, str] = {}

    def set(self, text: Text) -> Element:
        """``text`` as uses of glyph outlines."""
        cos, sin = TURNS[text.turn]
        face = font(text.bold)
        line = element("g")
        for run, x, y in text.runs():
            scale = run.size * MM_PER_POINT / face.em
            axes = (cos * scale, -sin * scale, -sin * scale, -cos * scale, x, -y)
            group = element("g", transform=f"matrix({' '.join(f'{n + 0:.5g}' for n in axes)})")
            along = 0.0
            for character in run.text:
                if name := self._name_of(text.bold, character):
                    group.append(element("use", href=f"#{name}", **({"x": f"{along:g}"} if along else {})))
                along += round(face.advances[character] * face.em)
            line.append(group)
        return line

    def _name_of(self, bold: bool, character: str) -> str:
        """The name of the glyph's outline, defined at first use; "" for a blank."""
        name = f"{'b' if bold else 'r'}{ord(character):x}"
        if name not in self._defined:
            self._defined[name] = font(bold).outline(character)
        return name if self._defined[name] else ""

    def defined(self) -> Iterator[Element]:
        """Where all the outlines are, to be put anywhere on the page: it shows nothing."""
        outlines = [element("path", id=name, d=d) for name, d in sorted(self._defined.items()) if d]
        if outlines:
            definitions = element("defs", *outlines)
            yield block("svg", definitions, class_="letters", width="0", height="0", aria_hidden="true")


def picture(items: Sequence[Item], width: float, height: float, letters: Letters, rem: float) -> Element:
    """Items in a box of this width and height in mm, from its top left corner; ``rem`` is how wide a mm is shown."""
    box = (-PAD, -PAD, width + 2 * PAD, height + 2 * PAD)
    drawn = element(
        "svg", viewBox=" ".join(f"{n:.5g}" for n in box), style=f"width:{box[2] * rem:.2f}rem",
        fill="none", stroke="currentColor", stroke_linecap="round", stroke_linejoin="round",
    )  # fmt: skip
    put(drawn, _strokes(items))
    filled = element("g", fill="currentColor", stroke="none")
    for item in items:
        if isinstance(item, Solid):
            filled.append(element("path", d=_path([[(float(x), float(y)) for x, y in item.points]]) + "z"))
        elif isinstance(item, Text):
            filled.append(letters.set(item))
    if len(filled):
        drawn.append(filled)
    return drawn


def _strokes(items: Iterable[Item]) -> Iterator[Element]:
    """Lines and rings, those of a line type together."""
    strokes = [item for item in items if isinstance(item, Line | Ring)]
    for kind, same in groupby(sorted(strokes, key=lambda item: item.kind.name), key=lambda item: item.kind):
        group = element("g", stroke_width=f"{kind.width:g}", **_dashed(kind))
        subpaths: list[_Subpath] = []
        for item in same:
            if isinstance(item, Ring):
                centre = {"cx": f"{float(item.x):.2f}", "cy": f"{-float(item.y):.2f}"}
                group.append(element("circle", r=f"{float(item.radius):.2f}", **centre))
                continue
            start, end = (float(item.x1), float(item.y1)), (float(item.x2), float(item.y2))
            if subpaths and subpaths[-1][-1] == start:
                subpaths[-1].append(end)
            else:
                subpaths.append([start, end])
        if subpaths:
            group.append(element("path", d=_path(subpaths)))
        yield group


def _dashed(kind: LineType) -> dict[str, str]:
    if not kind.dashes:
        return {}
    return {"stroke_linecap": "butt", "stroke_dasharray": " ".join(f"{length:g}" for length in kind.dashes)}


def _path(subpaths: Iterable[_Subpath]) -> str:
    """Path commands, y downward."""
    return "".join("M" + "L".join(f"{x:.2f} {-y:.2f}" for x, y in points) for points in subpaths)
