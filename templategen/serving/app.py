"""The page's interface: what can be asked, and which plain function answers it."""

from __future__ import annotations

from collections.abc import AsyncIterator, Iterable
from contextlib import asynccontextmanager
from typing import Any

import anyio
from fastapi import FastAPI, Request, Response
from fastapi.exceptions import RequestValidationError
from starlette.exceptions import HTTPException
from starlette.types import ASGIApp

from ..errors import Fault
from ..spec import starting_spec
from ..version import __version__
from .bodies import (
    FaultAnswer,
    Faults,
    FileBody,
    FormAnswer,
    JobBody,
    KitBody,
    PlanAnswer,
    PlanBody,
    SheetBody,
    SheetsAnswer,
    SpecAnswer,
    SpecBody,
)
from .guards import Guards
from .limits import SECONDS_OF_MAKING, SECONDS_OF_PLANNING
from .static import File, files
from .workers import Answer, Desk, cores, refused

MOST_FAULTS = 100
"""Of a request's shape that are told."""
_WRONG: dict[int | str, dict[str, Any]] = {
    400: {"model": Faults, "description": "It is no JSON, or not of this shape."},
    403: {"model": Faults, "description": "Another site asked."},
    408: {"model": Faults, "description": "It took too long to arrive."},
    413: {"model": Faults, "description": "It is too large."},
    415: {"model": Faults, "description": "Its media type is not application/json."},
    421: {"model": Faults, "description": "The page is not served under that Host."},
    422: {"model": Faults, "description": "The spec is wrong, the plan says stop, or it is too much work."},
    429: {"model": Faults, "description": "Too much is asked at once; Retry-After says when to ask again."},
}  # fmt: skip
_SEEN = {status: _WRONG[status] for status in (403, 421)}


def application(addresses: Iterable[str] = ()) -> ASGIApp:
    """The page and its interface, guarded; ``addresses`` are those besides loopback on which it is served."""
    return Guards(_application(), addresses)


def _application() -> FastAPI:
    plans, kits = Desk(cores(), SECONDS_OF_PLANNING), Desk(max(1, cores() - 1), SECONDS_OF_MAKING)

    @asynccontextmanager
    async def life(_: FastAPI) -> AsyncIterator[None]:
        async with anyio.create_task_group() as tasks:
            for _ in range(cores()):  # so that the first thing typed is answered as quickly as all others
                tasks.start_soon(plans.do, "plan", starting_spec(), None, 0)
            yield
            tasks.cancel_scope.cancel()

    app = FastAPI(
        title="templategen", version=__version__, docs_url=None, redoc_url=None, openapi_url="/api/openapi.json",
        summary="What the page of templategen asks: a spec read, worked out, laid out on sheets, made into a kit.",
        description="Every request stands by itself: nothing is kept between two.", lifespan=life,
        redirect_slashes=False,
    )  # fmt: skip
    _asked(app, plans, kits)
    for path, file in files().items():
        app.add_api_route(path, _sender(file), methods=["GET", "HEAD"], include_in_schema=False)
    app.add_exception_handler(RequestValidationError, _misshapen)
    app.add_exception_handler(HTTPException, _elsewhere)
    return app


def _asked(app: FastAPI, plans: Desk, kits: Desk) -> None:
    """Every question there is."""
    wrong = {"responses": _WRONG}

    @app.get("/api/fields", summary="The form: groups in the order of measuring, every field", responses=_SEEN)
    async def fields() -> dict[str, Any]:
        return _sent(await plans.do("fields"))  # type: ignore[return-value]

    @app.get("/api/guides", summary="The pictures of what each field measures", responses=_SEEN)
    async def guides() -> dict[str, Any]:
        return _sent(await plans.do("guides"))  # type: ignore[return-value]

    @app.post("/api/form", summary="A spec's text opened in a form", response_model=FormAnswer, **wrong)
    async def form(body: SpecBody) -> Any:
        return _sent(await plans.do("form_in", body.spec))

    @app.post("/api/spec", summary="The text to be saved, right or not", response_model=SpecAnswer, **wrong)
    async def spec(body: JobBody) -> Any:
        return _sent(await plans.do("spec_text", *body.asked()))

    @app.post("/api/plan", summary="Every number with its working, notices, pictures", response_model=PlanAnswer, **wrong)
    async def plan(body: PlanBody) -> Any:
        return _sent(await plans.do("plan", *body.asked(), body.window))

    @app.post("/api/sheets", summary="The sheets as they will print", response_model=SheetsAnswer, **wrong)
    async def sheets(body: KitBody) -> Any:
        return _sent(await kits.do("sheets", *body.asked(), body.despite_stops))

    picture = {200: {"content": {"image/png": {"schema": {"type": "string", "format": "binary"}}}}}

    @app.post("/api/sheet", summary="One sheet, as PNG", response_class=Response, responses={**picture, **_WRONG})
    async def sheet(body: SheetBody) -> Any:
        return _sent(await kits.do("sheet", *body.asked(), body.page, body.width, body.despite_stops))

    binary = {"schema": {"type": "string", "format": "binary"}}
    file = {200: {"content": {each: binary for each in (
        "application/pdf", "application/zip", "image/svg+xml", "application/json", "text/plain", "text/html",
        "application/toml")}}}  # fmt: skip

    @app.post("/api/kit", summary="The kit: one file, or all in a zip", response_class=Response,
              responses={**file, **_WRONG})  # fmt: skip
    async def kit(body: FileBody) -> Any:
        return _sent(await kits.do("kit", *body.asked(), body.file, body.despite_stops))


def _sent(answer: Answer) -> Response:
    headers = {"content-disposition": f'attachment; filename="{answer.name}"'} if answer.name else None
    return Response(answer.content, answer.status, headers, answer.media_type)


def _sender(file: File) -> Any:
    async def send(request: Request) -> Response:
        if request.headers.get("if-none-match") == file.tag:
            return Response(status_code=304, headers={"etag": file.tag})
        return Response(file.content, headers={"etag": file.tag}, media_type=file.media_type)

    return send


async def _misshapen(_: Request, error: Exception) -> Response:
    """A request that is not of the shape that it should be: each place, and what is wrong there."""
    assert isinstance(error, RequestValidationError)
    faults = [
        Fault(".".join(str(step) for step in each["loc"][1:])[:200], "", str(each["msg"])[:300])
        for each in error.errors()[:MOST_FAULTS]
    ]
    return _sent(refused(400, *faults))


async def _elsewhere(_: Request, error: Exception) -> Response:
    """What there is not, or not so."""
    assert isinstance(error, HTTPException)
    words = {404: "there is nothing of this name", 405: "this is asked in another way"}
    answer = _sent(refused(error.status_code, Fault("", "", words.get(error.status_code, str(error.detail)))))
    answer.headers.update(error.headers or {})
    return answer


__all__ = ["FaultAnswer", "application"]
