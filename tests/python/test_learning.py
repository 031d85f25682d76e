"""Rates learned from a log: what is read, what is kept, what a price makes of it."""

from pathlib import Path

import numpy as np
import pandas as pd
import pytest

import scupper as sc
from scupper.command_line import main

DRAINS = "operation[drain_free].time_per_unit"
DECK = "operation[deck_hand_line].time_per_unit"


@pytest.fixture(scope="module")
def job() -> sc.Job:
    return sc.Job.demo()


@pytest.fixture(scope="module")
def county() -> sc.Inventory:
    return sc.read_inventory(sc.demo_records())


@pytest.fixture(scope="module")
def season(job: sc.Job, county: sc.Inventory) -> sc.Learned:
    return sc.learn(sc.demo_log(), job, county)


def test_the_invented_season_is_slower_at_drains_and_faster_on_the_deck(
    season: sc.Learned,
) -> None:
    table = season.to_pandas().set_index("key")
    assert table.loc[[DRAINS, DECK], "learned"].all()
    # shown as a rate on the deck (more is faster), as minutes at a drain (more is slower)
    assert table.loc[DECK, "unit"] == "ft2/h"
    assert table.loc[DECK, "new_likely"] > table.loc[DECK, "old_likely"]
    assert table.loc[DRAINS, "new_likely"] > table.loc[DRAINS, "old_likely"]
    for when in ("old", "new"):
        low, likely, high = (table[f"{when}_{w}"] for w in ("low", "likely", "high"))
        assert (low <= likely).all()
        assert (likely <= high).all()
    assert (table["job_p10"] <= table["level_p10"]).all()
    assert (table["level_p90"] <= table["job_p90"]).all()
    kept = table[~table["learned"]]
    assert len(kept) > 0
    assert kept["reason"].str.startswith("kept: ").all()
    assert (kept["old_likely"] == kept["new_likely"]).all()


def test_rates_print_as_people_write_them(season: sc.Learned) -> None:
    row = season.to_pandas().set_index("key").loc[DECK]
    text = repr(season)
    rounded = float(f"{row['new_likely']:.4g}")
    assert f"{rounded:,.0f} – " in text  # as 12,880
    assert "e+" not in text


def test_nothing_in_the_log_is_lost(season: sc.Learned) -> None:
    lines = len(sc.demo_log().read_text(encoding="utf-8").splitlines()) - 1
    told = set(season.jobs["line"]) | set(season.faults["line"])
    assert len(told) == lines
    assert set(season.faults["column"]) >= {"hours", "quantity", "operation"}
    assert season.faults["place"].str.match(r".*season_log\.csv:\d+").all()
    slipped = season.outliers[season.outliers["key"] == DRAINS]
    assert list(slipped["line"]) == [35]  # "as written on the sheet": ten times the hours
    assert season.outliers["counted"].all()


def test_the_book_carries_its_origin_and_moves_the_price(
    season: sc.Learned, job: sc.Job, county: sc.Inventory, tmp_path: Path
) -> None:
    season.rates.save(tmp_path / "rates.json")
    season.rates.save(tmp_path / "rates.csv")
    table = season.to_pandas().set_index("key")
    for file in ("rates.json", "rates.csv"):
        learned = job.with_rates(sc.rates.read(tmp_path / file))
        before, after = (sc.estimate(county["TC-0001"], j) for j in (job, learned))
        assert after.cost.total != before.cost.total
        values = sc.rates.read(tmp_path / file).to_pandas().set_index("key")
        new = table.loc[DECK, "new_likely"]
        assert values.loc[DECK, "likely"] == pytest.approx(new, rel=1e-6)
        text = str(after.explain("drain_free", depth=None))
        assert "learned from" in text
        assert "season_log.csv" in text


def test_a_table_without_an_inventory_needs_quantities(job: sc.Job) -> None:
    table = pd.DataFrame({
        "date": pd.date_range("2026-05-04", periods=8, freq="D"),
        "operation": "deck_hand_line",
        "crew": "north",
        "quantity": [8000.0] * 7 + [np.nan],
        "unit": "ft2",
        "hours": [1.0] * 7 + [2.0],
    })  # fmt: skip
    learned = sc.learn(table, job)
    row = learned.to_pandas().iloc[0]
    assert (row["key"], row["jobs"], row["learned"]) == (DECK, 7, True)
    assert list(learned.faults["place"]) == ["table:8 quantity"]
    # 8,000 ft2 in an hour on the clock, of which the job counts 45 min as productive
    assert learned.jobs["value"].to_numpy() == pytest.approx(8000 * 60 / 45, rel=2e-3)
    same = sc.learn(table.sample(frac=1, random_state=3), job).to_pandas().iloc[0]
    assert same["level"] == row["level"]


def test_known_crews_come_back_and_a_crew_with_few_jobs_leans_on_the_others(job: sc.Job) -> None:
    random = np.random.default_rng(5)
    crews = np.repeat(["fast", "slow", "new"], [30, 30, 3])
    pace = pd.Series(crews).map({"fast": 0.7, "slow": 1.4, "new": 1.4}).to_numpy()
    hours = pace * np.exp(random.normal(0, 0.15, len(crews)))
    table = pd.DataFrame({"operation": "deck_hand_line", "crew": crews, "quantity": "8,000 ft2",
                          "hours": hours})  # fmt: skip

    def level(crew: str, least_jobs: int = 5) -> pd.Series:
        return sc.learn(table, job, crew=crew, least_jobs=least_jobs).to_pandas().iloc[0]

    fast, slow, new, anyone = (level(c) for c in ("fast", "slow", "new", ""))
    assert fast["level"] / slow["level"] == pytest.approx(2.0, rel=0.1)
    assert not new["learned"]
    assert new["reason"].startswith("kept: 3 jobs")
    own = 8000 * 60 / 45 / np.exp(np.log(hours[crews == "new"]).mean())
    leaning = level("new", least_jobs=3)
    assert leaning["learned"]
    assert own < leaning["level"] < fast["level"]
    assert anyone["job_sd"] > fast["job_sd"]


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("", "an empty file"),
        ("operation,huors\n", '"huors"'),
        ("operation,hours,hours\n", "a second column of hours"),
        ("operation,water [ft2]\n", "[ft2]"),
        ("operation,crew\n", "no amounts"),
        ("crew,hours\n", "neither structure_id nor operation"),
    ],
)
def test_a_header_that_cannot_be_used_is_refused(
    tmp_path: Path, job: sc.Job, text: str, found: str
) -> None:
    path = tmp_path / "log.csv"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(sc.FileError) as caught:
        sc.learn(path, job)
    assert caught.value.id == "log.header"
    assert found in caught.value.found


def test_bad_cells_are_faults_with_line_and_column(tmp_path: Path, job: sc.Job) -> None:
    path = tmp_path / "log.csv"
    deck = [f"deck_hand_line,{row}," for row in ("8000 ft2,> 4", "8000 ft2,soon", "12 gal,1")]
    rows = [*deck, "deck_hand_line,8000 ft2,0,", "drain_free,3,1,3 ft", "drain_free,3",
            "drain_free,-2,1,"]  # fmt: skip
    path.write_text("operation,quantity,hours,water\n" + "\n".join(rows) + "\n", encoding="utf-8")
    faults = sc.learn(path, job).faults
    by_line = {int(k): list(v) for k, v in faults.groupby("line")["column"]}
    assert by_line[2][0] == by_line[3][0] == by_line[5][0] == "hours"
    assert by_line[4] == ["quantity"]
    assert by_line[8] == ["quantity"]
    assert by_line[6] == ["water"]
    assert by_line[7] == [""]
    assert faults["reason"].str.len().min() > 0


def test_settings_out_of_range_are_refused(job: sc.Job) -> None:
    table = pd.DataFrame({"operation": ["drain_free"], "quantity": [3], "hours": [1.0]})
    for settings in ({"least_jobs": 1}, {"least_gain": 0.0}, {"least_gain": float("nan")}):
        with pytest.raises(sc.InputError, match=r"learning\.settings"):
            sc.learn(table, job, **settings)


def test_the_command_writes_a_book_and_the_picture_has_a_strip_a_rate(
    season: sc.Learned, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    book, table = tmp_path / "rates.json", tmp_path / "table.csv"
    records = ["--records", str(sc.demo_records())]
    written = ["--save", str(book), "--out", str(table)]
    assert main(["learn", str(sc.demo_log()), *records, *written]) == 0
    shown = capsys.readouterr().out
    assert "kept: " in shown
    assert "season_log.csv:" in shown
    assert len(sc.rates.read(book).to_pandas()) == len(season.rates.to_pandas())
    assert len(pd.read_csv(table)) == len(season.to_pandas())
    assert len(season.plot().axes) == season.to_pandas()["learned"].sum()
    sc.write_log_form(tmp_path / "form.csv")
    assert main(["learn", str(tmp_path / "form.csv")]) == 0
