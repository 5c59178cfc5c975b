"""What is said of a kit's paper: counts that are the kit's own, and no more of fewer sheets than is known."""

from __future__ import annotations

from dataclasses import replace

import pytest

from templategen import Options, make_kit, make_plan, read_spec
from templategen.layout import Kit, tell_on_paper, tell_sheets
from templategen.layout.packing import Bound
from tests.bench.jobs import ORDINARY


def _kit(*only: str, paper: str = "letter") -> Kit:
    return make_kit(make_plan(read_spec(ORDINARY)), Options(paper=paper, only=only))


@pytest.mark.parametrize(
    ("bound", "said"),
    [
        (Bound(4, 4), "; no layout takes fewer."),
        (Bound(4, 3), "; no layout takes fewer."),
        (Bound(3, 4), "; no layout in rows takes fewer."),
        (Bound(3, 2), "; 3 might do."),
        (Bound(2, 3), "; 3 might do."),
    ],
)
def test_fewer_sheets_are_ruled_out_only_by_the_bound_that_does(bound: Bound, said: str) -> None:
    kit = replace(_kit(), bound=bound)
    assert tell_sheets(kit) == f"Letter paper: {len(kit.sheets)} sheets, 4 of them with templates{said}"


def test_one_sheet_of_templates_needs_no_word_on_fewer() -> None:
    assert tell_sheets(_kit("cut gauge")) == "Letter paper: 1 sheet, all with templates."
    assert tell_sheets(_kit("cut gauge", "print check")) == "Letter paper: 2 sheets, 1 of them with templates."


def test_words_alone_are_counted_alone() -> None:
    kit = _kit("work order", paper="a4")
    assert tell_sheets(kit) == f"A4 paper: {len(kit.sheets)} sheets."


def test_the_end_of_a_plan_names_every_template() -> None:
    kit = _kit()
    told = tell_on_paper(kit)
    assert told.startswith(f"On paper\n  {tell_sheets(kit)}\n\nHow true the templates come\n")
    assert all(f"\n  {drawing.name.capitalize()}: " in told for drawing in kit.drawings)
