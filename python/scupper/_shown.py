"""Parts of an estimate that show themselves: its quantities and its nozzles."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING

from scupper import _core, _report

if TYPE_CHECKING:
    from scupper.estimating import Estimate
    from scupper.units import Quantity


class Quantities(Mapping[str, "Quantity"]):
    """What there is to wash, by quantity slot; shown as a table."""

    def __init__(self, estimate: Estimate) -> None:
        self._estimate = estimate
        self._slots = [slot for slot, _ in _core.take_off_columns("si")]

    def __getitem__(self, slot: str) -> Quantity:
        if slot not in self._slots:
            raise KeyError(slot)
        return self._estimate.figure(slot)

    def __iter__(self) -> Iterator[str]:
        return iter(self._slots)

    def __len__(self) -> int:
        return len(self._slots)

    def __repr__(self) -> str:
        return _report.text([(slot, self._estimate.text(slot)) for slot in self])

    def _repr_html_(self) -> str:
        return _report.html([(slot, self._estimate.text(slot)) for slot in self])


class Nozzle:
    """What leaves the nozzle."""

    def __init__(self, estimate: Estimate, method: str) -> None:
        key = f"nozzle[{method}]"
        self.flow: Quantity = estimate.figure(f"{key}.flow")
        self.pressure: Quantity = estimate.figure(f"{key}.pressure")
        self.reaction: Quantity = estimate.figure(f"{key}.reaction")
        self.reaction_text: str = estimate.text(f"{key}.reaction")
        self._text = "{} at {}, reaction {}".format(
            *(estimate.text(f"{key}.{word}") for word in ("flow", "pressure", "reaction"))
        )

    def __repr__(self) -> str:
        return self._text
