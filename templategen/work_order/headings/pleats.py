"""What is said of pleats folded by hand."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.pleats import PleatPlan
from ...spec.headings import PinchPleats
from ...templates import Choices
from ...templates.said import plain
from ..pictures import pleats as pictures
from ..pictures.marking import pleat_marking
from ..step import Step
from .face import HeadingWork


def _name(pleats: PleatPlan) -> str:
    if isinstance(pleats.given, PinchPleats):
        return f"pinch pleats of {'two' if pleats.given.fingers == 2 else 'three'} fingers"
    return pleats.style


def made(plan: Plan, pleats: PleatPlan) -> str:
    """How many there are, and how wide they make the panel."""
    return f"with {pleats.pleats} {_name(pleats)}, {plain(plan, pleats.finished)} wide when pleated"


def steps(plan: Plan, pleats: PleatPlan, choices: Choices) -> Iterator[Step]:
    """Stiffening, marks, pleats, hooks."""
    yield Step(
        "Stiffen",
        f"Slip stiffening {plain(plan, pleats.given.heading_depth)} deep into the doubled top from one side, as far as "
        "the other, and press.",
        view=pictures.stiff(plan, pleats),
    )
    which = "the pleat strip"
    if pleats.mirrored:
        which = (
            "the pleat strip for left panels on half the panels, that for right panels on the others (left and right "
            "as they hang, seen from the front),"
        )
    yield Step(
        "Mark",
        f"Pin {which} to the back of the top, its upper edge on the panel's top edge, its ends at the side edges, the "
        f"end that says return edge at the return edge. Put a pin at every line.{_copies(pleats, choices)}",
        view=pleat_marking(plan, pleats),
        uses=("pleat strip",),
    )
    yield Step(
        "Sew",
        f"Bring the two pins of each number together, {_folded(pleats)}, and sew from the top edge down to the heading "
        f"card's stitch line: {pleats.pleats} pleats, each of {plain(plan, pleats.pleat)} of cloth, with spaces of "
        f"{plain(plan, pleats.space)}.",
        view=pictures.together(plan, pleats),
        uses=("heading card",),
    )
    yield Step(
        "Measure",
        f"Lay the top flat and measure: it must come to {plain(plan, pleats.finished)}.",
        view=pictures.finished(plan, pleats),
    )
    yield Step("Fold", _folding(pleats), view=pictures.formed(plan, pleats))
    yield Step(
        "Hooks",
        f"Set a hook behind each pleat and one at either edge, its bend {plain(plan, pleats.hooks_below)} below the "
        "top edge.",
        view=pictures.hung(plan, pleats),
    )


def _folded(pleats: PleatPlan) -> str:
    """Which way the cloth of a pleat is folded: to the front, or for an inverted one to the back."""
    if pleats.style == "inverted box pleats":
        return "right side in, so that the cloth between them stands out at the back"
    return "right side out, so that the cloth between them stands out at the front"


def _copies(pleats: PleatPlan, choices: Choices) -> str:
    """How many strips there are, and why none of them is a half one."""
    said = ""
    if choices.strips > 1:
        kinds = " of either" if pleats.mirrored else ""
        said = f" There are {choices.strips}{kinds}, all alike: as many panels can be marked at once."
    if choices.half_strip:
        said += " It is a whole strip, not a half one: pleats do not stand alike from both edges."
    return said


def _folding(pleats: PleatPlan) -> str:
    if isinstance(pleats.given, PinchPleats):
        fingers = "two" if pleats.given.fingers == 2 else "three"
        return f"Pinch each pleat into {fingers} equal fingers and sew them together at the foot."
    side = "on the front" if pleats.style == "box pleats" else "on the back"
    return f"Press each pleat flat {side}, as much to either side of its seam, and sew it down at the foot."


def _work(name: str) -> HeadingWork[PleatPlan]:
    return HeadingWork(name=name, made=made, hung="its hooks", steps=steps, stage="Pleats")


PINCH_PLEATS = _work("pinch pleats")
BOX_PLEATS = _work("box pleats")
INVERTED_BOX_PLEATS = _work("inverted box pleats")
