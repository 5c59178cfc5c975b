"""Hand-folded pleats: the heading from the front, and a hook behind a pleat."""

from __future__ import annotations

from ...document.view import Note, Rise, Running, Shape, Span, Stroke, View, Within
from ...drawing import LineType
from ...work_order.pictures.cloth import broken, cloth
from ...work_order.pictures.signs import box
from .hanging import hook_across

WIDE, DEEP, LOW = 66.0, 16.0, -34.0
FIRST, LAST, COUNT = 8.0, 8.0, 3


def _pleat(style: str, x: float) -> tuple[Shape, ...]:
    """How one pleat looks from the front."""
    if style == "pinch pleats":
        return tuple(Stroke(LineType.MARK, ((x + t * 2.2, 0.0), (x, -DEEP)), "heading.fingers") for t in (-1, 0, 1))
    if style == "box pleats":
        return (box(LineType.MARK, (x - 4.5, -DEEP), (x + 4.5, 0.0)),)
    corners = ((x - 4.5, 0.0), (x - 4.5, -DEEP), (x + 4.5, -DEEP), (x + 4.5, 0.0))
    return Stroke(LineType.MARK, ((x, 0.0), (x, -DEEP))), Stroke(LineType.FOLD, corners)


def front(style: str) -> View:
    """The whole heading from the front."""
    step = (WIDE - FIRST - LAST) / (COUNT - 1)
    places = [FIRST + i * step for i in range(COUNT)]
    shapes: list[Shape] = [
        cloth((0, LOW), (0, 0), (WIDE, 0), (WIDE, LOW)),
        broken(0, WIDE, LOW, 1.2),
        *(shape for x in places for shape in _pleat(style, x)),
    ]
    notes: list[Note] = [
        Span("finished width", 0, WIDE, LOW, "below", "heading.finished_width"),
        Span("last pleat", WIDE - LAST, WIDE, 0, "above", "heading.last_back"),
        Rise("depth", -DEEP, 0, 0, "left", "heading.heading_depth"),
        Running(tuple((x, str(i)) for i, x in enumerate(places, 1)), -DEEP, "heading.pleats"),
        Within("front", (2, LOW + 2), (WIDE / 2, -DEEP - 8)),
        Within("leading edge", (WIDE / 2, LOW + 2), (WIDE - 1, -DEEP - 8)),
    ]
    said = ""
    if style == "pinch pleats":
        said = " Each pleat is pinched into two or three fingers."
        notes.append(Within("fingers", (places[0] + 3, -DEEP + 2), (places[1] - 3, -3), about="heading.fingers"))
    return View(
        title=f"{style.capitalize()}, the front towards you",
        spoken=(
            "The panel's top from the front, pleated, its leading edge on the right. The finished width is from side "
            "edge to side edge, return and overlap with it. The last pleat is measured from the leading edge back to "
            "its seam. The heading is as deep as its pleats are sewn, from the top edge down. Pleats are counted on "
            f"one panel.{said}"
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def hook() -> View:
    """How pleats hang."""
    return hook_across(fixed="", title="A hook behind a pleat, cut across")


