"""Refusals as the page's interface tells them: the very faults of the command line, as JSON."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import asdict
from http import HTTPStatus

from ..errors import Fault

JSON = "application/json"


def told(faults: Iterable[Fault], **more: object) -> bytes:
    """The body of a refusal. ``more`` is what stands beside the faults."""
    return as_json({"faults": [asdict(fault) for fault in faults]} | more)


def one(right: str, field: str = "", read: str = "") -> bytes:
    """The body of a refusal for one reason."""
    return told([Fault(field, read, right)])


def as_json(value: object) -> bytes:
    """``value`` as UTF-8. Half of a character, which no text file can hold, becomes a question mark."""
    return json.dumps(value, ensure_ascii=False, allow_nan=False, separators=(",", ":")).encode("utf-8", "replace")


def raw(status: HTTPStatus, right: str, headers: Mapping[str, str]) -> bytes:
    """A whole answer in HTTP/1.1, after which the connection closes: for what never becomes a request."""
    body = one(right)
    lines = [f"HTTP/1.1 {status.value} {status.phrase}", f"content-type: {JSON}", f"content-length: {len(body)}"]
    lines += [f"{name}: {value}" for name, value in headers.items()] + ["connection: close", "", ""]
    return "\r\n".join(lines).encode("ascii") + body
