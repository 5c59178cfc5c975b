"""What became of a piece of work: the answer to it, made where the work was done."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from http import HTTPStatus
from typing import Any

from ..errors import MissingGlyph, Refusal, StoppedPlan
from . import limits
from .faults import JSON, as_json, one, told


@dataclass(frozen=True, slots=True)
class Outcome:
    """An answer, and what the server should know besides."""

    body: bytes
    status: int = HTTPStatus.OK
    media_type: str = JSON
    file_name: str = ""
    """What to call the body where it is to be kept as a file."""
    remark: str = ""
    """A line for whoever looks after the program: something that should not have happened."""
    spent: bool = False
    """Whether the process that did the work had better do no more of it."""


def outcome_of(work: Callable[..., object], arguments: Sequence[Any]) -> Outcome:
    """What ``work`` returns for ``arguments``, or the refusal that it raises, as an answer. Raises nothing."""
    try:
        return _done(work(*arguments))
    except Refusal as refusal:
        return _wrong(told(refusal.faults, understood=getattr(refusal, "understood", {})))
    except StoppedPlan as stopped:
        return _wrong(as_json({"stops": list(stopped.texts), "faults": []}))
    except MissingGlyph as missing:
        return _wrong(one(str(missing)))
    except MemoryError:
        right = f"this takes more than {limits.MEMORY // 2**30} GiB of memory, where a job takes a tenth of one"
        return Outcome(one(f"{right}; make it smaller"), HTTPStatus.UNPROCESSABLE_ENTITY, spent=True)
    except RecursionError:
        return _wrong(one("this is nested more deeply than any job is"))
    except Exception as error:
        return unforeseen(f"{getattr(work, '__name__', work)}: {type(error).__name__}: {error}")


def unforeseen(remark: str) -> Outcome:
    """The answer where the program itself is at fault; what happened is for its own log alone."""
    body = one("something went wrong inside templategen itself, so there is no answer; nothing you typed is lost")
    return Outcome(body, HTTPStatus.INTERNAL_SERVER_ERROR, remark=one_line(remark))


def one_line(remark: str) -> str:
    """A remark as a log can hold it, whatever was typed to bring it about."""
    return "".join(sign if sign.isprintable() else " " for sign in remark)[:500]


def too_long(seconds: float) -> Outcome:
    """Work that was stopped because its time was over."""
    right = f"this was not worked out within {seconds:.0f} s, far longer than a job takes, and was stopped"
    return _wrong(one(f"{right}; make it smaller"))


def ended() -> Outcome:
    """Work whose process ended in the middle of it."""
    right = "the process that worked this out was ended from outside before it was done"
    return _wrong(one(f"{right}; try once more, and if it ends again, make the job smaller"))


def busy() -> Outcome:
    """Work that is not taken on because too much is waiting already."""
    body = one(f"too much is being worked out already; try again in {limits.RETRY_SECONDS} s")
    return Outcome(body, HTTPStatus.TOO_MANY_REQUESTS)


def _wrong(body: bytes) -> Outcome:
    return Outcome(body, HTTPStatus.UNPROCESSABLE_ENTITY)


def _done(made: object) -> Outcome:
    match made:
        case dict():
            return Outcome(as_json(made))
        case bytes():
            return Outcome(made, media_type="image/png")
        case (str(name), str(media_type), bytes(body)):
            return Outcome(body, media_type=media_type, file_name=name)
    raise TypeError(f"an answer is a dict, bytes or a named file, not {type(made).__name__}")
