"""The pieces of work that a worker does, by name."""

from __future__ import annotations

from . import answers

WORKS = {
    work.__name__: work
    for work in (
        answers.fields,
        answers.guides,
        answers.form_in,
        answers.spec_text,
        answers.plan,
        answers.sheets,
        answers.sheet,
        answers.kit,
    )
}


def warm(kits: bool) -> None:
    """Once through what a worker will do, with the sample job, so that all it needs is loaded when a person waits."""
    example = answers.fields()["example"]["inch"]
    if kits:
        answers.sheets("", example, True)
    else:
        answers.guides()
        answers.plan("", example)
