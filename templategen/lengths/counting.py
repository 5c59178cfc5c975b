"""Numbers of things in words."""

from __future__ import annotations

from collections.abc import Iterable


def plural(number: int, noun: str) -> str:
    """``1 loop``, ``3 loops``."""
    return f"{number} {noun}" if number == 1 else f"{number} {noun}s"


def runs_of(numbers: Iterable[int]) -> list[range]:
    """Numbers in rising order, those that follow each other taken together: 1, 2, 3 and 7 are 1 to 3 and 7."""
    runs: list[range] = []
    for number in numbers:
        if runs and number == runs[-1].stop:
            runs[-1] = range(runs[-1].start, number + 1)
        else:
            runs.append(range(number, number + 1))
    return runs
