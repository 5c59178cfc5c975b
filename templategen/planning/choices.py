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
