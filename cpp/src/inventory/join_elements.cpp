#include "scupper/inventory/elements.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <optional>
#include <utility>

namespace scupper::inventory {

namespace {

constexpr double foot = 0.3048;
/// Bounds of plausibility; common practice.
constexpr double most_joint_share = 1.5;   // of (spans + 2) joints over the whole width
constexpr double least_edge_share = 0.3;   // of one edge of the deck
constexpr double most_edges = 7.0;         // both faces of both edges, and a median
constexpr double least_line_spacing = 0.5; // m between girders that touch
constexpr double most_columns_a_pier = 25.0;
constexpr double near_whole = 0.1;    // of a girder line
constexpr double least_coating = 0.8; // m2 of steel for each metre of girder
constexpr double most_coating = 40.0;

const Provenance& origin() {
    static const Provenance provenance{"element record; FHWA Specification for the National Bridge "
                                       "Inventory Bridge Elements (2014)",
                                       {},
                                       {}};
    return provenance;
}

bool is_between(int element, int first, int last) {
    return element >= first && element <= last;
}

/// What the records of one structure add up to, in their own units.
struct Sums {
    double joints = 0.0;       ///< [ft]
    double bearings = 0.0;     ///< [each]
    double columns = 0.0;      ///< [each]
    double girders = 0.0;      ///< [ft]
    double coated = 0.0;       ///< [ft2] of steel girders
    double parapets = 0.0;     ///< [ft]
    double rails = 0.0;        ///< [ft]
    double rail_coating = 0.0; ///< [ft2] as recorded
    double deck = 0.0;         ///< [ft2]
    std::uint64_t line = 0;    ///< of the first record
    std::size_t used = 0;      ///< records
};

void add(const ElementRecord& r, Sums& s) {
    const auto put = [&](double& sum) {
        sum += r.total;
        ++s.used;
    };
    if (is_between(r.element, 300, 306)) {
        put(s.joints);
    } else if (is_between(r.element, 310, 316)) {
        put(s.bearings);
    } else if (is_between(r.element, 202, 206)) {
        put(s.columns);
    } else if (is_between(r.element, 102, 112)) {
        put(s.girders);
    } else if (r.element == 515 && is_between(r.parent, 102, 112)) {
        put(s.coated);
    } else if (r.element == 515 && is_between(r.parent, 330, 333)) {
        put(s.rail_coating);
    } else if (r.element == 331 || r.element == 334) {
        put(s.parapets);
    } else if (is_between(r.element, 330, 333)) {
        put(s.rails);
    } else if (is_between(r.element, 12, 65)) {
        put(s.deck);
    }
}

/// Gives one structure its quantities, or says why not.
class Giver {
  public:
    Giver(Structure& structure, const Sums& sums, std::vector<Doubt>& doubts)
        : s_(structure), sums_(sums), doubts_(doubts) {}

    void give() {
        joints();
        count("bearing_count", "bearings", sums_.bearings, most_bearings());
        count("column_count", "columns", sums_.columns, most_columns_a_pier * (spans() + 1.0));
        edges("parapet_length", "concrete railing", sums_.parapets);
        edges("rail_length", "metal railing", sums_.rails);
        girders();
        coating();
        rail_coating();
        deck();
    }

  private:
    double spans() const {
        return std::max(1, std::max(0, s_.codes.main_spans) + std::max(0, s_.codes.approach_spans));
    }
    double length() const { return s_.dimensions.length.si(); }
    double width() const { return s_.dimensions.deck_width.si(); }
    double most_bearings() const { return 2.0 * spans() * (width() / least_line_spacing + 2.0); }

    void use(const char* key, double si) {
        s_.given.push_back({key, certain(si, Basis::element, &origin())});
    }

    void doubt(const char* what, double quantity, const char* unit, const char* reason) {
        doubts_.push_back({0, sums_.line, s_.state, s_.id, what,
                           std::to_string(std::llround(quantity)) + " " + unit, reason, false});
    }

    void joints() {
        if (sums_.joints <= 0.0) {
            return;
        }
        const double skew = s_.dimensions.skew.si();
        const double across = width() / std::cos(skew >= 0.0 ? skew : 0.0);
        if (!(sums_.joints * foot <= most_joint_share * (spans() + 2.0) * across)) {
            doubt("joints", sums_.joints, "ft", "more joint than the width and the spans allow");
            return;
        }
        use("joint_length", sums_.joints * foot);
    }

    void count(const char* key, const char* what, double number, double most) {
        if (number <= 0.0) {
            return;
        }
        if (!(number <= most)) {
            doubt(what, number, "each", "more than the width and the spans allow");
            return;
        }
        use(key, number);
    }

    void edges(const char* key, const char* what, double feet) {
        if (feet <= 0.0) {
            return;
        }
        const double share = feet * foot / length();
        if (!(share >= least_edge_share && share <= most_edges)) {
            doubt(what, feet, "ft", "does not fit the length of the structure");
            return;
        }
        use(key, feet * foot);
    }

    void girders() {
        if (sums_.girders <= 0.0) {
            return;
        }
        const double lines = sums_.girders * foot / length();
        const double whole = std::round(lines);
        const bool fits = whole >= 1.0 && whole <= width() / least_line_spacing + 1.0;
        if (!fits) {
            doubt("girders", sums_.girders, "ft", "does not fit the length and width");
        } else if (std::abs(lines - whole) > near_whole * whole) {
            doubt("girders", sums_.girders, "ft", "no whole number of lines over the length");
        } else {
            use("girder_count", whole);
        }
    }

    void coating() {
        if (sums_.coated <= 0.0 || sums_.girders <= 0.0) {
            return;
        }
        const double a_metre = sums_.coated * foot / sums_.girders;
        if (!(a_metre >= least_coating && a_metre <= most_coating)) {
            doubt("coating of girders", sums_.coated, "ft2",
                  "no surface of steel girders: a length, or another element's");
            return;
        }
        use("girder_area", sums_.coated * foot * foot);
    }

    /// No rail has a square foot of surface for every foot: its length stands in its place.
    void rail_coating() {
        if (sums_.rail_coating > 0.0 && sums_.rail_coating == sums_.rails) {
            doubt("coating of the rail", sums_.rail_coating, "ft2",
                  "equals the length of the rail: a length, no surface");
        }
    }

    /// The deck's own area stays length by width; a record that says otherwise is reported.
    void deck() {
        constexpr double share = 0.25;
        const double area = length() * width();
        if (sums_.deck > 0.0 && area > 0.0 &&
            std::abs(sums_.deck * foot * foot - area) > share * area) {
            doubt("deck", sums_.deck, "ft2", "differs from length by width by more than a quarter");
        }
    }

    Structure& s_;
    const Sums& sums_;
    std::vector<Doubt>& doubts_;
};

} // namespace

ElementJoin join_elements(Inventory& inventory, const ElementRecords& elements) {
    std::map<std::pair<std::string, std::string>, Structure*> by_key;
    for (Structure& s : inventory.structures) {
        by_key[{s.state, s.id}] = &s;
    }
    ElementJoin join;
    join.doubts = elements.doubts;
    std::map<Structure*, Sums> sums;
    std::vector<Structure*> order;
    for (const ElementRecord& r : elements.records) {
        const auto found = by_key.find({r.state, r.structure});
        if (found == by_key.end()) {
            join.unmatched.push_back(r);
            continue;
        }
        ++join.matched;
        const auto [entry, is_new] = sums.try_emplace(found->second);
        if (is_new) {
            entry->second.line = r.line;
            order.push_back(found->second);
        }
        add(r, entry->second);
    }
    for (Structure* structure : order) {
        join.used += sums[structure].used;
        Giver(*structure, sums[structure], join.doubts).give();
    }
    join.structures = order.size();
    const auto known = std::find(inventory.files.begin(), inventory.files.end(), elements.file);
    const auto file = static_cast<std::uint32_t>(known - inventory.files.begin());
    if (known == inventory.files.end()) {
        inventory.files.push_back(elements.file);
    }
    for (Doubt& doubt : join.doubts) {
        doubt.file = file;
        inventory.doubts.push_back(doubt);
    }
    return join;
}

} // namespace scupper::inventory
