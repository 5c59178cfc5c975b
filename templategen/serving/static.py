"""What the browser gets as it is: the page and the type it is set in, all found when the server starts."""

from __future__ import annotations

from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path

from starlette.requests import Request
from starlette.responses import Response

_PAGE = Path(__file__).resolve().parent.parent / "page"
_TYPES = {
    ".html": "text/html; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".svg": "image/svg+xml",
    ".png": "image/png",
    ".ttf": "font/ttf",
}
"""Kinds of files that are served; any other beside them is not."""


@dataclass(frozen=True, slots=True)
class File:
    """A file as it is served."""

    body: bytes
    media_type: str
    etag: str

    @classmethod
    def at(cls, path: Path) -> File:
        """The file at ``path``, read once and for all."""
        body = path.read_bytes()
        return cls(body, _TYPES[path.suffix], f'"{sha256(body).hexdigest()[:20]}"')

    def answer(self, request: Request) -> Response:
        """The file; or that it is still what the browser has kept of it."""
        headers = {"etag": self.etag, "cache-control": "no-cache"}
        known = [each.strip().removeprefix("W/") for each in request.headers.get("if-none-match", "").split(",")]
        if self.etag in known or "*" in known:
            return Response(status_code=304, headers=headers)
        return Response(self.body, headers=headers, media_type=self.media_type)


def files() -> dict[str, File]:
    """Every file that is served, by its path."""
    from ..drawing.faces import face
    from ..writers.html import COLOURS

    found = {f"/page/{path.relative_to(_PAGE).as_posix()}": path for path in sorted(_PAGE.rglob("*"))}
    found |= {f"/fonts/{path.name}": path for path in (face(False).path, face(True).path)}
    found[f"/page/{COLOURS.name}"] = COLOURS
    table = {name: File.at(path) for name, path in found.items() if path.suffix in _TYPES}
    return table | {"/": table["/page/index.html"]}
