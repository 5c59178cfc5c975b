"""Every guide stands uncrowded in its room, is about fields that there are, and says in words what it shows."""

from __future__ import annotations

import json
import re
import time
from collections.abc import Iterator

import pytest

from templategen.drawing import Text
from templategen.guides import GUIDES, guide_setting, guide_trees
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
    assert 60 <= setting.width <= 84.01
    assert 28 <= setting.height <= 90


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
