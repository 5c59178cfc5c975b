"""All that can go wrong, on one screen.

Whatever a person typed or asked for that cannot be done ends in a
:class:`Refusal`: a message for each fault, never a traceback. Faults of the
world outside (a full disk, a folder without permission) stay ``OSError``.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing wrong with what was typed: where, what was read, what would be right."""

    field: str
    """The field as it stands in the file, ``panel.width``; "" where no one field is to blame."""
    read: str
    """What was read there, as it was typed; "" where nothing was."""
    right: str
    """What is wrong with it and what would be right, in one sentence."""

    def __str__(self) -> str:
        where = f"{self.field}: " if self.field else ""
        read = f"read {self.read} – " if self.read else ""
        return f"{where}{read}{self.right}"


class TemplategenError(Exception):
    """The root of everything below."""


class LengthError(TemplategenError, ValueError):
    """A text that is not, for certain, one length. The message says what would be right."""


class PaperError(TemplategenError, ValueError):
    """A text that names no paper. The message says what would be right."""


class Refusal(TemplategenError):
    """The spec or the arguments are wrong; every fault is listed."""

    def __init__(self, *faults: Fault) -> None:
        super().__init__("\n".join(str(fault) for fault in faults))
        self.faults = faults


class StoppedPlan(TemplategenError):
    """The plan has a stop notice and nobody said to go on despite it."""

    def __init__(self, texts: tuple[str, ...]) -> None:
        super().__init__("\n".join(texts))
        self.texts = texts


class MissingGlyph(TemplategenError):
    """The font has no glyph for a character that was to be set.

    Raised before anything is written: a PDF would show nothing in its place.
    """
