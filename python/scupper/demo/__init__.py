"""An invented county to try things on: its records, and a job."""

from __future__ import annotations

import os
from pathlib import Path

from scupper._files import not_writable, read_text, write_whole
from scupper.job import Job

_HERE = Path(__file__).parent


def demo_records() -> Path:
    """The records of an invented county, in the public inventory's delimited form.

    Returns
    -------
    pathlib.Path
        A file for `read_inventory`.
    """
    return _HERE / "tamarack_county.txt"


def demo_log() -> Path:
    """A season's log of finished jobs in the invented county; crews, hours and water are invented.

    Returns
    -------
    pathlib.Path
        A file for `learn`.
    """
    return _HERE / "season_log.csv"


def demo_bids() -> Path:
    """Forms of bid of the invented county: five invented bidders, the engineer's estimate
    (``engineer.csv``) and the ranges of the quantities (``quantity_ranges.csv``).

    Returns
    -------
    pathlib.Path
        The folder that holds them.
    """
    return _HERE / "bids"


def write_demo(folder: str | os.PathLike[str]) -> list[Path]:
    """Writes the invented county's records, a season's log and a job into a folder.

    Parameters
    ----------
    folder
        Made where it is not there.

    Returns
    -------
    list of pathlib.Path
        The files written.
    """
    target = Path(folder)
    try:
        target.mkdir(parents=True, exist_ok=True)
    except OSError as e:
        raise not_writable(target, e) from None
    written = []
    for name in (demo_records().name, demo_log().name, "README.txt"):
        write_whole(target / name, read_text(_HERE / name))
        written.append(target / name)
    Job.demo().save(target / "job.json")
    return [*written, target / "job.json"]
