"""How a panel hangs, in the words that people use: read for certain, or refused with what would be right."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from templategen.errors import Refusal
from templategen.lengths import NOTHING, inches, millimetres
from templategen.spec.hangs import MOST_PLACES, MOST_TEXT, HangReading, read_hangs

SAID = [
    ("left 1/4 in low", [("left", None, None, inches("1/4"))]),
    ("Left edge 1/4 in too low", [("left", None, None, inches("1/4"))]),
    ("at the right side: 3 mm high", [("right", None, None, millimetres(-3))]),
    ("left 1/4 in low, middle good, right 1/8 in high",
     [("left", None, None, inches("1/4")), ("middle", None, None, NOTHING), ("right", None, None, inches("-1/8"))]),
    ("left 0,5 cm low and centre ok", [("left", None, None, millimetres(5)), ("middle", None, None, NOTHING)]),
    ("1/4 in low", [(None, None, None, inches("1/4"))]),
    ("loop 3 1/2 in low; mark 12 good", [(None, 3, None, inches("1/2")), (None, 12, None, NOTHING)]),
    ("20 in from the left 1/8 low", [(None, None, inches(20), inches("1/8"))]),
    ("at 2 ft 3 in from the left edge 1 1/8 in high", [(None, None, inches(27), inches("-9/8"))]),
    ("left 1/4 in low\nright 1/4 in low", [("left", None, None, inches("1/4")), ("right", None, None, inches("1/4"))]),
]  # fmt: skip


@pytest.mark.parametrize(("text", "means"), SAID, ids=[text for text, _ in SAID])
def test_what_people_say_is_understood(text: str, means: list[tuple[object, ...]]) -> None:
    read = read_hangs(text, "inch")
    assert [(each.side, each.mark, each.from_left, each.low) for each in read] == means


REFUSED = [
    ("", "nothing is said"),
    ("middle right", '"right" is a side here'),
    ("left 1/4 in", "not understood"),
    ("a bit low", "write"),
    ("left -1/4 in low", "which way"),
    ("left 1,234 mm low", "1,234"),
    ("left 1 furlong low", "not a unit"),
    ("left 70 m low", "more than 60 m"),
    ("x" * (MOST_TEXT + 1), "characters"),
    ("; ".join(["left 1 mm low"] * (MOST_PLACES + 1)), "places"),
]


@pytest.mark.parametrize(("text", "why"), REFUSED, ids=[why for _, why in REFUSED])
def test_what_is_not_certain_is_refused(text: str, why: str) -> None:
    with pytest.raises(Refusal) as refusal:
        read_hangs(text, "inch")
    assert all(fault.field == "--hangs" for fault in refusal.value.faults)
    assert why in str(refusal.value)


def test_every_fault_is_told_at_once() -> None:
    with pytest.raises(Refusal) as refusal:
        read_hangs("left a bit low, middle right, right 1/4 in low", "inch")
    assert len(refusal.value.faults) == 2


@given(st.text(max_size=200))
def test_any_text_is_read_or_refused(text: str) -> None:
    try:
        read = read_hangs(text, "metric")
    except Refusal as refusal:
        assert refusal.faults
    else:
        assert read and all(isinstance(each, HangReading) for each in read)
