"""What is said back of what was typed."""

from __future__ import annotations

from fractions import Fraction

import pytest

from templategen.form import understood
from templategen.form.understanding import said_of_quantity
from templategen.spec.quantities import ClothWeight, Mass, Percent, Times


def test_a_length_is_said_in_both_units_each_rounded_by_itself() -> None:
    tables = {"units": "inch", "panel": {"width": "13,7 cm", "length": "6' 2 1/2\""}}
    assert understood(tables) == {
        "panel.width": "5 3/8 in, a hair over (137 mm)", "panel.length": "74 1/2 in (1892 mm)",
    }  # fmt: skip


def test_a_number_alone_is_in_the_units_that_are_named_and_not_said_before() -> None:
    assert understood({"units": "metric", "panel": {"width": 1370}})["panel.width"] == "1370 mm (53 15/16 in)"
    assert understood({"panel": {"width": 1370}}) == {}


def test_marks_and_windows_are_said_as_a_fault_names_them() -> None:
    tables = {
        "units": "inch", "drop": {"floor_marks": ["9 in", "nine", "10 in"]},
        "window": [{"panel": {"width": "40 in"}}, {"drop": {"floor_marks": ["8 in"]}}],
    }  # fmt: skip
    assert set(understood(tables)) == {
        "drop.floor_marks[1]", "drop.floor_marks[3]", "window[1].panel.width", "window[2].drop.floor_marks[1]",
    }  # fmt: skip


def test_what_cannot_be_read_is_not_said() -> None:
    assert understood({"units": "inch", "panel": {"width": "wide", "casing": ["a"], "hem": True}}) == {}
    assert understood({"units": 5, "tape_step": {}, "panel": 7, "window": "east"}) == {}


@pytest.mark.parametrize(
    ("quantity", "said"),
    [
        (Percent(3), "3 %"),
        (Times(Fraction(5, 2)), "2.5 times as wide"),
        # 1 oz/yd² = 33.906 g/m²: ounce and yard by the 1959 agreement, NBS Circular 572, addendum.
        (ClothWeight(220), "220 g/m² (6.49 oz/yd²)"),
        (Mass(5), "5 kg (11 lb)"),
    ],
)
def test_a_quantity_is_said_in_the_units_that_people_have(quantity: object, said: str) -> None:
    assert said_of_quantity(quantity) == said  # type: ignore[arg-type]
