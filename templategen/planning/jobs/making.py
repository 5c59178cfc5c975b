"""A job worked out: each window by itself, then what is kept alike, then alike panels together."""

from __future__ import annotations

from ...spec import Job, Together
from ..making import make_plan
from ..plan import Plan
from .alike import parts_of
from .lots import lots_notices
from .plan import JobPlan, Part, WindowPlan
from .together import keep_alike


def make_job_plan(job: Job) -> JobPlan:
    """Work every window out, exactly; whatever looks wrong ends in notices."""
    windows = tuple(
        WindowPlan(window.name, window.room, window.label, make_plan(window.spec)) for window in job.windows
    )
    windows, notices = keep_alike(windows, job.together)
    return JobPlan(
        spec=job.shared,
        together=job.together,
        windows=windows,
        parts=parts_of(windows),
        job_notices=(*notices, *lots_notices(windows)),
    )


def as_job(plan: Plan | JobPlan) -> JobPlan:
    """A plan as the job of its one window, which has no name; a job as it is."""
    if isinstance(plan, JobPlan):
        return plan
    return JobPlan(plan.spec, Together(), (WindowPlan("", "", "", plan),), (Part(("",), plan),), ())
