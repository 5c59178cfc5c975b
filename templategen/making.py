"""From a plan to files: the public steps that every face takes, in order."""

from __future__ import annotations

import json
import os
from dataclasses import dataclass
from difflib import get_close_matches
from pathlib import Path
from tempfile import NamedTemporaryFile

from .drawing import set_text
from .errors import Fault, MissingGlyph, Refusal, StoppedPlan
from .layout import WORDS, Correction, Kit, alone, lay_out, paper_of
from .papers import paper_named, unknown_paper
from .planning import Plan
from .templates import TEMPLATES, draw_templates, work_order

SPEC_NAME, OPTIONS_NAME = "spec.toml", "make.json"
"""What a kit's PDF carries: the spec it was made from, and what was asked for besides."""


@dataclass(frozen=True, slots=True)
class Options:
    """What is asked of a kit besides its spec."""

    paper: str | None = None
    only: tuple[str, ...] = ()
    """Names of templates; empty for all of them and the work order."""
    despite_stops: bool = False


def make_kit(plan: Plan, options: Options | None = None) -> Kit:
    """The plan's kit, on sheets.

    Raises Refusal for a paper or template that there is none of, and
    StoppedPlan where the plan has a stop and ``options`` do not go on despite it.
    """
    options = options or Options()
    if faults := faults_of(options):
        raise Refusal(*faults)
    if plan.stops and not options.despite_stops:
        raise StoppedPlan(tuple(notice.text for notice in plan.stops))
    only = tuple(dict.fromkeys(map(_plain, options.only)))
    _refuse_unprintable(plan.spec.title)
    spec = plan.spec
    margins = spec.paper.margins
    return lay_out(
        title=spec.title,
        subject="Full-scale curtain templates and work order",
        words=work_order.words(plan) if not only or WORDS in only else (),
        drawings=draw_templates(plan, only) if only != (WORDS,) else (),
        paper=paper_of(spec, options.paper),
        margins=(margins.left.mm, margins.right.mm, margins.top.mm, margins.bottom.mm),
        correction=Correction(spec.printer.across.mm / 100, spec.printer.along.mm / 100),
    )


def kit_files(plan: Plan, options: Options | None = None) -> tuple[Kit, dict[str, bytes]]:
    """The kit and every file of it, by file name: the same bytes from the same spec."""
    from .writers.kit_json import kit_record
    from .writers.pdf import pdf
    from .writers.svg import svg
    from .writers.text import text

    kit = make_kit(plan, options)
    record = json.dumps(kit_record(kit), ensure_ascii=False, indent=1) + "\n"
    files = {
        "kit.pdf": pdf(kit, _attachments(plan, options or Options())),
        "kit.json": record.encode(),
        "work-order.txt": text(work_order.words(plan)).encode(),
    }
    for drawing in kit.drawings:
        files[f"{drawing.file_name}.svg"] = svg(*alone(drawing), f"{' '.join(drawing.caption)} Scale 1:1.").encode()
    return kit, files


def write_files(files: dict[str, bytes], folder: Path) -> None:
    """Write ``files`` into ``folder``, which is made where it is missing.

    Every file is complete before the first takes its place, so one that exists
    is replaced whole or left as it was. Raises OSError where the system refuses.
    """
    if folder.exists() and not folder.is_dir():
        raise Refusal(Fault("--out", str(folder), "this is a file; name a folder"))
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


def faults_of(options: Options) -> list[Fault]:
    """What is wrong with ``options``, all of it."""
    faults = []
    if options.paper is not None and paper_named(options.paper) is None:
        faults.append(Fault("--paper", repr(options.paper), unknown_paper(options.paper)))
    known = [*TEMPLATES, WORDS]
    for asked in options.only:
        if _plain(asked) not in known:
            near = get_close_matches(_plain(asked), known, 1)
            hint = f"did you mean {near[0]!r}? " if near else ""
            faults.append(Fault("--only", repr(asked), f"no such template; {hint}there are {', '.join(known)}"))
    return faults


def _plain(name: str) -> str:
    """A template's name, hyphens, blanks and capitals aside."""
    return " ".join(name.lower().replace("-", " ").split())


def _refuse_unprintable(title: str) -> None:
    try:
        set_text(title, 10, True)
    except MissingGlyph as missing:
        raise Refusal(Fault("title", repr(title), str(missing))) from None


def _attachments(plan: Plan, options: Options) -> dict[str, str]:
    """The spec as it was read, and the options where there are any."""
    if not plan.spec.source:
        return {}
    asked = {"paper": options.paper, "only": list(options.only), "despite_stops": options.despite_stops}
    asked = {name: value for name, value in asked.items() if value}
    return {SPEC_NAME: plan.spec.source} | ({OPTIONS_NAME: json.dumps(asked)} if asked else {})
