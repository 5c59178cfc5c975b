"""Jobs for the tests: the village library's two reading rooms, and changes to them."""

from __future__ import annotations

from pathlib import Path

import pytest

from templategen.errors import Fault, Refusal
from templategen.planning import JobPlan, Notice, make_job_plan
from templategen.spec import Job, read_job

LIBRARY = (Path(__file__).parent / "library.toml").read_text()
"""Four windows in two rooms; three of them take alike panels."""
SHARED, *WINDOWS = LIBRARY.split("[[window]]\n")
"""What the windows share, and each window's own lines."""


def of_windows(*windows: str, shared: str = SHARED) -> str:
    """A job of these windows, each its lines."""
    return shared + "".join(f"[[window]]\n{window}\n" for window in windows)


def changed(*changes: tuple[str, str], text: str = LIBRARY) -> str:
    """The library's job with each first text put in the other's place, everywhere."""
    for old, new in changes:
        assert old in text, old
        text = text.replace(old, new)
    return text


def planned(*changes: tuple[str, str]) -> JobPlan:
    return make_job_plan(job(*changes))


def job(*changes: tuple[str, str]) -> Job:
    return read_job(changed(*changes))


def faults_of(text: str) -> tuple[Fault, ...]:
    with pytest.raises(Refusal) as refused:
        read_job(text)
    return refused.value.faults


def told(plan: JobPlan, code: str) -> list[Notice]:
    """The notices between windows of this code."""
    return [notice for notice in plan.job_notices if notice.code == code]
