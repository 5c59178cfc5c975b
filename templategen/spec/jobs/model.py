"""What is said of several windows at once, once it has been read: exact, complete, frozen."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Literal

from ...lengths import Length
from ..about import MORE_THAN_NOTHING, About
from ..model import Spec
from ..table import MOST_60_M, Table

MOST_WINDOWS = 50
"""Windows of one job: our choice, because a kit of more is no longer one pile of paper."""
LONGEST_NAME = 40
"""Characters of the name of a window or a room: our choice, because it stands on every piece of a template."""

Keep = Literal["floor line", "head height", "finished length"]


class Together(Table):
    """What is to be alike over all the windows."""

    keep: Annotated[Keep | None, About(
        "what is to be alike: \"floor line\", \"head height\" or \"finished length\"", "head height", "head height",
        "\"floor line\": every hem hangs the same height above its floor. \"head height\": all rods hang at one height "
        "above a level floor. \"finished length\": every panel is made as long as the others, top edge to bottom edge, "
        "whatever its floor says; the clearance of each window then follows. A window whose numbers contradict what "
        "is kept gets a notice.",
        left_out="each window by itself", asked=False)] = None
    finished_length: Annotated[Length | None, About(
        "the finished length of every panel, where that is what is kept", "82 in", "2080 mm",
        left_out="the least that any window comes to by its own numbers, so that no panel hangs lower than asked",
        asked=False, least=MORE_THAN_NOTHING, most=MOST_60_M)] = None


class Names(Table):
    """One window, or one set of alike panels of it: what it is called, and every field that is its own."""

    name: Annotated[str, About(
        "what the window is called, on its templates", "east window", "east window",
        "Where the panels of one window differ, write an entry for each set: \"east window, left\".")]
    room: Annotated[str | None, About(
        "the room that the window is in", "Reading room", "Reading room", left_out="no room")] = None


@dataclass(frozen=True, slots=True)
class Window:
    """One window, or one set of alike panels of it."""

    name: str
    room: str
    """"" where nothing was said."""
    label: str
    """The shortest that tells it from the others: its name, or its name and its room."""
    spec: Spec
    """Its own fields over those that are shared. Its title is the room and the name."""


@dataclass(frozen=True, slots=True)
class Job:
    """Several windows, to be made as one."""

    title: str
    windows: tuple[Window, ...]
    """In the order of the file; one at least."""
    together: Together
    source: str
    """The text it was read from, kept so that a kit can carry it."""

    @property
    def shared(self) -> Spec:
        """What holds for the whole job: units, tape, paper, printer and the job's own title."""
        spec = self.windows[0].spec.model_copy(update={"title": self.title})
        spec._source = self.source
        return spec
