"""The verdict on a file: all findings, and whether it will print true."""

from __future__ import annotations

from pathlib import Path

from .findings import Finding, SheetRecord, Verdict
from .looking import look_at
from .sheets import Sheet
from .size_findings import off_by, paper_findings, size_findings
from .whole_findings import file_findings, whole_findings


def judge(path: Path) -> Verdict:
    """Whether the kit at ``path`` will still print true, from the file alone, read in this process.

    Raises Refusal where the file cannot be judged, and OSError where it cannot be read.
    """
    file, looked, unreadable = look_at(path)
    placed = [(each, sheet) for each in looked for sheet in each.sheets]
    found: list[Finding] = [
        *size_findings(placed),
        *paper_findings(looked),
        *whole_findings(looked, unreadable),
        *file_findings(file, looked),
    ]
    found.sort(key=lambda finding: finding.level != "wrong")
    worst = max((sheet for _, sheet in placed), key=off_by)
    across, along = worst.ratios
    within = next(each.within for each, sheet in placed if sheet is worst)
    return Verdict(
        not any(finding.level == "wrong" for finding in found),
        across,
        along,
        within,
        file.pages,
        tuple(found),
        tuple(_record(sheet) for _, sheet in placed),
    )


def _record(sheet: Sheet) -> SheetRecord:
    head = sheet.head
    return SheetRecord(sheet.page, head.number if head else None, head.of if head else None, *sheet.ratios)
