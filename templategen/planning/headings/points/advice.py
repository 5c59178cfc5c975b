"""What can be wrong with rings, clips and hooks, and the number that puts it right."""

from __future__ import annotations

from ....lengths import NOTHING, Length
from ....spec import Spec
from ...choices import FOLD_OFF_WALL, RING_EASE_RANGE, STANDS_UP
from ...figures import Notice
from ...wording import at_least, at_most, near
from .. import along
from .laying_out import pitch_limit
from .plan import PointPlan


def point_notices(spec: Spec, points: PointPlan) -> tuple[Notice, ...]:
    """Everything that looks wrong with what holds one panel."""
    limit = pitch_limit(spec, points.given)
    return (
        *(_ring_notices(spec, points) if points.round_rod else _track_notices(spec, points)),
        *_stands_up(spec, points),
        *along.corner_droops(spec, points, limit),
        *along.spacing_notices(spec, points, points.given, limit),
        *_wall_notices(spec, points),
    )


def _ring_notices(spec: Spec, points: PointPlan) -> list[Notice]:
    """Whether the rings go over the rod, and the edge stays clear of it."""
    tape, rod, inside = spec.tape, spec.rod.diameter, points.given.ring_inside
    found = []
    if inside is not None and inside <= rod:
        text = (
            f"The rings do not go over the rod: it is {near(tape, rod)} thick, and they are {near(tape, inside)} wide "
            f"inside. Use rings at least {at_least(tape, rod + RING_EASE_RANGE[0])} wide inside."
        )
        found.append(Notice("rings_too_small", "stop", text))
    elif inside is not None and inside < rod + RING_EASE_RANGE[1]:
        found += _snug(spec, inside)
    least = rod if inside is None else max(rod, inside)
    if points.drop < least:
        what = "thick" if least == rod else "and its rings wider"
        text = (
            f"The drop, {near(tape, points.drop)}, cannot be: a ring round a rod {near(tape, rod)} {what} holds the "
            f"cloth at least {at_least(tape, least)} below the rod's top. Measure again, from the top of the rod and "
            "not from its underside."
        )
        found.append(Notice("drop_above_ring", "stop", text))
    elif points.edge_below < rod:
        text = (
            f"The panel's top edge stands {near(tape, rod - points.edge_below)} above the rod's underside, and rubs on "
            f"rod and brackets when the panel is drawn. {points.thing.capitalize()}s at most "
            f"{at_most(tape, points.drop - rod)} below the edge keep it clear."
        )
        found.append(Notice("edge_rubs_rod", "note", text))
    return found


def _snug(spec: Spec, inside: Length) -> list[Notice]:
    """Rings wider than the rod by less than every guide says: the range, and the choice is the user's."""
    tape, rod, (least, most) = spec.tape, spec.rod.diameter, RING_EASE_RANGE
    close = f"The rings are {near(tape, inside - rod)} wider inside than the rod is thick"
    if inside < rod + least:
        text = (
            f"{close}, and may bind on it. Household guides have at least {near(tape, least)}: rings at least "
            f"{at_least(tape, rod + least)} wide inside."
        )
        return [Notice("rings_bind", "warning", text)]
    text = f"{close}. Household guides differ, from {near(tape, least)} to {near(tape, most)}; the choice is yours."
    return [Notice("rings_snug", "note", text)]


def _track_notices(spec: Spec, points: PointPlan) -> list[Notice]:
    """Whether the track and its gliders show above the panel."""
    if points.edge_below <= NOTHING:
        return []
    tape = spec.tape
    text = (
        f"The track shows: the panel's top edge hangs {near(tape, points.edge_below)} below the track's top. Hooks "
        f"at least {at_least(tape, points.drop)} below the edge would hide it."
    )
    return [Notice("track_shows", "note", text)]


def _stands_up(spec: Spec, points: PointPlan) -> list[Notice]:
    """Whether the cloth above what holds it falls forward."""
    tape, most, things = spec.tape, STANDS_UP[spec.cloth], f"{points.thing}s"
    if points.set_below <= most:
        return []
    text = (
        f"The {things} are set {near(tape, points.set_below)} below the panel's top edge, and {spec.cloth} cloth that "
        f"stands up more than {near(tape, most)} above what holds it falls forward (A Manual of Home-Making: 1 1/2 in "
        f"where limp, 2 in where firm). Set them at most {at_most(tape, most)} below it, or stiffen the top."
    )
    return [Notice(f"{things}_low", "warning", text)]


def _wall_notices(spec: Spec, points: PointPlan) -> list[Notice]:
    """Whether the folds between two of them have room before the wall, when the panel is drawn back.

    What hangs between two folds back half its width.
    """
    tape, room = spec.tape, spec.rod.returns - FOLD_OFF_WALL
    if spec.rod.returns <= NOTHING or points.pitch <= 2 * room:
        return []
    text = (
        f"Drawn back, the cloth between two {points.thing}s folds {near(tape, points.pitch / 2)} towards the wall, "
        f"which is {near(tape, spec.rod.returns)} away by rod.returns. "
    )
    closer = f"{points.thing.capitalize()}s at most {at_most(tape, 2 * room)} apart keep the folds off it."
    text += closer if room > NOTHING else "There is no room for folds behind the rod."
    return [Notice("folds_touch_wall", "note", text)]
