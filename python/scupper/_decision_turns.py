"""Where the choice between own people and a contract turns: every input alone, the others held."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._delivery_terms import Terms, fields
from scupper._frames import frame
from scupper._priced_ways import PricedWays
from scupper.errors import UnknownNameError

if TYPE_CHECKING:
    import pandas as pd

    from scupper._decision_draws import Draws
    from scupper.job import Job

_BREAK_EVENS = ("work.area", "work.structures", "in_house.other_time")


class Turning:
    """A case whose inputs are moved one by one."""

    _ways: PricedWays
    _terms: Terms
    _draws: Draws
    _values: list[float]
    basis: str
    jobs: tuple[Job, Job]

    @cached_property
    def _units(self) -> dict[str, str]:
        return dict(zip(fields(), _core.delivery_units(self.jobs[0].plan), strict=True))

    def _shown(self, key: str, si: float) -> float:
        return float(_core.from_si(si, self._units[key]))

    @cached_property
    def sensitivity(self) -> pd.DataFrame:
        """Every input by how far it moves the choice, the farthest first.

        Returns
        -------
        pandas.DataFrame
            By key: label, unit, value, low, high (as given, or 20 % either way), given, at_low and
            at_high (advantage of own people), turns (within low and high), flips_at (the nearest
            value at which both ways cost the same; NaN: nowhere that was looked at), away (how far
            that is, over the value).
        """
        table = frame(_core.way_sensitivity(self._values, self.basis, self._terms.ranges))
        for column in ("value", "low", "high", "flips_at"):
            pairs = zip(table["key"], table[column], strict=True)
            table[column] = [self._shown(key, si) for key, si in pairs]
        table.insert(2, "unit", [self._units[key] for key in table["key"]])
        return table.set_index("key")

    @cached_property
    def flips(self) -> pd.DataFrame:
        """The values at which the choice turns, the nearest first, as of `sensitivity`."""
        table = self.sensitivity
        found = table[table["flips_at"].notna()].sort_values("away", kind="stable")
        return found[["label", "unit", "value", "flips_at", "away", "turns"]]

    def flips_at(self, key: str) -> list[float]:
        """Every value of an input at which both ways cost the same, the others held.

        Parameters
        ----------
        key
            As ``"work.area"``; in the job's unit, as `sensitivity` shows it.
        """
        return [self._shown(key, si) for si in _core.way_flip(self._values, key, self.basis)[1]]

    @cached_property
    def break_even(self) -> pd.DataFrame:
        """Yearly area, number of structures and use of the equipment elsewhere where it turns.

        Returns
        -------
        pandas.DataFrame
            By key: label, unit, now, at (all crossings), low and high (between which it was looked
            for), above (which way is cheaper at the high end); no crossing: an empty list.
        """
        rows = []
        for key in _BREAK_EVENS:
            _, found, low, high = _core.way_flip(self._values, key, self.basis)
            at = list(fields()).index(key)
            there = [*self._values[:at], high, *self._values[at + 1 :]]
            own = _core.advantage(there, self.basis) > 0
            rows.append({
                "key": key, "label": fields()[key]["label"], "unit": self._units[key],
                "now": self._shown(key, self._values[at]),
                "at": [self._shown(key, si) for si in found],
                "low": self._shown(key, low), "high": self._shown(key, high),
                "above": "own people" if own else "contract",
            })  # fmt: skip
        import pandas as pd

        return pd.DataFrame(rows).set_index("key")

    def job_break_even(
        self, key: str, low: Any, high: Any, *, jobs: str = "both", parts: int = 12
    ) -> list[float]:
        """Every value of an input of the jobs at which both ways cost the same.

        The list is priced anew at every value that is tried.

        Parameters
        ----------
        key
            Key of the input schema, as ``"shift.travel_time"``.
        low, high
            Between which to look: text with a unit.
        jobs
            Whose input: ``"in_house"``, ``"contract"`` or ``"both"``.
        parts
            In how many parts to look; two crossings within one part go unseen.

        Returns
        -------
        list of float
            In the unit of `low`, ascending; empty: no crossing.
        """
        if jobs not in ("in_house", "contract", "both"):
            raise UnknownNameError("delivery.jobs", "jobs", f'"{jobs}"', "in_house, contract, both")
        first, unit, _ = _core.parse_quantity(str(low), "low")
        last = _core.parse_as(str(high), unit, "high")

        def advantage(si: float) -> float:
            value: Any = si if unit == "1" else f"{si!r} {unit}"
            own, out = (
                job.replace({key: value}) if jobs in ("both", name) else job
                for name, job in zip(("in_house", "contract"), self.jobs, strict=True)
            )
            ways = PricedWays.of(self._ways.inventory, own, out, self._draws.threads)
            if not ways.both:
                return float("nan")
            return _core.advantage(ways.case(self._terms.values), self.basis)

        found = _core.crossings(advantage, first, last, parts, 1e-4)
        shown = str(low).lstrip("+-0123456789., ") or "1"
        return [float(_core.from_si(si, shown)) for si in found]
