"""The description of the interface: valid, and true of what is really asked and answered."""

from __future__ import annotations

import json
from typing import Any

import pytest
from jsonschema import Draft202012Validator
from openapi_spec_validator import validate

from .asking import SPEC, Answer, Connection, Server, question, request

GOOD: dict[str, list[Any]] = {
    "/api/form": [{"spec": SPEC}, {"spec": ""}],
    "/api/spec": [{"spec": SPEC, "form": None}, {"spec": "", "form": {"fields": {"title": "Hall"}}}],
    "/api/plan": [{"spec": SPEC}],
    "/api/sheets": [{"spec": SPEC}],
    "/api/sheet": [{"spec": SPEC, "page": 2, "width": 300}],
    "/api/kit": [{"spec": SPEC, "file": "kit.pdf"}, {"spec": SPEC, "file": None}, {"spec": SPEC, "file": "kit.json"}],
}
BAD: list[tuple[int, dict[str, Any]]] = [
    (400, {"body": b"{"}),
    (403, {"origin": "http://rebound.example"}),
    (403, {"sec_fetch_site": "cross-site"}),
    (413, {"body": b"x" * 3_000_000}),
    (415, {"content_type": "text/plain"}),
    (421, {"host": "rebound.example"}),
]


@pytest.fixture(scope="module")
def description(server: Server) -> Any:
    with Connection(server.port) as connection:
        answer = connection.ask(request(server.port, path="/api/openapi.json"))
        assert answer is not None and answer.headers["cache-control"] == "no-store"
        return answer.json


def conforms(description: Any, method: str, path: str, answer: Answer | None) -> None:
    """The answer is one that is described, to the last field."""
    assert answer is not None
    described = description["paths"][path][method]["responses"][str(answer.status)]["content"]
    kind = answer.headers["content-type"].split(";")[0]
    assert kind in described, (path, answer.status, kind)
    if "json" in kind and "format" not in described[kind]["schema"]:
        schema = described[kind]["schema"] | {"components": description["components"]}
        Draft202012Validator(schema).validate(answer.json)


def test_it_is_valid(description: Any) -> None:
    validate(description)


def test_it_says_every_address_of_the_interface(description: Any) -> None:
    asked = {path: set(methods) for path, methods in description["paths"].items()}
    assert asked == {"/api/fields": {"get"}, "/api/guides": {"get"}} | {path: {"post"} for path in GOOD}


def test_every_operation_and_every_answer_is_told_of(description: Any) -> None:
    for methods in description["paths"].values():
        for method, operation in methods.items():
            assert operation["summary"] and operation["description"]
            statuses = {"200", "400", "403", "408", "413", "421", "422", "429", "500"}
            statuses |= {"415"} if method == "post" else set()
            assert set(operation["responses"]) == statuses
            assert all(each["description"] and each["content"] for each in operation["responses"].values())


@pytest.mark.parametrize("path", ["/api/fields", "/api/guides"])
def test_tables_are_as_described(path: str, description: Any, connection: Connection, server: Server) -> None:
    answer = connection.ask(request(server.port, path=path))
    assert answer is not None and answer.status == 200
    conforms(description, "get", path, answer)


@pytest.mark.parametrize("path", GOOD)
def test_answers_are_as_described(path: str, description: Any, connection: Connection, server: Server) -> None:
    for asked in GOOD[path]:
        answer = connection.ask(question(server.port, path, asked))
        assert answer is not None and answer.status == 200, answer
        conforms(description, "post", path, answer)


@pytest.mark.parametrize("path", GOOD)
def test_refusals_are_as_described(path: str, description: Any, server: Server) -> None:
    for status, wrong in BAD:
        with Connection(server.port) as connection:
            body = wrong.get("body", b"{}")
            more = {name: value for name, value in wrong.items() if name != "body"}
            answer = connection.ask(request(server.port, "POST", path, body, **more))
            assert answer is not None and answer.status == status
            conforms(description, "post", path, answer)
    with Connection(server.port) as connection:
        answer = connection.ask(question(server.port, path, _wrong(path)))
        assert answer is not None and answer.status == 422
        conforms(description, "post", path, answer)


def _wrong(path: str) -> dict[str, Any]:
    """A request of the right shape for a spec that is wrong."""
    return GOOD[path][0] | {"spec": "a = [", "form": {}} if path != "/api/form" else {"spec": "a = ["}


def test_what_a_plan_stops_at_is_told(description: Any, connection: Connection, server: Server) -> None:
    thick = SPEC.replace('diameter = "3/4 in"', 'diameter = "2 in"')
    assert thick != SPEC
    answer = connection.ask(question(server.port, "/api/sheets", {"spec": thick}))
    assert answer is not None and answer.status == 422
    assert answer.json["stops"] and answer.json["faults"] == []
    conforms(description, "post", "/api/sheets", answer)


def test_a_form_can_be_sent_back_as_it_came(connection: Connection, server: Server) -> None:
    opened = connection.ask(question(server.port, "/api/form", {"spec": SPEC}))
    assert opened is not None
    kept = connection.ask(question(server.port, "/api/spec", {"spec": SPEC, "form": opened.json["form"]}))
    assert kept is not None and kept.json == {"spec": SPEC}


def test_a_kit_is_the_very_kit_of_the_command_line(connection: Connection, server: Server) -> None:
    from templategen import kit_files, make_plan, read_spec

    made = kit_files(make_plan(read_spec(SPEC)))[1]
    for name in ("kit.pdf", "work-order.html", "spacing-strip.svg"):
        answer = connection.ask(question(server.port, "/api/kit", {"spec": SPEC, "file": name}))
        assert answer is not None and answer.body == made[name]
        assert answer.headers["content-disposition"] == f"attachment; filename*=utf-8''{name}"


def test_static_files_are_kept_by_the_browser_and_asked_for_again(connection: Connection, server: Server) -> None:
    for path, kind in (("/", "text/html"), ("/page/main.js", "text/javascript"), ("/page/look.css", "text/css"),
                       ("/fonts/Lato-Regular.ttf", "font/ttf"), ("/fonts/Lato-Bold.ttf", "font/ttf")):  # fmt: skip
        first = connection.ask(request(server.port, path=path))
        assert first is not None and first.status == 200 and first.headers["content-type"].startswith(kind)
        assert first.headers["cache-control"] == "no-cache" and "content-security-policy" in first.headers
        for known in (first.headers["etag"], f'"old", W/{first.headers["etag"]}', "*"):
            again = connection.ask(request(server.port, path=path, if_none_match=known))
            assert again is not None and again.status == 304 and again.body == b""
            assert again.headers["cache-control"] == "no-cache" and "content-security-policy" in again.headers
        other = connection.ask(request(server.port, path=path, if_none_match='"old"'))
        assert other is not None and other.status == 200


def test_asking_for_the_head_alone(connection: Connection, server: Server) -> None:
    connection.send(request(server.port, "HEAD"))
    answer = connection.answer(head=True)
    assert answer is not None and answer.status == 200 and int(answer.headers["content-length"]) > 500


@pytest.mark.parametrize("path", ["/api", "/page", "/page/", "/page/nothing.js", "/fonts/", "/fonts/OFL.txt", "/docs",
    "/redoc", "/page/../serving/app.py", "/page/%2e%2e/serving/app.py", "//page/main.js", "/api/plan/",
    "/page/main.js%00", "/page/..%2f..%2fpyproject.toml"])  # fmt: skip
def test_there_is_nothing_else(path: str, connection: Connection, server: Server) -> None:
    answer = connection.ask(request(server.port, path=path))
    assert answer is not None and answer.status == 404 and answer.json["faults"]
    assert "content-security-policy" in answer.headers and answer.headers["cache-control"] == "no-store"


@pytest.mark.parametrize(("method", "path", "allowed"), [("GET", "/api/plan", "POST"), ("POST", "/", "GET, HEAD"),
    ("PUT", "/api/plan", "POST"), ("DELETE", "/page/main.js", "GET, HEAD"), ("OPTIONS", "/api/kit", "POST"),
    ("TRACE", "/", "GET, HEAD"), ("POST", "/api/fields", "GET")])  # fmt: skip
def test_other_ways_to_ask(method: str, path: str, allowed: str, connection: Connection, server: Server) -> None:
    answer = connection.ask(request(server.port, method, path, b"{}"))
    assert answer is not None and answer.status == 405 and answer.json["faults"]
    assert set(answer.headers["allow"].split(", ")) == set(allowed.split(", "))


def test_the_description_is_small_enough_to_read(description: Any) -> None:
    assert len(json.dumps(description)) < 60_000
