"""A step of the work, and a stage of it: steps that belong together, under a heading."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from ..document.blocks import Block, Remark
from ..document.view import View


@dataclass(frozen=True, slots=True)
class Step:
    """One thing to do."""

    title: str
    """The step in one or two words."""
    text: str
    """What is done, in sentences that do not say the title again."""
    on: Literal["once", "panel", "bought"] = "panel"
    """What it is done to: once for all, every panel that is made, or every one as it was bought, before it is split."""
    view: View | None = None
    """How it looks."""
    uses: tuple[str, ...] = ()
    """The families of templates that it needs: "cut gauge"."""


@dataclass(frozen=True, slots=True)
class Stage:
    """Steps that belong together."""

    title: str
    steps: tuple[Step, ...]
    cautions: tuple[Remark, ...] = ()
    """What to take care of, read before the first step."""
    before: tuple[Block, ...] = ()
    """What is read or written before the cautions and the steps."""
    gate: str = ""
    """What must be so on all panels before the next stage; "" where nothing has to."""
    gate_view: View | None = None
    """How that looks."""
