"""Self-describing names of media sizes: PWG 5101.1-2023, Media Standardized Names 2.1, section 5.

The grammar, from the text of ABNF definitions that goes with the standard::

    media-size-name = class "_" size-name "_" width-dim "x" length-dim ("in" | "mm")
    class           = "custom" | "roll"                            either unit
                    | "na" | "asme" | "roc" | "oe"                 in
                    | "iso" | "jis" | "jpn" | "prc" | "om"         mm
    length-dim      = dim | "0"                                    0: a roll

The size is what the name says it is, exactly. A name that the catalogue has
must have the catalogue's size as well.
"""

from __future__ import annotations

import re
from difflib import get_close_matches
from fractions import Fraction

from ..errors import PaperError
from ..lengths import MM_PER_INCH
from .catalogue import BY_PWG
from .paper import Paper, check_limits, roll_of

_DIM = r"[0-9]{1,12}(?:\.[0-9]{1,12})?"
_NAME = re.compile(
    rf"(?P<kind>[a-z]+)_(?P<size>[a-z0-9][a-z0-9.-]*)_(?P<wide>{_DIM})x(?P<high>{_DIM})(?P<unit>in|mm)"
)
_UNITS = {
    "custom": "", "roll": "", "na": "in", "asme": "in", "roc": "in", "oe": "in",
    "iso": "mm", "jis": "mm", "jpn": "mm", "prc": "mm", "om": "mm",
}  # fmt: skip
_UNIT_NAMES = {"in": "inches", "mm": "millimetres"}
_WHOLE = {name.rpartition("_")[0]: name for name in BY_PWG if not name.startswith(("choice", "roll"))}
_PATTERN = (
    "write class, name, width x height and unit with _ between them, "
    "iso_a4_210x297mm, or for a size of your own custom_banner_300x1200mm"
)


def described_paper(name: str) -> Paper:
    """The paper of a self-describing name, in small letters. Raises PaperError."""
    if name in BY_PWG:
        return BY_PWG[name]
    found = _NAME.fullmatch(name)
    if found is None:
        near = get_close_matches(name[:100], BY_PWG, 1, 0.7)
        hint = f"did you mean {near[0]}? " if near else ""
        raise PaperError(f"not a name as PWG 5101.1 has them; {hint}{_PATTERN}")
    kind, size, unit = found["kind"], found["size"], found["unit"]
    dims = f"{found['wide']}x{found['high']}"
    if kind not in _UNITS:
        raise PaperError(f"PWG 5101.1 has no class {kind}; for a size of your own write custom_{size}_{dims}{unit}")
    if right := _WHOLE.get(f"{kind}_{size}"):
        _hold_against(right, found)
        return BY_PWG[right]
    if unit not in (_UNITS[kind] or unit):
        raise PaperError(
            f"names of the class {kind} are in {_UNIT_NAMES[_UNITS[kind]]}; for a size of your own write "
            f"custom_{size}_{dims}{unit}"
        )
    one = MM_PER_INCH if unit == "in" else Fraction(1)
    width, height = Fraction(found["wide"]) * one, Fraction(found["high"]) * one
    if not height and kind == "roll":
        check_limits(width)
        return roll_of(width)
    if not height:
        raise PaperError(f"no height, which is right for a roll alone; write roll_{size}_{dims}{unit}")
    check_limits(width, height)
    return Paper(name, width, height, name)


def _hold_against(right: str, found: re.Match[str]) -> None:
    """Refuses a name of the catalogue with another size. The same size in another spelling, 11.0, is right."""
    paper = BY_PWG[right]
    one = MM_PER_INCH if found["unit"] == "in" else Fraction(1)
    if (Fraction(found["wide"]) * one, Fraction(found["high"]) * one) != (paper.width, paper.height):
        size = f"{found['size']}-own_{found['wide']}x{found['high']}{found['unit']}"
        raise PaperError(f"not the size of that paper; write {right}, or custom_{size} for a size of your own")
