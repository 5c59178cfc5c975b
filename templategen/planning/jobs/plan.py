"""The plan of a job: every window worked out, alike panels together, and what is said of them all."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from ...lengths import Tape
from ...spec import Spec, Together
from ..advice import worst_first
from ..figures import Notice
from ..plan import Plan


@dataclass(frozen=True, slots=True)
class WindowPlan:
    """One window."""

    name: str
    """"" for the one window of a spec, which has no name besides its title."""
    room: str
    label: str
    """The shortest that tells it from the others."""
    plan: Plan


@dataclass(frozen=True, slots=True)
class Part:
    """Windows whose panels are made alike, and are made together."""

    labels: tuple[str, ...]
    plan: Plan
    """Of all their panels: counts, offcuts and notices are those of the whole part."""


@dataclass(frozen=True, slots=True)
class JobPlan:
    """All windows of a job."""

    spec: Spec
    """What holds for the whole job: its title, units, paper and printer, and the text it was read from."""
    together: Together
    windows: tuple[WindowPlan, ...]
    """In the order of the file."""
    parts: tuple[Part, ...]
    """Every window is in one; in the order of their first windows."""
    job_notices: tuple[Notice, ...]
    """What looks wrong between windows."""

    @property
    def named(self) -> bool:
        """Whether it is of windows; not for the one plan of a spec."""
        return bool(self.windows[0].name)

    @property
    def labels(self) -> tuple[str, ...]:
        return tuple(window.label for window in self.windows)

    @property
    def tape(self) -> Tape:
        return self.spec.tape

    @property
    def panels(self) -> int:
        """How many are made, over all windows."""
        return sum(part.plan.panels for part in self.parts)

    @property
    def notices(self) -> tuple[Notice, ...]:
        """Everything that looks wrong, each with the windows that it is about; the worst first."""
        return worst_first([*self.job_notices, *_of_windows(self.windows)])

    @property
    def stops(self) -> tuple[Notice, ...]:
        return tuple(notice for notice in self.notices if notice.level == "stop")


def _of_windows(windows: Sequence[WindowPlan]) -> list[Notice]:
    having: dict[Notice, list[str]] = {}
    for window in windows:
        for notice in window.plan.notices:
            having.setdefault(notice, []).append(window.label)
    return [with_labels(notice, labels if any(labels) else ()) for notice, labels in having.items()]


def with_labels(notice: Notice, labels: Sequence[str]) -> Notice:
    """The notice with the windows that it is about in front."""
    return replace(notice, text=f"{listed(labels)}: {notice.text}") if labels else notice


def listed(labels: Sequence[str], most: int = 6) -> str:
    """"east, north and west"; of more than ``most``, how many others there are."""
    if len(labels) > most:
        return f"{', '.join(labels[: most - 1])} and {len(labels) - most + 1} more"
    return " and ".join(filter(None, (", ".join(labels[:-1]), labels[-1])))
