"""How large a unit each page says it has, which PDFium does not tell: pypdf does, where the file can hold any."""

from __future__ import annotations

from pathlib import Path


def user_units(path: Path) -> dict[int, float]:
    """Pages, counted from 0, whose unit is not 1/72 in, with how many of those it is (ISO 32000-1, table 30)."""
    content = path.read_bytes()
    # The name stands in the open, unless pages are packed into streams of objects.
    if b"UserUnit" not in content and b"ObjStm" not in content:
        return {}
    return _told_by_pypdf(path)


def _told_by_pypdf(path: Path) -> dict[int, float]:
    import logging

    from pypdf import PdfReader

    logging.getLogger("pypdf").setLevel(logging.CRITICAL)
    units: dict[int, float] = {}
    try:
        for index, page in enumerate(PdfReader(path).pages):
            unit = float(page.get("/UserUnit", 1))
            if unit != 1 and 0 < unit < 1e6:
                units[index] = unit
    except Exception:  # a damaged file, whatever pypdf makes of it: what was found so far stands
        return units
    return units
