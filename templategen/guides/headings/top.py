"""The top, whatever heading is made: what is cut off it, and what is turned under where it is folded anew."""

from __future__ import annotations

from ...document.view import Hatch, Rise, View, Within
from ...drawing import LineType
from ...work_order.pictures.cloth import broken_up, cloth
from ...work_order.pictures.signs import across
from ..sections import front_back, head


def top() -> View:
    """The old top cut off, flat; and the new one folded, cut across."""
    wide, cut, low, at, turn = 24.0, 13.0, -46.0, 46.0, 8.0
    return View(
        title="The top cut off, and folded anew",
        spoken=(
            "On the left the panel's upper left corner, its back towards you: from the top edge down to the cut line "
            "is what is cut off. On the right the new top cut across, the front on the left: it is folded to the back, "
            "and along the lower edge of the fold some cloth is turned under, measured from that edge to the raw edge."
        ),
        shapes=(
            cloth((0, low), (0, 0), (wide, 0)),
            broken_up(wide, low, 0, 1.2),
            Hatch(((0, 0), (wide, 0), (wide, -cut), (0, -cut)), "heading.top_cut"),
            across(LineType.CUT, 0, wide, -cut, "heading.top_cut"),
            *head(-cut, 22.0, turn, low, "", "heading.top_turn", at),
        ),
        notes=(
            Rise("cut off", -cut, 0, 0, "left", "heading.top_cut"),
            Rise("turned under", -cut - 22, -cut - 22 + turn, at + 3.6, "right", "heading.top_turn"),
            Within("back", (1, low), (wide - 2, -cut)),
            *front_back(at, at + 3.6, low, -cut - 26),
        ),
    )
