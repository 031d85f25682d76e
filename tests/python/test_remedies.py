"""Nozzles that fall short, what mends them, and jets that are too strong."""

import scupper as sc

WEAK = {"hose[supply].bore": "1.25 in"}


def test_the_demo_needs_no_remedy() -> None:
    inventory = sc.read_inventory(sc.demo_records())
    estimate = sc.estimate(inventory["TC-0001"], sc.Job.demo())
    assert estimate.remedies.empty
    assert not any("remedy" in warning for warning in estimate.warnings)


def test_the_cheapest_remedy_is_named_and_all_are_listed() -> None:
    inventory = sc.read_inventory(sc.demo_records())
    estimate = sc.estimate(inventory["TC-0001"], sc.Job.demo().replace(WEAK))
    table = estimate.remedies
    assert set(table["method"]) == {"hand_line"}
    assert list(table["total"]) == sorted(table["total"])
    warning = next(w for w in estimate.warnings if "cheapest remedy" in w)
    assert table["remedy"][0] in warning
    assert "30 gpm at 50 psi (common practice)" in warning
    larger = table.set_index("remedy").loc["hose supply of 1.5 in instead of 1.25 in"]
    again = sc.estimate(
        inventory["TC-0001"], sc.Job.demo().replace({**WEAK, "hose[supply].bore": "1.5 in"})
    )
    assert abs(again.cost.total - larger["total"]) < 1e-6


def test_a_truck_below_lifts_over_the_structure() -> None:
    inventory = sc.read_inventory(sc.demo_records())
    methods = sc.Job.demo().to_dict()["methods"]
    below = [{**m, "truck": "below"} if m["name"] == "hand_line" else m for m in methods]
    job = sc.Job.demo().replace(methods=below)
    deck = sc.estimate(inventory["TC-0001"], sc.Job.demo()).nozzles["hand_line"]
    lifted = sc.estimate(inventory["TC-0001"], job)
    assert lifted.nozzles["hand_line"].pressure < deck.pressure
    assert "height above the truck" in str(lifted.explain("nozzle[hand_line].pressure"))
    assert "site.clearance" in set(lifted.assumptions["key"])
