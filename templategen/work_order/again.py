"""The command that makes a kit again."""

from __future__ import annotations

import json
import shlex
from collections.abc import Iterator, Mapping
from typing import Any

from ..bars import Readings, readings_of_record
from ..fingerprint import JOB_NAME, OPTIONS_NAME, SPEC_NAME, fingerprint_of

KIT = "kit.pdf"
"""What a kit's PDF is called: it can be made again from itself."""


def command(carried: Mapping[str, str], spec: str = "", out: str = "kit", *, despite_stops: bool = False) -> str:
    """The command, as it is typed in a shell, that makes the very kit again whose PDF carries these texts.

    ``spec`` is the file that the kit was made from; left out, it is called as in the PDF. "" where it carries none.
    """
    name = next((each for each in (SPEC_NAME, JOB_NAME) if each in carried), "")
    if not name:
        return ""
    asked = json.loads(carried[OPTIONS_NAME]) if OPTIONS_NAME in carried else {}
    readings = readings_of_record(asked.get("printer", {}))
    bars = {reading.bar for reading in (readings.across, readings.along) if reading is not None}
    file, options = spec or name, [*_options(asked), *_readings(readings)]
    if len(bars) > 1:  # the command line has one bar for both readings; the kit itself carries one for each
        file, options = KIT, []
    if despite_stops:
        options.append("--despite-stops")
    options += ["--fingerprint", fingerprint_of(carried)]
    return shlex.join(["templategen", "make", file, "--out", out, *options])


def _options(asked: Mapping[str, Any]) -> Iterator[str]:
    """The options as they are typed, from what is attached of them."""
    if asked.get("paper") is not None:
        yield from ("--paper", asked["paper"])
    for name in asked.get("only", ()):
        yield from ("--only", name)
    if "orientation" in asked:
        yield from ("--orientation", asked["orientation"])
    if "half_strip" in asked:
        yield "--half-strip" if asked["half_strip"] else "--whole-strip"
    if "strips" in asked:
        yield from ("--strips", str(asked["strips"]))
    if "large_print" in asked:
        yield "--large-print" if asked["large_print"] else "--no-large-print"


def _readings(readings: Readings) -> Iterator[str]:
    """What was read off the bars, as it is typed; the bar, which is the same across and along."""
    for flag, reading in (("--printer-across", readings.across), ("--printer-along", readings.along)):
        if reading is not None:
            yield from (flag, reading.typed)
    bar = next((reading.bar for reading in (readings.across, readings.along) if reading is not None), None)
    if bar is not None:
        yield from ("--printer-bar", bar)
