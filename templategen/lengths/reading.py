"""Reading a length that a person typed: exactly, or not at all.

The grammar, in the words of :mod:`.tokens`::

    length   = [sign] part { joint part } [remark]
    joint    = "" | "," | "and" | "-"          "-" only as in 6'-2"
    part     = amount ["-"] unit               the unit left out: the bare unit, in a length of one part
    amount   = whole | decimal | fraction | whole ["-" | "and"] fraction
    fraction = whole "/" whole | ⅜ | ³⁄₈
    sign     = "+" | "-" | "−"
    remark   = [","] ("a hair over" | "a hair under")

Parts come largest unit first, all in feet and inches or all metric; only the
last may have a fraction or decimals, and each is less than one of the unit
before it. A remark is what :class:`.Tape` says beside a reading; the reading
is taken as it is shown. Whatever else might be meant is refused, never guessed.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from itertools import pairwise

from ..errors import LengthError
from .length import NOTHING, Length
from .showing import mixed_number
from .tokens import LONGEST_TEXT, Kind, Token, fraction, settle_characters, split_into_tokens
from .units import INCH_UNITS, METRIC_UNITS, Unit, length_of

_REMARK = re.compile(r" ?,? ?a hair (over|under)$", re.IGNORECASE)
_SIGNS = {"+": 1, "-": -1, "−": -1}
_EXAMPLE = "for example 5 3/8 in or 137 mm"


def read_length(text: str, bare_unit: Unit | None = None) -> Length:
    """The length that ``text`` writes.

    ``bare_unit`` is the unit of a number that has none; where it is None, such
    a number is refused. Raises LengthError, whose message says what is wrong
    and what would be right; whether a length may be negative is not asked here.
    """
    if len(text) > LONGEST_TEXT:
        raise LengthError(
            f"{len(text)} characters, beginning “{text[:30]}”: a length has at most {LONGEST_TEXT}; write it "
            "as one number and its unit"
        )
    return _read(text, bare_unit)


@lru_cache(maxsize=1024)
def _read(text: str, bare_unit: Unit | None) -> Length:
    """Remembered: a form that is being filled in is read again, whole, at every key."""
    body = _REMARK.sub("", settle_characters(text))
    sign = _SIGNS.get(body[:1])
    if sign is not None:
        body = body[1:].lstrip()
    if not body:
        raise LengthError(f"there is no length here; write a number and its unit, {_EXAMPLE}")
    parts = _Parser(split_into_tokens(body)).parts()
    return _total(_with_units(parts, bare_unit)) * (sign or 1)


@dataclass(frozen=True, slots=True)
class _Part:
    amount: Fraction
    unit: Unit | None

    def __str__(self) -> str:
        return f"{mixed_number(self.amount)} {self.unit or ''}".rstrip()


class _Parser:
    """Walks the tokens once, from left to right."""

    def __init__(self, tokens: tuple[Token, ...]) -> None:
        self._tokens = tokens
        self._at = 0

    def parts(self) -> tuple[_Part, ...]:
        parts = [self._part()]
        while self._at < len(self._tokens):
            self._pass_joint(parts[-1])
            parts.append(self._part())
        return tuple(parts)

    def _peek(self, ahead: int = 0) -> Token | None:
        at = self._at + ahead
        return self._tokens[at] if at < len(self._tokens) else None

    def _is(self, kind: Kind, ahead: int = 0) -> bool:
        token = self._peek(ahead)
        return token is not None and token.kind == kind

    def _take(self) -> Token:
        self._at += 1
        return self._tokens[self._at - 1]

    def _tight(self, ahead: int = 0) -> bool:
        """Whether the token there has no space on either side."""
        here, after = self._peek(ahead), self._peek(ahead + 1)
        return here is not None and after is not None and not here.spaced and not after.spaced

    def _fraction_ahead(self, ahead: int = 0) -> bool:
        return self._is("vulgar", ahead) or (self._is("number", ahead) and self._is("slash", ahead + 1))

    def _part(self) -> _Part:
        amount = self._amount()
        if self._is("hyphen") and self._tight() and self._is("unit", 1):  # 54-inch
            self._take()
        if self._is("unit"):
            return _Part(amount, self._take().unit)
        if self._peek() is not None:
            self._refuse_after(amount)
        return _Part(amount, None)

    def _amount(self) -> Fraction:
        if self._fraction_ahead():
            return self._fraction()
        if not self._is("number"):
            token = self._peek()
            found = f"“{token.text}” stands" if token else "the text ends"
            raise LengthError(f"{found} where a number should; write a number and its unit, {_EXAMPLE}")
        whole = self._take()
        joined = self._is("and") or (self._is("hyphen") and self._tight())
        if not self._fraction_ahead(int(joined)):
            return whole.value
        if joined:
            self._take()
        part = self._fraction()
        if not whole.whole:
            raise LengthError(f"{whole.text} has decimals and a fraction after them; write one or the other")
        if part >= 1:
            raise LengthError(
                f"a fraction after a whole number must be less than one; "
                f"{whole.text} and {part} would be written {mixed_number(whole.value + part)}"
            )
        return whole.value + part

    def _fraction(self) -> Fraction:
        first = self._take()
        if first.kind == "vulgar":
            return first.value
        self._take()  # the slash
        if not self._is("number"):
            raise LengthError("a fraction ends at its stroke; write both its numbers, for example 3/8")
        value = fraction(first.text, self._take().text)
        if self._is("slash"):
            raise LengthError("a fraction has one stroke; write, for example, 3/8")
        return value

    def _refuse_after(self, amount: Fraction) -> None:
        """Says what is wrong where a unit should stand and something else does."""
        token = self._peek()
        assert token is not None
        if token.kind == "hyphen":
            raise LengthError(
                "a dash there could mean a range; write one length (a dash only as in 5-3/8 in)"
            )
        before = self._tokens[self._at - 1]
        if before.kind == token.kind == "number" and not self._fraction_ahead():
            raise LengthError(
                f"{before.text} {token.text}: two numbers stand side by side; write one, "
                f"{before.text}{token.text}, or a fraction, {_EXAMPLE}"
            )
        if token.kind in ("number", "vulgar"):
            raise LengthError(f"a second fraction follows {mixed_number(amount)}; write one, {_EXAMPLE}")
        raise LengthError(f"“{token.text}” stands where a unit should; write a length, {_EXAMPLE}")

    def _pass_joint(self, before: _Part) -> None:
        if self._is("comma") or self._is("and"):
            self._take()
        elif self._is("hyphen"):
            if not (self._tight() and before.unit in ("ft", "yd")):
                raise LengthError("a dash between two lengths could mean a range; write one length")
            self._take()


_NEXT_SMALLER: dict[Unit | None, Unit] = {"yd": "ft", "ft": "in", "m": "cm", "cm": "mm"}


def _with_units(parts: tuple[_Part, ...], bare_unit: Unit | None) -> tuple[_Part, ...]:
    last = parts[-1]
    if last.unit is not None:
        return parts
    if len(parts) > 1:
        guess = _Part(last.amount, _NEXT_SMALLER.get(parts[-2].unit, "in"))
        written = " ".join(map(str, (*parts[:-1], guess)))
        raise LengthError(f"the last number, {last}, has no unit; write {written} if that is what is meant")
    if bare_unit is None:
        raise LengthError(f"{last} has no unit; write {last} in or {last} mm")
    return (_Part(last.amount, bare_unit),)


def _total(parts: tuple[_Part, ...]) -> Length:
    """The parts added up, once their order and their sizes have been found right."""
    total = NOTHING
    for part in parts:
        assert part.unit is not None
        total += length_of(part.amount, part.unit)
    if len(parts) > 1:
        _check_order(parts)
        _check_sizes(parts, total)
    return total


def _check_order(parts: tuple[_Part, ...]) -> None:
    units = [part.unit for part in parts]
    for order in (INCH_UNITS, METRIC_UNITS):
        if not set(units) <= set(order):
            continue
        if len(set(units)) < len(units):
            raise LengthError(f"a unit comes twice in one length; write one length, {_EXAMPLE}")
        right = sorted(parts, key=lambda part: order.index(part.unit))
        if right != list(parts):
            raise LengthError(f"the largest unit comes first; write {' '.join(map(str, right))}")
        return
    raise LengthError("inches and metric units are mixed in one length; write it in one of them")


def _check_sizes(parts: tuple[_Part, ...], total: Length) -> None:
    smallest = parts[-1].unit
    assert smallest is not None
    plain = f"{mixed_number(total / length_of(Fraction(1), smallest))} {smallest}"
    for part in parts[:-1]:
        if part.amount.denominator != 1:
            raise LengthError(
                f"only the last number of a length may have a fraction, and {part} has one; "
                f"write {plain} if that is what is meant"
            )
    for larger, smaller in pairwise(parts):
        assert larger.unit is not None and smaller.unit is not None
        if length_of(smaller.amount, smaller.unit) >= length_of(Fraction(1), larger.unit):
            raise LengthError(
                f"{smaller} is as much as 1 {larger.unit} or more; write {plain} if that is what is meant"
            )
