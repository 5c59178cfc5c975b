"""What a kit takes of paper, and how true it comes, in words."""

from __future__ import annotations

from ..drawing import capitalised
from ..lengths.counting import plural
from .budget_words import plan_lines
from .kit import Kit


def tell_sheets(kit: Kit) -> str:
    """How many sheets the kit takes, how many of them hold templates, and whether fewer could do."""
    holding = kit.with_templates
    if not holding:
        return f"{capitalised(kit.paper.said)}: {plural(len(kit.sheets), 'sheet')}."
    if holding <= kit.bound.sheets:
        fewer = "no layout takes fewer" if holding > 1 else ""
    else:
        fewer = f"by area and rows, {kit.bound.sheets} might do"
    said = f"{holding} of them with templates" if holding < len(kit.sheets) else "all with templates"
    return f"{capitalised(kit.paper.said)}: {plural(len(kit.sheets), 'sheet')}, {said}{'; ' if fewer else ''}{fewer}."


def tell_on_paper(kit: Kit, width: int = 96) -> str:
    """The end of a plan's text: sheets, and for each template how far out its marks may come."""
    return "\n".join(["On paper", f"  {tell_sheets(kit)}", "", *plan_lines(kit.budgets, kit.tape, width)])
