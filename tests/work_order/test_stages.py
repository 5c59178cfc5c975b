"""The stages of the work: their order, the gate, what is seen before the cut, and each caution where it matters."""

from __future__ import annotations

from fractions import Fraction
from math import acos, pi, sqrt
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from templategen import draw_templates, make_plan
from templategen.document.blocks import Block, Gate, Heading, Remark, Step
from templategen.planning import Plan, make_job_plan
from templategen.spec import FIELDS, Spec, read_job
from templategen.templates.together import draw_job
from templategen.work_order import job as job_order
from templategen.work_order.order import called
from tests.jobs.building import WINDOWS, of_windows
from tests.jobs.building import planned as planned_job
from tests.planning.building import planned
from tests.planning.test_from_any_to_any import start
from tests.strategies import kind_specs
from tests.work_order.said import words

LOOPS_ALONE = ("edge_inset", "loop_length", "loop_width", "lower_allowance", "upper_turn")
HEADINGS = FIELDS["heading.style"].choices
BEFORE_IT = {
    "Heat": r"press", "Blades": "cut on the cut line", "Load": "Hang the panel on the rod",
    "Cords": "Hang the panel on the rod", "Flame": "Hang the panel on the rod", "Trips": "Hang the panel on the rod",
}  # fmt: skip
"""Each caution, and what is said in the first step that it is about."""


def titles(blocks: list[Block]) -> list[str]:
    return [block.text for block in blocks if isinstance(block, Heading) and not block.first]


def step(plan: Plan, title: str) -> Step:
    (found,) = [block for block in words(plan) if isinstance(block, Step) and block.title == title]
    return found


def test_the_stages_come_in_the_order_of_the_work() -> None:
    assert titles(words(planned())) == [
        "Get ready", "Measure", "Mark", "Hang and look", "Stop and check before you cut", "Press and pin the hem",
        "Sew the hem", "Loops", "Hang", "Adjust", "Every number, and how it came about",
    ]  # fmt: skip
    more = titles(words(planned({"sides.finished_width": "40 in", "fabric.shrinkage": "3 %"})))
    assert more.index("Sides") == more.index("Press and pin the hem") - 1
    assert more.index("Later") == more.index("Adjust") + 1


@pytest.mark.parametrize("style", HEADINGS)
def test_whatever_the_heading_the_bottom_is_sewn_before_the_top_and_steps_are_numbered_through(style: str) -> None:
    """Stephenson, Cutting and Draping, 1905: sides and bottom first."""
    blocks = words(make_plan(start("casing", style)))
    found = titles(blocks)
    assert found.index("Sew the hem") + 2 == found.index("Hang")
    steps = [block for block in blocks if isinstance(block, Step)]
    assert [block.number for block in steps] == list(range(1, len(steps) + 1))
    assert all(block.title and len(block.title.split()) <= 3 for block in steps)


def test_what_is_sewn_by_hand_is_tried_on_the_rod_before_it_is_sewn() -> None:
    """Stephenson, Cutting and Draping, 1905: tried on the rod before the last stitching."""
    for style in HEADINGS:
        steps = [block.title for block in words(make_plan(start("casing", style))) if isinstance(block, Step)]
        made = steps[steps.index("Press") + 1 :]
        by_hand = style in ("back loops", "tabs", "rings", "hooks")
        assert ("Try" in made) is by_hand
        if by_hand:
            assert made[made.index("Try") + 1] in ("Sew", "Fasten")


def test_panels_are_held_against_each_other_between_pinning_and_sewing() -> None:
    blocks = words(planned())
    (at,) = [i for i, block in enumerate(blocks) if isinstance(block, Gate)]
    gate, before, after = blocks[at], blocks[at - 1], blocks[at + 1]
    assert isinstance(gate, Gate) and gate.text.startswith("All panels to this point") and "1/4 in" in gate.text
    assert isinstance(before, Step) and before.text.endswith("and pin it.")
    assert after == Heading("Sew the hem")
    assert not any(isinstance(block, Gate) for block in words(planned({"panel.count": 1})))
    assert any(isinstance(block, Gate) for block in words(planned({"panel.count": 1, "sides.split": 2})))


def take_up(depth: float, rod: float) -> float:
    """Of a tube round a rod, in inches: R (2 pi - 2 a) + 2 sqrt(s^2 - R^2) = 2 c with cos a = R / s; c - (R + s)."""
    r = rod / 2
    low, high = r, depth + rod
    for _ in range(60):
        s = (low + high) / 2
        round_it = r * (2 * pi - 2 * acos(r / s)) + 2 * sqrt(s * s - r * r)
        low, high = (s, high) if round_it < 2 * depth else (low, s)
    return depth - (r + low)


def eighths(inches: float) -> str:
    """As a tape of eighths shows it."""
    whole, part = divmod(round(abs(inches) * 8), 8)
    return " ".join(filter(None, (str(whole or ""), str(Fraction(part, 8)) if part else ""))) + " in"


@pytest.mark.parametrize(
    ("rod", "casing", "clearance", "eyelets"),
    [(1.0, 3.0, 1.0, False), (0.75, 3.0, -0.5, False), (1.0, 4.0, 1.0, True), (0.625, 5.0, 2.5, True)],
)
def test_before_the_cut_the_finish_line_stands_the_clearance_less_the_hang_shift_from_the_floor(
    rod: float, casing: float, clearance: float, eyelets: bool
) -> None:
    """By the derived offsets: casing -take_up(c); back loops -t - take_up(s), s = L - a - b, t = c - s; eyelets
    -(e - r). The shift is the old offset less the new one."""
    changes: dict[str, Any] = {"tape_step": "1/8 in", "drop.rod_to_floor": None, "rod.diameter": f"{rod} in",
                               "panel.casing": f"{casing} in", "drop.clearance": f"{clearance} in"}  # fmt: skip
    tube = 3.25 - 0.375 - 0.625
    new = -(casing - tube) - take_up(tube, rod)
    if eyelets:
        changes |= {f"heading.{field}": None for field in LOOPS_ALONE}
        changes |= {"heading.style": "eyelets", "heading.count": 8, "heading.eyelet_inside": "1 in",
                    "heading.eyelet_centre": "2 in"}  # fmt: skip
        new = -(2 - 0.5)
    plan = planned(changes)
    assert not plan.top.refolded, "the old top edge is the new one, and nothing comes off it"
    shift = -take_up(casing, rod) - new
    side = "above" if clearance > shift else "below"
    ends = f"{eighths(clearance)} {'above' if clearance > 0 else 'below'} the floor"
    assert (
        f"hang each panel again by its casing and let it settle. The finish line must stand "
        f"{eighths(clearance - shift)} {side} the floor pins: the new heading lifts it {eighths(shift)}, so that it "
        f"ends {ends}."
    ) in step(plan, "Look").text


def test_hung_by_the_new_heading_there_is_no_shift_and_the_number_is_the_clearance() -> None:
    text = step(planned({"drop.hung_by": "new heading", "drop.rod_to_floor": None}), "Look").text
    assert "by its new heading" in text and "stand 3/4 in above the floor pins." in text and "lifts" not in text


def test_a_heading_that_hangs_lower_is_said_to_let_the_panel_down() -> None:
    """Rings hold the top edge 2 in below the rod's top; the casing's take-up lifted it by 0.230 in: D 5/8, c 1 1/2."""
    rings = {
        **{f"heading.{field}": None for field in LOOPS_ALONE[1:]},
        "heading.style": "rings", "heading.drop": "2 in", "rod.diameter": "5/8 in", "panel.casing": "1 1/2 in",
        "drop.rod_to_floor": None, "tape_step": "1/8 in",
    }  # fmt: skip
    text = step(planned(rings), "Look").text
    assert "stand 3 in above the floor pins: the new heading lets it down 2 1/4 in" in text


def test_what_a_tuck_takes_up_stands_below_the_pins_too() -> None:
    plan = planned({"drop.hung_by": "new heading", "drop.rod_to_floor": None, "fabric.shrinkage": "3 %",
                    "fabric.shrinkage_in": "tuck"})  # fmt: skip
    rise = plan.drop.clearance - plan.drop.tuck
    assert plan.drop.tuck and rise.mm < 0
    said = f"stand {plan.tape.read(abs(rise)).plain} below the floor pins: the tuck lifts it"
    assert said in step(plan, "Look").text


def test_under_a_border_that_comes_below_the_cloth_it_is_the_cut_line_that_is_seen() -> None:
    """Border 4 in deep, its seam 1 in: the panel is cut 3 in above the finished edge, and so 3 3/4 in above the floor;
    the floor lies 4 in below the old edge, and the finished edge 7/8 in below the cloth, hem let down."""
    border = {"hem.style": "border", "hem.turn_under": None, "hem.depth": "4 in", "hem.seam": "1 in",
              "drop.floor_marks": ["-4 in"], "drop.rod_to_floor": None, "drop.hung_by": "new heading"}  # fmt: skip
    text = step(planned(border), "Look").text
    assert "cut line must stand 3 3/4 in above the floor: below it the hem takes 3 in, so that it ends 3/4 in" in text
    assert "pins" not in text


def test_a_level_hem_is_looked_at_by_the_highest_pin() -> None:
    stairs = {"drop.floor_marks": ["13 in", "13 1/2 in", "14 in"], "drop.follows": "highest", "drop.rod_to_floor": None}
    plan = planned(stairs)
    assert "the highest floor pin" in step(plan, "Look").text
    assert "3/4 in above the floor, where that is highest" in step(plan, "On the rod").text


@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(kind_specs())
def test_each_caution_comes_once_and_before_what_it_is_about(spec: Spec) -> None:
    blocks = words(make_plan(spec))
    said = [block.word for block in blocks if isinstance(block, Remark) and block.word in BEFORE_IT]
    assert len(said) == len(set(said)) >= 5
    for word in said:
        at = next(i for i, block in enumerate(blocks) if isinstance(block, Remark) and block.word == word)
        about = next(
            i
            for i, block in enumerate(blocks)
            if isinstance(block, Step) and BEFORE_IT[word] in block.text.replace("washed or pressed as", "")
        )
        assert at < about
    told = " ".join(block.text for block in blocks if isinstance(block, Step))
    assert told.count("as many must come out as went in") == 1


def test_in_a_job_each_caution_comes_once_and_trips_where_a_part_lies_on_the_floor() -> None:
    floor = f'{WINDOWS[2]}\ndrop.clearance = "-1 in"'
    plan = make_job_plan(read_job(of_windows(WINDOWS[0], floor)))
    blocks = job_order.words(plan, draw_job(plan))
    said = [block.word for block in blocks if isinstance(block, Remark) and block.word in BEFORE_IT]
    assert sorted(said) == sorted(BEFORE_IT)
    second = next(i for i, block in enumerate(blocks) if isinstance(block, Heading) and block.text.startswith("Part 2"))
    assert [b.word for b in blocks[second:] if isinstance(b, Remark) and b.word in BEFORE_IT] == ["Trips"]


def test_steps_name_their_templates_as_they_are_called_on_paper() -> None:
    plan = make_job_plan(read_job(of_windows(WINDOWS[0], WINDOWS[2])))
    served = draw_job(plan)
    steps = [block for block in job_order.words(plan, served) if isinstance(block, Step)]
    lines = [block.templates for block in steps if block.title == "Lines"]
    assert lines == [
        ("cut gauge, east window",),
        ("cut gauge 1, west window", "cut gauge 2, west window", "cut gauge 3, west window"),
    ]
    assert [block.templates for block in steps if block.title == "Hem"] == [("hem gauge card",)] * 2
    assert {name for block in steps for name in block.templates} == {drawing.name for drawing, _ in served}
    assert [block.number for block in steps] == list(range(1, len(steps) + 1))


def test_every_template_is_named_by_a_step_that_uses_it() -> None:
    plan = planned_job()
    served = draw_job(plan)
    steps = [block for block in job_order.words(plan, served) if isinstance(block, Step)]
    assert {drawing.name for drawing, _ in served} == {name for block in steps for name in block.templates}


@pytest.mark.parametrize("style", HEADINGS)
def test_whatever_the_heading_no_template_lies_unused(style: str) -> None:
    plan = make_plan(start("casing", style))
    names = [drawing.name for drawing in draw_templates(plan)]
    used = {name for block in words(plan, templates=names) if isinstance(block, Step) for name in block.templates}
    assert used == set(names)


def test_of_many_templates_the_first_and_the_last_are_named() -> None:
    strips = [f"spacing strip {number}" for number in range(1, 8)]
    assert called("spacing strip", strips) == ("spacing strip 1 to spacing strip 7",)
    assert called("spacing strip", strips[:2]) == ("spacing strip 1", "spacing strip 2")
    assert called("cut gauge", strips) == ()
    gauges = ["cut gauge 3, north", "cut gauge 10, north", "cut gauge 2, north and west", "cut gauge 1, north"]
    assert called("cut gauge", gauges[:1] + gauges[2:]) == (gauges[3], gauges[2], gauges[0])
