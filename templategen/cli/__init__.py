"""The command line: arguments in, the public steps, words out. One module for each kind of command."""

from . import adjusting, checking, kits, papers, printers, serving, specs  # each adds its commands to the group
from .group import commands
from .running import main, start

__all__ = ["adjusting", "checking", "commands", "kits", "main", "papers", "printers", "serving", "specs", "start"]
