"""What is asked of the page's interface and what it answers, as shapes: checked on the way in, described on both."""

from __future__ import annotations

from typing import Annotated, Any, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Discriminator, Field, Tag
from pydantic_core import PydanticCustomError

from . import limits

TAGS = {str: "<text>", bool: "<switch>", list: "<list>"}


def _not_too_many(value: object) -> object:
    """A table with too much in it is not looked through before it is refused."""
    if isinstance(value, dict) and len(value) > limits.MOST_FIELDS:
        raise PydanticCustomError("too_many", f"has more than {limits.MOST_FIELDS} entries")
    return value


Text = Annotated[str, Field(max_length=limits.MOST_TYPED)]
Name = Annotated[str, Field(max_length=limits.MOST_NAME)]
Texts = Annotated[list[Text], Field(max_length=limits.MOST_IN_LIST, fail_fast=True)]
Value = Annotated[
    Annotated[Text, Tag("<text>")] | Annotated[bool, Tag("<switch>")] | Annotated[Texts, Tag("<list>")],
    Discriminator(
        lambda value: TAGS.get(type(value)),
        custom_error_type="no_value",
        custom_error_message="must be a text, a list of texts, or true or false",
    ),
]
Values = Annotated[
    dict[Name, Value], Field(max_length=limits.MOST_FIELDS), BeforeValidator(_not_too_many)
]


class _Asked(BaseModel):
    """What is asked: nothing is taken for something else, and nothing unknown is taken."""

    model_config = ConfigDict(strict=True, extra="forbid")


class Window(_Asked):
    """A window of a job as it stands in the form."""

    came_from: Annotated[
        int | None,
        Field(alias="from", ge=0, lt=limits.MOST_WINDOWS, description="Its number in `spec`, from 0; null if new"),
    ] = None
    name: Text = ""
    room: Text = ""
    fields: Annotated[Values, Field(description="What it says of its own, over the fields of all")] = {}


class Form(_Asked):
    """What stands in the form: every value as it was typed, by the path of its field."""

    fields: Annotated[Values, Field(examples=[{"panel.width": "54 in", "drop.floor_marks": ["13 5/8 in"]}])] = {}
    windows: Annotated[list[Window], Field(max_length=limits.MOST_WINDOWS)] = []
    together: Annotated[dict[Name, Text], Field(max_length=limits.MOST_IN_LIST), BeforeValidator(_not_too_many)] = {}


class AskedOfSpec(_Asked):
    """A spec as text."""

    spec: Annotated[str, Field(max_length=limits.MOST_TEXT, description='TOML as it was opened; "" for a new one')]


class AskedOfForm(AskedOfSpec):
    """A spec and the form that is laid over it."""

    form: Annotated[Form | None, Field(description="null for the spec as it stands")] = None

    @property
    def typed(self) -> dict[str, Any] | None:
        """The form as plain values."""
        return None if self.form is None else self.form.model_dump(by_alias=True)


class AskedOfPlan(AskedOfForm):
    """A spec and a form, to be worked out."""

    window: Annotated[
        int, Field(ge=0, lt=limits.MOST_WINDOWS, description="Whose numbers and pictures are wanted, from 0")
    ] = 0


class AskedOfSheets(AskedOfForm):
    """A spec and a form, to be made into a kit."""

    despite_stops: Annotated[bool, Field(description="Make it even where the plan says stop")] = False


class AskedOfSheet(AskedOfSheets):
    """One sheet of the kit, as a picture."""

    page: Annotated[int, Field(ge=1, le=limits.MOST_PAGES)]
    width: Annotated[int, Field(ge=limits.LEAST_PIXELS, le=limits.MOST_PIXELS, description="Of the picture, in pixels")]


class AskedOfKit(AskedOfSheets):
    """A file of the kit."""

    file: Annotated[Name | None, Field(description="Its name; null for all of them and the spec, in a zip")] = None


class FaultTold(BaseModel):
    """One thing that is wrong: where, what was read, what would be right."""

    field: Annotated[str, Field(description='As it stands in the file, `panel.width`; "" where none is to blame')]
    read: str
    right: str


class Refused(BaseModel):
    """Why there is no other answer."""

    faults: list[FaultTold]


class WrongSpec(Refused):
    """What is wrong with a spec, or what its plan stops at."""

    understood: Annotated[dict[str, str], Field(description="What each length was read as, by field")] = {}
    stops: list[str] = []


class FieldsTold(BaseModel):
    """Every field of a spec, in the groups and the order in which things are measured."""

    groups: list[dict[str, Any]]
    fields: dict[str, dict[str, Any]]
    papers: list[str]
    lines: Annotated[dict[str, str], Field(description="What panels can hang to, and what each is called")]
    of_the_kit: Annotated[list[str], Field(description="What a kit has one of: never a window's own")]
    of_a_window: list[str]
    limits: dict[str, int]
    start: Annotated[dict[str, Form], Field(description="The form of a new spec, by its units")]
    example: Annotated[dict[str, Form], Field(description="A form filled with a sample job, by its units")]
    version: str


class GuideTold(BaseModel):
    """A picture of what fields measure, as a tree of SVG elements: a name, attributes, and what is in it."""

    title: str
    spoken: str
    picture: list[Any]


class FormTold(BaseModel):
    """A spec as a form has it."""

    form: Form


class SpecTold(BaseModel):
    """The text of a spec, to be kept."""

    spec: str


class NumberTold(BaseModel):
    """A number and how it came about."""

    label: str
    value: str
    working: str


class SectionTold(BaseModel):
    """Numbers that belong together."""

    title: str
    rows: list[NumberTold]


class NoticeTold(BaseModel):
    """Something to know, to heed, or to stop at."""

    code: str
    level: Literal["note", "warning", "stop"]
    text: str


class PictureTold(GuideTold):
    """A picture of the job."""

    scale: str


class PlanTold(BaseModel):
    """The job worked out."""

    understood: Annotated[dict[str, str], Field(description="What each length was read as, by field")]
    plan: Annotated[dict[str, Any], Field(description="As `templategen plan --json` prints it")]
    in_short: str
    numbers: list[SectionTold]
    notices: list[NoticeTold]
    pictures: list[PictureTold]
    parts: Annotated[list[list[str]], Field(description="Windows whose panels are made alike, by name")]
    stopped: bool


class PageTold(BaseModel):
    """A sheet of a kit, small."""

    page: int
    holds: list[str]
    width_mm: float
    height_mm: float
    png: Annotated[str, Field(description="A picture in base64")]


class FileTold(BaseModel):
    """A file of a kit."""

    name: str
    size: int
    what: str


class SheetsTold(BaseModel):
    """A kit on paper."""

    paper: str
    count: int
    said: str
    told: list[str]
    correction: str
    pages: list[PageTold]
    files: list[FileTold]
    fingerprint: str
