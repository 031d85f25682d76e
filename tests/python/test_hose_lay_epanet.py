"""Random trees against EPANET's solver (PyPI owa-epanet), an independent method and code."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest

import scupper as sc

pytest.importorskip("epanet", reason="owa-epanet is not installed")

from epanet_lays import Network, random_lay, with_epanet_constant  # noqa: E402

BRANCHES = [1, 2, 3, 5, 8, 12, 20, 30, 45, 60]
CASES = [(n, seed) for n in BRANCHES for seed in range(4)]


def viscosity() -> float:
    return float(
        sc.hydraulics.water_viscosity("15 degC").magnitude
        / sc.hydraulics.water_density("15 degC").magnitude
    )


def theirs(lay: dict[str, Any], law: str) -> Any:
    network = Network(lay, law, viscosity())
    network.solve()
    flows = network.nozzle_flows()
    network.close()
    return flows


def ours(lay: dict[str, Any]) -> sc.hydraulics.LaySolution:
    return sc.hydraulics.HoseLay.from_dict(lay).solve()


def swamee_jain(reynolds: float, roughness: float) -> float:
    """P. K. Swamee, A. K. Jain, J. Hydraul. Div. ASCE 102 (1976) 657, as EPANET 2.2 uses it."""
    return 0.25 / math.log10(roughness / 3.7 + 5.74 / reynolds**0.9) ** 2


@pytest.mark.parametrize(("branches", "seed"), CASES)
def test_hazen_williams_with_the_same_constant(branches: int, seed: int) -> None:
    lay = random_lay(np.random.default_rng([branches, seed]), branches, "H-W")
    solved = ours(with_epanet_constant(lay))
    assert (solved.nozzles["pressure_Pa"] > 0).all()
    # 32.2 for 32.174 ft/s2 in EPANET's minor losses: below 0.1 % of them
    assert solved.nozzles["flow_m3_per_s"].to_numpy() == pytest.approx(theirs(lay, "H-W"), rel=1e-3)
    assert solved.mass_residual < 1e-9


@pytest.mark.parametrize(("branches", "seed"), CASES[::4])
def test_hazen_williams_with_our_constant(branches: int, seed: int) -> None:
    """10.67 and 4.8704 for EPANET's 4.727 (ft) and 4.871: 0.3 % in head at 1 in, less in flow."""
    lay = random_lay(np.random.default_rng([branches, seed]), branches, "H-W")
    flows = ours(lay).nozzles["flow_m3_per_s"].to_numpy()
    assert flows == pytest.approx(theirs(lay, "H-W"), rel=3e-3)


@pytest.mark.parametrize(("branches", "seed"), CASES)
def test_darcy_weisbach_within_the_difference_of_the_friction_formula(
    branches: int, seed: int
) -> None:
    """EPANET has Swamee and Jain's explicit formula where we solve Colebrook's equation."""
    lay = random_lay(np.random.default_rng([7, branches, seed]), branches, "D-W")
    solved = ours(lay)
    reynolds = solved.segments["reynolds"].to_numpy()
    assert (reynolds > 4000).all()
    relative = np.array([float(s["roughness"].split()[0]) / 1e3 / float(s["bore"].split()[0])
                         for s in lay["segments"]])  # fmt: skip
    factors = sc.hydraulics.friction_factor(reynolds, relative)
    explicit = np.array([swamee_jain(*pair) for pair in zip(reynolds, relative, strict=True)])
    difference = float(np.abs(explicit / factors - 1).max())
    assert difference < 0.03
    # a loss wrong by a share moves the flow by less than that share; 0.1 % for gravity as above
    flows = solved.nozzles["flow_m3_per_s"].to_numpy()
    assert flows == pytest.approx(theirs(lay, "D-W"), rel=difference + 1e-3)
