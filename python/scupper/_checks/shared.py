"""What checks of several files share."""

from __future__ import annotations

from scupper._check_forms import Argument, Choice, Entry, Reason, call

TABLE_WATER = "60 degF"  # the handbooks' usual temperature where a table states none
OF_TABLE = call("water_density", temperature=TABLE_WATER)
CUT_OFF = Reason("cut_off", steps=1)
SQUARE_INCH = "1.1283791670955126 in"  # the bore of one square inch


def as_head(pressure: Argument, density: Argument) -> Argument:
    """A pressure as the height of a column."""
    return call("head", pressure=pressure, density=density)


def entry(table: str, row: Choice, column: str, low: str, high: str) -> tuple[Argument, Reason]:
    """A shipped value, and the reason where a publisher stands elsewhere in its range."""
    between = (Entry(table, row, low), Entry(table, row, high))
    return Entry(table, row, column), Reason("publishers_differ", between=between)
