"""A short fingerprint of all that a kit is made from: "3f9c-21ab".

It is taken of the very bytes that the kit's PDF carries, the spec or the job as it was read and the options that were
given, and of the program's version. A changed comment changes it as well: our choice, because then the text that is
kept with the kit is another one, and nobody has to say which characters count.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from hashlib import sha256

from .errors import Fault, Refusal
from .version import __version__

SPEC_NAME, JOB_NAME, OPTIONS_NAME = "spec.toml", "job.toml", "make.json"
"""What a kit's PDF carries: the spec or the job it was made from, and what was asked for besides."""

DIGITS = 8
"""Hexadecimal digits of it: our choice, because eight are copied by hand without a slip, and one kit in four thousand
million is taken for another."""
ASKED_AS = "--fingerprint"
_BETWEEN = re.compile(r"[\s\-\u2010-\u2015\u2212_:]+")
"""What people write between its digits: blanks, hyphens and dashes of every kind."""


def fingerprint_of(carried: Mapping[str, str], version: str = __version__) -> str:
    """The fingerprint of what a kit's PDF carries, texts by file name; "" where it carries nothing.

    The first eight digits of the SHA-256 (FIPS 180-4) of the version and of each name and text, every one with its
    length in bytes before it, so that no two contents run together to one.
    """
    if not carried:
        return ""
    digest = sha256()
    for part in (version, *(part for entry in sorted(carried.items()) for part in entry)):
        content = part.encode()
        digest.update(b"%d:" % len(content) + content)
    return written(digest.hexdigest()[:DIGITS])


def written(digits: str) -> str:
    """Eight digits as they are written: "3f9c-21ab"."""
    return f"{digits[:4]}-{digits[4:]}"


def read_fingerprint(typed: str) -> str | None:
    """A fingerprint as it is written, however it was typed: "3F9C 21ab"; None where it is none."""
    digits = _BETWEEN.sub("", typed).lower()
    return written(digits) if re.fullmatch(rf"[0-9a-f]{{{DIGITS}}}", digits) else None


def faults_in_fingerprint(typed: str | None) -> list[Fault]:
    """What is wrong with the fingerprint that was asked for; nothing where none was."""
    if typed is None or read_fingerprint(typed):
        return []
    right = f"no fingerprint; write the {DIGITS} digits that stand on the kit, 0 to 9 and a to f, for example 3f9c-21ab"
    return [Fault(ASKED_AS, repr(typed), right)]


def refuse_another(asked: str | None, made: str) -> None:
    """Raises Refusal where the kit that is ``made`` has not the fingerprint that was ``asked`` for, if one was."""
    wanted = read_fingerprint(asked) if asked is not None else made
    if wanted == made:
        return
    right = (
        f"this kit would have the fingerprint {made}, so it is another one: the text of the spec, the options, or the "
        f"version of templategen, which is {__version__} here, is not what that kit was made from. Nothing was written"
    )
    raise Refusal(Fault(ASKED_AS, wanted or repr(asked), right))
