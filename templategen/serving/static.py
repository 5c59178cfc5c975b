"""What the browser gets besides answers: the page's own files and the type family, from a table made at the start."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from ..drawing.faces import face

_PAGE = Path(__file__).resolve().parent.parent / "page"
_TYPES = {
    ".html": "text/html; charset=utf-8", ".css": "text/css; charset=utf-8", ".js": "text/javascript; charset=utf-8",
    ".svg": "image/svg+xml", ".ttf": "font/ttf",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class File:
    """One file, as it is sent."""

    content: bytes
    media_type: str
    tag: str
    """Of its content, so that a browser that has it already is not sent it again (RFC 9110, 8.8.3)."""


def files() -> dict[str, File]:
    """Every file by the path of its URL. No path is ever made of what is asked."""
    return dict(_files())


def _files() -> Iterator[tuple[str, File]]:
    yield "/", _file(_PAGE / "index.html")
    for path in sorted(_PAGE.iterdir()):
        if path.suffix in _TYPES and path.name != "index.html":
            yield f"/page/{path.name}", _file(path)
    for bold in (False, True):
        path = face(bold).path
        yield f"/fonts/{path.name}", _file(path)


def _file(path: Path) -> File:
    content = path.read_bytes()
    return File(content, _TYPES[path.suffix], f'"{hashlib.sha256(content).hexdigest()[:24]}"')
