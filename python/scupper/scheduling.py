"""When the work of one structure can be done."""

from __future__ import annotations

import datetime
from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Arguments
from scupper._frames import frame
from scupper.errors import InputError

if TYPE_CHECKING:
    import pandas as pd

    from scupper.estimating import Estimate

Day = datetime.date | str


class Schedule:
    """Notices, the first day they allow, and the days that become shifts.

    Notices and lost days are dates, not hours: they change no cost.
    """

    def __init__(self, core: _core.Schedule) -> None:
        self._core = core

    @property
    def notices(self) -> pd.DataFrame:
        """What is asked for before the work: days shortest, usual, longest, the first day each
        allows (NaT where the job has no day of asking), source and note."""
        import pandas as pd

        table = frame(self._core.notices())
        for column in ("earliest", "earliest_at_longest"):
            table[column] = pd.to_datetime(table[column].replace("", None))
        return table

    @property
    def days(self) -> pd.DataFrame:
        """Every day from the first that the notices allow to the last shift: date, use
        (``"work"``, or why not: ``"too_cold"``, ``"too_dark"``), season, lowest air temperature in
        kelvin where known."""
        import pandas as pd

        table = frame(self._core.days())
        table["date"] = pd.to_datetime(table["date"])
        return table

    @property
    def shifts(self) -> int:
        """Days of work; a part of a shift takes a day."""
        return int(self._core.shifts)

    @property
    def earliest(self) -> datetime.date | None:
        """The first day that all notices allow; None where the job has no day of asking."""
        text = self._core.earliest
        return None if text is None else datetime.date.fromisoformat(text)

    @property
    def work_days(self) -> list[datetime.date]:
        """The days that become shifts."""
        days = self._core.days()
        return [
            datetime.date.fromisoformat(day)
            for day, use in zip(days["date"], days["use"], strict=True)
            if use == "work"
        ]

    def __repr__(self) -> str:
        days = self.work_days
        when = f"{days[0]} to {days[-1]}" if days else "no day of asking in the job's calendar"
        names = ", ".join(self._core.notices()["notice"]) or "none"
        return f"<Schedule: {self.shifts} shifts, {when}; notices: {names}>"


def schedule(
    estimate: Estimate, air: Mapping[Day, Any] | None = None, falling: Iterable[Day] = ()
) -> Schedule:
    """The schedule of an estimate; see `Estimate.schedule`."""
    return Schedule(_core.schedule(estimate._core, air_rows(air, falling)))


def air_rows(
    air: Mapping[Day, Any] | None, falling: Iterable[Day]
) -> list[tuple[str, float, bool]]:
    """Day, lowest temperature in kelvin and whether it falls, of every day that is known."""
    cold = {_iso(day) for day in falling}
    rows = []
    for day, lowest in (air or {}).items():
        given = Arguments()
        given.add("air", lowest, "K")
        text = _iso(day)
        rows.append((text, float(given.shaped()[0]), text in cold))
    unknown = cold - {text for text, *_ in rows}
    if unknown:
        raise InputError(
            "calendar.air", "falling", ", ".join(sorted(unknown)), "days whose air is given"
        )
    return rows


def _iso(day: Day) -> str:
    return day if isinstance(day, str) else day.strftime("%Y-%m-%d")
