"""Crossing: everything on a sheet as boxes in millimetres of the sheet, and which of them meet that should not."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from templategen.document.shapes import meets_line, meets_ring
from templategen.drawing import USUAL, Bounds, Item, Line, LineType, Look, Ring, Text
from templategen.layout import Kit, Placed, Sheet
from tests.document.laws import meeting

_TOUCH = 0.05
"""By how much boxes may overlap before it counts, in mm: less than can be seen."""


@dataclass(frozen=True)
class Lying:
    """An item as it lies on its sheet; ``piece`` is None for what every sheet carries."""

    item: Item
    box: Bounds
    piece: Placed | None

    def __str__(self) -> str:
        kind = "" if isinstance(self.item, Text) else f"{type(self.item).__name__.lower()} "
        kind += f"{self.item.kind.name.lower()} " if hasattr(self.item, "kind") else ""
        words = repr(self.item.text) if isinstance(self.item, Text) else ""
        return f"{kind}{words} at {', '.join(f'{float(edge):.1f}' for edge in self.box)}"


def on_sheet(box: Bounds, placed: Placed) -> Bounds:
    """A box of a piece's drawing, as it lies on the sheet."""
    left, right = (float(edge - placed.piece.start) for edge in (box.left, box.right))
    bottom, top = float(box.bottom), float(box.top)
    x, y = float(placed.x), float(placed.y)
    if placed.turn:
        return Bounds(x - top, y + left, x - bottom, y + right)
    return Bounds(x + left, y + bottom, x + right, y + top)


def piece_box(placed: Placed) -> Bounds:
    """The whole piece, as it lies on the sheet."""
    piece = placed.piece
    return on_sheet(Bounds(piece.start, piece.drawing.low, piece.end, piece.drawing.high), placed)


def lying_on(sheet: Sheet, look: Look = USUAL) -> list[Lying]:
    """Every item of a sheet."""
    items = [Lying(item, _floats(_inked(item, look)), None) for item in sheet.items]
    for placed in sheet.placed:
        items += [Lying(item, on_sheet(_inked(item, look), placed), placed) for item in placed.items]
    return items


_DESCENDING = set("gjpqyQ,;()[]{}|")
"""Characters that reach below the base line."""


def _inked(item: Item, look: Look) -> Bounds:
    """An item's box: with a line's own width, and without the room below words that nothing in them fills."""
    box = item.bounds
    if isinstance(item, Text):
        return box if _DESCENDING & set(item.text) else _above_base_line(item, box)
    if not isinstance(item, Line):
        return box
    half = look.width(item.kind) / 2
    if item.runs_along:
        return Bounds(box.left, box.bottom - half, box.right, box.top + half)
    return Bounds(box.left - half, box.bottom, box.right + half, box.top)


def _above_base_line(text: Text, box: Bounds) -> Bounds:
    x, y = float(text.x), float(text.y)
    match text.turn:
        case 0:
            return box._replace(bottom=y)
        case 90:
            return box._replace(right=x)
        case 180:
            return box._replace(top=y)
        case _:
            return box._replace(left=x)


def _floats(box: Bounds) -> Bounds:
    return Bounds(*(float(edge) for edge in box))


def inside(box: Bounds, frame: Bounds) -> bool:
    """Whether nothing of a box sticks out of a frame."""
    return (
        box.left >= frame.left - _TOUCH
        and box.right <= frame.right + _TOUCH
        and box.bottom >= frame.bottom - _TOUCH
        and box.top <= frame.top + _TOUCH
    )


def margins(kit: Kit, left: float, right: float, top: float, bottom: float) -> Bounds:
    """The part of the sheet inside its margins, as it comes out of the printer."""
    across, along = float(kit.correction.across), float(kit.correction.along)
    width, height = float(kit.paper.width), float(kit.paper.height)
    return Bounds(left * across, bottom * along, (width - right) * across, (height - top) * along)


def outside(kit: Kit, frame: Bounds) -> Iterator[str]:
    """Items that stick out of the margins, and words that stick out of their piece."""
    for sheet in kit.sheets:
        for each in lying_on(sheet, kit.look):
            room = piece_box(each.piece) if each.piece and isinstance(each.item, Text) else None
            if not inside(each.box, frame):
                # An outline's own width may lie on the edge of the margin.
                half = kit.look.width(LineType.TRIM) / 2 + 0.01
                if isinstance(each.item, Line) and inside(_floats(each.box), _grown(frame, half)):
                    continue
                yield f"page {sheet.number}: {each} sticks out of the margins"
            elif room is not None and not inside(each.box, room):
                yield f"page {sheet.number}: {each} sticks out of its piece"


def _grown(box: Bounds, by: float) -> Bounds:
    return Bounds(box.left - by, box.bottom - by, box.right + by, box.top + by)


def crossed(kit: Kit) -> Iterator[str]:
    """Words that run into other words, or that a line, a ring or an arrow runs through."""
    for sheet in kit.sheets:
        items = lying_on(sheet, kit.look)
        words = [i for i, each in enumerate(items) if isinstance(each.item, Text)]
        for i, near in meeting(words, [each.box for each in items], -_TOUCH):
            for other in (items[j] for j in near if j > i or not isinstance(items[j].item, Text)):
                if _runs_through(items[i].box, other):
                    yield f"page {sheet.number}: {items[i]} meets {other}"


def _runs_through(box: Bounds, other: Lying) -> bool:
    """Whether what meets a box's own surroundings comes into it: of a slanting line and a circle the stroke alone."""
    if other.piece is None and isinstance(other.item, Line):
        return meets_line(box, other.item)
    return other.piece is not None or not isinstance(other.item, Ring) or meets_ring(box, other.item)
