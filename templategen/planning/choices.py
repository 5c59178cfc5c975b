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

TUBE_EASE = inches("1/2")
"""The little in the rule of thumb "the rod's diameter plus a little": common practice, no source."""

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

# --- gathering tape --------------------------------------------------------------------------------

NARROW_TAPE = inches("3/2")
"""Up to this a tape is an ordinary gathering tape, above it one for pencil pleats: our choice, between the 1 in
(2.5 cm) and the 2 1/4 to 3 in (6 to 8 cm) that sewing guides give the two."""

NARROW_TAPE_TOP = inches(1)
"""Panel's top edge to a narrow tape: the least of the 1 to 2 in that sewing guides have for a frill above it."""

WIDE_TAPE_TOP = inches("1/4")
"""Panel's top edge to a wide tape: sewing guides have it just below the top, or 1/4 in below."""

FRILL: Mapping[str, Length] = {"light": inches("3/2"), "medium": inches("3/2"), "heavy": inches(2)}
"""Cloth stands so far above a casing or a tape: heading 1 1/2 in (limp) to 2 in (firm), A Manual of Home-Making.
Medium cloth goes with the limp: our choice, because it is the safer."""

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
