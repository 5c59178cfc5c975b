"""Thread: how much a seam takes, and what is reckoned besides.

Thread for a seam = its length × a factor of the stitch. Read in two extracts: a garment maker's procedure that takes
its table from Carr and Latham, The Technology of Clothing Manufacture, and from a thread maker (301: 2.5, 304: 7 times
the seam), and a worked example of the same table, a seam of 220 cm that takes 550 cm in stitch type 301.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction
from math import ceil

from ...lengths import NOTHING, Length, Tape, inches, millimetres
from .amounts import Seam, Way

FACTORS: Mapping[Way, Fraction] = {"machine": Fraction(5, 2), "zigzag": Fraction(7), "hand": Fraction(4)}
"""Thread for one length of seam. Lockstitch, ISO 4915 type 301, and zigzag, type 304: the table above. By hand: our
choice, because a backstitch lays the thread once along the front of the seam and twice along its back, and goes through
the cloth at every stitch."""

WASTE = Fraction(15, 100)
"""Added for ends, broken thread and trials: 10 to 15 % is added to what the factors give (the procedures above)."""

REEL = millimetres(100_000)
"""A usual reel for the household: common practice, no source."""

BUTTON_THREAD = inches(18)
"""Button thread for one ring or hook, sewn on by hand: our choice, because eight stitches of about 1/2 in, the winding
and two fastened ends take about 9 in of it doubled."""

_METRE, _YARD = millimetres(1000), inches(36)


def thread_for(seams: Iterable[Seam]) -> Length:
    """What seams of a known length take, the waste with it."""
    total = NOTHING
    for seam in seams:
        total = total + seam.total * FACTORS[seam.way]
    return total * (1 + WASTE)


def bought(tape: Tape, length: Length) -> str:
    """A length of thread as it is bought: whole yards or metres, rounded up."""
    unit, said = (_YARD, "yd") if tape.units == "inch" else (_METRE, "m")
    return f"{ceil(length / unit)} {said}"


def reel(tape: Tape) -> str:
    """What a reel holds: "109 yd (100 m)"; never more than it does."""
    metres = f"{REEL // _METRE} m"
    return f"{REEL // _YARD} yd ({metres})" if tape.units == "inch" else metres
