"""The plan of a job as plan.json: every window with its own record."""

from __future__ import annotations

from ..record import plan_record
from .plan import JobPlan


def job_record(job: JobPlan) -> dict[str, object]:
    """The job as plain data, ready for JSON.

    ``windows`` holds for each window its name, its room ("" for none) and the
    record of its plan; ``parts`` which windows are made together, by label, and
    their counts; ``notices`` what looks wrong between windows.
    """
    return {
        "title": job.spec.title,
        "units": job.spec.units,
        "keep": job.together.keep,
        "windows": [
            {"name": window.name, "room": window.room, "label": window.label, **plan_record(window.plan)}
            for window in job.windows
        ],
        "parts": [{"windows": list(part.labels), "counts": dict(part.plan.counts)} for part in job.parts],
        "notices": [
            {"code": notice.code, "level": notice.level, "text": notice.text} for notice in job.job_notices
        ],
    }
