"""The paper that a name means: one of the catalogue, a roll of any width, or a self-describing name."""

from __future__ import annotations

import re
from difflib import get_close_matches

from ..errors import LengthError, PaperError
from ..lengths import read_length
from .catalogue import ALSO_CALLED, CATALOGUE, FAMILIES
from .paper import Paper, check_limits, roll_of

# Patterns are compiled where they are first needed: most names are found without any.
_ROLL = r"(?is:roll(?![a-z])(?:\s+|-)?(?P<width>.*))"
_SERIES_FIRST = r"(iso|jis)-?([0-9]*[ab][0-9])"
_LONGEST_NAME = 120
"""Our choice: more than any name that a printer gives; what is longer is not looked through for near ones."""


def paper_named(name: str) -> Paper | None:
    """The paper of that name, capitals and blanks aside; None where no paper is known by it.

    It is a name of the catalogue, "letter"; a roll and its width, "roll 24 in"
    or "roll-610mm"; or a self-describing name after PWG 5101.1, known or custom.
    """
    try:
        return _read(name)
    except PaperError:
        return None


def unknown_paper(name: str) -> str:
    """What is wrong with a name that no paper has, and what would be right."""
    try:
        _read(name)
    except PaperError as error:
        return str(error)
    raise ValueError(f"{name!r} is known")


def _read(name: str) -> Paper:
    if len(name) > _LONGEST_NAME:
        raise PaperError(f"{len(name)} characters, and no name of a paper has over {_LONGEST_NAME}; {_right()}")
    plain = "-".join(name.lower().split())
    if found := CATALOGUE.get(ALSO_CALLED.get(plain, plain)):
        return found
    if "_" in plain:
        from .described import described_paper

        return described_paper(plain)
    if series := re.fullmatch(_SERIES_FIRST, plain):  # jis-b4, iso-a3
        only, both = CATALOGUE.get(series[2]), CATALOGUE.get(f"{series[2]}-{series[1]}")
        if found := both or (only if series[1] == "iso" else None):
            return found
    if roll := re.fullmatch(_ROLL, name.strip()):
        return _roll(roll["width"])
    if twins := [CATALOGUE[twin] for twin in (f"{plain}-iso", f"{plain}-jis") if twin in CATALOGUE]:
        right = " or ".join(f"{twin.name} ({twin.size})" for twin in twins)
        raise PaperError(f"two papers go by that name; write {right}")
    near = get_close_matches(plain, [*CATALOGUE, *ALSO_CALLED], 1)
    hint = f"did you mean {near[0]}? " if near else ""
    raise PaperError(f"no paper is known by that name; {hint}{_right()}")


def _roll(width: str) -> Paper:
    if not width:
        raise PaperError("a roll is known by its width; write roll 24 in or roll 610 mm, say")
    try:
        length = read_length(width)
    except LengthError as error:
        raise PaperError(f"not the width of a roll: {error}") from None
    check_limits(length.mm)
    return roll_of(length.mm)


def _right() -> str:
    families = ", ".join(family.said for family in FAMILIES if family.said)
    return (
        f"write one of {families}, or a PWG 5101.1 name, custom_own_300x450mm; “templategen papers” lists them"
    )
