"""From what a hanging panel needs to files: its adjusting strips and what is to be done, as a kit of their own."""

from __future__ import annotations

from .errors import Refusal
from .layout import Kit
from .making import files_of, laid_out
from .options import Options, faults_of, look_of
from .planning import Plan
from .planning.adjusting import Adjustment
from .templates import adjusting_strip
from .work_order import adjusting as adjusting_words

SUBJECT = "Adjusting strips for a curtain panel that has been hung"


def adjusting_files(plan: Plan, adjustment: Adjustment, options: Options | None = None) -> tuple[Kit, dict[str, bytes]]:
    """The strips and words of the remedy that is taken, on sheets, and every file of them by name.

    A kit of its own: page 1 proves the printer as that of any kit. Raises Refusal for a paper that there is none of.
    """
    options = options or Options()
    if faults := faults_of(options, plan.spec):
        raise Refusal(*faults)
    taken = adjustment.taken
    words = adjusting_words.words(plan, adjustment)
    drawings = adjusting_strip.draw(plan, taken, look_of(plan.spec, options)) if taken else []
    kit = laid_out(plan, options, SUBJECT, lambda paper: words, drawings, check=bool(drawings))
    return kit, files_of(kit, words, "adjusting", {})
