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


def make_example(name: str) -> dict[str, bytes]:
    """kit.pdf and page-1.png, page-2.png ... of the example called ``name``."""
    _, files = kit_files(plan_for(read_spec_or_job((EXAMPLES / name / "spec.toml").read_text(encoding="utf-8"))))
    pdf = files["kit.pdf"]
    return {"kit.pdf": pdf} | {f"page-{n}.png": picture for n, picture in enumerate(_pictures(pdf), 1)}


def _pictures(pdf: bytes) -> list[bytes]:
    """Each page as a small PNG, drawn by PDFium."""
    with pypdfium2.PdfDocument(pdf) as document:
        pages = [page.render(scale=DPI / 72, grayscale=True).to_pil() for page in document]
    pictures = []
    for page in pages:
        picture = BytesIO()
        page.quantize(GREYS).save(picture, "PNG", optimize=True)
        pictures.append(picture.getvalue())
    return pictures


def darkness(picture: bytes) -> Image.Image:
    """A picture as greys, to be compared point by point."""
    return Image.open(BytesIO(picture)).convert("L")
