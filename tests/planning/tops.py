"""Jobs that become a casing or a gathering tape: one good job of each, and generated ones."""

from __future__ import annotations

from typing import Any

from hypothesis import strategies as st

from templategen.planning import Plan
from templategen.spec import Spec, read_spec
from tests.strategies import toml_text, workshop_literals

from .building import READING_ROOM, job, planned

_HEADING = {path: None for path in READING_ROOM if path.startswith("heading.")}
CASING: dict[str, Any] = {
    **_HEADING,
    "heading.style": "casing",
    "heading.depth": "2 in",
    "panel.header": "0 in",
}
"""A casing 3 in deep is stitched again, 2 in deep."""
TAPE: dict[str, Any] = {
    **_HEADING,
    "heading.style": "gathering tape",
    "heading.drop": "1 1/4 in",
    "heading.tape_width": "1 in",
    "panel.count": 2,
}
"""Two panels 54 in wide, drawn up to 30 in each."""


def casing(changes: dict[str, Any] | None = None) -> Plan:
    return planned({**CASING, **(changes or {})})


def tape(changes: dict[str, Any] | None = None) -> Plan:
    return planned({**TAPE, **(changes or {})})


def tape_job(changes: dict[str, Any] | None = None) -> Spec:
    return job({**TAPE, **(changes or {})})


@st.composite
def top_texts(draw: st.DrawFn) -> str:
    """The text of a spec such as a workroom meets, for a casing or a tape, its top kept, folded anew or cut."""
    fields = {path: value for path, value in draw(workshop_literals()).items() if not path.startswith("heading.")}
    metric = fields["units"] == '"metric"'

    def some(least: int, most: int) -> str:
        """Millimetres, or sixteenths of an inch."""
        number = draw(st.integers(least, most))
        return f'"{number} mm"' if metric else f'"{number * 10 // 16}/16 in"'

    fields["panel.top_turn"] = some(0, 15)
    fields["heading.top_cut"] = draw(st.sampled_from(['"0 mm"', '"0 mm"', some(10, 150)]))
    fields["heading.top_turn"] = some(0, 20)
    if draw(st.booleans()):
        fields |= {"heading.style": '"casing"', "heading.depth": some(50, 150), "heading.header": some(0, 60)}
    else:
        fields |= {
            "heading.style": '"gathering tape"',
            "heading.drop": some(3, 80),
            "heading.tape_width": some(15, 100),
        }
        for name, least, most in (("tape_top", 0, 60), ("top_fold", 0, 120), ("gathered_width", 200, 1500)):
            if draw(st.booleans()):
                fields[f"heading.{name}"] = some(least, most)
    return toml_text(fields)


def top_specs() -> st.SearchStrategy[Spec]:
    return top_texts().map(read_spec)
