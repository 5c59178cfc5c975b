"""From a plan to files: the public steps that every face takes, in order."""

from __future__ import annotations

import json
import os
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from difflib import get_close_matches
from pathlib import Path
from tempfile import NamedTemporaryFile
from typing import Any

from .bars import NOTHING_READ, Readings, faults_in, readings_record
from .drawing import LARGE, USUAL, Drawing, Look, set_text
from .drawing.blocks import Block
from .errors import Fault, MissingGlyph, Refusal, StoppedPlan
from .layout import CHECK, WORDS, Contents, Correction, Kit, alone, lay_out
from .papers import Orientation, Paper, paper_named, roll_of, sheet_of, unknown_paper
from .planning import JobPlan, Plan, as_job
from .spec import FIELDS, Spec
from .spec.values import Wrong, read_value
from .templates import STRIPS, TEMPLATES, Choices, job_order
from .templates.together import Served, draw_job

SPEC_NAME, JOB_NAME, OPTIONS_NAME = "spec.toml", "job.toml", "make.json"
"""What a kit's PDF carries: the spec or the job it was made from, and what was asked for besides."""
SUBJECT = "Full-scale curtain templates and work order"
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


def make_kit(plan: Plan | JobPlan, options: Options | None = None) -> Kit:
    """The plan's kit, on sheets; for a job one kit for all of its windows.

    Raises Refusal for a paper or template that there is none of, and
    StoppedPlan where the plan has a stop and ``options`` do not go on despite it.
    """
    return _made(as_job(plan), options or Options())[0]


def _made(plan: JobPlan, options: Options) -> tuple[Kit, list[Served]]:
    """The kit, and what each of its templates serves."""
    if faults := [*_unprintable(plan), *faults_of(options, plan.spec)]:
        raise Refusal(*faults)
    if plan.stops and not options.despite_stops:
        raise StoppedPlan(tuple(notice.text for notice in plan.stops))
    only = _named(options.only)
    choices = choices_of(plan.spec, options)
    served = draw_job(plan, only, choices)
    if faults := [*_not_in_this_job(options, plan), *_nothing_to_halve(options, plan)]:
        raise Refusal(*faults)
    words = job_order.words(plan, served, choices) if not only or WORDS in only else []
    drawings = [drawing for drawing, _ in served]
    return laid_out(plan, options, SUBJECT, words, drawings, check=not only or CHECK in only), served


def laid_out(
    plan: Plan | JobPlan, options: Options, subject: str, words: Sequence[Block], drawings: Sequence[Drawing], *,
    check: bool,
) -> Kit:  # fmt: skip
    """Words and drawings on the sheets that the spec and ``options`` ask for. Raises Refusal where they do not fit."""
    spec = plan.spec
    orientation: Orientation | None = _chosen("orientation", spec, options)
    margins = spec.paper.margins
    contents = Contents(
        title=spec.title,
        subject=subject,
        words=words,
        drawings=drawings,
        margins=(margins.left.mm, margins.right.mm, margins.top.mm, margins.bottom.mm),
        tape=plan.tape,
        correction=Correction(*options.printer.over(spec.printer.readings).ratios),
        check=check,
        look=look_of(spec, options),
    )
    paper = _paper_of(spec, options.paper, upright=orientation is not None)
    return lay_out(contents, paper, orientation or "portrait")


def kit_files(plan: Plan | JobPlan, options: Options | None = None) -> tuple[Kit, dict[str, bytes]]:
    """The kit and every file of it, by file name: the same bytes from the same spec or job."""
    options = options or Options()
    job = as_job(plan)
    kit, served = _made(job, options)
    words = kit.words or job_order.words(job, served, choices_of(plan.spec, options))
    return kit, files_of(kit, words, "work-order.txt", _attachments(job, options))


def files_of(kit: Kit, words: Sequence[Block], words_name: str, attachments: Mapping[str, str]) -> dict[str, bytes]:
    """Every file of a kit, by file name: its PDF, what is where on it, its words as text, a picture of each drawing."""
    from .writers.kit_json import kit_record
    from .writers.pdf import pdf
    from .writers.svg import svg
    from .writers.text import text

    record = json.dumps(kit_record(kit), ensure_ascii=False, indent=1) + "\n"
    files = {
        "kit.pdf": pdf(kit, dict(attachments)),
        "kit.json": record.encode(),
        words_name: text([*words, *kit.check]).encode(),
    }
    for drawing in kit.drawings:
        described = f"{' '.join(drawing.caption)} Scale 1:1."
        files[f"{drawing.file_name}.svg"] = svg(*alone(drawing, kit.tape, kit.look), described, kit.look).encode()
    return files


def write_kit(kit: Kit, files: dict[str, bytes], folder: Path) -> None:
    """Write a kit's ``files`` into ``folder``, and take away what an earlier kit left there that would mislead.

    That is a template of the same kind under another number, "cut gauge 2" beside a new "cut gauge", for another
    window, or made the other way, a whole strip beside a half one.
    """
    write_files(files, folder)
    names = {drawing.name for drawing in kit.drawings}
    kinds = {kind for kind in (*TEMPLATES, *STRIPS) if any(name.startswith(kind) for name in names)}
    for kind in kinds | (STRIPS if kinds & STRIPS else set()):
        like_it = re.compile(rf"{re.escape(kind.replace(' ', '-'))}(-\d+|-for-.*)?(--.*)?\.svg")
        for path in folder.iterdir():
            if like_it.fullmatch(path.name) and path.name not in files:
                path.unlink()


def write_files(files: dict[str, bytes], folder: Path, asked_as: str = "--out") -> None:
    """Write ``files`` into ``folder``, which is made where it is missing.

    Every file is complete before the first takes its place, so one that exists
    is replaced whole or left as it was. Raises OSError where the system refuses,
    Refusal where the folder, asked for as ``asked_as``, is a file or a file is a folder.
    """
    if folder.exists() and not folder.is_dir():
        raise Refusal(Fault(asked_as, str(folder), "this is a file; name a folder"))
    in_the_way = [folder / name for name in files if (folder / name).is_dir()]
    if in_the_way:
        right = "this is a folder, where a file is to be written"
        raise Refusal(*(Fault(asked_as, str(each), right) for each in in_the_way))
    folder.mkdir(parents=True, exist_ok=True)
    ready: list[tuple[Path, Path]] = []
    try:
        for name, content in files.items():
            with NamedTemporaryFile(dir=folder, prefix=f".{name}.", delete=False) as file:
                ready.append((Path(file.name), folder / name))
                file.write(content)
        for written, target in ready:
            written.chmod(0o666 & ~_umask())
            os.replace(written, target)
    finally:
        for written, _ in ready:
            written.unlink(missing_ok=True)


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask


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
        if _plain(asked) not in (*known, EVERYTHING):
            near = get_close_matches(_plain(asked), known, 1)
            hint = f"did you mean {near[0]!r}? " if near else ""
            right = f"no such template; {hint}there are {', '.join(known)}, and {EVERYTHING}"
            faults.append(Fault("--only", repr(asked), right))
    for name, flag in FLAGS.items():
        try:
            _read(name, options)
        except Wrong as wrong:
            faults += [Fault(flag, fault.read, fault.right) for fault in wrong.faults]
    across, along = options.printer.across, options.printer.along
    faults += faults_in(
        options.printer,
        ("--printer-across", across.typed if across else ""),
        ("--printer-along", along.typed if along else ""),
    )
    return faults


def _unprintable(job: JobPlan) -> Iterator[Fault]:
    """Names of windows and rooms with a character that the font lacks."""
    for number, window in enumerate(job.windows, 1):
        for key, text in (("name", window.name), ("room", window.room)):
            try:
                set_text(text, 10, True)
            except MissingGlyph as missing:
                yield Fault(f"window[{number}].{key}", repr(text), str(missing))


def _not_in_this_job(options: Options, job: JobPlan) -> list[Fault]:
    """Templates asked for by name that this job has no use for."""
    asked = [each for each in options.only if _plain(each) in TEMPLATES]
    missing = [each for each in asked if not any(TEMPLATES[_plain(each)](part.plan) for part in job.parts)]
    if not missing:
        return []
    there = ", ".join(name for name, draw in TEMPLATES.items() if any(draw(part.plan) for part in job.parts))
    return [Fault("--only", repr(each), f"this job has none; it has {there}") for each in missing]


def _nothing_to_halve(options: Options, job: JobPlan) -> Iterator[Fault]:
    """A half strip asked for where no window's marks stand alike from both edges."""
    if _read("half_strip", options) and not any(part.plan.heading.spaced for part in job.parts):
        right = "this job has no marks that stand alike from both edges, so no strip can be halved; leave it out"
        yield Fault(FLAGS["half_strip"], "", right)


def choices_of(spec: Spec, options: Options) -> Choices:
    """How the templates are made: as ``options`` say, else as ``spec`` does."""
    return Choices(_chosen("half_strip", spec, options), _chosen("strips", spec, options), look_of(spec, options))


def look_of(spec: Spec, options: Options) -> Look:
    """How everything is drawn: in large print or not, as ``options`` say, else as ``spec`` does."""
    return LARGE if _chosen("large_print", spec, options) else USUAL


def _chosen(name: str, spec: Spec, options: Options) -> Any:
    """What is asked for under that name of [paper]: by ``options``, else by ``spec``."""
    asked = _read(name, options)
    return getattr(spec.paper, name) if asked is None else asked


def _read(name: str, options: Options) -> Any:
    """An option as the field of its name takes it; None where it is not given. Raises Wrong."""
    value = getattr(options, name)
    return None if value is None else read_value(FIELDS[f"paper.{name}"], value, None)


def _named(only: tuple[str, ...]) -> tuple[str, ...]:
    """The names in ``only``, each once; none where everything is asked for."""
    names = tuple(dict.fromkeys(map(_plain, only)))
    return () if EVERYTHING in names else names


def _paper_of(spec: Spec, name: str | None, *, upright: bool) -> Paper:
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


def _plain(name: str) -> str:
    """A template's name, hyphens, blanks and capitals aside."""
    return " ".join(name.lower().replace("-", " ").split())


def _attachments(plan: JobPlan, options: Options) -> dict[str, str]:
    """The spec or the job as it was read, and the options where there are any; never the leave to pass a stop."""
    if not plan.spec.source:
        return {}
    asked: dict[str, object] = {"paper": options.paper, "only": list(options.only)}
    chosen: dict[str, object] = {name: value for name in FLAGS if (value := _read(name, options)) is not None}
    if readings := readings_record(options.printer):
        chosen["printer"] = readings
    source = {JOB_NAME if plan.named else SPEC_NAME: plan.spec.source}
    if not (options.paper or options.only or chosen):
        return source
    return source | {OPTIONS_NAME: json.dumps(asked | chosen)}
