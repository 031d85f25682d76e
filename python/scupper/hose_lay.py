"""Hose lays: one pump, hose that parts at wyes, nozzles; what flows where, and what it would take.

A lay is a document: text with units, pint quantities, or plain numbers where there is no unit::

    lay = HoseLay.from_dict({
        "pump": {"kind": "pressure", "pressure": "120 psi"},
        "segments": [{"name": "supply", "bore": "2.5 in", "length": "200 ft", "coefficient": 2},
                     {"name": "leg", "from": "supply", "bore": "1.5 in", "length": "100 ft",
                      "rise": "12 ft", "coefficient": 24, "minor_loss": 1.5}],
        "nozzles": [{"name": "tip", "at": "leg", "bore": "1/2 in"}],
    })
    print(lay.solve(units="us"))
"""

from __future__ import annotations

import json
import os
from collections.abc import Iterable, Mapping
from functools import cached_property
from typing import TYPE_CHECKING, Any, NamedTuple

from scupper import _core, _report
from scupper._arguments import Arguments, Units, described_by, single
from scupper._files import read_text, write_whole
from scupper._frames import frame, suffixed
from scupper.errors import InputError
from scupper.job import _plain
from scupper.units import in_pint

if TYPE_CHECKING:
    import pandas as pd

    from scupper.units import Quantity

__all__ = ["HoseLay", "LaySolution", "LaySweep"]

#: SI units of the columns and scalars that have one.
_SI = {
    "flow": "m3/s", "bypass": "m3/s", "velocity": "m/s", "jet_velocity": "m/s",
    "pressure": "Pa", "inlet_pressure": "Pa", "outlet_pressure": "Pa", "static_pressure": "Pa",
    "friction_loss": "Pa", "minor_loss": "Pa", "elevation": "m", "npsh_available": "m",
    "reaction": "N", "power": "W", "hydraulic_power": "W", "shaft_power": "W",
}  # fmt: skip


class LaySweep(NamedTuple):
    """What a lay gives at each of many pump pressures; nozzles stand in the columns."""

    pump_flow: Quantity
    pump_pressure: Quantity
    nozzle_flow: Quantity
    nozzle_pressure: Quantity


class LaySolution:
    """Where a lay settles. Tables in the units asked for, scalars as pint quantities.

    Attributes
    ----------
    units : str
        "si", "us" or "metric": how tables and warnings are shown.
    flow, pressure, hydraulic_power, shaft_power, npsh_available, bypass : pint.Quantity
        Of the pump; `bypass` is what a displacement pump's unloader lets back.
    limit : str
        What holds the pump's pressure where it is: pressure, curve, flow_limit, power_limit,
        unloader, or nothing where no water flows.
    time_to_empty : pint.Quantity or None
        Of the full tank; None without tank or flow.
    mass_residual, energy_residual : float
        Imbalance of flows and of pressures, relative.
    """

    def __init__(self, core: _core.LaySolution, units: str) -> None:
        self._core = core
        self.units = units
        pump = core.pump()
        self.limit: str = pump["limit"]
        self.flow: Quantity = in_pint(pump["flow"], "m3/s")
        self.pressure: Quantity = in_pint(pump["pressure"], "Pa")
        self.bypass: Quantity = in_pint(pump["bypass"], "m3/s")
        self.hydraulic_power: Quantity = in_pint(pump["hydraulic_power"], "W")
        self.shaft_power: Quantity = in_pint(pump["shaft_power"], "W")
        self.npsh_available: Quantity = in_pint(pump["npsh_available"], "m")
        seconds = core.time_to_empty
        self.time_to_empty: Quantity | None = None if seconds is None else in_pint(seconds, "s")
        self.mass_residual: float = core.mass_residual
        self.energy_residual: float = core.energy_residual

    @cached_property
    def segments(self) -> pd.DataFrame:
        """Flow, velocity, pressures at both ends and where they went, by segment."""
        return self._table(self._core.segments())

    @cached_property
    def nodes(self) -> pd.DataFrame:
        """Elevation above the pump, pressure, flow and velocity at every segment's end."""
        return self._table(self._core.nodes())

    @cached_property
    def nozzles(self) -> pd.DataFrame:
        """Flow, pressure, speed of the jet, reaction and power, by nozzle."""
        return self._table(self._core.nozzles())

    @cached_property
    def pump(self) -> pd.DataFrame:
        """Flow, pressure, limit, bypass, power and suction head: one row."""
        return self._table({name: [value] for name, value in self._core.pump().items()})

    @cached_property
    def limits(self) -> pd.DataFrame:
        """Each limit of the pump: what the lay takes, what is allowed, and whether it holds."""
        return frame(self._core.limits(self.units))

    @cached_property
    def warnings(self) -> pd.DataFrame:
        """What to mind: kind, where, value, limit, unit, and the whole in words."""
        return frame(self._core.warnings(self.units))

    def to_dict(self) -> dict[str, Any]:
        """Everything as plain data; figures in SI units, which the names of the columns bear."""
        shown = self if self.units == "si" else LaySolution(self._core, "si")
        seconds = shown._core.time_to_empty
        tables = {name: getattr(shown, name).to_dict("records")
                  for name in ("segments", "nodes", "nozzles", "limits", "warnings")}  # fmt: skip
        return {
            "pump": shown.pump.to_dict("records")[0],
            **tables,
            "time_to_empty_s": seconds,
            "mass_residual": self.mass_residual,
            "energy_residual": self.energy_residual,
        }

    def _table(self, columns: Mapping[str, Any]) -> pd.DataFrame:
        named: dict[str, Any] = {}
        for name, values in columns.items():
            if name in _SI:
                unit = _core.lay_unit(_SI[name], self.units)
                named[suffixed(name, unit)] = _core.from_si(values, unit)
            else:
                named[name] = values
        return frame(named)

    def _text(self, si: float, like: str) -> str:
        return str(_core.format_quantity(si, _core.lay_unit(like, self.units), 4))

    def _lines(self) -> _report.Lines:
        pump, nozzles = self._core.pump(), self._core.nozzles()
        held = self.limit.replace("_", " ")
        lines = [
            ("pump", f"{self._text(pump['flow'], 'm3/s')} at {self._text(pump['pressure'], 'Pa')}, "
                     f"held by {held}, {self._text(pump['shaft_power'], 'W')}"),
        ]  # fmt: skip
        columns = ("name", "state", "flow", "pressure", "reaction")
        rows = zip(*(nozzles[column] for column in columns), strict=True)
        for name, state, flow, pressure, reaction in rows:
            figures = (self._text(flow, "m3/s"), self._text(pressure, "Pa"))
            force = self._text(reaction, "N")
            lines.append((name, f"{figures[0]} at {figures[1]}, reaction {force}, {state}"))
        if (seconds := self._core.time_to_empty) is not None:
            lines.append(("tank empty after", _core.format_quantity(seconds, "min", 3)))
        lines += [("mind", text) for text in self._core.warnings(self.units)["text"]]
        return lines

    def __repr__(self) -> str:
        return _report.text(self._lines())

    def _repr_html_(self) -> str:
        return _report.html(self._lines())


class HoseLay:
    """A tree of hose with its pump, water and nozzles. It never changes."""

    def __init__(self, core: _core.HoseLay) -> None:
        self._core = core

    @classmethod
    @described_by(_core.HoseLay.read)
    def from_dict(cls, document: Mapping[str, Any]) -> HoseLay:
        """A lay from a document; pint quantities may stand for text."""
        return cls(_core.HoseLay.read(json.dumps(_plain(document, "lay")), "lay"))

    @classmethod
    def from_file(cls, path: str | os.PathLike[str]) -> HoseLay:
        """A lay from a file (JSON)."""
        return cls(_core.HoseLay.read(read_text(path), os.fspath(path)))

    def to_dict(self) -> dict[str, Any]:
        """The whole lay as a document, in SI units with all digits."""
        document: dict[str, Any] = json.loads(self._core.write())
        return document

    def save(self, path: str | os.PathLike[str]) -> None:
        """Writes the lay whole, or not at all."""
        write_whole(path, self._core.write())

    @property
    def name(self) -> str:
        """What people call the lay."""
        return self._core.name

    @property
    def segments(self) -> list[str]:
        """Names of the segments."""
        return self._core.segments

    @property
    def nozzles(self) -> list[str]:
        """Names of the nozzles."""
        return self._core.nozzles

    @described_by(_core.HoseLay.solve)
    def solve(self, units: str = "si") -> LaySolution:
        """Tables and warnings are shown in `units`: "si", "us" or "metric"."""
        _core.lay_unit("m", units)  # refuses an unknown word before the work
        return LaySolution(self._core.solve(), units)

    @described_by(_core.HoseLay.solve_many)
    def solve_many(self, pressure: Any, *, units: Units = None) -> LaySweep:
        """One call for many pressures.

        Parameters
        ----------
        pressure
            Held by the pump, or set at its unloader: text, pint, or numbers with `units`.
        units
            Unit of bare numbers: ``{"pressure": "psi"}`` or ``"si"``.
        """
        given = Arguments(units)
        given.add("pressure", pressure, "Pa")
        (si,) = given.shaped()
        if si.ndim > 1:
            raise InputError("arguments.shape", "pressure", f"an array {si.shape}", "one row")
        found = self._core.solve_many(si.reshape(-1).tolist())
        return LaySweep(
            in_pint(found["pump_flow"], "m3/s"),
            in_pint(found["pump_pressure"], "Pa"),
            in_pint(found["nozzle_flow"], "m3/s"),
            in_pint(found["nozzle_pressure"], "Pa"),
        )

    @described_by(_core.HoseLay.pump_pressure_for)
    def pump_pressure_for(self, nozzle: str, pressure: Any, *, units: Units = None) -> Quantity:
        """`nozzle` by its name."""
        wanted = single("pressure", pressure, "Pa", units)
        return in_pint(self._core.pump_pressure_for(nozzle, wanted), "Pa")

    @described_by(_core.HoseLay.longest_hose)
    def longest_hose(
        self, segment: str, nozzle: str, pressure: Any, *, units: Units = None
    ) -> Quantity:
        """`segment` and `nozzle` by their names."""
        wanted = single("pressure", pressure, "Pa", units)
        return in_pint(self._core.longest_hose(segment, nozzle, wanted), "m")

    @described_by(_core.HoseLay.greatest_lift)
    def greatest_lift(
        self, segment: str, nozzle: str, pressure: Any, *, units: Units = None
    ) -> Quantity:
        """`segment` and `nozzle` by their names."""
        wanted = single("pressure", pressure, "Pa", units)
        return in_pint(self._core.greatest_lift(segment, nozzle, wanted), "m")

    @described_by(_core.HoseLay.nozzle_bore_for)
    def nozzle_bore_for(self, nozzle: str, flow: Any, *, units: Units = None) -> Quantity:
        """`nozzle` by its name."""
        wanted = single("flow", flow, "m3/s", units)
        return in_pint(self._core.nozzle_bore_for(nozzle, wanted), "m")

    @described_by(_core.HoseLay.nozzle_count)
    def nozzle_count(
        self, nozzle: str, pressure: Any, *, leg: str | None = None, units: Units = None
    ) -> int:
        """`leg` by its name; None repeats the nozzle alone, where it is."""
        wanted = single("pressure", pressure, "Pa", units)
        return int(self._core.nozzle_count(nozzle, leg or "", wanted))

    @described_by(_core.HoseLay.smallest_bore)
    def smallest_bore(
        self,
        segment: str,
        nozzle: str,
        pressure: Any,
        bores: Iterable[Any] | None = None,
        *,
        units: Units = None,
    ) -> Quantity:
        """Of any size, or of a list of `bores`."""
        wanted = single("pressure", pressure, "Pa", units)
        list_si = None
        if bores is not None:
            given = Arguments(units)
            given.add("bores", list(bores), "m")
            (si,) = given.shaped()
            list_si = si.reshape(-1).tolist()
        return in_pint(self._core.smallest_bore(segment, nozzle, wanted, list_si), "m")

    def __repr__(self) -> str:
        count = f"{len(self.segments)} segments, {len(self.nozzles)} nozzles"
        return f"<HoseLay {self.name!r}: {count}>"
