"""What the sewist says, once it has been read: exact, complete, frozen.

Each field carries its meaning and how to measure it; the reader, the
commented starting spec and the form are all made from what stands here. The
limits are generous, our choice: they catch a slip of the pen or of the unit,
not an unusual window. What is worth only a warning is the planner's to say.
"""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated, Literal

from pydantic import PrivateAttr

from ..bars import Bar, Reading, Readings
from ..lengths import NOTHING, Length, Tape, millimetres
from ..papers import LEAST, LONGEST, Orientation
from .about import MORE_THAN_NOTHING, NOTHING_OR_MORE, About, Limit
from .fabric import Fabric
from .finishing import Lining, Sides, Weights
from .headings import Casing, Heading
from .hems import Hem
from .quantities import Mass, Times
from .table import MOST_1_M, MOST_60_M, MOST_100_MM, Measured, Table


class Rod(Table):
    """The rod or pole that the panels hang from."""

    length: Annotated[Length, About(
        "the length from bracket to bracket", "60 in", "1500 mm",
        "Use a steel or wooden rule: a cloth tape stretches.",
        least=MORE_THAN_NOTHING, most=MOST_60_M)]
    diameter: Annotated[Length, About(
        "the thickness of the rod", "3/4 in", "20 mm",
        "Lay a rule across its end, or divide the distance once round it by 3.14.",
        least=Limit(millimetres(1), "1 mm (about 1/25 in)"),
        most=Limit(millimetres(150), "150 mm (about 6 in)"))]
    overlap: Annotated[Length, About(
        "how far two panels overlap where they meet", "0 in", "0 mm",
        left_out="no overlap", asked=False,
        least=NOTHING_OR_MORE, most=MOST_1_M)] = NOTHING
    returns: Annotated[Length, About(
        "from the front of the rod back to the wall, at one end", "0 in", "0 mm",
        "Fill it in only where the cloth goes round the end of the rod to the wall.",
        left_out="no return", asked=False,
        least=NOTHING_OR_MORE, most=MOST_1_M)] = NOTHING
    projection: Annotated[Length | None, About(
        "from the wall, or what stands out most from it, to the centre of the rod", "4 in", "100 mm",
        "Measure at both ends and in the middle: a window's frame or sill may stand out from the wall.",
        left_out="whether folds press on the wall is not looked at", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
    fullness: Annotated[Times | None, About(
        "how many times as wide as rod, overlap and returns the panels are to be", "2 times", "2 times",
        "Write times, not per cent: 100 % means different things to different people.",
        left_out="how full they are is said, and nothing is asked of it", asked=False,
        least=Limit(Times(1), "1 time"), most=Limit(Times(10), "10 times"))] = None
    glass: Annotated[Length | None, About(
        "the width of the window's glass, to see whether the open panels clear it", "40 in", "1000 mm",
        "The plan takes it that the glass lies in the middle of the rod.",
        left_out="the stack of the open panels is not worked out", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_60_M)] = None
    opens: Annotated[Literal["both ways", "one way"] | None, About(
        "whether the panels are drawn open to both ends of the rod or to one", "both ways", "both ways",
        left_out="to both ends; a single panel to one", asked=False)] = None
    brackets: Annotated[int, About(
        "how many brackets hold the rod, evenly spaced from end to end", 2, 2,
        left_out="two, one at each end", asked=False,
        least=Limit(2, "2"), most=Limit(50, "50"))] = 2
    bracket_rating: Annotated[Mass | None, About(
        "the load that the maker allows for one bracket, in kg or lb", "11 lb", "5 kg",
        "The fixing in the wall may bear less: the smaller counts.",
        left_out="the load is said, and not held against anything", asked=False,
        least=Limit(Mass(Fraction(1, 10)), "100 g (about 3.5 oz)"),
        most=Limit(Mass(1000), "1000 kg (about 2200 lb)"))] = None


class Panel(Table):
    """The panel as it is now, before any cutting, and how many are alike."""

    count: Annotated[int, About(
        "how many panels are to be made alike", 4, 4,
        left_out="one panel",
        least=Limit(1, "1"), most=Limit(500, "500"))] = 1
    width: Annotated[Length, About(
        "the finished width, side hem to side hem", "54 in", "1370 mm",
        "Measure at the top, the middle and the bottom, flat, not pulled. If they differ, write the top one.",
        least=MOST_100_MM, most=MOST_60_M)]
    length: Annotated[Length | None, About(
        "the length from top edge to bottom edge, measured flat", "96 in", "2440 mm",
        "Measure at both sides and in the middle: the label is often an inch or two out.",
        left_out="the finished length is not worked out, and the floor marks cannot be held against the rod",
        least=MORE_THAN_NOTHING, most=MOST_60_M)] = None
    lots: Annotated[tuple[Length, ...], About(
        "what the panels of each other lot measure from top edge to bottom edge, where some were bought at another "
        "time and differ", ("95 1/2 in",), ("2425 mm",),
        "panel.length is then that of the panel on which the floor was marked.",
        left_out="all panels are of one length", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_60_M)] = ()
    casing: Annotated[Length, About(
        "from the top of the casing down to its stitch line", "3 in", "75 mm",
        "The casing is the tube that the rod goes through. Do not count cloth that stands above it. Where the "
        "panel came with another heading, write how deep the cloth is doubled along its top.",
        left_out="the cloth is single along the top, as it can be only where the panel came with another heading",
        least=NOTHING_OR_MORE, most=MOST_1_M)] = NOTHING
    header: Annotated[Length, About(
        "the cloth standing above the casing", "0 in", "0 mm",
        "From the casing's upper stitch line to the panel's top edge; 0 where the casing is the top.",
        left_out="no header",
        least=NOTHING_OR_MORE, most=MOST_1_M)] = NOTHING
    hem: Annotated[Length, About(
        "the depth of the hem it came with", "2 in", "50 mm",
        "From the bottom edge up to the stitching; 0 where the edge is raw.",
        least=NOTHING_OR_MORE, most=MOST_1_M)]
    turn_under: Annotated[Length, About(
        "the cloth turned under inside that hem", "3/8 in", "10 mm",
        "Feel for the raw edge inside the hem, or unpick an inch; 0 where nothing is turned under.",
        least=NOTHING_OR_MORE, most=MOST_1_M)]
    leading_edge: Annotated[Literal["pair", "left", "right"], About(
        "which side edge leads, the one that meets the other panel: \"left\" or \"right\" as seen from the front, or "
        "\"pair\" where half the panels hang on either side", "pair", "pair",
        "The other edge is the return edge, at the end of the rod. It matters where the two are not made alike.",
        left_out="pair", asked=False)] = "pair"
    top_turn: Annotated[Length, About(
        "the cloth turned under inside the casing, along its stitch line", "3/8 in", "10 mm",
        "Used only where the casing has to be let down and the top folded anew.",
        left_out="nothing turned under", asked=False, least=NOTHING_OR_MORE, most=MOST_1_M)] = NOTHING
    heading: Annotated[Heading, Measured(), About(
        "the heading that the panel came with", "casing", "casing",
        "Fill it in where the panel came with another heading than a casing, or hangs by one.",
        left_out="a casing", asked=False)] = Casing(style="casing")


class Drop(Table):
    """Where the floor is: marks on the hanging cloth, or rod to floor, or both, to check each other."""

    to: Annotated[Literal["floor", "sill", "apron", "radiator"], About(
        "what the panels hang to: \"floor\", \"sill\", \"apron\" (its lower edge) or \"radiator\" (its top)",
        "floor", "floor",
        "Wherever floor is said here, it is then that: floor_marks, rod_to_floor, clearance.",
        left_out="the floor", asked=False)] = "floor"
    follows: Annotated[Literal["marks", "highest"], About(
        "what the hem follows where the marks differ: \"marks\", each of them, or \"highest\", a level hem that "
        "clears the highest one, as on stairs", "marks", "marks",
        left_out="the marks", asked=False)] = "marks"
    floor_marks: Annotated[tuple[Length, ...], About(
        "from the bottom edge up to where the cloth meets the floor, left to right as seen from the front",
        ("13 5/8 in",), ("345 mm",),
        "Hang the panel and let it settle. Put a pin where the cloth meets the floor; take it down, lay it "
        "flat and measure from the bottom edge up to the pin with a steel or wooden rule. One mark will do "
        "on a level floor; otherwise mark several, evenly spaced from edge to edge, and write them from left "
        "to right as you stand before the hanging panel. A panel that ends above the floor has a negative mark.",
        left_out="worked out from rod_to_floor and the panel's length",
        least=Limit(millimetres(-5000), "−5 m (about −16 ft)"), most=MOST_60_M)] = ()
    hung_by: Annotated[Literal["casing", "old heading", "new heading"], About(
        "what it hung by when the floor was marked", "casing", "casing",
        "The heading changes how low the hem hangs, so this matters: \"casing\" if the rod was through the "
        "casing, \"old heading\" if it hung by another heading that it came with, \"new heading\" if the new "
        "loops, tabs, eyelets or hooks already hung on the rod.",
        left_out="what the panel came with")] = "casing"
    rod_to_floor: Annotated[Length | None, About(
        "from the top of the rod down to the floor", "82 in", "2087 mm",
        "Measure with a steel rule or a rigid tape, plumb, at both ends of the rod and in the middle; write "
        "the least.",
        left_out="the floor marks alone say where the floor is",
        least=MORE_THAN_NOTHING, most=MOST_60_M)] = None
    clearance: Annotated[Length, About(
        "how far above the floor the finished hem hangs", "3/4 in", "20 mm",
        "0 just touches; a negative length breaks on the floor. Handbooks say 3/8 to 2 in (10 to 50 mm). "
        "Above a sill 1/16 to 1/2 in (2 to 12 mm); past an apron's lower edge −1 in (−25 mm), negative, as it "
        "hangs below it; above a heater 12 in (30 cm) at least.",
        least=Limit(millimetres(-2000), "−2 m (about −79 in)"),
        most=Limit(millimetres(10_000), "10 m (about 33 ft)"))]


def _margin(side: str, usual: int) -> About:
    return About(
        f"the margin left blank at the {side} of the sheet", f"{usual} mm", f"{usual} mm",
        left_out=f"{usual} mm", asked=False, least=NOTHING_OR_MORE, most=MOST_100_MM)


class Margins(Table):
    """The part of each sheet that the printer cannot reach."""

    left: Annotated[Length, _margin("left", 10)] = millimetres(10)
    right: Annotated[Length, _margin("right", 10)] = millimetres(10)
    top: Annotated[Length, _margin("top", 10)] = millimetres(10)
    bottom: Annotated[Length, _margin("bottom", 18)] = millimetres(18)


_LEAST_PAPER = Limit(Length(LEAST), "90 mm (about 3 1/2 in)")
_MOST_PAPER = Limit(Length(LONGEST), "5080 mm (200 in)")


class Paper(Table):
    """What the templates are printed on: a paper by its name, by its size, or a roll; and what is put on it."""

    name: Annotated[str | None, About(
        "the name of the paper: letter, a4, legal, tabloid, a3 and others", "letter", "a4",
        "The command \"templategen papers\" lists them. One file in letter-or-a4 prints whole on either.",
        left_out="letter where units are inch, a4 where they are metric")] = None
    width: Annotated[Length | None, About(
        "the width of a sheet that has no name", "12 in", "300 mm", "Write height as well, and no name.",
        left_out="the named paper's", asked=False, least=_LEAST_PAPER, most=_MOST_PAPER)] = None
    height: Annotated[Length | None, About(
        "the height of a sheet that has no name", "18 in", "450 mm", "Write width as well, and no name.",
        left_out="the named paper's", asked=False, least=_LEAST_PAPER, most=_MOST_PAPER)] = None
    roll: Annotated[Length | None, About(
        "the width of the roll, to print on a roll", "24 in", "610 mm", "Write no name, width or height with it.",
        left_out="sheets, not a roll", asked=False, least=_LEAST_PAPER, most=_MOST_PAPER)] = None
    orientation: Annotated[Orientation | None, About(
        "which way the sheets are printed: \"portrait\", \"landscape\", or \"least\" for the one that takes fewer",
        "portrait", "portrait",
        "Where sheets are turned, measure the printer's bars again: across is across the sheet as it is read.",
        left_out="portrait; a sheet of your own size as it is written", asked=False)] = None
    half_strip: Annotated[bool, About(
        "a spacing strip of half the length, turned end for end for the panel's other half", True, True,
        "It takes half the paper and has half the joins; the centre of the panel has to be marked first.",
        left_out="the strip is as long as the panel is wide", asked=False)] = False
    strips: Annotated[int, About(
        "how many spacing strips are printed, so that as many panels can be marked at once", 2, 2,
        left_out="one strip", asked=False,
        least=Limit(1, "1"), most=Limit(20, "20"))] = 1
    large_print: Annotated[bool, About(
        "large print for eyes that need it: type of 18 points at the least, and lines twice as heavy", True, True,
        "Every mark stays exactly where it is; a kit may take a few sheets more.",
        left_out="usual print", asked=False)] = False
    margins: Margins = Margins()


class Printer(Table):
    """What the check bars of a printed page measured, if that is not what they say: up to three in a hundred."""

    across: Annotated[Length, About(
        "what the bar across the sheet measures, nominally 100 mm", "100 mm", "100 mm",
        "Print one page of a kit that is not corrected, and measure its bars with a steel rule to half a millimetre.",
        left_out="100 mm", asked=False, least=MORE_THAN_NOTHING, most=MOST_60_M)] = millimetres(100)
    along: Annotated[Length, About(
        "what the bar along the sheet measures, nominally 100 mm", "100 mm", "100 mm",
        left_out="100 mm", asked=False, least=MORE_THAN_NOTHING, most=MOST_60_M)] = millimetres(100)
    bar: Annotated[Bar | None, About(
        "which of the two bars was measured, \"100 mm\" or \"4 in\", the same across and along", "100 mm", "100 mm",
        left_out="the bars of 100 mm", asked=False)] = None

    @property
    def readings(self) -> Readings:
        """What was read off the bars, and which they were."""
        return Readings(Reading(self.across, self.bar), Reading(self.along, self.bar))


class Spec(Table):
    """One job: the panels at one window."""

    title: Annotated[str, About(
        "what the job is called, on every sheet", "Reading room, east window", "Reading room, east window")]
    units: Annotated[Literal["inch", "metric"], About(
        "how numbers are shown: \"inch\" (tape fractions) or \"metric\"", "inch", "metric",
        "A number written without a unit is in inches or in millimetres accordingly.")]
    cloth: Annotated[Literal["light", "medium", "heavy"], About(
        "the weight of the cloth: \"light\", \"medium\" or \"heavy\"", "medium", "medium",
        left_out="medium")] = "medium"
    tape_step: Annotated[Length | None, About(
        "the finest division of your tape that you want to read", "1/16 in", "1 mm",
        "1/4, 1/8, 1/16 or 1/32 in; or 5, 1 or 1/2 mm.",
        left_out="1/16 in, or 1 mm", asked=False)] = None
    rod: Rod
    panel: Panel
    drop: Drop
    hem: Annotated[Hem, About(
        "the kind of hem", "double fold", "double fold", left_out="double fold", asked=False)]
    sides: Sides = Sides()
    weights: Weights = Weights()
    lining: Lining = Lining()
    heading: Annotated[Heading, About("the kind of heading", "back loops", "back loops")]
    fabric: Fabric = Fabric()
    paper: Paper = Paper()
    printer: Printer = Printer()

    _source: str = PrivateAttr(default="")

    @property
    def source(self) -> str:
        """The text this spec was read from, kept so that a kit can carry it."""
        return self._source

    @property
    def tape(self) -> Tape:
        """The tape measure that numbers are shown on."""
        return Tape.of(self.units, self.tape_step)

    def __eq__(self, other: object) -> bool:
        """Whether both say the same job, however each was typed."""
        return isinstance(other, Spec) and self.__dict__ == other.__dict__
