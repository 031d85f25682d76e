"""Estimates as files: saved whole, priced again when they are loaded."""

from __future__ import annotations

import os
import warnings
from typing import TYPE_CHECKING

from scupper import _core
from scupper._files import read_text, write_whole
from scupper._frames import frame
from scupper.errors import MovedWarning
from scupper.job import Job

if TYPE_CHECKING:
    import pandas as pd

    from scupper.estimating import Estimate

#: How far a figure may lie from the saved one, relative to the greater of both.
TOLERANCE = 1e-9
_MOVED = ["key", "label", "unit", "saved", "now"]
_NAMED_IN_WARNING = 5


def document(estimate: Estimate) -> str:
    """The estimate as JSON text: record, job, stamp, figures."""
    return _core.write_estimate(estimate._core, estimate.job._core, estimate.stamp)


def save(estimate: Estimate, path: str | os.PathLike[str]) -> None:
    """Writes the document whole, or not at all."""
    write_whole(path, document(estimate))


def load(path: str | os.PathLike[str]) -> Estimate:
    """The estimate of a file."""
    return restored(read_text(path), os.fspath(path))


def restored(text: str, name: str = "estimate") -> Estimate:
    """Prices the record of a document again; warns where a figure is no longer what it was."""
    from scupper.estimating import estimate

    saved = _core.SavedEstimate.read(text, name)
    priced = estimate(saved.structure, Job(saved.job))
    priced.moved = _moved(saved, priced)
    if len(priced.moved):
        warnings.warn(_told(priced.moved, saved.stamp, name), MovedWarning, stacklevel=4)
    return priced


def nothing_moved() -> pd.DataFrame:
    """The table of an estimate that was not loaded."""
    return frame({}, _MOVED)


def _moved(saved: _core.SavedEstimate, priced: Estimate) -> pd.DataFrame:
    rows = saved.moved(priced._core, TOLERANCE)
    return frame(rows | {"now": rows["here"], "saved": rows["there"]}, _MOVED)


def _told(moved: pd.DataFrame, stamp: dict[str, str], name: str) -> str:
    shown = [
        f"{row['key']} {row['saved']:,.6g} -> {row['now']:,.6g} {row['unit']}"
        for row in moved.head(_NAMED_IN_WARNING).to_dict("records")
    ]
    more = len(moved) - len(shown)
    rest = f"; {more} more" if more else ""
    return (
        f"{name}: {len(moved)} figures are not what version {stamp.get('version', 'unknown')} "
        f"saved; priced now with version {_core.__version__}, all in .moved: "
        f"{'; '.join(shown)}{rest}"
    )
