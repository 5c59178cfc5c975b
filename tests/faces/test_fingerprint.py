"""The fingerprint of a kit: what changes it, where it stands, and a kit that is made only if it is the very one."""

from __future__ import annotations

import json
import re
import shlex
from functools import cache
from hashlib import sha256
from io import BytesIO
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pypdf import PdfReader

from templategen import Options, kit_files, make_kit, make_plan, read_spec
from templategen.bars import Reading, Readings
from templategen.fingerprint import faults_in_fingerprint, fingerprint_of, read_fingerprint, written
from templategen.lengths import millimetres
from templategen.planning import plan_for
from templategen.remaking import carried_by
from templategen.spec import read_spec_or_job
from templategen.version import __version__
from templategen.work_order.again import command

from .running import Run

ROOT = Path(__file__).parents[2]
EXAMPLE = ROOT / "out_examples" / "east-window" / "spec.toml"
TEXT = EXAMPLE.read_text()
LIBRARY = ROOT / "tests" / "jobs" / "library.toml"


def made_anew(text: str, options: Options | None = None) -> str:
    """The fingerprint of the kit."""
    return make_kit(plan_for(read_spec_or_job(text)), options).fingerprint


made = cache(made_anew)


def carried_in(pdf: bytes) -> dict[str, str]:
    return {name: content[0].decode() for name, content in PdfReader(BytesIO(pdf)).attachments.items()}


# --- what it is --------------------------------------------------------------------------------------


def test_eight_digits_of_sha_256_of_what_the_kit_carries() -> None:
    """By hand: every part after its length in bytes."""
    whole = b"5:0.4.0" + b"9:spec.toml" + "6:é = 1".encode()
    assert fingerprint_of({"spec.toml": "é = 1"}, "0.4.0") == written(sha256(whole).hexdigest()[:8])
    assert re.fullmatch("[0-9a-f]{4}-[0-9a-f]{4}", made(TEXT))
    assert fingerprint_of({}) == ""


def test_the_same_spec_options_and_version_have_the_same_fingerprint() -> None:
    options = Options("a4", ("cut gauge",), half_strip=True)
    assert made_anew(TEXT, options) == made_anew(TEXT, options) != made(TEXT)


def test_passing_a_stop_makes_no_other_kit() -> None:
    assert made(TEXT, Options(despite_stops=True)) == made(TEXT)


@pytest.mark.parametrize(
    "options",
    [
        Options("a4"),
        Options(only=("cut gauge",)),
        Options(orientation="landscape"),
        Options(half_strip=True),
        Options(half_strip=False),
        Options(strips=2),
        Options(printer=Readings(Reading(millimetres(99)))),
    ],
)
def test_every_option_changes_it(options: Options) -> None:
    assert made(TEXT, options) != made(TEXT)


def test_a_changed_character_changes_it_in_a_comment_too() -> None:
    texts = [TEXT, f"{TEXT}\n", f"{TEXT}# note", f"{TEXT}# Note", TEXT.replace('"54 in"', '"54.0 in"')]
    assert len({made(text) for text in texts}) == len(texts)


def test_another_version_makes_another_kit() -> None:
    assert fingerprint_of({"spec.toml": TEXT}, "0.4.0") != fingerprint_of({"spec.toml": TEXT}, "0.4.1")


@given(st.dictionaries(st.sampled_from(["spec.toml", "make.json"]), st.text(max_size=30), min_size=1), st.data())
def test_what_is_carried_does_not_run_together(carried: dict[str, str], data: st.DataObject) -> None:
    name = data.draw(st.sampled_from(sorted(carried)))
    other = carried | {name: data.draw(st.text(max_size=30))}
    assert (fingerprint_of(other) == fingerprint_of(carried)) == (other == carried)


@given(st.text("0123456789abcdef", min_size=8, max_size=8), st.sampled_from(["", "-", " ", "–", " - ", "\u2011"]))
def test_it_is_read_however_it_is_typed(digits: str, between: str) -> None:
    typed = f" {digits[:4].upper()}{between}{digits[4:]} "
    assert read_fingerprint(typed) == written(digits)
    assert read_fingerprint(f"{digits[:2]} {digits[2:]}") == written(digits)
    assert not faults_in_fingerprint(typed)


@pytest.mark.parametrize("typed", ["", "3f9c", "3f9c-21abc", "3f9c-21ag", "3f9c/21ab", "３f9c-21ab", "x" * 500, "--"])
def test_what_is_no_fingerprint_is_not_read(typed: str) -> None:
    assert read_fingerprint(typed) is None
    (fault,) = faults_in_fingerprint(typed)
    assert fault.field == "--fingerprint" and "8 digits" in fault.right


# --- where it stands ---------------------------------------------------------------------------------


def test_it_stands_on_stdout_in_kit_json_and_in_the_pdf(run: Run, tmp_path: Path) -> None:
    status, out, _ = run("make", EXAMPLE, "--out", tmp_path)
    record = json.loads((tmp_path / "kit.json").read_text())
    mark = record["fingerprint"]
    assert status == 0 and f"Fingerprint {mark}\n" in out
    assert mark == fingerprint_of({"spec.toml": TEXT}, __version__)
    assert PdfReader(tmp_path / "kit.pdf").metadata["/Keywords"] == f"Fingerprint {mark}"


def test_the_pdf_carries_all_that_its_fingerprint_is_taken_of() -> None:
    for options in (Options(), Options("a4", ("cut gauge",), strips=2)):
        kit, files = kit_files(make_plan(read_spec(TEXT)), options)
        assert fingerprint_of(carried_in(files["kit.pdf"])) == kit.fingerprint
        assert kit_files(make_plan(read_spec(TEXT)), options)[1] == files


def test_a_kit_made_again_from_its_own_pdf_has_the_same(run: Run, tmp_path: Path) -> None:
    asked = ["--paper", "a4", "--strips", "2", "--printer-along", "99.5 mm"]
    assert run("make", EXAMPLE, "--out", tmp_path / "one", *asked)[0] == 0
    pdf = tmp_path / "one" / "kit.pdf"
    mark = fingerprint_of(carried_in(pdf.read_bytes()))
    assert run("make", pdf, "--out", tmp_path / "two", "--fingerprint", mark)[0] == 0
    assert (tmp_path / "two" / "kit.pdf").read_bytes() == pdf.read_bytes()
    text, options = carried_by(pdf)
    assert made(text, options) == mark


# --- the very kit ------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("source", "asked"),
    [
        (EXAMPLE, []),
        (EXAMPLE, ["--paper", "A4", "--only", "Cut-Gauge", "--only", "print check"]),
        (EXAMPLE, ["--orientation", "least", "--half-strip", "--strips", "2"]),
        (EXAMPLE, ["--printer-across", "99,5 mm", "--printer-along", "100.25 mm", "--printer-bar", "100 mm"]),
        (EXAMPLE, ["--printer", "none", "--whole-strip"]),
        (LIBRARY, ["--paper", "letter"]),
    ],
)
def test_the_command_of_the_record_makes_the_very_kit_again(
    run: Run, tmp_path: Path, source: Path, asked: list[str]
) -> None:
    assert run("make", source, "--out", tmp_path / "one", *asked)[0] == 0
    pdf = tmp_path / "one" / "kit.pdf"
    _, *words = shlex.split(command(carried_in(pdf.read_bytes()), str(source), str(tmp_path / "two")))
    status, _, err = run(*words)
    assert (status, err) == (0, "")
    assert {path.name: path.read_bytes() for path in (tmp_path / "two").iterdir()} == {
        path.name: path.read_bytes() for path in (tmp_path / "one").iterdir()
    }


@pytest.mark.parametrize("change", [str.upper, lambda mark: mark.replace("-", " "), lambda mark: mark.replace("-", "")])
def test_the_fingerprint_asked_for_in_other_ways(run: Run, tmp_path: Path, change: object) -> None:
    assert callable(change)
    assert run("make", EXAMPLE, "--out", tmp_path, "--fingerprint", change(made(TEXT)))[0] == 0


@pytest.mark.parametrize("other", [["--paper", "a3"], []])
def test_another_kit_is_refused_and_nothing_is_written(run: Run, tmp_path: Path, other: list[str]) -> None:
    asked = made(TEXT) if other else "0000-0000"
    status, out, err = run("make", EXAMPLE, "--out", tmp_path / "kit", "--fingerprint", asked, *other)
    assert (status, out) == (2, "") and not (tmp_path / "kit").exists()
    would_be = made(TEXT, Options("a3")) if other else made(TEXT)
    assert asked in err and would_be in err
    assert all(word in err for word in ("spec", "options", "version", __version__, "Nothing was written"))


def test_what_is_no_fingerprint_is_refused_with_everything_else_that_is_wrong(run: Run, tmp_path: Path) -> None:
    status, out, err = run("make", EXAMPLE, "--out", tmp_path / "kit", "--fingerprint", "xyz", "--paper", "a99")
    assert (status, out) == (2, "") and not (tmp_path / "kit").exists()
    assert "--fingerprint: read 'xyz'" in err and "--paper" in err


def test_a_kit_that_carries_no_spec_has_none() -> None:
    """A spec made of values and not of a text cannot be made again from its kit."""
    spec = read_spec(TEXT).model_copy()
    spec._source = ""
    kit, files = kit_files(make_plan(spec))
    assert kit.fingerprint == "" and not (PdfReader(BytesIO(files["kit.pdf"])).metadata or {})["/Keywords"]
