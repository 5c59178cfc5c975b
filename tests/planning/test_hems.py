"""Hems, sides and corners by hand, by handbook and by folding real outlines."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from templategen.lengths import NOTHING, Length, inches, millimetres
from templategen.planning import Plan
from templategen.planning.hems import HEMS
from templategen.planning.hems.face import fold_to
from templategen.planning.hems.sewn_on import SewnOnPlan
from templategen.planning.plan import MitrePlan
from templategen.planning.sides import plan_mitre
from templategen.planning.widths import made_count, made_width, side_allowance, side_offcut

from .building import codes, job, planned


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
    ("border_in_seam", "border", {"hem.depth": "1/2 in"}, {"hem.depth": "9/16 in"}),
    ("hem_shallow", "faced", {"hem.depth": "49 mm"}, {"hem.depth": "50 mm"}),
    ("split_too_narrow", "double fold", {"sides.split": 8}, {"sides.split": 7}),
    ("no_mitre", "border", {"sides.mitre": True}, {}),
    ("mitre_unequal", "double fold", {"sides.mitre": True, "sides.hem": "3 15/16 in"},
     {"sides.mitre": True, "sides.hem": "4 in"}),
    ("weight_too_large", "double fold", {"weights.every": "24 in", "weights.size": "3 in", "hem.depth": "3 in"},
     {"weights.every": "24 in", "weights.size": "3 in", "hem.depth": "3 1/16 in"}),
    ("weights_far_apart", "double fold", {"weights.every": "27 in"}, {"weights.every": "26 in"}),
    ("lining_shows", "double fold", {"lining.cut_shorter": "1/2 in"}, {"lining.cut_shorter": "11/16 in"}),
    ("lining_unusual", "double fold", {"lining.cut_shorter": "5 1/16 in"}, {"lining.cut_shorter": "5 in"}),
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
    mitre = plan_mitre(spec, HEMS["double fold"].plan(spec, spec.hem))
    assert mitre is not None
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
    spec = job({"hem.depth": "1 in", "hem.turn_under": "1 in", "sides.mitre": True})
    mitre = plan_mitre(spec, HEMS["double fold"].plan(spec, spec.hem))
    assert isinstance(mitre, MitrePlan)
    assert (mitre.up_the_side, mitre.along_the_bottom) == (inches(4), inches(4))
    assert float(mitre.seam.inches) == pytest.approx(1.414, abs=5e-4)
    unequal = job({"hem.depth": "3 in", "hem.turn_under": "3 in", "sides.mitre": True})
    other = plan_mitre(unequal, HEMS["double fold"].plan(unequal, unequal.hem))
    assert other is not None and (other.up_the_side, other.along_the_bottom) == (inches(12), inches(4))


def test_weights_every_two_feet() -> None:
    """Te Ao Hou no. 11, July 1955, pp. 58-59: hem weights every 2 ft. On 54 in: corners and two between."""
    plan = planned({"weights.every": "24 in"})
    assert plan.counts["weights"] == 4 and plan.figures["weight_pitch"].value == inches(18)


def test_a_lining_is_cut_five_inches_shorter() -> None:
    """The Complete Photo Guide to Curtains and Draperies, 2006: 5 in at floor length."""
    plan = planned({"lining.cut_shorter": "5 in"})
    face = plan.figures["finished_length"].value + plan.hem.allowance
    assert plan.figures["lining_cut_length"].value == face - inches(5)
    assert plan.figures["lining_width"].value == inches(52)


def test_millimetres_and_inches_fold_alike() -> None:
    one = with_hem("faced", depth="101.6 mm").hem
    assert one.depth == inches(4) and millimetres("101.6") == inches(4)
