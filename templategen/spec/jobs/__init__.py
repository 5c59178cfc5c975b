"""A job: the windows of a house or a room, what they share, and what is to be alike over all of them."""

from .model import MOST_WINDOWS, Job, Together, Window
from .reading import is_job, load_spec_or_job, read_job, read_spec_or_job
from .starting import starting_job

__all__ = [
    "MOST_WINDOWS",
    "Job",
    "Together",
    "Window",
    "is_job",
    "load_spec_or_job",
    "read_job",
    "read_spec_or_job",
    "starting_job",
]
