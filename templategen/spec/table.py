"""What every table of a spec is built on, and the limits that many fields share."""

from __future__ import annotations

from pydantic import BaseModel, ConfigDict

from ..lengths import millimetres
from .about import Limit

MOST_60_M = Limit(millimetres(60_000), "60 m (about 196 ft)")
MOST_1_M = Limit(millimetres(1000), "1 m (about 39 in)")
MOST_100_MM = Limit(millimetres(100), "100 mm (about 4 in)")


class Table(BaseModel):
    """A table of the file: frozen, and complete once it has been read."""

    model_config = ConfigDict(frozen=True, extra="forbid", arbitrary_types_allowed=True)


class Measured:
    """Says of a choice among tables that it is of something that is there already.

    Its fields are those that say how it hangs (``HANGS_BY``); nothing of it is chosen, so all are required.
    """
