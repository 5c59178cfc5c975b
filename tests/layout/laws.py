"""Drawings and kits for the laws of layout, in one home."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache

from hypothesis import seed
from hypothesis import strategies as st

from templategen import Options, make_plan, read_spec
from templategen.document.blocks import Heading, Paragraph
from templategen.drawing import Drawing
from templategen.layout import Kit
from templategen.making import laid_out
from templategen.options import choices_of
from templategen.planning import as_job
from templategen.templates import Choices, draw_templates
from templategen.templates.together import draw_job
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


alike = seed(19)
"""Laws of whole kits try the same texts, so that each kit is made once for all of them."""

A_PAGE = (Heading("Work order", first=True), Paragraph("What the templates are for is said elsewhere."))
"""Words in place of a work order: it takes the most of a kit's making, and has tests of its own."""


@lru_cache(maxsize=64)
def kit_of(
    text: str, orientation: str | None = None, only: tuple[str, ...] = (), paper: str | None = None
) -> Kit:
    """The kit of a spec, stops or no, with a page of words; of ``only`` some templates where they are named."""
    plan, options = as_job(make_plan(read_spec(text))), Options(paper, despite_stops=True, orientation=orientation)
    drawn = [drawing for drawing, _ in draw_job(plan, only, choices_of(plan.spec, options))]
    return laid_out(plan, options, "Templates", lambda paper: A_PAGE, drawn, check=True)
