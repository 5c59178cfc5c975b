"""What a check finds, and how it counts pages in words."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any, Literal, TypeAlias

from ..lengths.counting import runs_of

Level: TypeAlias = Literal["wrong", "note"]

PRINT_ITSELF = "Print the kit's own file, kit.pdf as templategen made it, at actual size, 100 %."


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing that was done to the file."""

    code: str
    level: Level
    """"wrong": what is printed is not the kit true to size. "note": worth knowing; it still is."""
    what: str
    """In a few words, to follow "it will not print true:"."""
    said: str
    """In full."""
    do: str = ""
    """How to get it right."""
    pages: tuple[int, ...] = ()
    """Of the file, from 1; none where it is about the file as a whole."""

    @property
    def text(self) -> str:
        """What was done, and how to get it right."""
        return f"{self.said} {self.do}".rstrip()


@dataclass(frozen=True, slots=True)
class SheetRecord:
    """A sheet as it was found."""

    page: int
    """Of the file, from 1."""
    number: int | None
    """What the sheet says it is, of ``of``; None where that could not be read."""
    of: int | None
    across: float | None
    along: float | None
    """What its bars measure over what they say."""


@dataclass(frozen=True, slots=True)
class Verdict:
    """Whether the file will print true, and all that was found."""

    true: bool
    across: float | None
    along: float | None
    """Of the sheet that is farthest from true, on the page as it stands: what a bar measures over what it says."""
    within: float
    """How exactly that could be measured, as a part of a bar: 0 where lines were read, more where a picture was."""
    pages: int
    findings: tuple[Finding, ...]
    sheets: tuple[SheetRecord, ...]


def verdict_of(plain: dict[str, Any]) -> Verdict:
    """The verdict again from what ``dataclasses.asdict`` made of it, through JSON and back."""
    findings = tuple(Finding(**(each | {"pages": tuple(each["pages"])})) for each in plain["findings"])
    sheets = tuple(SheetRecord(**each) for each in plain["sheets"])
    return Verdict(**(plain | {"findings": findings, "sheets": sheets}))


def on_pages(numbers: Iterable[int], word: str = "page") -> str:
    """"page 3", "pages 1 to 4 and 7"."""
    runs = runs_of(sorted(set(numbers)))
    parts = [
        f"{run[0]} to {run[-1]}" if len(run) > 2 else " and ".join(map(str, run)) if len(runs) == 1 else
        ", ".join(map(str, run))
        for run in runs
    ]  # fmt: skip
    several = sum(map(len, runs)) > 1
    said = parts[0] if len(parts) == 1 else f"{', '.join(parts[:-1])} and {parts[-1]}"
    return f"{word}{'s' if several else ''} {said}"
