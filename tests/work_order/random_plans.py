"""Plans at random, far beyond what a home has: every one can be made again from its number."""

from __future__ import annotations

from fractions import Fraction
from random import Random
from typing import Any

from templategen.lengths.showing import mixed_number
from templategen.planning import Plan, make_plan
from templategen.spec import FIELDS, Spec
from tests.strategies import read_without_faults

WIDTHS, DROPS, MARKS = (12, 300), (10, 300), (3, 41)
"""Widths and drops in inches, marks along the heading: what the pictures have to bear."""


def random_plan(number: int) -> Plan:
    """The plan of this number: any heading, any hem, on a panel that came with any heading."""
    return make_plan(random_spec(number))


def random_spec(number: int) -> Spec:
    """What it is planned from."""
    random = Random(number)
    units = random.choice(["inch", "metric"])

    def some(least: float, most: float) -> str:
        """A length between two in inches, small ones as often as large ones, on a graduation of the tape."""
        inches = least * (most / least) ** random.random() if least > 0 else random.uniform(least, most)
        return f'"{mixed_number(Fraction(round(inches * 16), 16))} in"' if units == "inch" else f'"{inches * 25.4:.0f} mm"'

    drop = DROPS[0] * (DROPS[1] / DROPS[0]) ** random.random()
    long = drop + random.uniform(1, 30)
    fields: dict[str, Any] = {
        "title": '"Reading room, north window"',
        "units": f'"{units}"',
        "cloth": f'"{random.choice(["light", "medium", "heavy"])}"',
        "rod.length": some(20, 300),
        "rod.diameter": some(0.4, 2),
        "panel.count": str(random.choice([1, 2, 2, 4, 12])),
        "panel.width": some(*WIDTHS),
        "panel.length": some(long, long),
        "panel.casing": some(1.5, 5),
        "panel.header": some(0, 2),
        "panel.hem": some(0, 5),
        "panel.turn_under": some(0, 1),
        "drop.floor_marks": f"[{', '.join(some(long - drop - 1, long - drop + 1) for _ in range(random.choice([1, 1, 2, 5])))}]",
        "drop.clearance": some(-1, 3),
        "hem.depth": some(0.5, 6),
        "hem.turn_under": some(0.25, 1),
        "drop.hung_by": random.choice(['"old heading"', '"new heading"']),
        "heading.count": str(random.randint(*MARKS)),
    }
    for path, field in FIELDS.items():
        if field.name == "style":
            fields[path] = f'"{random.choice(field.choices or field.styles)}"'
    if random.random() < 0.3:
        fields |= {"sides.hem": some(1, 1), "sides.turn_under": some(1, 1), "sides.mitre": "true"}
    if random.random() < 0.3:
        fields |= {"fabric.shrinkage": '"3 %"'}
    if random.random() < 0.3:
        fields |= {"lining.ends_above": some(0.5, 2)}
    return read_without_faults(fields)
