"""The shipped hoses and fittings as tables, and a job that names them."""

from __future__ import annotations

import pytest

import scupper as sc


def test_hoses_are_a_table_with_units_and_sources() -> None:
    table = sc.hydraulics.hoses().set_index("name")
    hose = table.loc["rubber_lined_1_3_4in"]
    assert hose["nominal_bore_in"] == pytest.approx(1.75)
    assert (hose["coefficient_low"], hose["coefficient_high"]) == (7.0, 15.5)
    assert 0 < hose["roughness_low_in"] < hose["roughness_in"] < hose["roughness_high_in"]
    assert (table["bore_source"] != "").all()
    assert (table["bore_date"] != "").all()
    assert table.loc["suction_3in", ["coefficient", "working_pressure_psi"]].isna().all()


def test_hoses_in_metric_and_si_are_the_same_hoses() -> None:
    us = sc.hydraulics.hoses("us")
    metric, si = sc.hydraulics.hoses("metric"), sc.hydraulics.hoses("si")
    assert si["bore_m"].to_numpy() == pytest.approx(us["bore_in"].to_numpy() * 0.0254)
    assert si["bore_m"].to_numpy() == pytest.approx(metric["bore_mm"].to_numpy() / 1000)
    with pytest.raises(sc.UnknownNameError):
        sc.hydraulics.hoses("imperial")


def test_fittings_have_a_range_and_a_source() -> None:
    table = sc.hydraulics.fittings().set_index("name")
    assert (table["loss_coefficient_low"] <= table["loss_coefficient"]).all()
    assert (table["loss_coefficient"] <= table["loss_coefficient_high"]).all()
    assert (table["loss_coefficient_source"] != "").all()
    # LMNO Engineering, Table of Minor Loss Coefficients: globe valve 10, swing check 2
    assert table.loc["globe_valve", "loss_coefficient"] == 10
    assert table.loc["check_valve", "loss_coefficient"] == 2


def test_every_published_coefficient_is_listed_with_its_source() -> None:
    table = sc.hydraulics.published_coefficients()
    assert set(table["basis"]) == {"seen", "computed", "memory"}
    of_hose = table[table["hose"] == "rubber_lined_1_3_4in"]["coefficient"]
    assert (of_hose.min(), of_hose.max()) == (7.0, 15.5)
    assert table["source"].str.contains("from memory")[table["basis"] == "memory"].all()


def _bore(job: sc.Job, segment: str = "supply") -> dict[str, float | str]:
    keys = job.keys().set_index("key")
    row: dict[str, float | str] = keys.loc[f"hose[{segment}].bore"].to_dict()
    return row


def test_a_job_names_the_hose_of_a_segment() -> None:
    document = sc.Job.demo().to_dict()
    for field in ("bore", "roughness"):
        del document["inputs"][f"hose[supply].{field}"]
    document["hoses"] = {"supply": "rubber_lined_1_3_4in"}
    job = sc.Job.from_dict(document)
    table = sc.hydraulics.hoses().set_index("name").loc["rubber_lined_1_3_4in"]
    bore = _bore(job)
    assert bore["low"] == pytest.approx(table["bore_low_in"])
    assert bore["high"] == pytest.approx(table["bore_high_in"])
    assert bore["source"] == table["bore_source"]
    larger = job.replace(hoses={"supply": "rubber_lined_2_1_2in"})
    assert _bore(larger)["low"] == pytest.approx(2.5)
    own = larger.replace({"hose[supply].bore": "2.6 in"}).replace(hoses={"supply": "suction_3in"})
    assert _bore(own)["likely"] == pytest.approx(2.6)


def test_an_unknown_hose_or_segment_is_refused() -> None:
    with pytest.raises(sc.UnknownNameError, match="rubber_lined_1_3_4in"):
        sc.Job.demo().replace(hoses={"supply": "rubber_lined_1_3_4"})
    with pytest.raises(sc.UnknownNameError, match="supply"):
        sc.Job.demo().replace(hoses={"suply": "jetting_1in"})
