"""The whole job, in the order of the work."""

from __future__ import annotations

from fractions import Fraction
from types import MappingProxyType

from ..lengths import NOTHING
from ..spec import Spec
from . import advice
from .cloth import cloth_part, hem_figures, plan_hem
from .drop import drop_figures, hang_figures, plan_drop
from .extras import lining_figures, lining_notices, plan_weights, weight_figures, weight_notices
from .figures import Notice, Section
from .fullness import fullness
from .headings import HEADINGS
from .hems import HEMS
from .lines import line_of
from .offcut import offcut_figures, plan_offcut
from .plan import HeadingPlan, OffcutPlan, Plan
from .sides import plan_mitres, side_figures, side_notices
from .top import fold_figures, plan_top, top_figures, top_notices
from .widths import made_count, made_width


def make_plan(spec: Spec) -> Plan:
    """Work the whole job out, exactly.

    Whatever looks wrong ends in the plan's notices and never in an
    exception; only a spec that says nowhere how far the floor is away, which
    no spec that was read does, is refused.
    """
    kind, hem_kind = HEADINGS[spec.heading.style], HEMS[spec.hem.style]
    hem, shrinkage = plan_hem(spec)
    tuck = shrinkage.extra if shrinkage and shrinkage.carried_in == "tuck" else NOTHING
    drop, top, heading = plan_drop(spec, hem.allowance, tuck), plan_top(spec), kind.lay_out(spec, spec.heading)
    offcut = plan_offcut(spec, drop, kind.pieces(heading))
    mitres, weights = plan_mitres(spec, hem), plan_weights(spec)
    hangs = (*kind.hang_figures(spec, heading), *top_figures(spec, top), *hang_figures(spec, drop))
    of_cloth, cloth_notices = cloth_part(spec, drop, hem, top, heading, offcut, shrinkage)
    sections = (
        Section("hang", "How it hangs", hangs),
        Section("drop", f"From {line_of(spec).the} to the cut", drop_figures(spec, drop, hem_kind.terms(spec, hem))),
        Section("hem", "The new hem", hem_figures(hem_kind.figures(spec, hem), spec, shrinkage)),
        Section("top", "The top, folded anew", fold_figures(spec, top)),
        Section("heading", kind.title, kind.figures(spec, heading)),
        Section("sides", "Sides and corners", side_figures(spec, mitres)),
        Section("weights", "The weights", weight_figures(spec, weights)),
        Section("lining", "The lining", lining_figures(spec, drop, top.lowered)),
        Section("offcut", "The offcut", offcut_figures(spec, drop, offcut)),
        *of_cloth,
    )
    notices: list[Notice] = [
        *advice.hang_notices(spec, drop),
        *advice.drop_notices(spec, drop, hem, top),
        *advice.old_hem_notices(spec, drop, hem),
        *hem_kind.notices(spec, hem),
        *side_notices(spec, hem, drop, shrinkage),
        *weight_notices(spec, weights, hem),
        *lining_notices(spec, drop, hem),
        *top_notices(spec, top),
        *kind.notices(spec, heading),
        *advice.offcut_notices(spec, offcut),
        *advice.fullness_notices(spec),
        *cloth_notices,
    ]
    return Plan(
        spec=spec,
        tape=spec.tape,
        width=made_width(spec),
        panels=made_count(spec),
        drop=drop,
        hem=hem,
        top=top,
        heading=heading,
        offcut=offcut,
        mitres=mitres,
        shrinkage=shrinkage,
        sections=tuple(section for section in sections if section.figures or section.amounts),
        figures=MappingProxyType({figure.key: figure for section in sections for figure in section.figures}),
        counts=MappingProxyType(counts_of(spec, heading, offcut)),
        ratios=MappingProxyType({"fullness": Fraction(fullness(spec))}),
        notices=advice.worst_first(notices),
    )


def counts_of(spec: Spec, heading: HeadingPlan, offcut: OffcutPlan) -> dict[str, int]:
    """How many of everything, by the keys of plan.json."""
    counts = {"panels": made_count(spec)}
    things = f"{heading.thing}s"
    if heading.marks:
        counts[things] = heading.on_each
    if weights := plan_weights(spec):
        counts["weights"] = weights.count
    for name, on_each in heading.needs:
        counts |= {name: on_each, f"{name}_needed": on_each * made_count(spec)}
    if plan := offcut.pieces:
        counts |= {
            f"{things}_needed": plan.needed,
            f"{things}_per_strip": plan.per_strip,
            "strips_needed": plan.strips_needed,
            "strips_clear": plan.strips_clear,
            "strips_as_cut": plan.strips_as_cut,
            "strips_unpicked": plan.strips_unpicked,
            f"{things}_available": plan.available,
            f"{things}_available_unpicked": plan.available_unpicked,
        }
    return counts
