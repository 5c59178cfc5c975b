"""What goes to and fro between the server and its workers: a head of JSON and a body of bytes, each with its length."""

from __future__ import annotations

import json
from asyncio import StreamReader
from collections.abc import Sequence
from struct import Struct
from typing import IO, Any

from .outcome import Outcome

_LENGTHS = Struct(">II")


def _packed(head: object, body: bytes = b"") -> bytes:
    text = json.dumps(head).encode()
    return _LENGTHS.pack(len(text), len(body)) + text + body


def work_parcel(work: str, arguments: Sequence[object]) -> bytes:
    """The name of a piece of work and what it is done with, as a worker reads it."""
    return _packed([work, list(arguments)])


def read_work(source: IO[bytes]) -> tuple[str, list[Any]] | None:
    """The next piece of work; None where the server is gone."""
    lengths = source.read(_LENGTHS.size)
    if len(lengths) < _LENGTHS.size:
        return None
    head, _ = _LENGTHS.unpack(lengths)
    text = source.read(head)
    if len(text) < head:
        return None
    work, arguments = json.loads(text)
    return work, arguments


def write_outcome(target: IO[bytes], made: Outcome) -> None:
    """Hands an outcome to the server. Raises OSError where that is gone."""
    head = [made.status, made.media_type, made.file_name, made.remark, made.spent]
    target.write(_packed(head, made.body))
    target.flush()


async def read_outcome(source: StreamReader) -> Outcome:
    """What a worker made of its work. Raises EOFError where the worker ends before it is done."""
    head, body = _LENGTHS.unpack(await source.readexactly(_LENGTHS.size))
    status, media_type, file_name, remark, spent = json.loads(await source.readexactly(head))
    return Outcome(await source.readexactly(body), status, media_type, file_name, remark, spent)
