"""What can be wrong with eyelets, and the number that puts it right."""

from __future__ import annotations

from fractions import Fraction

from ....lengths import NOTHING, Length
from ....lengths.counting import plural
from ....spec import Spec
from ... import spacing
from ...figures import Notice
from ...folds import turning_ring
from ...heading_choices import CLOTH_ROUND_EYELET, EYELET_PITCHES, EYELET_PLAY, LEAST_RIM_GAP
from ...widths import made_width
from ...wording import at_least, at_most, decimal, near
from .plan import EyeletPlan
from .sizes import MOST, doubled_there, fewest, most_apart, pitch_limit


def eyelet_notices(spec: Spec, eyelets: EyeletPlan) -> tuple[Notice, ...]:
    """Everything that looks wrong with the eyelets of one panel."""
    return (
        *_ring_notices(spec, eyelets),
        *_cut_notices(spec, eyelets),
        *_cloth_notices(spec, eyelets),
        *_edge_notices(spec, eyelets),
        *_spacing_notices(spec, eyelets),
        *_wall_notices(spec, eyelets),
        *_rod_notices(spec),
    )


def ring_range(spec: Spec) -> str:
    """The rings that guides ask for on this rod, in words."""
    tape, rod = spec.tape, spec.rod.diameter
    least, most = (rod * (1 + play) for play in EYELET_PLAY)
    return (
        f"Guides ask for rings 14 to 40 % wider inside than the rod, {at_least(tape, least)} to {at_most(tape, most)} "
        f"for this one"
    )


def _ring_notices(spec: Spec, eyelets: EyeletPlan) -> list[Notice]:
    """Whether the rod goes through the rings, and how freely."""
    tape, rod, inside = spec.tape, spec.rod.diameter, eyelets.inside
    if inside <= rod:
        text = (
            f"The rod does not go through the eyelets: it is {near(tape, rod)} thick, and the rings are "
            f"{near(tape, inside)} wide inside. {ring_range(spec)}."
        )
        return [Notice("eyelet_too_tight", "stop", text)]
    found = []
    play, (least, most) = inside / rod - 1, EYELET_PLAY
    if play < least:
        text = f"The eyelets slide with little to spare: {_percent(play)} wider than the rod. {ring_range(spec)}."
        found.append(Notice("eyelet_tight", "warning", text))
    elif play > most:
        text = f"The eyelets hang loosely: {_percent(play)} wider than the rod. {ring_range(spec)}."
        found.append(Notice("eyelet_loose", "note", text))
    turning = turning_ring(rod, eyelets.fold)
    if turning is not None and inside < turning:
        text = (
            f"The eyelets bind on the rod: hung this flat the cloth crosses the rod aslant, and a ring that stands so "
            f"needs to be {at_least(tape, turning)} wide inside, not {near(tape, inside)}. Fuller panels cross it "
            "more squarely."
        )
        found.append(Notice("eyelet_binds", "warning", text))
    return found


def _percent(share: Fraction) -> str:
    """A share in per cent, to a tenth and away from the range of guides, so that it is never shown as its end."""
    tenths = share * 1000
    whole = tenths // 1 if share < EYELET_PLAY[0] else -(-tenths // 1)
    return f"{decimal(whole / 10)} %"


def _cut_notices(spec: Spec, eyelets: EyeletPlan) -> list[Notice]:
    """Whether the hole is the ring maker's, and not so narrow that cloth shows inside the ring."""
    tape = spec.tape
    if eyelets.cut_circle >= eyelets.outside:
        text = (
            f"The circle to cut, {near(tape, eyelets.cut_circle)} across, is no smaller than the whole ring, "
            f"{near(tape, eyelets.outside)}, which would fall through it. Measure ring and circle again."
        )
        return [Notice("cut_circle_wide", "stop", text)]
    if eyelets.given.cut_circle is None:
        text = (
            f"The circle to cut, {near(tape, eyelets.cut_circle)} across, is our guess. Hold the eyelet card to what "
            "comes with the rings, and write heading.cut_circle if that says otherwise; try one ring on a scrap, as "
            "many layers thick as the top."
        )
        return [Notice("cut_circle_guessed", "note", text)]
    if eyelets.cut_circle < eyelets.inside:
        text = (
            f"The circle to cut, {near(tape, eyelets.cut_circle)} across, is narrower than the ring's opening: cloth "
            f"would stand {near(tape, (eyelets.inside - eyelets.cut_circle) / 2)} into it all round. Look at the "
            "packet again."
        )
        return [Notice("cut_circle_narrow", "warning", text)]
    return []


def _cloth_notices(spec: Spec, eyelets: EyeletPlan) -> list[Notice]:
    """Whether there is enough cloth above the rings, and enough doubled cloth below them."""
    tape, half = spec.tape, eyelets.outside / 2
    wanted = eyelets.inside / 2 + CLOTH_ROUND_EYELET
    found = []
    if eyelets.centre < half:
        text = (
            f"The rings would stand {near(tape, half - eyelets.centre)} over the panel's top edge: their centres must "
            f"lie at least {at_least(tape, max(wanted, half))} below it."
        )
        found.append(Notice("eyelet_over_top", "stop", text))
    elif eyelets.above < CLOTH_ROUND_EYELET:
        text = (
            f"There is only {near(tape, eyelets.above)} of cloth above the rings' openings, and 1 in (2.5 cm) at least "
            f"is asked for (Singer). Set their centres {at_least(tape, wanted)} below the top edge."
        )
        found.append(Notice("eyelet_near_top", "warning", text))
    doubled = doubled_there(spec, eyelets.given)
    below = doubled - eyelets.centre
    deep = at_least(tape, eyelets.centre + max(wanted, half))
    if below < half:
        text = (
            f"The rings would stand half on single cloth, which tears: the top is doubled {near(tape, doubled)} deep, "
            f"and the rings reach {near(tape, eyelets.centre + half)} down. Make the band {deep} deep."
        )
        found.append(Notice("eyelet_off_band", "stop", text))
    elif below < wanted:
        text = (
            f"There is only {near(tape, below - eyelets.inside / 2)} of doubled cloth below the rings' openings, and "
            f"1 in (2.5 cm) at least is asked for (Singer). Make the band {deep} deep."
        )
        found.append(Notice("eyelet_near_band_edge", "warning", text))
    return found


def _edge_notices(spec: Spec, eyelets: EyeletPlan) -> list[Notice]:
    """Whether the end rings lie on the panel, and where the side hem ends."""
    tape, half = spec.tape, eyelets.outside / 2
    gap, hem = eyelets.edge_inset - half, eyelets.given.side_hem
    found = []
    if gap < NOTHING:
        text = (
            f"The end rings would stand {near(tape, -gap)} over the panel's side edge: rings {near(tape, 2 * half)} "
            f"wide need an edge inset of at least {at_least(tape, half + LEAST_RIM_GAP)}."
        )
        found.append(Notice("eyelet_over_edge", "stop", text))
    elif gap < LEAST_RIM_GAP:
        text = (
            f"The end rings lie {near(tape, gap)} from the panel's side edge, too near to be closed flat. An edge "
            f"inset of at least {at_least(tape, half + LEAST_RIM_GAP)} leaves room."
        )
        found.append(Notice("eyelet_near_edge", "warning", text))
    if hem is not None and gap < hem < gap + 2 * half:
        inside = hem - half
        within = f"at most {at_most(tape, inside)}, wholly on it, or " if inside >= half + LEAST_RIM_GAP else ""
        text = (
            f"The end rings would stand half on the side hem, {near(tape, hem)} wide, and not close evenly over its "
            f"step. An edge inset of {within}at least {at_least(tape, hem + half)}, beside it, puts that right."
        )
        found.append(Notice("eyelet_on_side_hem", "warning", text))
    if eyelets.edge_inset * 2 > eyelets.pitch:
        text = (
            f"The edges beyond the end eyelets, {near(tape, eyelets.edge_inset)} wide, turn to the wall and stand out "
            f"behind the folds, which reach back {near(tape, eyelets.pitch / 2)} at most. An edge inset of at most "
            "half the spacing keeps them in."
        )
        found.append(Notice("edge_behind_folds", "note", text))
    return found


def _spacing_notices(spec: Spec, eyelets: EyeletPlan) -> list[Notice]:
    """Whether there are too many eyelets, too few, or an odd number."""
    tape, limit = spec.tape, pitch_limit(spec, eyelets.given)
    span = made_width(spec) - 2 * eyelets.edge_inset
    found = []
    if eyelets.pitch <= eyelets.outside:
        fitting = most_apart(span, eyelets.outside)
        cure = f"{fitting} fit." if span > (fitting - 1) * eyelets.outside else "This panel is too narrow for two."
        text = (
            f"The rings run into each other: {eyelets.count} of them, {near(tape, eyelets.outside)} wide, would stand "
            f"{near(tape, eyelets.pitch)} apart, centre to centre. {cure}"
        )
        found.append(Notice("eyelets_overlap", "stop", text))
    if eyelets.pitch > limit:
        found.append(Notice("eyelets_far_apart", "warning", _far_apart(spec, eyelets, span, limit)))
    fewer = fewest(span, limit)
    if eyelets.pitch < EYELET_PITCHES[0] and fewer < eyelets.count - eyelets.count % 2:
        text = (
            f"The eyelets stand {near(tape, eyelets.pitch)} apart, closer than the usual 6 to 8 in (150 to 200 mm): "
            f"the folds are many and shallow. {fewer} would stand "
            f"{near(tape, spacing.pitch(made_width(spec), eyelets.edge_inset, fewer))} apart."
        )
        found.append(Notice("eyelets_close", "note", text))
    if eyelets.count % 2:
        beside = [even for even in (eyelets.count - 1, eyelets.count + 1) if 2 <= even <= MOST]
        text = (
            f"{eyelets.count} eyelets is an odd number: one side edge of the panel turns to the wall, the other into "
            f"the room. {' or '.join(map(str, beside))} would turn both to the wall (Singer)."
        )
        found.append(Notice("odd_eyelets", "warning", text))
    return found


def _far_apart(spec: Spec, eyelets: EyeletPlan, span: Length, limit: Length) -> str:
    tape, given = spec.tape, eyelets.given.max_pitch is not None
    whose = "the limit given" if given else "the most that is usual"
    if not given and limit < EYELET_PITCHES[1]:
        whose = "twice the rod's distance from the wall" if limit > EYELET_PITCHES[0] else "the least that is usual"
    start = (
        f"The eyelets stand {near(tape, eyelets.pitch)} apart, and {near(tape, limit)} is {whose}: the folds between "
        "them are deep and the top edge sags."
    )
    curing = fewest(span, limit)
    if curing > most_apart(span, eyelets.outside):
        return f"{start} That takes more of them than fit: smaller rings, or a wider limit."
    closer = spacing.pitch(made_width(spec), eyelets.edge_inset, curing)
    return f"{start} {plural(curing, 'eyelet')} would stand {near(tape, closer)} apart."


def _wall_notices(spec: Spec, eyelets: EyeletPlan) -> list[Notice]:
    """Whether the backs of the folds press on the wall."""
    tape, room, fold = spec.tape, spec.rod.projection, eyelets.fold
    if room is None:
        return []
    if fold.depth > room:
        creased = f", {near(tape, fold.creased)} where they are pressed sharp" if fold.creased > fold.depth else ""
        text = (
            f"The folds press on the wall: drawn out to cover the rod they reach {near(tape, fold.depth)} back from "
            f"its centre{creased}, and there is {near(tape, room)}. Set the rod further out, or the eyelets at most "
            f"{at_most(tape, eyelets.pitch * (room / fold.depth))} apart."
        )
        return [Notice("folds_press_on_wall", "warning", text)]
    if eyelets.pitch / 2 > room:
        text = (
            f"Drawn out, the folds clear the wall: they reach {near(tape, fold.depth)} back from the rod's centre, and "
            f"there is {near(tape, room)}. Pushed together they would reach {near(tape, eyelets.pitch / 2)}, half the "
            f"spacing, and press on it. A spacing of at most {at_most(tape, 2 * room)} clears it always."
        )
        return [Notice("folds_press_when_open", "note", text)]
    return []


def _rod_notices(spec: Spec) -> list[Notice]:
    """Whether the panels are asked to go where eyelets on a rod do not."""
    tape, rod, found = spec.tape, spec.rod, []
    if rod.overlap:
        text = (
            f"Panels with eyelets on one rod meet and do not overlap: the overlap of {near(tape, rod.overlap)} takes "
            "two rods, one before the other."
        )
        found.append(Notice("eyelets_no_overlap", "warning", text))
    if rod.returns:
        text = (
            f"Eyelets go round to the wall only on a rod that bends there itself: on a straight one the return of "
            f"{near(tape, rod.returns)} stays open. Write rod.returns 0 for a straight rod."
        )
        found.append(Notice("eyelets_no_return", "note", text))
    return found
