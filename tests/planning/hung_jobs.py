"""Generated jobs for panels that hang by tabs, rings, clips or hooks, and came with any of these or a casing."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from hypothesis import strategies as st

from .building import READING_ROOM

KINDS = ("tabs", "rings", "hooks")
_BARE = {path: None if path.startswith("heading.") else value for path, value in READING_ROOM.items()}


def lengths(least: int, most: int) -> st.SearchStrategy[str]:
    """In sixteenths of an inch, or in tenths of a millimetre; the limits in mm."""
    sixteenth = Fraction(254, 160)
    steps = st.integers(-(-least // sixteenth), most // sixteenth)
    tenths = st.integers(least * 10, most * 10)
    return steps.map(lambda n: f"{n}/16 in") | tenths.map(lambda n: f"{n // 10}.{n % 10} mm")


def _or_left_out(some: st.SearchStrategy[Any]) -> st.SearchStrategy[Any]:
    return st.none() | some


def hangs_by(kind: str, wide: bool) -> dict[str, st.SearchStrategy[Any]]:
    """The fields that say how a panel hangs by it."""
    if kind == "tabs":
        return {"gap": lengths(0, 999) if wide else lengths(0, 120)}
    return {
        "drop": lengths(1, 999) if wide else lengths(20, 80),
        "set_below": lengths(0, 999) if wide else lengths(0, 40),
    }


@st.composite
def changes(draw: st.DrawFn, wide: bool = False) -> dict[str, Any]:
    """A job as changes to the first window; ``wide`` goes to the limits, however odd a curtain it makes."""
    style = draw(st.sampled_from(KINDS))
    fields: dict[str, Any] = {f"heading.{name}": draw(each) for name, each in hangs_by(style, wide).items()}
    if style == "tabs":
        fields["heading.tab_width"] = draw(_or_left_out(lengths(1, 250 if wide else 80)))
        fields["heading.end_allowance"] = draw(_or_left_out(lengths(1, 99 if wide else 30)))
    if style == "hooks":
        fields["heading.hooks_on"] = draw(st.sampled_from(["rings", "gliders"]))
    if style != "tabs" and fields.get("heading.hooks_on") != "gliders":
        fields["heading.ring_inside"] = draw(_or_left_out(lengths(5, 100)))
    if style == "rings":
        fields["heading.held_by"] = draw(st.sampled_from(["sewn rings", "clips"]))
    came = draw(st.sampled_from(["casing", *KINDS]))
    if came != "casing":
        fields |= {f"panel.heading.{name}": draw(each) for name, each in hangs_by(came, False).items()}
        fields["panel.heading.style"] = came
    if came == "rings":
        fields["panel.heading.drop"] = draw(lengths(151, 400))  # no less than the rod is thick
    return {
        **_BARE,
        **fields,
        "units": draw(st.sampled_from(["inch", "metric"])),
        "cloth": draw(st.sampled_from(["light", "medium", "heavy"])),
        "rod.diameter": draw(lengths(1, 150) if wide else lengths(10, 35)),
        "rod.returns": draw(lengths(0, 150)),
        "panel.width": draw(lengths(102, 20_000) if wide else lengths(500, 2500)),
        "panel.count": draw(st.integers(1, 6)),
        "panel.casing": draw(lengths(60, 120)),
        "drop.hung_by": draw(st.sampled_from(["old heading", "new heading"])),
        "drop.floor_marks": None,
        "drop.rod_to_floor": draw(lengths(1500, 2300)),
        "heading.style": style,
        "heading.count": draw(_or_left_out(st.integers(2, 2000 if wide else 25))),
        "heading.edge_inset": draw(_or_left_out(lengths(1, 50) if wide else lengths(5, 100))),
        "heading.max_pitch": draw(_or_left_out(lengths(100, 400))),
    }
