"""The trade's bands for one well-known overpass, scaled to real structures by what differs.

A band says what crews report of one bridge (common practice, from memory). Another bridge has the
same band times a scale: each share of the work times how much more of its driver there is, and that
of the closure by its kind. Travel and briefing are shared by the work, as the demo's job has it.
What falls outside is given the first reason that holds; `python tests/python/bands.py` prints the
report.
"""

from __future__ import annotations

import csv
import gzip
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import TYPE_CHECKING, Any

import scupper as sc

if TYPE_CHECKING:
    import pandas as pd

TESTS = Path(__file__).resolve().parents[1]
FULL = ("deck_top", "gutter", "drain", "sidewalk", "joint", "rail", "parapet", "girder", "bearing",
        "cap", "seat", "back_wall")  # fmt: skip
#: Columns of a programme in US units by figure.
COLUMNS = {"hours.labour": "labour_h", "water.volume": "water_gal",
           "debris.mass": "debris_short_ton", "cost.total": "cost_total_usd"}  # fmt: skip
#: What a closure takes beside one lane of two under flaggers; common practice, from memory.
CLOSURES = {"none": 0.6, "off_road": 0.6, "shoulder": 0.9, "one_lane_two_way": 1.0,
            "rural_lane": 1.4, "freeway_lane": 1.8, "two_freeway_lanes": 2.2,
            "full_closure": 1.0}  # fmt: skip
#: What drives each share of the work.
DRIVERS: dict[str, Callable[[Any], float]] = {
    "deck": lambda row: row["deck_top_area_ft2"] + row["sidewalk_area_ft2"],
    "gutters": lambda row: row["gutter_length_ft"],
    "drains": lambda row: row["drain_count"],
    "joints": lambda row: row["joint_length_ft"],
    "underside": lambda row: row["girder_end_area_ft2"] + row["cap_area_ft2"]
    + row["abutment_area_ft2"],
}  # fmt: skip


def jobs() -> dict[str, sc.Job]:
    """The three services as the demo's yard does them."""
    rinse = sc.Job.demo()
    flusher = rinse.replace(ways={"deck_top": "flusher", "gutter": "flusher"})
    full = rinse.replace(service=dict.fromkeys(FULL, "full_clean"))
    return {"rinse, hand line": rinse, "rinse, flusher": flusher, "full clean": full}


def rows(name: str) -> list[dict[str, str]]:
    with (TESTS / "reference" / "estimate" / f"{name}.csv").open(encoding="utf-8") as file:
        return list(csv.DictReader(file))


def yardstick() -> sc.Inventory:
    """The overpass that the bands speak of, as counted and measured."""
    return sc.read_inventory(sc.demo_records()).select(["TC-0001"])


MEASURED = {"drain_count": 4, "drain_free_count": 3, "drain_clogged_count": 1,
            "drain_frozen_count": 0, "joint_count": 4, "girder_count": 5, "bearing_count": 30,
            "girder_end_area": "1275 ft2", "cap_area": "272 ft2", "cap_top_area": "136 ft2",
            "seat_area": "144 ft2"}  # fmt: skip


def priced(inventory: sc.Inventory, job: sc.Job) -> pd.DataFrame:
    """The priced structures in US units, each with its closure."""
    programme = sc.estimate_all(inventory, job)
    table = programme.to_pandas(units="us")
    return table.assign(closure=list(programme._core.closures()))


def scale_of(shares: dict[str, float], row: Any, yard: Any) -> float:
    """How many times the yardstick's band holds of a structure: every share of the work times how
    much more of its driver there is; a closure stands at least once, and anew for every shift."""
    work = {part: share * DRIVERS[part](row) / DRIVERS[part](yard)
            for part, share in shares.items() if part != "closure"}  # fmt: skip
    closure = shares.get("closure", 0.0)
    shifts = sum(work.values()) / (1.0 - closure)
    return sum(work.values()) + closure * CLOSURES[row["closure"]] * max(shifts, 1.0)


def reasons(
    row: Any, yard: Any, shares: dict[str, float], scale: float, beyond: float
) -> list[str]:
    """Why a structure may well lie outside a band scaled so, the most telling first."""
    deck = DRIVERS["deck"](row) / DRIVERS["deck"](yard)
    drains = shares.get("drains", 0.0) * DRIVERS["drains"](row) / DRIVERS["drains"](yard)
    around = row["cost_charges_usd"] / row["cost_direct_usd"]
    said = {
        "what lies below or around has charges of its own": around > 0.1,
        "posted or too weak for the truck: longer hose, half a tank": row["posted"],
        "dirt falls through an open deck": row["gutter_length_ft"] == 0,
        "drains not counted make most of it": drains > 0.5 * scale,
        "short: travel and closure are shared with others, pro rata": deck < 0.35,
        "large: refills, dump trips and closures grow with it": deck > 4,
        "closure with more people and vehicles than flaggers": row["closure"]
        not in ("one_lane_two_way", "none", "full_closure"),
        "less than a quarter beyond the edge: the scale is no nearer": beyond < 1.25,
    }
    return [reason for reason, holds in said.items() if holds]


def compare(inventory: sc.Inventory, service: str, job: sc.Job) -> list[dict[str, Any]]:
    """A row a structure and figure: value, scaled band, inside or the reason why not."""
    job = job.override("TC-0001", MEASURED)
    yard: Any = priced(yardstick(), job).to_dict("records")[0]
    table: Any = with_posting(inventory, priced(inventory, job)).to_dict("records")
    kind = "rinse" if service.startswith("rinse") else service
    found = []
    for band in (row for row in rows("yardstick") if row["service"] == service):
        figure = band["figure"]
        shares = {r["part"]: float(r["share"]) for r in rows("band_shares")
                  if r["service"] == kind and r["figure"] == figure}  # fmt: skip
        for row in table:
            scale = scale_of(shares, row, yard)
            value = row[COLUMNS[figure]]
            low, high = scale * float(band["low"]), scale * float(band["high"])
            where = "low" if value < low else "high" if value > high else "inside"
            beyond = max(low / value, value / high)
            why = reasons(row, yard, shares, scale, beyond) if where != "inside" else []
            found.append({"structure": row["structure_id"], "figure": figure, "value": value,
                          "low": low, "high": high, "where": where,
                          "why": why[0] if why else "no reason found"})  # fmt: skip
    return found


def with_posting(inventory: sc.Inventory, table: pd.DataFrame) -> pd.DataFrame:
    """Whether the weight of trucks is limited, by the record."""
    recorded = inventory.to_pandas().drop_duplicates("structure_id").set_index("structure_id")
    signs = recorded["posting"].reindex(table["structure_id"])
    return table.assign(posted=[sign in ("P", "B") for sign in signs])


def samples() -> sc.Inventory:
    """Real structures: every record of two small states, as published."""
    found: list[sc.Structure] = []
    with TemporaryDirectory() as folder:
        for name in ("AK19", "DC19"):
            packed = TESTS / "data" / "inventory" / f"{name}.txt.gz"
            plain = Path(folder) / f"{name}.txt"
            plain.write_bytes(gzip.decompress(packed.read_bytes()))
            found += sc.read_inventory(plain)
    return sc.inventory.gathered(found)


def report() -> str:
    """How many structures fall outside, by service and figure, and why."""
    lines = []
    inventory = samples()
    for service, job in jobs().items():
        found = compare(inventory, service, job)
        for figure in COLUMNS:
            of_figure = [row for row in found if row["figure"] == figure]
            outside = [row for row in of_figure if row["where"] != "inside"]
            high = sum(row["where"] == "high" for row in outside)
            lines.append(f"{service}, {figure}: {len(outside)} of {len(of_figure)} outside, "
                         f"{high} above")  # fmt: skip
            for why, count in Counter(row["why"] for row in outside).most_common():
                lines.append(f"    {count:5}  {why}")
    return "\n".join(lines)


if __name__ == "__main__":
    print(report())
