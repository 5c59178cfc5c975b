"""The examples are what the program makes today."""

from __future__ import annotations

from io import BytesIO

import pikepdf
import pytest
from PIL import ImageChops, ImageStat

from .making import EXAMPLES, NAMES, darkness, make_example

AGAIN = "python -m tests.examples makes them again; look at the pictures before they are committed"


@pytest.mark.parametrize("name", NAMES)
def test_the_example_is_made_again_from_its_spec(name: str) -> None:
    """Streams are compared uncompressed, pictures with the tolerance of another build of the same engine."""
    made = make_example(name)
    kept = {path.name: path.read_bytes() for path in (EXAMPLES / name).iterdir() if path.name != "spec.toml"}
    assert set(made) == set(kept), AGAIN
    for file, content in made.items():
        if file.endswith(".pdf"):
            assert _content(content) == _content(kept[file]), f"{name}/{file}: {AGAIN}"
        else:
            ours, theirs = darkness(content), darkness(kept[file])
            assert ours.size == theirs.size, f"{name}/{file}: {AGAIN}"
            off = ImageStat.Stat(ImageChops.difference(ours, theirs)).mean[0]
            assert off < 0.5, f"{name}/{file}: {AGAIN}"


def _content(pdf: bytes) -> list[bytes]:
    """Every page's drawing and every attachment, uncompressed."""
    with pikepdf.open(BytesIO(pdf)) as document:
        pages = [b"".join(stream.read_bytes() for stream in _streams(page)) for page in document.pages]
        return [*pages, *(document.attachments[name].get_file().read_bytes() for name in document.attachments)]


def _streams(page: pikepdf.Page) -> list[pikepdf.Object]:
    contents = page.Contents
    return list(contents) if isinstance(contents, pikepdf.Array) else [contents]
