"""The take-off table: columns, units, what no record tells."""

from __future__ import annotations

import numpy as np
import pandas as pd
import pytest

import scupper as sc

FOOT = 0.3048
SLOTS = [
    "deck_top_area_m2",
    "deck_total_area_m2",
    "sidewalk_area_m2",
    "gutter_pocket_length_m",
    "soffit_overhang_area_m2",
    "parapet_area_m2",
    "rail_length_m",
    "joint_length_m",
    "joint_count",
    "drain_count",
    "gutter_length_m",
    "girder_count",
    "girder_area_m2",
    "girder_end_area_m2",
    "bearing_count",
    "cap_count",
    "cap_area_m2",
    "column_count",
    "column_area_m2",
    "abutment_area_m2",
    "pedestal_count",
    "berm_area_m2",
    "slope_protection_area_m2",
    "wash_area_total_m2",
]


@pytest.fixture(scope="module")
def table(county: sc.Inventory) -> pd.DataFrame:
    return sc.take_off(county)


def test_columns_and_their_order(table: pd.DataFrame) -> None:
    expected = ["structure_id", "state"]
    for slot in SLOTS:
        expected += [slot, f"{slot}_low", f"{slot}_high", f"{slot}_basis"]
    assert list(table.columns) == [*expected, "verdict"]


def test_what_no_record_tells_is_nan_with_a_range(table: pd.DataFrame) -> None:
    bridges = table[table["verdict"] == "bridge"]
    assert bridges["drain_count"].isna().all()
    assert (bridges["drain_count_basis"] == "assumed").all()
    assert (bridges["drain_count_high"] > 0).all()


def test_deck_area_is_length_times_width(county: sc.Inventory, table: pd.DataFrame) -> None:
    recorded = county.to_pandas()
    bridges = table["verdict"] == "bridge"
    told = bridges & recorded["deck_width_m"].notna()
    area = recorded["length_m"] * recorded["deck_width_m"]
    np.testing.assert_allclose(table["deck_total_area_m2"][told], area[told], rtol=1e-9)
    assert (table["deck_total_area_m2_basis"][told] == "recorded").all()
    assert list(table["structure_id"][bridges & ~told]) == ["TC-0139"]
    assert (table["deck_total_area_m2_basis"][bridges & ~told] == "inferred").all()


def test_ranges_enclose_and_absent_components_are_zero(table: pd.DataFrame) -> None:
    for slot in SLOTS:
        told = table[slot].notna()
        assert (table[f"{slot}_low"][told] <= table[f"{slot}_high"][told]).all(), slot
    single_span = table.set_index("structure_id").loc["TC-0008"]
    assert single_span["cap_area_m2"] == 0.0
    assert single_span["column_count"] == 0.0


def test_what_is_no_bridge_has_a_verdict_and_nothing_to_wash(table: pd.DataFrame) -> None:
    rows = table.set_index("structure_id")
    assert rows.loc["TC-0041", "verdict"] == "tunnel"
    assert rows.loc["TC-0037", "verdict"] == "culvert"
    assert rows.loc["TC-0037", "wash_area_total_m2"] == 0.0


def test_customary_units_differ_by_the_factor_only(
    county: sc.Inventory, table: pd.DataFrame
) -> None:
    customary = sc.take_off(county, units="us")
    for ours, factor in (("deck_top_area", FOOT**2), ("girder_area", FOOT**2)):
        np.testing.assert_allclose(customary[f"{ours}_ft2"] * factor, table[f"{ours}_m2"])
    np.testing.assert_allclose(customary["rail_length_ft"] * FOOT, table["rail_length_m"])
    assert customary["joint_count"].equals(table["joint_count"])
    with pytest.raises(sc.UnknownNameError):
        sc.take_off(county, units="metre")


def test_threads_and_order_do_not_matter(county: sc.Inventory, table: pd.DataFrame) -> None:
    many = list(county) * 20  # several blocks, so that several threads have work
    one = sc.take_off(many, threads=1)
    backwards = sc.take_off(many[::-1], threads=4)
    pd.testing.assert_frame_equal(one[: len(county)], table)
    pd.testing.assert_frame_equal(backwards[::-1].reset_index(drop=True), one)


def test_nothing_in_nothing_out() -> None:
    assert len(sc.take_off([])) == 0


def test_rules_and_keys_are_tables() -> None:
    rules = sc.rules()
    assert {"name", "formula", "source", "basis"} <= set(rules.columns)
    assert (rules["source"] != "").all()
    keys = sc.keys()
    assert "nozzle.bore" in set(keys[keys["section"] == "input"]["key"])
    assert np.isin(["component", "operation", "slot"], keys["section"]).all()
