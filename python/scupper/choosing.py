"""Which method? Ways to clean a deck, means of access to the underside, closures, side by side."""

from __future__ import annotations

import os
from collections.abc import Iterable, Mapping
from functools import cached_property
from typing import TYPE_CHECKING

from scupper import _core
from scupper._alternatives_page import page, table_text
from scupper._core import Structure
from scupper._files import write_whole
from scupper._frames import suffixed
from scupper._stamp import stamp
from scupper.errors import InputError, UnknownNameError
from scupper.inventory import Inventory, gathered

if TYPE_CHECKING:
    import pandas as pd

    from scupper.job import Job


class Alternatives:
    """Alternatives at one or many structures, a row each; none is left out.

    One that cannot be done there, or has no price, says why and is never recommended.
    """

    def __init__(self, structures: list[Structure], job: Job, weights: dict[str, float]) -> None:
        self.structures = structures
        self.job = job
        #: What each criterion counts.
        self.weights = weights

    @cached_property
    def table(self) -> pd.DataFrame:
        """A row an alternative and structure.

        structure_id; question (``"deck"``, ``"underside"``, ``"closure"``), alternative,
        recommended, feasible, current (the job works so), in_scope; cost, labour-hours, hours on
        site (elapsed), shifts, water, hours of closure, share of the dirt left with its range and
        mass, road-user cost, units in the names; score (1 is the mean of those that can be done;
        the least is recommended); reasons against, doubts, not_figured (what the road-user cost
        lacks), no_price, why, note, source.
        """
        import pandas as pd

        return pd.concat([frame for frame, _ in self._compared], ignore_index=True)

    @cached_property
    def columns(self) -> dict[str, tuple[str, str]]:
        """Column of the table and unit by its name without unit: ``water`` is in ``water_gal``."""
        return self._compared[0][1] if self._compared else {}

    @cached_property
    def _compared(self) -> list[tuple[pd.DataFrame, dict[str, tuple[str, str]]]]:
        """Table and columns, structure by structure."""
        import pandas as pd

        ready = _core.Alternatives(self.job._core)
        compared = []
        for structure in self.structures:
            found = ready.compare(structure, self.weights)
            columns = {name: (suffixed(name, unit), unit) for name, unit, _ in found}
            table = pd.DataFrame({suffixed(name, unit): values for name, unit, values in found})
            table.insert(0, "structure_id", structure.id)
            compared.append((table, columns))
        return compared

    @cached_property
    def recommended(self) -> pd.DataFrame:
        """The recommended rows: at most one a structure and question.

        A question without one has nothing that can be done and has a price, or the job has no work
        that it is about.
        """
        return self.table[self.table["recommended"]].reset_index(drop=True)

    @cached_property
    def stamp(self) -> dict[str, str]:
        """What this rests on: version, date, hashes of the records and of the job."""
        return stamp(self.job, gathered(self.structures)._core)

    def page(self) -> str:
        """One structure's alternatives as HTML to print; of many, one below the other."""
        return page(self)

    def save_page(self, path: str | os.PathLike[str]) -> None:
        """Writes the page whole, or not at all."""
        write_whole(path, self.page())

    def __repr__(self) -> str:
        return table_text(self)

    def _repr_html_(self) -> str:
        return page(self, whole=False)


def alternatives(
    structures: Structure | Inventory | Iterable[Structure],
    job: Job,
    weights: Mapping[str, float] | None = None,
) -> Alternatives:
    """Ways to clean a deck, means of access to the underside, and closures, side by side.

    Parameters
    ----------
    structures
        A structure, an inventory, a selection of one, or structures.
    job
        What to clean how well, with the prices; its ``alternatives`` change the shipped ones or
        add to them.
    weights
        How much each criterion counts: ``"cost"``, ``"labour"``, ``"elapsed"``, ``"water"``,
        ``"closure"``, ``"dirt_left"``, ``"road_users"``. One left out counts nothing, and so does
        one that cannot be figured; None: half the cost, a quarter the dirt that is left, an eighth
        the hours of closure and an eighth the money of those who drive past or round.

    Returns
    -------
    Alternatives
        ``.table``, ``.recommended``, ``.save_page(path)``; prints as a table with the reasons.

    Raises
    ------
    InputError
        Where there is no structure, a weight is below 0, or none is above.
    UnknownNameError
        Where a weight is of no criterion; the nearest is named.
    """
    chosen = [structures] if isinstance(structures, Structure) else list(structures)
    if not chosen:
        raise InputError("alternatives.structures", "structures", "none", "at least one")
    return Alternatives(chosen, job, _weights(weights))


def _weights(weights: Mapping[str, float] | None) -> dict[str, float]:
    usual = _core.usual_weights()
    if weights is None:
        return usual
    for name in weights:
        if name not in usual:
            near = _core.nearest_name(name, list(usual))
            raise UnknownNameError("alternatives.weights", "weights", f'"{name}"', f'"{near}"?')
    return {name: float(weights.get(name, 0.0)) for name in usual}
