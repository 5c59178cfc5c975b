"""A spec from its file."""

from __future__ import annotations

from pathlib import Path

from ..errors import Fault, Refusal
from .document import MOST_BYTES
from .model import Spec
from .reading import read_spec


def load_spec(path: str | Path) -> Spec:
    """The spec in the TOML file at ``path``.

    Raises Refusal for a file that is not there or does not hold a spec, and
    OSError for one that the system does not let us read.
    """
    return read_spec(read_text(path), name=Path(path).name)


def read_text(path: str | Path) -> str:
    """The text of a file that a person named, in UTF-8. Raises Refusal or OSError, as above."""
    path = Path(path)
    name = str(path)
    try:
        with path.open("rb") as file:
            content = file.read(MOST_BYTES + 1)
    except (FileNotFoundError, NotADirectoryError):
        right = "there is no such file; templategen new writes one to start from"
        raise Refusal(Fault(name, "", right)) from None
    except IsADirectoryError:
        raise Refusal(Fault(name, "", "this is a folder; write the name of a spec in it")) from None
    if len(content) > MOST_BYTES:
        raise Refusal(Fault(name, "", "more than 1 MiB; a spec is a page or two of text: is this the file?"))
    try:
        return content.decode("utf-8")
    except UnicodeDecodeError as error:
        line = content.count(b"\n", 0, error.start) + 1
        raise Refusal(Fault(f"{name}, line {line}", "", "not text in UTF-8; save the file as UTF-8")) from None
