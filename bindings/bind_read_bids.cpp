// Bid forms, from cells to bids.
#include "convert.hpp"
#include "decimals.hpp"
#include "docstrings.hpp"
#include "scupper/bid.hpp"
#include "scupper/json.hpp"

#include <optional>
#include <pybind11/stl.h>
#include <tuple>

namespace scupper::python {

namespace {

using bid::Bid;
using bid::BidLine;
using bid::BidSet;
using bid::Doubt;
using bid::OtherRow;
using bid::PayItem;
using bid::SheetRead;

SheetRead read(const std::string& file, const std::string& name,
               const std::vector<std::vector<std::string>>& rows, const bid::FormMapping& mapping) {
    const py::gil_scoped_release free;
    return bid::read_sheet({file, name, rows}, mapping);
}

std::pair<BidSet, std::vector<Doubt>> join(const std::vector<SheetRead>& sheets,
                                           const bid::FormMapping& mapping) {
    std::vector<Doubt> doubts;
    BidSet set = bid::joined(sheets, mapping, doubts);
    return {std::move(set), std::move(doubts)};
}

Columns doubt_columns(const std::vector<Doubt>& rows) {
    Columns d;
    d["file"] = texts(rows, [](const Doubt& r) { return r.place.file; });
    d["sheet"] = texts(rows, [](const Doubt& r) { return r.place.sheet; });
    d["line"] = numbers<int>(rows, [](const Doubt& r) { return r.place.line; });
    d["column"] = texts(rows, [](const Doubt& r) { return r.column; });
    d["text"] = texts(rows, [](const Doubt& r) { return r.text; });
    d["why"] = texts(rows, [](const Doubt& r) { return r.why; });
    d["taken"] = texts(rows, [](const Doubt& r) { return r.taken; });
    return d;
}

Columns other_columns(const SheetRead& read) {
    const auto& rows = read.others;
    Columns d;
    d["file"] = texts(rows, [](const OtherRow& r) { return r.place.file; });
    d["sheet"] = texts(rows, [](const OtherRow& r) { return r.place.sheet; });
    d["line"] = numbers<int>(rows, [](const OtherRow& r) { return r.place.line; });
    d["text"] = texts(rows, [](const OtherRow& r) { return r.text; });
    d["taken_for"] = texts(rows, [](const OtherRow& r) { return r.as; });
    return d;
}

using ColumnRow = std::tuple<std::string, std::string, std::string_view, std::string>;

/// Letter, heading, role and bidder of every column.
std::vector<ColumnRow> read_columns(const SheetRead& read) {
    std::vector<ColumnRow> rows;
    for (const bid::ReadColumn& c : read.columns) {
        rows.emplace_back(bid::column_letters(c.column), c.heading,
                          bid::role_names[static_cast<std::size_t>(c.role)], c.bidder);
    }
    return rows;
}

Columns item_columns(const std::vector<PayItem>& rows) {
    Columns d;
    d["code"] = texts(rows, [](const PayItem& i) { return i.code; });
    d["group"] = texts(rows, [](const PayItem& i) { return i.group; });
    d["description"] = texts(rows, [](const PayItem& i) { return i.description; });
    d["unit"] = texts(rows, [](const PayItem& i) { return i.unit; });
    d["kind"] = texts(rows, [](const PayItem& i) {
        return bid::item_kind_names[static_cast<std::size_t>(i.kind)];
    });
    d["quantity"] = texts(rows, [](const PayItem& i) { return to_text(i.quantity); });
    return d;
}

Columns bid_line_columns(const Bid& bid) {
    const auto& rows = bid.lines;
    Columns d;
    d["code"] = texts(rows, [](const BidLine& l) { return l.code; });
    d["quantity"] = decimals(rows, [](const BidLine& l) { return l.quantity; });
    d["unit_price"] = decimals(rows, [](const BidLine& l) { return l.unit_price; });
    d["extension"] = decimals(rows, [](const BidLine& l) { return l.extension; });
    d["words"] = texts(rows, [](const BidLine& l) { return l.words; });
    d["price_in_words"] = decimals(rows, [](const BidLine& l) { return l.price_in_words; });
    d["line"] = numbers<int>(rows, [](const BidLine& l) { return l.place.line; });
    return d;
}

void bind_bids(py::module_& m) {
    py::class_<Bid>(m, "Bid", doc("bid::Bid"))
        .def_readonly("bidder", &Bid::bidder, doc("bid::Bid::bidder"))
        .def_readonly("notes", &Bid::notes, doc("bid::Bid::notes"))
        .def_property_readonly(
            "total", [](const Bid& b) { return decimal(b.total); }, doc("bid::Bid::total"))
        .def_property_readonly(
            "days", [](const Bid& b) { return decimal(b.days); }, doc("bid::Bid::days"))
        .def("lines", &bid_line_columns, doc("bid::Bid::lines"));
    py::class_<BidSet>(m, "BidSet", doc("bid::BidSet"))
        .def_property_readonly(
            "currency", [](const BidSet& s) { return std::string(s.form.currency.code()); },
            doc("bid::ItemList::currency"))
        .def(
            "items", [](const BidSet& s) { return item_columns(s.form.items); },
            doc("bid::ItemList::items"))
        .def_readonly("bids", &BidSet::bids, doc("bid::BidSet::bids"))
        .def_readonly("engineer", &BidSet::engineer, doc("bid::BidSet::engineer"));
}

} // namespace

void bind_read_bids(py::module_& m) {
    using py::arg;
    bind_bids(m);
    py::class_<bid::FormMapping>(m, "FormMapping", doc("bid::FormMapping"))
        .def(py::init<>())
        .def_static("read", &json::read_form_mapping, doc("json::read_form_mapping"), arg("text"),
                    arg("name"));
    py::class_<Doubt>(m, "FormDoubt", doc("bid::Doubt"));
    py::class_<SheetRead>(m, "SheetRead", doc("bid::SheetRead"))
        .def_readonly("file", &SheetRead::file, doc("bid::SheetRead::file"))
        .def_readonly("sheet", &SheetRead::sheet, doc("bid::SheetRead::sheet"))
        .def_readonly("header_row", &SheetRead::header_row, doc("bid::SheetRead::header_row"))
        .def_readonly("header_rows", &SheetRead::header_rows, doc("bid::SheetRead::header_rows"))
        .def_readonly("total_row", &SheetRead::total_row, doc("bid::SheetRead::total_row"))
        .def_readonly("bids", &SheetRead::bids, doc("bid::SheetRead::bids"))
        .def_readonly("doubts", &SheetRead::doubts, doc("bid::SheetRead::doubts"))
        .def("columns", &read_columns, "Letter, heading, role and bidder of every column.")
        .def(
            "items", [](const SheetRead& s) { return item_columns(s.items); },
            doc("bid::SheetRead::items"))
        .def("others", &other_columns, doc("bid::SheetRead::others"));
    m.def("read_bid_sheet", &read, doc("bid::read_sheet"), arg("file"), arg("name"), arg("rows"),
          arg("mapping"));
    m.def("join_bid_sheets", &join, doc("bid::joined"), arg("sheets"), arg("mapping"));
    m.def("doubt_columns", &doubt_columns, "Columns of doubtful cells.", arg("doubts"));
}

} // namespace scupper::python
