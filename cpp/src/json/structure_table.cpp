#include "cells.hpp"
#include "csv.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate.hpp"
#include "scupper/json/structures.hpp"
#include "structure_document.hpp"
#include "structure_fields.hpp"
#include "structure_list.hpp"
#include "table_cells.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace scupper::json {

namespace {

using detail::CellReader;
using detail::field_named;
using detail::record_fields;
using detail::SheetColumn;
using detail::table_name;
using detail::TableField;
using detail::ValueContext;

/// The columns of a table, looked up.
class Table {
  public:
    Table(std::string_view name, const std::vector<std::string>& headers)
        : name_(name), layout_(detail::measurable()), of_field_(record_fields().size()),
          list_(name) {
        for (const std::string& header : headers) {
            columns_.push_back(look_up(header));
        }
        if (!of_field_[field_at("id")]) {
            throw FileError({"structures.header", name_ + ":1", "no column structure_id",
                             "a column structure_id"});
        }
    }

    void read(const StructureRow& row) {
        Structure s;
        s.line = row.line;
        if (row.cells.size() != columns_.size()) {
            list_.reject(s,
                         std::to_string(row.cells.size()) + " cells, " +
                             std::to_string(columns_.size()) + " in the header",
                         row.cells.size() < columns_.size() ? "fewer cells than the header"
                                                            : "more cells than the header");
            return;
        }
        read_names(row, s);
        if (s.id.empty()) {
            list_.reject(s, "", "the structure number is blank");
        } else if (!of_state(row).empty() && s.state.empty()) {
            list_.reject(s, of_state(row), "the state code is not a state's number");
        } else {
            read_cells(row, s);
            list_.add(std::move(s));
        }
    }

    inventory::Inventory take() { return list_.take(); }

  private:
    /// A column: a field of the record, or an input that is measured.
    struct Column {
        SheetColumn sheet;
        bool measured = false;
    };

    static std::size_t field_at(std::string_view key) {
        const auto& fields = record_fields();
        const auto found = std::find_if(fields.begin(), fields.end(),
                                        [&](const TableField& f) { return f.key == key; });
        return static_cast<std::size_t>(found - fields.begin());
    }

    Column look_up(const std::string& header) {
        const std::string where = name_ + ":1: column " + header;
        detail::HeaderParts parts;
        const std::size_t field = field_named(header, parts);
        if (field == detail::no_field) {
            const LayoutField& input =
                layout_.fields()[layout_.at(estimate::full_key(parts.key), where)];
            return {{header, input, detail::unit_of(parts, input, where)}, true};
        }
        if (of_field_[field]) {
            throw FileError({"structures.header", where, "a second column of " + parts.key,
                             "each column once"});
        }
        of_field_[field] = columns_.size();
        const Dimension dimension = record_fields()[field].dimension.value_or(dim::none);
        const LayoutField as_field{parts.key, parts.key, dimension, 0.0, 0.0};
        return {{header, as_field, detail::unit_of(parts, as_field, where)}, false};
    }

    const std::string* cell(const StructureRow& row, std::size_t field) const {
        const std::optional<std::size_t> column = of_field_[field];
        return column ? &row.cells[*column] : nullptr;
    }

    std::string of_state(const StructureRow& row) const {
        const std::string* text = cell(row, field_at("state"));
        return text == nullptr ? std::string{} : *text;
    }

    void read_names(const StructureRow& row, Structure& s) const {
        s.id = *cell(row, field_at("id"));
        std::string state = of_state(row);
        const bool digits =
            state.size() <= 2 && state.find_first_not_of("0123456789") == std::string::npos;
        if (digits && !state.empty()) { // a dropped zero is put back
            state.insert(0, 2 - state.size(), '0');
            s.state = state == "00" ? std::string{} : state;
        }
    }

    void read_cells(const StructureRow& row, Structure& s);

    std::string name_;
    Layout layout_;
    std::vector<Column> columns_;
    std::vector<std::optional<std::size_t>> of_field_; ///< column of each field of a record
    detail::StructureList list_;
};

/// Reads cells into a record; one that cannot be used is a doubt.
void Table::read_cells(const StructureRow& row, Structure& s) {
    const auto guarded = [&](const SheetColumn& column, const std::string& cell, auto&& read) {
        try {
            read();
        } catch (const InputError& e) {
            list_.doubt(s, column.header, cell, "cannot be read; right would be: " + e.allowed());
        }
    };
    std::size_t at = 0;
    detail::fields::for_each_field(s, [&](const char* key, auto& value, auto&&...) {
        const std::string* text = cell(row, at);
        const std::size_t field = at++;
        const std::string_view name = key;
        if (text != nullptr && !text->empty() && name != "id" && name != "state") {
            const std::size_t place = *of_field_[field];
            const SheetColumn& column = columns_[place].sheet;
            guarded(column, *text, [&] { CellReader(column, *text)(value); });
        }
    });
    s.number = s.number.empty() ? s.id : s.number;
    const ValueContext context{.layout = &layout_, .currency = {}, .origin = {}};
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        const SheetColumn& column = columns_[i].sheet;
        const std::string& text = row.cells[i];
        if (columns_[i].measured && !text.empty()) {
            guarded(column, text, [&] {
                const double si = detail::read_cell(text, column, context, column.header);
                detail::check_cell(si, text, column, column.header);
                s.given.push_back({column.field.key, certain(si, Basis::measured)});
            });
        }
    }
}

/// The unit of a dimension as headers have it; nothing where a plain number is due.
std::string in_brackets(const Dimension& dimension, UnitSystem units) {
    const bool plain = detail::takes_plain_number(dimension);
    return plain ? "" : " [" + display_unit(dimension, units).name + "]";
}

} // namespace

inventory::Inventory read_structure_table(std::string_view name,
                                          const std::vector<std::string>& headers,
                                          const std::vector<StructureRow>& rows) {
    Table table(name, headers);
    for (const StructureRow& row : rows) {
        table.read(row);
    }
    return table.take();
}

inventory::Inventory read_structure_csv(std::string_view text, std::string_view name) {
    detail::CsvLines lines(text, name);
    std::vector<std::string> header;
    do {
        if (!lines.next(header)) {
            throw FileError({"structures.header", std::string(name), "an empty file",
                             "a header row and structures"});
        }
    } while (detail::all_empty(header));
    Table table(name, header);
    StructureRow row;
    while (lines.next(row.cells)) {
        row.line = lines.line();
        if (!detail::all_empty(row.cells)) {
            table.read(row);
        }
    }
    return table.take();
}

std::vector<std::string> structure_headers(UnitSystem units) {
    static constexpr std::array<std::string_view, 3> left_out{"line", "number",
                                                              "recorded_deck_area"};
    std::vector<std::string> headers;
    for (const TableField& field : record_fields()) {
        if (std::find(left_out.begin(), left_out.end(), field.key) != left_out.end()) {
            continue;
        }
        headers.push_back(table_name(field.key) +
                          in_brackets(field.dimension.value_or(dim::none), units));
    }
    for (const std::string_view name : survey_names) {
        headers.push_back(measured_header(name, units));
    }
    return headers;
}

std::string measured_header(std::string_view key, UnitSystem units) {
    static const Layout layout = detail::measurable();
    const std::size_t at = layout.at(estimate::full_key(key), "structures");
    return std::string(key) + in_brackets(layout.fields()[at].dimension, units);
}

} // namespace scupper::json
