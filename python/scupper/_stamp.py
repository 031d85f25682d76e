"""What a result rests on."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from scupper import _core

if TYPE_CHECKING:
    from scupper.job import Job


def stamp(job: Job, records: _core.Inventory) -> dict[str, str]:
    """Version, date, and hashes of the records and of the job with its rates."""
    return {**job_stamp(job), "records": f"{records.hash():016x}"}


def job_stamp(job: Job) -> dict[str, str]:
    """Version, date, and the hash of the job with its rates."""
    return {
        "version": _core.__version__,
        "date": date.today().isoformat(),
        "job": job_hash(job),
    }


def job_hash(job: Job) -> str:
    """A hash of a job with its rates."""
    return f"{_core.hash_text(job._core.write()):016x}"
