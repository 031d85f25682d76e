"""The page, the card and the report: content, escaping, the same numbers as the estimate."""

from __future__ import annotations

import re
from html import unescape
from pathlib import Path

import pytest

import scupper as sc
from scupper import _county_report, _paper
from scupper.command_line import main

HOSTILE = "<script>alert(1)</script>"


def plain(html: str) -> str:
    """What a reader sees."""
    body = html.split("<body>")[1]
    return re.sub(r"\s+", " ", unescape(re.sub(r"<[^>]*>", " ", body)))


@pytest.fixture(scope="module")
def hostile_records(tmp_path_factory: pytest.TempPathFactory) -> Path:
    text = sc.demo_records().read_text(encoding="utf-8")
    text = text.replace("STATE RTE 88", HOSTILE).replace("LARCH AVENUE", "=cmd()")
    file = tmp_path_factory.mktemp("hostile") / "records.txt"
    file.write_text(text, encoding="utf-8")
    return file


@pytest.fixture(scope="module")
def programme(county: sc.Inventory, job: sc.Job) -> sc.Programme:
    return sc.estimate_all(county, job)


@pytest.fixture(scope="module")
def pages(estimate: sc.Estimate, programme: sc.Programme) -> dict[str, str]:
    return {"page": estimate.page(), "card": estimate.work_card(), "report": programme.report()}


def test_each_is_one_whole_document(pages: dict[str, str]) -> None:
    for html in pages.values():
        assert html.startswith("<!DOCTYPE html>")
        for tag in ('<html lang="en">', "</html>", "<body>", "<title>"):
            assert html.count(tag) == 1, tag
        assert "size: letter" in html
        assert not re.search(r"(src|href)=[\"']http", html)


def test_paper_tells_of_invented_values(
    pages: dict[str, str], programme: sc.Programme, tmp_path: Path
) -> None:
    sheet = tmp_path / "price.html"
    programme.save_price_sheet(sheet)
    offer = sc.bids.pay_items(programme)
    offer.save(tmp_path / "items.html")
    made_up = int(programme.job.keys()["source"].str.contains("invented").sum())
    for html in (*pages.values(), sheet.read_text(), (tmp_path / "items.html").read_text()):
        assert re.search(rf"{made_up} (values of the job|of its values) are (made up|inv)", html)


def test_the_page_says_what_it_is_first(pages: dict[str, str]) -> None:
    text = plain(pages["page"])
    assert text.strip().startswith("STATE RTE 88 over CO RD 12")
    for words in ("99:TC-0001", "3 main spans", "200 ft long", "priced at the mean of every input",
                  "outing group of one", "one lane two way", "common practice"):  # fmt: skip
        assert words in text, words


def split_at_total(
    rows: list[tuple[str, str]], total: float
) -> tuple[list[tuple[str, str]], list[tuple[str, str]]]:
    """The first rows that add up to a total within their rounding, and the rest."""
    for n in range(1, len(rows) + 1):
        so_far = sum(float(amount.replace(",", "")) for _, amount in rows[:n])
        if abs(so_far - total) <= 0.5 * n:
            return rows[:n], rows[n:]
    raise AssertionError(f"no run of rows adds up to {total:,.0f}: {rows}")


def test_the_page_shows_the_numbers_of_the_estimate(
    estimate: sc.Estimate, pages: dict[str, str]
) -> None:
    text = plain(pages["page"])
    row = estimate.ranges().loc["cost.total"]
    assert f"{estimate.cost!r} P5–P95 {row['P5']:,.0f}–{row['P95']:,.0f}" in text
    for key in ("water.volume", "takeoff[deck_top_area].quantity"):
        assert estimate.text(key).replace("ft2", "ft²") in text, key
    for key, figure in {"shift.count": "0.89", "hours.labour": "53.1", "hours.on_site": "7.0 h",
                        "debris.loads": "0.25"}.items():  # fmt: skip
        number = float(figure.split()[0])
        assert number == pytest.approx(estimate._core.figure(key)[0], rel=0.03), key
        assert figure in text
    row_of_bars = r'<tr><td>([^<]+)</td>[^\n]*?<td class="n">([\d,]+)</td><td class="bar"'
    shown = re.findall(row_of_bars, pages["page"])
    for dimension in ("component", "operation"):
        amounts = estimate.cost.by(dimension)
        rows, shown = split_at_total(shown, estimate.cost.total)
        for name, amount in rows:
            if not name.endswith(" others"):
                assert amount == f"{amounts[name.replace(' ', '_')]:,.0f}", name
    assert not shown  # every row belongs to one of the two tables, and each adds up


def test_the_page_lists_the_dearest_guesses_warnings_and_cautions(
    estimate: sc.Estimate, pages: dict[str, str]
) -> None:
    text = plain(pages["page"])
    for guess in estimate.assumptions.head(5).to_dict("records"):
        assert guess["label"] in text
        assert f"{guess['worth']:,.0f}" in text
    for warning in estimate.warnings:
        assert warning in text
    for caution in estimate.cautions:
        assert f"{caution['text']} [{caution['source']}]" in text
    for value in estimate.stamp.values():
        assert value in text


def test_no_cents_and_no_square_metres_in_us_units(pages: dict[str, str]) -> None:
    for html in pages.values():
        text = plain(html)
        assert not re.search(r"USD [\d,]+\.\d", text)
        assert "m²" not in text
        assert "m2" not in text


def test_the_page_says_what_is_cleaned_how_and_by_whom(county: sc.Inventory, job: sc.Job) -> None:
    service = {
        "deck_top": "rinse",
        "joint": "full_clean",
        "cap": "full_clean",
        "seat": "full_clean",
    }
    own = job.replace(service=service, ways={"deck_top": "flusher"}, wash_water="collect")
    priced = sc.estimate(county["TC-0001"], own)
    text = plain(priced.page())
    for words in ("full clean of cap, joint, seat; rinse of deck top; deck top by flusher; "
                  "all wash water collected", "4 × wash crew", "1 × bucket truck",
                  "tops of abutment seats"):  # fmt: skip
        assert words in text, words
    dirt = priced.figure("operation[dry_pick_up_cap].quantity").to("ft**3").magnitude
    assert f"dirt on caps {_paper.short(dirt)} ft³" in text


def test_the_kinds_of_cost_add_up(county: sc.Inventory, job: sc.Job) -> None:
    margins = {"margin.overhead": 0.1, "margin.profit": 0.05}
    priced = sc.estimate(county["TC-0001"], job.replace(margins))
    kinds = plain(priced.page()).split("P95")[3].split("all in")[0].split("labour")[1]
    amounts = [float(number.replace(",", "")) for number in re.findall(r"[\d,]+", f"labour{kinds}")]
    assert len(amounts) == 5
    assert sum(amounts) == pytest.approx(priced.cost.total, abs=0.5 * len(amounts))


def test_the_page_lays_the_closure_out_where_it_can(
    estimate: sc.Estimate, county: sc.Inventory, job: sc.Job
) -> None:
    text = plain(estimate.page())
    for row in estimate.closure_plan.elements.to_dict("records"):
        length = row["length"].to("ft").magnitude
        assert f"{_paper.words(row['name'])} {length:,.0f} ft" in text
    assert f"closure devices {estimate.closure_plan.devices}" in text
    on_foot = plain(sc.estimate(county["TC-0001"], job.replace(closure="none")).page())
    assert "closure devices none no closure" in on_foot
    assert "as a driver meets it" not in on_foot


def test_without_a_range_the_page_names_no_guess(county: sc.Inventory, job: sc.Job) -> None:
    priced = sc.estimate(county["TC-0001"], job)
    priced.__dict__["assumptions"] = priced.assumptions.head(0)
    assert "None: no input that moves the price has a range" in plain(priced.page())


def test_units_of_the_job_are_shown(county: sc.Inventory, job: sc.Job) -> None:
    metric = sc.estimate(county["TC-0001"], job.replace(units="metric"))
    text = plain(metric.page())
    assert "m²" in text
    assert " gal" not in text
    assert "ft²" not in text


def test_counted_drains_are_a_number(county: sc.Inventory, job: sc.Job) -> None:
    assert "drains 1–10 not counted" in plain(sc.estimate(county["TC-0001"], job).page())
    four = sc.estimate(county["TC-0001"], job.override("TC-0001", drains=4))
    assert "drains 4 measured" in plain(four.page())
    assert "Drains to open: 4 measured" in plain(four.work_card())
    assert "not counted" not in plain(four.page())


def test_the_card_lists_every_active_operation_once_in_the_jobs_order(
    estimate: sc.Estimate, pages: dict[str, str]
) -> None:
    table = pages["card"].split("Order of work")[1].split("<tbody>")[1].split("</tbody>")[0]
    listed = re.findall(r'<td class="n">\d+</td><td>([^<]+)', table)
    lines = set(estimate.cost.lines["operation"])
    order = [row["name"] for row in estimate.job.to_dict()["operations"]]
    assert listed == [name.replace("_", " ") for name in order if name in lines]
    besides = plain(pages["card"]).split("Besides")[1].split("Drains to open")[0]
    for name in lines - set(order):
        assert besides.count(name) == 1, name


def test_the_card_has_cautions_first_and_room_to_write(pages: dict[str, str]) -> None:
    text = plain(pages["card"])
    places = [text.index(words) for words in ("Cautions first", "Order of work", "Drains to open",
              "Defects seen", "Photographs", "Tickets", "Hours")]  # fmt: skip
    assert places == sorted(places)
    for words in (
        "4 × wash crew, 2 × flagger",
        "1 × combination truck",
        "free clogged frozen not found",
    ):
        assert words in text
    assert pages["card"].count('<span class="box">') == 11 + 4 * 12


def test_the_report_adds_up(programme: sc.Programme, pages: dict[str, str]) -> None:
    text = plain(pages["report"])
    counts = programme.counts
    for what in ("structures read", "priced", "unpriced"):
        assert f"{what} {counts[what.split()[-1]]}" in text
    shown = text.split("What was read")[1].split("Labour-hours")[0]
    reasons = programme.unpriced["reason"].value_counts()
    assert sum(int(count) for count in reasons) == counts["unpriced"]
    for reason, count in reasons.items():
        assert f"{count} {reason}" in shown
    cost = programme.ranges().loc["cost.total"]
    assert f"USD {programme.total:,.0f} {cost['P5']:,.0f}–{cost['P95']:,.0f}" in text


def test_the_report_lists_every_structure_the_dearest_first(
    programme: sc.Programme, pages: dict[str, str]
) -> None:
    table = pages["report"].split("Structures by cost")[1].split("</table>")[0]
    listed = re.findall(r'<td class="n">\d+</td><td>([^<]+)', table)
    rows = programme.to_pandas()
    priced = rows.sort_values("cost_total_usd", ascending=False, kind="stable")
    assert listed == list(priced["structure_id"])
    closures = re.findall(r'<td class="nw">([^<]+)', table)
    dearest = sc.estimate(programme.inventory[listed[0]], programme.job)
    assert closures[0] == dearest.closure.replace("_", " ")
    costs = re.findall(r'<td class="n">([\d,]+)</td></tr>', table)
    assert costs == [f"{cost:,.0f}" for cost in priced["cost_total_usd"]]


def test_charts_are_drawings_with_ids_of_their_own(pages: dict[str, str]) -> None:
    report = pages["report"]
    assert report.count("<svg") == report.count("</svg>") == 4
    clips = re.findall(r'<clipPath id="([^"]+)"', report)
    assert len(clips) == len(set(clips)) >= 4


def test_without_matplotlib_the_report_says_so(
    programme: sc.Programme, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(_county_report, "find_spec", lambda _: None)
    assert "scupper[plot]" in plain(programme.report())


def test_a_report_of_nothing(job: sc.Job, county: sc.Inventory) -> None:
    assert "Nothing has a price" in sc.estimate_all([], job).report()
    text = plain(sc.estimate_all(county.select(["TC-0037"]), job).report())
    assert "priced 0 unpriced 1" in text
    assert "culvert" in text


def test_hostile_names_are_escaped(hostile_records: Path, job: sc.Job) -> None:
    inventory = sc.read_inventory(hostile_records)
    one = sc.estimate(inventory["TC-0001"], job.replace(name=HOSTILE))
    report = sc.estimate_all(inventory, job.replace(name=HOSTILE)).report()
    for html in (one.page(), one.work_card(), report):
        assert "<script" not in html
        assert "&lt;script&gt;alert(1)&lt;/script&gt;" in html
    assert "<td>&#39;=cmd()</td>" in report
    assert not re.search(r"<td[^>]*>\s*[=+@-]", report)


def test_a_figure_has_the_digits_of_an_estimate() -> None:
    numbers = {1658.18: "1,658", 99.96: "100", 51.61: "51.6", 0.996: "1.0", 0.1266: "0.13"}
    assert {n: _paper.short(n) for n in numbers} == numbers
    assert [_paper.measured(n, "each") for n in (4.0, 1234.0, 5.19)] == ["4", "1,234", "5.2"]
    assert _paper.nice("ft2/h") == "ft²/h"


@pytest.mark.parametrize("command", ["page", "card", "report"])
def test_from_the_command_line(command: str, tmp_path: Path) -> None:
    which = [] if command == "report" else ["TC-0001"]
    out = tmp_path / "out.html"
    arguments = [command, str(sc.demo_records()), *which, "--units", "metric", "--out"]
    assert main([*arguments, str(out)]) == 0
    assert out.read_text(encoding="utf-8").count('<html lang="en">') == 1
    assert [file.name for file in tmp_path.iterdir()] == ["out.html"]
    assert main([*arguments, str(tmp_path / "no" / "out.html")]) == 2
    assert not (tmp_path / "no").exists()


def test_saved_files_are_the_text(
    estimate: sc.Estimate, programme: sc.Programme, pages: dict[str, str], tmp_path: Path
) -> None:
    estimate.save_page(tmp_path / "page.html")
    estimate.save_work_card(tmp_path / "card.html")
    programme.save_report(tmp_path / "report.html")
    for name, html in pages.items():
        assert (tmp_path / f"{name}.html").read_text(encoding="utf-8") == html
