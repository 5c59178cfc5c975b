"""A printer that prints too small, told to the spec: what comes out of it is true again."""

from __future__ import annotations

from dataclasses import replace

import pytest

from .kits import PANELS, made
from .measuring import bar_errors, gauge_errors, see, strip_errors

TRUE = 0.15


@pytest.mark.parametrize("name", ["54 in, 8 loops, letter", "1100 mm, 4 loops, A4"])
def test_a_kit_corrected_for_its_printer_comes_out_true(name: str) -> None:
    panel = replace(PANELS[name], printer=("97.27 mm", "98.5 mm"))
    kit = made(panel)
    seen = see(kit.files["kit.pdf"], kit.record, prints=(0.9727, 0.985))
    strip = strip_errors(panel, seen.taped["spacing strip"])
    gauges = max(max(each) for each in gauge_errors(kit, seen).values())
    print(f"\n{name}, printed at 97.27 % across and 98.5 % along: strip {strip.worst:.4f}, gauges {gauges:.4f}")
    assert strip.worst <= TRUE
    assert max(check.error for check in seen.checks) <= TRUE
    assert max(bar_errors(seen)) <= 0.05
    assert gauges <= TRUE


def test_the_correction_is_not_made_for_nothing() -> None:
    """The same sheets from a printer that prints true are wrong by as much as was corrected."""
    panel = replace(PANELS["1100 mm, 4 loops, A4"], printer=("97.27 mm", "98.5 mm"))
    kit = made(panel)
    bars = kit.record["bars"]
    first = bars[0]
    assert first["nominal_mm"] == 100
    assert abs(first["to"][0] - first["from"][0] - 100 / 0.9727) < 1e-5
    assert abs(bars[1]["to"][1] - bars[1]["from"][1] - 100 / 0.985) < 1e-5
