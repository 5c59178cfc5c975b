"""Redrawing: a kit's PDF with some items of its pieces changed or lost, for tests that must be able to fail."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from templategen.drawing import Item
from templategen.layout import Kit, Placed
from templategen.writers.pdf import pdf

from .joining import Paper
from .kits import Made
from .measuring import Sight, heap_of, see

Change = Callable[[Placed, Item], Item | None]


def redrawn_pdf(kit: Kit, change: Change) -> bytes:
    """The kit's PDF with every item of its pieces as ``change`` leaves it; None where it is to be lost.

    Sheets without pieces, which nothing is changed on, are left empty.
    """
    sheets = []
    for sheet in kit.sheets:
        if not sheet.placed:
            sheets.append(replace(sheet, items=()))
            continue
        placed = [
            replace(each, items=tuple(new for item in each.items if (new := change(each, item)) is not None))
            for each in sheet.placed
        ]
        sheets.append(replace(sheet, placed=tuple(placed)))
    return pdf(replace(kit, sheets=tuple(sheets)))


def redrawn(kit: Made, change: Change) -> list[Paper]:
    """The pieces of such a kit, cut out."""
    return heap_of(redrawn_pdf(kit.kit, change), _of_pieces(kit.record))[0]


def seen_redrawn(kit: Made, change: Change) -> Sight:
    """What is seen of such a kit."""
    return see(redrawn_pdf(kit.kit, change), _of_pieces(kit.record))


def _of_pieces(record: dict[str, Any]) -> dict[str, Any]:
    """The list of what lies where, without the bars of sheets that hold no pieces."""
    pages = {piece["page"] for piece in record["pieces"]}
    return record | {"bars": [bar for bar in record["bars"] if bar["page"] in pages]}
