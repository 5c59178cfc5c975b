"""Whether the floor was marked rightly, and whether the panel will hang where it is wanted."""

from __future__ import annotations

from ...lengths import NOTHING, Length, Tape
from ...spec import Spec
from ..choices import FLOOR_SLOPE_LIMIT, MADE_WITHIN, MOST_MARKS_WEIGHED, STANDS_OUT
from ..drop import computed_floor, hang_when_done, hang_when_marked, marked_by_new
from ..figures import Notice
from ..floor_marks import outlier
from ..headings import HEADINGS
from ..lines import Line, line_of
from ..plan import DropPlan, HemPlan, TopPlan
from ..widths import made_count
from ..wording import at_least, at_most, near
from .clearance import clearance_notices


def hang_notices(spec: Spec, drop: DropPlan) -> list[Notice]:
    """What the change of heading does to the hem, and whether the old casing can have been hung at all."""
    tape, old, new = spec.tape, hang_when_marked(spec), hang_when_done(spec)
    if marked_by_new(spec):
        return []
    found, its = [], old.heading.removeprefix("back ")
    if old.tube and not old.tube.passes:
        tube = "casing" if old.heading == "casing" else "tube"
        text = (
            f"The panel cannot have hung by its {its}: a rod {near(tape, spec.rod.diameter)} thick needs "
            f"a {tube} at least {at_least(tape, old.tube.least)} deep, and this one is "
            f"{near(tape, old.tube.depth)}. Measure the rod and the {its} again."
        )
        found.append(Notice("casing_too_tight", "stop", text))
    if drop.hang_shift != NOTHING:
        way = "higher" if drop.hang_shift > NOTHING else "lower"
        shift = abs(drop.hang_shift)
        far = f"{near(tape, shift)} {way}" if 2 * shift >= tape.step else f"{way} by less than the tape shows"
        text = (
            f"The panel was marked while it hung by its {its}; on its new heading it hangs "
            f"{far}, and the plan allows for it. It hung "
            f"{HEADINGS[old.heading].explain(tape, old)}; it will hang {HEADINGS[new.heading].explain(tape, new)}."
        )
        found.append(Notice("hang_shift", "note", text))
    return found


def drop_notices(spec: Spec, drop: DropPlan, hem: HemPlan, top: TopPlan) -> list[Notice]:
    """The floor marks against each other and against the rod's height; the clearance; the finish line."""
    return [
        *_finish_notices(spec, drop, hem, top),
        *_check_notices(spec),
        *_floor_notices(spec),
        *clearance_notices(spec),
    ]


def _finish_notices(spec: Spec, drop: DropPlan, hem: HemPlan, top: TopPlan) -> list[Notice]:
    """Whether the finished edge and its hem stay below the heading."""
    if spec.panel.length is None:
        return []
    tape, line = spec.tape, line_of(spec)
    heading = spec.panel.length - top.lowered - top.reach
    highest = max(mark.finish for mark in drop.marks)
    if heading <= NOTHING:
        text = (
            f"The panel, {near(tape, spec.panel.length)} long, is all heading: that takes "
            f"{near(tape, top.lowered + top.reach)} of it. Measure the panel's length again, "
            "from the top edge to the bottom edge."
        )
        return [Notice("all_heading", "stop", text)]
    if highest >= heading:
        text = (
            f"The finish line, {near(tape, highest)} up from the old bottom edge, comes into the heading, "
            f"which begins {near(tape, heading)} up. {line.Name} marks are measured from the bottom edge up to "
            f"{line.the}: measure again."
        )
        return [Notice("finish_in_heading", "stop", text)]
    room = heading - highest
    if hem.depth >= room:
        text = (
            f"The hem, {near(tape, hem.depth)} deep, would reach up into the heading: there is "
            f"{at_most(tape, room)} of cloth between the finish line and the heading."
        )
        return [Notice("hem_in_heading", "stop", text)]
    return []


def _check_notices(spec: Spec) -> list[Notice]:
    """The floor as marked held against the floor as worked out from the rod."""
    marks, tape, line = spec.drop.floor_marks, spec.tape, line_of(spec)
    if not marks:
        text = (
            f"The {line.name} line is worked out from the rod's height and the panel's length, and nothing "
            f"checks it. Before cutting, hang one panel and mark {line.the} on it."
        )
        return [Notice("floor_by_rod", "note", text)]
    if spec.drop.rod_to_floor is None:
        return []
    worked_out = computed_floor(spec)
    if worked_out is None:
        text = (
            f"The {line.name} marks and the rod's height cannot be held against each other without the panel's "
            "length: measure it flat, from the top edge to the bottom edge."
        )
        return [Notice("floor_unchecked", "note", text)]
    mean = _mean(marks)
    apart = abs(mean - worked_out)
    if apart <= MADE_WITHIN:
        return []
    marked = "on average at" if len(marks) > 1 else "at"
    text = (
        f"{line.The} is marked {marked} {near(tape, mean)}, but by the rod's height it comes at "
        f"{near(tape, worked_out)}, which is {near(tape, apart)} away; panels are made within "
        f"{near(tape, MADE_WITHIN)} (UFGS-12491N). The plan goes by the marks. Before cutting, measure "
        f"again the panel's length ({near(tape, spec.panel.length or NOTHING)}), the rod's height "
        f"({near(tape, spec.drop.rod_to_floor)}) and the {line.name} marks, with a steel or wooden rule."
    )
    return [Notice("floor_disagrees", "warning", text)]


def _mean(heights: tuple[Length, ...]) -> Length:
    total = NOTHING
    for height in heights:
        total = total + height
    return total / len(heights)


def _floor_notices(spec: Spec) -> list[Notice]:
    """Floor marks that differ among themselves."""
    marks, tape, line = spec.drop.floor_marks, spec.tape, line_of(spec)
    if len(set(marks)) < 2:
        return []
    odd = outlier(marks) if len(marks) <= MOST_MARKS_WEIGHED else None
    if odd is not None and spec.drop.follows == "highest" and marks[odd.number - 1] != max(marks):
        odd = None  # the hem goes by the highest mark alone
    if odd is not None and abs(odd.beyond) > MADE_WITHIN and STANDS_OUT * odd.others <= abs(odd.beyond):
        side = "above" if odd.beyond > NOTHING else "below"
        text = (
            f"{line.Name} mark {odd.number} of {len(marks)}, {near(tape, marks[odd.number - 1])}, stands "
            f"{near(tape, abs(odd.beyond))} {side} the line through the others: read it again before "
            f"cutting. If it is wrong, {near(tape, marks[odd.number - 1] - odd.beyond)} would be in line."
        )
        return [Notice("floor_mark_jumps", "warning", text)]
    low, high = min(marks), max(marks)
    limit = max(MADE_WITHIN, spec.panel.width * FLOOR_SLOPE_LIMIT)
    run = (
        f"from {near(tape, low)} to {near(tape, high)}, {near(tape, high - low)} across a width of "
        f"{near(tape, spec.panel.width)}"
    )
    if spec.drop.follows == "highest":
        clears, least = spec.drop.clearance + high - low, _from_line(tape, line, spec.drop.clearance)
        text = (
            f"The {line.name} marks run {run}. The hem is level by the highest: there it ends {least}, and at the "
            f"lowest {_from_line(tape, line, clears)}."
        )
        return [Notice("level_at_highest", "note", text)]
    if high - low > limit:
        text = (
            f"The {line.name} marks run {run}; beyond {at_most(tape, limit)} the rod is more likely to be out of "
            f"level than {line.the}. Try the rod with a level and read the marks again; if they stand, the "
            "cut line follows them."
        )
        return [Notice("floor_slopes", "warning", text)]
    others = (
        f" Mark the other panels where they are to hang: {line.the} may differ there, and a panel whose marks "
        "differ needs a kit of its own."
    )
    text = f"{line.The} is not level: the marks run {run}. The cut line follows them."
    text += others if made_count(spec) > 1 else ""
    return [Notice("floor_uneven", "note", text)]


def _from_line(tape: Tape, line: Line, clearance: Length) -> str:
    side = "above" if clearance >= NOTHING else "below"
    return f"{near(tape, abs(clearance))} {side} {line.the}"
