"""Every guide stands uncrowded in its room, is about fields that there are, and says in words what it shows."""

from __future__ import annotations

import json
import re
import time
from collections.abc import Iterable, Iterator

import pytest

from templategen.drawing import Text
from templategen.guides import GUIDES, UNSEEN, guide_setting, guide_trees
from templategen.spec.catalogue import FIELDS
from templategen.writers.drawn import Tree
from tests.document.laws import outside, touching

ATTRIBUTES = {
    "svg": {"viewBox", "fill", "stroke", "stroke-linecap", "stroke-linejoin"},
    "g": {"fill", "stroke", "stroke-width", "stroke-linecap", "stroke-dasharray", "data-about", "class"},
    "path": {"d"},
    "circle": {"cx", "cy", "r"},
    "text": {"x", "y", "font-size", "text-anchor", "class", "transform"},
}
"""All that the page has to let through: how things look, and nothing that styles, names or points."""


@pytest.mark.parametrize("key", GUIDES)
def test_no_word_touches_anything_and_nothing_sticks_out(key: str) -> None:
    setting = guide_setting(key)
    assert touching(setting.items) == []
    assert outside(setting) == []


@pytest.mark.parametrize("key", GUIDES)
def test_it_is_no_larger_than_its_room_and_no_smaller_than_can_be_read(key: str) -> None:
    setting = guide_setting(key)
    assert 40 <= setting.width <= 84.01
    assert 20 <= setting.height <= 90


@pytest.mark.parametrize("key", GUIDES)
def test_it_is_about_fields_that_there_are_each_named_in_the_picture(key: str) -> None:
    items = guide_setting(key).items
    subjects = {item.about for item in items if item.about}
    assert subjects and subjects <= set(FIELDS)
    assert subjects == {item.about for item in items if item.about and isinstance(item, Text)}


@pytest.mark.parametrize("key", GUIDES)
def test_it_is_of_one_place_and_says_so(key: str) -> None:
    """Which side is seen, or from where, stands in its title or its sentences."""
    view = GUIDES[key]()
    assert re.search(r"front|back|from above|from the room|sheet|strip|roll|piece", f"{view.title} {view.spoken}")
    assert view.spoken.endswith(".") and not view.title.endswith(".") and len(view.title) <= 60


def _elements(node: Tree) -> Iterator[tuple[str, dict[str, str]]]:
    tag, attributes, *content = node
    assert isinstance(tag, str) and isinstance(attributes, dict)
    yield tag, attributes
    for child in content:
        if isinstance(child, list):
            yield from _elements(child)
        else:
            assert isinstance(child, str)


@pytest.mark.parametrize("key", GUIDES)
def test_its_tree_is_plain_data_with_nothing_but_how_it_looks(key: str) -> None:
    guide = guide_trees()[key]
    assert json.loads(json.dumps(guide)) == guide
    for tag, attributes in _elements(guide["picture"]):
        assert set(attributes) <= ATTRIBUTES[tag], tag


@pytest.mark.parametrize("key", GUIDES)
def test_all_that_is_about_one_field_stands_in_one_group(key: str) -> None:
    groups = [a["data-about"] for _, a in _elements(guide_trees()[key]["picture"]) if "data-about" in a]
    assert len(groups) == len(set(groups))
    assert set(groups) == {item.about for item in guide_setting(key).items if item.about}


def test_all_of_them_are_made_fast() -> None:
    guide_trees.cache_clear()
    start = time.perf_counter()
    assert set(guide_trees()) == set(GUIDES)
    assert time.perf_counter() - start < 2


PLACES = {"heading.style": "heading", "panel.heading.style": "old heading", "hem.style": "hem"}
"""How the keys of the guides of a style begin, by the field that chooses it."""


def _lit(keys: Iterable[str]) -> set[str]:
    """All fields that these guides are about."""
    return {item.about for key in keys for item in guide_setting(key).items if item.about}


def _of_style(chooser: str, style: str) -> list[str]:
    """The keys of a style's guides: its own, and those with more of it."""
    own = f"{PLACES[chooser]}: {style}"
    return [key for key in GUIDES if key == own or key.startswith(f"{own}, ")]


@pytest.mark.parametrize("path", sorted(set(FIELDS) - set(UNSEEN)))
def test_every_field_is_lit_whatever_style_has_it(path: str) -> None:
    field = FIELDS[path]
    if path in _lit(key for key in GUIDES if not key.startswith(tuple(f"{place}: " for place in PLACES.values()))):
        return
    chooser = field.chooser or f"{field.table}.style"
    for style in field.styles or FIELDS[chooser].choices:
        assert path in _lit(_of_style(chooser, style)), style


@pytest.mark.parametrize("key", GUIDES)
def test_a_guide_of_a_style_is_about_nothing_that_the_style_has_not(key: str) -> None:
    for chooser, place in PLACES.items():
        if key.startswith(f"{place}: "):
            style = key.removeprefix(f"{place}: ").partition(", ")[0]
            assert style in FIELDS[chooser].choices
            for path in _lit([key]):
                assert FIELDS[path].there({chooser: style}), path


def test_what_no_guide_can_show_is_a_field_that_none_shows() -> None:
    assert set(UNSEEN) <= set(FIELDS)
    assert not set(UNSEEN) & _lit(GUIDES)
    assert not {path for path in UNSEEN if FIELDS[path].kind in ("length", "lengths", "count")} - {"tape_step"}
