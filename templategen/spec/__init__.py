"""What the sewist says: TOML (or a form, or answers) read into a Spec; every refusal names its field."""

from .about import About, Limit
from .catalogue import FIELDS, TABLES, SpecField
from .files import load_spec
from .interview import interview
from .jobs import Job, Together, Window, load_spec_or_job, read_job, read_spec_or_job, starting_job
from .model import Spec
from .reading import read_spec, spec_from_tables
from .starting import starting_spec

__all__ = [
    "FIELDS",
    "TABLES",
    "About",
    "Job",
    "Limit",
    "Spec",
    "SpecField",
    "Together",
    "Window",
    "interview",
    "load_spec",
    "load_spec_or_job",
    "read_job",
    "read_spec",
    "read_spec_or_job",
    "spec_from_tables",
    "starting_job",
    "starting_spec",
]
