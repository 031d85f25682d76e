"""Published production figures as bands of plausibility: no hours by bridge are published, so every
band is wide and says why. Every row is compared, exact, or named with the reason why not."""

from __future__ import annotations

import csv
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

import scupper as sc

TABLE = Path(__file__).resolve().parents[1] / "reference" / "work" / "production.csv"
_RATED = (("051", 4, 4000, 3000), ("052", 5, 4000, 2000), ("053", 8, 3000, 1000))
WAND = {"girder": "wand", "cap": "wand"}


def rows(kind: str) -> list[dict[str, str]]:
    with TABLE.open(encoding="utf-8", newline="") as file:
        return [row for row in csv.DictReader(file) if row["kind"] == kind]


class Engine:
    """Figures of the demo's rates and of its overpass, each in the unit of its band."""

    def __init__(self) -> None:
        self.job = sc.Job.demo().replace(price_at="likely")
        self.structure = sc.read_inventory(sc.demo_records())["TC-0001"]
        self.rinse = sc.estimate(self.structure, self.job)
        full = {"girder": "full_clean", "cap": "full_clean"}
        self.wand = sc.estimate(self.structure, self.job.replace(service=full, ways=WAND))

    def input(self, key: str) -> Any:
        """The likely value of an input as pint."""
        value = self.job.to_dict()["inputs"][key]
        text = value["value"] if "value" in value else value["likely"]
        return sc.units.quantity(text)

    def per_day(self, operation: str) -> float:
        """How many of a drain's kind fill a shift of productive hours."""
        each = self.input(f"operation[{operation}].time_per_unit").to("h").m
        productive = float(self.job.to_dict()["inputs"]["shift.productive_share"]["likely"])
        return float(self.input("shift.length").to("h").m) * productive / each

    def deck_labour(self) -> float:
        """Deck and gutters of 40 ft by 200 ft, the washers alone."""
        job = self.job.override("TC-0001", {"deck.length": "200 ft", "deck.roadway_width": "40 ft",
                                            "deck.width": "43 ft"})  # fmt: skip
        estimate = sc.estimate(self.structure, job)
        hours = sum(
            float(estimate.figure(f"operation[{name}].time").to("h").m)
            for name in ("deck_hand_line", "windrow_pick_up")
        )
        return hours * float(self.job.to_dict()["inputs"]["labour[wash_crew].people"]["value"])

    def wand_on(self, figure: str, unit: str) -> float:
        """What a wand takes on caps, by area."""
        area = self.wand.figure("operation[cap_wand].quantity").to("ft^2").m
        return float(self.wand.figure(f"operation[cap_wand].{figure}").to(unit).m) / float(area)

    def figures(self) -> dict[str, Callable[[], float]]:
        return {
            "rinse.on_site": lambda: self.rinse.figure("hours.on_site").to("h").m,
            "tip.pressure": lambda: self.rinse.nozzles["hand_line"].pressure.to("psi").m,
            "line.flow_limit": lambda: self.input("pump[flusher].flow_limit").to("gpm").m,
            "rinse.water": lambda: self.rinse.water.to("gal").m,
            "wand.cap_time": lambda: 1000 * self.wand_on("productive_time", "h"),
            "wand.cap_water": lambda: self.wand_on("water", "gal"),
            "wand.flow": lambda: self.wand.nozzles["wand"].flow.to("gpm").m,
            "wand.pressure": lambda: self.input("pump[wand].pressure").to("psi").m,
            "drain_clogged.per_day": lambda: self.per_day("drain_clogged"),
            "broom.speed": lambda: (
                1 / self.input("operation[broom_pass].time_per_unit").to("h/mi").m
            ),
            "water_truck.tank": lambda: self.input("tank.volume").to("gal").m,
            "haul.volume": lambda: self.input("haul[truck].volume").to("gal").m,
            "drain_dirt.mass": lambda: (
                self.input("drain_dirt[free].volume") * self.input("drain_dirt[free].density")
            ).to("lb").m,
            "underside.people": lambda: float(
                self.job.to_dict()["inputs"]["labour[wash_crew].people"]["value"]
            ),
            "drains.per_shift": lambda: self.per_day("drain_clogged"),
            "deck.labour": self.deck_labour,
        }  # fmt: skip


@pytest.fixture(scope="module")
def engine() -> Engine:
    return Engine()


@pytest.mark.parametrize("row", rows("band"), ids=lambda row: row["id"])
def test_a_likely_figure_lies_in_its_band_or_outside_for_a_reason(
    engine: Engine, row: dict[str, str]
) -> None:
    ours = engine.figures()[row["compared_with"]]()
    verdict = "inside" if float(row["low"]) <= ours <= float(row["high"]) else "outside"
    assert verdict == row["verdict"], (row["quantity"], ours, row["source"])


def test_every_row_is_accounted_for() -> None:
    counts = {kind: len(rows(kind)) for kind in ("band", "exact", "not compared")}
    assert counts == {"band": 17, "exact": 9, "not compared": 52}
    assert sum(row["verdict"] == "inside" for row in rows("band")) == 16
    assert all(row["why"] for kind in ("band", "not compared") for row in rows(kind))
    assert all(row["source"] for kind in counts for row in rows(kind))


@pytest.mark.parametrize(("id", "mph"), [("048", 3), ("049", 5), ("050", 7)])
def test_a_sweeper_at_a_fifty_minute_hour(engine: Engine, id: str, mph: int) -> None:
    published = next(float(r["value"]) for r in rows("exact") if r["id"].endswith(id))
    job = engine.job.replace(
        {"operation[sweeper_pick_up].time_per_unit": f"{mph} mph",
         "shift.productive_share": "50 min/h"},
        ways={"deck_top": "broom", "gutter": "broom"},
    )  # fmt: skip
    estimate = sc.estimate(engine.structure, job)
    length = estimate.figure("operation[sweeper_pick_up].quantity").to("mi").m
    hours = estimate.figure("operation[sweeper_pick_up].time").to("h").m
    assert length / hours == pytest.approx(published, rel=1e-9)


def test_nozzles_and_bulk_as_published() -> None:
    published = {r["id"][-3:]: float(r["value"]) for r in rows("exact")}
    h = sc.hydraulics
    for id, flow, rated, at in (
        ("051", 4, 4000, 3000),
        ("052", 5, 4000, 2000),
        ("053", 8, 3000, 1000),
    ):
        ours = h.rated_nozzle_flow(f"{flow} gpm", f"{rated} psi", f"{at} psi")
        assert ours.to("gpm").m == pytest.approx(published[id], rel=1e-9)
    orifice = h.nozzle_flow("0.0625 in", "1000 psi", 0.95).to("gpm").m
    assert orifice == pytest.approx(published["054"], rel=2e-3)  # 29.84 is rounded
    reaction = h.nozzle_reaction("4 gpm", "3000 psi").to("lbf").m
    assert reaction == pytest.approx(published["055"], rel=2e-3)  # so is 0.0526
    load = sc.debris.tank_fill("3000 gal", "100 short_ton", "119 lb/ft3")
    assert load.mass.to("short_ton").m == pytest.approx(
        published["066"], rel=1e-6
    )  # 7.48052 gal/ft3
