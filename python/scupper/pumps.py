"""What the air pushes into a pump that draws from below.

Drafting from a stream, pond or ditch needs the permission of whoever has charge of the water.
Arguments and results as in `scupper.hydraulics`, where these functions are found.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Arguments, Units, described_by, result

if TYPE_CHECKING:
    from scupper.units import Quantity

__all__ = ["npsh_available", "standard_atmosphere"]


@described_by(_core.standard_atmosphere)
def standard_atmosphere(altitude: Any, *, units: Units = None) -> Quantity:
    """In pascal, absolute."""
    given = Arguments(units)
    given.add("altitude", altitude, "m")
    return result(_core.standard_atmosphere(*given.shaped()), "Pa")


@described_by(_core.npsh_available)
def npsh_available(
    suction_lift: Any,
    *,
    altitude: Any = "0 m",
    temperature: Any = "15 degC",
    suction_loss: Any = "0 m",
    units: Units = None,
) -> Quantity:
    """Here from an open surface: standard atmosphere of the `altitude`, water of the `temperature`.

    In metre.
    """
    given = Arguments(units)
    given.add("altitude", altitude, "m")
    given.add("temperature", temperature, "K")
    given.add("suction_lift", suction_lift, "m")
    given.add("suction_loss", suction_loss, "m")
    return result(_core.npsh_available(*given.shaped()), "m")
