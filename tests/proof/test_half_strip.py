"""The half strip on paper: rendered, cut out, joined by its marks, and measured along both of its long edges."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import lru_cache

import pytest

from templategen import Options, kit_files, make_plan, read_spec
from templategen.drawing import Item, Line
from templategen.layout import Kit, Placed
from templategen.writers.pdf import pdf

from .joining import Lying, Paper, Taped
from .kits import PANELS, Panel, loop_positions, millimetres, spec_text
from .measuring import errors_at, is_mark, see
from .seeing import upside_down

HALVES = {
    name: PANELS[name]
    for name in (
        "48 in, 3 loops, A4",
        "54 in, 8 loops, letter",
        "84 3/7 in, 10 loops, letter",
        "120 in, 25 loops, letter",
        "1370 mm, 8 loops, letter",
        "3000 mm, 13 loops, A4",
    )
} | {"1400 mm, 71 loops, A4": replace(PANELS["3000 mm, 13 loops, A4"], width="1400", count=71, inset="20")}
"""The last has loops so close that the registration marks stand nearer to each other, clear of the loops' lines."""
TRUE = 0.1
"""Millimetres, over half of a panel."""
TRUE_TURNED = 0.15
"""The same on the other long edge, by which no piece was joined."""
_CENTRES = (8.8, 9.6)
"""Where centre lines are looked for, in mm inward: beyond a loop's edges and a registration mark."""
_RING = 2.8
"""Half of what a registration mark takes along the strip, in mm."""


@dataclass(frozen=True)
class Half:
    """A half strip as it was seen, both ways."""

    as_it_lies: Taped
    turned: Taped
    checks: tuple[float, ...]
    """How far out each check length is, in mm."""


def _asked(panel: Panel) -> str:
    narrow = "\nloop_width = " + ('"1/2 in"' if panel.units == "inch" else '"10 mm"')
    return spec_text(panel).replace("\n\n[paper]", f"{narrow}\n\n[paper]")


def _seen(file: bytes, record: bytes) -> Half:
    seen = see(file, json.loads(record))
    (taped,) = seen.taped.values()
    return Half(taped, _turned(taped), tuple(check.error for check in seen.checks))


def _turned(taped: Taped) -> Taped:
    """The taped strip by half a turn, as one: its other long edge now lies where the datum edge lay."""
    papers, lying = [], []
    for paper, lies in zip(taped.papers[::-1], taped.lying[::-1], strict=True):
        picture = paper.picture
        papers.append(Paper(replace(paper.piece, picture=upside_down(picture))))
        lying.append(Lying(lies.turn, -lies.turn * complex(picture.width, picture.height) - lies.shift))
    # The paper that is the first now is what the others lie beside.
    first = lying[0]
    beside = (Lying(lies.turn / first.turn, (lies.shift - first.shift) / first.turn) for lies in lying)
    return Taped(tuple(papers), tuple(beside))


@lru_cache(maxsize=2)
def half(name: str) -> Half:
    """The half strip of a panel by its name in HALVES."""
    plan = make_plan(read_spec(_asked(HALVES[name])))
    _, files = kit_files(plan, Options(only=("spacing strip",), half_strip=True, despite_stops=True))
    return _seen(files["kit.pdf"], files["kit.json"])


def _centres(strip: Taped) -> list[list[float]]:
    """For each paper where lines for marks were seen, along the whole strip; rings at the joins left out."""
    joins = [strip.along(i, pair.upper) for i, paper in enumerate(strip.papers) for pair in paper.pairs if pair]
    return [
        [s.at for s in row if is_mark(s) and all(abs(s.at - join) > _RING for join in joins)]
        for row in strip.strokes(*_CENTRES)
    ]


def _length(strip: Taped) -> float:
    """From the left edge to the right, as printed."""
    return strip.strokes(*_CENTRES)[-1][-1].at


def _worst(panel: Panel, seen: Half) -> tuple[float, float]:
    """The worst error of the left half and of the right half, in mm; a missing line raises Missing."""
    width, places = millimetres(panel.width, panel.units), loop_positions(panel)
    errors = []
    for strip, wanted, shift in (
        (seen.as_it_lies, [at for at in places if 2 * at < width], 0.0),
        (seen.turned, [at for at in places if 2 * at > width], float(width / 2)),
    ):
        strokes = [s for row in strip.strokes(*_CENTRES) for s in row if is_mark(s)]
        errors.append(max(errors_at([float(at) - shift for at in wanted], strokes)))
    return errors[0], errors[1]


@pytest.fixture(scope="module", params=HALVES)
def name(request: pytest.FixtureRequest) -> str:
    chosen: str = request.param
    return chosen


def test_both_halves_of_the_panel_are_marked_where_they_belong(name: str) -> None:
    left, right = _worst(HALVES[name], half(name))
    print(f"\n{name:<28} left half {left:.4f}  right half, turned {right:.4f}  (worst error, mm)")
    assert left <= TRUE and right <= TRUE_TURNED


def test_no_line_stands_where_no_loop_is(name: str) -> None:
    panel = HALVES[name]
    width, places = float(millimetres(panel.width, panel.units)), [float(at) for at in loop_positions(panel)]
    for strip, shift in ((half(name).as_it_lies, 0.0), (half(name).turned, width / 2)):
        seen = [at + shift for row in _centres(strip) for at in row]
        assert all(min(abs(at - place) for place in places) <= TRUE_TURNED for at in seen)
        assert len({round(at) for at in seen}) >= panel.count // 2


def test_it_ends_at_the_centre_whichever_way_it_lies(name: str) -> None:
    """Of an odd number of loops that end is the middle mark."""
    panel = HALVES[name]
    centre = float(millimetres(panel.width, panel.units)) / 2
    assert abs(_length(half(name).as_it_lies) - centre) <= TRUE
    assert abs(_length(half(name).turned) - centre) <= TRUE_TURNED


def test_pieces_join_in_the_order_of_their_numbers_and_in_reverse_when_turned(name: str) -> None:
    seen = half(name)
    numbers = [paper.piece.number for paper in seen.as_it_lies.papers]
    assert numbers == list(range(1, len(numbers) + 1)) and len(numbers) > 1
    assert [paper.piece.number for paper in seen.turned.papers] == numbers[::-1]


def test_check_lengths_over_the_joins_are_true(name: str) -> None:
    assert half(name).checks
    assert max(half(name).checks) <= TRUE


def _redrawn(kit: Kit, change: Callable[[Item], Item | None]) -> Kit:
    def changed(placed: Placed) -> Placed:
        return replace(placed, items=tuple(new for item in placed.items if (new := change(item)) is not None))

    return replace(kit, sheets=tuple(replace(s, placed=tuple(map(changed, s.placed))) for s in kit.sheets))


def test_a_mark_of_the_other_edge_alone_moved_by_three_tenths_is_seen() -> None:
    """The measuring must be able to fail, and to tell one edge from the other."""
    panel = HALVES["54 in, 8 loops, letter"]
    plan = make_plan(read_spec(_asked(panel)))
    options = Options(only=("spacing strip",), half_strip=True)
    kit, files = kit_files(plan, options)
    second = plan.heading.marks[1].at.mm

    def move(item: Item) -> Item:
        if isinstance(item, Line) and item.x1 == item.x2 == second and max(item.y1, item.y2) < -30:
            return replace(item, x1=item.x1 + 0.3, x2=item.x2 + 0.3)
        return item

    left, right = _worst(panel, _seen(pdf(_redrawn(kit, move), {}), files["kit.json"]))
    assert left <= TRUE and right > TRUE_TURNED
