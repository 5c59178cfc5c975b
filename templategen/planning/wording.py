"""Lengths put into sentences: every number shown by the tape from its own exact value."""

from __future__ import annotations

from ..lengths import Length, Tape

_REMARKS = {"": "", "+": " (a hair over)", "−": " (a hair under)"}


def say(tape: Tape, length: Length) -> str:
    """A length inside a sentence: ``8 5/16 in (a hair over)``."""
    reading = tape.read(length)
    return f"{reading.plain}{_REMARKS[reading.sign]}"


def near(tape: Tape, length: Length) -> str:
    """A length in a notice, where a hair does not matter: ``8 5/16 in``, ``about 8 5/16 in``, ``less than 1/16 in``."""
    reading = tape.read(length)
    if length and not reading.value:
        return f"less than {tape.read(tape.step).plain}"
    return f"{'about ' if reading.sign else ''}{reading.plain}"


def beside_the_rod(tape: Tape, offset: Length) -> str:
    """Where a top edge hangs: "1 in below the top of the rod", "level with the top of the rod"."""
    if not offset:
        return "level with the top of the rod"
    return f"{near(tape, abs(offset))} {'below' if offset.mm > 0 else 'above'} the top of the rod"


def at_least(tape: Tape, length: Length) -> str:
    """A length that must be reached, shown rounded up to the tape's step so that what is read will do."""
    return say(tape, Length(-(-length.mm // tape.step.mm) * tape.step.mm))


def at_most(tape: Tape, length: Length) -> str:
    """A length not to be passed, shown rounded down to the tape's step; as it is where nothing is left."""
    down = Length(length.mm // tape.step.mm * tape.step.mm)
    return say(tape, down if down.mm > 0 else length)


def term(tape: Tape, sign: int, label: str, length: Length) -> str:
    """One term of a sum, ``− hem 4 in``; a negative length turns its sign round."""
    shown = "+" if (length.mm < 0) == (sign < 0) else "−"
    return f"{shown} {label} {say(tape, abs(length))}"


def stepping(tape: Tape, out: Length) -> str:
    """What stepping off a rounded pitch would do, to follow the pitch's working; nothing where it does none."""
    return f"; stepped off as it is shown, the last would come {say(tape, out)} out" if out >= tape.step else ""


def decimal(ratio: float) -> str:
    """A ratio to two places, without idle zeros: ``1.5``, ``3.6``, ``0.97``."""
    return f"{ratio:.2f}".rstrip("0").rstrip(".")
