"""Printers kept by name: what is written reads back, and a file that is not right is refused with every fault."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from templategen import read_length
from templategen.bars import BARS, NO_CORRECTION, NOTHING_READ, Bar, Reading, Readings
from templategen.errors import Refusal
from templategen.printers import forget_printer, keep_printer, known_printers, printer_named, printers_file


def _readings(across: str | None, along: str | None = None, bar: Bar | None = None) -> Readings:
    return Readings(*(Reading(read_length(text), bar) if text else None for text in (across, along)))


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "templategen" / "printers.toml"


def _faults(file: Path, text: str) -> list[str]:
    file.parent.mkdir(exist_ok=True)
    file.write_text(text)
    with pytest.raises(Refusal) as refusal:
        known_printers(file)
    assert all(fault.field.startswith(str(file)) for fault in refusal.value.faults)
    return [str(fault).removeprefix(str(file)).removeprefix(", ") for fault in refusal.value.faults]


def test_where_the_file_stands(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """XDG Base Directory Specification 0.8: $XDG_CONFIG_HOME; empty, unset or relative, $HOME/.config."""
    home = tmp_path / "home"
    monkeypatch.setenv("HOME", str(home))
    for value in ("", "relative/folder"):
        monkeypatch.setenv("XDG_CONFIG_HOME", value)
        assert printers_file() == home / ".config" / "templategen" / "printers.toml"
    monkeypatch.delenv("XDG_CONFIG_HOME")
    assert printers_file() == home / ".config" / "templategen" / "printers.toml"
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path / "xdg"))
    assert printers_file() == tmp_path / "xdg" / "templategen" / "printers.toml"


def test_nothing_is_kept_where_there_is_no_file(file: Path) -> None:
    assert known_printers(file) == {} and not file.parent.exists()


def test_the_file_is_plain_toml_that_a_person_can_read(file: Path) -> None:
    keep_printer("Reading room", _readings("99.2 mm", "99.6 mm"), file)
    keep_printer("office", _readings("4 1/32 in", "3 31/32 in", "4 in"), file)
    assert tomllib.loads(file.read_text()) == {
        "Reading room": {"across": "99.2 mm", "along": "99.6 mm"},
        "office": {"across": "4 1/32 in", "along": "3 31/32 in", "bar": "4 in"},
    }


_PLAIN_NAMES = st.text(
    st.characters(categories=["L", "N", "P", "S", "Zs"]).filter(str.isprintable), min_size=1, max_size=60
).filter(lambda name: name.strip() and name.strip().casefold() != "none")
_WITHIN = st.integers(9700, 10300)


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=60, deadline=None)
@given(_PLAIN_NAMES, _WITHIN, _WITHIN, st.sampled_from([None, *BARS]))
def test_what_is_kept_under_any_name_reads_back(
    file: Path, name: str, across: int, along: int, bar: Bar | None
) -> None:
    file.unlink(missing_ok=True)
    nominal = BARS[bar or "100 mm"]
    asked = Readings(*(Reading(nominal * number / 10_000, bar) for number in (across, along)))
    kept, before = keep_printer(name, asked, file)
    assert before == NOTHING_READ and kept.ratios == asked.ratios
    assert printer_named(f"  {name} ", file=file) == kept
    assert list(known_printers(file)) == [name.strip()]


def test_one_axis_is_kept_and_the_other_stays_as_it_was(file: Path) -> None:
    keep_printer("office", _readings("99.2 mm"), file)
    assert printer_named("office", file=file) == _readings("99.2 mm", "100 mm")
    _, before = keep_printer("OFFICE", _readings(None, "98 mm"), file)
    assert before == _readings("99.2 mm", "100 mm")
    assert known_printers(file) == {"office": _readings("99.2 mm", "98 mm")}


def test_readings_of_either_bar_stand_beside_each_other_with_nothing_lost(file: Path) -> None:
    keep_printer("office", _readings("4 1/32 in", None, "4 in"), file)
    kept, _ = keep_printer("office", _readings(None, "98 mm"), file)
    assert kept.ratios == _readings("4 1/32 in", bar="4 in").over(_readings(None, "98 mm")).ratios
    assert printer_named("office", file=file) == kept


def test_no_correction_has_a_name_of_its_own(file: Path) -> None:
    assert printer_named(" None", file=file) == NO_CORRECTION
    with pytest.raises(Refusal, match="needs no correction"):
        keep_printer("NONE", _readings("99 mm"), file)
    assert not file.exists()


@pytest.mark.parametrize("name", ["", "  ", "two\nlines", "bell\a", "x" * 61])
def test_a_name_that_cannot_be_shown_is_refused(file: Path, name: str) -> None:
    with pytest.raises(Refusal, match="NAME"):
        keep_printer(name, _readings("99 mm"), file)
    assert not file.exists()


def test_an_unknown_printer_is_refused_with_the_nearest_name(file: Path) -> None:
    with pytest.raises(Refusal, match="none is kept yet"):
        printer_named("office", file=file)
    keep_printer("Reading room", _readings("99.2 mm"), file)
    with pytest.raises(Refusal, match="did you mean Reading room"):
        printer_named("reding room", file=file)
    with pytest.raises(Refusal, match="did you mean Reading room"):
        forget_printer("reding room", file)


def test_a_printer_that_is_forgotten_is_gone_and_the_others_stay(file: Path) -> None:
    for name in ("office", "Reading room"):
        keep_printer(name, _readings("99.2 mm", "99 mm"), file)
    assert forget_printer("Office", file) == _readings("99.2 mm", "99 mm")
    assert list(known_printers(file)) == ["Reading room"]


def test_every_fault_in_the_file_is_told_with_its_field(file: Path) -> None:
    faults = _faults(
        file,
        'office = "99 mm"\n[hall]\nacross = "94.07 mm"\nalong = 99.5\n[none]\nacros = "99 mm"\n'
        '[desk]\nacross = "99 mn"\nalong = "99 mm"\nbar = "5 in"\n["Café 1"]\nacross = "99 mm"\n["café  1"]\n',
    )
    assert [fault.partition(":")[0] for fault in faults] == [
        "office", "hall.along", "none", "none.acros", "desk.bar", "desk.across", "café  1",
    ]  # fmt: skip
    assert "99.5 mm or 99.5 in" in faults[1] and "did you mean across?" in faults[3] and '"4 in"' in faults[4]
    assert "the same name as Café 1" in faults[6]


def test_a_reading_in_the_file_that_is_too_far_out_is_told_its_cause(file: Path) -> None:
    (fault,) = _faults(file, '[hall]\nacross = "94.07 mm"\n')
    assert fault.startswith('hall.across: read "94.07 mm" – less than 97 mm') and "A4 page fitted on letter" in fault


@pytest.mark.parametrize(
    ("text", "said"),
    [("[office", "line 1"), ('[office]\nacross = 99.2 mm\n', "line 2"), ("[a]\n[a]\n", "line 2"),
     ("x" * 17_000, "16 KiB"), ("a.b.c" * 200, "")],
)  # fmt: skip
def test_a_file_that_is_no_toml_is_told_its_line(file: Path, text: str, said: str) -> None:
    (fault,) = _faults(file, text)
    assert said in fault


def test_a_file_that_is_no_text_is_refused(file: Path) -> None:
    file.parent.mkdir()
    file.write_bytes(b"[office]\n\xff")
    with pytest.raises(Refusal, match="UTF-8"):
        known_printers(file)


def test_a_broken_file_is_not_written_over(file: Path) -> None:
    file.parent.mkdir()
    file.write_text("[office")
    for change in (lambda: keep_printer("hall", _readings("99 mm"), file), lambda: forget_printer("hall", file)):
        with pytest.raises(Refusal):
            change()
    assert file.read_text() == "[office"


def test_a_folder_in_the_files_place_and_a_file_in_the_folders(file: Path) -> None:
    file.mkdir(parents=True)
    with pytest.raises(Refusal, match="a folder, where the file"):
        keep_printer("hall", _readings("99 mm"), file)
    file.rmdir()
    file.parent.rmdir()
    file.parent.write_text("")
    with pytest.raises(Refusal, match="name a folder"):
        keep_printer("hall", _readings("99 mm"), file)


def test_a_link_to_a_file_elsewhere_stays_a_link(file: Path, tmp_path: Path) -> None:
    elsewhere = tmp_path / "dotfiles.toml"
    elsewhere.write_text("")
    file.parent.mkdir()
    file.symlink_to(elsewhere)
    keep_printer("hall", _readings("99 mm"), file)
    assert file.is_symlink() and "hall" in elsewhere.read_text()


def test_a_file_grown_too_long_to_be_read_is_not_written(file: Path) -> None:
    file.parent.mkdir()
    text = "".join(f'[p{i}]\nacross = "99.123456789 mm"\nalong = "99.123456789 mm"\n' for i in range(260))
    file.write_text(text + "#" * (16 * 1024 - len(text)))
    assert len(known_printers(file)) == 260
    before = file.read_text()
    with pytest.raises(Refusal, match="forget a printer first"):
        keep_printer("another", _readings("99.123456789 mm"), file)
    assert file.read_text() == before
