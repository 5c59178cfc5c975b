"""Drawings and kits for the laws of layout, in one home."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache

from hypothesis import strategies as st

from templategen import Options, make_kit, make_plan, read_spec
from templategen.drawing import Drawing
from templategen.layout import Kit
from templategen.templates import Choices, draw_templates
from tests.strategies import toml_text, workshop_literals


@st.composite
def drawings(draw: st.DrawFn) -> Drawing:
    """A template of a spec such as a workroom meets."""
    plan = make_plan(read_spec(toml_text(draw(workshop_literals()))))
    drawn = draw_templates(plan, (), Choices(half_strip=draw(st.booleans())))
    return drawn[draw(st.integers(0, len(drawn) - 1))]


def reaches() -> st.SearchStrategy[Fraction]:
    """How long a piece may be, in mm."""
    return st.integers(1080, 4000).map(lambda tenths: Fraction(tenths, 10))


@st.composite
def kit_texts(draw: st.DrawFn) -> str:
    """Such a spec, for one of the usual papers and a printer that may be out in either direction."""
    fields = draw(workshop_literals()) | {
        "paper.name": f'"{draw(st.sampled_from(["letter", "a4", "legal", "tabloid", "a3"]))}"',
        "printer.across": f'"{draw(st.integers(9700, 10300)) / 100} mm"',
        "paper.orientation": f'"{draw(st.sampled_from(["portrait", "landscape", "least"]))}"',
        "paper.half_strip": draw(st.sampled_from(["true", "false"])),
        "paper.large_print": draw(st.sampled_from(["true", "false"])),
        "paper.strips": str(draw(st.integers(1, 3))),
        "printer.along": f'"{draw(st.integers(9700, 10300)) / 100} mm"',
    }
    return toml_text(fields)


@lru_cache(maxsize=64)
def kit_of(text: str) -> Kit:
    """The kit of a spec, stops or no."""
    return make_kit(make_plan(read_spec(text)), Options(despite_stops=True))
