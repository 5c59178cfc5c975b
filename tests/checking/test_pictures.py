"""Kits whose pages have become pictures: measured in them, as exactly as their points allow and no more."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from templategen.errors import Refusal

from . import handling as by
from .kits import kit
from .measuring import bars_seen
from .test_print_paths import LETTER, codes, fitted, judged

GAUGE = ("cut gauge",)
LOST = {"preferences-lost", "attachment-lost", "text-lost", "picture"}

PICTURES: dict[str, tuple[Callable[[], bytes], float, float]] = {
    "300 points to the inch": (lambda: by.rasterised(kit(only=GAUGE), 300), 300, 1),
    "200": (lambda: by.rasterised(kit(only=GAUGE), 200), 200, 1),
    "150": (lambda: by.rasterised(kit(only=GAUGE), 150), 150, 1),
    "100": (lambda: by.rasterised(kit(only=GAUGE), 100), 100, 1),
    "150, in two tones": (lambda: by.rasterised(kit(only=GAUGE), 150, "1"), 150, 1),
    "150, pressed hard": (lambda: by.rasterised(kit(only=GAUGE), 150, "RGB", quality=30), 150, 1),
    "Ghostscript, 150": (lambda: by.ghostscript(kit(only=GAUGE), "-r150", device="pdfimage24"), 150, 1),
    "Ghostscript, fitted on A4, 300": (
        lambda: by.ghostscript(
            kit(only=GAUGE), "-r300", "-sPAPERSIZE=a4", "-dFIXEDMEDIA", "-dPDFFitPage", device="pdfimage8"
        ),
        300,
        595 / 612,  # Ghostscript's A4 is 595 points wide
    ),
    "letter fitted on A4 by a queue, then drawn": (
        lambda: by.rasterised(by.queued(kit(only=GAUGE), "PageSize=A4 fit-to-page"), 200),
        200,
        fitted(LETTER, (210, 297), 18 * 25.4 / 72),
    ),
}


@pytest.mark.parametrize(("handled", "dpi", "scale"), PICTURES.values(), ids=PICTURES)
def test_a_picture_is_measured_as_exactly_as_its_points_allow(
    handled: Callable[[], bytes], dpi: float, scale: float, tmp_path: Path
) -> None:
    pdf = handled()
    verdict = judged(pdf, tmp_path)
    point = 25.4 / dpi / 100
    assert verdict.within == pytest.approx(point / 2 / scale, rel=0.02)
    assert codes(verdict) == LOST | (set() if scale == 1 else {"scaled"})
    assert verdict.true == (scale == 1)
    seen = bars_seen(pdf)
    for ratio, shown in ((verdict.across, seen.level), (verdict.along, seen.upright)):
        assert ratio is not None
        # Programs set an edge on the nearest point or on the next: one at either end.
        assert abs(ratio - scale) < point + 5e-4
        assert min(abs(ratio - other) for other in shown) < point + 5e-4


def test_a_picture_too_coarse_to_measure_is_refused_or_told_apart(tmp_path: Path) -> None:
    """At 20 points to the inch 100 mm and 4 in differ by a point and a quarter."""
    with pytest.raises(Refusal, match="none of its pages has the two bars"):
        judged(by.rasterised(kit(only=GAUGE), 20), tmp_path)


def test_a_mirrored_picture_is_told_by_the_side_on_which_4_in_lies(tmp_path: Path) -> None:
    verdict = judged(by.rasterised(by.queued(kit(only=GAUGE), "mirror"), 150), tmp_path)
    assert codes(verdict, "wrong") == {"mirrored"}


def test_several_sheets_in_one_picture_are_several(tmp_path: Path) -> None:
    verdict = judged(by.rasterised(by.queued(by.pages(kit(), only=[3, 4]), "number-up=2"), 300), tmp_path)
    assert codes(verdict, "wrong") == {"several-up"}
    assert verdict.across == pytest.approx(396 / 612, abs=1e-3)
    assert len(verdict.sheets) == 2


def test_a_turned_picture_knows_across_from_along(tmp_path: Path) -> None:
    stretched = by.pages(kit(only=GAUGE), lambda page: by.transformed(page, 1, 0, 0, 0.95, 0, 0))
    verdict = judged(by.rasterised(by.qpdf(stretched, "--rotate=+90"), 200), tmp_path)
    assert (verdict.across, verdict.along) == (pytest.approx(1, abs=2e-3), pytest.approx(0.95, abs=2e-3))
    assert codes(verdict, "wrong") == {"stretched"} and "turned" in codes(verdict)
