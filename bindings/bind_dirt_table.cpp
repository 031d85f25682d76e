// The shipped dirt table and girder sections as columns, in a system of units.
#include "docstrings.hpp"
#include "scupper/json.hpp"
#include "scupper/takeoff.hpp"
#include "value_columns.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::Show;
using takeoff::GirderSection;

constexpr std::string_view density_key = "dirt[kind].density";
constexpr Dimension line_mass = dim::mass / dim::length;

Table density_columns(const std::string& units) {
    const Show show(units, "currency");
    const std::vector<DirtKind>& kinds = json::shipped_dirt_table().kinds;
    ValueColumns density("dirt", "density", dim::density, show),
        repose("dirt", "repose", dim::angle, show);
    for (const DirtKind& kind : kinds) {
        density.add(kind.density);
        repose.add(kind.repose);
    }
    Table table;
    table.emplace_back("material", "1", texts(kinds, [](const DirtKind& k) { return k.material; }));
    table.emplace_back("moisture", "1", texts(kinds, [](const DirtKind& k) { return k.moisture; }));
    density.put(table);
    repose.put(table);
    table.emplace_back("note", "1", texts(kinds, [](const DirtKind& k) { return k.note; }));
    return table;
}

void put_origin(const std::vector<PublishedFigure>& figures, Table& table) {
    using F = const PublishedFigure&;
    table.emplace_back("source", "1", texts(figures, [](F f) { return f.origin.source; }));
    table.emplace_back("date", "1", texts(figures, [](F f) { return f.origin.date; }));
    table.emplace_back("basis", "1", texts(figures, [](F f) { return f.basis; }));
    table.emplace_back("note", "1", texts(figures, [](F f) { return f.origin.note; }));
}

Table published_columns(const std::string& units) {
    const Show show(units, "currency");
    std::vector<std::string> material, moisture;
    std::vector<PublishedFigure> all;
    for (const DirtKind& kind : json::shipped_dirt_table().kinds) {
        material.insert(material.end(), kind.published.size(), kind.material);
        moisture.insert(moisture.end(), kind.published.size(), kind.moisture);
        all.insert(all.end(), kind.published.begin(), kind.published.end());
    }
    Table table;
    table.emplace_back("material", "1", py::cast(material));
    table.emplace_back("moisture", "1", py::cast(moisture));
    table.emplace_back("density", show.unit(dim::density, density_key).name,
                       numbers<double>(all, [&](const PublishedFigure& f) {
                           return show.number(f.value, dim::density, density_key);
                       }));
    put_origin(all, table);
    return table;
}

/// Rows of one word after the other; each row has a unit of its own.
Table build_up_columns(const std::string& units) {
    const Show show(units, "currency");
    const Job no_job;
    const Layout layout = input_layout(no_job);
    std::vector<std::string> since, unit;
    std::vector<Setting> all;
    for (const BuildUp& b : json::shipped_dirt_table().build_ups) {
        since.insert(since.end(), b.values.size(), b.since);
        all.insert(all.end(), b.values.begin(), b.values.end());
    }
    const auto dimension = [&](const Setting& s) {
        return layout.fields()[layout.at(s.key, "build_up")].dimension;
    };
    const auto shown = [&](double ThreePoint::*point) {
        return numbers<double>(all, [&](const Setting& s) {
            return show.number(s.value.guess.*point, dimension(s), s.key);
        });
    };
    Table table;
    table.emplace_back("since", "1", py::cast(since));
    table.emplace_back("key", "1", texts(all, [](const Setting& s) { return s.key; }));
    table.emplace_back("low", "1", shown(&ThreePoint::low));
    table.emplace_back("likely", "1", shown(&ThreePoint::likely));
    table.emplace_back("high", "1", shown(&ThreePoint::high));
    table.emplace_back("unit", "1", texts(all, [&](const Setting& s) {
                           return show.unit(dimension(s), s.key).name;
                       }));
    table.emplace_back("source", "1",
                       texts(all, [](const Setting& s) { return s.origin->source; }));
    table.emplace_back("date", "1", texts(all, [](const Setting& s) { return s.origin->date; }));
    table.emplace_back("note", "1", texts(all, [](const Setting& s) { return s.origin->note; }));
    return table;
}

Table street_load_columns(const std::string& units) {
    const Show show(units, "currency");
    const std::vector<StreetLoad>& loads = json::shipped_dirt_table().street_loads;
    std::vector<PublishedFigure> figures;
    for (const StreetLoad& load : loads) {
        figures.push_back(load.figure);
    }
    Table table;
    table.emplace_back("street", "1", texts(loads, [](const StreetLoad& l) { return l.street; }));
    table.emplace_back("line_mass", show.unit(line_mass).name,
                       numbers<double>(figures, [&](const PublishedFigure& f) {
                           return show.number(f.value, line_mass);
                       }));
    put_origin(figures, table);
    return table;
}

Table section_columns(const std::string& units) {
    const Show show(units, "currency");
    const std::vector<GirderSection>& sections = json::shipped_sections().sections;
    using S = const GirderSection&;
    Table table;
    const auto text = [&](const char* name, auto get) {
        table.emplace_back(name, "1", texts(sections, get));
    };
    const auto length = [&](const char* name, auto get) {
        table.emplace_back(name, show.unit(dim::length).name, numbers<double>(sections, [&](S s) {
                               return show.number(get(s).si(), dim::length);
                           }));
    };
    const auto area = [&](const char* name, auto get) {
        table.emplace_back(name, show.unit(dim::area).name, numbers<double>(sections, [&](S s) {
                               return show.number(get(s), dim::area);
                           }));
    };
    text("name", [](S s) { return s.name; });
    text("kind", [](S s) { return section_kind_names.at(static_cast<std::size_t>(s.kind)); });
    length("depth", [](S s) { return takeoff::section_depth(s.outline); });
    length("top_width", [](S s) { return s.outline.front().top; });
    length("bottom_width", [](S s) { return s.outline.back().bottom; });
    length("perimeter", [](S s) { return takeoff::section_perimeter(s.outline); });
    length("exposed_perimeter", [](S s) { return takeoff::exposed_perimeter(s.outline); });
    area("area", [](S s) { return takeoff::section_area(s.outline).si(); });
    area("printed_area", [](S s) { return s.printed ? s.printed->area.si() : absent; });
    text("printed_basis", [](S s) { return s.printed ? s.printed->basis : std::string{}; });
    text("printed_source",
         [](S s) { return s.printed ? s.printed->origin.source : std::string{}; });
    text("source", [](S s) { return s.origin.source; });
    text("date", [](S s) { return s.origin.date; });
    return table;
}

} // namespace

void bind_dirt_table(py::module_& m) {
    m.def("dirt_densities", &density_columns, doc("DirtKind"), py::arg("units"));
    m.def("published_densities", &published_columns, doc("PublishedFigure"), py::arg("units"));
    m.def("build_ups", &build_up_columns, doc("BuildUp"), py::arg("units"));
    m.def("street_loads", &street_load_columns, doc("StreetLoad"), py::arg("units"));
    m.def("girder_sections", &section_columns, doc("takeoff::GirderSection"), py::arg("units"));
}

} // namespace scupper::python
