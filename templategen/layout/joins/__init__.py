"""Joins: what is printed where two pieces meet, made so that only the right partner fits.

Match line, registration marks, the sign, letter and distance, and this piece's
part of the check lengths.
"""

from .printed import ARM, RING, distance_of, furniture, registration_mark, room_beside
from .signs import PITCH, POINT, TOOTH, Link, links_of, sign, tooth_places

__all__ = [
    "ARM",
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
    "sign",
    "tooth_places",
]
