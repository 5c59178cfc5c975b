"""What is printed where two pieces meet, at either side of the match line."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from ...drawing import CAP, DESCENT, USUAL, Anchor, Item, Line, LineType, Look, Number, Outline, Ring, Text, width_of
from ...lengths import Length, Tape
from ..checks import Check, half_of
from ..pieces import TONGUE, TRIMMED, Join, Piece
from .signs import TOOTH, links_of, sign

RING = Fraction(5, 2)
"""Radius of a registration mark's ring, in mm."""
ARM = Fraction(7, 2)
"""Half of its cross, in mm."""
_HALF_A_SIGN = ARM
"""How far teeth and registration marks reach beyond the match line, in mm."""
LETTER = 14
_LETTER_BASE = 5.2
"""From the lane's top down to a letter's base line, in mm."""
DISTANCE = 9
_DISTANCE_BASE = 10.2
LARGE_BASES = (4.8, 10.8)
"""The same two in large print, as near to the lane's top and to each other as capitals of 18 points can stand."""
BESIDE = 6
"""From a match line to its letter and its distance, in mm: the points of the sign lie between."""
_BREATH = 3.5
_FROM_AN_EDGE = ARM + Fraction(1, 2)
"""From an outline to the nearest place for a registration mark, in mm."""
_TICK = 2
_CHECK_SIZES = (8, 7.5, 7)
_CHECK_OFF, _END_OFF = 1.5, 2.5
"""From a tick to its words, and from the template's end to the words about the whole, in mm."""
_LARGE_OFF = 2.5
"""From a tick to its words in large print, in mm."""
_LARGE_APART = 5.0
"""From the middle of a piece to such words in large print, which are to be told from those in its other half, in mm."""
_CHECK_OVER = 1.1
"""From the line of a check length up to the words over it, in mm: as far as letters reach below, and a little."""
_CHECK_STOPS = Fraction(5)
"""From a match line to where the line of a check length is interrupted, in mm: nothing but the sign and the
registration marks crosses a match line."""
_CAPS = 0.25
"""Height of a capital in mm for each point of type."""
_TAILS = 0.075
"""How far letters reach below the base line, likewise."""
_HINT_SIZE = 8
_CUT_OFF_SIZE = 7


def furniture(
    piece: Piece, outline: Outline, checks: Sequence[Check], tape: Tape, look: Look = USUAL
) -> list[Item]:
    """Everything that the joins of ``piece`` print on it, in the drawing's coordinates.

    ``outline`` is its drawing's; ``checks`` are those that begin, end or pass by on it.
    """
    items: list[Item] = []
    for join in piece.joins:
        trimmed_here = join is piece.left
        low, high = _reach(piece, outline, join.at)
        items.append(Line(LineType.TRIM if trimmed_here else LineType.MATCH, join.at, *_inward(piece, low, high, join)))
        for y in piece.drawing.registration:
            items += registration_mark(join.at, min(max(y, low + _FROM_AN_EDGE), high - _FROM_AN_EDGE))
        items += sign(links_of(piece.drawing, join.number), join.at, trimmed_here)
        items += _letter(piece, join, trimmed_here, tape, look)
        hint = _hint if look == USUAL else _large_hint
        items += hint(piece, join, trimmed_here, look)
    if piece.right:
        low, high = _reach(piece, outline, piece.end)
        items.append(Line(LineType.CUT, piece.end, low, piece.end, high))
    for check in checks:
        items += _check(piece, check, tape, look)
    return items


def registration_mark(x: Number, y: Number) -> list[Item]:
    """A ring with a cross in it: the printer's registration mark."""
    return [
        Ring(LineType.MARK, x, y, RING),
        Line(LineType.THIN, x - ARM, y, x + ARM, y),
        Line(LineType.THIN, x, y - ARM, x, y + ARM),
    ]


def distance_of(join: Join, tape: Tape) -> str:
    """How far a match line stands from the template's zero, as a tape reads: "at 31 1/4 in", "at 31 1/4 in +"."""
    reading = tape.read(Length(join.at))
    return f"at {reading.plain} {reading.sign}".rstrip()


def room_beside(join: Join, tape: Tape, look: Look = USUAL) -> float:
    """From a match line to where something else may stand in the lane, in mm."""
    wide = max(_wide(join, look), width_of(distance_of(join, tape), look.size(DISTANCE)))
    return BESIDE + wide + _BREATH


def room_beside_letter(join: Join, look: Look) -> float:
    """The same beside its letter alone, in mm."""
    return BESIDE + _wide(join, look) + _BREATH


def _wide(join: Join, look: Look) -> float:
    return width_of(join.label, look.size(LETTER), True)


def _reach(piece: Piece, outline: Outline, x: Fraction) -> tuple[Number, Number]:
    """How far the paper reaches at ``x``."""
    return outline.span(x) or (piece.drawing.low, piece.drawing.high)


def _inward(piece: Piece, low: Number, high: Number, join: Join) -> tuple[Number, Fraction, Number]:
    """The rest of a line at ``join`` that is drawn from the datum edge inward: its dashes begin there."""
    inner, outer = (low, high) if piece.drawing.inward > 0 else (high, low)
    return inner, join.at, outer


def _letter(piece: Piece, join: Join, trimmed_here: bool, tape: Tape, look: Look) -> Iterator[Item]:
    """The join's letter, and under it its distance, on the side of the match line that stays in sight."""
    top = float(piece.drawing.lane.high)
    x, anchor = (join.at + BESIDE, Anchor.START) if trimmed_here else (join.at - BESIDE, Anchor.END)
    letter, distance = (_LETTER_BASE, _DISTANCE_BASE) if look == USUAL else LARGE_BASES
    yield Text(x, top - letter, join.label, look.size(LETTER), anchor, bold=True)
    yield Text(x, top - distance, distance_of(join, tape), look.size(DISTANCE), anchor)


def _hint(piece: Piece, join: Join, trimmed_here: bool, look: Look) -> Iterator[Item]:
    """What to do with the paper beyond the match line: cut it off, or lay the neighbour on it.

    It is written beside the sign; where marks may stand there too, in the lane, which is free of them.
    """
    low, high = sorted(map(float, piece.drawing.lane if join.crowded else piece.drawing.registration))
    middle = (low + high) / 2
    if trimmed_here:
        off = (TRIMMED + float(_HALF_A_SIGN)) / 2
        yield Text(join.at - off + _CAPS * _CUT_OFF_SIZE / 2, middle, "cut off", _CUT_OFF_SIZE, Anchor.MIDDLE, turn=90)
        return
    words = (f"glue: piece {piece.number + 1}", "lies on this")
    lines = words if join.crowded else (" ".join(words),)
    largest = _HINT_SIZE if len(lines) == 1 else _CUT_OFF_SIZE
    size = min(largest, *(largest * (high - low - 1) / width_of(line, largest) for line in lines))
    pitch = 1.4 * _CAPS * size
    # Midway between the sign and the edge, all of it from the first line's capitals to the last one's tails.
    base = float(_HALF_A_SIGN + TONGUE) / 2 + (_CAPS - _TAILS) * size / 2 - pitch * (len(lines) - 1) / 2
    for i, line in enumerate(lines):
        yield Text(join.at + base + i * pitch, middle, line, size, Anchor.MIDDLE, turn=90)


def _large_hint(piece: Piece, join: Join, trimmed_here: bool, look: Look) -> Iterator[Item]:
    """The same in large print: nothing beyond a trim line, where there is no room; what is cut off has no sign of its
    own then but the line, which the key explains."""
    if trimmed_here:
        return
    low, high = sorted(map(float, piece.drawing.lane if join.crowded else piece.drawing.registration))
    size = look.size(_HINT_SIZE)
    for words in (f"glue: piece {piece.number + 1}", "glue"):
        if width_of(words, size) <= high - low - 1:
            # All of it, capitals and tails, midway between the teeth and the outline with their heavy lines.
            near = float(TOOTH) + look.width(LineType.MARK)
            far = float(TONGUE) - look.width(LineType.CUT) / 2
            base = (near + far) / 2 + size * (CAP - DESCENT) / 2
            yield Text(join.at + base, (low + high) / 2, words, size, Anchor.MIDDLE, turn=90)
            return


def _check(piece: Piece, check: Check, tape: Tape, look: Look) -> Iterator[Item]:
    """This piece's part of a check length: the line that a rule is laid along, the tick at its end, what it says."""
    y, sizes = check.height, tuple(dict.fromkeys(look.size(size) for size in _CHECK_SIZES))
    if not check.whole:
        left = piece.left.at + _CHECK_STOPS if piece.left else piece.start
        right = piece.right.at - _CHECK_STOPS if piece.right else piece.end
        yield Line(LineType.THIN, max(left, check.start), y, min(right, check.end), y)
        if check.first.number < piece.number < check.last.number:
            room = float(right - left) - 2 * _CHECK_OFF
            over = _CHECK_OVER
            if look != USUAL:
                # Words so high stand between the joins' distances, and their tails are longer.
                room -= 2 * max(room_beside(join, tape, look) for join in piece.joins)
                over = sizes[-1] * DESCENT + look.width(LineType.THIN)
            text, _ = _fitted(check.said_between, room, sizes)
            if text or look == USUAL:
                yield Text((left + right) / 2, y + over, text, sizes[-1], Anchor.MIDDLE)
    for at, holder, right_half in ((check.start, check.first, not check.whole), (check.end, check.last, check.whole)):
        if piece.number != holder.number:
            continue
        if not check.whole:
            yield Line(LineType.MARK, at, y - _TICK, at, y + _TICK)
        low, high = half_of(piece, right_half)
        # From a tick the words run away from the join; from the template's end they run inward.
        off = _END_OFF if check.whole else _CHECK_OFF if look == USUAL else _LARGE_OFF
        room = float(at - low if right_half else high - at) - off - (_CHECK_OFF if look == USUAL else _LARGE_APART)
        text, size = _fitted(check.said_on(piece), room, sizes)
        if text:
            x, anchor = (at - off, Anchor.END) if right_half else (at + off, Anchor.START)
            base = y - _CAPS * size / 2
            if look != USUAL:
                base = max(base, float(piece.drawing.lane.low) + size * DESCENT + 0.1)
            yield Text(x, base, text, size, anchor)


def _fitted(wordings: Sequence[str], room: float, sizes: Sequence[float]) -> tuple[str, float]:
    """The longest wording that there is room for, in the largest size that takes it; nothing where none fits."""
    for text in wordings:
        for size in sizes:
            if width_of(text, size) <= room:
                return text, size
    return "", 0
