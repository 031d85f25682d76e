"""The family of errors and its facts."""

from __future__ import annotations

import pickle
from collections.abc import Callable
from pathlib import Path

import pytest

import scupper as sc

BASES = {
    sc.InputError: (sc.Error, ValueError),
    sc.UnitError: (sc.InputError,),
    sc.UnknownNameError: (sc.InputError,),
    sc.FileError: (sc.InputError,),
    sc.MoneyError: (sc.InputError,),
    sc.SolveError: (sc.Error, RuntimeError),
    sc.Interrupted: (sc.Error,),
}


@pytest.mark.parametrize("error", BASES)
def test_family(error: type[sc.Error]) -> None:
    assert all(issubclass(error, base) for base in BASES[error])


def test_message_is_made_of_the_facts_and_survives_pickling() -> None:
    error = sc.UnitError("unit.missing", "nozzle.bore", '"3"', "3 in")
    assert str(error) == 'nozzle.bore: "3"; allowed: 3 in [unit.missing]'
    again = pickle.loads(pickle.dumps(error))
    assert (type(again), vars(again)) == (sc.UnitError, vars(error))


def no_file() -> None:
    sc.read_inventory("/nowhere/records.txt")


def no_unit() -> None:
    sc.Job.demo().replace({"nozzle.bore": 3})


def wrong_unit() -> None:
    sc.Job.demo().replace({"nozzle.bore": "3 psi"})


def unknown_key() -> None:
    sc.Job.demo().replace({"nozzle.boar": "3 in"})


def unknown_word() -> None:
    sc.Job.demo().replace(sharing="prorata")


def other_currency() -> None:
    sc.Job.demo().replace({"price.water": "8 EUR/kgal"})


def out_of_range() -> None:
    sc.hydraulics.nozzle_flow("0 in", "80 psi", 0.97)


def stopped() -> None:
    inv = sc.read_inventory(sc.demo_records())
    sc.estimate_all(inv, sc.Job.demo(), progress=lambda done, total: False)


def element_files() -> None:
    sc.read_inventory(sc.demo_records(), elements=sc.demo_records())


def no_dimensions() -> None:
    sc.estimate(sc.read_inventory(sc.demo_records())["TC-0048"], sc.Job.demo())


@pytest.mark.parametrize(
    ("cause", "error", "id", "path", "allowed"),
    [
        (no_file, sc.FileError, "inventory.open", "/nowhere/records.txt", ""),
        (no_unit, sc.UnitError, "unit.missing", "inputs.nozzle.bore", "12 ft 6 in"),
        (wrong_unit, sc.UnitError, "unit.dimension", "inputs.nozzle.bore", "a length"),
        (unknown_key, sc.UnknownNameError, "schema.key", "inputs.nozzle.boar", "[hand_line].bore"),
        (unknown_word, sc.UnknownNameError, "json.word", "job.sharing", "pro_rata"),
        (other_currency, sc.UnitError, "json.currency", "inputs.price.water", "USD"),
        (out_of_range, sc.InputError, "hydraulics.bore", "bore", ""),
        (stopped, sc.Interrupted, "estimate.stopped", "", ""),
        (element_files, sc.FileError, "inventory.elements", str(sc.demo_records()), "FHWAED"),
        (no_dimensions, sc.InputError, "estimate.unpriced", "99:TC-0048", ""),
    ],
)
def test_facts_reach_python(
    cause: Callable[[], None], error: type[sc.Error], id: str, path: str, allowed: str
) -> None:
    with pytest.raises(error) as caught:
        cause()
    facts = caught.value
    assert type(facts) is error
    assert (facts.id, facts.path) == (id, path)
    assert allowed in facts.allowed
    assert facts.id in str(facts)


def test_a_job_file_names_the_place_of_its_fault(tmp_path: Path) -> None:
    file = tmp_path / "job.json"
    file.write_text('{"scupper_job": 1, "inputs": {"deck.length": "1/2 psi"}}', encoding="utf-8")
    with pytest.raises(sc.UnitError) as caught:
        sc.Job.from_file(file)
    assert caught.value.path == f"{file}.inputs.deck.length"
    with pytest.raises(sc.FileError) as caught_file:
        sc.Job.from_file(tmp_path / "absent.json")
    assert caught_file.value.id == "file.open"


def test_progress_errors_pass_through_unchanged() -> None:
    def fail(done: int, total: int) -> None:
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        sc.estimate_all(sc.read_inventory(sc.demo_records()), sc.Job.demo(), progress=fail)
