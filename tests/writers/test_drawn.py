"""A picture as data: what is about something together, its type as text in the places where outlines would stand."""

from __future__ import annotations

from templategen.drawing import MM_PER_POINT, Anchor, Item, Line, LineType, Ring, Solid, Text
from templategen.writers.drawn import Letters, Tree, picture, tree

ITEMS: list[Item] = [
    Line(LineType.CUT, 0, 0, 10, 0),
    Line(LineType.CUT, 0, -5, 10, -5, "a.width"),
    Text(5, -8, "width", 10, Anchor.MIDDLE, about="a.width"),
    Ring(LineType.MARK, 5, -15, 2, "a.depth"),
    Solid(((0, 0), (1, 0), (1, 1)), "a.width"),
    Text(0, -18, "3 5/8 in", 10, bold=True),
]


def _children(node: Tree, tag: str) -> list[Tree]:
    return [child for child in node[2:] if isinstance(child, list) and child[0] == tag]


def _all(node: Tree, tag: str) -> list[Tree]:
    found = _children(node, tag)
    for child in node[2:]:
        if isinstance(child, list):
            found += _all(child, tag)
    return found


def test_all_that_is_about_one_thing_is_one_group_after_what_is_about_nothing() -> None:
    groups = _children(tree(ITEMS, 10, 20), "g")
    subjects = [group[1].get("data-about") for group in groups if isinstance(group[1], dict)]
    assert subjects == [None, None, "a.width", "a.depth"]
    width, depth = groups[2:]
    assert len(_all(width, "text")) == 1 and len(_all(width, "path")) == 2
    assert len(_all(depth, "circle")) == 1 and not _all(depth, "path")


def test_what_is_about_nothing_is_drawn_as_ever() -> None:
    plain: list[Item] = [Line(LineType.CUT, 0, 0, 10, 0), Text(0, -18, "3", 10)]
    drawn = picture(plain, 10, 20, Letters(), 0.28)
    assert drawn.attrib["style"] == "width:3.14rem"
    assert [child.tag for child in drawn.iter()] == ["svg", "g", "path", "g", "g", "g", "use"]


def test_a_text_of_one_size_is_one_element_at_its_anchor() -> None:
    (text,) = _all(_children(tree(ITEMS, 10, 20), "g")[2], "text")
    size = f"{10 * MM_PER_POINT:.3g}"
    assert text == ["text", {"x": "5.00", "y": "8.00", "font-size": size, "text-anchor": "middle"}, "width"]


def test_parts_of_a_built_fraction_stand_where_its_outlines_do() -> None:
    (line,) = [g for g in _all(tree(ITEMS, 10, 20), "g") if isinstance(g[1], dict) and g[1].get("class") == "bold"]
    fraction = ITEMS[-1]
    assert isinstance(fraction, Text)
    placed = [(run.text.replace(" ", "\N{NO-BREAK SPACE}"), f"{x:.2f}", f"{-y:.2f}") for run, x, y in fraction.runs()]
    assert len(placed) == 5
    texts = _children(line, "text")
    assert [(t[2], t[1]["x"], t[1]["y"]) for t in texts if isinstance(t[1], dict)] == placed


def test_text_that_is_turned_is_turned_about_its_place() -> None:
    (text,) = _all(tree([Text(5, -8, "up", 10, turn=90)], 10, 20), "text")
    assert isinstance(text[1], dict) and text[1]["transform"] == "rotate(-90 5.00 8.00)"
