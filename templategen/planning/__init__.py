"""Spec to plan: hanging, drop, hem, heading, offcut, advice. Pure: no paper, no files."""

from .either import plan_for, record_of, tell
from .figures import Figure, Notice, Section
from .jobs import JobPlan, Part, WindowPlan, as_job, job_record, make_job_plan, tell_job
from .making import make_plan
from .plan import Plan
from .record import plan_record
from .telling import marks_said, tell_plan

__all__ = [
    "Figure",
    "JobPlan",
    "Notice",
    "Part",
    "Plan",
    "Section",
    "WindowPlan",
    "as_job",
    "job_record",
    "make_job_plan",
    "make_plan",
    "marks_said",
    "plan_for",
    "plan_record",
    "record_of",
    "tell",
    "tell_job",
    "tell_plan",
]
