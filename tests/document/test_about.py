"""What shapes and notes are about stays with all that is drawn of them, and moves nothing."""

from __future__ import annotations

from dataclasses import replace
from typing import TypeAlias

import pytest

from templategen.document.setting import set_view
from templategen.document.view import (
    Arrow,
    Circle,
    Hatch,
    Label,
    Rise,
    Running,
    Shape,
    Span,
    Stroke,
    Symbol,
    View,
    Within,
)
from templategen.drawing import Line, LineType, Ring, Solid, Text

PLATE = Stroke(LineType.CUT, ((0, 0), (60, 0), (60, 40), (0, 40), (0, 0)))
SHAPES: list[Shape] = [
    Stroke(LineType.FOLD, ((5, 5), (50, 5))),
    Circle(LineType.MARK, (30, 20), 5),
    Hatch(((2, 2), (20, 2), (20, 12), (2, 12))),
    Arrow(((10, 30), (40, 30))),
    *(Symbol(kind, (40, 15)) for kind in ("dot", "pin", "needle", "scissors")),
]
Said: TypeAlias = Label | Within | Span | Rise | Running
NOTES: list[Said] = [
    Label("a label that is so long that it is set in rows", (50, 30)),
    Within("inside", (0, 0), (60, 40)),
    Within("no room in it, so beside", (0, 0), (2, 2)),
    Span("across", 0, 60, 0),
    Span("tiny", 10, 11, 40, "above"),
    Rise("up", 0, 40, 0),
    Rise("tiny", 10, 11, 60, "right"),
    Running(((0, "1"), (30, "2"), (60, "3")), 40),
]


def _about(view: View) -> list[Line | Ring | Solid | Text]:
    return [item for item in set_view(view, 120, 9).items if item.about]


@pytest.mark.parametrize("shape", SHAPES, ids=str)
def test_a_shape_keeps_it(shape: Shape) -> None:
    plain = View("", "", (PLATE, shape))
    found = _about(View("", "", (PLATE, replace(shape, about="it"))))
    assert len(found) == len(set_view(plain, 120, 9).items) - 4 > 0
    assert {item.about for item in found} == {"it"}


@pytest.mark.parametrize("note", NOTES, ids=str)
def test_a_note_keeps_it_and_everything_stands_where_it_would(note: Said) -> None:
    plain = set_view(View("", "", (PLATE,), (note,)), 120, 9)
    about = set_view(View("", "", (PLATE,), (replace(note, about="it"),)), 120, 9)
    assert len([item for item in about.items if item.about == "it"]) == len(plain.items) - 4 > 0
    assert tuple(replace(item, about="") for item in about.items) == plain.items
