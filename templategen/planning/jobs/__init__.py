"""Several windows planned as one job."""

from .making import as_job, make_job_plan
from .plan import JobPlan, Part, WindowPlan
from .record import job_record
from .telling import tell_job

__all__ = ["JobPlan", "Part", "WindowPlan", "as_job", "job_record", "make_job_plan", "tell_job"]
