"""Every number of headings and tops that the planner did not get from the spec, beside where it comes from.

Lengths are exact and do not depend on the spec's unit, so the plan is the
same whatever unit was typed. Other numbers stand in ``choices``.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from ..lengths import Length, inches, millimetres

# --- the rod in its tube ---------------------------------------------------------------------------

EASY_TUBE_IN_DIAMETERS = 2
"""A casing at least twice the rod's diameter: A Manual of Home-Making, Portieres (3/4 -> 1 1/2 in)."""

TUBE_EASE = inches("1/2")
"""The little in the rule of thumb "the rod's diameter plus a little": common practice, no source."""

# --- loops -----------------------------------------------------------------------------------------

FEWEST_LOOPS = 3
"""Fewest loops, tabs, rings or hooks chosen: our choice, because one at each end and one on the centre hold a top
edge straight."""

MOST_LOOPS = 1999
"""Most of them chosen for one panel: the last odd number within the 2,000 that a spec may ask for."""

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
"""A chosen width of a loop or tab, or a chosen inset, is at most this much of the panel's width: our choice,
because three then fit on any panel, with gaps as wide as themselves."""

LEAST_EDGE_GAP = inches("1/4")
"""Least cloth left beside an end loop: our choice, because a narrower edge curls and shows the loop."""

# --- pleats and gathers ----------------------------------------------------------------------------

PLEAT_SPACE = inches(4)
"""Between two pleats: spaces come to 4 in in the worked example of How to Make Draperies (booklet, undated)."""

MOST_PLEAT_SPACE = inches(6)
"""Between two pleats without a remark: our choice, because the top, held at the pleats alone, droops over half as much
again as the booklet's 4 in."""

MOST_PLEATS = 500
"""Most pleats advised for one panel: the most that a spec may ask for."""

LAST_PLEAT_BACK = inches(2)
"""From the leading edge back to the last pleat: How to Make Draperies (booklet, undated)."""

FINGERED_SIZES: Mapping[int, tuple[Length, Length]] = {
    2: (inches(2), inches(5)),
    3: (inches(3), inches(7)),
}
"""Cloth in one pinched pleat, by its fingers. 7 in: the worked example of How to Make Draperies. 3 in: our choice,
because fingers less than 1/2 in deep do not stand. Of two fingers: our choice, two thirds of that, so that the fingers
are as deep, and rounded up to whole inches."""

BOX_SIZES = (inches(3), inches(9))
"""Cloth in one box pleat. 3 in: our choice, because less makes no fold that stands. 9 in: our choice, because a box
wider than 4 1/2 in sags at its edges."""

PLEAT_FULLNESS = (Fraction(2), Fraction(5, 2))
"""2 to 2.5 for gathers and pleats: common practice, no source; UFGS-12491N counts 2, 2.5 and 3 times."""

BOX_FULLNESS = (Fraction(2), Fraction(3))
"""2 for pleats: common practice, no source; 3 for boxes as wide as their spaces: Stephenson 1905."""

BOX_AS_WIDE_AS_ITS_SPACE = Fraction(3)
"""A box pleat as wide as its space takes 3 ft of cloth to 1 ft: Stephenson, Cutting and Draping, 1905."""

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

# --- gathering tape --------------------------------------------------------------------------------

NARROW_TAPE = inches("3/2")
"""Up to this a tape is an ordinary gathering tape, above it one for pencil pleats: our choice, between the 1 in
(2.5 cm) and the 2 1/4 to 3 in (6 to 8 cm) that sewing guides give the two."""

NARROW_TAPE_TOP = inches(1)
"""Panel's top edge to a narrow tape: the least of the 1 to 2 in that sewing guides have for a frill above it."""

WIDE_TAPE_TOP = inches("1/4")
"""Panel's top edge to a wide tape: sewing guides have it just below the top, or 1/4 in below."""

TAPE_BEYOND = (inches(1), inches("19/8"))
"""Tape beyond the panel's width, in all: sewing guides say 1 in, 4 cm and 6 cm."""

HOOKS_EVERY = inches(3)
"""About one hook every 3 in (7.5 cm) of the gathered heading: a household manual's page on hems and headings."""

HOOKS_FARTHEST = inches(4)
"""The most between two hooks in a tape: common practice, no source."""

NARROW_TAPE_FULLNESS = (Fraction(3, 2), Fraction(2))
"""Cloth to gathered width, ordinary tape: one and a half to twice, sewing guides."""

WIDE_TAPE_FULLNESS = (Fraction(2), Fraction(5, 2))
"""The same for pencil pleats: sewing guides say twice for tape on sheers, two and a half times on the others."""

MOST_GATHERED = Fraction(3)
"""No tape gathers closer than to a third: sewing guides stop at three times, for box pleats."""

DIVISION = inches(24)
"""The most between two places where the gathers are brought to the rod: our choice, because an arm reaches so far."""

# --- the top -----------------------------------------------------------------------------------------

LEAST_HEADER = inches("1/2")
"""A lower header is a ridge and not a ruffle: common practice, no source."""

ROWS_APART = inches("1/8")
"""A new row of stitching this near an old one tears along its holes: our choice, because a long stitch is so long."""
