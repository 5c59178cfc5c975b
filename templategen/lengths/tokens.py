"""The words of a written length: numerals, fractions, units, and what joins them.

Typographic forms (⅜, ³⁄₈, ″, a non-breaking hyphen, a thin space) are settled
here, so that the grammar in :mod:`.reading` meets one form of each thing.
"""

from __future__ import annotations

import difflib
import re
import unicodedata
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from ..errors import LengthError
from .units import Unit

LONGEST_TEXT = 100
"""Characters; the longest length anybody writes takes about forty."""
MOST_DIGITS = 15
"""In one number. Our choice: a thousand million kilometres in millimetres."""

Kind = Literal["number", "vulgar", "slash", "hyphen", "comma", "and", "unit"]


@dataclass(frozen=True, slots=True)
class Token:
    """One word of a length."""

    kind: Kind
    text: str
    spaced: bool
    """Whether a space stands before it."""
    value: Fraction = Fraction(0)
    """Of a number or a vulgar fraction."""
    unit: Unit | None = None
    """Of a unit."""

    @property
    def whole(self) -> bool:
        """Whether it is a numeral without decimals."""
        return self.kind == "number" and self.text.isdigit()


_SPELLINGS: dict[Unit, str] = {
    "in": "in ins inch inches",
    "ft": "ft foot feet",
    "yd": "yd yds yard yards",
    "mm": "mm mms millimetre millimetres millimeter millimeters ㎜",
    "cm": "cm cms centimetre centimetres centimeter centimeters ㎝",
    "m": "m mtr mtrs metre metres meter meters",
}
UNIT_WORDS: dict[str, Unit] = {word: unit for unit, words in _SPELLINGS.items() for word in words.split()}

_VULGAR = {
    character: Fraction(unicodedata.normalize("NFKC", character).replace("⁄", "/"))
    for character in "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒"
}
"""Every fraction that has a character of its own; Unicode's own decomposition says what it is worth."""
_HYPHENS = "\u2010\u2011\u2012\u2013"  # hyphen, non-breaking hyphen, figure dash, en dash
_RAISED = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉", "01234567890123456789")

_TOKEN = re.compile(
    r"""
    (?P<power>   [0-9][eE][+-]?[0-9] )
  | (?P<built>   (?: [⁰¹²³⁴-⁹]+ [/⁄∕] | ⅟ ) [₀-₉]+ )           # ³⁄₈ and ⅟₁₆
  | (?P<vulgar>  [½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒] )
  | (?P<number>  [0-9]+ (?: [.,][0-9]+ )*                        # 5   5.5   5,5
               | (?<![0-9A-Za-z])\.[0-9]+ | ^,[0-9]+ )           # .5  and, at the very start, ,5
  | (?P<slash>   [/⁄∕] )
  | (?P<hyphen>  - )
  | (?P<comma>   , )
  | (?P<inch>    ["″”“ʺ] | ['′’‘ʹ]{2} )
  | (?P<foot>    ['′’‘ʹ] )
  | (?P<word>    [A-Za-z]+ (?: \.(?![0-9]) )? | [㎜㎝] | & )     # "in." is a unit, "ft.5" is not
    """,
    re.VERBOSE,
)


def settle_characters(text: str) -> str:
    """Every kind of space as one space, every kind of hyphen as "-"; the ends trimmed."""
    for hyphen in _HYPHENS:
        text = text.replace(hyphen, "-")
    return " ".join(text.split())


def split_into_tokens(text: str) -> tuple[Token, ...]:
    """The words of ``text``, whose characters are settled and whose sign is gone.

    Raises LengthError at the first thing that is no part of a length.
    """
    tokens: list[Token] = []
    at = 0
    while at < len(text):
        if spaced := text[at] == " ":
            at += 1
        found = _TOKEN.match(text, at)
        if found is None:
            raise LengthError(_strange(text[at]))
        tokens.append(_token(found, spaced))
        at = found.end()
    return tuple(tokens)


def _token(found: re.Match[str], spaced: bool) -> Token:
    text = found[0]
    match found.lastgroup:
        case "power":
            raise LengthError("powers of ten are not read; write the number out, for example 1000 mm")
        case "built":
            over, under = re.split("[/⁄∕]", text.replace("⅟", "1/").translate(_RAISED))
            return Token("vulgar", text, spaced, fraction(over, under))
        case "vulgar":
            return Token("vulgar", text, spaced, _VULGAR[text])
        case "number":
            return Token("number", text, spaced, numeral(text))
        case "inch":
            return Token("unit", text, spaced, unit="in")
        case "foot":
            return Token("unit", text, spaced, unit="ft")
        case "slash":
            return Token("slash", text, spaced)
        case "hyphen":
            return Token("hyphen", text, spaced)
        case "comma":
            return Token("comma", text, spaced)
    return _word(text, spaced)


def _word(text: str, spaced: bool) -> Token:
    word = text.lower().removesuffix(".")
    if word in ("and", "&"):
        return Token("and", text, spaced)
    if unit := UNIT_WORDS.get(word):
        return Token("unit", text, spaced, unit=unit)
    if word in ("to", "or"):
        raise LengthError("that could be a range; write one length")
    if word in ("inf", "infinity", "nan"):
        raise LengthError(f"{word} is not a number; write a length, for example 54 in or 1370 mm")
    near = difflib.get_close_matches(word, UNIT_WORDS, n=1)
    meant = f"did you mean {near[0]}? Write" if near else "write"
    raise LengthError(f"“{word[:20]}” is not a unit known here; {meant} in, ft, yd, mm, cm or m")


def numeral(text: str) -> Fraction:
    """The value of a numeral, with a point or a comma before its decimals.

    A comma followed by exactly three digits, after one to three digits of
    which the first is not 0, may as well part the thousands: it is refused.
    "0,500" and "1234,500" can only be decimals, and are read as such.
    """
    if sum(character.isdigit() for character in text) > MOST_DIGITS:
        raise LengthError(f"a number here has at most {MOST_DIGITS} digits; write it with fewer")
    groups = re.split("[.,]", text)
    if len(groups) > 2:
        raise LengthError(f"{text} has more than one point or comma; write one number, {_plainer(groups)}")
    if re.fullmatch("[1-9][0-9]{0,2},[0-9]{3}", text):
        whole, decimals = groups
        raise LengthError(
            f"its comma could part thousands or decimals; write {whole}{decimals} or {whole}.{decimals}"
        )
    return Fraction(f"{groups[0] or 0}.{groups[1]}" if len(groups) == 2 else text)


def fraction(over: str, under: str) -> Fraction:
    """``over`` / ``under``, both whole numerals."""
    if not (over.isdigit() and under.isdigit()):
        raise LengthError(f"{over}/{under} has decimals in a fraction; write one or the other, 3/8 or 0.375")
    bottom = numeral(under)
    if bottom == 0:
        raise LengthError(f"{over}/{under} divides by nothing; write a fraction of a tape, for example 3/8")
    return numeral(over) / bottom


def _plainer(groups: list[str]) -> str:
    if len(groups) == 3 and len(groups[1]) == 3 and len(groups[2]) != 3:
        return f"for example {groups[0]}{groups[1]}.{groups[2]}"
    if all(len(group) == 3 for group in groups[1:]):
        return f"for example {''.join(groups)}"
    return f"for example {groups[0] or 0}.{groups[1]}"


def _strange(character: str) -> str:
    if character.isdigit() or unicodedata.category(character) in ("Nd", "No"):
        return f"“{character}” is not one of the digits 0 to 9; write the number with those"
    if character == ".":
        return "a point stands where none can be read; write 5.5 or 0.5, with a space after a unit"
    if character in "+−":
        return f"“{character}” stands inside the length; a sign can only stand before it, for example −1/2 in"
    invisible = unicodedata.name(character, "an invisible character")
    name = f"“{character}”" if character.isprintable() else invisible
    return f"{name} is no part of a length; write one number and its unit, for example 5 3/8 in or 137 mm"
