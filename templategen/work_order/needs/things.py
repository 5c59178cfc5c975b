"""What is bought, cut or got ready, besides thread and tools."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from math import ceil

from ...document.blocks import NumberRow
from ...document.on_paper import OnPaper
from ...drawing import Drawing
from ...lengths import NOTHING, Length, Tape, inches
from ...lengths.counting import plural
from ...planning import Plan
from ...planning.cloth.leftovers import left_depth
from ...planning.extras import lining_shorter
from ...planning.offcut import whole
from ...planning.wording import near, say
from .amounts import Thing, enough
from .headings import HEADING_NEEDS
from .hems import HEM_NEEDS
from .pins import along


def things_of(plan: Plan) -> Iterator[Thing]:
    """What is needed for the panels of a plan."""
    heading, hem = HEADING_NEEDS[plan.heading.style], HEM_NEEDS[plan.hem.style]
    yield from heading.things(plan, plan.heading)
    yield from hem.things(plan, plan.hem)
    yield from _lining(plan)
    yield from _weights(plan)
    yield _pins(plan)


def _lining(plan: Plan) -> Iterator[Thing]:
    shorter = lining_shorter(plan.spec, plan.drop)
    if shorter is None:
        return
    tape, width, length = plan.tape, plan.figures["lining_width"].value, plan.figures.get("lining_cut_length")
    way = "shorter" if shorter >= NOTHING else "longer"
    cut = f"cut {near(tape, abs(shorter))} {way} than a panel"
    if length is not None:
        cut = f"cut {near(tape, length.value)} long"
    yield Thing(f"linings, {near(tape, width)} wide when hemmed at the sides, {cut}", plan.panels, "one for each panel")


def _weights(plan: Plan) -> Iterator[Thing]:
    """The weights, and cloth for their pockets."""
    if "weights" not in plan.counts:
        return
    tape, each = plan.tape, plan.counts["weights"]
    number = each * plan.panels
    wide, long = (plan.figures[key].value for key in ("weight_pocket", "weight_pocket_length"))
    yield Thing(
        f"weights, {near(tape, plan.spec.weights.size)} across",
        number,
        f"{plan.panels} × {each}" if plan.panels > 1 else "on the panel",
    )
    panel = plan.spec.panel
    left = panel.count * whole(left_depth(plan.spec, plan.offcut), long) * whole(panel.width, wide)
    source = "the offcuts give them" if left >= number else "of any thin cloth"
    yield Thing(f"pieces of cloth for pockets, {near(tape, wide)} × {near(tape, long)}", number, source)


def _pins(plan: Plan) -> Thing:
    """Along the hem, along a top that is folded anew, and what the heading takes; on every panel."""
    rows = [(along(plan.width), "along the hem")]
    if plan.top.refolded and plan.top.needed:
        rows.append((along(plan.width), "along the top"))
    rows.append((HEADING_NEEDS[plan.heading.style].pins(plan, plan.heading), "for the heading"))
    said = " + ".join(f"{number} {where}" for number, where in rows if number)
    each = sum(number for number, _ in rows)
    working = f"{plan.panels} × {f'({said})' if ' + ' in said else said}" if plan.panels > 1 else said
    return Thing("pins, a hand's breadth apart", each * plan.panels, working)


def thing_rows(tape: Tape, things: Sequence[Thing]) -> Iterator[NumberRow]:
    """Things as they are listed."""
    for thing in things:
        shown = enough(tape, thing.amount) if isinstance(thing.amount, Length) else str(thing.amount)
        yield NumberRow(thing.name, shown, thing.working)


def cards_of(drawings: Sequence[Drawing]) -> list[Drawing]:
    """The templates that are glued to card: every card and every cut gauge."""
    return [drawing for drawing in drawings if drawing.family.endswith("card") or drawing.family == "cut gauge"]


def paper_rows(tape: Tape, drawings: Sequence[Drawing], printed: OnPaper | None) -> Iterator[NumberRow]:
    """Card for the templates; paper and what joins it, where the layout is known."""
    if cards := cards_of(drawings):
        area = sum((drawing.length * Fraction(drawing.depth) for drawing in cards), Fraction(0))
        largest = max(cards, key=lambda drawing: drawing.length * Fraction(drawing.depth))
        size = f"{say(tape, Length(largest.length))} × {say(tape, Length(Fraction(largest.depth)))}"
        names = ", ".join(drawing.name for drawing in cards)
        yield NumberRow("card", f"at least {_area(tape, area)}", f"for {names}; the largest is {size}")
    if printed is None:
        return
    yield NumberRow("paper", plural(printed.sheets, "sheet"), "the pages with templates")
    joined = [(drawing, printed.joins.get(drawing.name, 0)) for drawing in drawings]
    glued = sum((Fraction(drawing.depth) * joins for drawing, joins in joined), Fraction(0))
    if glued:
        count = sum(joins for _, joins in joined)
        working = f"{plural(count, 'join')}, each as long as its template is deep"
        yield NumberRow("adhesive tape for the joins", enough(tape, Length(glued)), working)


def _area(tape: Tape, square_mm: Fraction) -> str:
    """An area in whole square inches or square centimetres, rounded up."""
    if tape.units == "inch":
        return f"{ceil(square_mm / inches(1).mm ** 2)} sq in"
    return f"{ceil(square_mm / 100)} cm²"
