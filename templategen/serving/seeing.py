"""Sheets seen: pages of a PDF as pictures, drawn by PDFium, so that what is shown is what is printed."""

from __future__ import annotations

import io
from typing import Any

import pypdfium2


def pngs(file: bytes, width: int) -> list[bytes]:
    """Every page as PNG, ``width`` pixels wide."""
    document = pypdfium2.PdfDocument(file)
    try:
        return [_drawn(page, width) for page in document]
    finally:
        document.close()


def png(file: bytes, index: int, width: int) -> bytes:
    """The page at ``index``, counted from 0, as PNG."""
    document = pypdfium2.PdfDocument(file)
    try:
        return _drawn(document[index], width)
    finally:
        document.close()


def _drawn(page: Any, width: int) -> bytes:
    bitmap = page.render(scale=width / page.get_width(), grayscale=True)
    packed = io.BytesIO()
    bitmap.to_pil().save(packed, "PNG", optimize=False)
    bitmap.close()
    page.close()
    return packed.getvalue()
