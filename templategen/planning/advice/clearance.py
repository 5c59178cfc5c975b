"""How far from its line the panel ends: what is usual, and where it does harm."""

from __future__ import annotations

from ...lengths import NOTHING
from ...spec import Spec
from ..choices import HEATER_CLEARANCE
from ..figures import Notice
from ..lines import line_of
from ..wording import near


def clearance_notices(spec: Spec) -> list[Notice]:
    """By what the panel hangs to."""
    return _NOTICES[spec.drop.to](spec)


def _usual(spec: Spec) -> str:
    least, most = line_of(spec).usual
    return f"{near(spec.tape, least)} to {near(spec.tape, most)}"


def _floor(spec: Spec) -> list[Notice]:
    tape, clearance = spec.tape, spec.drop.clearance
    if clearance < NOTHING:
        text = (
            f"The panel breaks {near(tape, -clearance)} on the floor, where it gathers dust and can trip: "
            "not where people walk, on stairs or near a way out. Clear of the floor, the sources give "
            f"{_usual(spec)}."
        )
        return [Notice("breaks_on_floor", "note", text)]
    least, most = line_of(spec).usual
    if not least <= clearance <= most:
        clears = f"clears the floor by {near(tape, clearance)}"
        how = "just touches the floor" if clearance == NOTHING else clears
        text = f"The panel {how}; the sources give {_usual(spec)}. The choice is yours."
        return [Notice("clearance_unusual", "note", text)]
    return []


def _sill(spec: Spec) -> list[Notice]:
    tape, clearance = spec.tape, spec.drop.clearance
    most = near(tape, line_of(spec).usual[1])
    sources = f"1/16 to 1/4 in, 2 to 6 mm (Te Ao Hou no. 11, 1955), or up to {most} (common practice)"
    if clearance < NOTHING:
        text = (
            f"The panel is {near(tape, -clearance)} longer than down to the sill: it breaks on the sill, where it "
            "takes up wet from the window, or hangs past it, if the sill does not stand out; for that, write "
            f"drop.to = \"apron\" or \"floor\". Clear of the sill, the sources give {sources}."
        )
        return [Notice("breaks_on_sill", "note", text)]
    low, high = line_of(spec).usual
    if not low <= clearance <= high:
        how = "just touches the sill" if clearance == NOTHING else f"clears the sill by {near(tape, clearance)}"
        text = f"The panel {how}; the sources give {sources}. The choice is yours."
        return [Notice("clearance_unusual", "note", text)]
    return []


def _apron(spec: Spec) -> list[Notice]:
    tape, clearance = spec.tape, spec.drop.clearance
    least, most = line_of(spec).usual
    if least <= clearance <= most:
        return []
    side = "above" if clearance > NOTHING else "below"
    how = f"{near(tape, abs(clearance))} {side} the lower edge" if clearance else "level with the lower edge"
    text = (
        f"The panel ends {how} of the apron; the sources give {near(tape, -most)} below it (UFGS-12491N), and up to "
        f"{near(tape, -least)} (common practice): a clearance of {near(tape, most)} to {near(tape, least)}. "
        "The choice is yours."
    )
    return [Notice("clearance_unusual", "note", text)]


def _radiator(spec: Spec) -> list[Notice]:
    tape, clearance = spec.tape, spec.drop.clearance
    asked = (
        f"Fire services ask for at least {near(tape, HEATER_CLEARANCE)} from a fixed electric baseboard heater, and "
        "its maker may ask for more; never hang cloth over or before one. Above a radiator that hot water heats, "
        "1/2 to 4 in (12 to 100 mm) is common practice."
    )
    if clearance < NOTHING:
        text = (
            f"The panel hangs {near(tape, -clearance)} down in front of the radiator, or on it: it holds the heat "
            f"back, and where the heater is electric or gas it can burn. {asked}"
        )
        return [Notice("before_radiator", "warning", text)]
    if clearance < HEATER_CLEARANCE:
        how = f"ends {near(tape, clearance)} above" if clearance else "touches"
        return [Notice("near_radiator", "warning", f"The panel {how} the radiator. {asked}")]
    return []


_NOTICES = {"floor": _floor, "sill": _sill, "apron": _apron, "radiator": _radiator}
