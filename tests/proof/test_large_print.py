"""Large print on paper: the same marks in the same places to a tenth of a millimetre, larger type, heavier lines.

What is at least 18 points is the size that a text is set in; the figures of a built fraction are smaller than the text
they stand in, as in any print.
"""

from __future__ import annotations

import json
import re
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

import pymupdf
import pytest

from templategen import Options, kit_files, make_plan, read_spec
from templategen.drawing import LARGE, USUAL, Line, LineType, Ring, Text
from templategen.layout import WORDS, Kit
from templategen.planning import Plan
from templategen.remaking import carried_by

from .crossing import crossed, margins, outside
from .kits import PANELS, spec_text
from .measuring import GAUGE, STRIP, Sight, bar_errors, nearest_errors, see
from .test_trade import KITS, SPEC

TRUE = 0.1
"""Millimetres, over a whole template and all its joins."""
LEAST = 18
"""Points: American Printing House for the Blind, guidelines for print document design (value from memory)."""
_OF_ITS_TEXT = 0.7
"""The figures of a built fraction, of the size of the text that they stand in."""
SPECS = {
    "loops": spec_text(PANELS["48 in, 3 loops, A4"]),
    "eyelets": SPEC.format(name="eyelets", **KITS["eyelets"]),
}


@dataclass(frozen=True)
class Printed:
    """A job's kit in one look, and what was seen of it."""

    plan: Plan
    kit: Kit
    files: dict[str, bytes]
    sight: Sight

    @property
    def record(self) -> dict[str, Any]:
        record: dict[str, Any] = json.loads(self.files["kit.json"])
        return record

    @property
    def marks(self) -> set[tuple[str, str, float]]:
        """Every mark that the list of what is where has, with how far along its template it is."""
        return {
            (piece["template"], mark["label"], mark["along_mm"])
            for piece in self.record["pieces"]
            for mark in piece["marks"]
        }


@lru_cache(maxsize=4)
def printed(name: str, large: bool) -> Printed:
    plan = make_plan(read_spec(SPECS[name]))
    kit, files = kit_files(plan, Options(large_print=large))
    return Printed(plan, kit, files, see(files["kit.pdf"], json.loads(files["kit.json"])))


@pytest.mark.parametrize("large", [False, True])
@pytest.mark.parametrize("name", SPECS)
def test_every_mark_and_every_check_length_is_where_it_belongs(name: str, large: bool) -> None:
    of = printed(name, large)
    assert of.kit.look == (LARGE if large else USUAL)
    for drawing in of.kit.drawings:
        seen = of.sight.taped[drawing.name].strokes(*(STRIP if drawing.name == "spacing strip" else GAUGE))
        strokes = [stroke for row in seen for stroke in row]
        errors = nearest_errors([float(mark.at) for mark in drawing.marks], strokes)
        assert max(errors) <= TRUE, drawing.name
    assert of.sight.checks and max(check.error for check in of.sight.checks) <= TRUE
    assert max(bar_errors(of.sight)) <= TRUE


@pytest.mark.parametrize("name", SPECS)
def test_marks_stand_where_they_do_in_usual_print(name: str) -> None:
    usual, large = printed(name, False), printed(name, True)
    assert usual.marks == large.marks and len(usual.marks) > 10
    for one, other in zip(usual.kit.drawings, large.kit.drawings, strict=True):
        assert (one.name, one.marks, one.registration, one.start) == (
            other.name, other.marks, other.registration, other.start,
        )  # fmt: skip
        assert _from_the_datum(one.items) <= _from_the_datum(other.items), one.name


def _from_the_datum(items: tuple[object, ...]) -> set[tuple[object, ...]]:
    """Every line that stands on the datum edge, and every circle."""
    lines = {(item.x1, item.kind) for item in items if isinstance(item, Line) and item.y1 == 0 and item.x1 == item.x2}
    circles = {(item.x, item.y, item.radius, item.kind) for item in items if isinstance(item, Ring)}
    return {line for line in lines if line[1] is not LineType.CUT} | circles


@pytest.mark.parametrize("name", SPECS)
def test_all_type_on_templates_and_sheets_has_18_points(name: str) -> None:
    of = printed(name, True)
    document = pymupdf.open(stream=of.files["kit.pdf"])
    for sheet, page in zip(of.kit.sheets, document, strict=True):
        if WORDS in sheet.holds:
            continue
        items = [*sheet.items, *(item for placed in sheet.placed for item in placed.items)]
        assert min(item.size for item in items if isinstance(item, Text)) >= LEAST
        for text, size in _spans(page):
            assert size >= LEAST - 0.01 or (size >= LEAST * _OF_ITS_TEXT - 0.01 and re.fullmatch(r"[\d⁄/ +−]+", text))


def _spans(page: pymupdf.Page) -> list[tuple[str, float]]:
    blocks = page.get_text("dict")["blocks"]
    return [
        (span["text"], span["size"])
        for block in blocks
        for line in block.get("lines", ())
        for span in line["spans"]
        if span["text"].strip()
    ]


@pytest.mark.parametrize("name", SPECS)
def test_every_line_is_twice_as_heavy(name: str) -> None:
    usual, large = (_widths(printed(name, each)) for each in (False, True))
    assert usual == {round(kind.width, 2) for kind in LineType}
    assert large == {round(2 * width, 2) for width in usual}
    drawn = [re.findall(r'stroke-width="([\d.]+)"', printed(name, each).files["hem-gauge-card.svg"].decode())
             for each in (False, True)]  # fmt: skip
    assert [2 * float(width) for width in drawn[0]] == [float(width) for width in drawn[1]] != []


def _widths(of: Printed) -> set[float]:
    """Of all lines of the PDF, in mm."""
    document = pymupdf.open(stream=of.files["kit.pdf"])
    drawn = (path for page in document for path in page.get_drawings() if path["type"] == "s")
    return {round(path["width"] * 25.4 / 72, 2) for path in drawn}


@pytest.mark.parametrize("name", SPECS)
def test_nothing_is_crossed_and_nothing_sticks_out(name: str) -> None:
    """Folds aslant are held to what they cross in tests/templates: here they count as wide as they reach."""
    kit = printed(name, True).kit
    assert [each for each in crossed(kit) if "line fold" not in each] == []
    assert list(outside(kit, margins(kit, 10, 10, 10, 18))) == []


def test_a_kit_in_large_print_is_made_again_from_its_own_pdf(tmp_path: Path) -> None:
    """Whether it was asked for in the spec or besides it."""
    text = SPECS["loops"]
    in_spec = text.replace("[paper]", "[paper]\nlarge_print = true")
    made = printed("loops", True).files
    for source, options in ((text, Options(large_print=True)), (in_spec, Options())):
        _, files = kit_files(make_plan(read_spec(source)), options)
        (tmp_path / "kit.pdf").write_bytes(files["kit.pdf"])
        again, asked = carried_by(tmp_path / "kit.pdf")
        assert kit_files(make_plan(read_spec(again)), asked)[1] == files
        assert _placed(files) == _placed(made)
    usual = kit_files(make_plan(read_spec(in_spec)), Options(large_print=False))[1]
    assert _placed(usual) == _placed(printed("loops", False).files)


def _placed(files: dict[str, bytes]) -> list[dict[str, object]]:
    """What of the templates is where; the work order tells how its kit was asked for, and may take a page more."""
    pieces: list[dict[str, object]] = json.loads(files["kit.json"])["pieces"]
    return [{name: value for name, value in piece.items() if name != "page"} for piece in pieces]
