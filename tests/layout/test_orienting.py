"""Orientation: upright, on its side, or whichever takes less paper; every page alike, margins where they are named."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import Phase, given, settings

from templategen import Options, make_kit, make_plan, read_spec
from templategen.errors import Refusal
from templategen.layout import Kit
from templategen.papers import CATALOGUE
from templategen.writers.kit_json import kit_record
from templategen.writers.pdf import pdf
from tests.proof.crossing import crossed, margins, outside
from tests.proof.kits import PANELS, spec_text

from .laws import alike, kit_of, kit_texts

PLAN = make_plan(read_spec(spec_text(PANELS["48 in, 3 loops, A4"])))
often = settings(max_examples=10, derandomize=True, deadline=None, phases=[Phase.explicit, Phase.generate])


def _kit(way: str, paper: str = "letter", **asked: Any) -> Kit:
    return make_kit(PLAN, Options(paper, orientation=way, **asked))


def _own(width: int, height: int, way: str | None) -> tuple[int, int]:
    """What becomes of a sheet of one's own size."""
    text = spec_text(PANELS["48 in, 3 loops, A4"])
    text = text.replace('name = "a4"', f'width = "{width} mm"\nheight = "{height} mm"')
    paper = make_kit(make_plan(read_spec(text)), Options(orientation=way)).paper
    return int(paper.width), int(paper.height)


def test_portrait_is_what_is_printed_without_a_word() -> None:
    """All but the record of what was asked for, which stands in the work order and in the fingerprint."""
    said, unsaid = _kit("portrait", only=("all",)), make_kit(PLAN, Options("letter", only=("all",)))
    assert [sheet for sheet in said.sheets if sheet.placed] == [sheet for sheet in unsaid.sheets if sheet.placed]
    records = [kit_record(kit) for kit in (said, unsaid)]
    assert records[0] | {"fingerprint": ""} == records[1] | {"fingerprint": ""}


@pytest.mark.parametrize("name", ["letter", "a4", "legal", "tabloid", "a3"])
def test_landscape_turns_the_page_and_its_margins_stay_with_their_sides(name: str) -> None:
    kit = _kit("landscape", name)
    upright = CATALOGUE[name]
    assert (kit.paper.name, kit.paper.width, kit.paper.height) == (name, upright.height, upright.width)
    assert list(outside(kit, margins(kit, 10, 10, 10, 18))) == []
    assert list(crossed(kit)) == []


@pytest.mark.parametrize("name", ["letter", "a3"])
def test_every_page_of_the_file_is_as_wide_as_the_turned_sheet(name: str) -> None:
    """Seen by a reader from outside; sizes in points of 1/72 in: ISO 32000-1, table 30."""
    import pypdfium2

    upright = CATALOGUE[name]
    with pypdfium2.PdfDocument(pdf(_kit("landscape", name), {})) as file:
        sizes = {tuple(round(side, 2) for side in page.get_size()) for page in file}
    points = Fraction(72) / Fraction(254, 10)
    assert sizes == {(round(float(upright.height * points), 2), round(float(upright.width * points), 2))}


@pytest.mark.parametrize(
    ("size", "sheets", "turned"),
    [((200, 330), {"portrait": 3, "landscape": 2, "least": 2}, True),
     ((216, 279), {"portrait": 2, "landscape": 3, "least": 2}, False)],
)  # fmt: skip
def test_least_takes_the_way_with_fewer_sheets(
    size: tuple[int, int], sheets: dict[str, int], turned: bool
) -> None:
    """The strip of 48 in is 1219 mm long and 58 mm deep, and a join takes 16 mm. Margins and bars leave 170 x 278 mm of
    a sheet of 200 x 330: two pieces of 278 side by side, or four of 170 one above the other. Turned they leave 300 x
    148 mm: two of 300. Four pieces of 300 are long enough, 4 x 284 + 16; four of 278 are not, nor eight of 170."""
    text = spec_text(PANELS["48 in, 3 loops, A4"])
    text = text.replace('name = "a4"', f'width = "{size[0]} mm"\nheight = "{size[1]} mm"')
    plan = make_plan(read_spec(text))
    kits = {way: make_kit(plan, Options(only=("spacing strip",), orientation=way)) for way in sheets}
    assert {way: len(kit.sheets) for way, kit in kits.items()} == sheets
    assert (kits["least"].paper.width > kits["least"].paper.height) == turned


@often
@given(kit_texts())
@alike
def test_least_is_never_more_than_either(text: str) -> None:
    sheets = {way: len(kit_of(text, way).sheets) for way in ("portrait", "landscape", "least")}
    assert sheets["least"] == min(sheets.values())


def test_a_sheet_of_ones_own_size_lies_as_written_unless_told() -> None:
    assert _own(430, 300, None) == (430, 300)
    assert _own(430, 300, "portrait") == _own(300, 430, "portrait") == (300, 430)
    assert _own(430, 300, "landscape") == _own(300, 430, "landscape") == (430, 300)


@pytest.mark.parametrize(("size", "lies"), [((142, 246), (142, 246)), ((160, 216), (216, 160))])
def test_least_takes_the_only_way_that_will_do(size: tuple[int, int], lies: tuple[int, int]) -> None:
    """Small sheets, which hold the hem gauge card one way up and not the other."""
    assert _own(*size, "least") == lies
    with pytest.raises(Refusal, match="too small"):
        _own(*size, "landscape" if lies == size else "portrait")


def test_a_sheet_too_small_either_way_is_refused_once() -> None:
    with pytest.raises(Refusal, match="too small") as refused:
        _own(120, 125, "least")
    assert len(refused.value.faults) == 1
