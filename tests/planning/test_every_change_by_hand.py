"""From every heading to every other, with every hem: shift, lines and length, worked apart from the planner.

The offsets and the teardrop are those of the trade's geometry (derived), solved here by halving; a casing 3 in deep,
a rod 3/4 in thick, a floor mark 13 5/8 in up and a hem 4 in deep.
"""

from __future__ import annotations

from itertools import cycle
from math import acos, pi, sqrt
from typing import Any

import pytest

from .building import READING_ROOM, planned

ROD, CASING, MARK, CLEARANCE, LONG = 0.75, 3.0, 13.625, 0.75, 96.0


def take_up(depth: float) -> float:
    """R (2 pi − 2 a) + 2 sqrt(s^2 − R^2) = 2 c, cos a = R / s; what is lost is c − (R + s)."""
    radius = ROD / 2
    low, high = radius, depth + radius
    for _ in range(100):
        middle = (low + high) / 2
        around = radius * (2 * pi - 2 * acos(min(1.0, radius / middle))) + 2 * sqrt(max(0.0, middle**2 - radius**2))
        low, high = (middle, high) if around < 2 * depth else (low, middle)
    return depth - radius - low


HOOKS = {"drop": "1 1/2 in", "set_below": "1 in"}
LOOPS = {"loop_length": "3 1/4 in", "lower_allowance": "3/8 in", "upper_turn": "5/8 in"}
HEADINGS: dict[str, tuple[dict[str, str], dict[str, str], float, float]] = {
    # hung by, and with it when made anew; how deep that is doubled; the offset
    "back loops": (LOOPS, {}, CASING, -(CASING - 2.25) - take_up(2.25)),
    "casing": ({}, {"depth": "3 in", "header": "1/2 in"}, 3.5, -take_up(3)),  # the old one has no header
    "tabs": ({"gap": "2 in"}, {}, 1.0, ROD + 2),
    "rings": ({"drop": "1 1/2 in", "set_below": "1/2 in"}, {}, 1.0, 1.0),
    "hooks": (HOOKS, {}, 1.5, 0.5),
    "eyelets": ({"eyelet_inside": "1 in", "eyelet_centre": "1 1/2 in"},
                {"eyelet_outside": "1 3/4 in", "band": "2 7/8 in"}, 2.875, -1.0),
    "pinch pleats": (HOOKS, {}, 4.0, 0.5),
    "box pleats": (HOOKS, {}, 4.0, 0.5),
    "inverted box pleats": (HOOKS, {}, 4.0, 0.5),
    "gathering tape": (HOOKS, {"tape_width": "3 in", "tape_top": "1/2 in", "top_fold": "2 in"}, 2.0, 0.5),
}  # fmt: skip
HEMS: dict[str, tuple[dict[str, str], float]] = {
    # a hem 4 in deep, and the cloth of the panel below the finished edge
    "double fold": ({"turn_under": "5/8 in"}, 4.625),
    "equal double fold": ({}, 8.0),
    "single fold with tape": ({}, 4.0),
    "faced": ({"turn_under": "5/8 in"}, 0.5),
    "border": ({}, -3.5),
}
LEFT_OUT = {path: None for path in READING_ROOM if path.startswith(("heading.", "hem."))}


@pytest.mark.parametrize("new", HEADINGS)
@pytest.mark.parametrize("top_cut", [0, 1])
def test_every_change(new: str, top_cut: int) -> None:
    given, anew, doubled, offset = HEADINGS[new]
    offset -= 0.5 if new == "casing" else 0  # its header stands above the rod
    for (old, (hung, _, _, old_offset)), (hem, (own, allowance)) in zip(
        HEADINGS.items(), cycle(HEMS.items()), strict=False
    ):
        changes: dict[str, Any] = {
            **LEFT_OUT, "drop.hung_by": "old heading", "drop.rod_to_floor": None, "hem.style": hem,
            "hem.depth": "4 in", "heading.style": new, "heading.top_cut": f"{top_cut} in", "panel.heading.style": old,
        }  # fmt: skip
        changes |= {f"hem.{name}": value for name, value in own.items()}
        changes |= {f"heading.{name}": value for name, value in (given | anew).items()}
        changes |= {f"panel.heading.{name}": value for name, value in hung.items()}
        plan = planned(changes)
        # Folded anew, what is doubled and 1/2 in turned under goes to the back; of a top not cut off, its old back too.
        lowered = 0.0
        if top_cut or doubled > CASING:
            lowered = doubled + 0.5 + (top_cut or -CASING)
        shift = old_offset - offset + lowered
        finish = MARK - shift + CLEARANCE
        worked = (shift, finish, finish - allowance, LONG - finish - lowered)
        figures = (plan.figures[key] for key in ("hang_shift", "finish_line", "cut_line", "finished_length"))
        assert [float(figure.value.mm) / 25.4 for figure in figures] == pytest.approx(worked, abs=1e-7), (old, hem)
