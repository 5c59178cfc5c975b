"""A spec as a form has it: groups in the order of measuring, what was typed by path; text and back."""

from .described import described
from .editing import tables_of, text_of
from .entries import EMPTY, Form, Typed, WindowEntry, form_of
from .groups import GROUPS, Group
from .labels import LABELS
from .records import form_record, from_record
from .understanding import understood

__all__ = [
    "EMPTY",
    "GROUPS",
    "LABELS",
    "Form",
    "Group",
    "Typed",
    "WindowEntry",
    "described",
    "form_of",
    "form_record",
    "from_record",
    "tables_of",
    "text_of",
    "understood",
]
