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

# --- pleats and gathers ----------------------------------------------------------------------------

PLEAT_SPACE = inches(4)
"""Between two pleats: spaces come to 4 in in the worked example of How to Make Draperies (booklet, undated)."""

PLEAT_SIZES: Mapping[str, tuple[Length, Length]] = {
    "pinch pleats": (inches(3), inches(7)),
    "box pleats": (inches(3), inches(9)),
    "inverted box pleats": (inches(3), inches(9)),
}
"""Cloth in one pleat. 7 in: the worked example of How to Make Draperies. 3 in: our choice, because less makes no fold
that stands. 9 in: our choice, because a box wider than 4 1/2 in sags at its edges."""

PLEAT_FULLNESS = (Fraction(2), Fraction(5, 2))
"""2 to 2.5 for gathers and pleats: common practice, no source; UFGS-12491N counts 2, 2.5 and 3 times."""

BOX_AS_WIDE_AS_ITS_SPACE = Fraction(3)
"""A box pleat as wide as its space takes 3 ft of cloth to 1 ft: Stephenson, Cutting and Draping, 1905."""

TAPE_MARKS = 5
"""Marks along a gathered top, so that the gathers are spread alike quarter by quarter: our choice."""

HOOKS_IN_TAPE = inches(4)
"""Between two hooks in the pockets of a tape: our choice, because a gathered top droops between hooks further apart."""
# --- eyelets ---------------------------------------------------------------------------------------

EYELET_PLAY = (Fraction(3, 22), Fraction(2, 5))
"""How much wider inside than the rod an eyelet's ring is. 30 to 40 %: Singer, Sewing Custom Curtains, Shades, and Top
Treatments (read in an extract). 14 %: a home sewing magazine's guide to drapes, a 1 9/16 in ring for a rod of at most
1 3/8 in, which is 3/22 more. The number is the user's."""

EYELET_RIM = inches("1/2")
"""Width of a ring's rim where its outer diameter is not given: common practice, no source."""

CUT_BEYOND_RING = inches("1/8")
"""How much wider than the ring's opening the hole in the cloth is where that is not given: our choice, because the
ring's collar goes through it and is about 1/16 in thick; its maker knows better."""

CLOTH_ROUND_EYELET = millimetres(25)
"""Cloth above and below the opening of a ring, at least 1 in (2.5 cm): Singer, Sewing Custom Curtains, as above.
25 mm: our choice, because a measure taken in millimetres is rounded so, and the book has both."""

CLOTH_ROUND_RIM = millimetres(12)
"""Cloth above and below a ring's rim where both are chosen: our choice, because it keeps a wide rim off the fold."""

EYELET_INSET_BEYOND = inches("3/4")
"""Panel edge to the rim of the end ring where chosen: our choice, because side hems leave about that much flat
beside them, and the edge that turns to the wall stays short."""

EYELET_PITCHES = (inches(6), inches(8))
"""Eyelets in even number, 6 to 8 in apart: the magazine's guide, as above; an even number turns both edges to the
wall (Singer, as above)."""

LEAST_RIM_GAP = inches("1/4")
"""Least cloth between a ring's rim and the panel's side edge: our choice, because the tool that closes the ring
needs a flat place to stand on."""

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

# --- tabs, rings, clips and hooks ------------------------------------------------------------------

TAB_GAP = inches(2)
"""From the rod's underside down to the panel: of two guides to tab curtains one says 1 1/2 to 2 in, the other at
least 2 in; 2 in serves both."""

TAB_GAP_RANGE = (inches("3/2"), inches(4))
"""The gaps that guides to tab curtains name: 1 1/2 to 2 in, at least 2 in, 3 or 4 in. The number is the user's."""

LEAST_TAB_GAP = inches("1/4")
"""Below this a tab hugs the rod: our choice, because the thickness of a tab's seams alone takes about so much."""

TAB_WIDTH = inches(2)
"""Finished width of a tab: a guide to tab curtains; others have 1 to 3 in."""

TAB_PITCH_LIMITS: Mapping[str, Length] = {"light": inches(10), "medium": inches(8), "heavy": inches(6)}
"""Tabs 6 to 8 in apart: a guide to tab curtains; another has 10 in for a loose edge. Which cloth bears which: our
choice, because heavier cloth sags more."""

RING_PITCH_LIMITS: Mapping[str, Length] = {"light": inches(10), "medium": inches(8), "heavy": inches(6)}
"""A ring every 4 to 8 in, closer for heavy cloth; on flat panels 6, 8 or 10 in apart: two household guides. Which
cloth bears which: our choice, because heavier cloth sags more."""

CORNER_SHARE = Fraction(1, 4)
"""The edge beyond the last tab, ring or hook is held at one end only, and may be this much of what is borne between
two: our choice, because what is held at one end droops far more than what is held at both."""

POINT_INSET = inches("1/2")
"""Panel edge to the first ring, clip or hook: our choice, because it is in the side hem, whose cloth is thick."""

RING_EASE_RANGE = (millimetres(5), inches("1/2"))
"""How much wider inside than the rod a ring is: household guides say 5 to 7 mm, and at least 1/2 in."""

HOOK_BELOW_RINGS = inches("3/8")
"""A hook's top below the panel's top edge, on rings: 1/4 to 1/2 in, 3/8 in the average, so that the edge just touches
the ring: a fitter's guide to poles with rings."""

STANDS_UP: Mapping[str, Length] = {"light": inches("3/2"), "medium": inches("3/2"), "heavy": inches(2)}
"""Cloth stands this far above what holds it: heading 1 1/2 in (limp) to 2 in (firm), A Manual of Home-Making.
Medium cloth goes with the limp: our choice, because it is the safer."""

LEAST_DOUBLED = inches(1)
"""Cloth doubled along the top where tabs, rings, clips or hooks pull at it: our choice, because rings are sewn 1 in
below the top edge (Te Ao Hou no. 11, July 1955), through doubled cloth."""

DOUBLED_BEYOND = inches("1/2")
"""Doubled cloth below what is sewn or set on it: our choice, because the stitching then has both layers all round."""

FOLD_OFF_WALL = inches("1/2")
"""Kept free of the wall behind the folds between two hooks: a household guide to traverse rods."""
