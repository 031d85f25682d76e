"""A structure's record in a few words."""

from __future__ import annotations

from typing import Any

from scupper import _core
from scupper._core import Structure
from scupper._paper import words


def described(structure: Structure, units: str) -> str:
    """As "steel stringer, multi-beam or girder, 3 main spans, 200 ft long, built 1968"."""
    record = structure.to_dict()
    kind = " ".join(record[k] for k in ("material", "design") if record[k] not in ("", "unknown"))
    parts = [kind, *_spans(record), *_sizes(record, units), *_use(record)]
    return ", ".join(part for part in parts if part)


def _spans(record: dict[str, Any]) -> list[str]:
    parts = []
    for place in ("main", "approach"):
        spans = record[f"{place}_spans"]
        if spans:
            parts.append(f"{spans} {place} span{'s' if spans > 1 else ''}")
    return parts


def _sizes(record: dict[str, Any], units: str) -> list[str]:
    unit = _core.shown_unit("m", units)
    texts = {"length_m": "long", "roadway_width_m": "curb to curb"}
    return [
        f"{float(_core.from_si(record[key], unit)):,.0f} {unit} {what}"
        for key, what in texts.items()
        if record[key]
    ]


def _use(record: dict[str, Any]) -> list[str]:
    parts = []
    if record["below"] not in ("", "unknown", "neither"):
        parts.append(f"below: {words(record['below'])}")
    if record["year_built"]:
        parts.append(f"built {record['year_built']}")
    if record["daily_traffic"] is not None:
        year = f" ({record['traffic_year']})" if record["traffic_year"] else ""
        parts.append(f"{record['daily_traffic']:,} vehicles a day{year}")
    return parts
