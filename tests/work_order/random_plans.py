"""Plans at random, far beyond what a home has: every one can be made again from its number."""

from __future__ import annotations

from fractions import Fraction
from itertools import count
from random import Random
from typing import Any

from templategen.lengths import read_length
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
    """What it is planned from: the first of those drawn for this number that can be read."""
    drawn = (_drawn(Random(f"{number}.{attempt}")) for attempt in count())
    return next(spec for spec in drawn if spec is not None)


def _drawn(random: Random) -> Spec | None:
    units = random.choice(["inch", "metric"])

    def some(least: float, most: float) -> str:
        """A length between two in inches, small ones as often as large ones, on a graduation of the tape."""
        inches = least * (most / least) ** random.random() if least > 0 else random.uniform(least, most)
        if units == "metric":
            return f'"{inches * 25.4:.0f} mm"'
        return f'"{mixed_number(Fraction(round(inches * 16), 16))} in"'

    drop = DROPS[0] * (DROPS[1] / DROPS[0]) ** random.random()
    off = random.uniform(1, 30)
    marks = [some(off - 1, off + 1) for _ in range(random.choice([1, 1, 2, 5]))]
    fields: dict[str, Any] = {
        "title": '"Reading room, north window"',
        "units": f'"{units}"',
        "cloth": f'"{random.choice(["light", "medium", "heavy"])}"',
        "rod.length": some(20, 300),
        "rod.diameter": some(0.4, 2),
        "panel.count": str(random.choice([1, 2, 2, 4, 12])),
        "panel.width": some(*WIDTHS),
        "panel.length": some(drop + off, drop + off),
        "panel.casing": some(1.5, 5),
        "panel.header": some(0, 2),
        "panel.hem": some(0, 5),
        "panel.turn_under": some(0, 1),
        "drop.floor_marks": f"[{', '.join(marks)}]",
        "drop.clearance": some(-1, 3),
        "hem.depth": some(0.5, 6),
        "hem.turn_under": some(0.25, 1),
        "drop.hung_by": random.choice(['"old heading"', '"new heading"']),
        "heading.count": str(random.randint(*MARKS)),
    }
    styles = {path: random.choice(each.choices or each.styles) for path, each in FIELDS.items() if each.name == "style"}
    fields |= {path: f'"{style}"' for path, style in styles.items()}
    for path, field in FIELDS.items():  # what a kind asks for besides, about what a starting spec has
        if field.table in ("heading", "hem", "panel.heading") and field.there(styles):
            if field.required and path not in fields:
                usual = float(read_length(field.about.sample(units)).inches)
                fields[path] = some(usual / 2, usual * 1.6)
        elif field.table in ("heading", "hem", "panel.heading"):
            fields.pop(path, None)
    if random.random() < 0.3:
        fields |= {"sides.hem": some(1, 1), "sides.turn_under": some(1, 1), "sides.mitre": "true"}
    if random.random() < 0.3:
        fields |= {"fabric.shrinkage": '"3 %"'}
    if random.random() < 0.3:
        fields |= {"lining.ends_above": some(0.5, 2)}
    return read_without_faults(fields)
