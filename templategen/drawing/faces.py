"""The one type family, read from its font files: widths, heights, and what glyphs it has."""

from __future__ import annotations

import logging
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from fontTools.ttLib import TTFont

# Lato's files bear a creation date that fontTools remarks on at every opening.
logging.getLogger("fontTools.ttLib.tables._h_e_a_d").setLevel(logging.ERROR)

_PACKAGE = Path(__file__).resolve().parent.parent
_FILES = {False: "Lato-Regular.ttf", True: "Lato-Bold.ttf"}


@dataclass(frozen=True, slots=True)
class Face:
    """One face of the family. Widths and heights are in ems."""

    name: str
    path: Path
    advances: dict[str, float]
    """Each character that the face can show, and how far it moves the pen."""
    cap_height: float


@cache
def face(bold: bool) -> Face:
    """The regular or the bold face, read once."""
    path = _font_file(_FILES[bold])
    font = opened(path)
    em = font["head"].unitsPerEm
    widths = font["hmtx"].metrics
    advances = {chr(code): widths[glyph][0] / em for code, glyph in font.getBestCmap().items()}
    return Face(path.stem, path, advances, font["OS/2"].sCapHeight / em)


@cache
def opened(path: Path) -> TTFont:
    """The font file at ``path``, its tables read as they are needed.

    Glyphs are called by their numbers: to read thousands of names that nobody
    asks for would take longer than all else that is done with the font.
    """
    font = TTFont(path, lazy=True)
    font.setGlyphOrder([f"glyph{number}" for number in range(font["maxp"].numGlyphs)])
    return font


def _font_file(name: str) -> Path:
    """A wheel carries fonts/ inside the package; in a checkout it stands beside it."""
    for folder in (_PACKAGE / "fonts", _PACKAGE.parent / "fonts"):
        if (folder / name).is_file():
            return folder / name
    raise FileNotFoundError(f"the font {name} is missing from this installation of templategen")
