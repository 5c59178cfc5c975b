"""The work order as plain text: the same words as on paper, in lines that a person and a screen reader can follow."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from templategen import kit_files, make_plan, read_spec
from templategen.document.blocks import (
    Blanks,
    Block,
    Figure,
    Finding,
    Findings,
    Gate,
    Heading,
    Lines,
    NumberRow,
    Numbers,
    Paragraph,
    Pictures,
    Points,
    Remark,
    Step,
)
from templategen.document.view import View
from templategen.drawing import LARGE, USUAL, Look, Text, capitalised
from templategen.layout.strips import Sizes, strips_of
from templategen.writers.text import WIDTH, text
from tests.work_order.said import words

EXAMPLES = Path(__file__).parents[2] / "out_examples"


@pytest.mark.parametrize("name", ["east-window", "childrens-corner", "local-history-room"])
def test_every_word_is_there_in_lines_that_fit(name: str) -> None:
    blocks = words(make_plan(read_spec((EXAMPLES / name / "spec.toml").read_text())))
    told = text(blocks)
    assert all(len(line) <= WIDTH for line in told.splitlines())
    flat = " ".join(told.split())
    for said in (each for block in blocks for each in said_by(block)):
        assert " ".join(said.split()) in flat


def said_by(block: Block) -> list[str]:
    """All that a block says, in words."""
    match block:
        case Numbers(rows=rows) | Blanks(rows=rows):
            return [f"{row.label}: {row.value}" for row in rows]
        case Pictures(views=views):
            return [view.spoken for view in views]
        case Points(rows=points):
            return list(points)
        case Lines(words=word):
            return [word]
        case Step(title=title, text=sentence, view=view):
            return [title, sentence, *([view.spoken] if view else [])]
        case Heading() | Paragraph() | Remark() | Gate():
            return [block.text]
    raise TypeError(block)


@pytest.mark.parametrize("look", [USUAL, LARGE], ids=["usual", "large print"])
@pytest.mark.parametrize("name", ["east-window", "childrens-corner", "local-history-room"])
def test_paper_says_what_the_text_says(name: str, look: Look) -> None:
    """Word for word, block by block; a picture is seen there, and not told."""
    for block in words(make_plan(read_spec((EXAMPLES / name / "spec.toml").read_text()))):
        items = [item for strip in strips_of([block], 185.0, Sizes(11, 9, 20, 13).seen(look)) for item in strip.items]
        flat = " ".join(item.text for item in items if isinstance(item, Text)).replace("\N{NO-BREAK SPACE}", " ")
        if isinstance(block, Numbers | Blanks):
            assert all(word in flat for row in block.rows for word in f"{row.label} {row.value}".split())
        elif isinstance(block, Step):
            assert f"{block.title} {block.text}" in flat
        elif not isinstance(block, Pictures):
            assert all(said.replace("\N{NO-BREAK SPACE}", " ") in flat for said in said_by(block))


@pytest.mark.parametrize("name", ["east-window", "childrens-corner", "local-history-room"])
def test_no_number_is_parted_from_its_fraction_or_its_unit(name: str) -> None:
    told = text(words(make_plan(read_spec((EXAMPLES / name / "spec.toml").read_text()))))
    assert not re.search(r"\d\n\s*(\d+/\d+|in\b|mm\b)", told)


def test_each_block_is_written_as_a_person_would_write_it() -> None:
    blocks = [
        Heading("Reading room", first=True),
        Paragraph("Four panels."),
        Heading("The order of work"),
        Step(1, "Measure."),
        Step(2, "Mark.", 3, "panel"),
        Remark("Heat", "Dry iron."),
        Numbers((NumberRow("cut line", "9 in", "finish line 13 5/8 in − hem 4 in − turn-under 5/8 in"),)),
        Blanks((NumberRow("Width", "54 in"),), 2),
    ]
    assert text(blocks) == (
        "Reading room\n============\n\nFour panels.\n\n\nThe order of work\n-----------------\n\n"
        "1. Measure.\n   [ ]\n\n2. Mark.\n   panel [ ] 1  [ ] 2  [ ] 3\n\nHeat: Dry iron.\n\n"
        "cut line: 9 in\n    = finish line 13 5/8 in − hem 4 in − turn-under 5/8 in\n"
        "Width: 54 in   measured: ________  ________\n"
    )


def test_a_step_has_its_title_its_templates_and_its_picture_in_words() -> None:
    seen = View("The hem folded", "The raw edge lies on line 1.", ())
    step = Step(7, "Lay the card on it.", 2, "panel", "Turn-under", seen, ("cut gauge 1, north", "cut gauge 2, north"))
    assert text([step]) == (
        "7. Turn-under. Lay the card on it.\n   Templates: cut gauge 1, north; cut gauge 2, north\n"
        "   Picture: The raw edge lies on line 1.\n   panel [ ] 1  [ ] 2\n"
    )
    assert text([Pictures((seen,))]) == "Picture: The raw edge lies on line 1.\n"


def test_gates_points_lines_and_the_names_of_tables_are_written() -> None:
    rule = "=" * WIDTH
    rows = (NumberRow("hem depth", "4 in"),)
    blocks = [Gate("All panels to this point."), Points(("thread", "pins")), Lines(2), Numbers(rows, "The new hem")]
    assert text(blocks) == (
        f"{rule}\nAll panels to this point.\n{rule}\n\n- thread\n- pins\n\nNotes:\n{'_' * WIDTH}\n{'_' * WIDTH}\n\n"
        "The new hem:\nhem depth: 4 in\n"
    )


def test_more_things_than_boxes_get_a_few_and_say_how_many_there_are() -> None:
    told = text([Step(1, "Cut.", 100, "panel")])
    assert "[ ] 36" in told and "[ ] 37" not in told and "of 100" in told


def test_a_table_of_findings_is_written_reading_first_and_a_picture_as_its_words() -> None:
    """A picture that says nothing but what words beside it say is left out."""
    rows = (Finding(("97.3 mm", "3 57/64 in"), "Letter fitted on A4", "The tray holds A4."),)
    told = text([Findings(("bar", "what", "do"), rows), Figure(20, (), "Page 5: pieces 1 to 3."), Figure(9, (), "")])
    assert told == "97.3 mm, or 3 57/64 in: Letter fitted on A4. The tray holds A4.\n\nPage 5: pieces 1 to 3.\n"


@pytest.mark.parametrize("name", ["east-window", "childrens-corner", "local-history-room"])
def test_the_first_page_is_told_in_words_as_well(name: str) -> None:
    """Every reading, and every piece with the page it is on."""
    plan = make_plan(read_spec((EXAMPLES / name / "spec.toml").read_text()))
    kit, files = kit_files(plan)
    flat = " ".join(files["work-order.txt"].decode().split())
    (findings,) = (block for block in kit.check if isinstance(block, Findings))
    assert all(reading in flat for row in findings.rows for reading in row.readings)
    for sheet in kit.sheets:
        for placed in sheet.placed:
            if placed.piece.of > 1:
                assert f"piece {placed.piece.number} (page {sheet.number})" in flat
            else:
                name = placed.piece.drawing.name
                held = flat.partition(f"Page {sheet.number}: ")[2].partition(".")[0]
                assert name in held or f"{capitalised(name)}: page {sheet.number}." in flat
