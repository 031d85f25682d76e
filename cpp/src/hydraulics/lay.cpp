#include "scupper/hydraulics/lay.hpp"

#include "line_fault.hpp"
#include "require.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <unordered_set>

namespace scupper::hydraulics {
namespace {

std::string place(std::string_view path, const char* list, std::size_t i) {
    return std::string(path) + "." + list + "[" + std::to_string(i) + "]";
}

template <class Items>
std::size_t index_by_name(const Items& items, std::string_view name, std::string_view path,
                          const char* id) {
    const auto found = std::find_if(items.begin(), items.end(),
                                    [&](const auto& item) { return item.name == name; });
    if (found != items.end()) {
        return static_cast<std::size_t>(found - items.begin());
    }
    std::vector<std::string_view> known;
    for (const auto& item : items) {
        known.push_back(item.name);
    }
    const std::string near = nearest_name(name, known);
    throw UnknownNameError({id, std::string(path), "\"" + std::string(name) + "\"",
                            near.empty() ? "a name of this lay" : "\"" + near + "\"?"});
}

/// Every name once, and none that means the pump.
template <class Items>
void check_names(const Items& items, std::string_view path, const char* list) {
    std::unordered_set<std::string_view> seen{"pump"};
    for (std::size_t i = 0; i < items.size(); ++i) {
        const std::string& name = items[i].name;
        if (name.empty() || !seen.insert(name).second) {
            throw InputError({"hydraulics.name", place(path, list, i) + ".name", "\"" + name + "\"",
                              "a name of its own, not \"pump\""});
        }
    }
}

void check_index(std::size_t index, std::size_t count, const std::string& path, const char* field) {
    if (index != at_pump && index >= count) {
        detail::refuse(field, path + "." + field, static_cast<double>(index),
                       "the index of a segment, or the pump");
    }
}

void check_segment(const LaySegment& s, const std::string& path) {
    if (const auto fault = detail::fault_of(s.hose)) {
        detail::refuse(fault->name, path + "." + fault->field, fault->found, fault->allowed);
    }
    if (!std::isfinite(s.rise.si())) {
        detail::refuse("rise", path + ".rise", s.rise.si(), "a number");
    }
    if (s.working_pressure && !(s.working_pressure->si() > 0.0)) {
        detail::refuse("working_pressure", path + ".working_pressure", s.working_pressure->si(),
                       "> 0");
    }
}

void check_nozzle(const LayNozzle& n, const std::string& path) {
    const auto positive = [&](const char* field, double x) {
        if (!(x > 0.0 && std::isfinite(x))) {
            detail::refuse(field, path + "." + field, x, "> 0 and finite");
        }
    };
    positive("bore", n.tip.bore.si());
    positive("discharge_coefficient", n.tip.discharge_coefficient);
    if (!(n.wear >= 0.0 && std::isfinite(n.wear))) {
        detail::refuse("wear", path + ".wear", n.wear, ">= 0 and finite");
    }
}

/// Follows every segment to the pump or to one that was followed before; a chain that meets itself
/// runs in a ring.
void check_loops(const HoseLay& lay, std::string_view path) {
    constexpr std::size_t unseen = 0;
    std::vector<std::size_t> seen_from(lay.segments.size(), unseen); // chain, counted from 1
    for (std::size_t i = 0; i < lay.segments.size(); ++i) {
        std::size_t s = i;
        while (s != at_pump && seen_from[s] == unseen) {
            seen_from[s] = i + 1;
            s = lay.segments[s].from;
        }
        if (s != at_pump && seen_from[s] == i + 1) {
            throw InputError({"hydraulics.loop", place(path, "segments", s) + ".from",
                              "\"" + lay.segments[s].name + "\" leads back to itself",
                              "segments that start from the pump or from one that does"});
        }
    }
}

} // namespace

Length<> bore_now(const LayNozzle& nozzle) {
    const bool worn = nozzle.state == NozzleState::worn;
    return worn ? nozzle.tip.bore * (1.0 + nozzle.wear) : nozzle.tip.bore;
}

std::size_t segment_index(const HoseLay& lay, std::string_view name, std::string_view path) {
    return name == "pump" ? at_pump : index_by_name(lay.segments, name, path, "hydraulics.segment");
}

std::size_t nozzle_index(const HoseLay& lay, std::string_view name, std::string_view path) {
    return index_by_name(lay.nozzles, name, path, "hydraulics.nozzle");
}

void check_lay(const HoseLay& lay, std::string_view path) {
    const double kelvin = lay.temperature.kelvin();
    if (!(kelvin >= 273.15 && kelvin <= 323.15)) {
        detail::refuse("temperature", std::string(path) + ".water", kelvin,
                       "273.15 to 323.15 K (0 to 50 degC)");
    }
    if (lay.tank && !(lay.tank->si() > 0.0)) {
        detail::refuse("tank", std::string(path) + ".tank", lay.tank->si(), "> 0");
    }
    check_pump(lay.pump, lay.temperature, std::string(path) + ".pump");
    check_names(lay.segments, path, "segments");
    check_names(lay.nozzles, path, "nozzles");
    for (std::size_t i = 0; i < lay.segments.size(); ++i) {
        const std::string where = place(path, "segments", i);
        check_index(lay.segments[i].from, lay.segments.size(), where, "from");
        check_segment(lay.segments[i], where);
    }
    for (std::size_t i = 0; i < lay.nozzles.size(); ++i) {
        const std::string where = place(path, "nozzles", i);
        check_index(lay.nozzles[i].at, lay.segments.size(), where, "at");
        check_nozzle(lay.nozzles[i], where);
    }
    check_loops(lay, path);
}

} // namespace scupper::hydraulics
