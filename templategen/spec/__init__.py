"""What the sewist says: TOML (or a form, or answers) read into a Spec; every refusal names its field."""

from .about import About, Limit
from .catalogue import FIELDS, TABLES, SpecField
from .files import load_spec
from .interview import interview
from .model import Spec
from .reading import read_spec, spec_from_tables
from .starting import starting_spec

__all__ = [
    "FIELDS",
    "TABLES",
    "About",
    "Limit",
    "Spec",
    "SpecField",
    "interview",
    "load_spec",
    "read_spec",
    "spec_from_tables",
    "starting_spec",
]
