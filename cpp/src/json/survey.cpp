#include "cells.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate.hpp"
#include "scupper/json/forms.hpp"
#include "scupper/json/section_library.hpp"
#include "values.hpp"

#include <set>

namespace scupper::json {

namespace {

using detail::SheetColumn;
using detail::ValueContext;
using estimate::full_key;

const LayoutField girder_section{std::string(girder_section_key), "standard section of the girders",
                                 dim::none, 0.0, 0.0};

/// The field of a key; a section is none of the layout's, its cells are names.
const LayoutField& field_of(std::string_view key, const Layout& layout, const std::string& path) {
    return key == girder_section_key ? girder_section
                                     : layout.fields()[layout.at(full_key(key), path)];
}

std::vector<SheetColumn> read_headers(const std::vector<std::string>& headers, const Layout& layout,
                                      const std::string& place) {
    std::vector<SheetColumn> columns;
    std::set<std::string> seen;
    for (const std::string& header : headers) {
        const std::string where = place + ": column " + header;
        const detail::HeaderParts parts = detail::split_header(header);
        const LayoutField& field = field_of(parts.key, layout, where);
        if (!seen.insert(field.key).second) {
            throw InputError({"survey.twice", where, "a second column of " + field.key,
                              "one column for each key"});
        }
        columns.push_back({header, field, detail::unit_of(parts, field, where)});
    }
    return columns;
}

std::vector<Setting> read_row(const SurveyRow& row, const std::vector<SheetColumn>& columns,
                              const ValueContext& context) {
    if (row.cells.size() != columns.size()) {
        throw InputError({"survey.cells", row.place,
                          std::to_string(row.cells.size()) + " cells to fill in",
                          std::to_string(columns.size()) + ", one for each column"});
    }
    std::vector<Setting> settings, sections;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const std::string& cell = row.cells[i];
        if (cell.empty() || cell == not_asked) {
            continue;
        }
        const std::string where = row.place + ": column " + columns[i].header;
        if (columns[i].field.key == girder_section_key) {
            sections = section_settings(cell, row.place, where);
            continue;
        }
        const double si = detail::read_cell(cell, columns[i], context, where);
        detail::check_cell(si, cell, columns[i], where);
        settings.push_back(make_setting(columns[i].field.key, certain(si, Basis::measured),
                                        {.source = row.place, .date = {}, .note = {}}));
    }
    // What was measured stands before what the section says.
    for (Setting& s : settings) {
        put_setting(sections, std::move(s));
    }
    return sections;
}

const Setting* find_setting(const std::vector<Setting>& settings, std::string_view slot_name) {
    for (const Setting& s : settings) {
        if (s.key == full_key(slot_name)) {
            return &s;
        }
    }
    return nullptr;
}

/// Free, clogged and frozen are all the drains there are.
void check_drains(const std::vector<Setting>& settings, const std::string& place) {
    const Setting* all = find_setting(settings, "drain_count");
    double sum = 0.0;
    int told = 0;
    for (const char* name : {"drain_free_count", "drain_clogged_count", "drain_frozen_count"}) {
        const Setting* part = find_setting(settings, name);
        sum += part != nullptr ? part->value.guess.likely : 0.0;
        told += part != nullptr ? 1 : 0;
    }
    const double count = all != nullptr ? all->value.guess.likely : sum;
    if (sum > count || (told == 3 && sum < count)) {
        throw InputError({"survey.drains", place + ": column drain_count",
                          format_number(count, 15) + " drains, but free, clogged and frozen make " +
                              format_number(sum, 15),
                          "free, clogged and frozen drains that make up all drains"});
    }
}

SurveyColumn column_of(std::string_view name, const Layout& layout, const estimate::Show& show) {
    const LayoutField& field = field_of(name, layout, "survey");
    const std::string unit = show.unit(field.dimension, field.key).name;
    const bool plain = detail::takes_plain_number(field.dimension);
    return {field.key, std::string(name) + (plain ? "" : " [" + unit + "]"), field.label};
}

/// "quantity[drain_count].given" as people write it: "drain_count".
std::string short_name(const std::string& key) {
    for (const SlotInfo& s : slot_table) {
        if (key == full_key(s.key)) {
            return std::string(s.key);
        }
    }
    return key;
}

} // namespace

std::vector<SurveyColumn> survey_columns(const Job& job) {
    const Layout layout = input_layout(job);
    const estimate::Show show(job);
    std::vector<SurveyColumn> columns;
    for (const std::string_view name : survey_names) {
        columns.push_back(column_of(name, layout, show));
    }
    return columns;
}

SurveyColumn survey_column(const Job& job, const std::string& key) {
    return column_of(short_name(key), input_layout(job), estimate::Show(job));
}

Job with_survey(const Job& job, const std::string& place, const std::vector<std::string>& headers,
                const std::vector<SurveyRow>& rows) {
    const Layout layout = input_layout(job);
    const std::vector<SheetColumn> columns = read_headers(headers, layout, place);
    const ValueContext context{.layout = &layout, .currency = job.currency, .origin = {}};
    Job changed = job;
    std::set<std::string> seen;
    for (const SurveyRow& row : rows) {
        if (!seen.insert(row.structure).second) {
            throw InputError({"survey.twice", row.place,
                              "a second row of structure " + row.structure,
                              "one row for each structure"});
        }
        const std::vector<Setting> settings = read_row(row, columns, context);
        check_drains(settings, row.place);
        for (const Setting& s : settings) {
            put_setting(changed.overrides[row.structure], s);
        }
    }
    return changed;
}

} // namespace scupper::json
