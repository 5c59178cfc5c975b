"""The error budget in words: nothing said is better than it is, and every sentence is one that people can act on."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from templategen.drawing import Drawing, Mark
from templategen.layout import Correction
from templategen.layout.budget_words import (
    first_page_lines,
    plan_lines,
    step_of,
    tell,
    tell_closing,
    tell_parts,
    tell_remedy,
)
from templategen.layout.error_budget import TOLERANCE, Budget, Closing, budget_of
from templategen.lengths import Tape
from tests.proof.kits import PANELS, made

from .laws import drawings
from .taping import cut

TAPES = (Tape.of("inch"), Tape.of("metric"))
CLOSING = Closing(Fraction(13716, 10), 6, 2.0, 4.5, Mark("7", Fraction(1000)), 3.61, 2.02)
STRIP = Budget(
    "spacing strip", Mark("9", Fraction(26797, 20)), frozenset({90}), 6.7, 3.35, 6.7, 2.92, 1.75, 0.525, 13.55, 57.6,
    25.4, CLOSING,
)  # fmt: skip
CARD = replace(STRIP, template="hem gauge card", mark=Mark("fold line", Fraction(200)), closing=None)
LEAST = replace(CARD, printer=0, eye=0, rule=0, joins=0, turning=0, likely=0.5)


def test_a_taped_template_in_inches() -> None:
    assert tell(STRIP, TAPES[0]) == (
        "Spacing strip: taped, and measured from end to end, every mark comes within 5/32 in (3.7 mm) at worst, two "
        "thirds of the 1/4 in (6.35 mm) that the work is held to, and within 3/32 in 99 times in 100. By the bars "
        "alone mark 9, 52 3/4 in from its zero, comes within 7/8 in (22.0 mm), and within 9/16 in 99 times in 100."
    )


def test_a_template_in_one_piece_in_millimetres() -> None:
    assert tell(LEAST, TAPES[1]) == (
        "Hem gauge card: “fold line”, 200 mm from its zero, comes within 0.6 mm at worst, a quarter of the 6.35 mm "
        "(1/4 in) that the work is held to, and within 0.5 mm 99 times in 100."
    )


def test_more_than_the_work_is_held_to_is_said_in_times() -> None:
    assert "comes within 22.0 mm at worst, 3.5 times the 6.35 mm (1/4 in)" in tell(CARD, TAPES[1])


def test_what_to_measure_and_what_to_do_where_it_is_out() -> None:
    assert tell_closing(STRIP, TAPES[0]) == [
        "Spacing strip: lay it taped to a straight edge, on the day it is used, and measure it from end to end. It "
        "must be 54 in. Up to 1/16 in more or less, its 6 joins are good.",
        "Up to 5/32 in, every mark still comes within 1/4 in (6.35 mm).",
    ]
    assert tell_closing(CARD, TAPES[0]) == []
    assert tell_remedy(STRIP) == (
        "If it is out by more, and every join right, it is the printer: multiply what the bar along measured (100 mm, "
        "if nothing is written under [printer]) by what the template measures, divide by what it must be, write that "
        "under [printer] and make the kit again."
    )
    assert tell_remedy(CARD) == ""


@pytest.mark.parametrize(("usable", "said"), [(None, True), (1.5, True), (2.0, False), (4.5, False)])
def test_too_many_joins_are_told_of(usable: float | None, said: bool) -> None:
    sentences = tell_closing(replace(STRIP, closing=replace(CLOSING, usable=usable)), TAPES[1])
    assert any("measure every mark from the zero as well" in sentence for sentence in sentences) == said
    assert any("still comes within" in sentence for sentence in sentences) == (usable == 4.5)


def test_which_bar_to_put_right_is_said_where_one_alone_may_be_wrong() -> None:
    across, both = replace(STRIP, turns=frozenset({0})), replace(STRIP, turns=frozenset({0, 90}))
    assert "what the bar across measured" in tell_remedy(across)
    assert tell_remedy(both) == ""


@pytest.mark.parametrize("written", [Fraction(100), Fraction(1012, 10)])
def test_what_to_write_under_printer_puts_it_right(written: Fraction) -> None:
    """A printer at 99.5 %, corrected for 100 or wrongly for 101.2 mm: the rule followed to the letter makes it true."""
    printer, length = Fraction(995, 1000), CLOSING.length

    def printed(bar: Fraction) -> Fraction:
        return Correction(along=bar / 100).on_page(Fraction(0), length)[1] * printer

    assert printed(written) != length
    assert printed(written * printed(written) / length) == length


def test_how_the_worst_came_about() -> None:
    assert tell_parts(STRIP) == (
        "printer 6.7 + misread bars 3.4 + rule 6.7 + joins 2.9 + turns at joins 1.8 + pencil 0.5 = 21.9 mm"
    )
    assert tell_parts(LEAST) == "pencil 0.5 = 0.5 mm"


def _lengths_in(sentence: str) -> list[float]:
    """Every length in a sentence, in mm, as a person reads it: a reader of its own."""
    found = re.findall(r"(?:within|Up to) ((?:\d+ )?\d+/\d+|\d+(?:\.\d+)?) (in|mm)", sentence)
    return [float(sum(map(Fraction, number.split()))) * (25.4 if unit == "in" else 1) for number, unit in found]


@settings(max_examples=40, derandomize=True, deadline=None)
@given(drawings(), st.integers(1, 9), st.sampled_from(TAPES))
def test_nothing_said_is_better_than_it_is(drawing: Drawing, pieces: int, tape: Tape) -> None:
    places = [drawing.start + drawing.length * Fraction(i, pieces) for i in range(1, pieces)]
    budget = budget_of(cut(drawing, places), [0] * pieces, step=step_of(tape))
    said = _lengths_in(tell(budget, tape))
    closing = budget.closing
    true = [closing.worst, closing.likely, budget.worst, budget.likely] if closing else [budget.worst, budget.likely]
    assert len(said) == len(true)
    division = 25.4 / 32 if tape.units == "inch" else 0.1
    assert all(0 <= told - meant < division + 1e-6 for told, meant in zip(said, true, strict=True))
    if closing:
        passes = _lengths_in(" ".join(tell_closing(budget, tape)))
        assert passes[0] == pytest.approx(closing.tolerance)
        if closing.usable is not None and closing.usable > closing.tolerance:
            assert passes[1:] == pytest.approx([closing.usable, float(TOLERANCE)])


@pytest.mark.parametrize("panel", list(PANELS))
def test_the_plan_section_fits_its_columns_and_the_first_page_names_every_taped_template(panel: str) -> None:
    kit, tape = made(PANELS[panel]).kit, made(PANELS[panel]).plan.tape
    found = kit.budgets
    lines = plan_lines(found, tape)
    assert max(map(len, lines)) <= 96
    assert sum(line.startswith("  ") and not line.startswith("   ") for line in lines) == len(found)
    taped = [budget for budget in found if budget.closing]
    assert len(first_page_lines(found, tape)) == len(taped) >= 1
