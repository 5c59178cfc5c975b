"""A drawing told as text, so that a golden can be read and a difference understood."""

from __future__ import annotations

from fractions import Fraction

from templategen.drawing import Drawing, Item, Line, Number, Ring, Text


def tell(drawing: Drawing) -> str:
    """Every item of the drawing on a line of its own, in millimetres."""
    head = [
        f"{drawing.name}: {_mm(drawing.start)} to {_mm(drawing.end)} along, {_mm(drawing.low)} to {_mm(drawing.high)}",
        f"lane {_mm(drawing.lane.low)} to {_mm(drawing.lane.high)}; turned {drawing.quarter_turns} quarters",
        f"up: {drawing.up}",
        f"says: {' '.join(drawing.caption)}",
        *(f"mark {mark.label} at {_mm(mark.at)}" for mark in drawing.marks),
    ]
    return "\n".join([*head, *(_item(item) for item in drawing.items)]) + "\n"


def _item(item: Item) -> str:
    if isinstance(item, Line):
        ends = " to ".join(f"({_mm(x)}, {_mm(y)})" for x, y in ((item.x1, item.y1), (item.x2, item.y2)))
        return f"{item.kind.name.lower():7} {ends}"
    if isinstance(item, Text):
        weight = "bold " if item.bold else ""
        return (
            f"text    ({_mm(item.x)}, {_mm(item.y)}) {item.anchor.name.lower()} {item.turn} {weight}"
            f"{item.size:g} pt: {item.text}"
        )
    if isinstance(item, Ring):
        return f"ring    ({_mm(item.x)}, {_mm(item.y)}) radius {_mm(item.radius)}"
    return "solid   " + " ".join(f"({_mm(x)}, {_mm(y)})" for x, y in item.points)


def _mm(number: Number) -> str:
    """Exact where it is exact: 1 3/7 mm stays a fraction; what is only for the eye is rounded."""
    if isinstance(number, Fraction) and number.denominator > 1:
        return str(number) if number.denominator < 1000 else f"{float(number):.4f}"
    return f"{float(number):.2f}".rstrip("0").rstrip(".")
