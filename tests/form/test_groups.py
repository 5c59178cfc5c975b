"""The form has every field of the spec, once, and a name for it."""

from __future__ import annotations

import json
import re
from collections import Counter

import pytest

from templategen.form import GROUPS, LABELS, described
from templategen.form.groups import WITH
from templategen.spec import FIELDS
from templategen.spec.jobs.reading import KEPT, NAMES


def test_every_field_stands_in_one_group() -> None:
    placed = Counter(path for group in GROUPS for path in (*group.fields, *group.more))
    assert placed == Counter(list(FIELDS))


def test_what_is_asked_for_is_in_sight() -> None:
    seen = {path for group in GROUPS for path in group.fields}
    assert {path for path, field in FIELDS.items() if field.about.asked or field.required} <= seen


def test_every_field_has_a_name_and_no_name_is_left_over() -> None:
    assert set(LABELS) == {*FIELDS, *NAMES, *KEPT}


@pytest.mark.parametrize("path", LABELS)
def test_a_name_is_short_and_starts_with_a_capital(path: str) -> None:
    assert len(LABELS[path]) <= 34 and LABELS[path][0].isupper() and not LABELS[path].endswith(".")


def test_two_fields_that_stand_together_are_called_differently() -> None:
    # Kinds of one table are never there at once.
    for group in GROUPS:
        for style in {style for path in group.paths for style in FIELDS[path].styles} | {""}:
            there = [path for path in group.paths if not FIELDS[path].styles or style in FIELDS[path].styles]
            named = Counter((LABELS[path], path in group.fields) for path in there if path not in WITH)
            assert max(named.values()) == 1, (group.key, style, named.most_common(1))


def test_a_field_that_comes_with_another_comes_with_one_of_its_group() -> None:
    home = {path: group.key for group in GROUPS for path in group.paths}
    for path, others in WITH.items():
        assert {home[other] for other in others} == {home[path]}, path
        assert not FIELDS[path].required


def test_what_stands_in_braces_is_a_choice_that_there_is() -> None:
    for group in GROUPS:
        for guide in group.guides:
            for name in re.findall(r"{(.+?)}", guide):
                assert FIELDS[name].choices


def test_a_guide_that_lights_a_field_stands_beside_it() -> None:
    """Whatever is chosen, the field's group names a guide that has its part, if any guide has it."""
    from templategen.guides import UNSEEN, guide_trees

    trees = {key: json.dumps(guide["picture"]) for key, guide in guide_trees().items()}
    for group in GROUPS:
        choosers = {name for guide in group.guides for name in re.findall(r"{(.+?)}", guide)}
        assert len(choosers) <= 1
        for path in group.paths:
            field = FIELDS[path]
            every = [style for name in choosers for style in FIELDS[name].choices] or [""]
            for style in (field.styles if path not in UNSEEN else ()) or (every if path not in UNSEEN else ()):
                keys = [re.sub(r"{.+?}", style, key) for key in group.guides]
                assert any(f'"data-about": "{path}"' in trees.get(key, "") for key in keys), (path, style)


def test_the_form_to_start_from_has_nothing_measured() -> None:
    for units in ("inch", "metric"):
        fields = described()["start"][units]["fields"]
        assert fields["units"] == units
        assert not any(FIELDS[path].kind in ("length", "lengths") for path in fields)
