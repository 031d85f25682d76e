"""What the tests share: the invented county, its job, one estimate."""

from __future__ import annotations

from pathlib import Path

import pytest

import scupper as sc

SAMPLES = Path(__file__).resolve().parents[1] / "data" / "inventory"


@pytest.fixture(scope="session")
def samples() -> Path:
    """The folder of real inventory rows."""
    return SAMPLES


@pytest.fixture(scope="session")
def county() -> sc.Inventory:
    return sc.read_inventory(sc.demo_records())


@pytest.fixture(scope="session")
def job() -> sc.Job:
    return sc.Job.demo()


@pytest.fixture(scope="session")
def estimate(county: sc.Inventory, job: sc.Job) -> sc.Estimate:
    return sc.estimate(county["TC-0001"], job)
