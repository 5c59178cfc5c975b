"""A spec from a file that a person named, rightly or wrongly."""

from __future__ import annotations

from pathlib import Path

import pytest

from templategen.errors import Refusal
from templategen.spec import load_spec, read_spec, starting_spec


def refusal_of(path: Path) -> str:
    with pytest.raises(Refusal) as refusal:
        load_spec(path)
    return str(refusal.value)


def test_a_file_says_what_its_text_says(tmp_path: Path) -> None:
    path = tmp_path / "east window.toml"
    path.write_bytes(b"\xef\xbb\xbf" + starting_spec().replace("\n", "\r\n").encode())
    assert load_spec(path) == read_spec(starting_spec())
    assert load_spec(str(path)).source.startswith("\ufeff# A spec")


def test_a_file_that_is_no_spec_is_refused(tmp_path: Path) -> None:
    assert "no such file" in refusal_of(tmp_path / "nothing.toml")
    assert "a folder" in refusal_of(tmp_path)
    (tmp_path / "latin.toml").write_bytes(b'title = "x"\ncloth = "S\xfcd"\n')
    assert "line 2" in refusal_of(tmp_path / "latin.toml") and "UTF-8" in refusal_of(tmp_path / "latin.toml")
    (tmp_path / "big.toml").write_bytes(b"#" * (1024 * 1024 + 1))
    assert "1 MiB" in refusal_of(tmp_path / "big.toml")
    assert "no such file" in refusal_of(tmp_path / "latin.toml" / "under")


def test_what_the_system_forbids_stays_an_os_error(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def forbidden(*args: object, **kwargs: object) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(Path, "open", forbidden)
    with pytest.raises(PermissionError):
        load_spec(tmp_path / "locked.toml")
