"""Pictures of what draws tell show the figures they are drawn from."""

from __future__ import annotations

import matplotlib as mpl
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


def test_bars_reach_from_low_to_high(some: sc.Inventory) -> None:
    swings = sc.swings(some, sc.Job.demo(), figure="hours")
    axes = sc.tornado(swings, most=3)
    assert [label.get_text() for label in axes.get_yticklabels()] == list(swings["label"][:3])
    for row in range(3):
        for end, bar in zip(("low", "high"), axes.patches[row::3], strict=True):
            reached = bar.get_x() + bar.get_width()
            assert reached == pytest.approx(swings[f"hours_at_{end}"].iloc[row])
            assert bar.get_x() == pytest.approx(swings.attrs["estimate"])
