"""A kit made again from its own PDF: the spec and the options that it carries."""

from __future__ import annotations

import json
import logging
from pathlib import Path
from typing import Any

from .bars import readings_of_record
from .errors import Fault, Refusal
from .fingerprint import JOB_NAME, OPTIONS_NAME, SPEC_NAME
from .options import FLAGS, Options

MOST_BYTES = 64 * 2**20
KINDS = {"orientation": str, "half_strip": bool, "strips": int, "large_print": bool}
"""What each option is that is attached only where it was given."""


def carried_by(path: Path) -> tuple[str, Options]:
    """The text of the spec or the job in the kit at ``path``, and the options it was made with.

    Raises Refusal where the file is no PDF, is damaged or locked, or carries no spec.
    """
    from pypdf import PdfReader
    from pypdf.errors import DependencyError, PyPdfError

    # What pypdf has to say of a damaged file is said below, once.
    logging.getLogger("pypdf").setLevel(logging.CRITICAL)
    if path.stat().st_size > MOST_BYTES:
        raise Refusal(Fault(str(path), "", "more than 64 MiB; a kit is far smaller: is this the file?"))
    try:
        attachments = PdfReader(path).attachments
        spec = attachments.get(SPEC_NAME) or attachments.get(JOB_NAME)
        options = attachments.get(OPTIONS_NAME)
        text = spec[0].decode("utf-8") if spec else None
        asked = _options(json.loads(options[0])) if options else Options()
    except (PyPdfError, DependencyError, ValueError, KeyError, TypeError, AttributeError, IndexError, RecursionError):
        raise Refusal(Fault(str(path), "", "this PDF is damaged or locked; give the spec itself")) from None
    if text is None:
        right = f"this PDF carries no {SPEC_NAME}: it is no kit, or has lost its attachment; give the spec itself"
        raise Refusal(Fault(str(path), "", right))
    return text, asked


def _options(asked: Any) -> Options:
    """The options as they were attached. Raises ValueError where they are not what was attached."""
    match asked:
        case {"paper": str() | None as paper, "only": [*only], **rest} if all(isinstance(name, str) for name in only):
            chosen: dict[str, Any] = {name: rest[name] for name in FLAGS if name in rest}
            if all(type(value) is KINDS[name] for name, value in chosen.items()):
                printer = readings_of_record(rest.get("printer", {}))
                return Options(paper, tuple(only), printer=printer, **chosen)
    raise ValueError(OPTIONS_NAME)
