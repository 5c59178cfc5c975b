"""Paper: sizes held against two tables from outside, and every paper either takes a kit or is refused."""

from __future__ import annotations

import warnings
from fractions import Fraction

import pytest
from reportlab.lib import pagesizes

from templategen import Options, make_kit, make_plan, read_spec
from templategen.errors import Refusal
from templategen.papers import CATALOGUE
from tests.proof.crossing import margins, outside, piece_box
from tests.proof.kits import PANELS, spec_text

with warnings.catch_warnings():
    warnings.simplefilter("ignore")  # what SWIG's own types say of themselves on import
    import pymupdf

_PLAN = make_plan(read_spec(spec_text(PANELS["48 in, 3 loops, A4"])))


def test_the_usual_papers_are_known() -> None:
    assert {"letter", "a4", "legal", "tabloid", "a3"} <= set(CATALOGUE)


@pytest.mark.parametrize("name", CATALOGUE)
def test_a_paper_is_as_large_as_another_library_says(name: str) -> None:
    """In points, which that library rounds to whole ones."""
    if name in pymupdf.paper_sizes():
        paper = CATALOGUE[name]
        points = float(paper.width) / 25.4 * 72, float(paper.height) / 25.4 * 72
        assert pymupdf.paper_size(name) == pytest.approx(points, abs=1)


@pytest.mark.parametrize(
    ("name", "theirs"),
    [
        ("letter", pagesizes.letter), ("legal", pagesizes.legal), ("tabloid", pagesizes.TABLOID),
        *((f"a{size}", getattr(pagesizes, f"A{size}")) for size in range(6)),
    ],
)
def test_a_paper_is_as_large_as_a_third_library_says(name: str, theirs: tuple[float, float]) -> None:
    paper = CATALOGUE[name]
    assert sorted(theirs) == pytest.approx([float(paper.width) / 25.4 * 72, float(paper.height) / 25.4 * 72], abs=0.01)


def test_american_papers_are_whole_parts_of_an_inch() -> None:
    inch = Fraction(254, 10)
    assert (CATALOGUE["letter"].width / inch, CATALOGUE["letter"].height / inch) == (Fraction(17, 2), 11)
    assert (CATALOGUE["ansi-e"].width / inch, CATALOGUE["ansi-e"].height / inch) == (34, 44)


@pytest.mark.parametrize("name", CATALOGUE)
def test_every_paper_takes_a_kit_or_is_refused_by_name(name: str) -> None:
    try:
        kit = make_kit(_PLAN, Options(paper=name))
    except Refusal as refusal:
        assert "too small" in str(refusal)
        assert CATALOGUE[name].width < CATALOGUE["a4"].width
    else:
        assert (kit.paper.width, kit.paper.height) == (CATALOGUE[name].width, CATALOGUE[name].height)


@pytest.mark.parametrize("size", [(90, 90), (120, 180), (150, 150), (160, 300), (210, 210), (430, 140), (900, 900)])
def test_a_paper_of_ones_own_takes_a_kit_or_is_refused(size: tuple[int, int]) -> None:
    named = f'name = "{PANELS["48 in, 3 loops, A4"].paper}"'
    own = f'width = "{size[0]} mm"\nheight = "{size[1]} mm"'
    plan = make_plan(read_spec(spec_text(PANELS["48 in, 3 loops, A4"]).replace(named, own)))
    try:
        kit = make_kit(plan)
    except Refusal as refusal:
        assert "too small" in str(refusal)
    else:
        assert (kit.paper.width, kit.paper.height) == size


def test_an_unknown_paper_is_refused_with_the_nearest_name() -> None:
    with pytest.raises(Refusal, match="letter"):
        make_kit(_PLAN, Options(paper="leter"))


@pytest.mark.parametrize("name", ["letter", "a4", "legal", "tabloid", "a3"])
def test_margins_are_the_users_side_by_side(name: str) -> None:
    """Nothing is drawn in them, and what they leave is used."""
    left, right, top, bottom = 21, 4, 13, 6
    asked = f'[paper.margins]\nleft = "{left} mm"\nright = "{right} mm"\ntop = "{top} mm"\nbottom = "{bottom} mm"\n'
    text = f"{spec_text(PANELS['48 in, 3 loops, A4'])}\n{asked}"
    kit = make_kit(make_plan(read_spec(text)), Options(paper=name))
    assert list(outside(kit, margins(kit, left, right, top, bottom))) == []
    boxes = [piece_box(placed) for sheet in kit.sheets for placed in sheet.placed]
    assert min(box.left for box in boxes) == left
