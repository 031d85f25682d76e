"""Standard girder sections as a table, and named at a structure."""

from __future__ import annotations

from pathlib import Path

import pytest

import scupper as sc


def test_sections_are_a_table_with_units_and_sources() -> None:
    table = sc.sections("si").set_index("name")
    beam = table.loc["aashto_type_iv"]
    assert beam["depth_m"] == pytest.approx(54 * 0.0254)
    assert beam["exposed_perimeter_m"] == pytest.approx(146.426 * 0.0254, rel=1e-5)
    assert beam["printed_area_m2"] == pytest.approx(beam["area_m2"])
    assert (table["source"] != "").all()
    assert (table["exposed_perimeter_m"] < table["perimeter_m"]).all()
    feet = sc.sections()["depth_ft"].to_numpy() * 0.3048
    assert feet == pytest.approx(table["depth_m"].to_numpy())


def girder_area(job: sc.Job, bridge: sc.Structure) -> float:
    quantities = sc.estimate(bridge, job).quantities
    return float(quantities["girder_area"].to("m**2").m / quantities["girder_count"].m)


def test_a_section_named_at_a_structure_gives_its_girth(county: sc.Inventory) -> None:
    bridge = county["TC-0001"]
    length = 0.0254 * 146.426
    job = sc.Job.demo().override(bridge.id, {"girder.section": "aashto_type_iv"})
    deck = float(sc.estimate(bridge, job).quantities["gutter_length"].to("m").m) / 2
    assert girder_area(job, bridge) == pytest.approx(length * deck, rel=1e-4)


def test_a_survey_sheet_has_a_column_for_the_section(county: sc.Inventory, tmp_path: Path) -> None:
    sheet = tmp_path / "survey.csv"
    sc.write_survey_sheet(sheet, county)
    assert "girder.section" in sheet.read_text().splitlines()[0]


def test_an_unknown_section_is_refused() -> None:
    with pytest.raises(sc.UnknownNameError, match="pci_bt_72"):
        sc.Job.demo().override("1", {"girder.section": "pci_bt_73"})


def test_every_rule_has_a_name_a_source_and_a_range() -> None:
    rules = sc.rules()
    for column in ("name", "field", "formula", "source", "when"):
        empty = rules[column] == ""
        assert rules.loc[empty, "name"].tolist() in ([], ["shape.absent"])
    stated = rules.dropna(subset=["likely"])
    assert (stated["low"] <= stated["likely"]).all()
    assert (stated["likely"] <= stated["high"]).all()
