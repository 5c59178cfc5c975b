"""The same steps for a spec and for a job."""

from __future__ import annotations

from ..spec import Job, Spec
from .jobs import JobPlan, job_record, make_job_plan, tell_job
from .making import make_plan
from .plan import Plan
from .record import plan_record
from .telling import tell_plan


def plan_for(read: Spec | Job) -> Plan | JobPlan:
    """What was read, worked out."""
    return make_job_plan(read) if isinstance(read, Job) else make_plan(read)


def tell(plan: Plan | JobPlan) -> str:
    """The plan as text."""
    return tell_job(plan) if isinstance(plan, JobPlan) else tell_plan(plan)


def record_of(plan: Plan | JobPlan) -> dict[str, object]:
    """The plan as plan.json."""
    return job_record(plan) if isinstance(plan, JobPlan) else plan_record(plan)
