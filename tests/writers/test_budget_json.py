"""The error budget as plain data."""

from __future__ import annotations

import json

import pytest

from templategen.writers.budget_json import budget_record
from tests.proof.kits import PANELS, made


@pytest.mark.parametrize("panel", list(PANELS))
def test_the_record_adds_up_and_survives_json(panel: str) -> None:
    found = made(PANELS[panel]).kit.budgets
    records = json.loads(json.dumps([budget_record(budget) for budget in found], allow_nan=False))
    for budget, record in zip(found, records, strict=True):
        assert sum(record["parts_mm"].values()) == pytest.approx(record["worst_mm"], abs=1e-5)
        assert record["worst_mm"] == pytest.approx(budget.worst, abs=1e-6)
        assert record["held_to_mm"] == 6.35
        assert record["template"] == budget.template and record["mark"] == budget.mark.label
        assert record["along_mm"] == pytest.approx(float(budget.mark.at), abs=1e-6)
        assert (record["closing"] is None) == (budget.closing is None)
        if budget.closing:
            assert record["closing"]["length_mm"] == pytest.approx(float(budget.closing.length), abs=1e-6)
            assert record["promised_mm"] == record["closing"]["worst_mm"] < record["worst_mm"]
