"""Files that cannot be judged: a clear refusal for each, soon, and never a traceback."""

from __future__ import annotations

import io
import os
import random
import time
import zlib
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from reportlab.pdfgen.canvas import Canvas

from templategen.checking import check
from templategen.checking.judging import judge
from templategen.errors import Refusal

from . import handling as by
from .kits import kit

SOON = 12.0
"""Seconds: our choice, far under the 60 that a check may take."""


def _invoice() -> bytes:
    """Somebody else's PDF, with rules and a table."""
    out = io.BytesIO()
    canvas = Canvas(out)
    canvas.drawString(72, 780, "Invoice 2041: 12 m of voile for the village library")
    canvas.grid([72, 200, 320, 480], [700, 680, 660, 640, 620])
    for i in range(60):
        canvas.line(72, 600 - 8 * i, 72 + 283.4646, 600 - 8 * i)
    canvas.save()
    return out.getvalue()


def _file(*objects: bytes) -> bytes:
    """A PDF written by hand: the first object is the catalogue (ISO 32000-1, 7.5)."""
    out = b"%PDF-1.7\n"
    places = []
    for number, each in enumerate(objects, 1):
        places.append(len(out))
        out += b"%d 0 obj\n%s\nendobj\n" % (number, each)
    table = b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1)
    table += b"".join(b"%010d 00000 n \n" % place for place in places)
    trailer = b"trailer\n<</Size %d/Root 1 0 R>>\nstartxref\n%d\n%%%%EOF\n" % (len(objects) + 1, len(out))
    return out + table + trailer


def _stream(content: bytes, more: bytes = b"") -> bytes:
    packed = zlib.compress(content, 9)
    return b"<</Length %d/Filter/FlateDecode%s>>stream\n%s\nendstream" % (len(packed), more, packed)


def _one_page(content: bytes, box: bytes = b"0 0 612 792", *more: bytes, resources: bytes = b"") -> bytes:
    return _file(
        b"<</Type/Catalog/Pages 2 0 R>>",
        b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox[%s]/Contents 4 0 R/Resources<<%s>>>>" % (box, resources),
        _stream(content),
        *more,
    )


def _nested_forms(deep: int, each: int) -> bytes:
    """Forms that draw forms: ``each`` to the power of ``deep`` of them."""
    forms = [
        _stream(
            b"/F Do " * each,
            b"/Type/XObject/Subtype/Form/BBox[0 0 9 9]/Resources<</XObject<</F %d 0 R>>>>" % (6 + i),
        )
        for i in range(deep)
    ]
    last = _stream(b"0 0 m 9 9 l S", b"/Type/XObject/Subtype/Form/BBox[0 0 9 9]")
    return _one_page(b"/F Do", b"0 0 612 792", *forms, last, resources=b"/XObject<</F 5 0 R>>")


def _steps(start: float, count: int) -> Iterator[float]:
    return (start + i / 500 for i in range(count))


UNJUDGED: dict[str, tuple[Callable[[], bytes], str]] = {
    "nothing in it": (lambda: b"", "is empty"),
    "text": (lambda: b'title = "Reading room"\n' * 40, "is no PDF"),
    "a picture": (lambda: b"\x89PNG\r\n\x1a\n" + b"\0" * 999, "is no PDF"),
    "half a kit": (lambda: kit()[: len(kit()) // 2], "breaks off"),
    "a kit but for its last lines": (lambda: kit()[:-40], "breaks off"),
    "an invoice": (_invoice, "no sheet of a kit"),
    "an invoice, drawn": (lambda: by.rasterised(_invoice(), 100), "no sheet of a kit"),
    "locked": (lambda: by.encrypted(kit(), "shelf"), "locked with a password"),
    "a head and an end": (lambda: b"%PDF-1.7\n" + b"\xff" * 5000 + b"\n%%EOF\n", "damaged"),
    "no pages": (
        lambda: _file(b"<</Type/Catalog/Pages 2 0 R>>", b"<</Type/Pages/Kids[]/Count 0>>"),
        "no pages|damaged",
    ),
    "a tree of pages that bites its tail": (
        lambda: _file(b"<</Type/Catalog/Pages 2 0 R>>", b"<</Type/Pages/Kids[2 0 R 2 0 R]/Count 99999/Parent 2 0 R>>"),
        "pages|damaged|no sheet",
    ),
    "an empty page": (lambda: _one_page(b""), "no sheet of a kit"),
    "an enormous page": (lambda: _one_page(b"0 0 m 9 9 l S", b"0 0 2000000 2000000"), "no sheet of a kit"),
    "a page without extent": (lambda: _one_page(b"0 0 m 9 9 l S", b"0 0 0 0"), "no sheet of a kit"),
    "numbers beyond all bounds": (
        lambda: _one_page(b"1e38 1e38 m -1e38 9e37 l S 1e30 0 0 1e-30 0 0 cm 0 0 m 1 1 l S"),
        "no sheet of a kit",
    ),
    "blanks by the million": (
        lambda: _one_page(b" " * 60_000_000),
        "no sheet of a kit|too much|cannot be read",
    ),
    "lines by the hundred thousand": (
        lambda: _one_page(b"".join(b"9 %d m 292.4 %d l S " % (i % 700, i % 701) for i in range(101_000))),
        "too much",
    ),
    "lines that might all be bars": (
        lambda: _one_page(b"".join(b"9 %.3f m %.3f %.3f l S " % (y, 290 + y / 9, y) for y in _steps(9, 5000))),
        "no sheet of a kit",
    ),
    "forms in forms": (lambda: _nested_forms(60, 1), "too much|no sheet of a kit"),
    "gates that never close": (lambda: _one_page(b"q " * 300_000 + b"[" * 90_000), "no sheet of a kit|fails"),
}  # fmt: skip


@pytest.mark.parametrize(("made", "said"), UNJUDGED.values(), ids=UNJUDGED)
def test_a_file_that_cannot_be_judged_is_refused_soon(made: Callable[[], bytes], said: str, tmp_path: Path) -> None:
    path = tmp_path / "some.pdf"
    path.write_bytes(made())
    began = time.monotonic()
    with pytest.raises(Refusal, match=said) as refused:
        check(path, seconds=10)
    assert time.monotonic() - began < SOON
    (fault,) = refused.value.faults
    assert fault.field == str(path) and len(fault.right.split()) > 4


def test_forms_that_multiply_are_given_up(tmp_path: Path) -> None:
    """Twelve to the ninth of them, which no reader gets through."""
    path = tmp_path / "some.pdf"
    path.write_bytes(_nested_forms(9, 12))
    with pytest.raises(Refusal, match=r"too much|cannot be read|fails"):
        check(path, seconds=2)


def test_a_damaged_page_in_a_whole_kit_is_found(tmp_path: Path) -> None:
    """The marks of one page overwritten: whatever a reader makes of it, the file is not called true."""
    pdf = by.qpdf(kit(), "--stream-data=uncompress", "--object-streams=disable")
    at = pdf.index(b"page 4 of 8") if b"page 4 of 8" in pdf else len(pdf) // 2
    start = pdf.rindex(b"stream\n", 0, at) + 7
    path = tmp_path / "kit.pdf"
    path.write_bytes(pdf[:start] + b"\xff" * 9000 + pdf[start + 9000 :])
    verdict = judge(path)
    assert not verdict.true


def test_what_is_no_file_is_said(tmp_path: Path) -> None:
    with pytest.raises(Refusal, match="folder"):
        check(tmp_path)
    with pytest.raises(Refusal, match="no such file"):
        check(tmp_path / "none.pdf")
    os.mkfifo(tmp_path / "pipe.pdf")
    with pytest.raises(Refusal, match="not an ordinary file"):
        check(tmp_path / "pipe.pdf")


def test_a_reader_that_takes_too_long_is_stopped(tmp_path: Path) -> None:
    path = tmp_path / "kit.pdf"
    path.write_bytes(kit())
    with pytest.raises(Refusal, match="cannot be read within"):
        check(path, seconds=0.01)


def test_garbage_within_a_kit_is_a_verdict_or_a_refusal(tmp_path: Path) -> None:
    """Forty kits, each with some bytes changed at places that a seed chooses."""
    whole = kit(only=("cut gauge",))
    path = tmp_path / "kit.pdf"
    for seed in range(40):
        chance = random.Random(seed)
        changed = bytearray(whole)
        for _ in range(chance.choice([1, 5, 50, 400])):
            changed[chance.randrange(len(changed))] = chance.randrange(256)
        path.write_bytes(changed)
        try:
            verdict = judge(path)
        except Refusal as refusal:
            assert all(fault.right for fault in refusal.faults)
        else:
            assert verdict.findings or verdict.true
