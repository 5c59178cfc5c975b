"""What can be wrong with pleats, and the number that puts it right."""

from __future__ import annotations

from ....spec import Spec
from ....spec.headings import PinchPleats
from ...figures import Notice
from ...heading_choices import BOX_AS_WIDE_AS_ITS_SPACE, BOX_FULLNESS, MOST_PLEAT_SPACE, MOST_PLEATS, PLEAT_FULLNESS
from ...widths import made_count
from ...wording import at_least, decimal, near
from .plan import PleatPlan


def pleat_notices(spec: Spec, pleats: PleatPlan) -> tuple[Notice, ...]:
    """Everything that looks wrong with the pleats of one panel."""
    tape = spec.tape
    if pleats.flat <= pleats.finished:
        text = (
            f"There is nothing to pleat: the panel is {near(tape, pleats.flat)} wide flat, and it has to cover "
            f"{near(tape, pleats.finished)}. Two times is the least for pleats (common practice)."
        )
        return (Notice("nothing_to_pleat", "stop", text),)
    if pleats.finished <= pleats.first + pleats.last:
        text = (
            f"There is no room for pleats: return and leading edge take {near(tape, pleats.first + pleats.last)} of a "
            f"finished width of {near(tape, pleats.finished)}."
        )
        return (Notice("no_room_for_pleats", "stop", text),)
    return (
        *_size_notices(spec, pleats),
        *_space_notices(spec, pleats),
        *_box_notices(spec, pleats),
        *_fullness_notices(pleats),
        *_hook_notices(spec, pleats),
        *_panel_notices(spec, pleats),
    )


def _size_notices(spec: Spec, pleats: PleatPlan) -> list[Notice]:
    """Too little or too much cloth in a pleat."""
    tape, (least, most), taken = spec.tape, pleats.sizes, pleats.flat - pleats.finished
    if least <= pleats.pleat <= most:
        return []
    thin = pleats.pleat < least
    how = "thin" if thin else "thick"
    other = taken.mm // least.mm if thin else -(-taken.mm // most.mm)
    fits = 2 <= other <= MOST_PLEATS
    cure = f" {other} pleats would come within it." if fits else " Take more panels, or wider ones." if thin else ""
    text = (
        f"The pleats are {how}: {near(tape, pleats.pleat)} of cloth in each; {near(tape, least)} to "
        f"{near(tape, most)} makes a good one.{cure}"
    )
    return [Notice(f"pleats_{how}", "warning", text)]


def _space_notices(spec: Spec, pleats: PleatPlan) -> list[Notice]:
    """Spaces so wide that the top droops between two pleats."""
    if pleats.space <= MOST_PLEAT_SPACE:
        return []
    tape, between = spec.tape, pleats.finished - pleats.first - pleats.last
    needed = int(-(-between.mm // MOST_PLEAT_SPACE.mm)) + 1
    size = (pleats.flat - pleats.finished) / needed
    cure = f"{needed} pleats would stand within that, each of {near(tape, size)} of cloth."
    if size < pleats.sizes[0]:
        cure = f"That takes {needed} pleats, and more cloth: wider panels, or more of them."
    text = (
        f"The spaces are wide: the top, held at the pleats alone, stands free for {near(tape, pleats.space)} between "
        f"two, and beyond {near(tape, MOST_PLEAT_SPACE)} it droops. {cure}"
    )
    return [Notice("pleat_spaces_wide", "warning", text)]


def _fullness_notices(pleats: PleatPlan) -> list[Notice]:
    """Cloth beyond what the sources give for its kind of pleat."""
    full = pleats.flat / pleats.finished
    if isinstance(pleats.given, PinchPleats):
        (low, high), why = PLEAT_FULLNESS, "2 to 2.5 times is usual for pinch pleats (common practice; "
    else:
        (low, high), why = BOX_FULLNESS, (
            "box pleats take 2 times (common practice) to 3, which makes each as wide as its space (Stephenson 1905; "
        )
    if low <= full <= high:
        return []
    rounded = full * 100 // 1 if full < low else -(-full * 100 // 1)
    text = (
        f"The cloth is {decimal(float(rounded) / 100)} times the finished width; {why}UFGS-12491N counts 2, 2.5 and 3 "
        "times). The choice is yours."
    )
    return [Notice("pleat_fullness", "note", text)]


def _hook_notices(spec: Spec, pleats: PleatPlan) -> list[Notice]:
    """Hooks that sit below what holds the pleats together."""
    given, tape = pleats.given, spec.tape
    if pleats.hooks_below <= given.heading_depth:
        return []
    text = (
        f"The hooks sit {near(tape, pleats.hooks_below)} below the top edge, and the stiffening and the pleats' "
        f"seams end at {near(tape, given.heading_depth)}: the top falls forward over them. Set them higher, or make "
        f"the heading {at_least(tape, pleats.hooks_below)} deep."
    )
    return [Notice("hooks_below_pleats", "warning", text)]


def _panel_notices(spec: Spec, pleats: PleatPlan) -> list[Notice]:
    """Panels that are not all made as the strips say."""
    found, count = [], made_count(spec)
    if count > 2 and spec.rod.returns:
        text = (
            "More than two panels share the rod, and only those at its ends have a return: those between need a strip "
            "of their own, from a spec without returns."
        )
        found.append(Notice("return_at_ends_only", "warning", text))
    if pleats.mirrored and count % 2:
        text = (
            f"{count} panels are not pairs: {count // 2} and {count - count // 2} would hang on either side. Both "
            "strips are printed; write how each is to hang on the panels themselves, or write panel.leading_edge and "
            "make a kit for either side."
        )
        found.append(Notice("not_in_pairs", "warning", text))
    return found


def _box_notices(spec: Spec, pleats: PleatPlan) -> list[Notice]:
    """Boxes against their spaces."""
    if isinstance(pleats.given, PinchPleats) or pleats.pleat / 2 <= pleats.space:
        return []
    tape = spec.tape
    text = (
        f"The boxes are {near(tape, pleats.pleat / 2)} wide and stand {near(tape, pleats.space)} apart, so they "
        f"overlap. A box as wide as its space takes {BOX_AS_WIDE_AS_ITS_SPACE} times the finished width (Stephenson "
        f"1905); this cloth is {decimal(float(pleats.flat / pleats.finished))} times. Spaces of at least "
        f"{at_least(tape, pleats.pleat / 2)} would clear them."
    )
    return [Notice("boxes_overlap", "warning", text)]
