"""What is asked of the page's interface and what it answers, as models: their shapes are its description."""

from __future__ import annotations

from typing import Annotated, Any, TypeAlias

from pydantic import BaseModel, ConfigDict, Field, StringConstraints

from ..spec.document import MOST_BYTES
from .limits import MOST_FIELDS, MOST_LIST, MOST_TEXT, MOST_WINDOWS, WIDEST

Text: TypeAlias = Annotated[str, StringConstraints(max_length=MOST_TEXT)]
Typed: TypeAlias = Text | bool | Annotated[list[Text], Field(max_length=MOST_LIST)]
Fields: TypeAlias = Annotated[dict[Annotated[str, StringConstraints(max_length=100)], Typed],
                              Field(max_length=MOST_FIELDS)]  # fmt: skip


class Strict(BaseModel):
    """Nothing is taken for something else, and nothing that is not known is taken."""

    model_config = ConfigDict(extra="forbid", strict=True)


class WindowBody(Strict):
    """What is said of one window of a job."""

    came_from: Annotated[int | None, Field(
        alias="from", ge=0, le=10_000,
        description="The number, from 0, of the window in the spec's text that it was or was copied from.")] = None
    name: Text = ""
    room: Text = ""
    fields: Annotated[Fields, Field(description="Its own fields by path: they stand over the shared ones.")] = {}


class FormBody(Strict):
    """What stands in a form, every value as it was typed: {"panel.width": "54 in"}."""

    fields: Annotated[Fields, Field(description="By path; of a job what its windows share.")] = {}
    windows: Annotated[list[WindowBody], Field(max_length=MOST_WINDOWS)] = []
    together: Annotated[Fields, Field(description="What is kept alike over all windows, by name.")] = {}


class SpecBody(Strict):
    """A spec or a job as TOML."""

    spec: Annotated[str, StringConstraints(max_length=MOST_BYTES)] = ""


class JobBody(SpecBody):
    """A spec or a job as TOML, and a form that is laid over it."""

    form: Annotated[FormBody | None, Field(description="Left out: the text is taken as it is.")] = None

    def asked(self) -> tuple[str, dict[str, Any] | None]:
        """The text, and the form as plain data."""
        return self.spec, self.form.model_dump(by_alias=True) if self.form else None


class PlanBody(JobBody):
    window: Annotated[int, Field(
        ge=0, le=10_000, description="Of which window numbers and pictures are wanted, from 0.")] = 0


class KitBody(JobBody):
    despite_stops: Annotated[bool, Field(description="Make the kit even where the plan says stop.")] = False


class SheetBody(KitBody):
    page: Annotated[int, Field(ge=1, le=100_000)]
    width: Annotated[int, Field(ge=50, le=WIDEST, description="Pixels.")] = 1200


class FileBody(KitBody):
    file: Annotated[str | None, StringConstraints(max_length=200), Field(
        description="One file of the kit by its name; left out: all of them and the spec, in a zip.")] = None


class FaultAnswer(BaseModel):
    """One thing wrong: the same field names and words as on the command line."""

    field: Annotated[str, Field(description="As it stands in the file, panel.width; empty where none is to blame.")]
    read: Annotated[str, Field(description="What was read there; empty where nothing was.")]
    right: Annotated[str, Field(description="What is wrong, and what would be right.")]


class Faults(BaseModel):
    """Everything that is wrong."""

    faults: list[FaultAnswer]
    understood: dict[str, str] = {}
    stops: Annotated[list[str], Field(description="What the plan says stop to; the faults are then none.")] = []


class FormAnswer(BaseModel):
    form: dict[str, Any]


class SpecAnswer(BaseModel):
    spec: Annotated[str, Field(description="The text to be saved.")]


class NumberAnswer(BaseModel):
    label: str
    value: str
    working: str


class SectionAnswer(BaseModel):
    title: str
    rows: list[NumberAnswer]


class NoticeAnswer(BaseModel):
    code: str
    level: str
    text: str


class PictureAnswer(BaseModel):
    title: str
    spoken: Annotated[str, Field(description="What it shows, for who cannot see it.")]
    scale: str
    picture: Annotated[list[Any], Field(description='SVG as nested lists: ["g", {attributes}, child, ...].')]


class PlanAnswer(BaseModel):
    """Everything that was worked out."""

    understood: Annotated[dict[str, str], Field(description="What was understood, by field.")]
    plan: Annotated[dict[str, Any], Field(description="plan.json, as the command line prints it.")]
    in_short: str
    numbers: list[SectionAnswer]
    notices: list[NoticeAnswer]
    pictures: list[PictureAnswer]
    parts: Annotated[list[list[str]], Field(description="Windows whose panels are made alike, by name.")]
    stopped: bool


class PageAnswer(BaseModel):
    page: int
    holds: list[str]
    width_mm: float
    height_mm: float
    png: Annotated[str, Field(description="A small picture, in Base64.")]


class FileAnswer(BaseModel):
    name: str
    size: int
    what: str


class SheetsAnswer(BaseModel):
    """The sheets as they will print."""

    paper: str
    count: int
    said: str
    told: list[str]
    correction: str
    fingerprint: str
    pages: list[PageAnswer]
    files: list[FileAnswer]
