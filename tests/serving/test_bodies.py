"""Bodies of requests: a shape that is wrong is told with every place where it is."""

from __future__ import annotations

import asyncio
import json
from typing import Any

import httpx
import pytest
from pydantic import BaseModel, ValidationError

from templategen.serving import bodies, limits
from templategen.serving.app import application
from templategen.serving.misshapen import _RIGHT, faults_in
from templategen.serving.places import Place

PLACE = Place("127.0.0.1", 8630)
FORM = {
    "fields": {"title": "Reading room", "drop.floor_marks": ["13 5/8 in", "13 1/2 in"], "paper.large_print": True},
    "windows": [{"from": 0, "name": "east window", "room": "", "fields": {"panel.width": "54 in"}}, {"from": None}],
    "together": {"keep": "finished length"},
}


def refused(content: bytes, path: str = "/api/plan") -> list[tuple[str, str, str]]:
    """The faults of a body that no worker gets to see: there is none."""

    async def run() -> httpx.Response:
        transport = httpx.ASGITransport(application(PLACE))
        async with httpx.AsyncClient(transport=transport, base_url="http://127.0.0.1:8630") as client:
            return await client.post(path, content=content, headers={"content-type": "application/json"})

    answer = asyncio.run(run())
    assert answer.status_code == 400 and answer.headers["cache-control"] == "no-store"
    return [(fault["field"], fault["read"], fault["right"]) for fault in answer.json()["faults"]]


def wrong(asked: object, path: str = "/api/plan") -> list[tuple[str, str, str]]:
    return refused(json.dumps(asked).encode(), path)


def test_a_form_comes_through_as_it_was_typed() -> None:
    asked = bodies.AskedOfForm.model_validate({"spec": "", "form": FORM})
    windows = [FORM["windows"][0], {"from": None, "name": "", "room": "", "fields": {}}]  # type: ignore[index]
    assert asked.typed == FORM | {"windows": windows}
    assert bodies.AskedOfForm.model_validate({"spec": ""}).typed is None


def test_everything_that_is_wrong_is_told_with_its_place() -> None:
    asked = {
        "spec": 5,
        "form": {
            "fields": {"panel.width": 54, "title": None, "a b": {}, "drop.floor_marks": ["13 in", 13]},
            "windows": [{"from": "first"}, {"from": -1, "name": 7, "colour": "red"}, 9],
            "together": [],
            "more": True,
        },
        "window": 1.5,
    }
    value = "must be a text, a list of texts, or true or false"
    assert wrong(asked) == [
        ("spec", "5", "must be a text"),
        ('form.fields["panel.width"]', "54", value),
        ("form.fields.title", "null", value),
        ('form.fields["a b"]', "an object", value),
        ('form.fields["drop.floor_marks"][1]', "13", "must be a text"),
        ("form.windows[0].from", "'first'", "must be a whole number"),
        ("form.windows[1].from", "-1", "must be 0 or more"),
        ("form.windows[1].name", "7", "must be a text"),
        ("form.windows[1].colour", "'red'", "there is no such part; leave it out"),
        ("form.windows[2]", "9", "must be an object"),
        ("form.together", "a list", "must be an object"),
        ("form.more", "true", "there is no such part; leave it out"),
        ("window", "1.5", "must be a whole number"),
    ]


def _with(fields: dict[str, Any]) -> dict[str, Any]:
    return {"spec": "", "form": {"fields": fields}}


@pytest.mark.parametrize(
    ("asked", "place", "right"),
    [
        ({}, "spec", "this is missing"),
        ([], "", "must be an object"),
        (None, "", "must be an object"),
        ("spec", "", "must be an object"),
        ({"spec": "x" * (limits.MOST_TEXT + 1)}, "spec", "is longer than 1048576 characters"),
        (_with({"title": "x" * 4_001}), "form.fields.title", "is longer than 4000 characters"),
        (_with({"a": ["x"] * 401}), "form.fields.a", "has more than 400 entries"),
        (_with({"a": ["x", "x" * 4_001]}), "form.fields.a[1]", "is longer than 4000 characters"),
        (_with({str(n): "" for n in range(401)}), "form.fields", "has more than 400 entries"),
        (_with({"x" * 101: ""}), f"form.fields.{'x' * 101}", "is longer than 100 characters"),
        ({"spec": "", "form": {"windows": [{}] * 101}}, "form.windows", "has more than 100 entries"),
        ({"spec": "", "window": True}, "window", "must be a whole number"),
        ({"spec": "", "window": 100}, "window", "must be less than 100"),
    ],
)
def test_limits(asked: object, place: str, right: str) -> None:
    ((field, _, said),) = wrong(asked)
    assert (field, said) == (place, right)


@pytest.mark.parametrize(
    ("path", "asked", "place", "right"),
    [
        ("/api/form", {"spec": "", "form": FORM}, "form", "there is no such part; leave it out"),
        ("/api/sheets", {"spec": "", "despite_stops": "yes"}, "despite_stops", "must be true or false"),
        ("/api/sheet", {"spec": "", "page": 0, "width": 500}, "page", "must be 1 or more"),
        ("/api/sheet", {"spec": "", "page": 5_001, "width": 500}, "page", "must be 5000 or less"),
        ("/api/sheet", {"spec": "", "page": 1, "width": 63}, "width", "must be 64 or more"),
        ("/api/sheet", {"spec": "", "page": 1, "width": 2_401}, "width", "must be 2400 or less"),
        ("/api/sheet", {"spec": "", "page": 1}, "width", "this is missing"),
        ("/api/kit", {"spec": "", "file": 1}, "file", "must be a text"),
        ("/api/kit", {"spec": "", "file": "x" * 101}, "file", "is longer than 100 characters"),
    ],
)
def test_what_else_is_asked(path: str, asked: object, place: str, right: str) -> None:
    ((field, _, said),) = wrong(asked, path)
    assert (field, said) == (place, right)


BROKEN = [
    b"", b"{", b"[", b"nul", b'{"spec": "}', b"\x00", b"\xff\xfe", b'{"spec": "\xc3"}', b"{'spec': ''}",
    b'{"spec": ""} x',
    b"[" * 100_000, b'{"a":' * 100_000, b"1" * 100_000, b"-", b"1e99999999999", b"NaN", b"Infinity",
    b'{"spec": NaN}', b'{"spec": -Infinity}', b'{"spec": "", "window": 1e999}', b'{"spec": "\\ud800"}',
    b'{"spec": "", "form": {"fields": {"\\udfff": ""}}}', b'{"spec": "", "window": ' + b"9" * 4_000 + b"}",
    b'{"spec": "\n"}', b'{"spec": "", "spec": 5}', b'{"form": ' + b'{"form": ' * 300 + b"1" + b"}" * 301,
]  # fmt: skip


@pytest.mark.parametrize("content", BROKEN, ids=lambda content: repr(content[:30]))
def test_what_is_no_json_or_no_json_for_a_job(content: bytes) -> None:
    faults = refused(content)
    assert 1 <= len(faults) <= 3 and all(len(part) < 200 for fault in faults for part in fault)


def test_of_two_values_under_one_key_the_last_counts() -> None:
    (fault,) = refused(b'{"spec": 5, "spec": "", "window": -1}')
    assert fault == ("window", "-1", "must be 0 or more")


def test_no_more_than_a_hundred_faults_are_told() -> None:
    windows = [{"name": n, "room": n, "more": n} for n in range(50)]
    assert len(wrong({"spec": "", "form": {"windows": windows}})) == 100


def test_the_largest_body_that_is_all_wrong_is_refused_soon() -> None:
    """No list and no table is gone through to its end where it is too long anyway."""
    for inner in (b'"a":[%s]' % b",".join([b"1"] * 1_200_000), b'"a":[%s]' % b",".join([b"[1]"] * 600_000)):
        content = b'{"spec":"","form":{"fields":{%s}}}' % inner
        assert len(refused(content)) <= 2
    many = b",".join(b'"%d":1' % number for number in range(230_000))
    assert refused(b'{"spec":"","form":{"fields":{%s}}}' % many)[0][2] == "has more than 400 entries"


def test_markup_and_quotes_in_names_of_fields_are_told_as_they_are() -> None:
    ((field, read, _),) = wrong({"spec": "", "form": {"fields": {'<script>"]': 1}}})
    assert field == 'form.fields["<script>"]"]' and read == "1"


@pytest.mark.parametrize("asked", [
    {"spec": 5, "form": {"fields": {"a": 1, "b": [1], "c": "x" * 5_000, "\ud800": "\ud800"}}},
    {"form": [], "window": "a", "page": 0, "width": 10**9, "despite_stops": 1, "file": {}},
    {"spec": "x", "form": {"windows": [{"from": 99}], "fields": {str(n): 1 for n in range(500)}, "together": {"": []}}},
])  # fmt: skip
def test_every_kind_of_fault_is_said_in_the_house_s_words(asked: Any) -> None:
    """None in Pydantic's."""
    for model in (bodies.AskedOfSpec, bodies.AskedOfPlan, bodies.AskedOfSheet, bodies.AskedOfKit):
        try:
            model.model_validate(asked)
        except ValidationError as error:
            assert {each["type"] for each in error.errors()} <= set(_RIGHT)
            assert all("Input should" not in fault.right for fault in faults_in(error.errors()))


def test_every_shape_is_described() -> None:
    for name, model in vars(bodies).items():
        if isinstance(model, type) and issubclass(model, BaseModel) and model is not BaseModel:
            assert model.__doc__, name
