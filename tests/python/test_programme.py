"""Many structures: every one in exactly one place, sums, threads, order."""

from __future__ import annotations

import threading

import pandas as pd
import pytest

import scupper as sc


@pytest.fixture(scope="module")
def programme(county: sc.Inventory, job: sc.Job) -> sc.Programme:
    return sc.estimate_all(county, job)


def test_every_structure_is_in_one_place(county: sc.Inventory, programme: sc.Programme) -> None:
    priced = list(programme.to_pandas()["structure_id"])
    unpriced = list(programme.unpriced["structure_id"])
    assert sorted(priced + unpriced) == sorted(s.id for s in county)
    counts = programme.counts
    assert counts["read"] == counts["priced"] + counts["unpriced"] == len(county)
    assert (programme.unpriced["reason"] != "").all()


def test_totals_are_sums_of_the_rows(programme: sc.Programme) -> None:
    table = programme.to_pandas()
    totals = programme.totals
    assert programme.total == pytest.approx(table["cost_total_usd"].sum(), rel=1e-9)
    for name in ("water_gal", "debris_short_ton", "labour_h", "wash_area_total_ft2"):
        assert totals[name] == pytest.approx(table[name].sum(), rel=1e-7), name


def test_rows_are_the_estimates_one_by_one(
    county: sc.Inventory, job: sc.Job, programme: sc.Programme
) -> None:
    table = programme.to_pandas().set_index("structure_id")
    for id in ("TC-0001", "TC-0026"):
        single = sc.estimate(county[id], job)
        assert table.loc[id, "cost_total_usd"] == single.cost.total
        assert table.loc[id, "water_gal"] == single.water.magnitude


def test_a_total_spreads_less_than_its_structures(
    county: sc.Inventory, job: sc.Job, programme: sc.Programme
) -> None:
    def spread(row: pd.Series[float]) -> float:
        return (row["P95"] - row["P5"]) / row["P50"]

    total = programme.ranges().loc["cost.total"]
    assert total["value"] == pytest.approx(programme.total, rel=1e-12)
    assert total["P5"] < total["value"] < total["P95"]
    assert spread(total) < spread(sc.estimate(county["TC-0001"], job).ranges().loc["cost.total"])
    again = sc.estimate_all(list(county)[::-1], job).ranges(threads=1).loc["cost.total"]
    assert again.equals(total)


def test_threads_and_order_give_the_same_bits(county: sc.Inventory, job: sc.Job) -> None:
    many = list(county) * 20  # several blocks, so that several threads have work
    one = sc.estimate_all(many, job, threads=1)
    backwards = sc.estimate_all(many[::-1], job, threads=4)
    assert one.total == backwards.total
    assert one.totals.equals(backwards.totals)
    table = backwards.to_pandas()[::-1].reset_index(drop=True)
    pd.testing.assert_frame_equal(one.to_pandas(), table)


def test_python_threads_do_not_disturb_each_other(county: sc.Inventory, job: sc.Job) -> None:
    """The module promises not to need the interpreter's lock."""
    totals: list[float] = []
    many = list(county) * 20

    def work() -> None:
        for bore in ("3/8 in", "1/2 in", "5/8 in"):
            changed = job.replace({"nozzle.bore": bore})
            programme = sc.estimate_all(many, changed, threads=2)
            totals.append(programme.total)
            sc.take_off(county)
            sc.estimate(county[0], job).explain("water")

    workers = [threading.Thread(target=work) for _ in range(4)]
    for worker in workers:
        worker.start()
    for worker in workers:
        worker.join()
    assert len(totals) == 12
    assert len(set(totals)) == 3


def test_a_selection_is_priced_like_an_inventory(county: sc.Inventory, job: sc.Job) -> None:
    some = sc.estimate_all(county.select(["TC-0003", "TC-0037"]), job)
    assert some.counts == {"read": 2, "priced": 1, "unpriced": 1}


def test_units_change_columns_not_money(county: sc.Inventory, job: sc.Job) -> None:
    metric = sc.estimate_all(county, job.replace(units="metric"))
    assert {"water_m3", "debris_t", "wash_area_total_m2"} <= set(metric.to_pandas().columns)
    assert "water_gal" in metric.to_pandas(units="us").columns
    assert metric.total == sc.estimate_all(county, job).total


def test_measurements_reach_the_programme(county: sc.Inventory, job: sc.Job) -> None:
    base = sc.estimate_all(county, job).total
    more = sc.estimate_all(county, job.override("TC-0001", drains=8)).total
    less = sc.estimate_all(county, job.override("TC-0001", drains=0)).total
    assert less < base < more


def test_nothing_in_nothing_out(job: sc.Job) -> None:
    empty = sc.estimate_all([], job)
    assert (empty.total, empty.counts["read"], len(empty.to_pandas())) == (0.0, 0, 0)


def test_progress_is_told(county: sc.Inventory, job: sc.Job) -> None:
    calls: list[tuple[int, int]] = []
    sc.estimate_all(county, job, progress=lambda done, total: calls.append((done, total)))
    assert calls[-1] == (len(county), len(county))


def test_the_summary_adds_up(programme: sc.Programme) -> None:
    text = repr(programme)
    assert "culvert" in text
    assert "USD" in text
    assert f"{programme.counts['priced']}" in text
    assert "<table>" in programme._repr_html_()
    with pytest.raises(sc.UnknownNameError):
        programme.total_of("water.volum")
