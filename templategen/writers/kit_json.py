"""What is where on the paper, as JSON: points of the PDF page, in millimetres."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import groupby
from typing import Any

from ..layout import Correction, Kit, Piece, Placed, Sheet
from ..layout.checks import Check, checks_of
from ..layout.furniture import Bar
from .budget_json import budget_record
from .numbers import decimal


def kit_record(kit: Kit) -> dict[str, Any]:
    """The kit as plain data; every point is a point of the PDF page, the printer's correction in it."""
    return {
        "title": kit.title,
        "fingerprint": kit.fingerprint,
        **paper_record(kit),
        "pages": [{"page": sheet.number, "holds": list(sheet.holds)} for sheet in kit.sheets],
        "pieces": [_piece(placed, sheet.number, kit.correction) for placed, sheet in _in_order(kit)],
        "checks": [check for pieces in _templates(kit) for check in _checks(pieces, kit)],
        "bars": [_bar(bar, sheet.number, kit.correction) for sheet in kit.sheets for bar in sheet.bars],
    }


def paper_record(kit: Kit) -> dict[str, Any]:
    """What the kit takes of which paper, and how far out its marks may come."""
    return {
        "paper": {
            "name": kit.paper.name,
            "width_mm": decimal(kit.paper.width),
            "height_mm": decimal(kit.paper.height),
        },
        "sheets": {
            "all": len(kit.sheets),
            "with_templates": kit.with_templates,
            "fewest_by_area": kit.bound.by_area,
            "fewest_by_rows": kit.bound.by_rows,
        },
        "budgets": [budget_record(budget) for budget in kit.budgets],
    }


def _in_order(kit: Kit) -> list[tuple[Placed, Sheet]]:
    """Every piece with its sheet, template by template and from left to right."""
    order = {drawing.name: i for i, drawing in enumerate(kit.drawings)}
    placed = [(placed, sheet) for sheet in kit.sheets for placed in sheet.placed]
    return sorted(placed, key=lambda pair: (order[pair[0].piece.drawing.name], pair[0].piece.number))


def _templates(kit: Kit) -> Iterator[list[tuple[Placed, Sheet]]]:
    """The pieces of each template, in order."""
    for _, placed in groupby(_in_order(kit), lambda pair: pair[0].piece.drawing.name):
        yield list(placed)


def _on_page(correction: Correction, point: tuple[Fraction, Fraction]) -> list[float]:
    return [decimal(number) for number in correction.on_page(*point)]


def _named(correction: Correction, point: tuple[Fraction, Fraction]) -> dict[str, float]:
    return dict(zip(("x_mm", "y_mm"), _on_page(correction, point), strict=True))


def _piece(placed: Placed, page: int, correction: Correction) -> dict[str, Any]:
    piece = placed.piece

    def place(label: str, along: Fraction) -> dict[str, Any]:
        return {"label": label, "along_mm": decimal(along), **_named(correction, placed.at(along))}

    return {
        "template": piece.drawing.name,
        "piece": piece.number,
        "of": piece.of,
        "page": page,
        "along_mm": [decimal(piece.start), decimal(piece.end)],
        "datum": _named(correction, (placed.x, placed.y)),
        "direction": list(placed.direction),
        "inward": list(placed.inward),
        "depth_mm": decimal(piece.drawing.depth),
        "marks": [place(mark.label, mark.at) for mark in piece.marks],
        "match_lines": [place(join.label, join.at) for join in piece.joins],
    }


def _checks(pieces: Sequence[tuple[Placed, Sheet]], kit: Kit) -> Iterator[dict[str, Any]]:
    """The check lengths of one template, and where on their pages they begin and end."""

    def place(check: Check, piece: Piece, along: Fraction) -> dict[str, Any]:
        placed, sheet = pieces[piece.number - 1]
        x, y = placed.at(along)
        # A drawing's heights run to the left of its direction.
        dx, dy = placed.direction
        point = (x - dy * check.height, y + dx * check.height)
        return {"page": sheet.number, **_named(kit.correction, point)}

    for check in checks_of([placed.piece for placed, _ in pieces], kit.tape):
        yield {
            "template": check.first.drawing.name,
            "text": check.text,
            "nominal_mm": decimal(check.length),
            "whole": check.whole,
            "joins": [join.label for join in check.joins],
            "from": place(check, check.first, check.start),
            "to": place(check, check.last, check.end),
        }


def _bar(bar: Bar, page: int, correction: Correction) -> dict[str, Any]:
    ends = [_on_page(correction, point) for point in (bar.start, bar.end)]
    return {"page": page, "from": ends[0], "to": ends[1], "nominal_mm": decimal(bar.nominal)}
