"""Drawing items to SVG inside a page: strokes and type in the colour of the words around them.

Words beside a picture have their places by one family's widths and no other's. So type is set as outlines, or as text
for a page that has that family to show it with. What is about something stands in one group that says so, after
everything that is about nothing, so that a page can point at it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby
from typing import Protocol, TypeAlias
from xml.etree.ElementTree import Element

from ..drawing import MM_PER_POINT, TURNS, Anchor, Item, Line, LineType, Ring, Solid, Text
from .elements import block, element, put
from .outlines import font

PAD = 0.6
"""Mm around a picture, so that half a line's width is not cut off at its edge."""
BOLD = "bold"
"""The class of text that the page has to show in the family's bold face."""
Tree: TypeAlias = "list[str | dict[str, str] | Tree]"
"""An element as data: its name, its attributes, and what it holds, texts and elements."""
_Subpath: TypeAlias = list[tuple[float, float]]
_ANCHORS = {Anchor.START: "start", Anchor.MIDDLE: "middle", Anchor.END: "end"}


class Lettering(Protocol):
    """A way to set type in a picture."""

    def set(self, text: Text) -> Element:
        """``text`` as an element."""


class Words:
    """Type as text, for a page that shows it in this family: its size is in the picture's mm."""

    def set(self, text: Text) -> Element:
        """``text`` in one piece where it is of one size; a built fraction's parts each have their own place."""
        size, upright = text.size * MM_PER_POINT, {"class_": BOLD} if text.bold else {}
        runs = list(text.runs())
        if len(runs) == 1:
            turned = _turned(text.turn, float(text.x), float(text.y))
            return element(
                "text", text.text, x=f"{float(text.x):.2f}", y=f"{-float(text.y) + 0:.2f}", font_size=f"{size:.3g}",
                text_anchor=_ANCHORS[text.anchor], **upright, **turned,
            )  # fmt: skip
        line = element("g", **upright)
        for run, x, y in runs:
            place = {"x": f"{x:.2f}", "y": f"{-y + 0:.2f}", "font_size": f"{run.size * MM_PER_POINT:.3g}"}
            held = run.text.replace(" ", "\N{NO-BREAK SPACE}")  # a blank at the end of a text would not be shown
            line.append(element("text", held, **place, **_turned(text.turn, x, y)))
        return line


def _turned(turn: int, x: float, y: float) -> dict[str, str]:
    return {"transform": f"rotate({-turn} {x:.2f} {-y + 0:.2f})"} if turn else {}


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


def picture(items: Sequence[Item], width: float, height: float, letters: Lettering, rem: float) -> Element:
    """Items in a box of this width and height in mm, from its top left corner; ``rem`` is how wide a mm is shown."""
    drawn = _box(width, height, style=f"width:{(width + 2 * PAD) * rem:.2f}rem")
    put(drawn, _parts(items, letters))
    return drawn


def tree(items: Sequence[Item], width: float, height: float) -> Tree:
    """The same as data, its type as text: no style, no names, nothing that points elsewhere."""
    drawn = _box(width, height)
    put(drawn, _parts(items, Words()))
    return _as_data(drawn)


def _box(width: float, height: float, **attributes: str) -> Element:
    box = (-PAD, -PAD, width + 2 * PAD, height + 2 * PAD)
    return element(
        "svg", viewBox=" ".join(f"{n:.5g}" for n in box), **attributes,
        fill="none", stroke="currentColor", stroke_linecap="round", stroke_linejoin="round",
    )  # fmt: skip


def _parts(items: Sequence[Item], letters: Lettering) -> Iterator[Element]:
    """What is about nothing, then all of each subject together, in the order in which they first come."""
    yield from _marks([item for item in items if not item.about], letters)
    for subject in dict.fromkeys(item.about for item in items if item.about):
        same = [item for item in items if item.about == subject]
        yield element("g", *_marks(same, letters), data_about=subject)


def _marks(items: Sequence[Item], letters: Lettering) -> Iterator[Element]:
    """Strokes, then what is filled."""
    yield from _strokes(items)
    filled = element("g", fill="currentColor", stroke="none")
    for item in items:
        if isinstance(item, Solid):
            filled.append(element("path", d=_path([[(float(x), float(y)) for x, y in item.points]]) + "z"))
        elif isinstance(item, Text):
            filled.append(letters.set(item))
    if len(filled):
        yield filled


def _as_data(node: Element) -> Tree:
    found: Tree = [node.tag, dict(node.attrib)]
    if node.text:
        found.append(node.text)
    for child in node:
        found.append(_as_data(child))
        if child.tail:
            found.append(child.tail)
    return found


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
