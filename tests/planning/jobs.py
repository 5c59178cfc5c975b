"""Generated jobs: anything the spec's reader accepts, from the ordinary to the absurd."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import strategies as st

from templategen.lengths import Length, inches, millimetres
from templategen.spec.headings import BackLoops
from templategen.spec.hems import DoubleFold
from templategen.spec.model import Drop, Panel, Rod, Spec


def between(least: str, most: str) -> st.SearchStrategy[Length]:
    """Lengths in sixteenths of an inch, whole or tenths of millimetres, and the two ends."""
    low, high = Fraction(least), Fraction(most)
    sixteenth = Fraction(254, 160)
    in_sixteenths = st.integers(-(-low // sixteenth), high // sixteenth).map(
        lambda n: inches(Fraction(n, 16))
    )
    in_tenths = st.integers(-(-low * 10 // 1), high * 10 // 1).map(lambda n: millimetres(Fraction(n, 10)))
    ends = st.sampled_from([Length(low), Length(high)])
    return st.one_of(in_sixteenths, in_tenths, ends)


def ordinary_or(usual: tuple[str, str], legal: tuple[str, str]) -> st.SearchStrategy[Length]:
    return st.one_of(between(*usual), between(*usual), between(*legal))


@st.composite
def headings(draw: st.DrawFn, panel: Panel) -> BackLoops:
    lower = draw(ordinary_or(("5", "15"), ("0.1", "1000")))
    upper = draw(ordinary_or(("5", "20"), ("0.1", "1000")))
    long = draw(st.none() | ordinary_or(("60", "120"), ("0.1", "1000")))
    whole = panel.casing if long is None else long
    if lower + upper >= whole:  # the reader refuses allowances that take the whole loop
        lower = upper = whole / 3
    inset = draw(st.none() | ordinary_or(("15", "50"), ("0.1", "60000")))
    if inset is not None and 2 * inset >= panel.width:
        inset = panel.width / 3
    return BackLoops(
        style="back loops",
        count=draw(st.none() | st.integers(2, 15) | st.just(2000)),
        edge_inset=inset,
        loop_length=long,
        loop_width=draw(st.none() | ordinary_or(("15", "40"), ("0.1", "1000"))),
        lower_allowance=lower,
        upper_turn=upper,
        max_pitch=draw(st.none() | ordinary_or(("100", "350"), ("0.1", "60000"))),
        seam_allowance=draw(ordinary_or(("5", "10"), ("0.1", "100"))),
    )


@st.composite
def drops(draw: st.DrawFn, long: Length | None) -> Drop:
    mark = ordinary_or(("50", "500"), ("-5000", "60000"))
    marks = tuple(draw(st.lists(mark, max_size=7)))
    rod_to_floor = draw(st.none() | ordinary_or(("1500", "2500"), ("0.1", "60000")))
    if not marks and (rod_to_floor is None or long is None):  # the reader refuses: where is the floor?
        marks = (draw(mark),)
    return Drop(
        floor_marks=marks,
        hung_by=draw(st.sampled_from(["casing", "new heading"])),
        rod_to_floor=rod_to_floor,
        clearance=draw(ordinary_or(("0", "60"), ("-2000", "10000"))),
    )


@st.composite
def specs(draw: st.DrawFn) -> Spec:
    """Any job that the spec's reader accepts."""
    hem = draw(ordinary_or(("20", "100"), ("0", "1000")))
    new_hem = draw(ordinary_or(("40", "120"), ("0.1", "1000")))
    old_turn = draw(ordinary_or(("0", "20"), ("0", "1000")))
    panel = Panel(
        count=draw(st.integers(1, 8) | st.just(500)),
        width=draw(ordinary_or(("900", "1500"), ("100", "60000"))),
        length=draw(st.none() | ordinary_or(("1500", "2800"), ("0.1", "60000"))),
        casing=draw(ordinary_or(("30", "100"), ("0.1", "1000"))),
        header=draw(ordinary_or(("0", "50"), ("0", "1000"))),
        hem=hem,
        turn_under=min(old_turn, hem) if hem else old_turn,
    )
    return Spec(
        title="Reading room",
        units=draw(st.sampled_from(["inch", "metric"])),
        cloth=draw(st.sampled_from(["light", "medium", "heavy"])),
        rod=Rod(
            length=draw(ordinary_or(("900", "3000"), ("0.1", "60000"))),
            diameter=draw(ordinary_or(("10", "40"), ("1", "150"))),
            overlap=draw(st.just(Length(Fraction(0))) | between("0", "1000")),
            returns=draw(st.just(Length(Fraction(0))) | between("0", "1000")),
        ),
        panel=panel,
        drop=draw(drops(panel.length)),
        hem=DoubleFold(depth=new_hem, turn_under=min(new_hem, draw(ordinary_or(("5", "30"), ("0.1", "1000"))))),
        heading=draw(headings(panel)),
    )
