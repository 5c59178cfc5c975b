"""What the page's interface answers, as plain functions: a text and a form in, plain data or bytes out.

They take the public steps that every face takes, so that a kit is the very kit of the command line. Each runs in a
worker's process and keeps nothing between two calls but what is remembered of pictures and lettering.
"""

from __future__ import annotations

import base64
import io
import re
import zipfile
from collections.abc import Iterator, Mapping
from functools import lru_cache
from typing import Any

from ..document.blocks import Numbers
from ..document.setting import set_view
from ..document.view import View
from ..errors import Fault, Refusal
from ..form import described, form_of, form_record, from_record, tables_of, text_of, understood
from ..guides import guide_trees
from ..layout import Kit
from ..layout.budget_words import plan_lines
from ..layout.kit_words import tell_sheets
from ..lengths.counting import plural
from ..making import kit_files, make_kit
from ..options import Options, faults_of
from ..planning import JobPlan, Plan, as_job, plan_for, record_of
from ..spec import read_spec_or_job
from ..spec.jobs.reading import is_job, job_from_tables
from ..spec.reading import spec_from_tables
from ..work_order.order import in_short
from ..work_order.order import numbers as numbers_of
from ..work_order.pictures.before_the_cut import cut
from ..work_order.pictures.panel import flat, hanging
from ..writers.drawn import tree
from ..writers.pdf import pdf
from .seeing import png, pngs

WIDE, SIZE, TALLEST = 104.0, 9.5, 62.0
"""A live picture's width and height in mm and its type in points: our choice, read at the width of half a screen."""
THUMB = 320
"""Pixels that a small picture of a sheet is wide."""
SPEC_FILE = "spec.toml"
_WHAT = {
    "kit.pdf": "the whole kit, to print", "work-order.html": "the work order for a screen",
    "work-order.txt": "the work order as plain text", "kit.json": "what is where on the paper, for other programs",
    SPEC_FILE: "your measurements, to open again",
}  # fmt: skip
A_TEMPLATE = "one template at its true size"


class Misread(Refusal):
    """A refusal that says what was understood as well."""

    def __init__(self, understood: Mapping[str, str], *faults: Fault) -> None:
        super().__init__(*faults)
        self.understood = dict(understood)


def fields() -> dict[str, Any]:
    """The form described."""
    return described()


def guides() -> dict[str, Any]:
    """The pictures of what each field measures, by key."""
    return guide_trees()


def form_in(spec: str) -> dict[str, Any]:
    """What a form says that this text was opened in. Raises Refusal where it is no TOML."""
    return {"form": form_record(form_of(tables_of(spec, None)))}


def spec_text(spec: str, form: Mapping[str, Any] | None) -> dict[str, Any]:
    """The text with the form laid over it, to be saved, right or not. Raises Refusal where the text is no TOML."""
    return {"spec": text_of(spec, from_record(form))}


def plan(spec: str, form: Mapping[str, Any] | None, window: int = 0) -> dict[str, Any]:
    """Everything that was worked out; numbers and pictures are those of one window, counted from 0.

    Raises Misread with every fault.
    """
    tables = tables_of(spec, from_record(form))
    said = understood(tables)
    try:
        made = _planned(tables)
    except Refusal as refusal:
        raise Misread(said, *refusal.faults) from None
    job = as_job(made)
    shown = job.windows[min(window, len(job.windows) - 1)].plan
    return {
        "understood": said,
        "plan": record_of(made),
        "in_short": in_short(shown),
        "numbers": list(_numbers(shown)),
        "notices": [{"code": each.code, "level": each.level, "text": each.text} for each in job.notices],
        "pictures": [_picture(view) for view in (flat(shown), cut(shown), hanging(shown))],
        "parts": [list(part.labels) for part in job.parts if job.named],
        "stopped": bool(job.stops),
    }


def sheets(spec: str, form: Mapping[str, Any] | None, despite_stops: bool = False) -> dict[str, Any]:
    """The sheets as they will print, small, and what they are. Raises Refusal and StoppedPlan."""
    text, kit, files = _kit(spec, form, despite_stops)
    small = pngs(files["kit.pdf"], THUMB)
    files[SPEC_FILE] = text.encode()
    return {
        "paper": kit.paper.name,
        "count": len(kit.sheets),
        "said": f"Print {plural(len(kit.sheets), 'sheet')} of {kit.paper.said}, actual size, 100 %, one-sided.",
        "told": [tell_sheets(kit), *(line.strip() for line in plan_lines(kit.budgets, kit.tape, 400) if line.strip())],
        "correction": kit.correction.remark,
        "fingerprint": kit.fingerprint,
        "pages": [
            {
                "page": sheet.number, "holds": list(sheet.holds), "width_mm": float(kit.paper.width),
                "height_mm": float(kit.paper.height), "png": base64.b64encode(picture).decode(),
            }
            for sheet, picture in zip(kit.sheets, small, strict=True)
        ],
        "files": [
            {"name": name, "size": len(content), "what": _WHAT.get(name, A_TEMPLATE)} for name, content in files.items()
        ],
    }  # fmt: skip


def sheet(spec: str, form: Mapping[str, Any] | None, page: int, width: int, despite_stops: bool = False) -> bytes:
    """One sheet as it will print, ``width`` pixels wide, as PNG. Raises Refusal where there is no such page."""
    made = plan_for(read_spec_or_job(text_of(spec, from_record(form))))
    kit = make_kit(made, Options(despite_stops=despite_stops))
    if not 1 <= page <= len(kit.sheets):
        raise Refusal(Fault("page", str(page), f"the kit has pages 1 to {len(kit.sheets)}; write one of them"))
    return png(pdf(kit, {}), page - 1, width)


def kit(
    spec: str, form: Mapping[str, Any] | None, file: str | None, despite_stops: bool = False
) -> tuple[str, str, bytes]:
    """One file of the kit by name, or all of them and the spec in a zip: its name, its media type, its bytes.

    Raises Refusal and StoppedPlan, and Refusal where the kit has no such file.
    """
    if file == SPEC_FILE:
        return SPEC_FILE, "application/toml", text_of(spec, from_record(form)).encode()
    text, _, files = _kit(spec, form, despite_stops)
    if file is None:
        return "kit.zip", "application/zip", _zipped(files | {SPEC_FILE: text.encode()})
    if file not in files:
        raise Refusal(Fault("file", repr(file[:80]), f"the kit has no such file; it has {', '.join(files)}"))
    return file, _MEDIA[file.rpartition(".")[2]], files[file]


_MEDIA = {
    "pdf": "application/pdf", "svg": "image/svg+xml", "json": "application/json",
    "txt": "text/plain; charset=utf-8", "html": "text/html; charset=utf-8",
}  # fmt: skip


def _planned(tables: Mapping[str, Any]) -> Plan | JobPlan:
    made = plan_for(job_from_tables(tables) if is_job(tables) else spec_from_tables(tables))
    if faults := faults_of(Options(), made.spec):
        raise Refusal(*faults)
    return made


def _kit(spec: str, form: Mapping[str, Any] | None, despite_stops: bool) -> tuple[str, Kit, dict[str, bytes]]:
    text = text_of(spec, from_record(form))
    made, files = kit_files(plan_for(read_spec_or_job(text)), Options(despite_stops=despite_stops))
    return text, made, files


def _zipped(files: Mapping[str, bytes]) -> bytes:
    """The files in a zip, the same bytes from the same files: each is dated as early as a zip can say."""
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in files.items():
            archive.writestr(zipfile.ZipInfo(name), content, zipfile.ZIP_DEFLATED)
    return packed.getvalue()


def _numbers(plan: Plan) -> Iterator[dict[str, Any]]:
    for block in numbers_of(plan):
        if isinstance(block, Numbers):
            rows = [{"label": row.label, "value": row.value, "working": row.working} for row in block.rows]
            yield {"title": block.name, "rows": rows}


@lru_cache(maxsize=64)
def _picture(view: View) -> dict[str, Any]:
    """Remembered: a key changes some of the pictures, and seldom all."""
    setting = set_view(view, WIDE, SIZE, TALLEST)
    return {
        "title": view.title, "spoken": read_out(view.spoken), "scale": setting.scale,
        "picture": tree(setting.items, setting.width, setting.height),
    }  # fmt: skip


def read_out(spoken: str) -> str:
    """What a picture shows, for the ear: a sign after a reading, "9 in −", is heard as taking away."""
    words = {"+": "(a hair over)", "−": "(a hair under)"}
    return re.sub(r"(?<=\d (?:in|mm) )[+−](?!\w)", lambda sign: words[sign[0]], spoken)
