#include "table_cells.hpp"

#include "scupper/error.hpp"

#include <cmath>

namespace scupper::json::detail {

const std::vector<TableField>& record_fields() {
    static const std::vector<TableField> fields = [] {
        std::vector<TableField> all;
        const Structure any;
        fields::for_each_field(any, [&](const char* key, const auto&, const auto&... d) {
            all.push_back({key, std::nullopt});
            ((all.back().dimension = d), ...); // the one it has, or none
        });
        return all;
    }();
    return fields;
}

std::string table_name(const std::string& key) {
    return key == "id" ? "structure_id" : key;
}

std::size_t field_named(const std::string& header, HeaderParts& parts) {
    parts = split_header(header);
    const auto& fields = record_fields();
    std::size_t found = no_field;
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const std::string name = table_name(fields[i].key);
        if (parts.key == name) {
            return i;
        }
        const bool longer = found == no_field || fields[found].key.size() < fields[i].key.size();
        if (parts.unit.empty() && fields[i].dimension && header.starts_with(name + "_") && longer) {
            found = i;
        }
    }
    if (found != no_field) {
        const std::string name = table_name(fields[found].key);
        parts = {name, header.substr(name.size() + 1)};
    }
    return found;
}

void CellReader::operator()(int& value) const {
    const double n = number();
    if (!(n >= 0.0 && n <= std::numeric_limits<int>::max() && n == std::floor(n))) {
        refuse("a whole number");
    }
    value = static_cast<int>(n);
}

void CellReader::operator()(char& value) const {
    if (cell_.size() != 1) {
        refuse("one letter or digit");
    }
    value = cell_.front();
}

/// The value whose name stands there.
template <class Enum, class Name>
void CellReader::word(Enum& value, Name name_of, std::size_t count) const {
    Enum found = Enum::unknown;
    for (std::size_t i = 0; i < count && cell_ != name_of(found); ++i) {
        found = static_cast<Enum>(i);
    }
    if (cell_ != name_of(found)) {
        refuse("a word of the coding guide");
    }
    value = found;
}

void CellReader::operator()(Material& value) const {
    word(value, material_name, 10);
}

void CellReader::operator()(Design& value) const {
    word(value, design_name, 23);
}

void CellReader::operator()(Below& value) const {
    word(value, fields::below_name, 3);
}

double CellReader::number() const {
    static const Layout nothing;
    const ValueContext context{.layout = &nothing, .currency = {}, .origin = {}};
    return read_cell(cell_, column_, context, column_.header);
}

void CellReader::refuse(const std::string& allowed) const {
    throw InputError({"structures.cell", column_.header, cell_, allowed});
}

} // namespace scupper::json::detail
