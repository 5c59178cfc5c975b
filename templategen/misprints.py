"""What a wrong print setting makes of a sheet, and which setting it most likely was.

A setting scales both ways of a sheet alike; a printer that is out by itself
seldom does. So two readings that agree with each other and with what the sizes
of papers make of a sheet are a setting's doing. Ratios are what was printed
over what was asked for.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import permutations

from .papers import CATALOGUE, Paper

TOLERANCE = Fraction(1, 200)
"""Half a millimetre in 100: as closely as bars are asked to be measured. Our choice, because it is what a steel rule
shows without a glass."""


@dataclass(frozen=True, slots=True)
class Misprint:
    """One way in which a sheet comes out at another size."""

    ratio: Fraction
    """Printed over asked, both ways; the least of them where ``most`` says that it varies."""
    what: str
    """What happened, so that it can follow "is": "an A4 page fitted on letter paper"."""
    right: str
    """What to do about it: "print at actual size, ..."."""
    most: Fraction | None = None
    made_for: str = ""
    """The name of the paper that the page was made for; "" where it can be any."""
    printed_on: str = ""
    """The name of the paper that was in the printer; "" where it was the same."""

    def far_from(self, ratio: Fraction) -> Fraction:
        """By how much ``ratio`` lies outside what this misprint makes."""
        return max(self.ratio - ratio, ratio - (self.most or self.ratio), Fraction(0))


_OFFICE = ("a4", "letter", "legal", "a3", "tabloid")
"""What printers at home and in offices hold."""


def fitted(page: Paper, sheet: Paper) -> Fraction:
    """What "fit to page" makes of a length: the largest at which ``page`` lies whole on ``sheet``."""
    return min(sheet.width / page.width, sheet.height / page.height)


def _fitted() -> list[Misprint]:
    found = []
    for page, sheet in permutations((CATALOGUE[name] for name in _OFFICE), 2):
        ratio = fitted(page, sheet)
        if ratio == 1:  # letter on legal: nothing to scale
            continue
        made_for, printed_on = page.shown, sheet.shown
        found.append(
            Misprint(
                ratio,
                f"{with_article(made_for)} page fitted on {printed_on} paper",
                f"print it on {made_for} paper at actual size, 100 %, or make the kit for {printed_on}",
                made_for=page.name,
                printed_on=sheet.name,
            )
        )
    return found


def with_article(name: str) -> str:
    """"a letter", "an A4", "an 8 x 10 in": a paper's name as a page is told by it."""
    return f"an {name}" if name[:1] in "aAeEiIoO8" else f"a {name}"


_NARROW, _HIGH = CATALOGUE["a4"].width, CATALOGUE["letter"].height
SHRUNK = Misprint(
    # A whole page inside what a printer reaches, margins alike on both sides. Common practice, no source:
    # 17 mm at the widest, which tells most over the height, 3 mm at the narrowest, over the width.
    1 - 2 * Fraction(17) / _HIGH,
    "a page shrunk to what the printer reaches",
    "print at actual size, 100 %, with nothing fitted and nothing shrunk",
    most=1 - 2 * Fraction(3) / _NARROW,
)
BORDERLESS = Misprint(
    # Enlarged to run over the sheet's edges. Common practice, no source: by 1 to 5 mm on each side.
    1 + 2 * Fraction(1) / _NARROW,
    "borderless printing, which enlarges",
    "switch borderless printing off and print at actual size, 100 %",
    most=1 + 2 * Fraction(5) / _NARROW,
)
MISPRINTS: tuple[Misprint, ...] = (*_fitted(), SHRUNK, BORDERLESS)
"""All that are known: those that follow from the sizes of papers, and those that lie within a range."""


def likely_misprints(
    across: Fraction | None, along: Fraction | None = None, made_for: str | None = None
) -> tuple[Misprint, ...]:
    """Those that make such ratios: the nearest, and others that make the very same.

    A ratio that was not measured is None. ``made_for`` is the name of the paper
    that the page was made for, where that is known. None where the ratios
    differ, since a setting scales both ways alike, and none where they are what
    was asked for.
    """
    ratios = [ratio for ratio in (across, along) if ratio is not None]
    if not ratios or max(ratios) - min(ratios) > TOLERANCE:
        return ()
    ratio = sum(ratios, Fraction(0)) / len(ratios)
    candidates = [
        (misprint.far_from(ratio), misprint.most is not None, misprint)
        for misprint in MISPRINTS
        if made_for is None or misprint.made_for in ("", made_for)
    ]
    near = [each for each in candidates if each[0] <= TOLERANCE and each[0] < abs(ratio - 1)]
    # What follows from the papers comes before what lies in a range.
    exact = [each for each in near if not each[1]] or near
    nearest = min((far for far, _, _ in exact), default=None)
    return tuple(misprint for far, _, misprint in exact if far == nearest)


def likely_cause(across: Fraction | None, along: Fraction | None = None, made_for: str | None = None) -> str | None:
    """What most likely made a sheet come out at these ratios, and what to do about it, in one clause.

    "94.07 % is an A4 page fitted on letter paper: ...". The arguments are those
    of :func:`likely_misprints`; None where nothing is known to do that.
    """
    likely = likely_misprints(across, along, made_for)
    if not likely:
        return None
    first, *others = likely
    alike = " or ".join(f"{CATALOGUE[other.made_for].shown} on {CATALOGUE[other.printed_on].shown}" for other in others)
    what = f"{first.what} (or {alike})" if alike else first.what
    amount = per_cent(first.ratio)
    if first.most is not None:
        amount = f"{float(first.ratio) * 100:.0f} to {float(first.most) * 100:.0f} %"
    return f"{amount} is {what}: {first.right}"


def per_cent(ratio: Fraction | float) -> str:
    """"94.07 %"."""
    return f"{float(ratio) * 100:.2f} %"
