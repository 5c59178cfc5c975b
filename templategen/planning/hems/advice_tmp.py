"""Whether the new hem is a good hem."""

from __future__ import annotations

from ...spec import Spec
from ..choices import FULL_LENGTH_HEM, HEM_LIMITS
from ..plan import Notice
from ..wording import at_least, near


def hem_notices(spec: Spec) -> list[Notice]:
    """Too shallow for its cloth, or turned under so that it shows. A turn-under deeper than its hem
    never comes here: the spec's reader refuses it."""
    tape, depth, turn = spec.tape, spec.hem.depth, spec.hem.turn_under
    found = []
    least, why = HEM_LIMITS[spec.cloth]
    if depth < least:
        text = (
            f"A hem {near(tape, depth)} deep is shallow for {spec.cloth} cloth: {at_least(tape, least)} at "
            f"least, as {why}; {near(tape, FULL_LENGTH_HEM)} suits full length (A Manual of Home-Making)."
        )
        found.append(Notice("hem_shallow", "warning", text))
    if spec.cloth == "light" and turn < depth:
        text = (
            "On sheer cloth the turned-in edge shows through as a line. Both turns equal hide it "
            f"(newspaper, 24 May 1935): a turn-under of {near(tape, depth)}, and the cut line "
            f"{near(tape, depth - turn)} lower."
        )
        found.append(Notice("turn_shows", "note", text))
    return found
