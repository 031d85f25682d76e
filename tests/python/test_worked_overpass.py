"""The interstate overpass at night: what the hydraulics and the closure answer beside its price.

Invented structure; expected values by hand from the stated inputs, apart from the program.
"""

import pytest

import scupper as sc


def psi(flow: str, length: str, coefficient: float) -> float:
    """Friction of a hose by its coefficient, in psi per 100 ft at (100 gpm) squared."""
    loss = sc.hydraulics.friction_loss(
        flow, "1 in", length, method="hose-coefficient", coefficient=coefficient
    )
    return float(loss.to("psi").magnitude)


def test_pump_pressure_for_two_hand_lines_from_the_bucket() -> None:
    # 80 tip + 21.1 leg of 1 in + 10 wye + 13.5 supply of 1.5 in at both flows + 8.7 lift of 20 ft
    flow = sc.hydraulics.nozzle_flow("0.375 in", "80 psi", 1.0).to("gpm").magnitude
    assert flow == pytest.approx(37.53, rel=2e-3)
    legs = psi(f"{flow} gpm", "100 ft", 150)
    supply = psi(f"{2 * flow} gpm", "100 ft", 24)
    lift = 20 * 62.4 / 144  # 62.4 lb/ft3
    assert legs == pytest.approx(21.13, rel=5e-3)
    assert supply == pytest.approx(13.52, rel=5e-3)
    assert 80 + legs + 10 + supply + lift == pytest.approx(133.3, rel=1e-2)


def test_the_closure_of_two_lanes_at_65_mph() -> None:
    plan = sc.closure.plan(
        speed="65 mph", kind="two_freeway_lanes", road="freeway", work_length="200 ft"
    )
    tapers = plan.elements.set_index("name")["length"]
    merging = [float(x.to("ft").magnitude) for n, x in tapers.items() if "merging" in str(n)]
    assert merging == pytest.approx([780.0, 780.0])  # L = W S = 12 ft x 65 mph, a lane at a time
    assert plan.buffer.to("ft").magnitude == pytest.approx(645.0)  # stopping sight at 65 mph
    assert plan.arrow_boards == 2
    # 65 ft apart in the tapers (2 x 13), 130 ft along 2 L, buffer and work space, 20 ft at the end
    assert plan.devices == pytest.approx(26 + 1560 / 130 + 645 / 130 + 200 / 130 + 5, abs=2)
