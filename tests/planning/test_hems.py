"""Hems, sides and corners by hand, by handbook and by folding real outlines."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from templategen.errors import Refusal
from templategen.lengths import NOTHING, Length, inches, millimetres
from templategen.planning import Plan
from templategen.planning.extras import plan_weights
from templategen.planning.hems import HEMS
from templategen.planning.hems.face import fold_to
from templategen.planning.hems.sewn_on import SewnOnPlan
from templategen.planning.sides import plan_mitres
from templategen.planning.widths import made_count, made_width, side_allowance, side_offcut

from .building import codes, job, notice, planned


def with_hem(style: str, changes: dict[str, Any] | None = None, **fields: Any) -> Plan:
    usual = {"hem.turn_under": None if style not in ("double fold", "faced") else "5/8 in"}
    named = {f"hem.{name}": value for name, value in fields.items()}
    return planned(usual | named | {"hem.style": style} | (changes or {}))


FINISH = planned().drop.marks[0].finish


@pytest.mark.parametrize(
    ("style", "takes"),
    [
        ("double fold", inches("37/8")),
        ("equal double fold", inches(8)),
        ("single fold with tape", inches(4)),
        ("faced", inches("1/2")),
        ("border", -inches("7/2")),
    ],
)
def test_each_hem_takes_its_cloth_below_the_finished_edge(style: str, takes: Length) -> None:
    """By hand, for a depth of 4 in. Equal turns: the raw edge lies 2 h below the finished edge (derived)."""
    plan = with_hem(style)
    assert plan.hem.allowance == takes
    assert plan.drop.marks[0] == planned().drop.marks[0].__class__(
        at=NOTHING, floor=inches("109/8"), finish=FINISH, cut=FINISH - takes
    )


def test_equal_turns_fold_to_the_same_line_twice() -> None:
    """New Zealand newspaper, 24 May 1935 (Papers Past EG19350524.2.6.2): on sheers both turns are equal."""
    plan = with_hem("equal double fold", {"cloth": "light"})
    assert plan.figures["hem_fold_to_turn"].value == plan.figures["hem_fold_to_depth"].value == fold_to(inches(4))
    assert "turn_shows" not in codes(plan)


def test_a_facing_and_a_border_are_cut_as_wide_as_they_are_folded() -> None:
    """By hand: facing 1/2 + 4 + 5/8; border twice 4 + 1/2; both an inch longer than the panel is wide."""
    facing, border = with_hem("faced").hem, with_hem("border").hem
    assert isinstance(facing, SewnOnPlan) and isinstance(border, SewnOnPlan)
    assert (facing.strip, border.strip) == (inches("41/8"), inches(9))
    assert facing.strip_length == border.strip_length == inches(55)


@pytest.mark.parametrize("style", list(HEMS))
@given(depth=st.integers(17, 130), hang=st.integers(0, 500))
def test_all_cloth_is_accounted_for(style: str, depth: int, hang: int) -> None:
    """Finished + what the hem takes + offcut = the cloth that was bought, its old hem let down."""
    plan = with_hem(style, {"drop.floor_marks": [f"{hang}/16 in"]}, depth=f"{depth}/16 in")
    spec, mark = plan.spec, plan.drop.marks[0]
    bought = spec.panel.length + spec.panel.hem + spec.panel.turn_under if spec.panel.length else NOTHING
    finished, below = plan.figures["finished_length"].value, mark.cut + spec.panel.hem + spec.panel.turn_under
    assert finished + plan.top.lowered + plan.hem.allowance + below == bought
    if below >= NOTHING:
        assert plan.offcut.unpicked == below


NOTICES: list[tuple[str, str, dict[str, Any], dict[str, Any]]] = [
    # code, style, changes, changes just inside
    ("tape_shows", "single fold with tape", {"cloth": "light"}, {"cloth": "medium"}),
    ("facing_shows", "faced", {"cloth": "light"}, {"cloth": "medium"}),
    ("web_lets_go", "single fold with tape", {"cloth": "heavy", "hem.held_by": "bonding"},
     {"cloth": "medium", "hem.held_by": "bonding"}),
    ("pile_turned_twice", "equal double fold", {"fabric.pile": True}, {"fabric.pile": False}),
    # The facing is cut 5 1/8 in wide; off a side come 54 - 46 7/8 - 2 = 5 1/8 in.
    ("strips_from_sides", "faced", {"sides.finished_width": "46 7/8 in"}, {"sides.finished_width": "46 15/16 in"}),
    ("border_in_seam", "border", {"hem.depth": "1/2 in"}, {"hem.depth": "9/16 in"}),
    ("hem_shallow", "faced", {"hem.depth": "49 mm"}, {"hem.depth": "50 mm"}),
    ("split_too_narrow", "double fold", {"sides.split": 9, "heading.edge_inset": None},
     {"sides.split": 6}),
    ("no_mitre", "border", {"sides.mitre": True, "sides.hem": "1 in"}, {}),
    ("mitre_folded_twice", "double fold", {"sides.mitre": True, "sides.hem": "1 in", "fabric.shrinkage": "2 %"},
     {"sides.mitre": True, "sides.hem": "1 in", "fabric.shrinkage": "2 %", "fabric.shrinkage_in": "tuck"}),
    ("split_not_alike", "double fold", {"sides.split": 2, "drop.floor_marks": ["13 in", "13 1/16 in"]},
     {"sides.split": 2, "drop.floor_marks": ["13 in", "13 in"]}),
    ("mitre_unequal", "double fold", {"sides.mitre": True, "sides.hem": "3 15/16 in"},
     {"sides.mitre": True, "sides.hem": "4 in"}),
    ("weight_too_large", "double fold", {"weights.every": "24 in", "weights.size": "3 in", "hem.depth": "3 3/16 in"},
     {"weights.every": "24 in", "weights.size": "3 in", "hem.depth": "3 1/4 in"}),
    ("weights_far_apart", "double fold", {"weights.every": "27 in"}, {"weights.every": "26 in"}),
    ("lining_shows", "double fold", {"lining.cut_shorter": "1/2 in"}, {"lining.cut_shorter": "11/16 in"}),
    ("lining_above_hem", "double fold", {"lining.cut_shorter": "4 5/8 in"}, {"lining.cut_shorter": "4 9/16 in"}),
    ("lining_unusual", "equal double fold", {"lining.cut_shorter": "5 1/16 in"}, {"lining.cut_shorter": "5 in"}),
]  # fmt: skip


@pytest.mark.parametrize(("code", "style", "changes", "inside"), NOTICES, ids=[row[0] for row in NOTICES])
def test_each_notice_is_given_and_not_just_inside_its_limit(
    code: str, style: str, changes: dict[str, Any], inside: dict[str, Any]
) -> None:
    assert code in codes(with_hem(style, changes))
    assert code not in codes(with_hem(style, inside))


@pytest.mark.parametrize("style", list(HEMS))
def test_a_panel_too_short_says_which_hem_of_its_kind_would_do(style: str) -> None:
    plan = with_hem(style, {"drop.floor_marks": ["-8 in"]})
    assert "panel_too_short" in codes(plan)
    stop = next(notice for notice in plan.stops if notice.code == "panel_too_short")
    assert "too short for" in stop.text


def test_a_split_panel_shares_out_what_the_new_side_hems_leave() -> None:
    """By hand: 54 in split in two with side hems of 1 + 1 in: (54 - 2 x 2) / 2 = 25 in each."""
    spec = job({"sides.split": 2})
    assert (made_width(spec), made_count(spec)) == (inches(25), 8)
    cuts = [made_width(spec) + side_allowance(spec)]
    assert 2 * made_width(spec) + 2 * side_allowance(spec) == spec.panel.width and cuts == [inches(27)]


@given(split=st.integers(1, 5), hem=st.integers(5, 40), turn=st.integers(0, 40))
def test_the_widths_of_split_panels_add_up(split: int, hem: int, turn: int) -> None:
    changes = {"sides.split": split, "sides.hem": f"{hem} mm", "sides.turn_under": f"{min(turn, hem)} mm"}
    spec = job({**changes, "panel.width": "2000 mm"})
    assert split * made_width(spec) + 2 * (split - 1) * side_allowance(spec) == spec.panel.width


def test_a_panel_made_narrower_leaves_a_strip() -> None:
    spec = job({"sides.finished_width": "40 in"})
    assert side_offcut(spec) == inches(54 - 40 - 2)
    plan = planned({"sides.finished_width": "40 in"})
    assert plan.width == inches(40) and plan.heading.marks[-1].at < inches(40)


def reflected(points: np.ndarray, through: tuple[float, float], along: tuple[float, float]) -> np.ndarray:
    """Points folded over a line."""
    direction = np.array(along) / math.hypot(*along)
    beside = points - np.array(through)
    return 2 * np.outer(beside @ direction, direction) - beside + np.array(through)


@given(hem=st.integers(10, 200), side=st.integers(10, 80), turn=st.integers(1, 10), beside=st.integers(0, 10))
def test_the_mitre_folds_real_outlines_to_one_seam(hem: int, side: int, turn: int, beside: int) -> None:
    """The corner's outline folded over the fold line, then over both finished edges: its two flaps meet in one line.

    Origin at the finished corner, cloth above and to the right; the raw corner at (-(S + U), -(H + T)).
    """
    spec = job({
        "hem.depth": f"{hem} mm", "hem.turn_under": f"{turn * hem}/10 mm",
        "sides.hem": f"{side} mm", "sides.turn_under": f"{beside * side}/10 mm", "sides.mitre": True,
    })  # fmt: skip
    (mitre,) = plan_mitres(spec, HEMS["double fold"].plan(spec, spec.hem))
    below, out = float(mitre.hem_allowance.mm), float(mitre.side_allowance.mm)
    on_side = np.array([-out, -below + float(mitre.up_the_side.mm)])
    on_bottom = np.array([-out + float(mitre.along_the_bottom.mm), -below])
    # The fold runs through the finished corner, and both its ends lie on it.
    assert abs(on_side[0] * on_bottom[1] - on_side[1] * on_bottom[0]) < 1e-6 * np.linalg.norm(on_side) * np.linalg.norm(
        on_bottom
    )
    # The edge of the folded corner is the fold itself; turned up over y = 0 and in over x = 0 its two halves meet.
    up = reflected(np.array([on_bottom * t for t in (0.2, 0.7, 1.0)]), (0, 0), (1, 0))
    across = reflected(np.array([on_side * t for t in (0.2, 0.7, 1.0)]), (0, 0), (0, 1))
    for points in (up, across):
        assert np.allclose(points[:, 0] * hem - points[:, 1] * side, 0, atol=1e-6 * hem * side)
    # That line leads to where the hems' inner edges meet, (S, H), as long as the finished mitre is said to be.
    assert float(mitre.seam.mm) == pytest.approx(math.hypot(side, hem))
    # Nothing of the folded-in corner sticks out beyond the finished edges.
    corner = reflected(np.array([[-out, -below]]), (0, 0), tuple(on_side))
    assert corner[0] @ np.array([hem, side]) > 0


def test_the_mitre_of_the_handbook() -> None:
    """H = S = 1, allowances 2 and 2: marks 4 and 4, finished mitre 1.414; H and S unequal: 4 H up and 4 S along
    (derived, checks by folding above)."""
    spec = job({"hem.depth": "1 in", "hem.turn_under": "1 in", "sides.mitre": True, "sides.hem": "1 in"})
    (mitre,) = plan_mitres(spec, HEMS["double fold"].plan(spec, spec.hem))
    assert (mitre.up_the_side, mitre.along_the_bottom) == (inches(4), inches(4))
    assert float(mitre.seam.inches) == pytest.approx(1.414, abs=5e-4)
    unequal = job({"hem.depth": "3 in", "hem.turn_under": "3 in", "sides.mitre": True, "sides.hem": "1 in"})
    (other,) = plan_mitres(unequal, HEMS["double fold"].plan(unequal, unequal.hem))
    assert (other.up_the_side, other.along_the_bottom) == (inches(12), inches(4))


def test_weights_every_two_feet() -> None:
    """Te Ao Hou no. 11, July 1955, pp. 58-59: hem weights every 2 ft. On 54 in: corners and two between.

    Pockets for weights of 1 in are 1 1/4 in wide inside, and those at the corners end with the panel: 54 - 1 1/4 is
    shared out. A pocket's cloth, by hand: 1 + 1/4 + 2 x 1/4 wide, 2 (1 + 1/4 + 1/4) long.
    """
    plan = planned({"weights.every": "24 in"})
    assert plan.counts["weights"] == 4 and 3 * plan.figures["weight_pitch"].value == inches("211/4")
    pocket = plan.figures["weight_pocket"].value, plan.figures["weight_pocket_length"].value
    assert pocket == (inches("7/4"), inches(3))


def test_a_weight_goes_into_its_pocket() -> None:
    """Flat, a pocket is half as wide as the way round what is in it: of a weight 1/4 in thick, size + 1/4 in."""
    weights = plan_weights(job({"weights.every": "24 in"}))
    assert weights is not None
    assert weights.size + inches("1/4") <= weights.pocket < weights.pocket_wide
    assert weights.pocket_long - 2 * weights.pocket == weights.pocket_wide - weights.pocket


def test_the_handbooks_five_inches_end_a_lining_one_inch_above_the_panel() -> None:
    """5 in shorter (The Complete Photo Guide to Curtains and Draperies, 2006): with 4 in and 2 in turned twice,
    derived."""
    usual = with_hem("equal double fold", {"lining.cut_shorter": "5 in"})
    assert usual.figures["lining_above"].value == inches(1)
    assert not {"lining_above_hem", "lining_unusual"} & codes(usual)


@pytest.mark.parametrize("style", list(HEMS))
def test_a_lining_ends_where_it_is_asked_to_behind_any_hem(style: str) -> None:
    """What was cut off the lining and what is turned up of it leave it 1 in above the panel's edge."""
    plan = with_hem(style, {"lining.ends_above": "1 in"})
    mark, lining = plan.drop.marks[0], plan.figures["lining_cut_line"].value
    assert lining + inches(2) + inches(2) - mark.finish == plan.figures["lining_above"].value == inches(1)
    assert plan.figures["lining_cut_length"].value + lining + plan.top.lowered == inches(96)
    assert not {"lining_above_hem", "lining_unusual", "lining_shows"} & codes(plan)
    with pytest.raises(Refusal, match="leave one out"):
        job({"lining.ends_above": "1 in", "lining.cut_shorter": "5 in"})


def test_a_corner_beside_an_old_side_hem_has_a_fold_of_its_own() -> None:
    """H = 4, T = 5/8; new side hem 1 + 1, old 1/2 + 1/4: 4 x 2 / 1 + 4 5/8 and 4 x (3/4) / (1/2) + 4 5/8."""
    old = {"sides.old_hem": "1/2 in", "sides.old_turn_under": "1/4 in"}
    asked = {"sides.mitre": True, "sides.hem": "1 in", **old}
    for cut in ({"sides.split": 2}, {"sides.finished_width": "40 in"}):
        mitres = planned({**asked, **cut}).mitres
        assert [mitre.up_the_side for mitre in mitres] == [inches("101/8"), inches("85/8")]
        assert [mitre.beside_old for mitre in mitres] == [False, True]
    assert len(planned(asked).mitres) == len(planned({"sides.mitre": True, "sides.hem": "1 in"}).mitres) == 1


def test_the_bottom_is_marked_and_measured_before_the_sides_are_cut() -> None:
    """Floor marks stand where they were made, across the panel that was bought."""
    for sides in ({"sides.split": 2}, {"sides.finished_width": "40 in"}):
        plan = planned({**sides, "drop.floor_marks": ["13 in", "13 1/2 in", "13 in"]})
        assert [mark.at for mark in plan.drop.marks] == [NOTHING, inches(27), inches(54)]


def test_a_lining_is_cut_five_inches_shorter() -> None:
    """The Complete Photo Guide to Curtains and Draperies, 2006: 5 in at floor length."""
    plan = planned({"lining.cut_shorter": "5 in"})
    face = plan.figures["finished_length"].value + plan.hem.allowance
    assert plan.figures["lining_cut_length"].value == face - inches(5)
    assert plan.figures["lining_width"].value == inches(52)


def test_a_border_of_single_cloth_is_cut_for_its_own_hem() -> None:
    """By hand: seam 1/2 + depth 4 + two turns of 3/4 = 6 in; the panel ends where it does above a doubled one."""
    single, doubled = with_hem("border", own_hem="3/4 in"), with_hem("border")
    assert isinstance(single.hem, SewnOnPlan) and single.hem.strip == inches(6)
    assert single.hem.allowance == doubled.hem.allowance
    assert single.hem.stitch_line == inches("5/8") and single.hem.steps == (inches("3/4"), inches(4))
    with pytest.raises(Refusal, match=r"hem\.own_hem"):
        job({"hem.style": "border", "hem.turn_under": None, "hem.own_hem": "2 1/16 in"})


def test_a_taped_hem_is_stitched_through_the_half_of_the_tape_that_lies_beyond_the_raw_edge() -> None:
    """Tape 1/2 in wide, half of it beyond the edge that comes 4 in up: the row in the middle of that half, at 4 1/8."""
    plan = with_hem("single fold with tape")
    assert plan.hem.stitch_line == inches("33/8")
    assert "beyond it, on the tape's free half" in plan.figures["stitch_line"].working


def test_a_bonded_hem_is_held_at_its_raw_edge() -> None:
    """Web 3/4 in wide along the raw edge, which comes 4 in up; in a hem 1 in deep half of it."""
    assert with_hem("single fold with tape", held_by="bonding").hem.stitch_line == inches("13/4")
    assert with_hem("single fold with tape", held_by="bonding", depth="1 in").hem.stitch_line == inches("1/2")


@pytest.mark.parametrize(("marked", "crease"), [("-2 1/2 in", "goes into the seam"), ("-3 1/4 in", "will show")])
def test_an_old_crease_goes_into_the_borders_seam_or_shows_above_it(marked: str, crease: str) -> None:
    """Hung by its new heading, clear of nothing, border 3 in, seam 1 in: the seam line lies 3 in above the floor, the
    panel's raw edge an inch lower. 2 1/2 in below the old edge: crease between the two; 3 1/4: above both."""
    hem = {"hem.seam": "1 in", "drop.hung_by": "new heading", "drop.clearance": "0 in", "drop.rod_to_floor": None}
    plan = with_hem("border", {**hem, "drop.floor_marks": [marked]}, depth="3 in")
    assert plan.drop.marks[0].cut == plan.drop.marks[0].finish + inches(2) < NOTHING
    assert crease in notice(plan, "let_down_old_hem").text


def test_mitre_needs_the_side_hem_that_the_corner_has() -> None:
    with pytest.raises(Refusal, match=r"sides\.hem"):
        job({"sides.mitre": True})
    with pytest.raises(Refusal, match=r"sides\.old_turn_under"):
        job({"sides.mitre": True, "sides.hem": "1 in", "sides.old_hem": "1/2 in"})


def test_millimetres_and_inches_fold_alike() -> None:
    one = with_hem("faced", depth="101.6 mm").hem
    assert one.depth == inches(4) and millimetres("101.6") == inches(4)


def test_letting_the_old_hem_down_gains_what_is_folded_up_in_it() -> None:
    """By hand: an old hem of 2 in with 3/8 in turned under; told only where the cut line comes into it."""
    assert with_hem("double fold", {"drop.floor_marks": ["6 in"]}).figures["let_down_gain"].value == inches("19/8")
    assert "let_down_gain" not in with_hem("double fold").figures
