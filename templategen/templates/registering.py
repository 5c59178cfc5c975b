"""Where registration marks stand on a template: near its edges, and not in the mirror image of themselves."""

from __future__ import annotations

from fractions import Fraction

AT_EDGE = Fraction(5)
"""From one edge to a registration mark, in mm: its own arms reach 3 1/2 mm, and an outline is to stay clear of them."""
NOT_MIRRORED = Fraction(12, 5)
"""The other stands so much farther from its edge, in mm, that the marks of a piece laid upside down meet no others."""
AT_OTHER_EDGE = AT_EDGE + NOT_MIRRORED
