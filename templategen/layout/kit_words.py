"""What a kit takes of paper, and how true it comes, in words."""

from __future__ import annotations

from ..drawing import capitalised
from ..lengths.counting import plural
from .budget_words import plan_lines
from .kit import Kit
from .packing import Bound


def tell_sheets(kit: Kit) -> str:
    """How many sheets the kit takes, how many of them hold templates, and whether fewer could do."""
    holding = kit.with_templates
    if not holding:
        return f"{capitalised(kit.paper.said)}: {plural(len(kit.sheets), 'sheet')}."
    said = f"{holding} of them with templates" if holding < len(kit.sheets) else "all with templates"
    return f"{capitalised(kit.paper.said)}: {plural(len(kit.sheets), 'sheet')}, {said}{_fewer(holding, kit.bound)}."


def _fewer(sheets: int, bound: Bound) -> str:
    """Whether fewer could do, as far as is known: the bound by area holds for any layout, that by rows does not."""
    if sheets == 1:
        return ""
    if sheets <= bound.by_area:
        return "; no layout takes fewer"
    if sheets <= bound.by_rows:
        return "; no layout in rows takes fewer"
    return f"; {bound.sheets} might do"


def tell_on_paper(kit: Kit, width: int = 96) -> str:
    """The end of a plan's text: sheets, and for each template how far out its marks may come."""
    return "\n".join(["On paper", f"  {tell_sheets(kit)}", "", *plan_lines(kit.budgets, kit.tape, width)])
