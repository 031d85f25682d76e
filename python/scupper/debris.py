"""Dirt: how much lies there, what it weighs, how it lies, and what a truck may carry of it.

Arguments are text with their unit (``"95 lb/ft3"``), pint quantities, or bare numbers and arrays
with ``units={"depth": "in"}``. Arrays broadcast as in numpy. Results are pint quantities in SI
units; ``.to("short_ton")`` shows them otherwise.
"""

from __future__ import annotations

from scupper._dirt import (
    Windrow,
    box_volume,
    build_up_depth,
    build_ups,
    densities,
    drain_volume,
    load_factor,
    loose_volume,
    published_densities,
    round_pit_volume,
    street_loads,
    strip_mass,
    strip_volume,
    swell_voids,
    wet_density,
    windrow,
)
from scupper._trucks import (
    AxleGroup,
    Bulk,
    LegalGross,
    TankLoad,
    axle_group_limit,
    balanced_density,
    bridge_formula,
    decanted,
    haul_time,
    legal_gross,
    loads,
    payload,
    tank_fill,
)

__all__ = [
    "AxleGroup",
    "Bulk",
    "LegalGross",
    "TankLoad",
    "Windrow",
    "axle_group_limit",
    "balanced_density",
    "box_volume",
    "bridge_formula",
    "build_up_depth",
    "build_ups",
    "decanted",
    "densities",
    "drain_volume",
    "haul_time",
    "legal_gross",
    "load_factor",
    "loads",
    "loose_volume",
    "payload",
    "published_densities",
    "round_pit_volume",
    "street_loads",
    "strip_mass",
    "strip_volume",
    "swell_voids",
    "tank_fill",
    "wet_density",
    "windrow",
]
