"""Pictures of what draws tell show the figures they are drawn from."""

from __future__ import annotations

from pathlib import Path

import matplotlib as mpl
import pandas as pd
import pytest

import scupper as sc

mpl.use("Agg")


@pytest.fixture(scope="module")
def some() -> sc.Inventory:
    return sc.read_inventory(sc.demo_records()).select(["TC-0001", "TC-0002"])


def test_the_line_of_a_total_has_its_quantiles_and_the_limit(some: sc.Inventory) -> None:
    found = sc.simulate(some, sc.Job.demo(), draws=100)
    axes = found.plot(limit=9_000)
    texts = [text.get_text() for text in axes.texts]
    assert f"P80  {found.quantile(0.8):,.0f}" in texts
    legend = [text.get_text() for text in axes.get_legend().get_texts()]
    assert f"limit 9,000, passed in {found.chance_above(9_000):.0%}" in legend
    assert axes.get_xlabel() == "cost of all structures, USD"


def test_bars_of_a_survey_list_are_what_its_visits_narrow(some: sc.Inventory) -> None:
    found = sc.survey_list(some, sc.Job.demo(), visits=2, draws=64)
    axes = found.plot()
    widths = [bar.get_width() for bar in axes.patches]
    assert widths == pytest.approx(list(found.visits["narrows_by_draws"]))
    first = axes.get_yticklabels()[0].get_text()
    assert first.startswith(f"1. {found.visits['structure_id'].iloc[0]}\n")
    assert found.measurements["measure"].iloc[0] in first
    assert f"{found.middle_range:,.0f} wide now" in axes.get_title(loc="left")
    assert len(found.plot(most=1).patches) == 1


def test_bars_reach_from_low_to_high(some: sc.Inventory, tmp_path: Path) -> None:
    swings = sc.swings(some, sc.Job.demo(), figure="hours")
    swings.to_csv(tmp_path / "swings.csv")
    read_back = pd.read_csv(tmp_path / "swings.csv", index_col="key")
    for table in (swings, read_back[read_back["width"] > 0]):
        axes = sc.tornado(table, most=3)
        assert [label.get_text() for label in axes.get_yticklabels()] == list(swings["label"][:3])
        assert axes.get_xlabel() == "hours of all structures, labour-h"
        for row in range(3):
            for end, bar in zip(("low", "high"), axes.patches[row::3], strict=True):
                reached = bar.get_x() + bar.get_width()
                assert reached == pytest.approx(swings[f"hours_at_{end}"].iloc[row])
                assert bar.get_x() == pytest.approx(swings["hours_estimate"].iloc[row])
    with pytest.raises(sc.InputError, match="no unit.*columns of scupper.swings"):
        sc.tornado(swings.drop(columns="unit"))
    with pytest.raises(sc.InputError, match="no row"):
        sc.tornado(swings.head(0))
