"""Spec to plan: hanging, drop, hem, heading, offcut, advice. Pure: no paper, no files."""

from .figures import Figure, Notice, Section
from .making import make_plan
from .plan import Plan
from .record import plan_record
from .telling import marks_said, tell_plan

__all__ = ["Figure", "Notice", "Plan", "Section", "make_plan", "marks_said", "plan_record", "tell_plan"]
