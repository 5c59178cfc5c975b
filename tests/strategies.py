"""Generated inputs, in one home: lengths, the ways people write them, and whole specs.

Import what is needed: ``from tests.strategies import specs, workshop_specs``.
"""

from __future__ import annotations

import os
from fractions import Fraction
from typing import Any, cast

from hypothesis import settings
from hypothesis import strategies as st

from templategen.errors import Refusal
from templategen.lengths import Length, Tape, read_length
from templategen.lengths.showing import STEPS, mixed_number
from templategen.spec import FIELDS, Spec, read_spec
from templategen.spec.catalogue import SpecField

# A busy machine is slow now and then, and the first length of all loads Pint. CI tries the same
# examples each time, so that what is red there is red at home; at home they are new each time.
settings.register_profile("no deadline", deadline=None, derandomize=bool(os.environ.get("CI")))
settings.load_profile("no deadline")

MM_PER = {
    "in": Fraction(254, 10),
    "ft": Fraction(3048, 10),
    "yd": Fraction(9144, 10),
    "mm": Fraction(1),
    "cm": Fraction(10),
    "m": Fraction(1000),
}
"""Millimetres in each unit. 1 yd = 0.9144 m: NBS Circular 572, addendum, 1959. Not taken from the program."""

_SPELT = {
    "in": ["in", "in.", "IN", "inch", "inches", "Inches", '"', "″", "”", "''", "′′"],
    "ft": ["ft", "ft.", "FT", "foot", "feet", "'", "′", "’"],
    "yd": ["yd", "yd.", "yds", "yard", "yards"],
    "mm": ["mm", "MM", "mm.", "millimetre", "millimetres", "millimeters"],
    "cm": ["cm", "Cm", "centimetre", "centimeters"],
    "m": ["m", "M", "metre", "metres", "meter"],
}
_VULGAR = {
    Fraction(1, 2): "½", Fraction(1, 3): "⅓", Fraction(2, 3): "⅔", Fraction(1, 4): "¼", Fraction(3, 4): "¾",
    Fraction(1, 8): "⅛", Fraction(3, 8): "⅜", Fraction(5, 8): "⅝", Fraction(7, 8): "⅞", Fraction(1, 10): "⅒",
}
_SPACES = st.sampled_from(["", " ", "  ", "\u00a0", "\u2009", "\u202f"])
_RAISED, _LOWERED = str.maketrans("0123456789", "⁰¹²³⁴⁵⁶⁷⁸⁹"), str.maketrans("0123456789", "₀₁₂₃₄₅₆₇₈₉")


def lengths(most_mm: int = 100_000) -> st.SearchStrategy[Length]:
    """Exact lengths of either sign, most of them on no graduation of any tape."""
    return st.fractions(-most_mm, most_mm, max_denominator=10_000).map(Length)


def tapes() -> st.SearchStrategy[Tape]:
    """Every tape there can be."""
    return st.sampled_from([Tape.of(units, step) for units, steps in STEPS.items() for step in steps])


def fractions_of_an_inch() -> st.SearchStrategy[Fraction]:
    """Proper fractions, some in other than lowest terms before Fraction reduces them."""
    bottoms = st.sampled_from([2, 3, 4, 5, 6, 7, 8, 9, 10, 16, 32, 64])
    return bottoms.flatmap(lambda bottom: st.integers(1, bottom - 1).map(lambda top: Fraction(top, bottom)))


@st.composite
def _mixed_texts(draw: st.DrawFn, whole: int, part: Fraction) -> str:
    """One of the ways to write ``whole`` and a fraction."""
    top, bottom = part.numerator, part.denominator
    plain = f"{top}{draw(st.sampled_from(['/', '⁄']))}{bottom}"
    raised = f"{str(top).translate(_RAISED)}⁄{str(bottom).translate(_LOWERED)}"
    forms = [plain, f"{top} / {bottom}", raised] + ([_VULGAR[part]] if part in _VULGAR else [])
    form = draw(st.sampled_from(forms))
    if not whole:
        return form
    closed = form[0] not in "0123456789"  # 5⅜, but never 53/8
    joins = [" ", "\u00a0", "-", "\u2011", "\u2013", " and ", " & "] + ([""] if closed else [])
    return f"{whole}{draw(st.sampled_from(joins))}{form}"


@st.composite
def _amounts(draw: st.DrawFn) -> tuple[str, Fraction]:
    """A number as people write it, and its value."""
    whole = draw(st.integers(0, 500))
    match draw(st.sampled_from(["whole", "fraction", "decimal", "improper"])):
        case "whole":
            return str(whole), Fraction(whole)
        case "fraction":
            part = draw(fractions_of_an_inch())
            return draw(_mixed_texts(whole, part)), whole + part
        case "improper":
            bottom = draw(st.sampled_from([2, 4, 8, 16, 32]))
            return f"{whole}/{bottom}", Fraction(whole, bottom)
    decimals = draw(st.text("0123456789", min_size=1, max_size=2))
    mark = draw(st.sampled_from([".", ","]))
    return f"{whole}{mark}{decimals}", Fraction(f"{whole}.{decimals}")


@st.composite
def written_lengths(draw: st.DrawFn) -> tuple[str, Length]:
    """A length of one unit as people write it, and what it is."""
    text, amount = draw(_amounts())
    unit = draw(st.sampled_from(sorted(MM_PER)))
    spelt = draw(st.sampled_from(_SPELT[unit]))
    sign = draw(st.sampled_from(["", "", "", "-", "−", "- ", "+"]))
    text = f"{draw(_SPACES)}{sign}{text}{draw(_SPACES)}{spelt}{draw(_SPACES)}"
    length = Length(amount * MM_PER[unit])
    return text, -length if sign[:1] in ("-", "−") and sign else length


@st.composite
def written_compounds(draw: st.DrawFn) -> tuple[str, Length]:
    """A length in feet and inches, yards too, or metres and centimetres; and what it is."""
    pairs = [("ft", "in", 11), ("yd", "ft", 2), ("m", "cm", 99), ("yd", "in", 35)]
    larger, smaller, most = draw(st.sampled_from(pairs))
    first, last = draw(st.integers(0, 90)), draw(st.integers(0, most))
    part = draw(fractions_of_an_inch() | st.just(Fraction(0)))
    tail = draw(_mixed_texts(last, part)) if part else str(last)
    joins = [" ", ", ", " and ", "\u00a0"] + (["-"] if larger == "ft" else [])
    head = f"{first}{draw(_SPACES)}{draw(st.sampled_from(_SPELT[larger]))}"
    text = f"{head}{draw(st.sampled_from(joins))}{tail} {draw(st.sampled_from(_SPELT[smaller]))}"
    return text, Length(first * MM_PER[larger] + (last + part) * MM_PER[smaller])


@st.composite
def _between(draw: st.DrawFn, units: str, least_mm: int, most_mm: int) -> str:
    """A length between two limits as it stands in a file, on a graduation of the usual tape."""
    if units == "metric":
        return f'"{draw(st.integers(least_mm, most_mm))} mm"'
    sixteenth = Fraction(254, 160)
    steps = draw(st.integers(-int(-least_mm // sixteenth), int(most_mm // sixteenth)))
    return f'"{mixed_number(Fraction(steps, 16))} in"'


@st.composite
def workshop_literals(draw: st.DrawFn) -> dict[str, str]:
    """The fields of a spec such as a workroom meets, by path, as they stand in the file.

    The rod passes through the casing and through the loops with room to spare.
    """
    units = draw(st.sampled_from(["inch", "metric"]))

    def some(least: int, most: int) -> str:
        return draw(_between(units, least, most))

    fields = {
        "title": '"Reading room, north window"',
        "units": f'"{units}"',
        "cloth": f'"{draw(st.sampled_from(["light", "medium", "heavy"]))}"',
        "rod.length": some(600, 4000),
        "rod.diameter": some(10, 30),
        "panel.count": str(draw(st.integers(1, 12))),
        "panel.width": some(500, 2500),
        "panel.length": some(1500, 3000),
        "panel.casing": some(60, 120),
        "panel.header": some(0, 40),
        "panel.hem": some(25, 150),
        "panel.turn_under": some(0, 20),
        "drop.hung_by": f'"{draw(st.sampled_from(["casing", "new heading"]))}"',
        "drop.clearance": some(-20, 50),
        "hem.depth": some(25, 150),
        "hem.turn_under": some(5, 25),
        "heading.style": '"back loops"',
    }
    marks = draw(st.integers(1, 6))
    fields["drop.floor_marks"] = f"[{', '.join(some(100, 600) for _ in range(marks))}]"
    if draw(st.booleans()):
        fields["heading.count"] = str(draw(st.integers(2, 25)))
    if draw(st.booleans()):
        fields["heading.edge_inset"] = some(15, 100)
    if draw(st.booleans()):
        fields["heading.loop_width"] = some(10, 40)
    return fields


@st.composite
def wide_literals(draw: st.DrawFn) -> dict[str, str]:
    """The fields of a spec anywhere within the limits, however odd a curtain it makes."""
    fields = draw(workshop_literals())
    units = fields["units"].strip('"')

    def some(least: int, most: int) -> str:
        return draw(_between(units, least, most))

    fields |= {
        "rod.length": some(2, 60_000),
        "rod.diameter": some(2, 150),
        "rod.overlap": some(0, 1000),
        "rod.returns": some(0, 1000),
        "panel.count": str(draw(st.integers(1, 500))),
        "panel.width": some(202, 60_000),
        "panel.length": some(2, 60_000),
        "panel.casing": some(60, 1000),
        "panel.header": some(0, 1000),
        "panel.hem": some(200, 1000),
        "panel.turn_under": some(0, 190),
        "drop.floor_marks": f"[{', '.join(some(-5000, 60_000) for _ in range(draw(st.integers(1, 5))))}]",
        "drop.rod_to_floor": some(2, 60_000),
        "drop.clearance": some(-2000, 10_000),
        "hem.depth": some(200, 1000),
        "hem.turn_under": some(2, 190),
        "heading.count": str(draw(st.integers(2, 2000))),
        "heading.loop_length": some(60, 1000),
    }
    return fields


_OF_A_KIND = ("heading", "hem", "panel.heading", "sides", "weights", "lining")
"""Tables whose fields hang on the kind of heading or hem, or stand beside it."""
_AND = ("drop.to", "drop.follows", "panel.leading_edge", "rod.returns", "rod.overlap", "rod.projection")


@st.composite
def kind_literals(draw: st.DrawFn) -> dict[str, str]:
    """The fields of a spec of any kind of heading and hem that there is, on a panel that came with any heading.

    Whatever a kind has is read off the catalogue, and drawn about what a starting spec has.
    """
    fields = {path: said for path, said in draw(workshop_literals()).items() if not path.startswith(_OF_A_KIND)}
    styles = {path: field for path, field in FIELDS.items() if field.name == "style"}
    chosen = {path: draw(st.sampled_from(field.choices or field.styles)) for path, field in styles.items()}
    fields |= {path: f'"{style}"' for path, style in chosen.items()}
    fields["drop.hung_by"] = draw(st.sampled_from(['"old heading"', '"new heading"']))
    fields["panel.width"] = draw(_between(fields["units"].strip('"'), 900, 2500))
    for path, field in FIELDS.items():
        if path in fields or not (path in _AND or field.table in _OF_A_KIND) or not field.there(chosen):
            continue
        if field.required or not draw(st.integers(0, 2)):
            fields[path] = draw(_usual(field, fields["units"].strip('"')))
    for inner, outer in (("sides.turn_under", "sides.hem"), ("lining.turn_under", "lining.hem")):
        if inner in fields or outer in fields:
            fields[inner] = fields[outer] = fields.get(outer, fields.get(inner, ""))
    if "sides.split" in fields:
        fields.pop("sides.finished_width", None)
    elif "sides.finished_width" in fields:
        fields["sides.finished_width"] = draw(_between(fields["units"].strip('"'), 300, 700))
    return fields


def _usual(field: SpecField, units: str) -> st.SearchStrategy[str]:
    """A value of a field as it stands in the file, about what the starting spec has."""
    if field.kind == "choice":
        return st.sampled_from([f'"{choice}"' for choice in field.choices])
    if field.kind == "switch":
        return st.sampled_from(["true", "false"])
    if field.kind == "count":
        most = 3 if field.table == "sides" else 25
        return st.integers(field.about.least.value, min(field.about.most.value, most)).map(str)
    usual = read_length(field.about.sample(units)).mm
    return _between(units, int(usual // 2), int(usual * 8 // 5) if usual else 60)


def toml_text(fields: dict[str, str]) -> str:
    """A spec's text from its fields by path, in the order of the file."""
    lines: list[str] = []
    table = ""
    for path, field in FIELDS.items():
        if path in fields:
            if field.table != table:
                table = field.table
                lines.append(f"[{table}]")
            lines.append(f"{field.name} = {fields[path]}")
    return "\n".join(lines) + "\n"


def spec_texts() -> st.SearchStrategy[str]:
    """The text of a valid spec, anywhere within the limits."""
    return (workshop_literals() | wide_literals()).map(toml_text)


def specs() -> st.SearchStrategy[Spec]:
    """A valid spec, anywhere within the limits."""
    return spec_texts().map(read_spec)


def kind_specs() -> st.SearchStrategy[Spec]:
    """A spec of any kind of heading and hem."""
    return kind_literals().map(read_without_faults).filter(bool).map(lambda spec: cast(Spec, spec))


def read_without_faults(fields: dict[str, str]) -> Spec | None:
    """The spec; of fields that do not go together those are left out that can be, each as it is blamed.

    None where some that are required do not go with each other.
    """
    while True:
        try:
            return read_spec(toml_text(fields))
        except Refusal as refusal:
            blamed = {fault.field.partition("[")[0] for fault in refusal.faults}
            out = {path for path in blamed & fields.keys() if not FIELDS[path].required}
            if not out:  # what is blamed cannot be left out, or is missing: then all that can be beside it
                tables = {path.rpartition(".")[0] for path in blamed}
                out = {path for path in fields if FIELDS[path].table in tables and not FIELDS[path].required}
                out -= {path for path in fields if path.endswith(".style")}
            if not out:
                return None
            fields = {path: said for path, said in fields.items() if path not in out}


def workshop_specs() -> st.SearchStrategy[Spec]:
    """A spec such as a workroom meets."""
    return workshop_literals().map(toml_text).map(read_spec)


_OF_A_WINDOW = ("panel.count", "panel.width", "panel.length", "drop.floor_marks", "drop.clearance", "hem.depth")


@st.composite
def jobs(draw: st.DrawFn) -> str:
    """The text of a valid job: up to four windows, each with some fields of its own."""
    shared = draw(workshop_literals())
    units = shared["units"]
    keep = draw(st.sampled_from(["floor line", "head height", "finished length", ""]))
    lines = [f'[together]\nkeep = "{keep}"\n'] if keep else []
    for number in range(draw(st.integers(1, 4))):
        other = draw(workshop_literals().filter(lambda fields: fields["units"] == units))
        lines.append(f"[[window]]\nname = {draw(window_names())}\nroom = \"Room {number}\"\n")
        lines += [f"{path} = {other[path]}\n" for path in _OF_A_WINDOW if draw(st.booleans())]
    return toml_text(shared) + "".join(lines)


def window_names() -> st.SearchStrategy[str]:
    """Names of windows as they stand in the file, some of them such as nobody wishes to meet in a file name."""
    names = ["east window", "../../etc/passwd", "a/b\\\\c", "Fenêtre: nord <1>", "window 2", "2", "con.svg", "-rf --x"]
    return st.sampled_from([f'"{name}"' for name in names])


_PRINTED = st.characters(codec="utf-8", exclude_categories=["Cc"], exclude_characters='\\"')


def toml_values() -> st.SearchStrategy[Any]:
    """Any value that TOML can hold, as the file has it."""
    leaves = (
        st.booleans().map(lambda value: str(value).lower())
        | st.integers(-(10**20), 10**20).map(str)
        | st.floats().map(str)
        | st.sampled_from(['"54 in"', '"−3 in"', '"medium"', "1979-05-27", "[]", "1e400", "0x1F", '""'])
        | st.text(_PRINTED, max_size=30).map(lambda text: f'"{text}"')
    )
    return st.recursive(
        leaves,
        lambda inner: st.lists(inner, max_size=3).map(lambda items: f"[{', '.join(items)}]")
        | st.dictionaries(st.sampled_from(["a", "width", "rod"]), inner, max_size=2).map(
            lambda table: "{" + ", ".join(f"{name} = {value}" for name, value in table.items()) + "}"
        ),
        max_leaves=4,
    )


@st.composite
def toml_documents(draw: st.DrawFn) -> str:
    """A valid spec's text after somebody changed, lost, doubled and misnamed parts of it."""
    fields = draw(workshop_literals())
    for path in draw(st.lists(st.sampled_from(sorted(FIELDS)), max_size=4)):
        fields[path] = draw(toml_values())
    for path in draw(st.lists(st.sampled_from(sorted(fields)), max_size=3)):
        fields.pop(path, None)
    text = toml_text(fields)
    slips = [("", ""), ("width", "widht"), ("[rod]", "[rods]"), ("[hem]", "[[hem]]"), ("[panel]", ""),
             ("=", ":"), ("depth", "depth.deep")]
    return text.replace(*draw(st.sampled_from(slips)))

