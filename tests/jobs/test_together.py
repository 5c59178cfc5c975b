"""What is kept alike over the windows, and who is told that it contradicts that."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest

from templategen.lengths import Length, inches, read_length
from templategen.planning import JobPlan, WindowPlan
from templategen.planning.jobs.together import finished_length, head_height

from .building import planned, told

FLOOR = ('keep = "head height"', 'keep = "floor line"')
LENGTH = ('keep = "head height"', 'keep = "finished length"')
NOTHING_KEPT = ('[together]\nkeep = "head height"\n', "")
LEVEL = ('["13 1/8 in", "13 in", "12 7/8 in"]', '["13 1/8 in"]')
"""The west window's floor made level, at the mark that fits its panels' length."""
NORTH = 'panel.count = 2\ndrop.floor_marks = ["13 5/8 in"]\n\n[[window]]\nname = "west'


def north(lines: str) -> tuple[str, str]:
    """The north window given other lines about its drop."""
    return NORTH, NORTH.replace('drop.floor_marks = ["13 5/8 in"]', lines)


def window(plan: JobPlan, label: str) -> WindowPlan:
    (found,) = [window for window in plan.windows if window.label == label]
    return found


def lengths(plan: JobPlan) -> list[Length | None]:
    return [finished_length(window.plan) for window in plan.windows]


# --- one floor line --------------------------------------------------------------------------------


def test_one_floor_line_is_one_clearance_above_each_floor() -> None:
    plan = planned(FLOOR)
    assert not told(plan, "hems_off_line")
    for each in plan.windows:
        for mark in each.plan.drop.marks:  # the finished edge once it hangs is the shift higher than marked
            assert mark.finish + each.plan.drop.hang_shift - mark.floor == inches("3/4")


def test_a_hem_off_the_line_is_named() -> None:
    (notice,) = told(planned(FLOOR, north('drop.floor_marks = ["13 5/8 in"]\ndrop.clearance = "13/16 in"')),
                     "hems_off_line")
    assert notice.level == "warning" and "north window" in notice.text and "13/16 in" in notice.text
    assert not told(planned(NOTHING_KEPT, north('drop.clearance = "2 in"')), "hems_off_line")
    assert not told(planned(FLOOR, north('drop.clearance = "0.75 in"')), "hems_off_line")


# --- one head height -------------------------------------------------------------------------------


def test_without_floor_marks_the_head_height_is_the_rod_to_floor_that_was_written() -> None:
    """Rod to floor is finished length, what the heading adds, and clearance: geometry, worked backwards."""
    plan = planned(north(""))
    assert head_height(window(plan, "north window").plan) == inches(82)


def test_rods_at_one_height_with_one_heading_make_finished_lengths_alike() -> None:
    """95 1/2 in panels marked at 13 1/8 in, 96 in panels at 13 5/8 in: the same length is left of both."""
    plan = planned(LEVEL)
    assert len(set(lengths(plan))) == 1
    assert not told(plan, "heads_differ")


@pytest.mark.parametrize(("mark", "off"), [("13 3/8 in", False), ("13 5/16 in", True), ("13 7/8 in", False),
                                           ("13 15/16 in", True)])  # fmt: skip
def test_a_rod_that_would_hang_elsewhere_is_named_beyond_a_quarter_inch(mark: str, off: bool) -> None:
    """UFGS-12491N: panels are made within 1/4 in."""
    notices = told(planned(LEVEL, north(f'drop.floor_marks = ["{mark}"]')), "heads_differ")
    assert len(notices) == off
    if off:
        assert "north window" in notices[0].text and "5/16 in" in notices[0].text
        assert ("more" in notices[0].text) == (read_length(mark) < read_length("13 5/8 in"))


def test_a_panel_of_unknown_length_cannot_be_held_against_the_others() -> None:
    plan = planned(("\nlength = \"96 in\"", ""))
    assert [notice.text.split(" cannot")[0].rpartition("and ")[2] for notice in told(plan, "head_unknown")] == [
        "east window", "north window", "garden door",
    ]  # fmt: skip
    assert not told(planned(), "head_unknown")


# --- one finished length ---------------------------------------------------------------------------


def test_one_finished_length_is_the_least_that_any_window_comes_to() -> None:
    plan = planned(LENGTH, LEVEL, north('drop.floor_marks = ["14 1/8 in"]'))
    alone = planned(NOTHING_KEPT, LEVEL, north('drop.floor_marks = ["14 1/8 in"]'))
    assert set(lengths(plan)) == {min(filter(None, lengths(alone)))}
    assert lengths(plan)[1] == lengths(alone)[1]
    figure = window(plan, "east window").plan.figures["clearance"]
    assert figure.value == read_length("1 1/4 in") and "asked for 3/4 in + made shorter 1/2 in" in figure.working
    assert figure in [each for section in window(plan, "east window").plan.sections for each in section.figures]


@pytest.mark.parametrize("asked", ["80 in", "82 3/8 in", "84 1/7 in"])
def test_one_finished_length_is_the_one_that_is_written(asked: str) -> None:
    plan = planned((LENGTH[0], f'{LENGTH[1]}\nfinished_length = "{asked}"'), LEVEL)
    assert set(lengths(plan)) == {read_length(asked)}
    for each in plan.windows:
        mark = each.plan.drop.marks[0]
        assert mark.finish - mark.cut == read_length("4 5/8 in")


@pytest.mark.parametrize(
    ("mark", "level"),
    [("13 7/8 in", None), ("13 15/16 in", "note"), ("14 3/8 in", "note"), ("14 7/16 in", "note")],
)
def test_a_hem_that_leaves_its_floor_is_told_beyond_a_quarter_inch(mark: str, level: str | None) -> None:
    notices = [
        notice for notice in told(planned(LENGTH, LEVEL, north(f'drop.floor_marks = ["{mark}"]')), "off_its_floor")
        if "east window" in notice.text
    ]
    assert [notice.level for notice in notices] == ([level] if level else [])


def test_a_hem_that_comes_to_lie_on_its_floor_is_a_warning() -> None:
    def levels(asked: str) -> list[str]:
        plan = planned((LENGTH[0], f'{LENGTH[1]}\nfinished_length = "{asked}"'), LEVEL)
        return [notice.level for notice in told(plan, "off_its_floor") if "east window" in notice.text]

    assert levels("83 in") == ["note"]  # 82 3/8 in and a hair is what it comes to with a clearance of 3/4 in
    assert levels("83 1/4 in") == ["warning"]
    assert "lies" in told(planned((LENGTH[0], f'{LENGTH[1]}\nfinished_length = "84 in"')), "off_its_floor")[0].text


def test_an_uneven_floor_and_an_unknown_length_cannot_follow() -> None:
    (slopes,) = told(planned(LENGTH), "length_slopes")
    assert "west window" in slopes.text and not told(planned(LENGTH, LEVEL), "length_slopes")
    unknown = told(planned(LENGTH, ("\nlength = \"96 in\"", "")), "length_unknown")
    assert len(unknown) == 3 and {notice.level for notice in unknown} == {"warning"}
    assert not told(planned(LENGTH), "length_unknown")


def test_inches_and_millimetres_keep_the_same_length() -> None:
    plans: list[Any] = [planned(LENGTH, LEVEL), planned(LENGTH, LEVEL, ('units = "inch"', 'units = "metric"'))]
    first, second = ([mark.cut for each in plan.windows for mark in each.plan.drop.marks] for plan in plans)
    assert first == second and all(isinstance(cut.mm, Fraction) for cut in first)


# --- bought in two lots ----------------------------------------------------------------------------


def test_panels_of_two_lots_in_one_room_are_not_laid_on_one_another() -> None:
    (notice,) = told(planned(), "lots_differ")
    assert notice.level == "note" and "Children's room" in notice.text
    assert "west window 95 1/2 in; garden door 96 in" in notice.text
    assert not told(planned(('panel.length = "95 1/2 in"', 'panel.length = "96 in"')), "lots_differ")
    assert not told(planned(("Children's room", "Hall"), ('"Hall"\nrod.length = "60', '"Porch"\nrod.length = "60')),
                    "lots_differ")
