"""The table of paper sizes in libcups, the printing system's own library, which implements PWG 5101.1."""

from __future__ import annotations

import ctypes
from dataclasses import dataclass
from fractions import Fraction


class _Media(ctypes.Structure):
    """pwg_media_t of cups/pwg.h; width and length in hundredths of a millimetre, cut off."""

    _fields_ = (
        ("pwg", ctypes.c_char_p),
        ("legacy", ctypes.c_char_p),
        ("ppd", ctypes.c_char_p),
        ("width", ctypes.c_int),
        ("length", ctypes.c_int),
    )


@dataclass(frozen=True, slots=True)
class Media:
    """What libcups says of a paper."""

    pwg: str
    width: Fraction
    height: Fraction


_CUPS = ctypes.CDLL("libcups.so.2")
for _name in ("pwgMediaForPWG", "pwgMediaForPPD"):
    getattr(_CUPS, _name).argtypes = [ctypes.c_char_p]
    getattr(_CUPS, _name).restype = ctypes.POINTER(_Media)


def by_pwg(name: str) -> Media | None:
    """The size that libcups reads from a self-describing name; None where it cannot."""
    return _media(_CUPS.pwgMediaForPWG(name.encode()))


def by_ppd(name: str) -> Media | None:
    """The paper that Adobe's PPD specification, version 4.3, calls ``name``."""
    return _media(_CUPS.pwgMediaForPPD(name.encode()))


def _media(found: ctypes._Pointer[_Media]) -> Media | None:
    if not found:
        return None
    media = found.contents
    return Media(media.pwg.decode(), Fraction(media.width, 100), Fraction(media.length, 100))
