"""Paper: every one either takes a kit or is refused."""

from __future__ import annotations

from io import BytesIO

import pikepdf
import pytest

from templategen import Options, kit_files, make_kit, make_plan, read_spec
from templategen.errors import Refusal
from templategen.papers import CATALOGUE
from tests.proof.crossing import margins, outside, piece_box
from tests.proof.kits import PANELS, spec_text

from .laws import kit_of

_TEXT = spec_text(PANELS["48 in, 3 loops, A4"])
_PLAN = make_plan(read_spec(_TEXT))


@pytest.mark.parametrize("name", CATALOGUE)
def test_every_paper_takes_a_kit_or_is_refused_by_name(name: str) -> None:
    """On rolls with a page of words: where a work order stands on those is tried in test_rolls, wide and narrow."""
    try:
        kit = kit_of(_TEXT, paper=name) if CATALOGUE[name].roll else make_kit(_PLAN, Options(paper=name))
    except Refusal as refusal:
        assert "too small" in str(refusal)
        assert CATALOGUE[name].width < CATALOGUE["a4"].width
    else:
        known = CATALOGUE[name]
        assert kit.paper.width == known.width
        assert kit.paper.height < known.height if known.roll else kit.paper.height == known.height


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


@pytest.mark.parametrize(
    ("name", "points"),
    [("letter-or-a4", (595.2756, 792)), ("4a0", (4767.874, 6740.787))],
)
def test_the_pages_of_the_file_are_the_paper_and_within_the_page_limit(name: str, points: tuple[float, float]) -> None:
    """14,400 units: ISO 32000-1, Annex C. In units of 1/72 in, 792 being eleven inches and 595.2756 being 210 mm."""
    _, files = kit_files(_PLAN, Options(paper=name))
    with pikepdf.open(BytesIO(files["kit.pdf"])) as pdf:
        for page in pdf.pages:
            left, bottom, right, top = map(float, page.mediabox)
            assert (left, bottom) == (0, 0) and (right, top) == pytest.approx(points, abs=0.001)
            assert right <= 14400 and top <= 14400


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
