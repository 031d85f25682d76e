"""What a result rests on."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from scupper import _core

if TYPE_CHECKING:
    from scupper.job import Job


def stamp(job: Job, records: _core.Inventory) -> dict[str, str]:
    """Version, date, and hashes of the records and of the job with its rates."""
    return {
        "version": _core.__version__,
        "date": date.today().isoformat(),
        "records": f"{records.hash():016x}",
        "job": f"{_core.hash_text(job._core.write()):016x}",
    }
