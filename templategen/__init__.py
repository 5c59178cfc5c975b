"""Full-scale templates for altering curtain panels: spec, plan, drawing, pieces, sheets, file.

    spec = read_spec(text)
    plan = make_plan(spec)
    kit, files = kit_files(plan)
    write_kit(kit, files, folder)

Each step is loaded when it is first used, so planning needs no PDF library.
"""

from importlib import import_module
from typing import TYPE_CHECKING

from .version import __version__

if TYPE_CHECKING:
    from .lengths import read_length
    from .making import kit_files, make_kit, write_files, write_kit
    from .options import Options
    from .planning import make_job_plan, make_plan
    from .spec import load_spec, read_job, read_spec
    from .templates import Choices, draw_templates

_HOMES = {
    "read_length": "lengths",
    "read_spec": "spec",
    "read_job": "spec",
    "make_plan": "planning",
    "make_job_plan": "planning",
    "draw_templates": "templates",
    "make_kit": "making",
    "kit_files": "making",
    "write_files": "making",
    "write_kit": "making",
    "load_spec": "spec",
    "Options": "options",
    "Choices": "templates",
}

__all__ = [
    "Choices",
    "Options",
    "__version__",
    "draw_templates",
    "kit_files",
    "load_spec",
    "make_job_plan",
    "make_kit",
    "make_plan",
    "read_job",
    "read_length",
    "read_spec",
    "write_files",
    "write_kit",
]


def __getattr__(name: str) -> object:
    if name in _HOMES:
        return getattr(import_module(f".{_HOMES[name]}", __name__), name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
