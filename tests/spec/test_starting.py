"""The spec to start from and the questions: made from the model, and always a spec that is taken."""

from __future__ import annotations

import re
from collections.abc import Callable
from operator import attrgetter

import pytest

from templategen.lengths import inches, millimetres
from templategen.spec import FIELDS, TABLES, interview, read_spec, starting_spec
from templategen.spec.about import Units
from templategen.spec.catalogue import STYLE
from templategen.spec.interview import _Answers
from templategen.spec.starting import usual_styles
from templategen.spec.values import read_value


@pytest.mark.parametrize("units", ["inch", "metric"])
def test_the_starting_spec_is_a_spec_and_names_every_field_and_table(units: Units) -> None:
    text = starting_spec(units)
    spec = read_spec(text)
    assert spec.units == units and spec.title == "Reading room, east window"
    usual = usual_styles()
    for path, field in FIELDS.items():
        if not field.there(usual):  # it belongs to another kind of heading or hem
            continue
        assert re.search(rf"^(# )?{field.name} = ", text, re.MULTILINE), path
        assert field.about.meaning[1:60] in " ".join(text.replace("\n# ", " ").split()), path
    for table in TABLES:
        assert f"[{table}]" in text
    assert all(len(line) <= 90 for line in text.splitlines())


@pytest.mark.parametrize("units", ["inch", "metric"])
@pytest.mark.parametrize("chooser", [path for path, field in FIELDS.items() if field.name == STYLE])
def test_a_starting_spec_for_any_kind_of_heading_and_hem_is_a_spec(chooser: str, units: Units) -> None:
    for style in FIELDS[chooser].choices:
        spec = read_spec(starting_spec(units, {chooser: style}))
        assert attrgetter(chooser)(spec) == style


def test_the_starting_spec_has_the_example_job() -> None:
    spec = read_spec(starting_spec())
    assert spec.panel.width == inches(54) and spec.drop.floor_marks == (inches("109/8"),)
    assert read_spec(starting_spec("metric")).hem.depth == millimetres(100)


@pytest.mark.parametrize("units", ["inch", "metric"])
def test_fields_that_stand_as_notes_can_be_filled_in_as_they_stand(units: Units) -> None:
    text = re.sub(r"^# (\w+ = |\[)", r"\1", starting_spec(units), flags=re.MULTILINE)
    text = re.sub(r"^ends_above = .*\n", "", text, flags=re.MULTILINE)  # or cut_shorter
    spec = read_spec(re.sub(r"^(name|roll) = .*\n", "", text, flags=re.MULTILINE))  # a name, a size or a roll
    assert spec.heading.count == 9 and spec.paper.width is not None
    table, paper = text.split("[paper]")
    on_a_roll = read_spec(table + "[paper]" + re.sub(r"^(name|width|height) = .*\n", "", paper, flags=re.MULTILINE))
    assert on_a_roll.paper.roll == read_value(FIELDS["paper.roll"], FIELDS["paper.roll"].about.sample(units), units)


@pytest.mark.parametrize("path", FIELDS)
def test_every_field_takes_its_own_example(path: str) -> None:
    field = FIELDS[path]
    for units in ("inch", "metric"):
        sample = field.about.sample(units)
        assert read_value(field, sample, units) is not None
    assert field.required or field.about.left_out, "an optional field says what happens without it"
    assert field.kind not in ("length", "lengths", "count") or path == "tape_step" or field.about.most


def asker(answers: dict[str, list[str]]) -> Callable[[str, str], str]:
    """Answers each question by the field that it names: the last answer again and again, else the default."""

    def ask(prompt: str, default: str) -> str:
        path = prompt.partition(" ")[0]
        given = answers.get(path, [default])
        return given.pop(0) if len(given) > 1 else given[0]

    return ask


ANSWERS = {
    "title": "Children's corner",
    "units": "inch",
    "rod.length": "5 ft",
    "rod.diameter": '3/4"',
    "panel.count": "2",
    "panel.width": "54",
    "panel.length": "96 in",
    "panel.casing": "3",
    "panel.hem": "2",
    "panel.turn_under": "3/8",
    "drop.floor_marks": '13 5/8 in; 13 1/2"',
    "drop.clearance": "3/4 in",
    "hem.depth": "4",
    "hem.turn_under": "5/8",
}


def answered(**others: list[str]) -> dict[str, list[str]]:
    answers = {path: [answer] for path, answer in ANSWERS.items()}
    return answers | {path.replace("__", "."): given for path, given in others.items()}


def test_answers_become_a_spec() -> None:
    said: list[str] = []
    spec = read_spec(interview(asker(answered()), said.append))
    assert spec.title == "Children's corner" and spec.panel.count == 2
    assert spec.rod.diameter == inches("3/4")
    assert spec.drop.floor_marks == (inches("109/8"), inches("27/2")) and spec.drop.rod_to_floor is None
    assert any("steel or wooden rule" in line for line in said)


def test_bare_numbers_are_in_the_unit_that_was_answered_first() -> None:
    in_mm = {"units": ["metric"], "rod.diameter": ["19"], "drop.clearance": ["20"], "panel.width": ["1370"]}
    in_mm |= {"panel.casing": ["75"], "panel.hem": ["50"], "panel.turn_under": ["10"], "hem.depth": ["100"]}
    spec = read_spec(interview(asker(answered() | in_mm | {"hem.turn_under": ["15"]}), lambda line: None))
    assert spec.panel.width == millimetres(1370) and spec.rod.length == inches(60)


def test_a_wrong_answer_is_explained_and_asked_again() -> None:
    said: list[str] = []
    answers = answered(panel__width=["", "-4", "fifty", "1,234 mm", "54 in"], units=["feet", "inch"])
    assert read_spec(interview(asker(answers), said.append)).panel.width == inches(54)
    faults = [line for line in said if line.startswith(("panel.width:", "units:"))]
    assert len(faults) == 5 and "negative" in faults[2]


def test_answers_that_do_not_go_together_are_asked_again() -> None:
    said: list[str] = []
    answers = answered(
        drop__floor_marks=["", "13 5/8 in"], hem__turn_under=["9 in", "5/8 in"], panel__hem=["2 in", "2 in"]
    )
    spec = read_spec(interview(asker(answers), said.append))
    assert spec.hem.turn_under == inches("5/8") and "These answers do not go together:" in said


def test_a_yes_or_no_is_answered_as_people_say_it() -> None:
    """None of today's switches is asked for; the questions can ask any field."""
    said: list[str] = []
    prompts: list[str] = []
    given = ["perhaps", "Yes"]

    def ask(prompt: str, default: str) -> str:
        prompts.append(f"{prompt} [{default}]")
        return given.pop(0) if given else default

    answers = _Answers(ask, said.append)
    field = FIELDS["paper.half_strip"]
    answers.go_through([field], again=True)
    assert answers.literals == {field.path: "true"} and prompts[0] == "paper.half_strip (yes, no) [no]"
    assert any("perhaps" in line and "true" in line for line in said)
    answers.go_through([field], again=True)
    assert prompts[-1].endswith("[yes]") and answers.literals == {field.path: "true"}


def test_giving_up_goes_through() -> None:
    def ask(prompt: str, default: str) -> str:
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        interview(ask, lambda line: None)


def test_questions_follow_the_order_of_the_file() -> None:
    asked: list[str] = []
    answer = asker(answered())

    def ask(prompt: str, default: str) -> str:
        asked.append(prompt.partition(" ")[0])
        return answer(prompt, default)

    interview(ask, lambda line: None)
    usual = usual_styles()
    assert asked == [path for path, field in FIELDS.items() if field.about.asked and field.there(usual)]
