"""Templates of other headings, hems and corners on paper: every mark of every one where it belongs, and the circles.

The places of strips' marks are worked out here, from what the spec asks for and the trade's own formulas; those of
cards are held against the plan's figures, which tests/planning holds against handbooks.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import Any

import pytest

from templategen import kit_files, make_plan, read_spec
from templategen.layout import Kit
from templategen.planning import Plan

from .measuring import GAUGE, STRIP, Sight, nearest_errors, see
from .seeing import Pages

TRUE = 0.1
"""Millimetres, over a whole template and all its joins."""
MM = Fraction(254, 10)

SPEC = """title = "Village library, reading room: {name}"
units = "inch"
[rod]
length = "60 in"
diameter = "3/4 in"
{rod}
[panel]
count = 2
width = "{width}"
length = "96 in"
casing = "3 in"
hem = "2 in"
turn_under = "3/8 in"
[drop]
floor_marks = ["13 5/8 in"]
clearance = "1/2 in"
{rest}
[paper]
name = "{paper}"
"""

KITS = {
    "eyelets": dict(
        width="47 1/3 in", paper="letter", rod="",
        rest='[hem]\nstyle = "equal double fold"\ndepth = "3 in"\n'
        '[sides]\nhem = "1 1/2 in"\nturn_under = "1/2 in"\nmitre = true\n'
        '[heading]\nstyle = "eyelets"\neyelet_inside = "1 in"\neyelet_outside = "1 3/4 in"\ncut_circle = "1 1/8 in"\n'
        'eyelet_centre = "1 3/8 in"\ncount = 8\nedge_inset = "2 in"',
    ),
    "pinch pleats": dict(
        width="70 in", paper="a4", rod='overlap = "2 in"\nreturns = "3 in"',
        rest='[hem]\nstyle = "single fold with tape"\ndepth = "4 in"\n'
        '[heading]\nstyle = "pinch pleats"\ncarrier_drop = "1 1/2 in"\nhook_set = "1/2 in"\nheading_depth = "3 in"\n'
        'pleats = 7\nlast_back = "2 in"',
    ),
    "tabs": dict(
        width="50 1/7 in", paper="letter", rod="",
        rest='[hem]\nstyle = "border"\ndepth = "3 in"\n'
        '[heading]\nstyle = "tabs"\ngap = "2 in"\ntab_width = "1 1/2 in"\ncount = 7\nedge_inset = "1 in"',
    ),
    "gathering tape": dict(
        width="54 in", paper="a4", rod="",
        rest='[hem]\nstyle = "faced"\ndepth = "2 in"\nturn_under = "1/2 in"\n'
        '[heading]\nstyle = "gathering tape"\ncarrier_drop = "1 1/2 in"\nhook_set = "1 1/4 in"\ntape_width = "3 in"\n'
        'tape_below = "3/4 in"',
    ),
}  # fmt: skip


@dataclass(frozen=True)
class Seen:
    """A kit, and what was seen of it."""

    plan: Plan
    kit: Kit
    files: dict[str, bytes]
    sight: Sight

    @property
    def record(self) -> dict[str, Any]:
        record: dict[str, Any] = json.loads(self.files["kit.json"])
        return record

    def errors(self, template: str, places: list[float], low_high: tuple[float, float]) -> tuple[float, ...]:
        strokes = [stroke for row in self.sight.taped[template].strokes(*low_high) for stroke in row]
        return nearest_errors(places, strokes)


@lru_cache(maxsize=4)
def seen(name: str) -> Seen:
    plan = make_plan(read_spec(SPEC.format(name=name, **KITS[name])))
    assert not plan.stops, [notice.text for notice in plan.stops]
    kit, files = kit_files(plan)
    return Seen(plan, kit, files, see(files["kit.pdf"], json.loads(files["kit.json"])))


@pytest.mark.parametrize("name", KITS)
def test_every_mark_of_every_template_is_where_it_belongs(name: str) -> None:
    of = seen(name)
    for drawing in of.kit.drawings:
        strip = drawing.name.startswith(("spacing strip", "pleat strip"))
        places = [float(mark.at) for mark in drawing.marks]
        assert max(of.errors(drawing.name, places, STRIP if strip else GAUGE)) <= TRUE, drawing.name
    assert max(check.error for check in of.sight.checks) <= TRUE


def test_eyelets_stand_at_equal_distances_from_edge_to_edge() -> None:
    width, inset = Fraction(142, 3) * MM, 2 * MM
    places = [float(inset + (width - 2 * inset) * i / 7) for i in range(8)]
    assert max(seen("eyelets").errors("spacing strip", places, STRIP)) <= TRUE


def test_pleats_stand_alike_from_the_return_edge_of_either_panel() -> None:
    """Finished (60 + 2 + 2 x 3) / 2 = 34 in; flat 70: 36 in in 7 pleats; spaces (34 - 3 - 2) / 6."""
    pleat, space = Fraction(36, 7), Fraction(29, 6)
    starts = [3 + i * (pleat + space) for i in range(7)]
    from_return = sorted(float(at * MM) for start in starts for at in (start, start + pleat))
    width = float(70 * MM)
    of = seen("pinch pleats")
    # From the back the return edge of a left panel is on the right.
    assert max(of.errors("pleat strip for right panels", from_return, STRIP)) <= TRUE
    mirrored = sorted(width - at for at in from_return)
    assert max(of.errors("pleat strip for left panels", mirrored, STRIP)) <= TRUE


def test_holes_and_rings_are_as_wide_as_they_are_and_as_far_down() -> None:
    """The circles of the eyelet card, each seen where a line through its centre crosses it, both ways."""
    of = seen("eyelets")
    pages = Pages(of.files["kit.pdf"])
    (piece,) = [each for each in of.record["pieces"] if each["template"] == "eyelet card"]
    page = pages.page(piece["page"])
    ix, iy = piece["inward"]
    below = float(Fraction(11, 8) * MM)
    for mark in piece["marks"]:
        x, y = mark["x_mm"] + ix * below, page.height - (mark["y_mm"] + iy * below)
        for diameter in (float(Fraction(9, 8) * MM), float(Fraction(7, 4) * MM)):
            for way in (-1, 1):
                at = x + way * diameter / 2
                across = page.strokes_across(at - 1, y - 0.1, at + 1, y + 0.1)
                assert min(abs(stroke.at - at) for stroke in across) <= TRUE
                at = y + way * diameter / 2
                down = page.strokes_down(x - 0.1, at - 1, x + 0.1, at + 1)
                assert min(abs(stroke.at - at) for stroke in down) <= TRUE
    pages.close()


def test_the_mitre_is_folded_through_the_corner_at_its_own_angle() -> None:
    """H = 3 in, S = 1 1/2 in: the fold goes 2 in up for 1 in along, from the corner of the hems' creases."""
    of = seen("eyelets")
    pages = Pages(of.files["kit.pdf"])
    for piece in (each for each in of.record["pieces"] if each["template"].startswith("mitre card")):
        page = pages.page(piece["page"])
        (dx, dy), (ix, iy) = piece["direction"], piece["inward"]
        length = piece["along_mm"][1] - piece["along_mm"][0]
        left = piece["template"].endswith("left corner")
        corner, way = (length, -1) if left else (0.0, 1)
        seen_at = []
        for up in (24.0, 60.0):
            along = corner + way * up / 2
            x = piece["datum"]["x_mm"] + dx * along + ix * up
            y = page.height - (piece["datum"]["y_mm"] + dy * along + iy * up)
            part, start_x, start_y = page.part(x - 6, y - 6, x + 6, y + 6)
            rows, columns = (part > 128).nonzero()
            # How far each inked point lies from the line through the corner, 2 up for 1 along.
            at_x = start_x + (columns + 0.5) * page.mm_x - piece["datum"]["x_mm"]
            at_y = (page.height - (start_y + (rows + 0.5) * page.mm_y)) - piece["datum"]["y_mm"]
            s, t = at_x * dx + at_y * dy - corner, at_x * ix + at_y * iy
            off = (2 * way * s - t) / 5**0.5
            seen_at.append(abs(float(off[abs(off) < 1].mean())))
        assert max(seen_at) <= TRUE
    pages.close()
