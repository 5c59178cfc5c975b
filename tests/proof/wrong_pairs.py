"""Wrong pairs: every end of every piece of a kit laid against every other, upright and upside down."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import product

from .joining import Pair, Paper


@dataclass(frozen=True)
class Tried:
    """Two pieces laid beside each other, both upright or one of them upside down."""

    left: str
    right: str
    upside_down: bool
    joins: bool
    belongs: bool
    """Whether the numbers on them say that they belong beside each other."""
    teeth_off: int
    """How many teeth of the two have no partner when their marks lie on each other."""
    nearest: float
    """How far the nearest of these is from any tooth of the other piece, in mm."""
    marks_off: float
    """By how much their marks miss each other when they lie edge to edge, in mm."""
    ends_off: bool
    """Whether square ends and points do not come to lie where they belong."""


def all_tried(papers: Sequence[Paper]) -> list[Tried]:
    """Every end with every end that can be laid against it. Two that are both upside down are two upright ones."""
    return list(_tried(papers))


def _tried(papers: Sequence[Paper]) -> Iterator[Tried]:
    about = [paper.turned_about() for paper in papers]
    for ones, others, turned in ((papers, papers, False), (papers, about, True), (about, papers, True)):
        for one, other in product(ones, others):
            right, left = one.pairs[1], other.pairs[0]
            if right is not None and left is not None:
                yield _pair(one, right, other, left, turned)


def _pair(one: Paper, right: Pair, other: Paper, left: Pair, turned: bool) -> Tried:
    strangers = right.strangers(left)
    return Tried(
        left=_name(one),
        right=_name(other),
        upside_down=turned,
        joins=right.meets(left),
        belongs=not turned and _follows(one, other),
        teeth_off=len(strangers),
        nearest=min(strangers, default=0.0),
        marks_off=right.marks_off(left),
        ends_off=right.square != right.links or left.pointed != left.links,
    )


def _name(paper: Paper) -> str:
    return f"{paper.piece.template} {paper.piece.number}"


def _follows(one: Paper, other: Paper) -> bool:
    return one.piece.template == other.piece.template and other.piece.number == one.piece.number + 1


def margins(tried: Sequence[Tried]) -> str:
    """By how much the wrong pairs are wrong, as a row of a table."""
    words = []
    for name, some in (
        ("wrong neighbour", [t for t in tried if not t.belongs and not t.upside_down]),
        ("upside down", [t for t in tried if t.upside_down]),
    ):
        words.append(
            f"{name}: {len(some):>4} tried, at least {min(t.teeth_off for t in some):>2} teeth off "
            f"by {min(t.nearest for t in some):.2f} mm"
        )
    edges = min(t.marks_off for t in tried if t.upside_down)
    return f"{'; '.join(words)}, marks off by {edges:.2f} mm edge to edge"
