"""How full the panels hang on their rod."""

from __future__ import annotations

from fractions import Fraction

from ..lengths import Length
from ..lengths.counting import plural
from ..spec import Spec
from .widths import made_count, made_width
from .wording import say, term


def run(spec: Spec) -> Length:
    """What the panels have to cover: rod + overlap + both returns (UFGS-12491N, drapery section)."""
    return spec.rod.length + spec.rod.overlap + 2 * spec.rod.returns


def share(spec: Spec) -> Length:
    """What one panel has to cover: its share of rod, overlap and both returns."""
    return run(spec) / made_count(spec)


def fullness(spec: Spec) -> Fraction:
    """Finished width of all the panels over the run; nought where there is no run."""
    covered = run(spec)
    return made_count(spec) * made_width(spec) / covered if covered.mm > 0 else Fraction(0)


def panels_for(spec: Spec, wanted: Fraction) -> int:
    """Panels of this width that give the fullness wanted."""
    return -(-(wanted * run(spec)).mm // made_width(spec).mm)


def fullness_working(spec: Spec) -> str:
    """How the fullness came about."""
    tape, rod = spec.tape, spec.rod
    beyond = [term(tape, 1, "overlap", rod.overlap)] if rod.overlap else []
    beyond += [term(tape, 1, "2 × return", rod.returns)] if rod.returns else []
    covered = " ".join([f"rod {say(tape, rod.length)}", *beyond])
    panels = f"{plural(made_count(spec), 'panel')} × {say(tape, made_width(spec))}"
    return f"{panels} ÷ {f'({covered})' if beyond else covered}"
