#include "scupper/schema/layout.hpp"

#include "scupper/error.hpp"
#include "scupper/schema/slots.hpp"

#include <algorithm>

namespace scupper {

namespace {

struct FieldShape {
    std::string_view group;
    std::string_view field;
    std::string_view label;
    Dimension dimension;
    bool per_driver;
    bool figure;
    double least;
    double greatest;
};

std::vector<FieldShape> shapes_of(Schema schema) {
    std::vector<FieldShape> shapes;
    if (schema == Schema::inputs) {
        for (const InputField& f : input_table) {
            shapes.push_back({f.group, f.field, f.label, f.dimension,
                              f.per_driver == PerDriver::yes, false, f.least, f.greatest});
        }
    } else {
        for (const FigureField& f : figure_table) {
            shapes.push_back({f.group, f.field, f.label, f.dimension,
                              f.per_driver == PerDriver::yes, true, -unbounded, unbounded});
        }
    }
    return shapes;
}

std::vector<InputGroup> groups_of(Schema schema) {
    return schema == Schema::inputs
               ? std::vector<InputGroup>(input_groups.begin(), input_groups.end())
               : std::vector<InputGroup>(figure_groups.begin(), figure_groups.end());
}

/// A rate's field is per unit of its driver; a quantity is measured in its driver's own unit.
Dimension dimension_in_row(const FieldShape& f, const LayoutRow& row) {
    if (!f.per_driver) {
        return f.dimension;
    }
    const bool is_quantity = f.dimension == dim::none;
    return is_quantity ? row.driver : f.dimension / row.driver;
}

/// "windrow pick up, time per unit"; a quantity is called by its row alone.
std::string label_in_row(const FieldShape& f, const LayoutRow& row) {
    std::string label = row.label.empty() ? row.name : row.label;
    std::replace(label.begin(), label.end(), '_', ' ');
    return f.field == "quantity" && f.figure && f.group == "takeoff"
               ? label
               : label + ", " + std::string(f.label);
}

LayoutField field_in_row(const FieldShape& f, const LayoutRow& row, bool has_rows) {
    const std::string group(f.group);
    const std::string field(f.field);
    return {.key = has_rows ? group + "[" + row.name + "]." + field : group + "." + field,
            .label = has_rows ? label_in_row(f, row) : std::string(f.label),
            .dimension = dimension_in_row(f, row),
            .least = f.least,
            .greatest = f.greatest};
}

void require_rows_allowed(const std::vector<InputGroup>& groups,
                          const std::vector<LayoutRows>& rows) {
    for (const LayoutRows& r : rows) {
        const bool known = std::any_of(groups.begin(), groups.end(), [&](const InputGroup& g) {
            return g.has_rows && g.key == r.group;
        });
        if (!known) {
            throw UnknownNameError({"schema.group", r.group, "no group of rows of this name", ""});
        }
    }
}

template <class Wanted>
std::vector<std::string> names_of(const std::vector<LayoutRows>& groups, std::string_view group,
                                  Wanted wanted) {
    std::vector<std::string> names;
    for (const LayoutRows& r : groups) {
        for (const LayoutRow& row : r.rows) {
            if (r.group == group && wanted(row)) {
                names.push_back(row.name);
            }
        }
    }
    return names;
}

} // namespace

std::vector<LayoutRow> slot_layout_rows() {
    std::vector<LayoutRow> rows;
    for (const SlotInfo& s : slot_table) {
        rows.push_back({std::string(s.key), s.dimension, std::string(s.label)});
    }
    return rows;
}

Layout::Layout(Schema schema, const std::vector<LayoutRows>& rows) : rows_(rows) {
    const std::vector<InputGroup> groups = groups_of(schema);
    require_rows_allowed(groups, rows);
    const std::vector<FieldShape> shapes = shapes_of(schema);
    for (std::size_t g = 0; g < groups.size(); ++g) {
        offset_[g] = fields_.size();
        const auto given = std::find_if(rows.begin(), rows.end(), [&](const LayoutRows& r) {
            return r.group == groups[g].key;
        });
        std::vector<LayoutRow> group_rows(groups[g].has_rows ? 0 : 1);
        if (given != rows.end()) {
            group_rows = given->rows;
        }
        for (const LayoutRow& row : group_rows) {
            for (const FieldShape& f : shapes) {
                if (f.group == groups[g].key) {
                    fields_.push_back(field_in_row(f, row, groups[g].has_rows));
                }
            }
        }
        stride_[g] = static_cast<std::size_t>(
            std::count_if(shapes.begin(), shapes.end(),
                          [&](const FieldShape& f) { return f.group == groups[g].key; }));
    }
    for (std::size_t i = 0; i < fields_.size(); ++i) {
        sorted_.emplace_back(fields_[i].key, i);
    }
    std::sort(sorted_.begin(), sorted_.end());
}

std::vector<std::string> Layout::row_names(std::string_view group) const {
    return names_of(rows_, group, [](const LayoutRow&) { return true; });
}

std::vector<std::string> Layout::rows_in_use(std::string_view group) const {
    return names_of(rows_, group, [](const LayoutRow& row) { return row.in_use; });
}

std::optional<std::size_t> Layout::find(std::string_view key) const {
    const auto place = find_full(key);
    return place || key.find('[') != key.npos ? place : find_full(with_only_row(key));
}

/// "nozzle.bore" with the row written out where one of its group is in use; else the key itself.
std::string Layout::with_only_row(std::string_view key) const {
    const std::size_t dot = key.find('.');
    const std::string_view group = key.substr(0, dot);
    const std::vector<std::string> rows = rows_in_use(group);
    if (dot == key.npos || rows.size() != 1) {
        return std::string(key);
    }
    return std::string(group) + "[" + rows.front() + "]" + std::string(key.substr(dot));
}

std::optional<std::size_t> Layout::find_full(std::string_view key) const {
    const auto it = std::lower_bound(
        sorted_.begin(), sorted_.end(), key,
        [](const auto& entry, std::string_view wanted) { return entry.first < wanted; });
    if (it == sorted_.end() || it->first != key) {
        return std::nullopt;
    }
    return it->second;
}

std::size_t Layout::at(std::string_view key, std::string_view path) const {
    if (const auto place = find(key)) {
        return *place;
    }
    const std::string written_out = with_only_row(key);
    std::vector<std::string_view> known;
    for (const auto& [name, index] : sorted_) {
        known.push_back(name);
    }
    const std::string near = nearest_name(written_out, known);
    throw UnknownNameError({"schema.key", std::string(path),
                            "unknown key \"" + std::string(key) + "\"",
                            near.empty() ? "a key of the input schema" : "\"" + near + "\"?"});
}

} // namespace scupper
