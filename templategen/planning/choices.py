"""Every number the planner did not get from the spec, beside where it comes from.

Lengths are exact and do not depend on the spec's unit, so the plan is the
same whatever unit was typed.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from ..lengths import Length, inches, millimetres

# --- the rod in its tube ---------------------------------------------------------------------------

EASY_TUBE_IN_DIAMETERS = 2
"""A casing at least twice the rod's diameter: A Manual of Home-Making, Portieres (3/4 -> 1 1/2 in)."""

# --- loops -----------------------------------------------------------------------------------------

FEWEST_LOOPS = 3
"""Fewest loops chosen: our choice, because one at each end and one on the centre hold a top edge straight."""

MOST_LOOPS = 1999
"""Most loops chosen for one panel: the last odd number within the 2,000 that a spec may ask for."""

PITCH_LIMITS: Mapping[str, Length] = {"light": inches(12), "medium": inches(10), "heavy": inches(8)}
"""How far apart loops may stand before the top edge sags. 10 in for ordinary cloth, more for lighter,
less for heavier: common practice, no source. 12 and 8 in: our choice, because each is a fifth away."""

LOOP_WIDTH = inches(1)
"""Finished width of a loop: our choice, because 1 in is wide enough to turn out and narrow enough to hide."""

LEAST_LOOP_WIDTH = inches("1/2")
"""Narrowest loop advised when cloth is short: our choice, because a narrower tube is hard to turn out."""

INSET_BEYOND_HALF = inches("5/8")
"""Panel edge to the edge of the end loop. A little finger's width: common practice, no source.
5/8 in: our choice, because it is about that."""

INSET_STEP = inches("1/8")
"""A chosen inset is rounded up to this: our choice, because every tape is marked with it."""

NARROW_SHARE = Fraction(1, 6)
"""A chosen loop width or inset is at most this much of the panel's width: our choice, because three loops
then fit on any panel, with gaps as wide as themselves."""

LEAST_EDGE_GAP = inches("1/4")
"""Least cloth left beside an end loop: our choice, because a narrower edge curls and shows the loop."""

# --- drop ------------------------------------------------------------------------------------------

MADE_WITHIN = inches("1/4")
"""Panels are made within 1/4 in: UFGS-12491N, US federal guide specification, drapery section."""

STANDS_OUT = 4
"""A floor mark is odd where it is this many times as far out of line as the worst of the others: our choice,
because with less it may be the floor that bends."""

MOST_MARKS_WEIGHED = 100
"""Each mark is weighed against all the others up to this many: our choice, because nobody marks more."""

FLOOR_SLOPE_LIMIT = Fraction(1, 100)
"""Floor marks may differ by this much of the panel's width: our choice, because a floor that is further
out of level is rarer than a rod that is, or a mark misread."""

CLEARANCE_RANGE = (inches("3/8"), inches(2))
"""Clear of the floor: the sources run from 3/8 in to 2 in (UFGS-12491N 1 in; Te Ao Hou no. 11, 1955,
1 to 2 in; A Manual of Home-Making 2 in). The number is the user's."""

SILL_RANGE = (inches("1/16"), inches("1/2"))
"""Clear of the sill: 1/16 to 1/4 in (Te Ao Hou no. 11, 1955); up to 1/2 in: common practice, no source."""

APRON_RANGE = (inches(-4), inches(-1))
"""Past the apron's lower edge: 1 in below it (UFGS-12491N); up to 4 in: common practice, no source."""

HEATER_CLEARANCE = inches(12)
"""Above a fixed baseboard heater: fire services ask for at least 12 in, 30 cm; the maker may ask for more."""

RADIATOR_RANGE = (inches("1/2"), HEATER_CLEARANCE)
"""Above a radiator that hot water heats: 1/2 to 4 in: common practice, no source. Above anything hotter 12 in."""

# --- cloth -----------------------------------------------------------------------------------------

MOST_SHRINKAGE = Fraction(3, 100)
"""Curtain cloth loses at most 3 % either way in five launderings: ASTM D3691/D3691M-09, Table 1."""

TUCK_ABOVE_HEM = inches("1/2")
"""A tuck's lower line runs this far above the hem's upper fold: our choice, because the two stitchings are then
kept apart and the fold hangs behind the hem."""

FULLNESSES = (Fraction(3, 2), Fraction(2), Fraction(5, 2), Fraction(3))
"""2, 2.5, 3 times are 200, 250, 300 % (UFGS-12491N); 1.5 for flat headings: common practice, no source."""

USUAL_FULLNESS: Mapping[str, tuple[Fraction, Fraction]] = {
    "flat": (Fraction(3, 2), Fraction(2)),
    "gathered": (Fraction(2), Fraction(5, 2)),
    "pleated": (Fraction(2), Fraction(3)),
}
"""By how the heading takes its cloth up. 1.5 flat, 2 to 2.5 gathered or pleated: common practice, no source;
3 pleated: a box pleat as wide as its space takes 3 ft of cloth to 1 ft (Stephenson 1905)."""

STACK_SHARE = Fraction(1, 3)
"""Open panels take about a third of what they cover: common practice, no source; what is said runs from a tenth
for one thin layer to a third."""

TIE_BACK = (inches(24), inches(7))
"""Cut length and cut width of a tie-back, which folds to about 3 in: common practice, no source."""

# --- hem -------------------------------------------------------------------------------------------

STITCH_BELOW_FOLD = inches("1/8")
"""The stitching runs this far below the hem's upper fold: our choice, because it catches the fold and
still runs on flat cloth."""

HEM_LIMITS: Mapping[str, tuple[Length, str]] = {
    "light": (millimetres(50), "ready-made floor-length panels have 2 to 4 in (common practice)"),
    "medium": (millimetres(50), "ready-made floor-length panels have 2 to 4 in (common practice)"),
    "heavy": (millimetres(75), "heavy floor-length curtains have 3 in (newspaper, 24 May 1935)"),
}
"""Shallowest hem without a remark, by cloth. 3 in, heavy: New Zealand newspaper, 24 May 1935 (Papers Past
EG19350524.2.6.2). 2 in: the least of the 2 to 4 in of ready-made panels, common practice, no source.
50 and 75 mm: our choice, because a hem marked in millimetres is rounded so, and no one means it shallower."""

FULL_LENGTH_HEM = inches(3)
"""A 3 in hem suits full length: A Manual of Home-Making."""

LEAST_HEM = inches(1)
"""The shallowest hem any source gives, for short curtains: newspaper, 24 May 1935. Below it, face the hem."""

FACING_SEAM = inches("1/2")
"""Seam that joins a facing to the bottom edge: our choice, because curtain seams are usually that wide."""

# --- fullness --------------------------------------------------------------------------------------

LEAST_FULLNESS = Fraction(3, 2)
"""Fullness 1.5 for flat headings: common practice, no source."""

MOST_FULLNESS = Fraction(4)
"""Above this the rod or the panels were probably misread: our choice, because UFGS-12491N stops at 3."""
