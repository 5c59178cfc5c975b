"""Every kit opened by four other readers, none of which may have anything to say against it."""

from __future__ import annotations

import hashlib
import json
import os
import subprocess
import sys
import warnings
from collections import Counter
from collections.abc import Iterator
from io import BytesIO
from pathlib import Path

import pikepdf
import pypdf
import pypdfium2
import pytest

from templategen import kit_files, make_plan, read_spec
from templategen.drawing import Text
from templategen.layout import Kit, Sheet
from templategen.remaking import carried_by

from .kits import PANELS, Panel, made

with warnings.catch_warnings():
    warnings.simplefilter("ignore")  # what SWIG's own types say of themselves on import
    import pymupdf

_BOXES = ("/MediaBox", "/CropBox", "/BleedBox", "/TrimBox", "/ArtBox")


@pytest.fixture(scope="module", params=PANELS.values(), ids=PANELS)
def panel(request: pytest.FixtureRequest) -> Panel:
    chosen: Panel = request.param
    return chosen


@pytest.fixture(scope="module")
def file(panel: Panel, tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("kit") / "kit.pdf"
    path.write_bytes(made(panel).files["kit.pdf"])
    return path


def _said(*command: object) -> tuple[int, str, str]:
    done = subprocess.run([str(word) for word in command], capture_output=True, timeout=60)
    return done.returncode, done.stdout.decode(), done.stderr.decode()


def test_qpdf_finds_no_fault(file: Path) -> None:
    status, said, complained = _said("qpdf", "--check", file)
    assert (status, complained) == (0, "")
    assert "No syntax or stream encoding errors found" in said
    with pikepdf.open(file) as opened:
        assert opened.check_pdf_syntax() == []


def test_pdfium_draws_every_page(file: Path, panel: Panel) -> None:
    document = pypdfium2.PdfDocument(file)
    assert len(document) == len(made(panel).kit.sheets)
    for page in document:
        drawn = page.render(scale=0.25, grayscale=True).to_numpy()
        assert drawn.min() < 255
    document.close()


def test_poppler_draws_every_page_without_a_word(file: Path, panel: Panel) -> None:
    status, said, complained = _said("pdfinfo", file)
    assert (status, complained) == (0, "")
    assert f"Pages:           {len(made(panel).kit.sheets)}\n" in said
    assert "PDF version:     1.7\n" in said
    status, _, complained = _said("pdftoppm", "-r", 18, "-gray", file, file.with_suffix(""))
    assert (status, complained) == (0, "")


def test_mupdf_draws_every_page_without_a_warning(file: Path) -> None:
    pymupdf.TOOLS.reset_mupdf_warnings()
    with pymupdf.open(file) as document:
        assert not document.is_repaired
        for page in document:
            page.get_pixmap(dpi=18)
    assert pymupdf.TOOLS.mupdf_warnings() == ""


def test_the_file_asks_for_actual_size_and_one_side(file: Path) -> None:
    with pikepdf.open(file) as opened:
        assert opened.pdf_version == "1.7"
        asked = opened.Root.ViewerPreferences
        assert asked.PrintScaling == "/None"
        assert asked.Duplex == "/Simplex"
        assert "/Enforce" not in asked
        assert all("/UserUnit" not in page for page in opened.pages)


def test_every_box_of_every_page_is_the_paper(file: Path, panel: Panel) -> None:
    paper = made(panel).kit.paper
    size = float(paper.width) / 25.4 * 72, float(paper.height) / 25.4 * 72
    with pikepdf.open(file) as opened:
        for page in opened.pages:
            assert page.get("/Rotate", 0) == 0
            for name in _BOXES:
                if name in page or name == "/MediaBox":
                    box = [float(edge) for edge in page[name]]
                    assert box[:2] == [0, 0]
                    assert box[2:] == pytest.approx(size, abs=0.001)


def test_every_font_is_embedded(file: Path) -> None:
    with pikepdf.open(file) as opened:
        fonts = [font for page in opened.pages for font in page.Resources.Font.values()]
        assert fonts
        for font in fonts:
            real = font.DescendantFonts[0] if "/DescendantFonts" in font else font
            assert "/FontFile2" in real.FontDescriptor


def test_the_file_says_what_it_is(file: Path, panel: Panel) -> None:
    kit = made(panel).kit
    with pikepdf.open(file) as opened:
        assert str(opened.Root.Lang).startswith("en")
        assert str(opened.docinfo.Title) == kit.title == read_spec(made(panel).source).title
        with opened.open_outline() as outline:
            entries = [item.title.lower() for item in outline.root]
    assert entries[:2] == ["print check", "work order"]
    assert sorted(entries) == sorted(["print check", "work order", *(drawing.name for drawing in kit.drawings)])


def test_the_file_carries_its_spec(file: Path, panel: Panel) -> None:
    assert pypdf.PdfReader(file).attachments["spec.toml"] == [made(panel).source.encode()]
    with pikepdf.open(file) as opened:
        assert opened.attachments["spec.toml"].get_file().read_bytes() == made(panel).source.encode()


def test_a_kit_made_again_from_its_own_file_is_the_same(file: Path, panel: Panel) -> None:
    source, options = carried_by(file)
    _, files = kit_files(make_plan(read_spec(source)), options)
    assert files == made(panel).files


def _texts(sheet: Sheet) -> Iterator[str]:
    for items in (sheet.items, *(placed.items for placed in sheet.placed)):
        yield from (item.text for item in items if isinstance(item, Text))


def _bare(text: str) -> str:
    """Without spaces, and a fraction's slash as people type it."""
    return "".join(text.split()).replace("⁄", "/")


def _missing(kit: Kit, pages: list[str]) -> list[str]:
    """Texts of the kit that cannot be found on their page, and pages with letters too few or too many."""
    missing = []
    for sheet, page in zip(kit.sheets, pages, strict=True):
        said = _bare(page)
        missing += [text for text in _texts(sheet) if _bare(text) not in said]
        if Counter(said) != Counter(_bare("".join(_texts(sheet)))):
            missing.append(f"page {sheet.number}: {Counter(said) - Counter(_bare(''.join(_texts(sheet))))}")
    return missing


def test_every_word_and_every_fraction_can_be_read_out_of_the_file(file: Path, panel: Panel) -> None:
    status, said, complained = _said("pdftotext", "-raw", "-enc", "UTF-8", file, "-")
    assert (status, complained) == (0, "")
    assert _missing(made(panel).kit, said.split("\f")[:-1]) == []


_AGAIN = """
import hashlib, json, sys
from templategen import kit_files, make_plan, read_spec
_, files = kit_files(make_plan(read_spec(sys.stdin.read())))
print(json.dumps({name: hashlib.sha256(content).hexdigest() for name, content in files.items()}))
"""


@pytest.mark.parametrize("seed", ["1", "4242"])
def test_another_process_makes_the_same_bytes(seed: str) -> None:
    kit = made(PANELS["54 in, 8 loops, letter"])
    done = subprocess.run(
        [sys.executable, "-c", _AGAIN],
        input=kit.source.encode(),
        env=os.environ | {"PYTHONHASHSEED": seed},
        capture_output=True,
        check=True,
        timeout=60,
    )
    assert json.loads(done.stdout) == {
        name: hashlib.sha256(content).hexdigest() for name, content in kit.files.items()
    }


def test_a_damaged_file_is_noticed_by_the_same_readers(file: Path, tmp_path: Path) -> None:
    """The judges must be able to find fault."""
    damaged = tmp_path / "damaged.pdf"
    content = file.read_bytes()
    damaged.write_bytes(content[: len(content) // 2])
    status, _, complained = _said("qpdf", "--check", damaged)
    assert status != 0 or complained
    with pytest.raises(pikepdf.PdfError), pikepdf.open(BytesIO(content[:200])):
        pass
