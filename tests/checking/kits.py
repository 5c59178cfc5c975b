"""The kits that are handled: one on letter paper, one on A4, one corrected for its printer."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from templategen import Options, kit_files, make_kit, make_plan, read_spec

SPEC = (Path(__file__).parents[2] / "out_examples" / "east-window" / "spec.toml").read_text(encoding="utf-8")
PRINTER = '\n[printer]\nacross = "99.2 mm"\nalong = "100.6 mm"\n'
SHEETS = len(make_kit(make_plan(read_spec(SPEC))).sheets)
"""Pages of the kit; eight at the least, for the tests that take some out."""
assert SHEETS > 8


@cache
def kit(
    paper: str = "letter", title: str = "Reading room, east window", more: str = "", only: tuple[str, ...] = ()
) -> bytes:
    """kit.pdf of the village library's east window: all of it, or ``only`` some templates."""
    text = SPEC.replace('name = "letter"', f'name = "{paper}"').replace("Reading room, east window", title) + more
    assert f'name = "{paper}"' in text and title in text
    _, files = kit_files(make_plan(read_spec(text)), Options(only=only))
    return files["kit.pdf"]
