"""Formulas of money over text and arrays; the cost of an estimate as a cube and by the unit."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import scupper as sc

c = sc.cost


def test_published_examples_read_as_people_write_them() -> None:
    # US DOL prevailing wage resource book; open course lecture; engineering economy tables
    assert c.week_pay("44 h", "20 USD/h", "7 USD/h", "22 USD/h") == pytest.approx(1232)
    assert c.week_pay("44 h", "22 USD/h", "5 USD/h", "22 USD/h") == pytest.approx(1232)
    assert c.straight_line("12,000 USD", "2,000 USD", 5) == pytest.approx(2000)
    assert c.fuel("250 hp", "0.04 gal/hp/h", 0.6, "4 USD/gal") == pytest.approx(24)
    assert c.tyres("6,000 USD", "3,000 h", 0.15) == pytest.approx(2.3)
    assert c.capital_recovery_factor(0.07, [5, 10, 15]) == pytest.approx(
        [0.243891, 0.142378, 0.109795], abs=5e-7
    )
    assert c.hire("16.3 h", 1, "268.97 USD/h") == pytest.approx(4384.21, abs=5e-3)
    hours = c.break_even_time("38,292.16 USD", "45 USD/h", "110 USD/h")
    assert hours.to("hour").m == pytest.approx(589.110182672)


def test_money_needs_its_currency_and_one_only() -> None:
    assert c.hourly(2000, "2,000 h", units={"annual": "USD"}) == pytest.approx(1)
    rates = c.labour_hour(np.array([20.0, 30.0]), "5 USD/h", 0.2, units={"cash": "USD/h"})
    assert rates == pytest.approx([29, 41])
    with pytest.raises(sc.UnitError, match="annual"):
        c.hourly(2000, "2,000 h")
    with pytest.raises(sc.UnitError, match="EUR"):
        c.overtime_base("20 USD/h", "22 EUR/h")
    with pytest.raises(sc.UnitError):
        c.hourly("2,000 ft", "2,000 h")
    with pytest.raises(sc.InputError, match="interest"):
        c.capital_recovery_factor(-1.5, 5)


@given(st.floats(0, 400_000), st.floats(100, 5_000), st.floats(0.001, 0.2))
def test_a_tax_never_takes_more_than_its_cap(earned: float, pay: float, rate: float) -> None:
    tax = c.capped_tax(rate, f"{earned} USD", f"{pay} USD", "168,600 USD")
    assert 0 <= tax <= rate * pay * (1 + 1e-12)
    assert tax == 0 or earned < 168_600


def test_retainage_moves_money_in_time_and_loses_none() -> None:
    flow = c.retainage(["1,000 USD", "2,000 USD", "3,000 USD"], 0.1, limit_share=0.05,
                       release_after=2, interest=0.01)  # fmt: skip
    assert flow.periods["paid"].sum() == pytest.approx(6000)
    assert flow.periods["outstanding"].tolist() == pytest.approx([100, 300, 300, 300, 0])
    assert flow.periods.index.tolist() == [1, 2, 3, 4, 5]
    assert flow.waiting_cost == pytest.approx(9.6294, abs=1e-4)
    with pytest.raises(sc.InputError, match="list of amounts"):
        c.retainage("1,000 USD")


def test_varied_quantities_and_show_up() -> None:
    assert c.varied_payment(150, 100, "10 USD") == pytest.approx(1500)
    assert c.varied_payment([70, 100, 150], 100, "10 USD", 0.25, "8 USD", "13 USD") == (
        pytest.approx([910, 1000, 1450])
    )
    assert c.show_up_time("1 h", "4 h").to("hour").m == pytest.approx(4)


def test_rates_are_built_up_from_their_parts() -> None:
    wage = c.wage(cash="20 USD/h", basic="22 USD/h", fringe="7 USD/h", medicare="7.65 %")
    assert wage.rate == pytest.approx(20 * 1.0765 + 7)
    assert wage.overtime_share == pytest.approx(22 * 1.0765 / wage.rate)
    truck = c.equipment_rate(
        ownership="average_investment", price="300,000 USD", salvage="50,000 USD", life="8 years",
        year_hours="1,330 h", interest=0.08,
    )  # fmt: skip
    assert truck.rate == pytest.approx(34.962406015)
    assert c.parts("wage").loc["cash", "required"]
    assert "price" in c.parts("equipment").index
    with pytest.raises(sc.UnknownNameError, match="cash"):
        c.wage(csh="20 USD/h")
    with pytest.raises(sc.InputError, match="life"):
        c.equipment_rate(price="300,000 USD", year_hours="1,330 h")
    with pytest.raises(sc.UnknownNameError, match="capital_recovery"):
        c.equipment_rate(ownership="rent", price="1 USD", life="1 year", year_hours="1 h")
    with pytest.raises(sc.UnknownNameError, match="equipment"):
        c.parts("wages")


@pytest.fixture(scope="module")
def priced() -> sc.Estimate:
    job = sc.Job.demo().replace(
        service={"deck_top": "full_clean", "gutter": "full_clean", "joint": "full_clean",
                 "drain": "full_clean", "bearing": "full_clean"},
        drains=6,
    )  # fmt: skip
    job = job.replace({"margin.overhead": 0.12, "margin.profit": 0.08})
    return sc.estimate(sc.read_inventory(sc.demo_records())[0], job)


def test_the_cube_adds_up_in_every_direction(priced: sc.Estimate) -> None:
    cube = priced.cost.cube
    total = priced.cost.total
    assert cube.to_numpy().sum() == pytest.approx(total, rel=1e-9)
    assert not cube.isna().any().any()
    for dimension, sums in (
        ("component", cube.sum(axis=1).groupby("component").sum()),
        ("operation", cube.sum(axis=1).groupby("operation").sum()),
        ("resource", cube.sum(axis=0)),
    ):
        by = priced.cost.by(dimension)
        assert sums.reindex(by.index).to_numpy() == pytest.approx(by.to_numpy(), rel=1e-9)
    assert cube.loc["indirect"].to_numpy().sum() == pytest.approx(
        total - priced.figure("cost.direct").m, rel=1e-9
    )


def test_unit_costs_are_money_by_the_unit(priced: sc.Estimate) -> None:
    table = priced.unit_costs
    assert table.index[-1] == "structure"
    assert table["total"].iloc[-1] == pytest.approx(priced.cost.total, rel=1e-9)
    assert table["total"].iloc[:-1].sum() == pytest.approx(priced.cost.total, rel=1e-9)
    assert table.loc["drain", "quantity"] == pytest.approx(6)
    assert table.loc["drain", "price_unit"] == "USD/each"
    assert table.loc["joint", "price_unit"] == "USD/ft"
    assert table.loc["deck_top", "price_unit"] == "USD/ft2"
    for _, row in table.iterrows():
        assert row["per_unit"] * row["quantity"] == pytest.approx(row["total"])
    metric = sc.estimate(priced.structure, priced.job.replace(units="metric")).unit_costs
    assert metric.loc["joint", "price_unit"] == "USD/m"
    assert metric.loc["joint", "per_unit"] == pytest.approx(table.loc["joint", "per_unit"] / 0.3048)
    assert math.isfinite(metric["per_unit"].sum())
