"""Eyelets on paper: the circles of the card are seen, round, true to size and in their place, and so is the strip."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

import cv2
import numpy as np
import pytest

from templategen import Options, kit_files
from templategen.drawing import Item, Ring
from templategen.layout import Placed
from templategen.writers.kit_json import kit_record
from tests.planning.test_eyelets import eyelets, moved

from .crossing import crossed, margins, outside
from .measuring import STRIP, errors_at, is_mark, nearest_errors, see
from .redrawing import redrawn_pdf
from .seeing import Pages, Picture

TOLERANCE = 0.1
"""In mm, for a circle's centre and for its diameter."""
_STEP = 0.01
_SEARCH = 1.2
_RAYS = 360
_EDGE = (2.0, 6.0)
"""Where on the strip the edges of the circles are looked for, in mm inward."""

JOBS: dict[str, dict[str, Any]] = {
    "1 in rings, letter": {"paper.name": "letter"},
    "40 mm rings, A4": {
        "paper.name": "a4",
        "units": "metric",
        "rod.diameter": "28 mm",
        **moved(eyelet_inside="40 mm", eyelet_outside="66 mm", cut_circle="44.5 mm", eyelet_centre="47.3 mm"),
    },
}


@dataclass(frozen=True)
class Circle:
    """A circle seen: its centre and diameter, in mm of the page, x to the right and y down."""

    x: float
    y: float
    diameter: float


def seen(page: Picture, x: float, y: float, radius: float) -> Circle:
    """The circle near this one, fitted to where its ink is on rays from that centre.

    Rays on which something else crosses it say something else than the most of them, and are left out.
    """
    angles = np.deg2rad(np.arange(_RAYS, dtype=np.float64))[:, None]
    reach = np.arange(radius - _SEARCH, radius + _SEARCH, _STEP)[None, :]
    across, down = x + reach * np.cos(angles), y + reach * np.sin(angles)
    ink = cv2.remap(
        page.ink,
        (across / page.mm_x - 0.5).astype(np.float32),
        (down / page.mm_y - 0.5).astype(np.float32),
        cv2.INTER_LINEAR,
    ).astype(np.float64)
    dark = ink.sum(axis=1)
    radii = (ink * reach).sum(axis=1) / np.maximum(dark, 1)
    alone = (np.abs(dark - np.median(dark)) < 0.15 * np.median(dark)) & (dark > 0)
    assert alone.sum() > 0.8 * _RAYS, "no whole circle here"
    xs, ys = x + radii[alone] * np.cos(angles[alone, 0]), y + radii[alone] * np.sin(angles[alone, 0])
    sides = np.column_stack([2 * xs, 2 * ys, np.ones(len(xs))])
    (a, b, c), *_ = np.linalg.lstsq(sides, xs**2 + ys**2, rcond=None)
    fitted = float(np.sqrt(c + a * a + b * b))
    assert float(np.abs(np.hypot(xs - a, ys - b) - fitted).max()) < TOLERANCE, "not round"
    return Circle(float(a), float(b), 2 * fitted)


def circles_of(pdf: bytes, record: dict[str, Any], down: float, diameters: tuple[float, ...]) -> Iterator[float]:
    """How far the card's circles are from where they belong, and from their size, in mm; worked from the list alone."""
    (piece,) = [piece for piece in record["pieces"] if piece["template"] == "eyelet card"]
    (mark,) = piece["marks"]
    ix, iy = piece["inward"]
    pages = Pages(pdf)
    page = pages.page(piece["page"])
    x, y = mark["x_mm"] + ix * down, page.height - (mark["y_mm"] + iy * down)
    for diameter in diameters:
        circle = seen(page, x, y, diameter / 2)
        yield from (abs(circle.x - x), abs(circle.y - y), abs(circle.diameter - diameter))
    pages.close()


@pytest.mark.parametrize("name", JOBS)
def test_circles_on_the_page_are_true(name: str) -> None:
    plan = eyelets(JOBS[name])
    kit, files = kit_files(plan, Options(only=("eyelet card",)))
    heading = plan.heading
    sizes = (float(heading.cut_circle.mm), float(heading.outside.mm))
    errors = list(circles_of(files["kit.pdf"], kit_record(kit), float(heading.centre.mm), sizes))
    print(f"{name}: worst {max(errors):.3f} mm of {len(errors)} measured")
    assert max(errors) < TOLERANCE / 2


@pytest.mark.parametrize(("across", "wider"), [(Fraction(1, 5), 0), (0, Fraction(1, 8))])
def test_a_circle_out_of_place_or_out_of_size_is_seen(across: Fraction, wider: Fraction) -> None:
    """The measuring must be able to fail."""
    plan = eyelets()
    kit, _ = kit_files(plan, Options(only=("eyelet card",)))

    def change(placed: Placed, item: Item) -> Item:
        if not isinstance(item, Ring) or item.radius != plan.heading.cut_circle.mm / 2:
            return item
        return replace(item, x=Fraction(item.x) + across, radius=Fraction(item.radius) + wider)

    pdf = redrawn_pdf(kit, change)
    sizes = (float(plan.heading.cut_circle.mm),)
    assert max(circles_of(pdf, kit_record(kit), float(plan.heading.centre.mm), sizes)) > TOLERANCE


def test_svg_has_the_circles_at_full_size() -> None:
    plan = eyelets(JOBS["40 mm rings, A4"])
    _, files = kit_files(plan, Options(only=("eyelet card",)))
    svg = files["eyelet-card.svg"].decode()
    assert 'r="22.25"' in svg and 'r="33.0"' in svg.replace('r="33"', 'r="33.0"')


def test_the_strip_taped_together_has_every_centre_and_both_edges_of_every_circle() -> None:
    plan = eyelets()
    kit, files = kit_files(plan, Options(only=("spacing strip",)))
    strip = see(files["kit.pdf"], kit_record(kit)).taped["spacing strip"]
    centres = [float(mark.at.mm) for mark in plan.heading.marks]
    lines = [stroke for row in strip.strokes(*STRIP) for stroke in row]
    assert max(errors_at(centres, [line for line in lines if is_mark(line)])) < 0.25
    half = float(plan.heading.cut_circle.mm) / 2
    edges = [stroke for row in strip.strokes(*_EDGE) for stroke in row]
    assert max(nearest_errors([at + side for at in centres for side in (-half, half)], edges)) < 0.25


@pytest.mark.parametrize("name", JOBS)
def test_nothing_is_crossed_and_nothing_sticks_out(name: str) -> None:
    kit, _ = kit_files(eyelets(JOBS[name]))
    assert list(crossed(kit)) == []
    assert list(outside(kit, margins(kit, 10.0, 10.0, 10.0, 18.0))) == []
