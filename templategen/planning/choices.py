"""Every number the planner did not get from the spec, beside where it comes from.

Lengths are exact and do not depend on the spec's unit, so the plan is the
same whatever unit was typed.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from ..lengths import Length, inches, millimetres

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

WEB_WIDTH = inches("3/4")
"""Width of bonding web, and half of the hem at the most: our choice, because it is sold about that wide."""

HEM_TAPE = inches("1/2")
"""Width of hem tape, of which half lies beyond the raw edge: common practice, no source; it is sold about that wide."""

FACING_SEAM = inches("1/2")
"""Seam that joins a facing to the bottom edge: our choice, because curtain seams are usually that wide."""

STRIP_END = inches("1/2")
"""A facing or a border is cut so much longer at each end, to be turned in: our choice, as wide as its seams are."""

# --- sides, weights, lining ------------------------------------------------------------------------

LEAST_SPLIT = millimetres(100)
"""The narrowest panel that may come of a split: our choice, the narrowest panel a spec may have."""

WEIGHTS_EVERY = inches(24)
"""Hem weights every 2 ft: Te Ao Hou no. 11, July 1955, pp. 58-59."""

POCKET_SEAM = inches("1/4")
"""Seam of a weight's pocket: our choice, because so small a bag bears no more."""

POCKET_EASE = inches("1/4")
"""A pocket is so much wider and deeper inside than its weight: our choice, because the weight is up to 1/4 in thick
and the cloth goes round it."""

LINING_ABOVE = inches(1)
"""A lining ends 1 in above the panel: what 5 in shorter comes to where the hem is 4 in turned twice and the lining's
2 in turned twice (8 - 4 - 5 = -1; derived; the hems: common practice, no source)."""

LINING_SHORTER = (inches(3), inches(5))
"""Lining cut 3 in shorter than the face cloth at the sill and 5 in at the floor: The Complete Photo Guide to Curtains
and Draperies, 2006."""

# --- fullness --------------------------------------------------------------------------------------

LEAST_FULLNESS = Fraction(3, 2)
"""Fullness 1.5 for flat headings: common practice, no source."""

MOST_FULLNESS = Fraction(4)
"""Above this the rod or the panels were probably misread: our choice, because UFGS-12491N stops at 3."""

# --- after hanging ---------------------------------------------------------------------------------

LEAST_TURN = inches("1/4")
"""Least cloth left turned under where a seam or a fold is moved: our choice, because less frays out."""
