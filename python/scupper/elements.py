"""Element records joined to an inventory: element quantities take the place of inferred ones."""

from __future__ import annotations

import os
from collections.abc import Iterable
from functools import cached_property
from typing import TYPE_CHECKING

from scupper import _core
from scupper._frames import frame

if TYPE_CHECKING:
    import pandas as pd

Path = str | os.PathLike[str]


class ElementFile:
    """One element file and what its join with an inventory found."""

    def __init__(self, path: Path, inventory: _core.Inventory) -> None:
        self.path = os.fspath(path)
        self._records = _core.read_elements(self.path)
        self._join = _core.join_elements(inventory, self._records)

    @property
    def structures(self) -> int:
        """Structures of the inventory that have records here."""
        return int(self._join.structures)

    @property
    def matched(self) -> int:
        """Records whose structure is in the inventory."""
        return int(self._join.matched)

    @property
    def used(self) -> int:
        """Of those matched, records of a quantity that the take-off has."""
        return int(self._join.used)

    @cached_property
    def records(self) -> pd.DataFrame:
        """Every record: line, state, structure_id, element, name, parent, total, unit."""
        return frame(self._records.records())

    @cached_property
    def unmatched(self) -> pd.DataFrame:
        """Records of structures that the inventory does not have."""
        return frame(self._join.unmatched())

    @cached_property
    def rejected(self) -> pd.DataFrame:
        """Records that cannot be read: where, line, state, structure_id, found, reason."""
        return frame(self._records.rejected())

    def __repr__(self) -> str:
        return (
            f"<{self.path}: {len(self._records)} element records, {self.matched} matched in "
            f"{self.structures} structures, {self.used} used, {len(self.unmatched)} unmatched, "
            f"{len(self.rejected)} rejected>"
        )


def joined(paths: Path | Iterable[Path] | None, inventory: _core.Inventory) -> list[ElementFile]:
    """Joins element files to an inventory, in their order."""
    if paths is None:
        return []
    several = [paths] if isinstance(paths, str | os.PathLike) else list(paths)
    return [ElementFile(path, inventory) for path in several]
