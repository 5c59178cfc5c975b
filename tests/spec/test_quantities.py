"""Quantities with units of their own: every form people write, exactly; refused where it is not certain."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from templategen.errors import Refusal
from templategen.lengths.units import length_of
from templategen.spec import FIELDS, read_spec
from templategen.spec.catalogue import SpecField
from templategen.spec.quantities import (
    ClothWeight,
    Mass,
    Percent,
    Quantity,
    QuantityError,
    Times,
    quantity_of,
    read_quantity,
)
from templategen.spec.values import Wrong, read_value
from tests.strategies import toml_text

from .test_reading import FIELDS_OF_A_SPEC

OZ = Fraction("28.349523125")
"""Grammes in an ounce: 1 lb = 0.45359237 kg, NBS Circular 572, addendum, 1959."""
YD2 = Fraction("0.83612736")
"""Square metres in a square yard: the same."""

READ: list[tuple[type[Quantity], str, Fraction]] = [
    (Percent, "3 %", Fraction(3)),
    (Percent, "3%", Fraction(3)),
    (Percent, "3", Fraction(3)),
    (Percent, "2 1/2 per cent", Fraction(5, 2)),
    (Percent, "2½ percent", Fraction(5, 2)),
    (Percent, "2,5 %", Fraction(5, 2)),
    (Percent, "0.5 %", Fraction(1, 2)),
    (Percent, "0", Fraction(0)),
    (ClothWeight, "220 g/m2", Fraction(220)),
    (ClothWeight, "220 g/m²", Fraction(220)),
    (ClothWeight, "220g / m^2", Fraction(220)),
    (ClothWeight, "220 gsm", Fraction(220)),
    (ClothWeight, "220 g/sq m", Fraction(220)),
    (ClothWeight, "220 grams per square meter", Fraction(220)),
    (ClothWeight, "220 grammes per square metre", Fraction(220)),
    (ClothWeight, "0.22 kg/m2", Fraction(220)),
    (ClothWeight, "6.5 oz/yd2", Fraction("6.5") * OZ / YD2),
    (ClothWeight, "6 1/2 oz/sq. yd", Fraction("6.5") * OZ / YD2),
    (ClothWeight, "6½ oz per square yard", Fraction("6.5") * OZ / YD2),
    (ClothWeight, "6.5 ounces per square yard", Fraction("6.5") * OZ / YD2),
    (Mass, "5 kg", Fraction(5)),
    (Mass, "500 g", Fraction(1, 2)),
    (Mass, "2 kg 500 g", Fraction(5, 2)),
    (Mass, "11 lbs", 11 * 16 * OZ / 1000),
    (Mass, "2 lb 4 oz", 36 * OZ / 1000),
    (Mass, "2 pounds 2 ounces", 34 * OZ / 1000),
    (Times, "2", Fraction(2)),
    (Times, "2.5 times", Fraction(5, 2)),
    (Times, "2½ x", Fraction(5, 2)),
    (Times, "3×", Fraction(3)),
]


@pytest.mark.parametrize(("kind", "text", "value"), READ, ids=[f"{k.__name__} {t}" for k, t, _ in READ])
def test_what_people_write_is_read_exactly(kind: type[Quantity], text: str, value: Fraction) -> None:
    assert read_quantity(kind, text) == kind(value)
    assert read_quantity(kind, f"  {text.upper()}\u00a0") == kind(value)


REFUSED: list[tuple[type[Quantity], str, str]] = [
    (Percent, "", "empty"),
    (Percent, "%", "no number"),
    (Percent, "three", "no number"),
    (Percent, "2-3 %", "no number"),
    (Percent, "0.03", "write 3 % or 0.03 %"),
    (Percent, "3 % 4 %", "more than one"),
    (Percent, "1,234 %", "thousands or decimals"),
    (Percent, "3 in", "“in” is not a unit"),
    (Percent, "3 " * 40, "characters"),
    (ClothWeight, "220", "without a unit"),
    (ClothWeight, "6.5 oz", "running yard"),
    (ClothWeight, "12 oz per yard", "running yard"),
    (ClothWeight, "220 g", "running metre"),
    (ClothWeight, "300 g/m", "running metre"),
    (ClothWeight, "6 lb 2 oz", "more than one"),
    (Mass, "5", "without a unit"),
    (Mass, "2 lb 20 oz", "as many as one lb or more"),
    (Mass, "2 oz 2 lb", "more than one"),
    (Mass, "1 kg 2 lb", "more than one"),
    (Mass, "1 lb 2 oz 3 g", "more than one"),
    (Times, "100 %", "different|twice"),
    (Times, "200 per cent", "200 % is twice, UFGS-12491N"),
]


@pytest.mark.parametrize(("kind", "text", "why"), REFUSED, ids=[f"{k.__name__} {t[:20]}" for k, t, _ in REFUSED])
def test_what_is_not_certain_is_refused(kind: type[Quantity], text: str, why: str) -> None:
    with pytest.raises(QuantityError, match=why):
        read_quantity(kind, text)


@given(st.text(max_size=70) | st.text("0123456789 %/.,²ozgmydlbk½-", max_size=20))
def test_any_text_is_read_or_refused(text: str) -> None:
    for kind in (Percent, ClothWeight, Mass, Times):
        try:
            assert isinstance(read_quantity(kind, text).value, Fraction)
        except QuantityError as error:
            assert str(error)


@given(st.fractions(0, 1000, max_denominator=64))
def test_ounces_and_grammes_agree(number: Fraction) -> None:
    """An ounce to the square yard, held against the yard that lengths are read in."""
    yard = length_of(Fraction(1), "yd").mm / 1000
    assert read_quantity(ClothWeight, f"{number} oz/yd2").value == number * OZ / yard**2


def field(path: str) -> SpecField:
    return FIELDS[path]


def test_a_bare_number_in_the_file() -> None:
    assert read_value(field("fabric.shrinkage"), 3, None) == Percent(Fraction(3))
    assert read_value(field("fabric.shrinkage"), 2.5, "metric") == Percent(Fraction(5, 2))
    assert quantity_of(Times, Fraction(2)) == Times(Fraction(2))
    for path, value in (("fabric.weight", 220), ("rod.bracket_rating", 5), ("fabric.shrinkage", 0.03)):
        with pytest.raises(Wrong):
            read_value(field(path), value, "metric")


@pytest.mark.parametrize(
    ("path", "value", "right"),
    [
        ("fabric.weight", "9.9 g/m2", "less than 10 g/m2"),
        ("fabric.weight", "2001 g/m2", "more than 2000 g/m2"),
        ("fabric.weight", "-3 g/m2", "less than 10 g/m2"),
        ("fabric.shrinkage", "25.1 %", "more than 25 %"),
        ("fabric.shrinkage", True, "not a number and its unit"),
        ("fabric.shrinkage", float("nan"), "not a number and its unit"),
        ("fabric.shrinkage", [3], "not a number and its unit"),
        ("rod.bracket_rating", "0 kg", "less than 100 g"),
        ("rod.fullness", "0.5 times", "less than 1 time"),
        ("rod.fullness", "100 %", "100 % is as wide as the rod to some"),
    ],
)
def test_a_refusal_names_the_field_and_what_would_be_right(path: str, value: object, right: str) -> None:
    with pytest.raises(Wrong) as wrong:
        read_value(field(path), value, "inch")
    (fault,) = wrong.value.faults
    assert fault.field == path and right in fault.right and "for example" in fault.right


def test_the_limits_themselves_are_taken() -> None:
    for path, value in (("fabric.weight", "10 g/m2"), ("fabric.weight", "2000 gsm"), ("fabric.shrinkage", "25 %"),
                        ("fabric.shrinkage", 0), ("rod.bracket_rating", "100 g"), ("rod.fullness", 10)):  # fmt: skip
        read_value(field(path), value, "inch")


NEEDS: list[tuple[dict[str, str], str]] = [
    ({"rod.bracket_rating": '"5 kg"'}, "fabric.weight"),
    ({"fabric.repeat": '"12 in"'}, "fabric.repeat_at"),
    ({"fabric.repeat_at": '["5 in"]'}, "fabric.repeat"),
    ({"fabric.repeat_above_hem": '"2 in"', "fabric.repeat_at": '["5 in"]'}, "fabric.repeat"),
    ({"panel.lots": '["95 in"]'}, "panel.length"),
    ({"fabric.weight": '"220 g/m2"'}, "panel.length"),
    ({"fabric.shrinkage": '"3 %"'}, "panel.length"),
    ({"fabric.repeat": '"12 in"', "fabric.repeat_at": '["5 in", "6 in", "7 in"]', "panel.count": "2"},
     "fabric.repeat_at"),
]  # fmt: skip


@pytest.mark.parametrize(("given", "missing"), NEEDS)
def test_what_is_of_no_use_alone_is_refused_with_what_it_needs(given: dict[str, str], missing: str) -> None:
    fields = {path: text for path, text in FIELDS_OF_A_SPEC.items() if path != "panel.length"}
    with pytest.raises(Refusal) as refused:
        read_spec(toml_text(fields | given))
    assert [fault.field for fault in refused.value.faults] == [missing]


def test_what_needs_nothing_more_is_taken() -> None:
    fields = {path: text for path, text in FIELDS_OF_A_SPEC.items() if path != "panel.length"}
    for others in ({"fabric.shrinkage": "0"}, {"fabric.shrinkage": "3", "fabric.washed": "true"}):
        read_spec(toml_text(fields | others))
