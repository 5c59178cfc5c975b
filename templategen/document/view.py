"""A picture as data: what is seen, in millimetres of the thing itself, and what is to be said of it.

Nothing here knows a scale or a page: ``setting.set_view`` finds the scale and a place for every word. Dimensions are
given as ISO 129-1 has them: extension lines from the thing, a dimension line with two arrow heads, the figure on it.

Shapes and notes may say what they are ``about``, a name that means something to whoever asked for the picture; it stays
with all that is drawn of them, so that a reader can point at it. Nothing that is printed shows it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, TypeAlias

from ..drawing import LineType

Point: TypeAlias = tuple[float, float]
"""In mm, x to the right and y up. Floats: a picture is looked at, never measured off."""
Side: TypeAlias = Literal["left", "right"]


@dataclass(frozen=True, slots=True)
class Stroke:
    """Points joined by lines."""

    kind: LineType
    points: tuple[Point, ...]
    about: str = ""


@dataclass(frozen=True, slots=True)
class Circle:
    kind: LineType
    centre: Point
    radius: float
    about: str = ""


@dataclass(frozen=True, slots=True)
class Hatch:
    """An area marked by slanting lines, as what is cut off is."""

    outline: tuple[Point, ...]
    about: str = ""


@dataclass(frozen=True, slots=True)
class Symbol:
    """Something that has the same size on paper whatever the scale."""

    kind: Literal["dot", "pin", "needle", "scissors"]
    at: Point
    turn: float = 0.0
    """Degrees anticlockwise from pointing to the right."""
    about: str = ""


@dataclass(frozen=True, slots=True)
class Arrow:
    """A way along which something is moved, the head at its last point."""

    points: tuple[Point, ...]
    about: str = ""


Shape: TypeAlias = Stroke | Circle | Hatch | Symbol | Arrow


@dataclass(frozen=True, slots=True)
class Label:
    """Words beside the picture, a leader line from them to a point of it."""

    text: str
    at: Point
    side: Side = "right"
    about: str = ""


@dataclass(frozen=True, slots=True)
class Within:
    """Words inside an upright rectangle of the picture; beside it, with a leader, where they have no room in it."""

    text: str
    low: Point
    high: Point
    side: Side = "right"
    at: Point | None = None
    """Where the leader then begins; None for a place of the rectangle itself."""
    about: str = ""


@dataclass(frozen=True, slots=True)
class Span:
    """A dimension from one place to another across the picture."""

    text: str
    start: float
    end: float
    y: float
    """Where on the thing its extension lines begin."""
    side: Literal["above", "below"] = "below"
    about: str = ""


@dataclass(frozen=True, slots=True)
class Rise:
    """A dimension from one height to another."""

    text: str
    low: float
    high: float
    x: float
    """Where on the thing its extension lines begin."""
    side: Side = "left"
    about: str = ""


@dataclass(frozen=True, slots=True)
class Heights:
    """Heights over one origin, on one dimension line: the running dimensions of ISO 129-1, a ring at the origin.

    The side that has them has no labels and no other dimensions.
    """

    origin: float
    places: tuple[tuple[float, str], ...]
    """Each height, and the figure that stands beside it."""
    x: float
    """Where on the thing the extension lines begin."""
    side: Side = "left"


@dataclass(frozen=True, slots=True)
class Running:
    """Places along an edge, each named above it; where there is no room for all, first, last and some others."""

    places: tuple[tuple[float, str], ...]
    y: float
    about: str = ""


Note: TypeAlias = Label | Within | Span | Rise | Heights | Running


@dataclass(frozen=True, slots=True)
class View:
    """One picture."""

    title: str
    """What it shows, in a few words: "The panel flat, wrong side up"."""
    spoken: str
    """The same for who cannot see it: all that the picture says, in sentences."""
    shapes: tuple[Shape, ...]
    notes: tuple[Note, ...] = ()
    to_scale: bool = False
    """Whether its scale is told; what is drawn so that it can be understood is not to scale."""
