"""Joins: what is printed where two pieces meet, made so that only the right partner fits.

Match line, registration marks, the sign, letter and distance, and this piece's
part of the check lengths.
"""

from .printed import ARM, LARGE_BASES, RING, distance_of, furniture, registration_mark, room_beside, room_beside_letter
from .signs import PITCH, POINT, TOOTH, Link, links_of, sign, tooth_places

__all__ = [
    "ARM",
    "LARGE_BASES",
    "PITCH",
    "POINT",
    "RING",
    "TOOTH",
    "Link",
    "distance_of",
    "furniture",
    "links_of",
    "registration_mark",
    "room_beside",
    "room_beside_letter",
    "sign",
    "tooth_places",
]
