"""Setting text: widths, built fractions, broken lines, characters that are not there."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont

from templategen.drawing import MM_PER_POINT, Anchor, Text, set_text, width_of, wrap
from templategen.drawing.faces import face
from templategen.errors import MissingGlyph

_LETTERS = st.text(alphabet=st.sampled_from("abcdefghij KLMNOP 0123456789 /-−.,"), max_size=60)


@pytest.mark.parametrize("bold", [False, True])
@pytest.mark.parametrize("text", ["Spacing strip", "finish line − hem", "Łódź, n° 5 × 2", ""])
def test_widths_agree_with_reportlabs_reading_of_the_font(text: str, bold: bool) -> None:
    chosen = face(bold)
    pdfmetrics.registerFont(TTFont(chosen.name, str(chosen.path)))
    assert width_of(text, 11, bold) == pytest.approx(pdfmetrics.stringWidth(text, chosen.name, 11) * MM_PER_POINT)


def test_a_fraction_is_built_of_a_raised_numerator_a_slash_and_a_denominator() -> None:
    whole, over, slash, under, unit = set_text("8 5/16 in", 12).runs
    assert (whole.text, over.text, slash.text, under.text, unit.text) == ("8", "5", "⁄", "16", " in")
    assert over.dy > 0 and under.dy == slash.dy == whole.dy == 0
    assert over.size == under.size < whole.size
    assert whole.dx < over.dx < slash.dx < under.dx < unit.dx


@pytest.mark.parametrize("text", ["1/2", "3 1/2", "11 15/16 −", "from 1/4 to 3/8"])
def test_fractions_are_found(text: str) -> None:
    assert sum(run.text == "⁄" for run in set_text(text, 10).runs) == text.count("/")


@pytest.mark.parametrize("text", ["and/or", "1/2/3", "A100.1", "http://x/1", "12/"])
def test_what_is_no_fraction_is_left_alone(text: str) -> None:
    assert [run.text for run in set_text(text, 10).runs] == [text]


@pytest.mark.parametrize("character", ["☐", "漢", "\t", "🙂"])
def test_a_character_that_the_font_lacks_is_refused_by_name(character: str) -> None:
    with pytest.raises(MissingGlyph, match=f"U\\+{ord(character):04X}"):
        set_text(f"a {character} b", 10)


@given(_LETTERS, st.floats(15, 120), st.sampled_from([8.0, 11.0, 20.0]))
def test_wrapped_lines_fit_and_lose_nothing(text: str, width: float, size: float) -> None:
    lines = wrap(text, size, width)
    assert all(width_of(line, size) <= width or len(line) == 1 for line in lines)
    assert "".join(lines).replace("\u00a0", " ").replace(" ", "") == text.replace(" ", "")


def test_a_line_is_not_broken_between_a_number_and_its_fraction_or_unit() -> None:
    text = "press a hem 4 5/8 in deep"
    for width in range(12, 60):
        lines = wrap(text, 11, width)
        if all(width_of(word, 11) <= width for word in ("4\u00a05/8\u00a0in", "press")):
            assert any("4\u00a05/8\u00a0in" in line for line in lines)


@pytest.mark.parametrize(("turn", "corner"), [(0, (0, 1)), (90, (-1, 0)), (180, (-1, -1)), (270, (0, -1))])
def test_a_turned_text_lies_on_the_side_it_is_turned_to(turn: int, corner: tuple[int, int]) -> None:
    bounds = Text(0, 0, "HH", 10, Anchor.START, turn=turn).bounds
    wide, tall = bounds.right - bounds.left, bounds.top - bounds.bottom
    assert (wide > tall) == (turn in (0, 180))
    reach_x = bounds.left if turn in (90, 180) else bounds.right
    reach_y = bounds.bottom if turn in (180, 270) else bounds.top
    assert abs(reach_x) > 0 and abs(reach_y) > 0
    assert (reach_x < 0) == (corner[0] < 0) and (reach_y < 0) == (corner[1] < 0)
