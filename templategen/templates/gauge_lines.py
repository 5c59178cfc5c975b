"""Lines of the plan as they are ruled on a gauge card."""

from __future__ import annotations

from ..drawing import LineType
from ..lengths import Tape
from ..planning.plan import GaugeLine
from .ruled import Rule

LINES = {"fold": LineType.FOLD, "mark": LineType.MARK, "stitch": LineType.STITCH}


def rule_of(line: GaugeLine, tape: Tape) -> Rule:
    """The ruled line; what rounding took away is said in words, since a sign would look like a dash."""
    reading = tape.read(line.length)
    kind = LINES[line.kind]
    return Rule(line.length.mm, kind, reading.number, f"{line.name}{reading.remark}", kind is LineType.STITCH)
