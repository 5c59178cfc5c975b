"""A spec is read exactly, or refused with every fault, each by its field."""

from __future__ import annotations

import subprocess
import sys
import time
import tomllib
from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import HealthCheck, given, settings

from templategen.errors import Fault, Refusal
from templategen.lengths import NOTHING, inches, millimetres
from templategen.spec import FIELDS, Spec, read_spec, spec_from_tables
from tests.strategies import spec_texts, specs, toml_documents, toml_text

FIELDS_OF_A_SPEC = {
    "title": '"Reading room, east window"',
    "units": '"inch"',
    "rod.length": '"60 in"',
    "rod.diameter": '"3/4 in"',
    "panel.width": '"54 in"',
    "panel.length": '"96 in"',
    "panel.casing": '"3 in"',
    "panel.hem": '"2 in"',
    "panel.turn_under": '"3/8 in"',
    "drop.floor_marks": '["13 5/8 in"]',
    "drop.clearance": '"3/4 in"',
    "hem.depth": '"4 in"',
    "hem.turn_under": '"5/8 in"',
    "heading.style": '"back loops"',
}


def spec_with(**changes: str | None) -> str:
    """The text of the spec above with some fields changed (``panel__width``), or left out (None)."""
    fields = FIELDS_OF_A_SPEC | {path.replace("__", "."): value for path, value in changes.items()}
    return toml_text({path: value for path, value in fields.items() if value is not None})


ALWAYS_REQUIRED = [path for path, field in FIELDS.items() if field.required and not field.styles]


def faults_of(text: str) -> tuple[Fault, ...]:
    with pytest.raises(Refusal) as refusal:
        read_spec(text)
    return refusal.value.faults


def only_fault_of(text: str) -> Fault:
    faults = faults_of(text)
    assert len(faults) == 1, [str(fault) for fault in faults]
    return faults[0]


def test_a_spec_is_read_exactly_and_what_is_left_out_has_its_default() -> None:
    text = spec_with()
    spec = read_spec(text)
    assert spec.drop.floor_marks == (inches("109/8"),)
    assert spec.panel.count == 1 and spec.panel.header == NOTHING and spec.cloth == "medium"
    assert spec.heading.count is None and spec.heading.lower_allowance == inches("3/8")
    assert spec.paper.margins.bottom == millimetres(18) and spec.printer.along == millimetres(100)
    assert spec.source == text
    assert spec.tape.step == inches("1/16")


def test_a_bare_number_is_in_the_unit_that_units_names_and_stays_exact() -> None:
    assert read_spec(spec_with(panel__width="54.1")).panel.width.inches == Fraction(541, 10)
    assert read_spec(spec_with(panel__width='"54 1/8"')).panel.width.inches == Fraction(433, 8)
    metric = read_spec(spec_with(units='"metric"', panel__width="1_371.6"))
    assert metric.panel.width == inches(54)


def test_a_spec_typed_in_millimetres_says_the_same_as_one_in_inches() -> None:
    in_mm = {
        "rod.length": '"1524 mm"', "rod.diameter": '"19.05 mm"', "panel.width": '"137,16 cm"',
        "panel.length": '"2.4384 m"', "panel.casing": '"76.2 mm"', "panel.hem": '"5.08 cm"',
        "panel.turn_under": '"9.525 mm"', "drop.floor_marks": '["346.075 mm"]',
        "drop.clearance": '"19,05 mm"', "hem.depth": '"101.6 mm"', "hem.turn_under": '"15.875 mm"',
    }  # fmt: skip
    spec = read_spec(toml_text(FIELDS_OF_A_SPEC | in_mm))
    assert spec == read_spec(spec_with()) and hash(spec) == hash(read_spec(spec_with()))


def test_a_byte_order_mark_and_dos_line_ends_do_no_harm() -> None:
    assert read_spec("\ufeff" + spec_with().replace("\n", "\r\n")) == read_spec(spec_with())


def test_every_fault_is_told_at_once_in_the_order_of_the_file() -> None:
    faults = faults_of(
        spec_with(
            units=None, rod__length='"-4 in"', rod__diameter=None, panel__width="true", panel__count="0",
            drop__floor_marks='["1 in", "x", "900 ft"]', hem__turn_under='"5 in"', heading__style='"pleats"',
        )
    )  # fmt: skip
    assert [fault.field for fault in faults] == [
        "units", "rod.length", "rod.diameter", "panel.count", "panel.width", "drop.floor_marks[2]",
        "drop.floor_marks[3]", "hem.turn_under", "heading.style",
    ]  # fmt: skip


def test_bare_numbers_are_not_blamed_while_nobody_has_said_their_unit() -> None:
    text = spec_with(units='"furlongs"', rod__length="60", panel__width='"54"', drop__floor_marks="[13.625]")
    assert str(only_fault_of(text)) == 'units: read "furlongs" – not known here; write "inch" or "metric"'


@pytest.mark.parametrize("path", ALWAYS_REQUIRED)
def test_a_required_field_that_is_missing_is_named_with_what_to_write(path: str) -> None:
    fault = only_fault_of(toml_text({name: text for name, text in FIELDS_OF_A_SPEC.items() if name != path}))
    assert fault.field == path and fault.read == ""
    assert fault.right.startswith("missing; write ") and "for example" in fault.right


def test_a_field_of_another_kind_of_heading_is_refused_with_the_kind_it_belongs_to() -> None:
    fault = only_fault_of(spec_with(heading__style='"casing"', heading__loop_length='"3 in"'))
    assert (fault.field, fault.read) == ("heading.loop_length", '"3 in"')
    assert fault.right == 'not used where heading.style is "casing"; it belongs to "back loops"; leave it out'


def test_of_a_heading_that_is_there_already_everything_it_hangs_by_is_asked() -> None:
    faults = faults_of(spec_with() + '[panel.heading]\nstyle = "back loops"\nloop_length = "3 in"\n')
    assert {fault.field for fault in faults} == {"panel.heading.lower_allowance", "panel.heading.upper_turn"}
    (fault,) = faults_of(spec_with() + '[panel.heading]\nstyle = "casing"\nloop_length = "3 in"\n')
    assert fault.field == "panel.heading.loop_length" and "it belongs to" in fault.right


def test_a_panel_that_came_with_another_heading_did_not_hang_by_a_casing() -> None:
    old = '[panel.heading]\nstyle = "back loops"\nloop_length = "3 in"\nlower_allowance = "1 in"\nupper_turn = "1 in"\n'
    fault = only_fault_of(spec_with(drop__hung_by='"casing"') + old)
    assert fault.field == "drop.hung_by" and '"old heading"' in fault.right
    assert read_spec(spec_with(drop__hung_by='"old heading"') + old).panel.heading.style == "back loops"
    assert read_spec(spec_with(drop__hung_by=None) + old).panel.heading.style == "back loops"


def test_an_empty_text_misses_every_required_field() -> None:
    named = {fault.field for fault in faults_of("")}
    assert named == {*ALWAYS_REQUIRED, "hem.turn_under", "drop.floor_marks", "panel.casing"}


WRONG = [
    ("panel__width", '"-4 in"', "a negative length, where only a positive one makes sense"),
    ("panel__width", '"0 in"', "less than 100 mm"),
    ("panel__width", "54.0e30", "not a number to measure with"),
    ("panel__width", "inf", "not a number to measure with"),
    ("panel__width", "nan", "not a number to measure with"),
    ("panel__width", "1e999999999999", "not a number to measure with"),
    ("panel__width", "0x" + "f" * 3000, "not a number to measure with"),
    ("panel__width", "1979-05-27", "not a length"),
    ("panel__width", "true", "not a length"),
    ("panel__width", '["54 in"]', "not a length"),
    ("panel__width", '{ a = "54 in" }', "not a length"),
    ("panel__width", '"1,234 mm"', "1234 or 1.234"),
    ("panel__width", "5400", "(a number without a unit is in inches here)"),
    ("panel__width", f'"{"9" * 2000}"', "at most 100"),
    ("hem__depth", '"0 in"', "no length at all"),
    ("panel__hem", '"-1 in"', "a negative length"),
    ("panel__count", "4.0", "not a whole number"),
    ("panel__count", '"4"', "not a whole number"),
    ("panel__count", "true", "not a whole number"),
    ("panel__count", "501", "more than 500"),
    ("heading__count", "1", "less than 2"),
    ("heading__style", "9", 'write "back loops"'),
    ("cloth", '"heavyish"', '"light", "medium" or "heavy"'),
    ("title", '""', "empty"),
    ("title", "7", "not a text"),
    ("title", '"one\\ntwo"', "one plain line"),
    ("title", '"bell\\u0007"', "one plain line"),
    ("title", f'"{"w" * 121}"', "at most 120"),
    ("drop__floor_marks", '"13 5/8 in"', "in brackets"),
    ("drop__floor_marks", f"[{'1,' * 201}]", "at most 200"),
    ("tape_step", '"1/10 in"', "no tape is divided so"),
    ("tape_step", '"1 mm"', "no tape is divided so"),
    ("heading__edge_inset", '"27 in"', "less than half of panel.width"),
    ("panel__turn_under", '"2 1/8 in"', "deeper than the hem"),
    ("hem__turn_under", '"4 1/8 in"', "deeper than the hem"),
    ("heading__upper_turn", '"2 5/8 in"', "together take all of the loop, as long as panel.casing is deep"),
    ("heading__loop_length", '"1 in"', "together take all of the loop"),
    ("paper__width", '"12 in"', "missing, and needed with paper.width"),
    ("paper__orientation", '"sideways"', 'write "portrait", "landscape" or "least"'),
    ("paper__half_strip", '"true"', "neither true nor false"),
    ("paper__half_strip", "1", "neither true nor false"),
    ("paper__large_print", '"yes"', "neither true nor false"),
    ("paper__large_print", "18", "neither true nor false"),
    ("paper__strips", "0", "less than 1"),
    ("paper__strips", "21", "more than 20"),
    ("paper__strips", '"two"', "not a whole number"),
    ("paper__strips", "true", "not a whole number"),
]


@pytest.mark.parametrize(("field", "value", "said"), WRONG)
def test_a_value_that_its_field_does_not_take(field: str, value: str, said: str) -> None:
    fault = only_fault_of(spec_with(**{field: value}))
    assert said in fault.right
    assert fault.field == ("paper.height" if field == "paper__width" else field.replace("__", "."))
    assert len(fault.read) < 60


RIGHT = [
    ("drop__clearance", '"−1 1/2 in"'), ("drop__clearance", "0"),
    ("rod__overlap", '"1 in"'), ("heading__count", "2"),
    ("drop__floor_marks", '["−2 in", "1 in"]'), ("panel__width", '"100 mm"'), ("panel__width", '"60 m"'),
    ("rod__diameter", '"1 mm"'), ("rod__diameter", '"150 mm"'), ("panel__count", "500"),
    ("heading__count", "2000"), ("paper__strips", "20"), ("paper__half_strip", "true"),
    ("paper__large_print", "true"),
    ("paper__orientation", '"least"'),
    ("hem__depth", '"1 m"'), ("printer__across", '"97 mm"'), ("printer__along", '"103.00 mm"'),
    ("printer__across", '"97.27 mm"'), ("paper__margins__left", "0"), ("paper__margins__bottom", '"100 mm"'),
    ("tape_step", '"1/32 in"'), ("panel__turn_under", '"2 in"'), ("heading__edge_inset", '"26 7/8 in"'),
    ("drop__floor_marks", f"[{'1,' * 200}]"), ("title", f'"{"w" * 120}"'), ("title", '"Leseraum, Süd"'),
]  # fmt: skip


@pytest.mark.parametrize(("field", "value"), RIGHT)
def test_a_value_at_the_edge_of_what_its_field_takes(field: str, value: str) -> None:
    assert read_spec(spec_with(**{field: value})) != read_spec(spec_with())


BEYOND = [
    ("panel__width", '"99.9 mm"'), ("panel__width", '"60.1 m"'), ("rod__diameter", '"0.9 mm"'),
    ("rod__diameter", '"151 mm"'), ("hem__depth", '"1001 mm"'), ("paper__margins__left", '"101 mm"'),
    ("printer__across", '"96.99 mm"'), ("printer__along", '"103.01 mm"'), ("drop__floor_marks", '["61 m"]'),
    ("drop__floor_marks", '["-5001 mm"]'), ("drop__clearance", '"-2001 mm"'), ("rod__length", '"61 m"'),
]  # fmt: skip


@pytest.mark.parametrize(("field", "value"), BEYOND)
def test_a_value_just_beyond_a_limit_is_refused_and_the_limit_stated(field: str, value: str) -> None:
    fault = only_fault_of(spec_with(**{field: value}))
    assert " than " in fault.right and "; write " in fault.right


def test_a_sheet_of_its_own_size() -> None:
    sheet = {"paper__width": '"300 mm"', "paper__height": '"450 mm"'}
    assert read_spec(spec_with(**sheet)).paper.height == millimetres(450)
    assert only_fault_of(spec_with(**sheet, paper__name='"a4"')).field == "paper.name"
    assert only_fault_of(spec_with(paper__width='"89 mm"', paper__height='"450 mm"')).field == "paper.width"
    assert only_fault_of(spec_with(paper__width='"90 mm"', paper__height='"5081 mm"')).field == "paper.height"


def test_a_roll_is_known_by_its_width_alone() -> None:
    assert read_spec(spec_with(paper__roll='"24 in"')).paper.roll == inches(24)
    assert read_spec(spec_with(paper__roll="36")).paper.roll == inches(36)
    for field, value in [("name", '"a4"'), ("width", '"300 mm"'), ("height", '"450 mm"')]:
        fault = only_fault_of(spec_with(**{"paper__roll": '"24 in"', f"paper__{field}": value}))
        assert fault.field == "paper.roll" and f"paper.{field} is there too" in fault.right
    everything = {"paper__name": '"a4"', "paper__width": '"300 mm"', "paper__height": '"450 mm"'}
    faults = faults_of(spec_with(paper__roll='"24 in"', **everything))
    assert [fault.field for fault in faults] == ["paper.name", "paper.roll"]


@pytest.mark.parametrize("value", ['"89.9 mm"', '"5080.1 mm"', '"0 in"', '"-24 in"', "true", '"wide"'])
def test_a_width_that_no_roll_has(value: str) -> None:
    assert only_fault_of(spec_with(paper__roll=value)).field == "paper.roll"


def test_a_roll_as_narrow_and_as_wide_as_a_page_can_be() -> None:
    assert read_spec(spec_with(paper__roll='"90 mm"')).paper.roll == millimetres(90)
    assert read_spec(spec_with(paper__roll='"200 in"')).paper.roll == millimetres(5080)


def test_a_paper_by_its_self_describing_name() -> None:
    assert read_spec(spec_with(paper__name='"ISO_A4_210x297mm"')).paper.name == "ISO_A4_210x297mm"
    fault = only_fault_of(spec_with(paper__name='"iso_a4_210x298mm"'))
    assert fault.field == "paper.name" and "write iso_a4_210x297mm" in fault.right


def test_a_bar_that_is_far_out_is_told_the_print_setting_that_does_it() -> None:
    # The ratios are those of the sheets' sizes: 279.4 / 297 and, by width, 210 / 215.9.
    assert "A4 page fitted on letter" in only_fault_of(spec_with(printer__across='"94.07 mm"')).right
    assert "letter page fitted on A4" in only_fault_of(spec_with(printer__across='"96.8 mm"')).right
    assert "borderless" in only_fault_of(spec_with(printer__along='"104 mm"')).right
    assert "a setting, not the printer" in only_fault_of(spec_with(printer__along='"50 mm"')).right


def test_something_must_say_where_the_floor_is() -> None:
    assert only_fault_of(spec_with(drop__floor_marks=None)).field == "drop.floor_marks"
    assert only_fault_of(spec_with(drop__floor_marks="[]")).read == "an empty list"
    by_rod = {"drop__floor_marks": None, "drop__rod_to_floor": '"82 in"'}
    assert read_spec(spec_with(**by_rod)).drop.floor_marks == ()
    assert only_fault_of(spec_with(**by_rod, panel__length=None)).field == "panel.length"


MISNAMED = [
    ("[panel]\ndiameter = 3", "panel.diameter", "did you mean rod.diameter?"),
    ("[panel]\nwidht = 3", "panel.widht", "did you mean panel.width?"),
    ("[heading]\nlength = 3", "heading.length", "did you mean heading.loop_length?"),
    ("[panel]\nlong = 3", "panel.long", "did you mean panel.length?"),
    ("[paper]\nleft = 3", "paper.left", "did you mean paper.margins.left?"),
    ("[paper]\nmargin = 3", "paper.margin", "did you mean [paper.margins]?"),
    ("[pannel]\nwidth = 3", "pannel", "did you mean [panel]?"),
    ("[rod]\ncolour = 3", "rod.colour", "known here: rod.length, rod.diameter, rod.overlap, rod.returns"),
    ('["rod.length"]\na = 3', "rod.length", "no table of this name"),
]


@pytest.mark.parametrize(("text", "field", "said"), MISNAMED)
def test_an_unknown_name_is_refused_with_the_nearest_known_one(text: str, field: str, said: str) -> None:
    named = {fault.field: fault for fault in faults_of(text)}
    assert said in named[field].right


def test_a_misspelt_field_is_one_fault_not_two() -> None:
    assert only_fault_of(spec_with().replace("width", "widht")).field == "panel.widht"
    assert only_fault_of(spec_with().replace("[rod]", "[rods]")).field == "rods"
    assert only_fault_of(spec_with().replace("floor_marks", "floor_mark")).field == "drop.floor_mark"


def test_a_table_that_is_no_table() -> None:
    assert "write [rod] on a line of its own" in faults_of('rod = "60 in"')[0].right
    assert "single brackets" in only_fault_of(spec_with().replace("[hem]", "[[hem]]")).right


NOT_TOML = [
    (spec_with(panel__width="54 in"), "line 7", 'write width = "54 in"'),
    (spec_with(panel__width="1/2"), "line 7", 'write width = "1/2"'),
    (spec_with(panel__width='"5 3/8""'), "line 7", 'write width = "5 3/8 in"'),
    (spec_with(panel__width="“54 in”"), "line 7", "straight ones"),
    (spec_with(panel__width='"54 in'), "line 7", "not TOML"),
    (spec_with() + "[panel]\n", "line 20", "a second time"),
    ("title\n", "line 1", "not TOML"),
    ("\x00", "line 1", "not TOML"),
]


@pytest.mark.parametrize(("text", "line", "said"), NOT_TOML)
def test_what_is_not_toml_is_refused_by_its_line(text: str, line: str, said: str) -> None:
    fault = only_fault_of(text)
    assert fault.field == line and said in fault.right


@pytest.mark.parametrize(
    "text",
    ["a=" + "[" * 100_000, "a" + ".a" * 100_000 + "=1", '""' + '.""' * 100_000 + "=1", "a=" + "{a=" * 50_000,
     "a = " + "9" * 5000, "#" + "x" * 1024 * 1024, "é" * 600_000, "\n".join(f"n{i}=1" for i in range(50_000)),
     "a" * 1_000_000, "[" + "a." * 500_000],
    ids=["lists", "dotted name", "quoted names", "tables", "digits", "long", "long in bytes", "names", "word",
         "header"],
)  # fmt: skip
def test_texts_made_to_choke_on_are_refused_in_a_moment(text: str) -> None:
    started = time.process_time()
    assert len(faults_of(text)) < 150
    assert time.process_time() - started < 5


@given(spec_texts())
@settings(max_examples=60)
def test_every_generated_spec_is_read_and_is_frozen(text: str) -> None:
    spec = read_spec(text)
    assert spec.source == text
    with pytest.raises(ValueError, match="frozen"):
        spec.title = "another"


@given(specs())
@settings(max_examples=40)
def test_a_spec_is_the_same_from_plain_tables(spec: Spec) -> None:
    assert spec_from_tables(tomllib.loads(spec.source, parse_float=Decimal)) == spec


@given(toml_documents())
@settings(max_examples=300, suppress_health_check=[HealthCheck.too_slow])
def test_any_toml_at_all_is_a_spec_or_a_refusal(text: str) -> None:
    try:
        assert isinstance(read_spec(text), Spec)
    except Refusal as refusal:
        assert refusal.faults
        for fault in refusal.faults:
            assert fault.right and str(fault).isprintable()


def test_importing_the_spec_loads_nothing_heavy() -> None:
    code = (
        "import sys, templategen.spec;"
        "sys.exit(any(name in sys.modules for name in ('pint', 'reportlab', 'numpy', 'starlette', 'click')))"
    )
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0


def test_nothing_is_turned_under_at_a_raw_edge() -> None:
    with pytest.raises(Refusal) as refused:
        read_spec(spec_with(panel__hem='"0 in"'))
    (fault,) = refused.value.faults
    assert fault.field == "panel.turn_under" and "a raw edge" in fault.right
    assert not read_spec(spec_with(panel__hem='"0 in"', panel__turn_under='"0 in"')).panel.hem
