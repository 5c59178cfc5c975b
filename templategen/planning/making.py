"""The whole job, in the order of the work."""

from __future__ import annotations

from fractions import Fraction
from types import MappingProxyType

from ..spec import Spec
from . import advice
from .drop import drop_figures, hang_figures, plan_drop
from .fullness import fullness
from .headings import HEADINGS, HeadingMaker
from .hem import hem_figures, plan_hem
from .offcut import offcut_figures, plan_offcut
from .plan import Figure, LoopPlan, Notice, OffcutPlan, Plan


def make_plan(spec: Spec) -> Plan:
    """Work the whole job out, exactly.

    Whatever looks wrong ends in the plan's notices and never in an
    exception; only a spec that says nowhere how far the floor is away, which
    no spec that was read does, is refused.
    """
    maker = maker_of(spec)
    drop, hem, loops = plan_drop(spec), plan_hem(spec), maker.lay_out(spec)
    offcut = plan_offcut(spec, drop, loops)
    figures = (
        *hang_figures(spec, drop),
        *drop_figures(spec, drop),
        *hem_figures(spec, hem),
        *maker.figures(spec, loops),
        *offcut_figures(spec, drop, offcut),
    )
    notices: list[Notice] = [
        *advice.hang_notices(spec, drop),
        *advice.drop_notices(spec, drop),
        *advice.old_hem_notices(spec, drop),
        *advice.hem_notices(spec),
        *maker.notices(spec, loops),
        *advice.offcut_notices(spec, loops, offcut),
        *advice.fullness_notices(spec),
    ]
    return Plan(
        spec=spec,
        tape=spec.tape,
        drop=drop,
        hem=hem,
        heading=loops,
        offcut=offcut,
        figures=_by_key(figures),
        counts=MappingProxyType(_counts(spec, loops, offcut)),
        ratios=MappingProxyType({"fullness": Fraction(fullness(spec))}),
        notices=advice.worst_first(notices),
    )


def maker_of(spec: Spec) -> HeadingMaker:
    """How the heading that the spec names is made."""
    maker = HEADINGS[spec.heading.style].maker
    assert maker is not None, f"nothing makes a heading of {spec.heading.style}"
    return maker


def _by_key(figures: tuple[Figure, ...]) -> MappingProxyType[str, Figure]:
    return MappingProxyType({figure.key: figure for figure in figures})


def _counts(spec: Spec, loops: LoopPlan, offcut: OffcutPlan) -> dict[str, int]:
    return {
        "panels": spec.panel.count,
        "loops": loops.count,
        "loops_needed": offcut.loops_needed,
        "loops_per_strip": offcut.loops_per_strip,
        "strips_needed": offcut.strips_needed,
        "strips_clear": offcut.strips_clear,
        "strips_as_cut": offcut.strips_as_cut,
        "strips_unpicked": offcut.strips_unpicked,
        "loops_available": offcut.loops_available,
        "loops_available_unpicked": offcut.loops_available_unpicked,
    }
