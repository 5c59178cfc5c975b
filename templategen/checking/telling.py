"""A verdict in words, and as plain data."""

from __future__ import annotations

from textwrap import fill
from typing import Any

from ..lengths.counting import plural
from ..misprints import per_cent
from .findings import Verdict

_WIDTH = 96


def tell_verdict(verdict: Verdict, name: str) -> str:
    """The verdict in a sentence, the two ratios, then every finding with what to do."""
    if verdict.true:
        count = len(verdict.sheets)
        first = f"{name} will print true: {plural(count, 'sheet')}, bars as long as they say."
        if any(finding.code == "corrected" for finding in verdict.findings):
            first = f"{name} will print true on the printer it is corrected for: {count} sheets."
    else:
        wrong = next(finding for finding in verdict.findings if finding.level == "wrong")
        first = f"{name} will not print true: {wrong.what}."
    ratios = " and ".join(
        f"{per_cent(ratio)} {way}"
        for way, ratio in (("across", verdict.across), ("along", verdict.along))
        if ratio is not None
    )
    within = f", give or take {per_cent(verdict.within)}" if verdict.within else ""
    lines = [first, f"The bars measure {ratios} of what they say{within}."]
    told = ""
    for finding in verdict.findings:
        # What is to be done about one after the other is said once.
        text = finding.said if finding.do and told.startswith(finding.do) else finding.text
        told = finding.do or told
        lines.append(fill(f"{finding.level}: {text}", _WIDTH, subsequent_indent="  ", break_long_words=False))
    return "\n".join(lines)


def verdict_record(verdict: Verdict) -> dict[str, Any]:
    """The verdict as plain data; ratios to four decimals."""
    return {
        "true": verdict.true,
        "across": _rounded(verdict.across),
        "along": _rounded(verdict.along),
        "within": round(verdict.within, 5),
        "pages": verdict.pages,
        "findings": [
            {
                "code": finding.code,
                "level": finding.level,
                "what": finding.what,
                "text": finding.text,
                "pages": list(finding.pages),
            }
            for finding in verdict.findings
        ],
        "sheets": [
            {
                "page": sheet.page,
                "number": sheet.number,
                "of": sheet.of,
                "across": _rounded(sheet.across),
                "along": _rounded(sheet.along),
            }
            for sheet in verdict.sheets
        ],
    }


def _rounded(ratio: float | None) -> float | None:
    return None if ratio is None else round(ratio, 4)
