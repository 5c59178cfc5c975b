"""Telling the command what a printer does: by its bars, by name, or in the spec; what is said, and what is refused."""

from __future__ import annotations

import json
import os
from collections.abc import Callable
from pathlib import Path

import pytest

from .running import Run

EXAMPLE = Path(__file__).parents[2] / "out_examples" / "east-window" / "spec.toml"
Ratios = tuple[float, float]


@pytest.fixture
def spec(tmp_path: Path) -> Callable[[str], Path]:
    """The example, with more at its end, in a file of its own."""

    def written(more: str) -> Path:
        path = tmp_path / "changed.toml"
        path.write_text(f"{EXAMPLE.read_text()}\n{more}")
        return path

    return written


@pytest.fixture
def ratios(run: Run, tmp_path: Path) -> Callable[..., Ratios]:
    """What the kit that is made is corrected for, told from the bars' own lengths on the page."""

    def ratios(source: Path, *options: str) -> Ratios:
        out = tmp_path / "kit"
        status, _, _ = run("make", source, "--out", out, "--only", "cut gauge", *options)
        assert status == 0
        across, along = json.loads((out / "kit.json").read_text())["bars"][:2]
        return (
            round(100 / (across["to"][0] - across["from"][0]), 5),
            round(100 / (along["to"][1] - along["from"][1]), 5),
        )

    return ratios


IN_SPEC = '[printer]\nacross = "98 mm"\nalong = "98.5 mm"\n'


def test_readings_on_the_command_line_go_before_a_printers_name_and_that_before_the_spec(
    run: Run, spec: Callable[[str], Path], ratios: Callable[..., Ratios]
) -> None:
    path = spec(IN_SPEC)
    assert run("printer", "hall", "--across", "99.2 mm", "--along", "99.6 mm")[0] == 0
    assert ratios(path) == (0.98, 0.985)
    assert ratios(path, "--printer", "hall") == (0.992, 0.996)
    assert ratios(path, "--printer", "HALL", "--printer-along", "101 mm") == (0.992, 1.01)
    assert ratios(path, "--printer-across", "102 mm") == (1.02, 0.985)
    assert ratios(path, "--printer", "none") == (1, 1)
    assert ratios(EXAMPLE) == (1, 1)


@pytest.mark.parametrize("written", ["9.92 cm", "9,92 cm", "99.2mm", "99 1/5 mm", "0.0992 m"])
def test_every_form_of_a_length_is_read(ratios: Callable[..., Ratios], written: str) -> None:
    assert ratios(EXAMPLE, "--printer-across", written) == (0.992, 1)


def test_a_bare_number_is_in_the_units_of_the_spec(
    run: Run, spec: Callable[[str], Path], ratios: Callable[..., Ratios], tmp_path: Path
) -> None:
    assert ratios(EXAMPLE, "--printer-along", "3.9", "--printer-bar", "100 mm") == (1, 0.9906)
    path = spec("")
    path.write_text(path.read_text().replace('units = "inch"', 'units = "metric"'))
    assert ratios(path, "--printer-along", "99.5") == (1, 0.995)
    assert run("make", EXAMPLE, "--out", tmp_path / "out", "--printer-along", "99.5")[0] == 2


@pytest.mark.parametrize("bar", ["4 in", '4"', "101.6 mm", "4-inch"])
def test_the_bar_of_four_inches_is_measured_where_that_is_said(ratios: Callable[..., Ratios], bar: str) -> None:
    assert ratios(EXAMPLE, "--printer-across", "3 31/32 in", "--printer-along", "4 in", "--printer-bar", bar) == (
        0.99219, 1,
    )  # fmt: skip


def test_the_bar_is_said_in_the_spec_too(
    run: Run, spec: Callable[[str], Path], ratios: Callable[..., Ratios]
) -> None:
    path = spec('[printer]\nacross = "3 31/32 in"\nalong = "4 in"\nbar = "4 in"\n')
    assert ratios(path) == (0.99219, 1)
    assert ratios(path, "--printer-along", "99 mm") == (0.99219, 0.99)
    status, _, err = run("plan", spec('[printer]\nacross = "3 31/32 in"\nbar = "4 in"\n'))
    assert status == 2 and err.startswith("printer.along: missing, and needed with printer.bar")
    status, _, err = run("plan", spec('[printer]\nacross = "99 mm"\nalong = "99 mm"\nbar = "5 in"\n'))
    assert status == 2 and err.startswith('printer.bar: read "5 in"') and '"100 mm" or "4 in"' in err


def test_the_kit_says_what_it_is_corrected_for_and_nothing_else_does(run: Run, tmp_path: Path) -> None:
    status, out, err = run("make", EXAMPLE, "--out", tmp_path, "--printer-across", "99.2 mm")
    assert (status, err) == (0, "")
    assert "Corrected for a printer whose bars measured 99.2 mm across, 100 mm along.\n" in out
    status, out, err = run("make", EXAMPLE, "--out", tmp_path)
    assert (status, err) == (0, "") and "Corrected" not in out


@pytest.mark.parametrize(
    "options",
    [
        ["--printer", "hall"],
        ["--printer-across", "99 1/3 mm", "--paper", "a4"],
        ["--printer-across", "3 31/32 in", "--printer-along", "4 1/64 in", "--printer-bar", "4 in"],
        ["--printer", "none"],
    ],
)
def test_a_corrected_kit_is_made_again_from_its_pdf_where_nobody_knows_the_printer(
    run: Run, spec: Callable[[str], Path], configuration: Path, tmp_path: Path, options: list[str]
) -> None:
    assert run("printer", "hall", "--across", "99.2 mm", "--along", "99.6 mm")[0] == 0
    assert run("make", spec(IN_SPEC), "--out", tmp_path / "first", *options)[0] == 0
    (configuration / "templategen" / "printers.toml").unlink()
    assert run("make", tmp_path / "first" / "kit.pdf", "--out", tmp_path / "again")[0] == 0
    for path in (tmp_path / "first").iterdir():
        assert path.read_bytes() == (tmp_path / "again" / path.name).read_bytes(), path.name


def test_a_kit_made_again_takes_new_readings_before_those_it_carries(
    run: Run, ratios: Callable[..., Ratios], tmp_path: Path
) -> None:
    first = tmp_path / "first"
    made = run("make", EXAMPLE, "--out", first, "--printer-across", "99.2 mm", "--printer-along", "99.6 mm")
    assert made[0] == 0
    assert ratios(first / "kit.pdf", "--printer-along", "101 mm") == (0.992, 1.01)
    _, _, err = run("make", first / "kit.pdf", "--out", tmp_path / "again", "--printer-across", "99.8 mm")
    assert err.startswith("warning: these readings take the place of 99.2 mm across") and "give 99.00 mm across" in err


@pytest.mark.parametrize(
    "readings", ["[]", '{"across": "99 mm"}', '{"across": {"reads": "90 mm"}}', '{"up": {"reads": "99 mm"}}']
)
def test_readings_that_were_tampered_with_are_refused(run: Run, tmp_path: Path, readings: str) -> None:
    import pikepdf

    assert run("make", EXAMPLE, "--out", tmp_path, "--printer-across", "99 mm")[0] == 0
    options = f'{{"paper": null, "only": [], "printer": {readings}}}'
    with pikepdf.open(tmp_path / "kit.pdf", allow_overwriting_input=True) as kit:
        kit.attachments["make.json"] = pikepdf.AttachedFileSpec(kit, options.encode(), filename="make.json")
        kit.save()
    status, _, err = run("make", tmp_path / "kit.pdf", "--out", tmp_path / "out")
    assert status == 2 and "damaged or locked" in err and not (tmp_path / "out").exists()


def test_every_fault_of_the_readings_is_told_beside_those_of_the_spec(
    run: Run, spec: Callable[[str], Path], tmp_path: Path
) -> None:
    path = spec("")
    path.write_text(path.read_text().replace('width = "54 in"', 'width = "54 on"'))
    status, out, err = run(
        "make", path, "--out", tmp_path / "out", "--paper", "a44", "--printer", "hall",
        "--printer-across", "ninety", "--printer-along", "99.5", "--printer-bar", "5 in",
    )  # fmt: skip
    assert (status, out) == (2, "") and not (tmp_path / "out").exists()
    fields = [line.partition(":")[0] for line in err.splitlines()]
    assert fields == ["panel.width", "--paper", "--printer", "--printer-bar", "--printer-across"]


def test_a_bar_without_a_reading_of_it_is_refused(run: Run, tmp_path: Path) -> None:
    status, _, err = run("make", EXAMPLE, "--out", tmp_path / "out", "--printer-bar", "4 in")
    assert status == 2 and err.startswith("--printer-bar: ") and "--printer-across" in err


@pytest.mark.parametrize(
    ("across", "along", "cause"),
    [
        ("94.07 mm", "94 mm", "an A4 page fitted on letter paper"),
        ("96.8 mm", "96.9 mm", "a letter page fitted on A4 paper"),
        ("104 mm", "104 mm", "borderless printing"),
        ("95.2 mm", "95.2 mm", "shrunk to what the printer reaches"),
        ("50 mm", "50 mm", "a setting, not the printer"),
        ("94 mm", "100 mm", "A setting would change both bars alike"),
    ],
)
def test_more_than_three_per_cent_is_refused_with_the_likely_cause(
    run: Run, tmp_path: Path, across: str, along: str, cause: str
) -> None:
    """Ratios of sheet sizes: 279.4 / 297 and 210 / 215.9; borderless and shrunk: common practice, no source."""
    told = ["--printer-across", across, "--printer-along", along]
    status, out, err = run("make", EXAMPLE, "--out", tmp_path / "out", *told)
    assert (status, out) == (2, "") and not (tmp_path / "out").exists()
    assert err.startswith(f'--printer-across: read "{across}" – ') and cause in err
    assert len(err.splitlines()) == sum(abs(float(text.split()[0]) - 100) > 3 for text in (across, along))


def test_readings_that_look_like_a_setting_are_corrected_and_questioned(
    run: Run, spec: Callable[[str], Path], ratios: Callable[..., Ratios], tmp_path: Path
) -> None:
    path = spec('[printer]\nacross = "97.25 mm"\nalong = "97.25 mm"\n')
    assert ratios(path) == (0.9725, 0.9725)
    status, _, err = run("make", path, "--out", tmp_path / "out")
    assert status == 0 and err.startswith("warning: the bars measured 97.25 mm across, 97.25 mm along, and 97.27 % is")
    status, _, err = run("make", EXAMPLE, "--out", tmp_path / "out", "--printer-across", "3 31/32 in")
    assert status == 0 and "--printer-bar" in err


def test_printers_are_kept_shown_listed_and_forgotten(run: Run, configuration: Path) -> None:
    file = configuration / "templategen" / "printers.toml"
    assert run("printer") == (0, "No printer is kept yet.\n", "")
    status, out, err = run("printer", "Reading room", "--across", "99.2mm", "--along", "99.6mm")
    assert (status, err) == (0, "") and out == f"Kept: Reading room, 99.2 mm across, 99.6 mm along, in {file}.\n"
    assert run("printer", "office", "--along", "4 1/64 in", "--bar", "4 in")[0] == 0
    assert run("printer", "reading room") == (0, "reading room: 99.2 mm across, 99.6 mm along\n", "")
    listed = run("printer")[1].splitlines()
    assert listed == [
        "Reading room: 99.2 mm across, 99.6 mm along",
        "office: 4 in of 4 in across, 4 1/64 in of 4 in along",
        f"Kept in {file}.",
    ]
    assert run("printer", "Reading room", "--forget")[0] == 0
    assert run("printer", "Reading room")[0] == 2


def test_new_readings_of_a_kept_printer_warn_of_sheets_that_were_corrected(run: Run) -> None:
    assert run("printer", "hall", "--across", "99.2 mm")[0] == 0
    status, _, err = run("printer", "hall", "--across", "99.8 mm")
    assert status == 0 and "give 99.00 mm across instead" in err


@pytest.mark.parametrize(
    ("arguments", "fields"),
    [
        (["--across", "99 mm"], ["NAME"]),
        (["--forget"], ["NAME"]),
        (["none", "--across", "94 mm", "--along", "ninety"], ["NAME", "--along"]),
        (["none", "--across", "94 mm", "--along", "94 mm"], ["NAME", "--across", "--along"]),
        (["hall", "--across", "99", "--forget"], ["--across", "--forget"]),
        (["hall", "--bar", "4 in"], ["--bar"]),
        (["hall"], ["NAME"]),
        (["hall", "--forget"], ["NAME"]),
    ],
)
def test_what_is_wrong_with_a_printer_is_told_at_once_and_nothing_kept(
    run: Run, configuration: Path, arguments: list[str], fields: list[str]
) -> None:
    status, out, err = run("printer", *arguments)
    assert (status, out) == (2, "")
    assert [line.partition(":")[0] for line in err.splitlines()] == fields
    assert list(configuration.iterdir()) == []


def test_an_unknown_printer_is_told_the_nearest_name(run: Run, tmp_path: Path) -> None:
    assert run("printer", "Reading room", "--across", "99.2 mm")[0] == 0
    status, _, err = run("make", EXAMPLE, "--out", tmp_path / "out", "--printer", "reding room")
    assert status == 2 and err.startswith("--printer: ") and "did you mean Reading room?" in err
    assert not (tmp_path / "out").exists()


def test_a_broken_file_of_printers_is_in_nobodys_way_but_of_who_asks_for_one(
    run: Run, configuration: Path, tmp_path: Path
) -> None:
    file = configuration / "templategen" / "printers.toml"
    file.parent.mkdir()
    file.write_text('[hall]\nacross = "99 mn"\nalong = "90 mm"\n[desk]\nacros = "99 mm"\n')
    assert run("make", EXAMPLE, "--out", tmp_path / "kit", "--printer-across", "99 mm")[0] == 0
    status, _, err = run("make", EXAMPLE, "--out", tmp_path / "out", "--printer", "desk", "--paper", "a44")
    assert status == 2 and not (tmp_path / "out").exists()
    said = [line.partition(": ")[0] for line in err.splitlines()]
    assert said == ["--paper", f"{file}, hall.across", f"{file}, desk.acros"]
    for arguments in (["printer"], ["printer", "hall"], ["printer", "new", "--across", "99 mm"]):
        assert run(*arguments)[0] == 2
    assert "acros" in file.read_text()


def test_a_configuration_that_may_not_be_written_is_one_line_and_leaves_the_file(
    run: Run, configuration: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert run("printer", "hall", "--across", "99.2 mm")[0] == 0
    file = configuration / "templategen" / "printers.toml"
    before = file.read_text()

    def refuse(*_: object) -> None:
        raise PermissionError(13, "Permission denied", str(file))

    monkeypatch.setattr(os, "replace", refuse)
    status, out, err = run("printer", "desk", "--across", "99 mm")
    assert (status, out, err) == (1, "", f"{file}: Permission denied\n")
    assert file.read_text() == before and [path.name for path in file.parent.iterdir()] == ["printers.toml"]


def test_a_file_of_printers_that_may_not_be_read_is_one_line(
    run: Run, configuration: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert run("printer", "hall", "--across", "99.2 mm")[0] == 0
    file = configuration / "templategen" / "printers.toml"
    opened = Path.open

    def refuse(self: Path, *arguments: object, **named: object) -> object:
        if self == file:
            raise PermissionError(13, "Permission denied", str(file))
        return opened(self, *arguments, **named)  # type: ignore[call-overload]

    monkeypatch.setattr(Path, "open", refuse)
    for arguments in (["printer"], ["make", str(EXAMPLE), "--out", str(tmp_path / "out"), "--printer", "hall"]):
        assert run(*arguments) == (1, "", f"{file}: Permission denied\n")
    assert not (tmp_path / "out").exists()
