"""The work order of one plan, for tests of what it says."""

from __future__ import annotations

from templategen.document.blocks import Block
from templategen.planning import Plan, as_job
from templategen.templates import Choices
from templategen.work_order import job


def words(plan: Plan, choices: Choices | None = None) -> list[Block]:
    """All of it, but for the names of templates, of which there are none drawn."""
    return job.words(as_job(plan), (), choices)
