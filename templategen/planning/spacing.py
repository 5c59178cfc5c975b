"""Equal division from one zero."""

from __future__ import annotations

from ..lengths import Length, Tape


def pitch(width: Length, inset: Length, count: int) -> Length:
    """Centre to centre of ``count`` marks, two or more, the end ones ``inset`` from either edge."""
    return (width - 2 * inset) / (count - 1)


def positions(width: Length, inset: Length, count: int) -> tuple[Length, ...]:
    """Where the marks stand: inset + i (width - 2 inset) / (count - 1).

    Each is worked from the one zero, never stepped off: 114/29 in stepped as
    3 15/16 in is 3/16 in out at the far end.
    """
    span = width - 2 * inset
    return tuple(inset + span * i / (count - 1) for i in range(count))


def stepped_off(tape: Tape, pitch: Length, count: int) -> Length:
    """How far out the last of ``count`` marks comes where the pitch is stepped off as the tape shows it."""
    shown = Length(round(pitch.mm / tape.step.mm) * tape.step.mm)
    return abs(shown - pitch) * (count - 1)


def fewest(width: Length, inset: Length, limit: Length, least: int, most: int) -> int:
    """The fewest marks, an odd number between ``least`` and ``most``, no further apart than ``limit``."""
    span = width - 2 * inset
    spaces = -(-span.mm // limit.mm) if limit.mm > 0 else most
    count = max(least, int(spaces) + 1)
    return min(count if count % 2 else count + 1, most)
