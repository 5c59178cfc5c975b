"""After hanging: what is done raises the hem by what it was off, within what loops and hem can give."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from templategen.errors import Refusal
from templategen.lengths import NOTHING, Length, inches, millimetres
from templategen.planning import Plan
from templategen.planning.adjusting import Adjustment, adjust, adjustment_record, tell_adjustment
from templategen.planning.adjusting.gives import GIVES
from templategen.planning.adjusting.remedies import hung_after
from templategen.planning.choices import LEAST_TURN, MADE_WITHIN
from templategen.planning.hanging import least_tube, passes, rows_apart
from templategen.planning.headings.back_loops import LoopPlan
from templategen.planning.plan import HeadingMark
from templategen.spec.hangs import HangReading, read_hangs

from ..building import planned
from ..test_teardrop import taut_round

LOOPS_LEFT_OUT = dict.fromkeys(
    f"heading.{name}"
    for name in ("count", "edge_inset", "loop_length", "loop_width", "lower_allowance", "upper_turn")
)


def adjusted(text: str, *, stitched: bool = True, changes: dict[str, object] | None = None) -> tuple[Plan, Adjustment]:
    plan = planned(changes)
    return plan, adjust(plan, read_hangs(text, plan.spec.units), stitched=stitched)


@pytest.mark.parametrize("lift", ["1/8", "1/4", "1/2", "1"])
def test_a_second_row_lifts_the_panel_by_what_a_taut_string_says(lift: str) -> None:
    """Against a string pulled taut round rod and stitch line, before and after; a 3/4 in rod, a 2 1/4 in tube."""
    rod, depth = inches("3/4"), inches("9/4")
    apart = rows_apart(rod, depth, inches(lift))
    assert apart < inches(lift), "the shallower tube takes up more, so that the rows lie nearer than the hem rises"

    def below(tube: Length) -> float:
        """From the rod's centre to the stitch line, by halving: the string is as long as the tube goes round."""
        low, high = float(rod.mm) / 2 + 1e-9, float(tube.mm)
        for _ in range(60):
            middle = (low + high) / 2
            low, high = (middle, high) if taut_round(float(rod.mm) / 2, middle) < 2 * float(tube.mm) else (low, middle)
        return low

    # The lower seam hangs where the string ends, and all the cloth below it rises with it.
    assert below(depth) - below(depth - apart) == pytest.approx(float(inches(lift).mm), abs=1e-4)


def test_the_way_with_the_least_unpicking_is_taken() -> None:
    """By hand: a hem only pinned is folded again and nothing is unpicked; once it is stitched, rows under the
    loops unpick nothing, and folding it again unpicks all 54 in."""
    _, pinned = adjusted("3/8 in low", stitched=False)
    assert pinned.taken is not None and pinned.taken.key == "hem" and pinned.taken.unpicked == NOTHING
    _, stitched = adjusted("3/8 in low")
    assert stitched.taken is not None and stitched.taken.key == "heading" and stitched.taken.unpicked == NOTHING
    assert len(stitched.taken.at_heading) == 9
    hem = next(each for each in stitched.remedies if each.key == "hem")
    assert hem.unpicked == inches(54)


def test_only_the_loops_that_are_off_are_touched() -> None:
    """By hand: 3/8 in low at the left edge, right in the middle; loop 9 stands 1 1/4 in from that edge, so the hem
    there is 3/8 x (27 - 1 1/4) / 27 low."""
    _, found = adjusted("left 3/8 in low, middle good, right good")
    assert found.taken is not None
    assert [move.label for move in found.taken.at_heading] == ["6", "7", "8", "9"]
    last = found.taken.at_heading[-1]
    assert last.wanted == inches(Fraction(3, 8) * Fraction(103, 108))
    assert abs(last.left.mm) < Fraction(1, 10**6)


def test_a_hem_that_hangs_high_lets_the_loops_down_as_far_as_their_turn_goes() -> None:
    """The upper turn is 5/8 in and 1/4 in of it stays, so that 3/8 in is there."""
    _, some = adjusted("5/16 in high")
    assert some.taken is not None and some.taken.key == "heading"
    assert all(-inches("3/8") <= move.distance < NOTHING for move in some.taken.at_heading)
    assert some.taken.unpicked == 9 * inches("9/8"), "nine seams as wide as a loop"
    _, much = adjusted("1 in high")
    heading = next(each for each in much.remedies if each.key == "heading")
    assert not heading.does_all and "at most" in heading.short
    assert much.taken is not None and much.taken.key == "hem"


def test_a_hem_that_cannot_come_down_so_far_falls_short_and_one_just_inside_does_not() -> None:
    """4 5/8 in of cloth below the finished edge, 1 in of hem and 1/4 in turned under stay: 3 3/8 in can be let out."""
    _, inside = adjusted("3 3/8 in high", stitched=False)
    assert inside.taken is not None and inside.taken.key == "hem"
    _, beyond = adjusted("3 7/16 in high", stitched=False)
    hem = next(each for each in beyond.remedies if each.key == "hem")
    assert not hem.does_all and "can give 3 3/8 in" in hem.short


def test_within_what_panels_are_made_to_it_may_stay() -> None:
    """UFGS-12491N: panels are made within 1/4 in."""
    plan, inside = adjusted("1/4 in low")
    assert inside.within and "it may stay as it is" in " ".join(tell_adjustment(plan, inside).split())
    _, beyond = adjusted("5/16 in low")
    assert not beyond.within
    plan, right = adjusted("left good, right good")
    assert right.remedies == () and right.taken is None
    assert "hangs as it should" in tell_adjustment(plan, right)


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("loop 10 1/4 in low", "numbered from 1 to 9"),
        ("60 in from the left 1/4 in low", "beyond the panel"),
        ("left 1/4 in low, left 1/2 in low", "twice"),
    ],
)
def test_a_place_that_the_panel_has_not_got_is_refused(text: str, why: str) -> None:
    with pytest.raises(Refusal, match=why):
        adjusted(text)


def test_text_and_record_tell_the_same() -> None:
    plan, found = adjusted("left 3/8 in low, middle good, right 1/8 in high")
    text, record = tell_adjustment(plan, found), adjustment_record(plan, found)
    assert all(len(line) <= 96 for line in text.splitlines())
    assert record["taken"] == "heading" and "loop 9: 3/8 in (a hair under) below" in text
    assert [each["where"] for each in record["hangs"]] == ["at the right edge", "in the middle", "at the left edge"]  # type: ignore[union-attr]


def readings() -> st.SearchStrategy[list[HangReading]]:
    off = st.fractions(-30, 40, max_denominator=16).map(Length)
    sides = st.lists(st.sampled_from(["left", "middle", "right"]), min_size=1, max_size=3, unique=True)
    return sides.flatmap(
        lambda names: st.tuples(*(off for _ in names)).map(
            lambda lows: [HangReading(low, side) for low, side in zip(lows, names, strict=True)]
        )
    )


@given(readings(), st.booleans())
def test_what_is_taken_puts_every_place_right_within_what_can_be_given(read: list[HangReading], stitched: bool) -> None:
    plan = planned()
    found = adjust(plan, read, stitched=stitched)
    loops = plan.heading
    assert isinstance(loops, LoopPlan)
    for remedy in found.remedies:
        for move in remedy.at_heading:
            tube = loops.tube_depth - move.distance
            assert passes(plan.spec.rod.diameter, tube) and move.distance >= -(loops.upper_turn - LEAST_TURN)
            assert loops.upper_seam + move.distance >= NOTHING
            assert abs(move.raised) <= abs(move.wanted) + Length(Fraction(1, 10**6))
        if remedy.does_all:
            assert remedy.left <= MADE_WITHIN
            after = hung_after(plan, found.hung, remedy.at_heading)
            hems = {move.at: move.raised for move in remedy.at_hem}
            assert all(abs(place.low - hems.get(place.at, NOTHING)) <= MADE_WITHIN for place in after.places)
    keys = [(bool(each.short), each.unpicked, each.sewn) for each in found.remedies]
    assert keys == sorted(keys)


@given(readings())
def test_the_mirror_image_is_put_right_by_the_mirror_image(read: list[HangReading]) -> None:
    plan = planned()
    other = {"left": "right", "right": "left", "middle": "middle"}
    mirrored = [HangReading(each.low, other[each.side or "middle"]) for each in read]  # type: ignore[arg-type]
    one, two = adjust(plan, read, stitched=True), adjust(plan, mirrored, stitched=True)
    for remedy, image in zip(one.remedies, two.remedies, strict=True):
        assert [(m.at, m.distance) for m in remedy.at_heading] == [
            (plan.width - m.at, m.distance) for m in reversed(image.at_heading)
        ]


def test_inch_and_metric_agree() -> None:
    _, inch = adjusted("left 3/8 in low, right 1/8 in high")
    _, metric = adjusted("left 9.525 mm low, right 3.175 mm high", changes={"units": "metric", "tape_step": None})
    assert inch.hung == metric.hung
    moves = {move.label: move.distance for way in metric.remedies for move in way.at_heading}
    assert all(moves[m.label] == m.distance for way in inch.remedies for m in way.at_heading)


def test_every_give_belongs_to_a_heading_and_gives_nothing_for_nothing() -> None:
    plan = planned()
    give = GIVES["back loops"]
    up, down = give.limits(plan)
    assert up > NOTHING and down > inches("3/8"), "the deeper tube takes up less, and hangs lower by that too"
    mark = plan.heading.marks[0]
    assert give.move(plan, mark, NOTHING).raised == NOTHING
    most = give.move(plan, mark, millimetres(1000))
    assert most.raised == up and most.distance == plan.figures["tube_depth"].value - least_tube(plan.spec.rod.diameter)


GIVEN = {
    "tabs": {"heading.gap": "2 in"},
    "rings": {"heading.drop": "1 1/2 in", "heading.set_below": "1 in"},
    "hooks": {"heading.drop": "1 1/2 in", "heading.set_below": "1/2 in"},
    "casing": {"heading.header": "1/2 in", "heading.depth": "2 1/2 in"},
    "back loops": {},
}


@pytest.mark.parametrize("style", list(GIVES))
def test_every_heading_gives_what_it_is_asked_within_its_limits(style: str) -> None:
    plan = planned({**(LOOPS_LEFT_OUT if style != "back loops" else {}), **GIVEN[style], "heading.style": style})
    give, mark = GIVES[style], HeadingMark("1", inches(2))
    up, down = give.limits(plan)
    assert up > NOTHING and down > NOTHING
    for wanted in (up / 2, -down / 2):
        move = give.move(plan, mark, wanted)
        assert abs(move.left.mm) < Fraction(1, 10**6) and (move.distance.mm > 0) == (wanted.mm > 0)
    for beyond, most in ((up + inches(1), up), (-down - inches(1), -down)):
        assert abs((give.move(plan, mark, beyond).raised - most).mm) < Fraction(1, 10**6)


def test_a_casing_is_raised_by_one_row_right_across() -> None:
    plan = planned({**LOOPS_LEFT_OUT, **GIVEN["casing"], "heading.style": "casing"})
    found = adjust(plan, read_hangs("left 3/8 in low, middle good", "inch"), stitched=True)
    assert found.taken is not None and found.taken.key == "heading" and found.taken.sewn == plan.width
