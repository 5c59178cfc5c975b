"""The catalogue: papers in families, each family with where its sizes come from.

A sheet's size stands in its PWG 5101.1 name, as that standard has it, and is
read from there: there is no second table that could disagree with the names.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

from ..lengths import MM_PER_INCH
from .paper import Paper, roll_of


@dataclass(frozen=True, slots=True)
class Family:
    """Papers that come from one place."""

    title: str
    said: str
    """What of it there is, as a message says it: "a0 to a6"; "" where another family says it as well."""
    source: str
    papers: tuple[Paper, ...]
    note: str = ""
    """What else is to be said of it, in whole sentences."""


def _sheet(name: str, pwg: str) -> Paper:
    size, unit = pwg.rpartition("_")[2][:-2], pwg[-2:]
    one = MM_PER_INCH if unit == "in" else Fraction(1)
    wide, high = (Fraction(side) * one for side in size.split("x"))
    return Paper(name, wide, high, pwg)


def _sheets(pairs: Mapping[str, str]) -> tuple[Paper, ...]:
    return tuple(_sheet(name, pwg) for name, pwg in pairs.items())


_LETTER, _A4 = _sheet("letter", "na_letter_8.5x11in"), _sheet("a4", "iso_a4_210x297mm")
# What letter and A4 have in common when one lies on the other: a page of this
# size prints whole, and at true size, on either.
EITHER = Paper(
    "letter-or-a4",
    min(_LETTER.width, _A4.width),
    min(_LETTER.height, _A4.height),
    f"choice_{_A4.pwg}_{_LETTER.pwg}",
)

_ISO_A = Family(
    "ISO A", "4a0 to a6",
    "ISO 216:2007, trimmed sizes, A series; 2a0 as PWG 5101.1 has it; 4a0 is twice that, and in neither",
    _sheets({
        "4a0": "custom_4a0_1682x2378mm", "2a0": "iso_2a0_1189x1682mm", "a0": "iso_a0_841x1189mm",
        "a1": "iso_a1_594x841mm", "a2": "iso_a2_420x594mm", "a3": "iso_a3_297x420mm", "a4": "iso_a4_210x297mm",
        "a5": "iso_a5_148x210mm", "a6": "iso_a6_105x148mm",
    }),
)  # fmt: skip
_ISO_B = Family(
    "ISO B", "b0-iso to b6-iso", "ISO 216:2007, trimmed sizes, B series",
    _sheets({
        "b0-iso": "iso_b0_1000x1414mm", "b1-iso": "iso_b1_707x1000mm", "b2-iso": "iso_b2_500x707mm",
        "b3-iso": "iso_b3_353x500mm", "b4-iso": "iso_b4_250x353mm", "b5-iso": "iso_b5_176x250mm",
        "b6-iso": "iso_b6_125x176mm",
    }),
    "B4 alone is not taken: it is this paper in one country and the next in another.",
)  # fmt: skip
_JIS_B = Family(
    "JIS B", "b0-jis to b6-jis", "JIS P 0138, B series",
    _sheets({
        "b0-jis": "jis_b0_1030x1456mm", "b1-jis": "jis_b1_728x1030mm", "b2-jis": "jis_b2_515x728mm",
        "b3-jis": "jis_b3_364x515mm", "b4-jis": "jis_b4_257x364mm", "b5-jis": "jis_b5_182x257mm",
        "b6-jis": "jis_b6_128x182mm",
    }),
)  # fmt: skip
_OFFICE = Family(
    "North American office", "letter, legal, tabloid and others",
    "letter and tabloid are sizes A and B of ASME Y14.1; the others as PWG 5101.1 has them",
    _sheets({
        "letter": "na_letter_8.5x11in", "legal": "na_legal_8.5x14in", "tabloid": "na_ledger_11x17in",
        "executive": "na_executive_7.25x10.5in", "statement": "na_invoice_5.5x8.5in",
        "government-letter": "na_govt-letter_8x10in", "government-legal": "na_govt-legal_8x13in",
        "foolscap": "na_foolscap_8.5x13in", "oficio": "na_oficio_8.5x13.4in", "super-b": "na_super-b_13x19in",
    }),
    "Tables differ on the government sizes: some have 8 × 10.5 and 8.5 × 13 in. Measure the sheet.",
)  # fmt: skip
_ANSI = Family(
    "American drawing sheets", "ansi-a to ansi-e", "ASME Y14.1, sizes A to E",
    _sheets({"ansi-c": "na_c_17x22in", "ansi-d": "na_d_22x34in", "ansi-e": "na_e_34x44in"}),
    "Sizes A and B are letter and tabloid.",
)  # fmt: skip
_ARCH = Family(
    "American architectural sheets", "arch-a to arch-e1",
    "as PWG 5101.1 has them; e1 is a name in common practice, no source, for its wide format",
    _sheets({
        "arch-a": "na_arch-a_9x12in", "arch-b": "na_arch-b_12x18in", "arch-c": "na_arch-c_18x24in",
        "arch-d": "na_arch-d_24x36in", "arch-e": "na_arch-e_36x48in", "arch-e1": "na_wide-format_30x42in",
    }),
)  # fmt: skip
_BOTH = Family(
    "One page for two sheets", "letter-or-a4", "geometry: what letter and a4 have in common", (EITHER,),
    "It prints whole and at true size on either. On letter 5.9 mm (0.23 in) of the width is left over, "
    "on a4 17.6 mm (0.69 in) of the height.",
)  # fmt: skip
_INCH_ROLLS = Family(
    "Rolls by the inch", "a roll by its width (roll-24in, roll-610mm)",
    "11, 28, 34 and 40 in are the rolls G, H, J and K of ASME Y14.1; the others are common practice, no source",
    tuple(roll_of(wide * MM_PER_INCH) for wide in (11, 17, 18, 24, 28, 30, 34, 36, 40, 42, 44, 60)),
    "Any other width will do: write roll, the width and its unit.",
)
_METRIC_ROLLS = Family(
    "Rolls by the millimetre", "",
    "297, 420, 594 and 841 mm are sides of ISO 216; the others are common practice, no source",
    tuple(roll_of(Fraction(wide)) for wide in (297, 420, 594, 610, 841, 914, 1067)),
)  # fmt: skip

FAMILIES: tuple[Family, ...] = (
    _OFFICE, _ISO_A, _BOTH, _ISO_B, _JIS_B, _ANSI, _ARCH, _INCH_ROLLS, _METRIC_ROLLS,
)  # fmt: skip
CATALOGUE: Mapping[str, Paper] = MappingProxyType(
    {paper.name: paper for family in FAMILIES for paper in family.papers}
)
"""Every paper by its name; no two sheets in it are alike."""

ALSO_CALLED: Mapping[str, str] = MappingProxyType({
    "us-letter": "letter", "ansi-a": "letter", "us-legal": "legal", "ansi-b": "tabloid", "ledger": "tabloid",
    "invoice": "statement", "govt-letter": "government-letter", "govt-legal": "government-legal",
    "wide-format": "arch-e1", "a4-or-letter": "letter-or-a4", "super-a3": "super-b", "a3+": "super-b",
})  # fmt: skip
"""Other names in use. Super A3 and A3+ for 13 x 19 in: common practice, no source.
Ledger is the same sheet as tabloid, and lies upright, in PWG 5101.1."""
BY_PWG: Mapping[str, Paper] = MappingProxyType(
    {paper.pwg: paper for paper in CATALOGUE.values() if paper.pwg}
    | {f"choice_{_LETTER.pwg}_{_A4.pwg}": EITHER}
)
"""Every paper by its PWG 5101.1 name; the choice between letter and A4 in either order."""
