"""What can be asked of the page's interface, and who answers it."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from http import HTTPStatus
from typing import Any
from urllib.parse import quote

from fastapi import FastAPI
from fastapi.exceptions import RequestValidationError
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import Response
from starlette.types import ASGIApp

from ..version import __version__
from . import bodies, limits
from .faults import JSON, told
from .guards import guarded, refused
from .misshapen import faults_in
from .outcome import Outcome, unforeseen
from .places import Place
from .static import files
from .workers import WORKS, Crew, crews

_ANY = {
    400: "Not HTTP, or not of this shape; every place in it that is wrong is told",
    403: "Another page has asked",
    408: "It did not come in within the time there is for it",
    413: "The body is too large",
    421: "It calls this place by another's name",
    429: "Too much is at work already; `Retry-After` says when to try again",
    500: "A fault of the program itself",
}
_POSTED = _ANY | {415: "The body is not said to be JSON"}
_FILES = ("application/pdf", "application/zip", "image/svg+xml", "application/json", "application/toml",
          "text/plain", "text/html")  # fmt: skip


def application(place: Place, works: str = WORKS) -> ASGIApp:
    """The page at ``place``: everything that it is asked for, behind its guards. ``works`` is a module of works."""
    plans, kits = crews(works)
    app = FastAPI(
        title="The page of templategen",
        summary="Curtain panels altered: measurements in, numbers and full-scale templates out",
        description="For the page that is served beside it, on the same machine. Nothing is kept between two requests.",
        version=__version__,
        docs_url=None,
        redoc_url=None,
        openapi_url="/api/openapi.json",
        redirect_slashes=False,
        lifespan=_manned(plans, kits),
    )
    _add_tables(app, plans)
    _add_texts(app, plans)
    _add_kits(app, kits)
    for path, file in files().items():
        app.add_route(path, file.answer, ["GET"], include_in_schema=False)
    app.add_exception_handler(RequestValidationError, _misshapen)
    app.add_exception_handler(HTTPException, _not_there)
    app.add_exception_handler(Exception, _broken)
    return guarded(app, place)


def _manned(plans: Crew, kits: Crew) -> Callable[[FastAPI], Any]:
    @asynccontextmanager
    async def manned(_: FastAPI) -> AsyncIterator[None]:
        """Workers are there for as long as the server is; those who plan first, since typing comes before printing."""

        async def start() -> None:
            await plans.start()
            await kits.start()

        starting = asyncio.create_task(start())
        try:
            yield
        finally:
            starting.cancel()
            await asyncio.gather(starting, plans.stop(), kits.stop(), return_exceptions=True)

    return manned


def _add_tables(app: FastAPI, plans: Crew) -> None:
    """What is the same for everybody, and therefore asked of a worker once."""
    known: dict[str, Outcome] = {}

    async def once(work: str) -> Response:
        if work not in known:
            made = await plans.do(work)
            if made.status != HTTPStatus.OK:
                return _answer(made)
            known[work] = made
        return _answer(known[work])

    @app.get("/api/fields", **_said("Every field of a spec, for a form", bodies.FieldsTold, _ANY, 422))
    async def fields() -> Response:
        """Groups in the order of measuring, each field with what it means and how it is measured."""
        return await once("fields")

    @app.get("/api/guides", **_said("Pictures of what the fields measure", dict[str, bodies.GuideTold], _ANY, 422))
    async def guides() -> Response:
        """By key. A group of elements with `data-about` shows what the field of that path measures."""
        return await once("guides")


def _add_texts(app: FastAPI, plans: Crew) -> None:
    """From a text to a form and back, and to its numbers."""

    @app.post("/api/form", **_said("A spec's text as a form has it", bodies.FormTold, _POSTED, 422))
    async def form(asked: bodies.AskedOfSpec) -> Response:
        """Every value as it was typed. Refused where the text is no TOML."""
        return _answer(await plans.do("form_in", asked.spec))

    @app.post("/api/spec", **_said("The text to keep", bodies.SpecTold, _POSTED, 422))
    async def spec(asked: bodies.AskedOfForm) -> Response:
        """The form laid over the text: what is unchanged keeps its bytes. Right or wrong, it can be kept."""
        return _answer(await plans.do("spec_text", asked.spec, asked.typed))

    @app.post("/api/plan", **_said("The job worked out", bodies.PlanTold, _POSTED, 422))
    async def plan(asked: bodies.AskedOfPlan) -> Response:
        """Numbers with their working, notices, pictures; refused with every fault, as the command line tells them."""
        return _answer(await plans.do("plan", asked.spec, asked.typed, asked.window))


def _add_kits(app: FastAPI, kits: Crew) -> None:
    """From a job to paper."""

    @app.post("/api/sheets", **_said("The kit's sheets, small", bodies.SheetsTold, _POSTED, 422))
    async def sheets(asked: bodies.AskedOfSheets) -> Response:
        """What a kit takes of paper, every sheet as a small picture, every file with its size."""
        return _answer(await kits.do("sheets", asked.spec, asked.typed, asked.despite_stops))

    @app.post("/api/sheet", **_said("A sheet of the kit", None, _POSTED, 422, ("image/png",)))
    async def sheet(asked: bodies.AskedOfSheet) -> Response:
        """As it will print, drawn as wide as is asked."""
        arguments = asked.spec, asked.typed, asked.page, asked.width, asked.despite_stops
        return _answer(await kits.do("sheet", *arguments))

    @app.post("/api/kit", **_said("The kit's files", None, _POSTED, 422, _FILES))
    async def kit(asked: bodies.AskedOfKit) -> Response:
        """One file of the kit, or all of them and the spec in a zip."""
        return _answer(await kits.do("kit", asked.spec, asked.typed, asked.file, asked.despite_stops))


def _said(
    summary: str, model: Any, refusals: dict[int, str], wrong: int, media_types: tuple[str, ...] = ()
) -> dict[str, Any]:
    """An operation's part of the description: what it answers, and every way in which it refuses to."""
    good: dict[str, Any] = {"description": "Done"}
    if model is None:
        binary = {"schema": {"type": "string", "format": "binary"}}
        good["content"] = {media_type: binary for media_type in media_types}
    else:
        good["model"] = model
    responses: dict[int, Any] = {200: good}
    responses |= {status: {"model": bodies.Refused, "description": why} for status, why in sorted(refusals.items())}
    why = "Every fault of the spec; or what its plan stops at; or that this is too much work"
    responses[wrong] = {"model": bodies.WrongSpec, "description": why}
    return {"summary": summary, "responses": responses, "response_class": Response}


def _answer(made: Outcome) -> Response:
    headers = {}
    if made.file_name:
        headers["content-disposition"] = f"attachment; filename*=utf-8''{quote(made.file_name, safe='')}"
    if made.status == HTTPStatus.TOO_MANY_REQUESTS:
        headers["retry-after"] = str(limits.RETRY_SECONDS)
    return Response(made.body, made.status, headers, made.media_type)


async def _misshapen(_: Request, error: Exception) -> Response:
    assert isinstance(error, RequestValidationError)
    return Response(told(faults_in(error.errors())), HTTPStatus.BAD_REQUEST, media_type=JSON)


async def _not_there(_: Request, error: Exception) -> Response:
    """What the framework refuses by itself: an address or a way to ask that there is not, a body that is no JSON."""
    assert isinstance(error, HTTPException)
    right = {
        HTTPStatus.BAD_REQUEST: "this is no JSON that a job needs: broken, nested too deeply, or a number too long",
        HTTPStatus.NOT_FOUND: "there is nothing at this address",
        HTTPStatus.METHOD_NOT_ALLOWED: "this address is not asked in this way",
    }.get(HTTPStatus(error.status_code), error.detail)
    return refused(HTTPStatus(error.status_code), right, **(error.headers or {}))


async def _broken(_: Request, error: Exception) -> Response:
    """An answer all the same; the guards write what happened to the program's log."""
    return _answer(unforeseen(""))
