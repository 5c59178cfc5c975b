"""Guides set and drawn as data, for a page that shows them beside its fields."""

from __future__ import annotations

from functools import cache
from typing import TypedDict

from ..document.setting import Setting, set_view
from ..writers.drawn import Tree, tree
from .table import GUIDES

WIDTH, SIZE, TALLEST = 84.0, 10.0, 62.0
"""Mm of a guide's width, points of its type, and how high its shapes are at the most, in mm. Our choice: a column
beside a form, its words as large as the form's; with dimensions above and below it stays under 90 mm."""


class Guide(TypedDict):
    """A guide as the page gets it."""

    title: str
    spoken: str
    picture: Tree


def guide_setting(key: str) -> Setting:
    """The guide of a key, on its room. Raises KeyError."""
    return set_view(GUIDES[key](), WIDTH, SIZE, TALLEST)


@cache
def guide_trees() -> dict[str, Guide]:
    """Every guide by key; made once, and not to be changed by whoever gets it."""
    found: dict[str, Guide] = {}
    for key, view_of in GUIDES.items():
        view, setting = view_of(), guide_setting(key)
        found[key] = {
            "title": view.title,
            "spoken": view.spoken,
            "picture": tree(setting.items, setting.width, setting.height),
        }
    return found
