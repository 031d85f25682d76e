// What a structure carries and what lies below, as items 5, 6, 7, 19, 28, 29, 42 and 54 tell it.

#include "national.hpp"
#include "national_codes.hpp"
#include "scupper/quantity/factors.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::inventory::detail {

namespace {

/// Some kinds of features; by the letter that B.F.01 begins with.
struct Kinds {
    bool highway = false;
    bool railroad = false;
    bool water = false;
    bool path = false;
    bool relief = false;
    bool other = false;

    void add(char letter) {
        highway |= letter == 'H';
        railroad |= letter == 'R';
        water |= letter == 'W';
        path |= letter == 'P';
        relief |= letter == 'F';
        other |= letter == 'B' || letter == 'D' || letter == 'X';
    }
    bool any() const { return highway || railroad || water || path || relief || other; }
};

/// The code of item 42A. Source: FHWA-PD-96-001 (1995), item 42.
int service_on(const Kinds& k) {
    if (k.highway) {
        return k.railroad ? 4 : k.path ? 5 : 1;
    }
    return k.railroad ? 2 : k.path ? 3 : 0;
}

/// The code of item 42B.
int service_under(const Kinds& k) {
    if (k.water || k.relief) {
        return k.highway && k.railroad ? 8 : k.highway ? 6 : k.railroad ? 7 : k.water ? 5 : 9;
    }
    return k.highway && k.railroad ? 4 : k.highway ? 1 : k.railroad ? 2 : k.path ? 3 : 0;
}

void append(std::string& names, const std::string& name) {
    if (!name.empty()) {
        names += (names.empty() ? "" : " / ") + name;
    }
}

void add(int& sum, std::optional<int> more) {
    if (more) {
        constexpr int enough = 1'000'000'000; // far beyond what any total may come to
        sum = std::min(std::max(sum, 0) + *more, enough);
    }
}

constexpr IntegerBounds lanes{0, 50, "outside 0 to 50 lanes", true};
constexpr IntegerBounds traffic{0, 500000, "outside 0 to 500000 vehicles a day", true};

/// The clearance of a feature [m]; NaN where none is recorded. 99.9 is no limit (from memory).
double clearance(const Items& feature, const char* tag) {
    const auto feet = feature.number(tag, {0.0, 999.9, "outside 0 to 999.9 ft", true});
    const double limit = 99.0;
    return feet && *feet > 0.0 && *feet < limit ? *feet * factor::foot : not_recorded;
}

/// The numbers of B.H.01 are taken to run from interstates to local roads (from memory); an urban
/// code of 99999 is rural (from memory).
void read_class(const Items& feature, RecordedCodes& codes) {
    const auto national = feature.integer("BH01", {1, 7, reason_code, true});
    const std::string area = feature.text("BH02");
    if (national && !area.empty()) {
        codes.functional_class = functional_class_of(*national, area != "99999");
    } else if (national) {
        feature.doubt("BH02", "rural or urban is not told: the class is not recorded");
    }
}

void read_carried_highway(const Items& feature) {
    Structure& s = feature.structure();
    const bool first = s.codes.daily_traffic == no_code && s.codes.lanes_on == no_code;
    add(s.codes.lanes_on, feature.integer("BH08", lanes));
    add(s.codes.daily_traffic, feature.integer("BH09", traffic));
    if (!first) {
        return; // a second roadway adds lanes and traffic
    }
    read_class(feature, s.codes);
    s.codes.traffic_year =
        feature.integer("BH11", {1900, 2099, "outside the years 1900 to 2099", true})
            .value_or(no_code);
    const auto trucks = feature.integer("BH10", traffic);
    if (trucks && s.codes.daily_traffic > 0 && *trucks <= s.codes.daily_traffic) {
        s.codes.truck_percent =
            static_cast<int>(std::lround(100.0 * *trucks / s.codes.daily_traffic));
    } else if (trucks && *trucks > 0) {
        feature.doubt("BH10", "more trucks than vehicles");
    }
    const double above = clearance(feature, "BH13");
    s.dimensions.route_clearance = Length<>(above);
    s.dimensions.clearance_over = Length<>(above);
    constexpr double mile = 5280.0 * factor::foot;
    if (const auto miles = feature.integer("BH17", {0, 999, "outside 0 to 999 miles", true})) {
        s.dimensions.detour = Length<>(*miles * mile);
    }
}

/// The least clearance below says what it is measured from.
void read_below(const Items& feature, char letter) {
    Structure& s = feature.structure();
    if (letter == 'H') {
        add(s.codes.lanes_under, feature.integer("BH08", lanes));
    }
    if (letter == 'W') {
        const std::string navigable = feature.text("BN01");
        s.codes.navigation = navigable == "Y"                              ? 1
                             : navigable == "N" && s.codes.navigation != 1 ? 0
                                                                           : s.codes.navigation;
    }
    if (letter != 'H' && letter != 'R') {
        return;
    }
    const double height = clearance(feature, letter == 'H' ? "BH13" : "BRR02");
    const double least = s.dimensions.clearance_under.si();
    if (s.codes.below == Below::unknown || height < least || (std::isnan(least) && height > 0.0)) {
        s.codes.below = letter == 'H' ? Below::highway : Below::railroad;
        s.dimensions.clearance_under = Length<>(height);
    }
}

void read_feature(const Items& feature, Kinds& on, Kinds& under) {
    Structure& s = feature.structure();
    const std::string type = feature.text("BF01");
    const char letter = type.empty() ? ' ' : type.front();
    const std::string where = feature.text("BF02"); // C carried, B below, A above: from memory
    if (where == "C") {
        on.add(letter);
        append(s.carries, feature.text("BF03"));
        if (letter == 'H') {
            read_carried_highway(feature);
        }
    } else if (where == "B") {
        under.add(letter);
        append(s.crosses, feature.text("BF03"));
        read_below(feature, letter);
    } else if (where != "A") {
        feature.doubt("BF02", reason_code);
    }
}

} // namespace

void read_national_features(const Items& items) {
    Kinds on;
    Kinds under;
    for (const Items& feature : items.sets("Features")) {
        read_feature(feature, on, under);
    }
    RecordedCodes& codes = items.structure().codes;
    codes.service_on = on.any() ? service_on(on) : no_code;
    codes.service_under = under.any() ? service_under(under) : no_code;
    if (under.any() && codes.below == Below::unknown) {
        codes.below = Below::neither;
    }
}

} // namespace scupper::inventory::detail
