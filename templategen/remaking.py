"""A kit made again from its own PDF: the spec and the options that it carries."""

from __future__ import annotations

import json
from pathlib import Path

from .errors import Fault, Refusal
from .making import OPTIONS_NAME, SPEC_NAME, Options

MOST_BYTES = 64 * 2**20


def carried_by(path: Path) -> tuple[str, Options]:
    """The text of the spec in the kit at ``path``, and the options it was made with.

    Raises Refusal where the file is no PDF, is damaged or locked, or carries no spec.
    """
    from pypdf import PdfReader
    from pypdf.errors import PyPdfError

    if path.stat().st_size > MOST_BYTES:
        raise Refusal(Fault("", str(path), "more than 64 MiB; a kit is far smaller: is this the file?"))
    try:
        attachments = PdfReader(path).attachments
        spec = attachments.get(SPEC_NAME, [])
        options = attachments.get(OPTIONS_NAME, [])
        text = spec[0].decode("utf-8") if spec else None
        asked = json.loads(options[0]) if options else {}
    except (PyPdfError, ValueError, KeyError, TypeError, AttributeError, IndexError, RecursionError):
        raise Refusal(Fault("", str(path), "this PDF cannot be read; give the spec itself")) from None
    if text is None:
        right = f"this PDF carries no {SPEC_NAME}: it is no kit, or has lost its attachment; give the spec itself"
        raise Refusal(Fault("", str(path), right))
    return text, Options(asked.get("paper"), tuple(asked.get("only", ())), bool(asked.get("despite_stops")))
