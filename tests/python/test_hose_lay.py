"""Hose lays from Python: tables, units, properties, questions and bad input."""

from __future__ import annotations

import copy
import json
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import scupper as sc

HoseLay = sc.hydraulics.HoseLay
#: An invented lay: a supply hose, two legs, one of them to a bucket.
LAY: dict[str, Any] = {
    "name": "two legs",
    "water": "15 degC",
    "tank": "1,000 gal",
    "pump": {"kind": "pressure", "pressure": "120 psi", "flow_limit": "250 gpm"},
    "segments": [
        {"name": "supply", "bore": "2.5 in", "length": "200 ft", "coefficient": 2},
        {"name": "ground", "from": "supply", "bore": "1.5 in", "length": "100 ft",
         "roughness": "0.02 mm", "fittings": [{"name": "gun", "loss_coefficient": 3.0}]},
        {"name": "bucket", "from": "supply", "bore": "1.5 in", "length": "150 ft", "rise": "40 ft",
         "c": 140, "working_pressure": "90 psi"},
    ],
    "nozzles": [
        {"name": "ground tip", "at": "ground", "bore": "1/2 in"},
        {"name": "bucket tip", "at": "bucket", "bore": "3/8 in", "discharge_coefficient": 0.97},
    ],
}  # fmt: skip


def changed(**changes: Any) -> dict[str, Any]:
    return copy.deepcopy(LAY) | changes


def test_tables_have_their_units_and_balance() -> None:
    solved = HoseLay.from_dict(LAY).solve(units="us")
    assert list(solved.nozzles.columns) == [
        "name", "at", "state", "flow_gpm", "pressure_psi", "jet_velocity_ft_per_s",
        "reaction_lbf", "power_hp"]  # fmt: skip
    assert solved.nozzles["flow_gpm"].sum() == pytest.approx(solved.flow.to("gpm").magnitude)
    assert solved.pump["pressure_psi"][0] == pytest.approx(120)
    assert list(solved.nodes["name"]) == ["supply", "ground", "bucket"]
    assert solved.nodes["elevation_ft"].iloc[-1] == pytest.approx(40)
    spent = solved.segments[["static_pressure_psi", "friction_loss_psi", "minor_loss_psi"]].sum(
        axis=1
    )
    lost = solved.segments["inlet_pressure_psi"] - solved.segments["outlet_pressure_psi"]
    assert lost.to_numpy() == pytest.approx(spent.to_numpy())
    assert solved.limit == "pressure"
    assert solved.limits["holds"].tolist() == [True, False]
    assert set(solved.warnings["kind"]) == {"working_pressure", "reaction_bucket"}
    assert solved.time_to_empty is not None
    minutes = (sc.units.quantity("1,000 gal") / solved.flow).to("min").magnitude
    assert solved.time_to_empty.to("min").magnitude == pytest.approx(minutes)
    assert solved.mass_residual < 1e-9
    assert solved.energy_residual < 1e-10


def test_text_and_data_say_the_same() -> None:
    solved = HoseLay.from_dict(LAY).solve(units="us")
    assert "bucket tip" in str(solved)
    assert "90 psi" in str(solved)
    assert "<table>" in solved._repr_html_()
    data = solved.to_dict()
    assert json.loads(json.dumps(data)) == data
    assert data["pump"]["flow_m3_per_s"] == pytest.approx(solved.flow.magnitude)
    assert data["nozzles"][1]["name"] == "bucket tip"


def test_documents_are_kept_whole(tmp_path: Path) -> None:
    lay = HoseLay.from_dict(LAY)
    lay.save(tmp_path / "lay.json")
    again = HoseLay.from_file(tmp_path / "lay.json")
    assert again.to_dict() == lay.to_dict()
    assert again.segments == ["supply", "ground", "bucket"]
    assert again.solve().flow.magnitude == pytest.approx(lay.solve().flow.magnitude, rel=1e-12)


def test_pint_stands_for_text() -> None:
    psi = sc.units.registry().Quantity(120, "psi")
    lay = HoseLay.from_dict(changed(pump={"kind": "pressure", "pressure": psi}))
    assert lay.solve().pressure.to("psi").magnitude == pytest.approx(120)


def test_many_pressures_in_one_call() -> None:
    lay = HoseLay.from_dict(LAY)
    sweep = lay.solve_many(np.array([60.0, 90.0, 120.0]), units={"pressure": "psi"})
    assert sweep.nozzle_flow.shape == (3, 2)
    assert sweep.pump_flow.magnitude[2] == pytest.approx(lay.solve().flow.magnitude)
    assert (np.diff(sweep.pump_flow.magnitude) > 0).all()


def test_questions_answer_themselves() -> None:
    lay = HoseLay.from_dict(LAY)
    pressure = lay.pump_pressure_for("bucket tip", "60 psi")
    raised = HoseLay.from_dict(changed(pump={"kind": "pressure", "pressure": pressure}))
    assert raised.solve(units="us").nozzles["pressure_psi"][1] == pytest.approx(60)
    assert lay.longest_hose("bucket", "bucket tip", "60 psi").to("ft").magnitude > 150
    assert lay.greatest_lift("bucket", "bucket tip", "60 psi").to("ft").magnitude > 40
    bore = lay.nozzle_bore_for("bucket tip", "50 gpm")
    assert 3 / 8 < bore.to("in").magnitude < 1.5
    assert lay.nozzle_count("bucket tip", "20 psi", leg="bucket") >= 2
    least = lay.smallest_bore("bucket", "bucket tip", "60 psi")
    assert least.to("in").magnitude < 1.5
    listed = lay.smallest_bore("bucket", "bucket tip", "60 psi", ["2 in", "1.5 in", "0.5 in"])
    assert listed.to("in").magnitude == pytest.approx(1.5)
    with pytest.raises(sc.SolveError) as caught:
        lay.longest_hose("bucket", "bucket tip", "118 psi")
    assert caught.value.id == "hydraulics.no_answer"
    with pytest.raises(sc.UnknownNameError):
        lay.pump_pressure_for("bucket tipp", "60 psi")


def test_the_core_documents_the_methods() -> None:
    assert "Newton's" in (HoseLay.solve.__doc__ or "")
    assert "Source" in (HoseLay.longest_hose.__doc__ or "")


@pytest.mark.parametrize(
    ("key", "value", "path"),
    [
        ("pump", [{"pressure": "9 psi"}, {"pressure": "9 psi"}], "lay.pump"),
        ("water", "-3 degC", "lay.water"),
        ("nozzles", [{"at": "bucketts", "bore": "1 in"}], "lay.nozzles[0].at"),
        ("segments", [{"name": "a", "from": "b", "bore": "1 in", "length": "1 ft", "c": 140},
                      {"name": "b", "from": "a", "bore": "1 in", "length": "1 ft", "c": 140}],
         "lay.segments[0].from"),
        ("segments", [{"bore": 1.5, "length": "1 ft", "c": 140}], "lay.segments[0].bore"),
        ("tanks", "9 gal", "lay"),
    ],
)  # fmt: skip
def test_what_cannot_be_is_refused_at_its_place(key: str, value: Any, path: str) -> None:
    document = changed(**{key: value})
    if key == "segments":
        document["nozzles"] = []
    with pytest.raises(sc.InputError) as caught:
        HoseLay.from_dict(document)
    assert caught.value.path == path


def test_an_unknown_word_for_units_is_refused() -> None:
    with pytest.raises(sc.UnknownNameError):
        HoseLay.from_dict(LAY).solve(units="imperial")


def test_a_thousand_nozzles_on_one_pump() -> None:
    nozzles = [{"name": f"n{i}", "at": "pump", "bore": "1 mm"} for i in range(1000)]
    lay = HoseLay.from_dict(changed(segments=[], nozzles=nozzles))
    flows = lay.solve().nozzles["flow_m3_per_s"]
    assert flows.to_numpy() == pytest.approx(flows[0])


bores = st.floats(min_value=10.0, max_value=80.0)


@st.composite
def lays(draw: st.DrawFn) -> dict[str, Any]:
    """A tree of two to twelve segments on a centrifugal pump, a nozzle at each end."""
    count = draw(st.integers(2, 12))
    segments = []
    for i in range(count):
        start = draw(st.integers(-1, i - 1))
        friction = draw(
            st.sampled_from([{"c": 130}, {"roughness": "0.05 mm"}, {"coefficient": 24}])
        )
        segments.append({"name": f"s{i}", "from": "pump" if start < 0 else f"s{start}",
                         "bore": f"{draw(bores)!r} mm",
                         "length": f"{draw(st.floats(1.0, 200.0))!r} m",
                         "rise": f"{draw(st.floats(-15.0, 15.0))!r} m", **friction})  # fmt: skip
    nozzles = [{"name": f"n{i}", "at": f"s{i}", "bore": f"{draw(st.floats(1.0, 15.0))!r} mm"}
               for i in range(count)]  # fmt: skip
    curve = [["0 L/min", "70 m"], ["600 L/min", "60 m"], ["1200 L/min", "30 m"]]
    return {"pump": {"kind": "curve", "curve": curve}, "segments": segments, "nozzles": nozzles}


def flows(lay: dict[str, Any]) -> Any:
    return HoseLay.from_dict(lay).solve().nozzles["flow_m3_per_s"].to_numpy()


@settings(max_examples=60, deadline=None)
@given(lays(), st.floats(1.01, 2.0))
def test_a_faster_pump_never_gives_less(lay: dict[str, Any], speed: float) -> None:
    faster = lay | {"pump": lay["pump"] | {"speed": speed}}
    assert (flows(faster) >= flows(lay) - 1e-10).all()


@settings(max_examples=60, deadline=None)
@given(lays(), st.data())
def test_closing_a_branch_never_lowers_pressure_elsewhere(
    lay: dict[str, Any], data: st.DataObject
) -> None:
    shut = data.draw(st.integers(0, len(lay["nozzles"]) - 1))
    closed = copy.deepcopy(lay)
    closed["nozzles"][shut]["state"] = "closed"
    before, after = HoseLay.from_dict(lay).solve(), HoseLay.from_dict(closed).solve()
    assert (after.nodes["pressure_Pa"] >= before.nodes["pressure_Pa"] - 1e-3).all()


@settings(max_examples=60, deadline=None)
@given(lays(), st.data(), st.floats(1.1, 5.0))
def test_a_longer_hose_never_gives_its_end_more(
    lay: dict[str, Any], data: st.DataObject, factor: float
) -> None:
    which = data.draw(st.integers(0, len(lay["segments"]) - 1))
    longer = copy.deepcopy(lay)
    length = float(longer["segments"][which]["length"].split()[0])
    longer["segments"][which]["length"] = f"{length * factor!r} m"
    assert flows(longer)[which] <= flows(lay)[which] + 1e-10


@settings(max_examples=60, deadline=None)
@given(lays())
def test_mass_and_energy_balance(lay: dict[str, Any]) -> None:
    solved = HoseLay.from_dict(lay).solve()
    pump = solved.flow.magnitude
    assert solved.nozzles["flow_m3_per_s"].sum() == pytest.approx(pump, rel=1e-9)
    spent = solved.segments[["static_pressure_Pa", "friction_loss_Pa", "minor_loss_Pa"]].sum(axis=1)
    lost = solved.segments["inlet_pressure_Pa"] - solved.segments["outlet_pressure_Pa"]
    assert lost.to_numpy() == pytest.approx(spent.to_numpy(), abs=1e-3)
    assert (solved.nozzles["flow_m3_per_s"] >= 0).all()
