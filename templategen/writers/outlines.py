"""Glyph outlines of the one type family as SVG path commands."""

from __future__ import annotations

from functools import cache

from fontTools.pens.svgPathPen import SVGPathPen

from ..drawing.faces import face, opened


class Font:
    """Glyph outlines of one face, in font units."""

    def __init__(self, bold: bool) -> None:
        font = opened(face(bold).path)
        self._glyphs = font.getGlyphSet()
        self._names = font.getBestCmap()
        self.em: int = font["head"].unitsPerEm
        self.advances = face(bold).advances

    @cache  # noqa: B019 - the two fonts live as long as the process
    def outline(self, character: str) -> str:
        """The glyph's outline as SVG path commands; "" for a blank."""
        pen = SVGPathPen(self._glyphs)
        self._glyphs[self._names[ord(character)]].draw(pen)
        commands: str = pen.getCommands()
        return commands


@cache
def font(bold: bool) -> Font:
    """The regular or the bold face, read once."""
    return Font(bold)
