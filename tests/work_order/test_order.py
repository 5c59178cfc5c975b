"""The work order's steps: right for the odd job too, and in an order that spoils no cloth."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from templategen import Choices, make_plan, read_spec
from templategen.document.blocks import Blanks, Remark, Step
from tests.work_order.said import words

EXAMPLE = (Path(__file__).parents[2] / "out_examples" / "east-window" / "spec.toml").read_text()
UNEVEN = (Path(__file__).parents[2] / "out_examples" / "childrens-corner" / "spec.toml").read_text()


def _steps(text: str = EXAMPLE, **changes: str) -> list[str]:
    return [block.text for block in _blocks(text, **changes) if isinstance(block, Step)]


def _blocks(text: str = EXAMPLE, **changes: str) -> list[object]:
    """The work order of a spec in which each ``name`` has been given another value."""
    for name, value in changes.items():
        (old,) = [line for line in text.splitlines() if line.startswith(f"{name} =")][:1]
        text = text.replace(old, f"{name} = {value}", 1)
    return [*words(make_plan(read_spec(text)))]


def _first(steps: list[str], *said: str) -> int:
    return next(i for i, step in enumerate(steps) if all(word in step for word in said))


def test_nothing_is_cut_before_the_checks_and_one_panel_is_tried_first() -> None:
    steps = _steps()
    cut = _first(steps, "cut on the cut line")
    assert steps[cut].startswith("When they agree, cut")
    assert _first(steps, "Measure both bars") < _first(steps, "Put a pin") < _first(steps, "cut gauge", "pin;") < cut
    assert cut < _first(steps, "fold-to line 1") < _first(steps, "press a hem") < _first(steps, "Stitch the hem")
    assert _first(steps, "Stitch the hem") < _first(steps, "On one panel tack") < _first(steps, "By hand")
    assert _first(steps, "By hand") < _first(steps, "Hang the panel on the rod")
    assert "On the panel tack" in " ".join(_steps(count="1"))


def test_the_checks_stand_right_before_the_cut() -> None:
    blocks = _blocks()
    at = next(i for i, block in enumerate(blocks) if isinstance(block, Blanks))
    checks, blades, cut = blocks[at : at + 3]
    assert isinstance(checks, Blanks) and [row.value for row in checks.rows][:2] == ["54 in", "13 5/8 in"]
    assert isinstance(blades, Remark) and blades.word == "Blades"
    assert isinstance(cut, Step) and cut.title == "Cut"


def test_an_old_hem_in_the_way_is_unpicked_after_the_pins_and_before_the_gauge() -> None:
    steps = _steps(floor_marks='["4 in"]', rod_to_floor='"91 5/8 in"')
    unpick = _first(steps, "unpick the old hem")
    assert _first(steps, "Put a pin") < unpick < _first(steps, "cut gauge", "pin;")
    assert "thread" in steps[unpick]
    assert not any("unpick the old hem" in step for step in _steps())


def test_the_gauge_is_read_by_its_lines_not_by_its_foot() -> None:
    """With a clearance so large that the floor mark is the lowest line, the foot of the gauge is no cut line."""
    steps = _steps(clearance='"8 in"')
    step = steps[_first(steps, "cut gauge", "pin;")]
    assert "floor mark line" in step and "mark the cut line" in step and "foot" not in step


def test_a_raw_edge_has_no_old_hem_to_let_down() -> None:
    raw = EXAMPLE.replace('hem = "2 in"', 'hem = "0 in"').replace('turn_under = "3/8 in"', 'turn_under = "0 in"', 1)
    assert not any("old hem" in step for step in _steps(raw, floor_marks='["5 in"]', rod_to_floor='"90 5/8 in"'))


def test_loops_that_no_offcut_holds_come_from_other_cloth() -> None:
    text = EXAMPLE.replace('floor_marks = ["13 5/8 in"]', 'floor_marks = ["2 1/2 in"]')
    steps = _steps(text, rod_to_floor='"93 in"')
    strips = steps[_first(steps, "strip of other cloth")]
    assert "Make a strip of other cloth" in strips and "0 of them" not in strips


def test_an_uneven_floor_is_checked_at_both_edges_as_seen_from_the_front() -> None:
    checks, *_ = [block for block in _blocks(UNEVEN) if isinstance(block, Blanks)]
    labels = [row.label for row in checks.rows]
    assert sum("left edge as seen from the front" in label for label in labels) == 2
    assert sum("right edge as seen from the front" in label for label in labels) == 2


def test_a_cut_below_the_old_edge_is_measured_downward() -> None:
    checks, *_ = [
        block
        for block in _blocks(floor_marks='["3 1/2 in"]', rod_to_floor='"92 in"')
        if isinstance(block, Blanks)
    ]
    (row,) = [row for row in checks.rows if "cut line" in row.label]
    assert row.label.startswith("Old bottom edge down to") and not row.value.startswith("−")


def _marking(**choices: Any) -> list[str]:
    """The steps that speak of the strip, tape to casing."""
    blocks = words(make_plan(read_spec(EXAMPLE)), Choices(**choices))
    steps = [block.text for block in blocks if isinstance(block, Step)]
    return [step for step in steps if "trim line" in step or "the centre of every loop" in step]


def test_the_half_strip_is_laid_twice_and_the_centre_is_found_first() -> None:
    taping, marking = _marking(half_strip=True)
    assert "Tape the half strip together" in taping and "spacing strip" not in taping + marking
    order = ["Measure the panel's width and mark its centre", "left half", "end for end", "right half"]
    assert [marking.index(said) for said in order] == sorted(marking.index(said) for said in order)
    assert "That end is mark 5 itself" in marking
    assert "Turn" not in _marking()[1] and "itself" not in _marking()[1]


def test_several_strips_are_taped_by_their_own_letters() -> None:
    taping, marking = _marking(strips=3)
    assert "each of the 3 spacing strips" in taping and "own letters" in taping
    assert "Pin a spacing strip" in marking and "as many panels can be marked at once" in marking
    assert "at once" not in _marking()[1] and "Pin the spacing strip" in _marking()[1]
    assert "each of the 2 half strips" in _marking(strips=2, half_strip=True)[0]


def test_a_panel_on_the_floor_brings_the_caution_about_trips() -> None:
    def cautions(clearance: str) -> set[str]:
        return {block.word for block in _blocks(clearance=clearance) if isinstance(block, Remark)}

    assert {"Heat", "Load", "Cords", "Flame", "Blades"} <= cautions('"3/4 in"')
    assert "Trips" not in cautions('"0 in"') and "Trips" in cautions('"-1 in"')
