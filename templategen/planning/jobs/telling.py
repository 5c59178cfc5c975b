"""The plan of a job told as text: what is said of all windows, then each under its heading."""

from __future__ import annotations

from collections.abc import Iterator

from ...lengths.counting import plural
from ..telling import WIDTH, tell_notices, tell_plan, wrapped
from .plan import JobPlan, listed


def tell_job(job: JobPlan) -> str:
    """The text of ``templategen plan`` for a job, at most 96 columns wide, ending in a line feed."""
    title = wrapped(job.spec.title, WIDTH)
    head = "\n".join([*title, "#" * max(len(line) for line in title)])
    said = [head, "\n".join(_parts(job)), *("\n".join(lines) for lines in tell_notices(job.job_notices))]
    return "\n\n".join([*said, *(tell_plan(window.plan).rstrip() for window in job.windows)]) + "\n"


def _parts(job: JobPlan) -> Iterator[str]:
    yield f"{plural(len(job.windows), 'window')}, {plural(job.panels, 'panel')}; made together:"
    for number, part in enumerate(job.parts, 1):
        said = f"{number}. {listed(part.labels, len(part.labels))}: {plural(part.plan.panels, 'panel')}"
        yield from wrapped(f"  {said}", WIDTH, "     ")
