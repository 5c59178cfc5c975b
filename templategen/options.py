"""What is asked of a kit besides its spec, what is wrong with it, and what it comes to."""

from __future__ import annotations

from dataclasses import dataclass
from difflib import get_close_matches
from typing import Any

from .bars import NOTHING_READ, Readings, faults_in
from .drawing import LARGE, USUAL, Look, set_text
from .errors import Fault, MissingGlyph
from .layout import CHECK, WORDS
from .papers import Paper, paper_named, roll_of, sheet_of, unknown_paper
from .spec import FIELDS, Spec
from .spec.values import Wrong, read_value
from .templates import TEMPLATES, Choices

EVERYTHING = "all"
FLAGS = {name: f"--{name.replace('_', '-')}" for name in ("orientation", "half_strip", "strips", "large_print")}
"""Fields of [paper] that an option may stand in place of, and what it is called on the command line."""


@dataclass(frozen=True, slots=True)
class Options:
    """What is asked of a kit besides its spec."""

    paper: str | None = None
    only: tuple[str, ...] = ()
    """Names of templates; empty, or "all", for all of them, the work order and the print check."""
    despite_stops: bool = False
    orientation: str | None = None
    """"portrait", "landscape" or "least"; as all below, None for what the spec says."""
    half_strip: bool | None = None
    strips: int | str | None = None
    """As it was typed: what is no whole number is refused with all else that is wrong."""
    large_print: bool | None = None
    printer: Readings = NOTHING_READ
    """What was read off the bars; an axis that it says nothing of is the spec's."""


def faults_of(options: Options, spec: Spec | None = None) -> list[Fault]:
    """What is wrong with ``options``, and with what of ``spec`` only a kit can tell: all of it."""
    faults = []
    if spec is not None:
        try:
            set_text(spec.title, 10, True)
        except MissingGlyph as missing:
            faults.append(Fault("title", repr(spec.title), str(missing)))
    if options.paper is not None and paper_named(options.paper) is None:
        faults.append(Fault("--paper", repr(options.paper), unknown_paper(options.paper)))
    known = [*TEMPLATES, WORDS, CHECK]
    for asked in options.only:
        if plain_name(asked) not in (*known, EVERYTHING):
            near = get_close_matches(plain_name(asked), known, 1)
            hint = f"did you mean {near[0]!r}? " if near else ""
            right = f"no such template; {hint}there are {', '.join(known)}, and {EVERYTHING}"
            faults.append(Fault("--only", repr(asked), right))
    for name, flag in FLAGS.items():
        try:
            read_option(name, options)
        except Wrong as wrong:
            faults += [Fault(flag, fault.read, fault.right) for fault in wrong.faults]
    across, along = options.printer.across, options.printer.along
    faults += faults_in(
        options.printer,
        ("--printer-across", across.typed if across else ""),
        ("--printer-along", along.typed if along else ""),
    )
    return faults


def choices_of(spec: Spec, options: Options) -> Choices:
    """How the templates are made: as ``options`` say, else as ``spec`` does."""
    return Choices(chosen("half_strip", spec, options), chosen("strips", spec, options), look_of(spec, options))


def look_of(spec: Spec, options: Options) -> Look:
    """How everything is drawn: in large print or not, as ``options`` say, else as ``spec`` does."""
    return LARGE if chosen("large_print", spec, options) else USUAL


def chosen(name: str, spec: Spec, options: Options) -> Any:
    """What is asked for under that name of [paper]: by ``options``, else by ``spec``."""
    asked = read_option(name, options)
    return getattr(spec.paper, name) if asked is None else asked


def read_option(name: str, options: Options) -> Any:
    """An option as the field of its name takes it; None where it is not given. Raises Wrong."""
    value = getattr(options, name)
    return None if value is None else read_value(FIELDS[f"paper.{name}"], value, None)


def named_in(only: tuple[str, ...]) -> tuple[str, ...]:
    """The names in ``only``, each once; none where everything is asked for."""
    names = tuple(dict.fromkeys(map(plain_name, only)))
    return () if EVERYTHING in names else names


def paper_of(spec: Spec, name: str | None, *, upright: bool) -> Paper:
    """The paper that ``spec`` asks for; the one called ``name`` takes its place where that is given.

    Without a word in the spec it is letter where numbers are shown in inches, A4 where they are metric.
    A sheet of one's own size lies as it is written, unless it is to be ``upright``.
    """
    asked = spec.paper
    if name is None and asked.width is not None and asked.height is not None:
        own = sheet_of(asked.width.mm, asked.height.mm)
        return own.turned if upright and own.width > own.height else own
    if name is None and asked.roll is not None:
        return roll_of(asked.roll.mm)
    paper = paper_named(name or asked.name or ("letter" if spec.units == "inch" else "a4"))
    assert paper is not None, "names of papers are checked when spec and options are read"
    return paper


def plain_name(name: str) -> str:
    """A template's name, hyphens, blanks and capitals aside."""
    return " ".join(name.lower().replace("-", " ").split())
