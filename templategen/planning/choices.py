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
