"""The spacing strip as an SVG, drawn by a browser and measured like the printed one."""

from __future__ import annotations

from collections.abc import Iterator
from xml.etree import ElementTree

import pytest
from playwright.sync_api import Page

from .chromium import browser, screen, show, strokes_along
from .kits import PANELS, Panel, loop_positions, made, millimetres
from .measuring import STRIP, errors_at, is_mark
from .seeing import Stroke

TRUE = 0.1
_ROOM = 1.0
"""Around a drawing in its file, in mm: the datum edge lies that far below the top."""


@pytest.fixture(scope="module")
def page() -> Iterator[Page]:
    with browser() as running, screen(running) as page:
        yield page


@pytest.mark.parametrize("panel", PANELS.values(), ids=PANELS)
def test_a_browser_draws_every_loop_where_it_belongs(page: Page, panel: Panel) -> None:
    svg = made(panel).files["spacing-strip.svg"]
    width = float(millimetres(panel.width, panel.units))
    show(page, svg)
    seen = strokes_along(page, width + 2 * _ROOM, _ROOM + STRIP[0], _ROOM + STRIP[1])
    from_left_edge = [Stroke(stroke.at - seen[0].at, stroke.ink) for stroke in seen]
    marks = [stroke for stroke in from_left_edge if is_mark(stroke)]
    places = [float(at) for at in loop_positions(panel)]
    errors = errors_at(places, marks)
    right = abs(from_left_edge[-1].at - width)
    print(f"\n{panel.width:>8} {panel.units:<6} marks {max(errors):.4f}, right edge {right:.4f} mm")
    assert len(marks) == panel.count
    assert max(errors) <= TRUE
    assert right <= TRUE


def test_a_mark_moved_by_three_tenths_is_seen_in_the_browser(page: Page) -> None:
    """The measuring itself must be able to fail."""
    panel = PANELS["42 in, 4 loops, letter"]
    svg = made(panel).files["spacing-strip.svg"].decode()
    place = f"{float(loop_positions(panel)[1]):.6f}".rstrip("0")
    moved = f"{float(loop_positions(panel)[1]) + 0.3:.6f}"
    assert f'x1="{place}"' in svg
    changed = svg.replace(f'x1="{place}" x2="{place}"', f'x1="{moved}" x2="{moved}"')
    show(page, changed.encode())
    seen = strokes_along(page, 500, _ROOM + STRIP[0], _ROOM + STRIP[1])
    marks = [Stroke(stroke.at - seen[0].at, stroke.ink) for stroke in seen if is_mark(stroke)]
    assert [error > TRUE for error in errors_at(map(float, loop_positions(panel)[:2]), marks)] == [False, True]


@pytest.mark.parametrize("panel", PANELS.values(), ids=PANELS)
def test_a_user_unit_is_a_millimetre_in_every_svg(panel: Panel) -> None:
    for name, content in made(panel).files.items():
        if not name.endswith(".svg"):
            continue
        root = ElementTree.fromstring(content)
        left, top, wide, high = root.attrib["viewBox"].replace(",", " ").split()
        assert (left, top) == ("0", "0")
        assert root.attrib["width"] == f"{wide}mm"
        assert root.attrib["height"] == f"{high}mm"
