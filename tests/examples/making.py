"""What stands under out_examples/ beside each spec: its kit, and pictures of the pages."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path

import pypdfium2
from PIL import Image

from templategen import kit_files
from templategen.planning import plan_for
from templategen.spec import read_spec_or_job

EXAMPLES = Path(__file__).parents[2] / "out_examples"
NAMES = ("east-window", "childrens-corner", "local-history-room", "reading-rooms")
DPI = 80
GREYS = 8


def make_example(name: str) -> tuple[bytes, dict[str, Image.Image]]:
    """kit.pdf of the example called ``name``; and page-1.png, page-2.png ..., of few greys, drawn by PDFium."""
    _, files = kit_files(plan_for(read_spec_or_job((EXAMPLES / name / "spec.toml").read_text(encoding="utf-8"))))
    pdf = files["kit.pdf"]
    with pypdfium2.PdfDocument(pdf) as document:
        pages = [page.render(scale=DPI / 72, grayscale=True).to_pil() for page in document]
    return pdf, {f"page-{n}.png": page.quantize(GREYS) for n, page in enumerate(pages, 1)}


def as_png(page: Image.Image) -> bytes:
    """A picture as a file that is as small as can be."""
    picture = BytesIO()
    page.save(picture, "PNG", optimize=True)
    return picture.getvalue()
