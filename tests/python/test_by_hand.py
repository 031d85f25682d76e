"""The bridge that is worked out by hand in the documents: every line of every table."""

import ast
import json
import math
import operator
import re
from collections.abc import Callable
from pathlib import Path

import pytest

import scupper as sc

FOLDER = Path(__file__).parent.parent / "reference" / "worked"
LINE = re.compile(
    r"^\| (?P<what>[^|]+) \| (?P<by_hand>[^|]+) \| (?P<result>[^|]+) \| (?P<key>[^|]+) \|$"
)
OPERATIONS: dict[type[ast.operator], Callable[[float, float], float]] = {
    ast.Add: operator.add,
    ast.Sub: operator.sub,
    ast.Mult: operator.mul,
    ast.Div: operator.truediv,
    ast.Pow: operator.pow,
}
FUNCTIONS: dict[str, Callable[[float], float]] = {"sqrt": math.sqrt, "ceil": math.ceil}


def value_of(node: ast.expr) -> float:
    """What a pocket calculator shows: numbers, + − × ÷, powers, roots and rounding up."""
    if isinstance(node, ast.Constant):
        return float(node.value)  # type: ignore[arg-type]
    if isinstance(node, ast.BinOp):
        return OPERATIONS[type(node.op)](value_of(node.left), value_of(node.right))
    assert isinstance(node, ast.Call)
    assert isinstance(node.func, ast.Name)
    return FUNCTIONS[node.func.id](*[value_of(argument) for argument in node.args])


def by_hand(text: str) -> float:
    python = text.replace("×", "*").replace("−", "-").replace("^", "**")
    return value_of(ast.parse(python, mode="eval").body)


def lines() -> list[dict[str, str]]:
    text = (FOLDER / "by_hand.md").read_text(encoding="utf-8")
    found = [match.groupdict() for match in map(LINE.match, text.splitlines()) if match]
    return [line for line in found if line["what"] != "what"]


@pytest.fixture(scope="module")
def estimate(tmp_path_factory: pytest.TempPathFactory) -> sc.Estimate:
    record = json.loads((FOLDER / "by_hand_structure.json").read_text(encoding="utf-8"))
    listed = tmp_path_factory.mktemp("by_hand") / "structures.json"
    listed.write_text(json.dumps({"scupper_structures": 1, "structures": [record]}))
    inventory = sc.read_inventory(listed)
    return sc.estimate(inventory[0], sc.Job.from_file(FOLDER / "by_hand_job.json"))


def test_the_tables_cover_the_price() -> None:
    assert len(lines()) == 49
    assert {"cost.total", "hours.paid", "water.volume", "debris.mass"} <= {
        x["key"] for x in lines()
    }


@pytest.mark.parametrize("line", lines(), ids=lambda line: line["key"])
def test_a_line_by_hand_is_the_engines(line: dict[str, str], estimate: sc.Estimate) -> None:
    number, _, unit = line["result"].replace(",", "").partition(" ")
    printed = float(number)
    half_step = 0.5 * 10.0 ** -len(number.partition(".")[2])
    assert by_hand(line["by_hand"]) == pytest.approx(printed, abs=1.001 * half_step)
    figure = estimate.figure(line["key"])
    pint_unit = re.sub(r"ft(\d)", r"ft ** \1", unit)
    plain = unit in ("", "USD", "each")
    engine = figure.magnitude if plain else figure.to(pint_unit).magnitude
    assert float(engine) == pytest.approx(printed, abs=1.001 * half_step)
