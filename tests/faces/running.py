"""What the command's fixture is, for the tests that use it."""

from __future__ import annotations

from collections.abc import Callable

Run = Callable[..., tuple[int, str, str]]
"""Arguments in; exit status, stdout and stderr out."""
