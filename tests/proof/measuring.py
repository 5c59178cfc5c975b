"""Measuring: a kit's pages seen, its pieces taped together, and every length held against what it should be.

The lengths that should come out are worked from what was asked for, in exact
fractions; those that are seen come from the picture alone.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from math import inf
from typing import Any

import numpy as np

from templategen.drawing import LineType

from .joining import Paper, Taped, tape_together
from .kits import Made, Panel, loop_positions, made, millimetres
from .seeing import Pages, Picture, Stroke, cut_out

STRIP = (2.0, 7.0)
"""Where on the spacing strip marks are looked for, in mm inward from the datum edge."""
GAUGE = (1.0, 4.0)
"""The same on gauges, whose dashed lines begin with a dash at the datum edge."""
TREAD = 14.0
"""Width of a step of the hem gauge card, in mm."""
_NEAREST = 3.0
"""Beyond this many mm from its place a mark counts as missing."""
_OUTLINE = LineType.CUT.width
_FOUR_INCHES = 101.6
_SPARE = 0.9
"""Around a piece that is cut out, in mm."""
_BESIDE_A_BAR = ((-0.85, -0.35), (0.35, 0.85))


class Missing(AssertionError):
    """Something that should have been printed and is not to be seen."""


@dataclass(frozen=True)
class CheckSeen:
    """A check length: of which template, what it should be, and what it measures once taped, in mm.

    Where one of its ends is not to be seen it measures endlessly much.
    """

    template: str
    nominal: float
    seen: float
    joins: tuple[str, ...]
    whole: bool

    @property
    def error(self) -> float:
        return abs(self.seen - self.nominal)


@dataclass(frozen=True)
class Sight:
    """All that was seen of a kit: templates taped together, and the bars of every sheet."""

    taped: dict[str, Taped]
    bars: list[tuple[float, float]]
    """For each bar the lengths of its two sides, nominally 100 mm and 4 in."""
    checks: list[CheckSeen]


def see(pdf: bytes, record: dict[str, Any], prints: tuple[float, float] = (1, 1)) -> Sight:
    """Look at every page once: cut out what lies on it, and tape it together from a shuffled heap.

    ``prints`` is what the printer makes of a length, across the sheet and along it.
    """
    record = _as_printed(record, *prints)
    heap, bars = heap_of(pdf, record, prints)
    taped = {each.template: each for each in tape_together(heap)}
    return Sight(taped, bars, [_check_seen(check, taped[check["template"]], record) for check in record["checks"]])


def heap_of(
    pdf: bytes, record: dict[str, Any], prints: tuple[float, float] = (1, 1)
) -> tuple[list[Paper], list[tuple[float, float]]]:
    """The pieces cut out, in a shuffled heap, and the lengths of the bars of every sheet."""
    by_eye = np.random.default_rng(7)
    pages = Pages(pdf, prints)
    heap: list[Paper] = []
    bars = []
    for number in range(1, len(pages) + 1):
        on_it = [piece for piece in record["pieces"] if piece["page"] == number]
        heap += [Paper(cut_out(pages.page(number), piece, by_eye)) for piece in on_it]
        bars += [bar_lengths(pages.bar(number, bar)) for bar in record["bars"] if bar["page"] == number]
    pages.close()
    return [heap[i] for i in by_eye.permutation(len(heap))], bars


def read_bars(pdf: bytes, record: dict[str, Any], prints: tuple[float, float]) -> tuple[float, float]:
    """What the 100 mm bars of the first sheet measure, across and along, as a person reads them: one page printed."""
    pages = Pages(pdf, prints)
    across, along = (
        bar_lengths(pages.bar(1, bar))[0] for bar in _as_printed(record, *prints)["bars"] if bar["page"] == 1
    )
    pages.close()
    return across, along


def _as_printed(record: dict[str, Any], across: float, along: float) -> dict[str, Any]:
    """The list of what lies where, for the sheet that comes out of the printer."""
    return {
        "pieces": [
            piece | {"datum": {"x_mm": piece["datum"]["x_mm"] * across, "y_mm": piece["datum"]["y_mm"] * along}}
            for piece in record["pieces"]
        ],
        "bars": [
            bar | {end: [bar[end][0] * across, bar[end][1] * along] for end in ("from", "to")}
            for bar in record["bars"]
        ],
        "checks": [
            check
            | {
                end: check[end] | {"x_mm": check[end]["x_mm"] * across, "y_mm": check[end]["y_mm"] * along}
                for end in ("from", "to")
            }
            for check in record["checks"]
        ],
    }


@lru_cache(maxsize=1)
def sight(panel: Panel) -> Sight:
    """What is seen of the panel's own kit."""
    kit = made(panel)
    return see(kit.files["kit.pdf"], kit.record)


def bar_lengths(picture: Picture) -> tuple[float, float]:
    """The two lengths of a bar, from tick to tick: to its right in reading direction, and to its left."""
    middle = picture.width / 2
    lines = picture.strokes_down(middle - 20, 0, middle + 20, picture.height)
    lengths = []
    for line, (low, high) in zip(lines, _BESIDE_A_BAR, strict=True):
        ticks = picture.strokes_across(0, line.at + low, picture.width, line.at + high)
        if len(ticks) != 2:
            raise Missing("a bar without its ticks")
        lengths.append(ticks[-1].at - ticks[0].at)
    return lengths[1], lengths[0]


def bar_errors(sight: Sight) -> list[float]:
    """By how much the bars are out, in mm."""
    return [
        abs(seen - nominal) for pair in sight.bars for seen, nominal in zip(pair, (100.0, _FOUR_INCHES), strict=True)
    ]


@dataclass(frozen=True)
class StripErrors:
    """By how much the taped strip is out, in mm."""

    marks: tuple[float, ...]
    """The worst of each mark, wherever it is printed."""
    right_edge: float
    strays: tuple[float, ...]
    """Where lines were seen that look like marks and belong to no loop."""
    bend: float
    """How far the datum edge of any piece lies from that of the first, produced."""

    @property
    def worst(self) -> float:
        return max(*self.marks, self.right_edge)


def strip_errors(panel: Panel, strip: Taped) -> StripErrors:
    """Every mark of the strip, and both its ends, held against what was asked for."""
    seen = strip.strokes(*STRIP)
    joins = [
        strip.along(i, pair.upper) for i, paper in enumerate(strip.papers) for pair in paper.pairs if pair is not None
    ]
    centres = [
        stroke
        for row in seen
        for stroke in row
        if is_mark(stroke) and all(abs(stroke.at - join) > 0.2 for join in joins)
    ]
    places = [float(at) for at in loop_positions(panel)]
    marks = errors_at(places, centres)
    strays = tuple(s.at for s in centres if all(abs(s.at - place) > _NEAREST for place in places))
    width = float(millimetres(panel.width, panel.units))
    _, direction = strip.papers[0].datum_edge
    origin = strip.papers[0].on_edge(0)
    bends = [
        abs(((lying(paper.on_edge(at)) - origin) / direction).imag)
        for paper, lying in zip(strip.papers, strip.lying, strict=True)
        for at in (0, paper.picture.width)
    ]
    return StripErrors(marks, abs(seen[-1][-1].at - width), strays, max(bends))


def is_mark(stroke: Stroke) -> bool:
    """Whether a line is drawn with the pen for marks, and not the one for outlines or trimming."""
    return abs(stroke.ink - LineType.MARK.width) < 0.05


def errors_at(wanted: Iterable[float], seen: Iterable[Stroke]) -> tuple[float, ...]:
    """For each place the worst of the strokes near it; a place without one raises Missing."""
    strokes = list(seen)
    errors = []
    for place in wanted:
        near = [abs(stroke.at - place) for stroke in strokes if abs(stroke.at - place) < _NEAREST]
        if not near:
            raise Missing(f"no line at {place:.3f} mm")
        errors.append(max(near))
    return tuple(errors)


def nearest_errors(wanted: Iterable[float], seen: Iterable[Stroke]) -> tuple[float, ...]:
    """For each place how far the nearest stroke is, where lines may stand close to each other."""
    strokes = list(seen)
    return tuple(min(abs(stroke.at - place) for stroke in strokes) for place in wanted)


def _check_seen(check: dict[str, Any], taped: Taped, record: dict[str, Any]) -> CheckSeen:
    """A check length measured from tick to tick on the taped template, its whole length from edge to edge."""
    try:
        start, end = (_tick(check["template"], check[end], taped, record) for end in ("from", "to"))
    except Missing:
        start, end = 0, inf
    return CheckSeen(check["template"], check["nominal_mm"], end - start, tuple(check["joins"]), check["whole"])


def _tick(template: str, end: dict[str, Any], taped: Taped, record: dict[str, Any]) -> float:
    """Where along the taped template the upright stroke stands that is nearest to where the list has one."""
    for piece in record["pieces"]:
        (dx, dy), (ix, iy) = piece["direction"], piece["inward"]
        x, y = end["x_mm"] - piece["datum"]["x_mm"], end["y_mm"] - piece["datum"]["y_mm"]
        along, inward = x * dx + y * dy, x * ix + y * iy
        length = piece["along_mm"][1] - piece["along_mm"][0]
        here = (piece["template"], piece["page"]) == (template, end["page"])
        if not here or not -0.01 < along < length + 0.01 or not 0 < inward < piece["depth_mm"]:
            continue
        number, paper = next((i, each) for i, each in enumerate(taped.papers) if each.piece.number == piece["piece"])
        level = paper.datum_edge[0].imag + paper.inward * inward
        bands = [
            [stroke.at for stroke in paper.picture.strokes_across(along - 2, level + low, along + 4, level + high)]
            for low, high in ((-1.85, -1.2), (1.2, 1.85))
        ]
        # Stems of large letters beside a tick may be seen too: they are farther from where the list has it.
        near = [min(band, key=lambda at: abs(at - along - _SPARE)) for band in bands if band]
        if len(near) != 2 or abs(near[0] - near[1]) > 0.05:
            raise Missing(f"a check length without its tick on {template} {piece['piece']}")
        return taped.along(number, complex(sum(near) / 2, level))
    raise Missing(f"a check length that lies on no piece of the {template}")


def gauge_errors(kit: Made, sight: Sight) -> dict[str, tuple[float, ...]]:
    """For each gauge by name, how far its lines and its far edge are from the plan's figures."""
    errors: dict[str, tuple[float, ...]] = {}
    for name, places in gauge_places(kit).items():
        seen = sight.taped[name].strokes(*GAUGE)
        errors[name] = nearest_errors(places, [stroke for row in seen for stroke in row])
    return errors


def stair_errors(kit: Made, card: Taped) -> tuple[float, ...]:
    """How far the steps of a hem gauge card, taped if need be, stand from the lengths that can be felt at them.

    A step in the glue zone is printed on both pieces; the worse of the two counts.
    """
    inward = card.papers[0].inward
    base = card.papers[0].strokes(*GAUGE)[0].at
    levels = card.papers[0].picture.strokes_down(base + 1.5, 0, base + 2.5, card.papers[0].picture.height)
    outer = (levels[-1] if inward > 0 else levels[0]).at - card.papers[0].datum_edge[0].imag
    errors = []
    for number, step in enumerate(sorted(set(hem_lengths(kit.panel)[:3]))):
        low, high = sorted(abs(outer) - TREAD * (number + part) for part in (0.25, 0.75))
        seen = [stroke for row in card.strokes(low, high) for stroke in row if abs(stroke.ink - _OUTLINE) < 0.05]
        errors.append(max(errors_at([step], seen)))
    return tuple(errors)


def reach_errors(card: Taped) -> tuple[float, ...]:
    """For each join by how much the match line's far end on the one piece and the trim line's on the other differ,
    in mm inward from the datum edge, and how far either ends from the outline beside it."""
    errors = []
    for left, right in zip(card.papers, card.papers[1:], strict=False):
        pairs = left.pairs[1], right.pairs[0]
        assert pairs[0] is not None and pairs[1] is not None
        reaches = [
            abs(_far_end(paper, pair.upper.real) - edge)
            for paper, pair in zip((left, right), pairs, strict=True)
            for edge in (_outline_at(paper, pair.upper.real - 1.5), _outline_at(paper, pair.upper.real + 1.5))
        ]
        errors.append(max(reaches))
    return tuple(errors)


def _far_end(paper: Paper, x: float) -> float:
    """How far inward from the datum edge the ink at ``x`` reaches, in mm."""
    column, _, top = paper.picture.part(x - 0.1, 0, x + 0.1, paper.picture.height)
    rows = np.flatnonzero(column.mean(axis=1) > 128)
    far = (rows[-1] + 1 if paper.inward > 0 else rows[0]) * paper.picture.mm_y + top
    return abs(far - paper.datum_edge[0].imag)


def _outline_at(paper: Paper, x: float) -> float:
    """How far inward from the datum edge the outer side of the outline near ``x`` lies, in mm."""
    seen = paper.picture.strokes_down(x - 0.4, 0, x + 0.4, paper.picture.height)
    edge = seen[-1] if paper.inward > 0 else seen[0]
    return abs(edge.at - paper.datum_edge[0].imag) + _OUTLINE / 2


def hem_lengths(panel: Panel) -> list[float]:
    """Turn-under, depth, both together, and the two lines that cloth is folded to."""
    depth, under = (float(millimetres(text, panel.units)) for text in (panel.hem, panel.turn_under))
    return [under, depth, depth + under, 2 * under, 2 * depth]


def gauge_places(kit: Made) -> dict[str, list[float]]:
    """Where the lines of each gauge belong, from its zero."""
    panel, plan = kit.panel, kit.plan
    loop = float(millimetres(panel.loop_length, panel.units))
    heading = plan.heading
    seams = float(heading.lower_allowance.mm), loop - float(heading.upper_turn.mm)
    rungs = max(1, min(int(220 // loop), panel.count * panel.panels))
    places = {
        "hem gauge card": hem_lengths(panel),
        "loop ladder": [loop * i + part for i in range(rungs) for part in (0, *seams, loop)],
    }
    several = not plan.drop.level
    for number, mark in enumerate(plan.drop.marks if several else plan.drop.marks[:1], 1):
        zero = min(mark.cut, mark.finish, mark.floor)
        places[f"cut gauge {number}" if several else "cut gauge"] = [
            float((height - zero).mm) for height in (mark.cut, mark.finish, mark.floor)
        ]
    return places
