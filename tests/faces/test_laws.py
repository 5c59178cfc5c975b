"""Whatever is in the file: a kit, or a clear refusal, and never anything else."""

from __future__ import annotations

import json
from typing import Any

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from templategen import Options, kit_files, make_plan, read_spec
from templategen.errors import Refusal, StoppedPlan
from templategen.planning import plan_for
from templategen.spec import Spec, read_spec_or_job
from tests.strategies import jobs, kind_specs, spec_texts, toml_documents, workshop_specs

THOROUGH = settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])


@THOROUGH
@given(
    spec_texts() | toml_documents() | st.text(max_size=200) | jobs(),
    st.sampled_from([None, "letter", "a4", "a3", "legal", "tabloid", "a5", "a0", "post card"]),
    st.lists(
        st.sampled_from(["spacing strip", "Loop-Ladder", "work order", "Print-Check", "all", "sleeve"]), max_size=2
    ),
    st.booleans(),
    st.fixed_dictionaries(
        {},
        optional={
            "orientation": st.sampled_from(["portrait", "landscape", "least", "upright"]),
            "half_strip": st.booleans(),
            "large_print": st.booleans() | st.just("yes"),
            "strips": st.integers(0, 4) | st.sampled_from(["two", "21"]),
        },
    ),
)
def test_any_text_is_a_kit_or_a_refusal_that_says_something(
    text: str, paper: str | None, only: list[str], despite_stops: bool, choices: dict[str, Any]
) -> None:
    try:
        plan = plan_for(read_spec_or_job(text))
        kit, files = kit_files(plan, Options(paper, tuple(only), despite_stops, **choices))
    except Refusal as refusal:
        assert refusal.faults and all(fault.right for fault in refusal.faults)
    except StoppedPlan as stopped:
        assert stopped.texts and not despite_stops
    else:
        assert {"kit.pdf", "kit.json", "work-order.txt", "work-order.html"} <= set(files)
        assert len(json.loads(files["kit.json"])["pages"]) == len(kit.sheets)


@settings(max_examples=6, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(workshop_specs() | kind_specs())
def test_the_same_text_gives_the_same_bytes(spec: Spec) -> None:
    """Of any kind that there is; a wider panel takes more of the same, and longer."""
    first, second = (kit_files(make_plan(read_spec(spec.source)), Options(despite_stops=True)) for _ in range(2))
    assert first[1] == second[1]
