"""Fields that no picture can show."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

_NAME = "a name, not a measure"
_CHOOSES = "it chooses which picture there is"
_WORDS = "it is said in words: nothing about it is laid out on the cloth or the paper"
_LABEL = "read off a label or weighed, not measured with a rule"

UNSEEN: Mapping[str, str] = MappingProxyType({
    "title": _NAME,
    "paper.name": _NAME,
    "units": _WORDS,
    "tape_step": "it is a property of the tape, not of what is measured",
    "cloth": "felt by hand, not measured",
    "rod.bracket_rating": _LABEL,
    "fabric.weight": _LABEL,
    "fabric.pile": "felt by hand, not measured",
    "fabric.washed": _WORDS,
    "fabric.shrinkage_in": _WORDS,
    "fabric.leftovers": _WORDS,
    "panel.heading.style": _CHOOSES,
    "hem.style": _CHOOSES,
    "heading.style": _CHOOSES,
    "paper.large_print": "no mark of the picture moves for it",
    "printer.bar": "which of two bars was measured stands beside each bar",
})
"""Why, by path."""
