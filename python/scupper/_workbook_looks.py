"""How the sheets of a workbook look: formats, headings, widths, print set-up."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from textwrap import wrap

from xlsxwriter import Workbook
from xlsxwriter.worksheet import Worksheet

_LETTER = 1  # paper size of ISO/IEC 29500-1:2016, 18.3.1.63


class Looks:
    """The formats of one workbook."""

    def __init__(self, book: Workbook) -> None:
        number = "#,##0.00"
        self.plain = book.add_format({"valign": "top"})
        self.text = book.add_format(
            {"valign": "top", "text_wrap": True, "align": "left", "indent": 1}
        )
        self.title = book.add_format({"bold": True, "font_size": 14})
        self.header = book.add_format({"bold": True, "bottom": 1, "align": "left", "indent": 1})
        self.number_header = book.add_format({"bold": True, "bottom": 1, "align": "right"})
        self.status = book.add_format({"bold": True, "italic": True})
        self.note = book.add_format({"valign": "top", "text_wrap": True, "italic": True})
        self.input = book.add_format({"valign": "top", "bg_color": "#EAF3E6", "border": 4})
        self.held = book.add_format({"valign": "top", "bg_color": "#EEEEEE"})
        self.flag = book.add_format({"valign": "top", "num_format": "0", "align": "center"})
        self.figure = book.add_format({"num_format": number})
        self.bold_figure = book.add_format({"num_format": number, "bold": True})
        self.money = book.add_format({"num_format": number, "valign": "top"})
        self.total = book.add_format({"num_format": number, "bold": True, "top": 1})


class Table:
    """A sheet with a title, a row for its state, headings that stay in view, and rows."""

    HEADER_ROW = 2
    FIRST_ROW = 3
    LINE_HEIGHT = 15.0
    NUMBERS = ("value", "SI value", "as priced", "P5", "P95", "amount", "raised", "changed")

    def __init__(
        self,
        sheet: Worksheet,
        looks: Looks,
        title: str,
        columns: Mapping[str, float],
        numbers: Sequence[str] = NUMBERS,
    ) -> None:
        self._sheet = sheet
        self._looks = looks
        self._widths = list(columns.values())
        sheet.write_string(0, 0, title, looks.title)
        for column, (name, width) in enumerate(columns.items()):
            sheet.set_column(column, column, width)
            look = looks.number_header if name in numbers else looks.header
            sheet.write_string(self.HEADER_ROW, column, name, look)
        sheet.freeze_panes(self.FIRST_ROW, 1)
        sheet.set_landscape()
        sheet.set_paper(_LETTER)
        sheet.fit_to_pages(1, 0)
        sheet.repeat_rows(0, self.HEADER_ROW)
        sheet.set_footer("&L&A&RPage &P of &N")

    def row(self, row: int, texts: Sequence[str | None]) -> None:
        """Text by column, never taken for a formula; None leaves a cell to somebody else."""
        for column, text in enumerate(texts):
            if text is not None:
                self._sheet.write_string(row, column, text, self._looks.text)
        self._make_room(row, max(map(_lines, texts, self._widths)))

    def note(self, row: int, text: str) -> None:
        """Text across all columns."""
        last = len(self._widths) - 1
        self._sheet.merge_range(row, 0, row, last, "", self._looks.note)
        self._sheet.write_string(row, 0, text, self._looks.note)
        self._make_room(row, _lines(text, sum(self._widths)))

    def _make_room(self, row: int, lines: int) -> None:
        """Not every program fits the height of a row to its text."""
        if lines > 1:
            self._sheet.set_row(row, lines * self.LINE_HEIGHT)


def _lines(text: str | None, width: float) -> int:
    """How many lines a text takes, words broken where they end."""
    return len(wrap(text or "", int(width), break_on_hyphens=False))
