"""Spec to plan: hanging, drop, hem, heading, offcut, advice. Pure: no paper, no files."""

from .making import make_plan
from .plan import Figure, Notice, Plan
from .record import plan_record
from .telling import SECTIONS, tell_plan

__all__ = ["SECTIONS", "Figure", "Notice", "Plan", "make_plan", "plan_record", "tell_plan"]
