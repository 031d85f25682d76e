"""Element files joined to an inventory."""

from pathlib import Path

import pytest

import scupper as sc

DATA = Path(__file__).parents[1] / "data" / "inventory"
PAIR = DATA / "AZ_one_2019.txt", DATA / "nbe_2023_AZ_one.xml"


def test_element_quantities_replace_inferred_ones_and_are_marked() -> None:
    plain, joined = sc.read_inventory(PAIR[0]), sc.read_inventory(PAIR[0], elements=PAIR[1])
    before = sc.take_off(plain, units="us").iloc[0]
    after = sc.take_off(joined, units="us").iloc[0]
    assert after["rail_length_ft"] == pytest.approx(212.0)
    assert after["rail_length_ft_basis"] == "element"
    assert after["rail_length_ft_low"] == after["rail_length_ft_high"]
    assert before["rail_length_ft_basis"] != "element"


@pytest.mark.parametrize(
    ("quantity", "element"),
    [("rail_length", 212.0), ("deck_total_area", 7558.0)],
)
def test_the_range_from_the_record_alone_holds_what_was_counted(
    quantity: str, element: float
) -> None:
    unit = "ft2" if quantity.endswith("area") else "ft"
    before = sc.take_off(sc.read_inventory(PAIR[0]), units="us").iloc[0]
    name = f"{quantity}_{unit}"
    assert before[f"{name}_basis"] != "element"
    # Rails stand on both edges; records round lengths and widths to a tenth of a metre.
    assert before[f"{name}_low"] / 1.006 <= element <= before[f"{name}_high"] * 1.006


def test_the_join_tells_what_it_used_and_what_it_doubts() -> None:
    inventory = sc.read_inventory(PAIR[0], elements=[PAIR[1], DATA / "nbe_2023_IA.xml"])
    arizona, iowa = inventory.elements
    assert (arizona.matched, len(arizona.unmatched), arizona.structures) == (7, 0, 1)
    assert iowa.matched == 0
    assert len(iowa.unmatched) == len(iowa.records) == 23
    doubts = inventory.doubts
    coating = doubts[doubts["column"] == "coating of the rail"]
    assert len(coating) == 1
    assert "nbe_2023_AZ_one.xml" in coating["where"].iloc[0]
    assert "7 matched" in repr(arizona)
    assert arizona.records.set_index("element").loc[331, "unit"] == "ft"


def test_no_element_file_is_refused() -> None:
    with pytest.raises(sc.FileError, match="FHWAELEMENT"):
        sc.read_inventory(PAIR[0], elements=PAIR[0])
    with pytest.raises(sc.FileError):
        sc.read_inventory(PAIR[0], elements="no such file.xml")
