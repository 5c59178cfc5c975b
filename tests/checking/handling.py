"""What happens to a kit on its way to paper: the programs that print queues, viewers and merges run, by hand."""

from __future__ import annotations

import glob
import io
import math
import os
import shutil
import subprocess
import tempfile
from collections.abc import Callable, Sequence
from pathlib import Path

import pikepdf
import pypdf
import pypdfium2
from PIL import Image
from pypdf.generic import FloatObject, NameObject, RectangleObject

PPD = """*PPD-Adobe: "4.3"
*FormatVersion: "4.3"
*FileVersion: "1.0"
*LanguageVersion: English
*LanguageEncoding: ISOLatin1
*PCFileName: "LIBRARY.PPD"
*Manufacturer: "Library"
*Product: "(Library)"
*ModelName: "Library"
*ShortNickName: "Library"
*NickName: "Library"
*PSVersion: "(3010.000) 0"
*LanguageLevel: "3"
*ColorDevice: False
*cupsFilter: "application/vnd.cups-pdf 0 -"
*OpenUI *PageSize/Media Size: PickOne
*OrderDependency: 10 AnySetup *PageSize
*DefaultPageSize: A4
*PageSize A4/A4: ""
*PageSize Letter/Letter: ""
*CloseUI: *PageSize
*OpenUI *PageRegion/Media Size: PickOne
*OrderDependency: 10 AnySetup *PageRegion
*DefaultPageRegion: A4
*PageRegion A4/A4: ""
*PageRegion Letter/Letter: ""
*CloseUI: *PageRegion
*DefaultImageableArea: A4
*ImageableArea A4/A4: "12 12 583 830"
*ImageableArea Letter/Letter: "12 12 600 780"
*DefaultPaperDimension: A4
*PaperDimension A4/A4: "595 842"
*PaperDimension Letter/Letter: "612 792"
"""
"""A printer with margins of 12 points, described as Adobe's PPD specification 4.3 has it."""


def _run(command: Sequence[object], pdf: bytes, env: dict[str, str] | None = None) -> bytes:
    """Runs ``command`` in a folder with the file as in.pdf; its out.pdf, or else its standard output."""
    with tempfile.TemporaryDirectory() as folder:
        home = Path(folder)
        (home / "in.pdf").write_bytes(pdf)
        (home / "printer.ppd").write_text(PPD)
        done = subprocess.run(
            [str(word) for word in command],
            cwd=home,
            env=os.environ | (env or {}),
            capture_output=True,
            timeout=60,
            check=False,
        )
        out = home / "out.pdf"
        made = out.read_bytes() if out.exists() else done.stdout
        assert made.startswith(b"%PDF"), (command, done.returncode, done.stderr[-400:])
        return made


def _pdftopdf() -> str:
    """The filter of cups-filters that every job to a print queue goes through."""
    places = [*glob.glob("/usr/lib*/cups/filter/pdftopdf"), *glob.glob("/usr/libexec/cups/filter/pdftopdf")]
    found = next(iter(places), None) or shutil.which("pdftopdf")
    assert found, "these tests need cups-filters' pdftopdf: install cups-filters-core-drivers, or cups-filters"
    return found


def queued(pdf: bytes, options: str = "", copies: int = 1, ppd: bool = False) -> bytes:
    """Through a print queue's filter, as cupsd runs it: job, user, title, copies, options, file."""
    env = {"PPD": "printer.ppd"} if ppd else {}
    return _run([_pdftopdf(), "1", "reader", "kit", copies, options, "in.pdf"], pdf, env)


def ghostscript(pdf: bytes, *options: str, device: str = "pdfwrite") -> bytes:
    """Through Ghostscript."""
    return _run(["gs", "-q", "-dNOPAUSE", "-dBATCH", f"-sDEVICE={device}", *options, "-o", "out.pdf", "in.pdf"], pdf)


def cairo(pdf: bytes, *options: str) -> bytes:
    """Through poppler's pdftocairo."""
    return _run(["pdftocairo", "-pdf", *options, "in.pdf", "out.pdf"], pdf)


def postscript(pdf: bytes) -> bytes:
    """To PostScript with poppler, and back with Ghostscript: the way of older queues."""
    return _run(["sh", "-c", "pdftops in.pdf out.ps && gs -q -dBATCH -sDEVICE=pdfwrite -o out.pdf out.ps"], pdf)


def qpdf(pdf: bytes, *options: str) -> bytes:
    """Through qpdf."""
    return _run(["qpdf", *options, "in.pdf", "out.pdf"], pdf)


def pikepdf_saved(
    pdf: bytes, change: Callable[[pikepdf.Pdf], object] = lambda opened: None, **options: object
) -> bytes:
    """Opened, changed and saved with pikepdf."""
    out = io.BytesIO()
    with pikepdf.open(io.BytesIO(pdf)) as opened:
        change(opened)
        opened.save(out, **options)
    return out.getvalue()


def pdfium_saved(pdf: bytes) -> bytes:
    """What a browser's "save as" writes."""
    out = io.BytesIO()
    with pypdfium2.PdfDocument(pdf) as opened:
        opened.save(out)
    return out.getvalue()


def pdfium_up(pdf: bytes, columns: int, rows: int, size: tuple[float, float]) -> bytes:
    """Several pages to one, by PDFium; ``size`` in points."""
    out = io.BytesIO()
    with pypdfium2.PdfDocument(pdf) as opened:
        raw = pypdfium2.raw.FPDF_ImportNPagesToOne(opened, *size, columns, rows)
        pypdfium2.PdfDocument(raw).save(out)
    return out.getvalue()


def pages(
    pdf: bytes, change: Callable[[pypdf.PageObject], object] = lambda page: None, *, only: Sequence[int] = ()
) -> bytes:
    """Every page, or those in ``only``, changed and written with pypdf."""
    writer = pypdf.PdfWriter()
    reader = pypdf.PdfReader(io.BytesIO(pdf))
    for index in only or range(len(reader.pages)):
        change(writer.add_page(reader.pages[index]))
    return _written(writer)


def appended(*pdfs: bytes) -> bytes:
    """One file after the other, with pypdf."""
    writer = pypdf.PdfWriter()
    for pdf in pdfs:
        writer.append(io.BytesIO(pdf))
    return _written(writer)


def encrypted(pdf: bytes, password: str, **options: object) -> bytes:
    """Locked with pikepdf; the owner's password is another."""
    return pikepdf_saved(pdf, encryption=pikepdf.Encryption(user=password, owner="librarian", **options))


def cropped(page: pypdf.PageObject, points: float) -> None:
    """The visible box made smaller on every side."""
    box = page.mediabox
    page.cropbox = RectangleObject(
        (float(box.left) + points, float(box.bottom) + points, float(box.right) - points, float(box.top) - points)
    )


def transformed(page: pypdf.PageObject, *matrix: float) -> None:
    """What is drawn put through a matrix; the page's boxes stay."""
    page.add_transformation(matrix)


def rotated(page: pypdf.PageObject, degrees: float) -> None:
    """What is drawn turned about the lower left corner, and moved so that it stays on the page."""
    cos, sin = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    page.add_transformation((cos, sin, -sin, cos, 9, -9))


def user_unit(page: pypdf.PageObject, unit: float) -> None:
    page[NameObject("/UserUnit")] = FloatObject(unit)


def rasterised(pdf: bytes, dpi: int, mode: str = "L", quality: int = 85) -> bytes:
    """Every page a picture drawn by poppler, put into a PDF by Pillow: greys, RGB by JPEG, or two tones."""
    with tempfile.TemporaryDirectory() as folder:
        (Path(folder) / "in.pdf").write_bytes(pdf)
        command = ["pdftoppm", "-r", str(dpi), "-gray", "in.pdf", "page"]
        subprocess.run(command, cwd=folder, check=True, capture_output=True, timeout=60)
        drawn = [Image.open(path).convert(mode) for path in sorted(Path(folder).glob("page*.pgm"))]
    out = io.BytesIO()
    pressed = {"quality": quality} if mode == "RGB" else {}
    drawn[0].save(out, "PDF", save_all=True, append_images=drawn[1:], resolution=dpi, **pressed)
    return out.getvalue()


def svgs(pdf: bytes, count: int) -> list[str]:
    """The first ``count`` pages as SVG, by poppler."""
    made = []
    with tempfile.TemporaryDirectory() as folder:
        (Path(folder) / "in.pdf").write_bytes(pdf)
        for number in range(1, count + 1):
            command = ["pdftocairo", "-svg", "-f", str(number), "-l", str(number), "in.pdf", "page.svg"]
            subprocess.run(command, cwd=folder, check=True, capture_output=True, timeout=60)
            made.append((Path(folder) / "page.svg").read_text())
    return made


def _written(writer: pypdf.PdfWriter) -> bytes:
    out = io.BytesIO()
    writer.write(out)
    return out.getvalue()
