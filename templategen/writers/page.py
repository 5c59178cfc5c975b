"""What a page of HTML holds so far: names given, headings, glyphs."""

from __future__ import annotations

import re

from ..document.blocks import Heading
from .drawn import Letters


class Page:
    """A page as it is being written."""

    def __init__(self) -> None:
        self.letters = Letters()
        self.headings: list[tuple[str, str]] = []
        """Headings below the title, to be jumped to: each by its name and its text."""
        self.heading = ""
        """The text of the last of all headings."""
        self.below = 2
        """The level of a heading under the last one."""
        self._parted = False
        self._names: set[str] = set()

    def name(self, wish: str) -> str:
        """A name that nothing else on the page has: an id. ``wish`` itself, or with a number after it."""
        plain = re.sub(r"[^a-z0-9]+", "-", wish.lower()).strip("-") or "part"
        number, name = 1, plain
        while name in self._names:
            number += 1
            name = f"{plain}-{number}"
        self._names.add(name)
        return name

    def enter(self, heading: Heading) -> tuple[int, str]:
        """The level of a heading and its name.

        The first of all is the title. Another title is one level below it, and has what follows below itself.
        """
        if self.below == 2 and not self.heading:
            level = 1
        elif heading.first:
            level, self._parted = 2, True
        else:
            level = 3 if self._parted else 2
        self.heading, self.below = heading.text, level + 1
        name = self.name(heading.text)
        if level == 2:
            self.headings.append((name, heading.text))
        return level, name
