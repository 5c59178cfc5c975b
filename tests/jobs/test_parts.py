"""Alike panels are planned, drawn and told together, and everything else says whose it is."""

from __future__ import annotations

from itertools import permutations
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from templategen import draw_templates, make_plan
from templategen.document.blocks import Heading, Remark, Step
from templategen.drawing import Drawing
from templategen.planning import JobPlan, make_job_plan, record_of, tell
from templategen.spec import read_job
from templategen.templates import Choices
from templategen.templates.together import draw_job
from templategen.work_order.job import words
from tests.strategies import jobs

from .building import SHARED, WINDOWS, job, of_windows, planned


def drawn(plan: JobPlan, **choices: Any) -> list[Drawing]:
    return [drawing for drawing, _ in draw_job(plan, (), Choices(**choices))]


def test_three_windows_of_alike_panels_are_one_part() -> None:
    plan = planned()
    assert [part.labels for part in plan.parts] == [("east window", "north window", "garden door"), ("west window",)]
    pooled = plan.parts[0].plan
    assert pooled.panels == 8 and pooled.counts["panels"] == 8 and plan.panels == 10
    assert pooled.counts["loops_needed"] == 72 == 8 * 9
    assert pooled.offcut.pieces and pooled.offcut.pieces.needed == 72
    singly = [window.plan.counts["strips_needed"] for window in plan.windows if window.label != "west window"]
    assert pooled.counts["strips_needed"] == 5 < sum(singly)  # 72 loops at 16 a strip; 3 + 2 + 2 one by one


@pytest.mark.parametrize(
    "line",
    ['drop.floor_marks = ["13 9/16 in"]', 'rod.diameter = "1/2 in"', 'cloth = "heavy"', 'panel.width = "53 in"',
     'hem.depth = "3 in"', 'heading.count = 8', 'panel.length = "95 in"'],
)  # fmt: skip
def test_panels_that_differ_in_anything_are_another_part(line: str) -> None:
    east = WINDOWS[0]
    north = f'{east.replace("east", "north")}\n{line}' if "floor_marks" not in line else f'name = "north"\n{line}'
    assert len(make_job_plan(read_job(of_windows(east, north))).parts) == 2
    longer = f'{east.replace("east", "north")}\nrod.length = "70 in"\npanel.count = 7'
    assert len(make_job_plan(read_job(of_windows(east, longer))).parts) == 1


def test_alike_templates_come_once_and_say_for_which_windows() -> None:
    drawings = {drawing.name: drawing for drawing in drawn(planned())}
    assert list(drawings) == [
        "spacing strip, east window and 2 more", "spacing strip, west window", "hem gauge card",
        "cut gauge, east window and 2 more", *(f"cut gauge {number}, west window" for number in (1, 2, 3)),
        "loop ladder",
    ]  # fmt: skip
    assert drawings["spacing strip, west window"].caption[0] == "For west window."
    shared = drawings["spacing strip, east window and 2 more"]
    assert shared.caption[0] == "For east window, north window and garden door."
    assert drawings["hem gauge card"].caption[0] == "For every window."
    assert drawings["cut gauge 2, west window"].file_name == "cut-gauge-2--west-window"
    assert drawings["cut gauge 2, west window"].family == "cut gauge"


def test_several_strips_are_several_of_each() -> None:
    names = [drawing.name for drawing in drawn(planned(), half_strip=True, strips=2) if drawing.family == "half strip"]
    assert names == [f"half strip {number}, {whose}" for whose in ("east window and 2 more", "west window")
                     for number in (1, 2)]  # fmt: skip


def test_a_job_of_one_window_gives_the_templates_of_its_spec() -> None:
    read = read_job(of_windows(WINDOWS[2]))
    assert drawn(make_job_plan(read)) == draw_templates(make_plan(read.windows[0].spec))


def test_the_order_of_windows_changes_no_number_and_no_template() -> None:
    def told(order: tuple[str, ...]) -> tuple[set[Any], set[Any]]:
        plan = make_job_plan(read_job(of_windows(*order)))
        parts = {(frozenset(part.labels), tuple(sorted(part.plan.counts.items()))) for part in plan.parts}
        return parts, {(each.own_name, each.length, each.marks, each.items) for each in drawn(plan)}

    first, *others = permutations(WINDOWS)
    assert all(told(order) == told(first) for order in others[::5])


HOSTILE = ["../../etc/passwd", "a/b", "C:\\\\nul", "con.svg", "-rf", "2", "and", "east window and 2 more", "é<1>"]


def test_names_that_nobody_wishes_in_a_file_name_are_letters_and_figures_there() -> None:
    windows = (f'name = "{name}"\npanel.width = "{40 + 2 * i} in"\ndrop.floor_marks = ["{10 + i} in"]'
               for i, name in enumerate(HOSTILE))  # fmt: skip
    names = [drawing.file_name for drawing in drawn(make_job_plan(read_job(of_windows(*windows))))]
    assert len({name.casefold() for name in names}) == len(names) > 2 * len(HOSTILE)
    assert all(set("/\\.<>:\" ").isdisjoint(name) and not name.startswith("-") for name in names)


def test_a_group_that_would_be_called_as_another_window_is_numbered() -> None:
    alike = [f'name = "{name}"\ndrop.floor_marks = ["13 in"]' for name in ("a", "b")]
    other = 'name = "a and b"\npanel.width = "40 in"\ndrop.floor_marks = ["12 in"]'
    names = [drawing.name for drawing in drawn(make_job_plan(read_job(of_windows(*alike, other))))]
    assert "spacing strip, a and b" in names and "spacing strip, 2, a and b" in names and len({*names}) == len(names)


@settings(max_examples=25, suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much])
@given(jobs())
def test_every_window_has_its_templates_once(text: str) -> None:
    """Every drawing that a window's part needs is there, once, and nothing is there that no window needs."""
    plan = make_job_plan(read_job(text))
    served = draw_job(plan)
    for part in plan.parts:
        for label in part.labels:
            # Gauges that windows share come with the first of them, so that a later one's need not come by number.
            mine = sorted((drawing for drawing, labels in served if label in labels), key=lambda each: each.own_name)
            wanted = sorted(draw_templates(part.plan), key=lambda each: each.name)
            assert [drawing.own_name for drawing in mine] == [drawing.name for drawing in wanted]
            assert [drawing.items for drawing in mine] == [drawing.items for drawing in wanted]
    assert len({drawing.file_name for drawing, _ in served}) == len(served)


def test_a_window_that_alone_is_warned_is_named() -> None:
    (warned,) = [notice for notice in planned().notices if notice.level == "warning"]
    assert warned.text.startswith("west window: ") and warned.code == "floor_disagrees"


def test_what_all_windows_of_a_part_are_told_is_told_once() -> None:
    plan = planned(('rod.length = "60 in"\npanel.count = 2', 'rod.length = "600 in"\npanel.count = 2'))
    notices = plan.parts[0].plan.notices
    assert len({(notice.code, notice.text) for notice in notices}) == len(notices)
    thin = [notice.text for notice in notices if notice.code == "not_covered"]
    assert len(thin) == 1 and thin[0].startswith("garden door: ")


def test_the_work_order_has_a_part_for_each_and_the_cautions_once() -> None:
    plan = planned()
    blocks = words(plan, draw_job(plan))
    titles = [block.text for block in blocks if isinstance(block, Heading) and block.first]
    assert titles == ["Work order", "Part 1: east window, north window and garden door", "Part 2: west window"]
    assert sum(isinstance(block, Remark) and block.word == "Heat" for block in blocks) == 1
    steps = [block for block in blocks if isinstance(block, Step)]
    assert sum("Measure both bars" in step.text for step in steps) == 1
    assert {step.boxes for step in steps if step.each} == {8, 2}
    said = " ".join(getattr(block, "text", "") for block in blocks)
    assert "Of these 4 for east window, 2 for north window and 2 for garden door." in said
    assert "cut gauge 3, west window" in said


def test_one_part_alone_needs_no_number() -> None:
    plan = make_job_plan(read_job(of_windows(*WINDOWS[:2])))
    titles = [block.text for block in words(plan, draw_job(plan)) if isinstance(block, Heading) and block.first]
    assert titles == ["Work order"]


def test_the_text_tells_every_window_under_its_heading() -> None:
    text = tell(planned())
    for title in ("Reading room, east window", "Children's room, garden door"):
        assert f"\n{title}\n{'=' * len(title)}\n" in text
    assert "1. east window, north window and garden door: 8 panels" in text
    assert max(map(len, text.splitlines())) <= 96
    long = SHARED.replace("Village library", "V" * 80)
    assert max(map(len, tell(make_job_plan(read_job(of_windows(*WINDOWS, shared=long)))).splitlines())) <= 96


def test_the_record_has_the_record_of_every_window() -> None:
    record: Any = record_of(planned())
    assert (record["title"], record["units"], record["keep"]) == (job().title, "inch", "head height")
    west = record["windows"][2]
    assert (west["name"], west["room"], west["counts"]["loops"]) == ("west window", "Children's room", 7)
    assert west["lengths"]["floor_line"]["exact"] == "105/8 in" and len(west["cut_lines"]) == 3
    assert record["parts"][0]["counts"]["loops_needed"] == 72
    assert [notice["code"] for notice in record["notices"]] == ["lots_differ"]

