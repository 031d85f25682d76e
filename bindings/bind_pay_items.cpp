// Pay items of a contract.
#include "convert.hpp"
#include "decimals.hpp"
#include "docstrings.hpp"
#include "progress.hpp"
#include "scupper/bid.hpp"
#include "scupper/error.hpp"
#include "scupper/inventory.hpp"
#include "scupper/json.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using bid::ItemScheme;
using bid::PayItems;
using bid::PricedItem;
using estimate::PricedLine;

bid::Contract contract_of(const std::string& word) {
    const int at = index_of(bid::contract_names, word);
    if (at < 0) {
        throw UnknownNameError(
            {"bid.contract", "contract", "\"" + word + "\"", "by_quantity or by_structure"});
    }
    return static_cast<bid::Contract>(at);
}

PayItems make(const estimate::Programme& programme, const inventory::Inventory& inv,
              const ItemScheme& list, const std::string& contract, const bid::Options& options,
              int price_decimals, std::size_t draws, std::uint64_t seed, unsigned threads) {
    const bid::ItemSettings settings{.contract = contract_of(contract),
                                     .options = options,
                                     .price_decimals = price_decimals,
                                     .draws = {.seed = seed, .draws = draws},
                                     .threads = threads};
    const py::gil_scoped_release free;
    return bid::pay_items(programme, inv.structures, list, settings);
}

Columns item_columns(const PayItems& p) {
    const auto& rows = p.items;
    Columns d;
    d["code"] = texts(rows, [](const PricedItem& i) { return i.item.code; });
    d["group"] = texts(rows, [](const PricedItem& i) { return i.item.group; });
    d["description"] = texts(rows, [](const PricedItem& i) { return i.item.description; });
    d["unit"] = texts(rows, [](const PricedItem& i) { return i.item.unit; });
    d["kind"] = texts(rows, [](const PricedItem& i) {
        return bid::item_kind_names[static_cast<std::size_t>(i.item.kind)];
    });
    d["quantity"] = decimals(rows, [](const PricedItem& i) { return i.item.quantity; });
    d["low"] = decimals(rows, [](const PricedItem& i) { return i.item.low; });
    d["high"] = decimals(rows, [](const PricedItem& i) { return i.item.high; });
    d["unit_price"] = decimals(rows, [](const PricedItem& i) { return i.unit_price; });
    d["extension"] = decimals(rows, [](const PricedItem& i) { return i.extension; });
    d["amount"] = decimals(rows, [](const PricedItem& i) { return i.amount; });
    d["difference"] = decimals(rows, [](const PricedItem& i) { return i.difference; });
    d["direct"] = numbers<double>(rows, [](const PricedItem& i) { return i.direct; });
    d["spread"] = numbers<double>(rows, [](const PricedItem& i) { return i.spread; });
    return d;
}

Columns line_columns(const std::vector<PricedLine>& lines) {
    Columns d;
    d["component"] = texts(lines, [](const PricedLine& l) { return l.component; });
    d["operation"] = texts(lines, [](const PricedLine& l) { return l.operation; });
    d["resource"] = texts(lines, [](const PricedLine& l) { return l.resource; });
    d["amount"] = numbers<double>(lines, [](const PricedLine& l) { return l.amount; });
    return d;
}

/// Draws by items.
NumberArray draws_of(const PayItems& items, const inventory::Inventory& inv,
                     const simulate::Simulation& simulation, unsigned threads,
                     const py::object& progress) {
    bid::QuantityDraws drawn;
    {
        const py::gil_scoped_release free;
        drawn = bid::item_draws(items, inv.structures, simulation, threads, watcher(progress));
    }
    const std::vector<py::ssize_t> shape{static_cast<py::ssize_t>(drawn.draws()),
                                         static_cast<py::ssize_t>(drawn.items)};
    return hand_over(std::move(drawn.values), shape);
}

const PricedItem& item_at(const PayItems& p, std::size_t at) {
    return p.items.at(at);
}

} // namespace

void bind_pay_items(py::module_& m) {
    using py::arg;
    py::class_<ItemScheme>(m, "ItemList", doc("bid::ItemScheme"))
        .def_readonly("name", &ItemScheme::name, doc("bid::ItemScheme::name"))
        .def_readonly("note", &ItemScheme::note, doc("bid::ItemScheme::note"))
        .def_property_readonly(
            "choices",
            [](const ItemScheme& s) {
                std::vector<std::pair<std::string, std::vector<std::string>>> list;
                for (const bid::Choice& c : s.choices) {
                    list.emplace_back(c.name, c.options);
                }
                return list;
            },
            doc("bid::ItemScheme::choices"))
        .def_static("read", &json::read_item_list, doc("json::read_item_list"), arg("text"),
                    arg("name"))
        .def_static("shipped", &json::shipped_item_list, doc("json::shipped_item_list"));
    py::class_<PayItems>(m, "PayItems", doc("bid::PayItems"))
        .def("table", &item_columns, "Columns of the items; exact decimals as text.")
        .def(
            "lines",
            [](const PayItems& p, std::size_t at) { return line_columns(item_at(p, at).lines); },
            doc("bid::PricedItem::lines"), arg("item"))
        .def(
            "quantities",
            [](const PayItems& p, std::size_t at) {
                return numbers<double>(item_at(p, at).quantities, [](double q) { return q; });
            },
            doc("bid::PricedItem::quantities"), arg("item"))
        .def("draws", &draws_of, doc("bid::item_draws"), arg("inventory"), arg("simulation"),
             arg("threads"), arg("progress").none(true))
        .def(
            "spread", [](const PayItems& p) { return line_columns(p.spread); },
            doc("bid::PayItems::spread"))
        .def_readonly("unused", &PayItems::unused, doc("bid::PayItems::unused"))
        .def_readonly("rounding", &PayItems::rounding, doc("bid::PayItems::rounding"))
        .def_property_readonly(
            "currency", [](const PayItems& p) { return std::string(p.currency.code()); },
            doc("bid::PayItems::currency"))
        .def_property_readonly(
            "estimated", [](const PayItems& p) { return to_text(p.estimated); },
            doc("bid::PayItems::estimated"))
        .def_property_readonly(
            "total", [](const PayItems& p) { return to_text(p.total); },
            doc("bid::PayItems::total"))
        .def_property_readonly(
            "residue", [](const PayItems& p) { return to_text(p.residue); },
            doc("bid::PayItems::residue"));
    m.def("pay_items", &make, doc("bid::pay_items"), arg("programme"), arg("inventory"),
          arg("items"), arg("contract"), arg("options"), arg("price_decimals"), arg("draws"),
          arg("seed"), arg("threads"));
    m.def(
        "pay_units",
        [] {
            std::vector<std::pair<std::string_view, std::string_view>> list;
            for (const bid::PayUnit& u : bid::pay_units) {
                list.emplace_back(u.code, u.name);
            }
            return list;
        },
        "Codes of the units that items are paid by, and what each is.");
}

} // namespace scupper::python
