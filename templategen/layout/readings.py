"""What a bar measures when a page was printed at another size: each cause leaves its own number.

Ratios are exact, from the sizes of the papers: what a bar measures over what it says.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from ..bars import MOST_OFF
from ..document.blocks import Finding, Findings
from ..drawing import capitalised
from ..lengths import MM_PER_INCH, Tape
from ..lengths.showing import mixed_number
from ..misprints import TOLERANCE
from ..misprints import fitted as fitted_upright
from ..papers import CATALOGUE, Paper
from .furniture import BAR, FOUR_INCHES

RIGHT = TOLERANCE
"""By how much a bar may be out and be right."""
CORRECTABLE = MOST_OFF
"""What a printer is itself out by at most; beyond that a setting is to blame."""
SPILL = (1, 3)
"""How far borderless printing lets a page run over each edge, in mm: common practice, no source."""
UNPRINTABLE = ((3, 3, 3), (6, 6, 17))
"""Least and most that a printer leaves blank at each side, at the top and at the bottom, in mm. 17 mm at the bottom
is the most that printers are known to need; the others are common practice, no source."""
_USUAL_TRAY = ("letter", "a4")
_LARGE_TRAY = ("tabloid", "a3")
_TELLING = Fraction(3, 5), Fraction(3, 2)
"""From what to what ratio a page fitted on other paper is told of: our choice. Beyond it anybody sees it."""
_MOST_FITTED = 2
_LEAST_FROM_DIALOG = Fraction(9, 10)
"""Least ratio at which a printer is taken to fit one paper on another by itself: our choice, because papers that
differ by more are refused by printers, not fitted."""
_LARGE = 80_000
"""Area from which a page wants a large tray, in mm²: our choice, between legal and A3."""
_FINE = Fraction(1, 2), Fraction(1, 64)
_COARSE = Fraction(1), Fraction(1, 16)
"""Steps that ranges are told in, in mm and in inches: a cause that varies is told no finer than it can be known."""

Range = tuple[Fraction, Fraction]


def fitted(page: Paper, on: Paper) -> Fraction:
    """What a page measures over what it says when it is fitted on another paper, turned if that makes it larger."""
    return max(fitted_upright(page, on), fitted_upright(page, on.turned))


def shrunk(page: Paper) -> Range:
    """The same, fitted into what a printer can reach on its own paper: from least to most."""
    ratios = [
        min((page.width - 2 * side) / page.width, (page.height - top - bottom) / page.height)
        for side, top, bottom in UNPRINTABLE
    ]
    return min(ratios), max(ratios)


def spilled(page: Paper) -> Range:
    """The same, enlarged until the page runs over the edges: from least to most."""
    least, most = ((page.width + 2 * spill) / page.width for spill in SPILL)
    return least, most


def other_trays(page: Paper) -> list[tuple[Paper, Fraction]]:
    """The papers that a page is likeliest to be fitted on by mistake, with the ratio; the nearest first."""
    least, most = _TELLING
    names = _USUAL_TRAY + (_LARGE_TRAY if page.width * page.height > _LARGE else ())
    ratios = ((paper, fitted(page, paper)) for name in names for paper in [CATALOGUE[name]])
    telling = [(paper, ratio) for paper, ratio in ratios if least <= ratio <= most and ratio != 1]
    return sorted(telling, key=lambda pair: abs(1 - pair[1]))[:_MOST_FITTED]


def findings(page: Paper, tape: Tape, corrected: tuple[Fraction, Fraction]) -> Findings:
    """What the two bars may measure on a sheet of ``page``, what it means and what to do.

    Readings stand in the units of ``tape`` first; ``corrected`` is what the kit
    takes its printer to make of a length already, across and along.
    """
    inch = tape.units == "inch"
    head = "4 in bar, or 100 mm" if inch else "100 mm bar, or 4 in"
    rows = [*_of_settings(page, inch), _of_printer(inch, corrected)]
    return Findings((head, "What happened", "What to do"), tuple(rows))


def _of_settings(page: Paper, inch: bool) -> Iterator[Finding]:
    """The right size, and what the print dialog does to it."""
    yield Finding(
        _between((1 - RIGHT, 1 + RIGHT), inch, _FINE),
        "Right",
        "Print the other sheets with the same settings. Measure both bars on every one.",
    )
    yield from _of_other_paper(page, inch)
    yield Finding(
        _between(shrunk(page), inch, _COARSE),
        "Shrunk to what the printer reaches",
        "Choose “actual size” or 100 %, not “fit”, “shrink” or “printable area”.",
    )
    least, most = spilled(page)
    if most > 1 + 2 * RIGHT:
        yield Finding(
            _between((max(least, 1 + RIGHT), most), inch, _COARSE, above=1 + RIGHT),
            "Borderless printing",
            "Turn it off: it enlarges the page until it runs over the edges.",
        )


def _of_other_paper(page: Paper, inch: bool) -> Iterator[Finding]:
    """Other paper in the tray, and other paper in the dialog while the tray is right."""
    trays = other_trays(page)
    name = page.shown
    for other, ratio in trays:
        tray = other.shown
        yield Finding(
            _single(ratio, inch),
            f"{capitalised(name)} fitted on {tray}",
            f"The tray holds {tray}. Put {name} in and choose it in the dialog, or make the kit again for {tray}.",
        )
    for other, _ in trays[:1]:
        ratio = fitted(other, page)
        if _LEAST_FROM_DIALOG <= ratio < 1:
            tray = other.shown
            yield Finding(
                _single(ratio, inch),
                f"{capitalised(tray)} fitted on {name}",
                f"{capitalised(tray)} is chosen in the dialog, the tray holds {name}. Choose {name} in the dialog too.",
            )


def _of_printer(inch: bool, corrected: tuple[Fraction, Fraction]) -> Finding:
    """What is left when no setting is to blame: each axis by itself."""
    what = "what the bars of 100 mm measure"
    if set(corrected) != {1}:
        across, along = (f"{float(ratio):.4g}" for ratio in corrected)
        what += f", times {across} across and {along} along,"
    ratios = (1 - CORRECTABLE, 1 + CORRECTABLE)
    return Finding(
        _between(ratios, inch, _COARSE),
        "Anything else: the printer itself",
        f"Each way may differ. Write {what} under [printer] in the spec, and make the kit again. Beyond these, do not "
        "use the sheets: a setting is to blame.",
    )


def _single(ratio: Fraction, inch: bool) -> tuple[str, str]:
    """One ratio as the readings of both bars, that of the kit's own unit first."""
    metric = f"{float(BAR * ratio):.1f} mm"
    inches = f"{_rounded(_inches(ratio), Fraction(1, 64))} in"
    return (inches, metric) if inch else (metric, inches)


def _between(
    ratios: Range, inch: bool, steps: tuple[Fraction, Fraction], above: Fraction = Fraction(0)
) -> tuple[str, str]:
    """A range of them, to the nearest of these steps in mm and in inches, but beginning ``above`` a ratio."""

    def told(low: Fraction, high: Fraction, floor: Fraction, step: Fraction) -> tuple[Fraction, Fraction]:
        first = max(_nearest(low, step), (floor // step + 1) * step)
        return first, max(_nearest(high, step), first)

    low, high = ratios
    metric = " to ".join(f"{float(each):g}" for each in told(BAR * low, BAR * high, BAR * above, steps[0]))
    inches = " to ".join(map(mixed_number, told(_inches(low), _inches(high), _inches(above), steps[1])))
    both = f"{inches} in", f"{metric} mm"
    return both if inch else both[::-1]


def _rounded(number: Fraction, step: Fraction) -> str:
    return mixed_number(_nearest(number, step))


def _nearest(number: Fraction, step: Fraction) -> Fraction:
    return round(number / step) * step


def _inches(ratio: Fraction) -> Fraction:
    """What the bar of 4 in measures."""
    return FOUR_INCHES * ratio / MM_PER_INCH
