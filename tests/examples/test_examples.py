"""The examples are what the program makes today."""

from __future__ import annotations

from io import BytesIO

import pikepdf
import pytest
from PIL import Image, ImageChops, ImageStat

from .making import EXAMPLES, NAMES, make_example

AGAIN = "python -m tests.examples makes them again; look at the pictures before they are committed"


@pytest.mark.parametrize("name", NAMES)
def test_the_example_is_made_again_from_its_spec(name: str) -> None:
    """Streams are compared uncompressed, pictures with the tolerance of another build of the same engine."""
    pdf, pages = make_example(name)
    kept = {path.name: path for path in (EXAMPLES / name).iterdir() if path.name != "spec.toml"}
    assert {"kit.pdf", *pages} == set(kept), AGAIN
    assert _content(pdf) == _content(kept["kit.pdf"].read_bytes()), f"{name}/kit.pdf: {AGAIN}"
    for file, page in pages.items():
        with Image.open(kept[file]) as theirs:
            assert page.size == theirs.size, f"{name}/{file}: {AGAIN}"
            off = ImageStat.Stat(ImageChops.difference(page.convert("L"), theirs.convert("L"))).mean[0]
        assert off < 0.5, f"{name}/{file}: {AGAIN}"


def _content(pdf: bytes) -> list[bytes]:
    """Every page's drawing and every attachment, uncompressed."""
    with pikepdf.open(BytesIO(pdf)) as document:
        pages = [b"".join(stream.read_bytes() for stream in _streams(page)) for page in document.pages]
        return [*pages, *(document.attachments[name].get_file().read_bytes() for name in document.attachments)]


def _streams(page: pikepdf.Page) -> list[pikepdf.Object]:
    contents = page.Contents
    return list(contents) if isinstance(contents, pikepdf.Array) else [contents]
