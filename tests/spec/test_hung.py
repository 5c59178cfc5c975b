"""What a spec says of tabs, rings and hooks, and what it is refused for: the field, what was read, what is right."""

from __future__ import annotations

from typing import Any

import pytest

from templategen.errors import Refusal
from templategen.lengths import inches
from templategen.spec import FIELDS, read_spec, starting_spec
from templategen.spec.headings import Hooks, Rings, Tabs
from tests.planning.building import job
from tests.planning.test_points import HOOKS, RINGS, TRACK
from tests.planning.test_tabs import TABS


def _faults(typed: dict[str, Any]) -> dict[str, str]:
    with pytest.raises(Refusal) as refused:
        job(typed)
    return {fault.field: str(fault) for fault in refused.value.faults}


def test_what_is_left_out_is_left_to_the_planner() -> None:
    tabs, rings, hooks = (job(typed).heading for typed in (TABS, RINGS, HOOKS))
    assert isinstance(tabs, Tabs) and tabs.gap is None and tabs.end_allowance == inches("1/2")
    assert isinstance(rings, Rings) and rings.held_by == "sewn rings" and rings.set_below is None
    assert isinstance(hooks, Hooks) and (hooks.hooks_on, hooks.fixed) == ("rings", "sewn on")


@pytest.mark.parametrize("units", ["inch", "metric"])
@pytest.mark.parametrize("style", ["tabs", "rings", "hooks"])
def test_a_panel_may_have_come_with_any_of_them(style: str, units: Any) -> None:
    """Only what says how it hangs is asked of a heading that is there already, and all of that."""
    spec = read_spec(starting_spec(units, {"panel.heading.style": style, "heading.style": "tabs"}))
    assert spec.panel.heading.style == style and spec.drop.hung_by == "old heading"
    asked = {path for path, field in FIELDS.items() if field.table == "panel.heading" and style in field.styles}
    assert asked == {"panel.heading.gap"} if style == "tabs" else {"panel.heading.drop", "panel.heading.set_below"}


def test_rings_without_a_drop_are_refused_with_how_it_is_measured() -> None:
    fault = _faults({**RINGS, "heading.drop": None})["heading.drop"]
    assert "missing; write from the top of the rod down to where a ring, clip or glider holds" in fault


def test_a_choice_that_there_is_not_is_refused_with_those_that_there_are() -> None:
    faults = _faults({**TRACK, "heading.hooks_on": "strings", "heading.fixed": "glued"})
    assert '"strings"' in faults["heading.hooks_on"] and '"gliders"' in faults["heading.hooks_on"]
    assert '"pinned on"' in faults["heading.fixed"]


def test_a_ring_of_hooks_that_hang_on_gliders_is_refused() -> None:
    faults = _faults({**TRACK, "heading.ring_inside": "1 1/4 in"})
    assert list(faults) == ["heading.ring_inside"] and 'hooks_on is "gliders"' in faults["heading.ring_inside"]


@pytest.mark.parametrize(("drop", "right"), [("11/16 in", False), ("3/4 in", True)])
def test_a_drop_measured_from_the_rods_underside_is_refused_of_old_rings(drop: str, right: bool) -> None:
    came = {**TABS, "panel.heading.style": "rings", "panel.heading.drop": drop, "panel.heading.set_below": "0 in",
            "drop.hung_by": "old heading"}  # fmt: skip
    if right:
        assert job(came).panel.heading.style == "rings"
    else:
        assert "measure from the top of the rod" in _faults(came)["panel.heading.drop"]


def test_every_fault_of_tabs_is_told_at_once() -> None:
    wrong = {"heading.gap": "-1 in", "heading.tab_width": "0 in", "heading.drop": "2 in", "heading.count": 1}
    assert set(_faults({**TABS, **wrong})) == set(wrong)
