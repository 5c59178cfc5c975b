"""From a plan to files: the public steps that every face takes, in order."""

from __future__ import annotations

import json
import os
import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from pathlib import Path
from tempfile import NamedTemporaryFile

from .bars import readings_record
from .document.blocks import Block
from .document.on_paper import OnPaper
from .drawing import Drawing, set_text
from .errors import Fault, MissingGlyph, Refusal, StoppedPlan
from .fingerprint import JOB_NAME, OPTIONS_NAME, SPEC_NAME, fingerprint_of
from .layout import CHECK, WORDS, Contents, Correction, Kit, alone, lay_out
from .options import FLAGS, Options, choices_of, chosen, faults_of, look_of, named_in, paper_of, plain_name, read_option
from .papers import Orientation
from .planning import JobPlan, Plan, as_job
from .templates import STRIPS, TEMPLATES
from .templates.together import Served, draw_job
from .work_order import job as job_order

SUBJECT = "Full-scale curtain templates and work order"


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
    only = named_in(options.only)
    choices = choices_of(plan.spec, options)
    served = draw_job(plan, only, choices)
    if faults := [*_not_in_this_job(options, plan), *_nothing_to_halve(options, plan)]:
        raise Refusal(*faults)
    carried = _attachments(plan, options)

    def words(paper: OnPaper | None) -> Sequence[Block]:
        return job_order.words(plan, served, choices, carried, paper) if not only or WORDS in only else ()

    drawings, check = [drawing for drawing, _ in served], not only or CHECK in only
    return laid_out(plan, options, SUBJECT, words, drawings, check=check, fingerprint=fingerprint_of(carried)), served


def laid_out(
    plan: Plan | JobPlan, options: Options, subject: str, words: Callable[[OnPaper | None], Sequence[Block]],
    drawings: Sequence[Drawing], *, check: bool, fingerprint: str = "",
) -> Kit:  # fmt: skip
    """Words and drawings on the sheets that the spec and ``options`` ask for. Raises Refusal where they do not fit."""
    spec = plan.spec
    orientation: Orientation | None = chosen("orientation", spec, options)
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
        fingerprint=fingerprint,
        look=look_of(spec, options),
    )
    paper = paper_of(spec, options.paper, upright=orientation is not None)
    return lay_out(contents, paper, orientation or "portrait")


def kit_files(plan: Plan | JobPlan, options: Options | None = None) -> tuple[Kit, dict[str, bytes]]:
    """The kit and every file of it, by file name: the same bytes from the same spec or job."""
    options = options or Options()
    job = as_job(plan)
    kit, served = _made(job, options)
    carried = _attachments(job, options)
    words = kit.words or job_order.words(job, served, choices_of(plan.spec, options), carried)
    return kit, files_of(kit, words, "work-order", carried)


def files_of(kit: Kit, words: Sequence[Block], name: str, attachments: Mapping[str, str]) -> dict[str, bytes]:
    """Every file of a kit, by file name: its PDF, what is where on it, a picture of each drawing.

    And its words, under ``name``, as text and as a page for a screen.
    """
    from .writers.html import html
    from .writers.kit_json import kit_record
    from .writers.pdf import pdf
    from .writers.svg import svg
    from .writers.text import text

    record = json.dumps(kit_record(kit), ensure_ascii=False, indent=1) + "\n"
    files = {
        "kit.pdf": pdf(kit, dict(attachments)),
        "kit.json": record.encode(),
        f"{name}.txt": text([*words, *kit.check]).encode(),
        f"{name}.html": html([*words, *kit.check], kit.title).encode(),
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
    asked = [each for each in options.only if plain_name(each) in TEMPLATES]
    missing = [each for each in asked if not any(TEMPLATES[plain_name(each)](part.plan) for part in job.parts)]
    if not missing:
        return []
    there = ", ".join(name for name, draw in TEMPLATES.items() if any(draw(part.plan) for part in job.parts))
    return [Fault("--only", repr(each), f"this job has none; it has {there}") for each in missing]


def _nothing_to_halve(options: Options, job: JobPlan) -> Iterator[Fault]:
    """A half strip asked for where no window's marks stand alike from both edges."""
    if read_option("half_strip", options) and not any(part.plan.heading.spaced for part in job.parts):
        right = "this job has no marks that stand alike from both edges, so no strip can be halved; leave it out"
        yield Fault(FLAGS["half_strip"], "", right)


def _attachments(plan: JobPlan, options: Options) -> dict[str, str]:
    """The spec or the job as it was read, and the options where there are any; never the leave to pass a stop."""
    if not plan.spec.source:
        return {}
    asked: dict[str, object] = {"paper": options.paper, "only": list(options.only)}
    chosen: dict[str, object] = {name: value for name in FLAGS if (value := read_option(name, options)) is not None}
    if readings := readings_record(options.printer):
        chosen["printer"] = readings
    source = {JOB_NAME if plan.named else SPEC_NAME: plan.spec.source}
    if not (options.paper or options.only or chosen):
        return source
    return source | {OPTIONS_NAME: json.dumps(asked | chosen)}
