"""An estimate as a workbook (.xlsx) whose formulas are those the engine recorded.

Formulas, units and values come from the core; here they only get their places and their looks.
"""

from __future__ import annotations

from datetime import datetime
from io import BytesIO
from math import isfinite
from typing import TYPE_CHECKING, Any

import xlsxwriter
from xlsxwriter.utility import xl_range
from xlsxwriter.worksheet import Worksheet

from scupper import _core
from scupper._price_workbook import write_unit_costs
from scupper._workbook_looks import Looks, Table
from scupper._workbook_tables import write_hours, write_payments

if TYPE_CHECKING:
    from scupper.estimating import Estimate

#: The name that the workbook gives the number of checks raised.
RAISED = "checks_raised"

_HELD = (
    "Change the coloured values on the sheet Inputs; everything follows. The workbook keeps the "
    "categories it was priced with: which operations run, the closure, the shape of the structure. "
    "Where a change needs the engine itself, the totals go blank and the sheet Checks says why: "
    "price the structure again with that value."
)
_GOVERN = (
    "The usual cautions, not a safety plan: the agency's rules, local codes and licensed practice "
    "govern."
)


def workbook_bytes(estimate: Estimate) -> bytes:
    """The file's bytes: the sheets Summary, Inputs, Workings, Cost lines, Unit costs, Hours,
    Cautions, Checks, and Payments where the job's terms hold money back."""
    file = BytesIO()
    book = xlsxwriter.Workbook(
        file,
        {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False},
    )
    book.set_properties({"created": datetime.fromisoformat(estimate.stamp["date"])})
    _Writer(estimate, book).write()
    book.close()
    return file.getvalue()


class _Writer:
    """Gives every cell of the core its place, then writes sheet by sheet."""

    def __init__(self, estimate: Estimate, book: xlsxwriter.Workbook) -> None:
        core = estimate._core
        self._estimate = estimate
        self._book = book
        self._looks = Looks(book)
        self._source: Any = _core.workbook(core, _core.workbook_figures(core))
        self._cells: list[dict[str, Any]] = self._source["cells"]
        inputs = [i for i, cell in enumerate(self._cells) if cell["kind"] == "input"]
        workings = [i for i, cell in enumerate(self._cells) if cell["kind"] != "input"]
        self._inputs = {cell: row for row, cell in enumerate(inputs, Table.FIRST_ROW)}
        self._workings = {cell: row for row, cell in enumerate(workings, Table.FIRST_ROW)}

    def write(self) -> None:
        names = ["Summary", "Inputs", "Workings", "Cost lines", "Unit costs", "Hours", "Cautions",
                 "Checks"]  # fmt: skip
        payments = self._estimate.cash_flow.table
        if payments["kept"].any():
            names.insert(6, "Payments")
        sheets = {name: self._book.add_worksheet(name) for name in names}
        self._write_inputs(sheets["Inputs"])
        checks = self._write_workings(sheets["Workings"])
        checks += [(label, self._formula(f)) for label, f in self._source["checks"]]
        status = self._write_checks(sheets["Checks"], checks)
        as_priced = self._write_lines(sheets["Cost lines"])
        write_unit_costs(sheets["Unit costs"], self._looks, self._estimate.unit_costs,
                         self._estimate.currency, "blank while the total is not as priced",
                         as_priced)  # fmt: skip
        write_hours(sheets["Hours"], self._looks, self._estimate.hours_table)
        if "Payments" in sheets:
            write_payments(sheets["Payments"], self._looks, payments, self._estimate.currency)
        self._write_cautions(sheets["Cautions"])
        self._write_summary(sheets["Summary"], status)

    def _address(self, cell: int) -> str:
        """Where the SI value of a cell stands."""
        if cell in self._inputs:
            return f"Inputs!$J${self._inputs[cell] + 1}"
        return f"Workings!$B${self._workings[cell] + 1}"

    def _formula(self, parts: list[str | int]) -> str:
        return "=" + "".join(p if isinstance(p, str) else self._address(p) for p in parts)

    def _in_words(self, parts: list[str | int]) -> str:
        return "".join(p if isinstance(p, str) else f"[{self._name(p)}]" for p in parts)

    def _name(self, cell: int) -> str:
        """What a cell is called; a nameless part by its row on the sheet Workings."""
        if self._cells[cell]["kind"] == "part":
            return f"row {self._workings[cell] + 1}"
        return str(self._cells[cell]["label"])

    def _unless_raised(self, cell: int) -> str:
        """A figure in the unit people read it in, blank while a check is raised."""
        before, after = self._cells[cell]["to_shown"]
        return f'=IF({RAISED}>0,"",{before}{self._address(cell)}{after})'

    def _write_inputs(self, sheet: Worksheet) -> None:
        columns = {"input": 48, "value": 14, "unit": 12, "low": 14, "likely": 14, "high": 14,
                   "basis": 11, "source": 48, "key": 40, "SI value": 14, "SI unit": 14}  # fmt: skip
        table = Table(sheet, self._looks, "Inputs: change the coloured values", columns)
        for index, row in self._inputs.items():
            cell = self._cells[index]
            words = (cell[k] for k in ("low", "likely", "high", "basis", "source", "key"))
            table.row(
                row,
                [cell["label"], None, _unit(cell["unit"]), *words, None, _unit(cell["si_unit"])],
            )
            sheet.write_number(row, 1, cell["number"], self._looks.input)
            before, after = cell["to_si"]
            shown = f"B{row + 1}"
            formula = f"=IF(ISNUMBER({shown}),{before}{shown}{after},NA())"
            sheet.write_formula(row, 9, formula, self._looks.plain, cell["value"])

    def _write_workings(self, sheet: Worksheet) -> list[tuple[str, str]]:
        """Every result; gives what each solve is called and the formula of its flag."""
        columns = {"result": 48, "SI value": 16, "SI unit": 12, "how": 80, "key": 44, "changed": 9}
        title = "Workings, in SI units: every result and what it follows from"
        table = Table(sheet, self._looks, title, columns)
        solves: list[tuple[str, str]] = []
        for index, row in self._workings.items():
            cell = self._cells[index]
            how = self._in_words(cell["formula"]) if cell["formula"] else cell["source"]
            label = f"  part of: {cell['label']}" if cell["kind"] == "part" else cell["label"]
            table.row(row, [label, None, _unit(cell["si_unit"]), how, cell["key"]])
            self._write_value(sheet, row, cell)
            if cell["kind"] == "solve":
                name = f"{cell['label']}, row {row + 1}: what it was solved for"
                solves.append((name, self._write_flags(sheet, row, cell)))
        return solves

    def _write_value(self, sheet: Worksheet, row: int, cell: dict[str, Any]) -> None:
        value = cell["value"]
        cached = value if isfinite(value) else "#N/A"
        if cell["kind"] == "condition":
            cached = bool(value)
        if cell["formula"]:
            sheet.write_formula(row, 1, self._formula(cell["formula"]), self._looks.plain, cached)
        elif isfinite(value):
            sheet.write_number(row, 1, value, self._looks.held)
        else:
            sheet.write_formula(row, 1, "=NA()", self._looks.held, cached)

    def _write_flags(self, sheet: Worksheet, row: int, cell: dict[str, Any]) -> str:
        """The checks of a solve side by side; gives the formula that says whether one is raised."""
        flags = [self._formula(check) for check in cell["checks"]]
        for column, flag in enumerate(flags, 5):
            sheet.write_formula(row, column, flag, self._looks.flag, 0)
        return f"=SUM(Workings!{xl_range(row, 5, row, 5 + len(flags))})"

    def _write_checks(self, sheet: Worksheet, checks: list[tuple[str, str]]) -> str:
        """Every check; gives the formula that names the first one raised."""
        table = Table(sheet, self._looks, "Checks: 1 where the structure has to be priced again",
                      {"what must hold, or be as it was priced": 80, "raised": 10})  # fmt: skip
        first = Table.FIRST_ROW + 1
        table.row(first - 1, ["all"])
        for row, (label, formula) in enumerate(checks, first):
            table.row(row, [label])
            sheet.write_formula(row, 1, formula, self._looks.flag, 0)
        total = f"=SUM(B{first + 1}:B{first + len(checks)})"
        sheet.write_formula(first - 1, 1, total, self._looks.flag, 0)
        self._book.define_name(RAISED, f"=Checks!$B${first}")
        labels, raised = (xl_range(first, column, first + len(checks) - 1, column)
                          for column in (0, 1))  # fmt: skip
        says = f'"price again: "&INDEX(Checks!{labels},MATCH(1,Checks!{raised},0))'
        return f'=IF({RAISED}>0,IFERROR({says},"price again"),"valid")'

    def _write_lines(self, sheet: Worksheet) -> str:
        """Every line and their total; gives the condition that the total is as it was priced."""
        currency = self._estimate.currency
        table = Table(sheet, self._looks, f"Cost lines, {currency}",
                      {"component": 20, "operation": 24, "resource": 24, "amount": 16})  # fmt: skip
        lines = self._source["lines"]
        for row, (*words, cell) in enumerate(lines, Table.FIRST_ROW):
            table.row(row, [str(word).replace("_", " ") for word in words])
            amount = self._cells[cell]["value"]
            sheet.write_formula(row, 3, self._unless_raised(cell), self._looks.money, amount)
        last = Table.FIRST_ROW + len(lines)
        table.row(last, ["total of the lines"])
        total = f'=IF({RAISED}>0,"",SUM(D{Table.FIRST_ROW + 1}:D{last}))'
        sheet.write_formula(last, 3, total, self._looks.total, self._estimate.cost.total)
        priced = self._estimate.cost.total
        at = f"'Cost lines'!$D${last + 1}"
        return f"IF(ISNUMBER({at}),ABS({at}-{priced!r})<0.005,FALSE)"

    def _write_cautions(self, sheet: Worksheet) -> None:
        table = Table(sheet, self._looks, _GOVERN, {"caution": 100, "source": 60})
        for row, caution in enumerate(self._estimate.cautions, Table.FIRST_ROW):
            table.row(row, [caution["text"], caution["source"]])

    def _write_summary(self, sheet: Worksheet, status: str) -> None:
        structure = self._estimate.structure
        columns = {"figure": 44, "value": 16, "unit": 14, "as priced": 16, "P5": 14, "P95": 14}
        title = f"{structure.key}, {structure.carries} over {structure.crosses}"
        table = Table(sheet, self._looks, title, columns)
        sheet.write_formula(1, 0, status, self._looks.status, "valid")
        ranges: Any = self._estimate.ranges()
        for row, (label, index, key) in enumerate(self._source["figures"], Table.FIRST_ROW):
            cell = self._cells[index]
            table.row(row, [label, None, _unit(cell["unit"])])
            sheet.write_formula(row, 1, self._unless_raised(index), self._looks.bold_figure,
                                cell["number"])  # fmt: skip
            sheet.write_number(row, 3, cell["number"], self._looks.figure)
            if key in ranges.index:
                for column, quantile in enumerate(("P5", "P95"), 4):
                    sheet.write_number(row, column, ranges.at[key, quantile], self._looks.figure)
        notes = [_HELD, *self._estimate.warnings,
                 f"priced at the {self._estimate.job.price_at} value of every input; P5 and P95 "
                 "hold as priced", ", ".join(f"{k} {v}" for k, v in self._estimate.stamp.items()),
                 _GOVERN]  # fmt: skip
        for row, note in enumerate(notes, Table.FIRST_ROW + len(self._source["figures"]) + 1):
            table.note(row, note)


def _unit(name: str) -> str:
    """Plain numbers have no unit to show."""
    return "" if name == "1" else name
