"""Telling: the worst errors of a kit as a row of a table."""

from __future__ import annotations

from .kits import PANELS, Made, Panel, made
from .measuring import Sight, bar_errors, gauge_errors, sight, strip_errors

HEADING = f"{'panel':<28} pieces  marks  right edge  check lengths  bars     gauges   (worst error, mm)"


def row(panel: Panel, kit: Made, seen: Sight) -> str:
    """The worst error of each kind, in mm, one line for a kit."""
    strip = seen.taped["spacing strip"]
    errors = strip_errors(panel, strip)
    gauges = max(max(each) for each in gauge_errors(kit, seen).values())
    checks = max(check.error for check in seen.checks)
    name = next((name for name, each in PANELS.items() if each == panel), panel.width)
    return (
        f"{name:<28} {len(strip.papers):>6}  {max(errors.marks):.4f} {errors.right_edge:>10.4f} "
        f"{checks:>14.4f}  {max(bar_errors(seen)):.4f}  {gauges:.4f}"
    )


def main() -> None:
    """Print the table for all twelve panels."""
    print(HEADING)
    for panel in PANELS.values():
        print(row(panel, made(panel), sight(panel)), flush=True)


if __name__ == "__main__":
    main()
