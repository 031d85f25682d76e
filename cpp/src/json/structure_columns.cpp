#include "scupper/json/structure_columns.hpp"

#include "scupper/error.hpp"
#include "scupper/inventory.hpp"
#include "structure_document.hpp"
#include "table_cells.hpp"

#include <algorithm>
#include <limits>
#include <optional>
#include <utility>

namespace scupper::json {

namespace {

using detail::fields::below_name;
using detail::fields::for_each_field;
using Numbers = std::vector<double>;
using Codes = std::vector<std::int64_t>;
using Texts = std::vector<std::string>;

const std::string given_name = "given";

/// What a table calls a field, with its SI unit.
std::string column_name(const detail::TableField& field) {
    const Dimension d = field.dimension.value_or(dim::none);
    const char* unit = d == dim::length  ? "_m"
                       : d == dim::area  ? "_m2"
                       : d == dim::angle ? "_rad"
                                         : "";
    return detail::table_name(field.key) + unit;
}

/// What was measured, in its order and by the names it was given: a list of [name, document].
std::string given_list(const std::vector<GivenValue>& values) {
    detail::Json list = detail::Json::array();
    for (const GivenValue& value : values) {
        list.push_back(detail::Json::array({value.key, detail::given_document({value})}));
    }
    return list.dump();
}

std::vector<GivenValue> read_given_list(const std::string& text) {
    std::vector<GivenValue> values;
    for (const detail::Json& pair : detail::parse(text, given_name)) {
        const bool is_pair = pair.is_array() && pair.size() == 2 && pair[0].is_string();
        auto one = is_pair ? detail::read_given(pair[1], given_name) : std::vector<GivenValue>{};
        if (one.size() != 1) {
            throw InputError({"structures.cell", given_name, pair.dump(), "[name, {key: value}]"});
        }
        one.front().key = pair[0].get<std::string>();
        values.push_back(std::move(one.front()));
    }
    return values;
}

/// Puts the fields of a record behind those before it.
class Put {
  public:
    explicit Put(std::vector<StructureColumn>& columns) : columns_(columns) {}

    void operator()(const char*, const std::string& value) { put<Texts>(value); }
    void operator()(const char*, std::uint64_t value) {
        put<Codes>(static_cast<std::int64_t>(value));
    }
    void operator()(const char*, double value, const Dimension&) { put<Numbers>(value); }
    template <class Q>
    void operator()(const char*, const Q& value, const Dimension&) {
        put<Numbers>(value.si());
    }
    void operator()(const char*, int value) { put<Codes>(value); }
    void operator()(const char*, char value) {
        put<Texts>(value == ' ' ? std::string{} : std::string(1, value));
    }
    void operator()(const char*, Material value) { put<Texts>(std::string(material_name(value))); }
    void operator()(const char*, Design value) { put<Texts>(std::string(design_name(value))); }
    void operator()(const char*, Below value) { put<Texts>(std::string(below_name(value))); }

    void given(const std::vector<GivenValue>& values) {
        put<Texts>(values.empty() ? std::string{} : given_list(values));
    }

  private:
    /// The first record makes the column what it is.
    template <class Values>
    void put(typename Values::value_type value) {
        auto& values = columns_[at_++].values;
        if (!std::holds_alternative<Values>(values)) {
            values = Values{};
        }
        std::get<Values>(values).push_back(std::move(value));
    }

    std::vector<StructureColumn>& columns_;
    std::size_t at_ = 0;
};

void put_record(const Structure& s, std::vector<StructureColumn>& columns) {
    Put put(columns);
    for_each_field(s, [&](auto&&... member) { put(member...); });
    put.given(s.given);
}

[[noreturn]] void refuse(const std::string& column, const std::string& found,
                         const std::string& allowed) {
    throw InputError({"structures.column", column, found, allowed});
}

/// Columns looked up by field.
class Lookup {
  public:
    explicit Lookup(std::span<const StructureColumn> columns) {
        for (const detail::TableField& field : detail::record_fields()) {
            const detail::SheetColumn sheet{column_name(field), {}, std::nullopt};
            fields_.push_back({sheet, nullptr});
        }
        fields_.push_back({{given_name, {}, std::nullopt}, nullptr});
        for (const StructureColumn& column : columns) {
            Field& field = named(column.name);
            if (field.column != nullptr) {
                refuse(column.name, "a second column", "each column once");
            }
            field.column = &column;
        }
        const StructureColumn* ids = named("structure_id").column;
        if (ids == nullptr) {
            refuse("structure_id", "no column", "a column structure_id");
        }
        rows_ = length(*ids);
        for (const StructureColumn& column : columns) {
            if (length(column) != rows_) {
                refuse(column.name, std::to_string(length(column)) + " values",
                       std::to_string(rows_) + ", as of structure_id");
            }
        }
    }

    std::size_t rows() const { return rows_; }
    const detail::SheetColumn& sheet(std::size_t field) const { return fields_[field].sheet; }

    /// The value of a field; null where its column is left out.
    template <class Values>
    const typename Values::value_type* find(std::size_t field, std::size_t row) const {
        const StructureColumn* column = fields_[field].column;
        if (column == nullptr) {
            return nullptr;
        }
        const auto* values = std::get_if<Values>(&column->values);
        if (values == nullptr) {
            refuse(column->name, "values of another kind", "as structure_columns gives them");
        }
        return &(*values)[row];
    }

  private:
    struct Field {
        detail::SheetColumn sheet;
        const StructureColumn* column;
    };

    Field& named(const std::string& name) {
        const auto found = std::find_if(fields_.begin(), fields_.end(),
                                        [&](const Field& f) { return f.sheet.header == name; });
        if (found == fields_.end()) {
            throw UnknownNameError({"structures.column", "columns", "\"" + name + "\"",
                                    "fields of a record with their SI unit, as length_m"});
        }
        return *found;
    }
    static std::size_t length(const StructureColumn& column) {
        return std::visit([](const auto& values) { return values.size(); }, column.values);
    }

    std::vector<Field> fields_;
    std::size_t rows_ = 0;
};

/// Takes a record out of its row.
class Take {
  public:
    Take(const Lookup& columns, std::size_t row) : columns_(columns), row_(row) {}

    void operator()(const char*, std::string& value) {
        if (const auto* found = next<Texts>()) {
            value = *found;
        }
    }
    void operator()(const char*, std::uint64_t& value) {
        if (const auto* found = next<Codes>()) {
            value = static_cast<std::uint64_t>(std::max<std::int64_t>(*found, 0));
        }
    }
    void operator()(const char*, double& value, const Dimension&) {
        if (const auto* found = next<Numbers>()) {
            value = *found;
        }
    }
    template <class Q>
    void operator()(const char* key, Q& value, const Dimension& d) {
        double si = value.si();
        (*this)(key, si, d);
        value = Q(si);
    }
    void operator()(const char*, int& value) {
        if (const auto* found = next<Codes>()) {
            if (*found < no_code || *found > std::numeric_limits<int>::max()) {
                const std::string& header = columns_.sheet(at_ - 1).header;
                throw InputError({"structures.cell", header, std::to_string(*found),
                                  "a whole number, or -1 where it is not recorded"});
            }
            value = static_cast<int>(*found);
        }
    }
    /// A letter or a word.
    template <class Coded>
    void operator()(const char*, Coded& value) {
        const auto* found = next<Texts>();
        if (found != nullptr && !found->empty()) {
            detail::CellReader(columns_.sheet(at_ - 1), *found)(value);
        }
    }

    void given(std::vector<GivenValue>& values) {
        const auto* found = next<Texts>();
        if (found != nullptr && !found->empty()) {
            values = read_given_list(*found);
        }
    }

  private:
    template <class Values>
    const typename Values::value_type* next() {
        return columns_.find<Values>(at_++, row_);
    }

    const Lookup& columns_;
    std::size_t row_;
    std::size_t at_ = 0;
};

/// What no reader would have let through.
void check_record(const Structure& s, std::size_t row) {
    const std::string where = "row " + std::to_string(row + 1);
    detail::check_listed(s, where);
    for (const inventory::Fault& fault : inventory::faults_of(s)) {
        if (!fault.contradiction) {
            throw InputError({"structures.cell", where + " " + structure_key(s),
                              "a value that cannot be", std::string(fault.reason)});
        }
    }
}

} // namespace

std::vector<StructureColumn> structure_columns(std::span<const Structure> structures) {
    std::vector<StructureColumn> columns;
    for (const detail::TableField& field : detail::record_fields()) {
        columns.push_back({column_name(field), {}});
    }
    columns.push_back({given_name, {}});
    for (const Structure& s : structures) {
        put_record(s, columns);
    }
    if (structures.empty()) { // their kinds, without a value
        put_record({}, columns);
        for (StructureColumn& column : columns) {
            std::visit([](auto& values) { values.clear(); }, column.values);
        }
    }
    return columns;
}

std::vector<Structure> structures_of(std::span<const StructureColumn> columns) {
    const Lookup lookup(columns);
    std::vector<Structure> structures(lookup.rows());
    for (std::size_t row = 0; row < structures.size(); ++row) {
        Structure& s = structures[row];
        Take take(lookup, row);
        for_each_field(s, [&](auto&&... member) { take(member...); });
        take.given(s.given);
        check_record(s, row);
    }
    return structures;
}

} // namespace scupper::json
