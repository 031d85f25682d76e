#include "scupper/json/structures.hpp"

#include "scupper/error.hpp"
#include "scupper/estimate.hpp"
#include "structure_document.hpp"
#include "structure_list.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <fstream>
#include <iterator>

namespace scupper::json {

namespace {

using detail::Json;

constexpr std::array<std::string_view, 2> document_keys{"scupper_structures", "structures"};

void check_given(const std::vector<GivenValue>& given, const std::string& path) {
    if (given.empty()) {
        return;
    }
    const Layout layout = detail::measurable();
    for (const GivenValue& value : given) {
        const std::string where = path + ".given." + value.key;
        const LayoutField& field = layout.fields()[layout.at(estimate::full_key(value.key), where)];
        const ThreePoint& guess = value.value.guess;
        if (!(guess.low >= field.least && guess.high <= field.greatest)) {
            throw InputError({"structures.bounds", where, detail::digits(guess.likely),
                              detail::digits(field.least) + " to " +
                                  detail::digits(field.greatest) + " in SI units"});
        }
    }
}

/// A record of a list, numbered by its place from 1 where it has no line.
Structure read_one(const Json& doc, std::size_t place, const std::string& path) {
    Structure s = detail::read_structure_document(doc, path);
    detail::check_listed(s, path);
    s.number = s.number.empty() ? s.id : s.number;
    s.line = s.line == 0 ? place : s.line;
    return s;
}

} // namespace

void detail::check_listed(const Structure& s, const std::string& path) {
    if (s.id.empty()) {
        throw InputError({"json.missing", path + ".id", "nothing", "the structure's number"});
    }
    const bool is_state =
        s.state.size() == 2 &&
        std::all_of(s.state.begin(), s.state.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (!s.state.empty() && !is_state) {
        throw InputError({"structures.state", path + ".state", "\"" + s.state + "\"",
                          "two digits of a state, or nothing"});
    }
    check_given(s.given, path);
}

inventory::Inventory read_structures(std::string_view text, std::string_view name) {
    const std::string path(name);
    const Json doc = detail::parse(text, name);
    detail::require_known_keys(doc, document_keys, path);
    detail::require_version(doc, "scupper_structures", path);
    if (!doc.contains("structures") || !doc["structures"].is_array()) {
        throw InputError({"json.type", path + ".structures",
                          doc.contains("structures") ? doc["structures"].dump() : "nothing",
                          "a list of structures"});
    }
    detail::StructureList list(name);
    const Json& all = doc["structures"];
    for (std::size_t i = 0; i < all.size(); ++i) {
        list.add(read_one(all[i], i + 1, path + ".structures[" + std::to_string(i) + "]"));
    }
    return list.take();
}

std::string write_structures(std::span<const Structure> structures) {
    Json list = Json::array();
    for (const Structure& s : structures) {
        list.push_back(detail::structure_document(s));
    }
    return detail::utf8_dump({{"scupper_structures", 1}, {"structures", std::move(list)}},
                             "structures");
}

std::string structures_form() {
    Json structure = detail::structure_document({});
    for (auto& [key, value] : structure.items()) {
        value = nullptr;
    }
    structure["given"] = Json::object();
    for (const std::string_view key : survey_names) {
        structure["given"][std::string(key)] = nullptr;
    }
    for (const char* key : {"id", "state"}) {
        structure[key] = "";
    }
    return Json{{"scupper_structures", 1}, {"structures", Json::array({structure})}}.dump(2);
}

namespace {

/// Whether a text holds records of the national specification of 2022 rather than a list of ours.
bool is_national(std::string_view head) {
    return head.find("\"scupper_structures\"") == std::string_view::npos &&
           (head.find("\"BID01\"") != std::string_view::npos ||
            head.find("\"BL01\"") != std::string_view::npos);
}

} // namespace

inventory::Inventory read_any_inventory(const std::filesystem::path& path,
                                        const inventory::Progress& progress) {
    std::ifstream in(path, std::ios::binary);
    std::string head(std::size_t{1} << 16U, '\0');
    in.read(head.data(), static_cast<std::streamsize>(head.size()));
    head.resize(static_cast<std::size_t>(in.gcount()));
    const std::size_t first = head.find_first_not_of("\xEF\xBB\xBF \t\r\n");
    const char sign = first == std::string::npos ? ' ' : head[first];
    const bool national = sign == '[' || (sign == '{' && is_national(head));
    const bool document = sign == '{' && !national;
    const std::string top = head.substr(0, head.find('\n'));
    if (national || (!document && top.find("structure_id") == std::string::npos)) {
        return inventory::read_inventory(path, progress);
    }
    in.clear();
    const std::string text =
        head + std::string(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
    return document ? read_structures(std::string_view(text).substr(first), path.string())
                    : read_structure_csv(text, path.string());
}

} // namespace scupper::json
