"""Makes a large inventory of a small one: its rows again and again, each with a number of its own.

python tests/bench/repeat_records.py SOURCE.txt TARGET.txt 620000
"""

from __future__ import annotations

import re
import sys
from pathlib import Path

#: The second field of a row: a number within quotes, with a comma perhaps, or plain.
ROW = re.compile(rb"^([^,]*,)('[^']*'|[^,]*)(.*)$", re.DOTALL)


def repeat(source: Path, target: Path, count: int) -> None:
    """Writes `count` records, the rows of the source over and over."""
    header, *lines = source.read_bytes().splitlines(keepends=True)
    if not header.upper().startswith(b"STATE_CODE_001,STRUCTURE_NUMBER_008,"):
        raise SystemExit(f"{source}: the first columns are not state and structure number")
    parts = [match.group(1, 3) for line in lines if (match := ROW.match(line))]
    with target.open("wb") as out:
        out.write(header)
        for number in range(count):
            before, after = parts[number % len(parts)]
            out.write(b"%s%015d%s" % (before, number, after))


if __name__ == "__main__":
    if len(sys.argv) != 4:
        raise SystemExit(__doc__)
    repeat(Path(sys.argv[1]), Path(sys.argv[2]), int(sys.argv[3]))
