"""Five hundred random plans: no words of a work order touch other words, a line or a filled shape."""

from __future__ import annotations

from fractions import Fraction

import pytest

from templategen.document.blocks import Gate, Pictures, Step
from templategen.document.setting import set_view
from templategen.document.view import View
from templategen.drawing import LARGE, USUAL
from templategen.layout.area import Area
from templategen.layout.flowing import flow
from templategen.planning import Plan
from tests.document.laws import outside, touching

from .random_plans import random_plan
from .said import words

PLANS = 500
PARTS = 20
"""Parts that the plans are tried in, so that they can be shared out."""
LETTER = Area(Fraction(10), Fraction(30), Fraction(195), Fraction(260))
"""What letter paper leaves for words, in mm."""
ROOMS = ((92.5, 9.0, 62.0), (180.0, 18.0, 100.0))
"""Width, size of type and height of a step's picture: beside its words, and in large print below them."""


def views(plan: Plan) -> list[View]:
    """Every picture of the work order."""
    found = []
    for block in words(plan):
        if isinstance(block, Step | Gate) and block.view is not None:
            found.append(block.view)
        elif isinstance(block, Pictures):
            found += block.views
    return found


@pytest.mark.parametrize("part", range(PARTS))
def test_no_word_of_a_picture_touches_anything(part: int) -> None:
    for number in range(part, PLANS, PARTS):
        for i, view in enumerate(views(random_plan(number))):
            width, size, tallest = ROOMS[(number + i) % 2]
            setting = set_view(view, width, size, tallest)
            assert setting.width <= width + 0.01, (number, view.title)
            assert outside(setting) == [], (number, view.title)
            assert touching(setting.items) == [], (number, view.title)


@pytest.mark.parametrize("part", range(8))
def test_no_word_of_a_page_touches_anything(part: int) -> None:
    """Whole pages of some of them, usual and in large print."""
    for number in range(part, 16, 8):
        for page in flow(words(random_plan(number)), LETTER, (USUAL, LARGE)[number % 2]):
            assert touching(page) == [], number
            for item in page:
                box = item.bounds
                assert box.left >= LETTER.left - 0.01 and box.right <= LETTER.right + 0.01, (number, item)
                assert box.bottom >= LETTER.bottom - 0.01 and box.top <= LETTER.top + 0.01, (number, item)
