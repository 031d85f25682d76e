#include "scupper/cost/built_up.hpp"

#include "scupper/cost/operating.hpp"
#include "scupper/cost/ownership.hpp"
#include "scupper/cost/wage.hpp"
#include "scupper/error.hpp"
#include "scupper/schema.hpp"
#include "scupper/unit.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <vector>

namespace scupper::cost {

namespace {

/// The parts that were given, by name; what was not given does not enter a formula.
template <class T>
class Given {
  public:
    explicit Given(std::span<const NamedPart<T>> parts) : parts_(parts) {}

    bool has(std::string_view name) const { return find(name) != nullptr; }
    T operator()(std::string_view name, double otherwise = 0.0) const {
        const T* value = find(name);
        return value == nullptr ? T(otherwise) : *value;
    }
    template <class Q>
    Q as(std::string_view name, double otherwise = 0.0) const {
        return Q((*this)(name, otherwise));
    }

  private:
    const T* find(std::string_view name) const {
        const auto part = std::find_if(parts_.begin(), parts_.end(),
                                       [&](const NamedPart<T>& p) { return p.name == name; });
        return part == parts_.end() ? nullptr : &part->value;
    }

    std::span<const NamedPart<T>> parts_;
};

constexpr double usual_year = 2080.0 * factor::hour; // 52 weeks of 40 hours

/// Payroll taxes over the pay of a whole year.
template <class T>
T taxes(const Given<T>& part) {
    const Amount<T> year_pay =
        named("pay of a year", part.template as<AmountPerTime<T>>("cash") *
                                   part.template as<Time<T>>("year_hours", usual_year));
    T sum = part("medicare");
    for (const char* tax : {"social_security", "federal_unemployment", "state_unemployment"}) {
        const std::string cap = std::string(tax) + "_cap";
        if (part.has(tax)) {
            sum = sum + (part.has(cap) ? capped_tax_share(part(tax), year_pay,
                                                          part.template as<Amount<T>>(cap))
                                       : part(tax));
        }
    }
    return named("payroll taxes over pay", sum);
}

template <class T>
T insurance(const Given<T>& part) {
    return part.has("modifier") ? part("insurance") * part("modifier") : part("insurance");
}

template <class T>
AmountPerTime<T> wage(const Given<T>& part) {
    const T leave = part.has("worked_hours")
                        ? named("paid hours for every hour worked",
                                leave_factor(part.template as<Time<T>>("year_hours"),
                                             part.template as<Time<T>>("worked_hours")))
                        : T(1.0);
    const AmountPerTime<T> allowance =
        part.has("per_diem")
            ? part.template as<Amount<T>>("per_diem") / part.template as<Time<T>>("day_hours")
            : AmountPerTime<T>(T(0.0));
    return labour_hour(part.template as<AmountPerTime<T>>("cash"),
                       part.template as<AmountPerTime<T>>("fringe"), taxes(part) + insurance(part),
                       leave, allowance);
}

/// What an hour of overtime costs more if it is paid double, over the cost of a plain one.
template <class T>
T overtime_share(const Given<T>& part) {
    const auto cash = part.template as<AmountPerTime<T>>("cash");
    const auto basic = part.has("basic") ? part.template as<AmountPerTime<T>>("basic") : cash;
    const T burden = taxes(part) + insurance(part) * part("insured_premium");
    return overtime_premium(cash, basic, T(2.0), burden) / wage(part);
}

template <class T>
Amount<T> ownership(const Given<T>& part) {
    const auto price = part.template as<Amount<T>>("price");
    const auto salvage = part.template as<Amount<T>>("salvage");
    const T years = part("life") / factor::year;
    const bool by_investment = value_of(part("ownership")) > 0.5;
    return by_investment
               ? ownership_by_investment(price, salvage, years, part("interest"), part("keeping"))
               : ownership_by_recovery(price, salvage, years, part("interest"), part("keeping"));
}

template <class T>
AmountPerTime<T> operating(const Given<T>& part, const AmountPerTime<T>& depreciation) {
    AmountPerTime<T> sum = part.template as<AmountPerTime<T>>("wear_parts");
    if (part.has("power")) {
        const auto burnt =
            named("fuel", fuel(part.template as<Power<T>>("power"),
                               part.template as<FuelUse<T>>("fuel_use"), part("load", 1.0),
                               part.template as<AmountPerVolume<T>>("fuel_price")));
        sum += burnt * (1.0 + part("lubrication"));
    }
    if (part.has("repair")) {
        sum += named("repair", repair(depreciation, part("repair")));
    }
    if (part.has("tyre_set")) {
        sum += named("tyres", tyres(part.template as<Amount<T>>("tyre_set"),
                                    part.template as<Time<T>>("tyre_life"), part("tyre_repair")));
    }
    return named("operating", sum);
}

template <class T>
AmountPerTime<T> equipment(const Given<T>& part) {
    const auto hours = part.template as<Time<T>>("year_hours");
    const auto own = named("ownership", hourly(ownership(part), hours));
    const auto depreciation =
        hourly(straight_line(part.template as<Amount<T>>("price"),
                             part.template as<Amount<T>>("salvage"), part("life") / factor::year),
               hours);
    return equipment_hour(own, operating(part, depreciation), part("utilisation", 1.0));
}

bool is_given(std::span<const PartValue> parts, std::string_view name) {
    return std::any_of(parts.begin(), parts.end(),
                       [&](const PartValue& p) { return p.name == name; });
}

[[noreturn]] void missing(const std::string& path, const std::string& why, const RatePart& wanted) {
    throw InputError({"cost.missing", path, why,
                      "\"" + std::string(wanted.name) + "\": " + std::string(wanted.label) + ", " +
                          dimension_phrase(wanted.dimension)});
}

std::string digits(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.6g", value);
    return text;
}

std::string span_text(const PartValue& part) {
    return part.low == part.high
               ? digits(part.value)
               : digits(part.low) + ", " + digits(part.value) + ", " + digits(part.high);
}

} // namespace

BuiltUp built_up_of(std::string_view key) {
    const auto [group, field] = split_key(key);
    if (field == "wage" && (group == "labour" || group == "haul")) {
        return BuiltUp::wage;
    }
    if (group == "labour" && field == "overtime_share") {
        return BuiltUp::overtime_share;
    }
    return group == "equipment" && field == "rate" ? BuiltUp::equipment : BuiltUp::none;
}

std::span<const RatePart> parts_of(BuiltUp kind) {
    switch (kind) {
    case BuiltUp::wage:
    case BuiltUp::overtime_share:
        return wage_parts;
    case BuiltUp::equipment:
        return equipment_parts;
    case BuiltUp::none:
        break;
    }
    return {};
}

const RatePart& rate_part(BuiltUp kind, std::string_view name, const std::string& path) {
    std::vector<std::string_view> known;
    for (const RatePart& part : parts_of(kind)) {
        if (part.name == name) {
            return part;
        }
        known.push_back(part.name);
    }
    const std::string near = nearest_name(name, known);
    throw UnknownNameError({"cost.part", path, "\"" + std::string(name) + "\"",
                            near.empty() ? "a part of what is built up" : "\"" + near + "\"?"});
}

void check_parts(BuiltUp kind, std::span<const PartValue> parts, const std::string& path) {
    for (const PartValue& part : parts) {
        const RatePart& row = rate_part(kind, part.name, path);
        if (!(part.low >= row.least && part.high <= row.greatest && part.low <= part.value &&
              part.value <= part.high)) {
            throw InputError({"cost.bounds", path + "." + part.name, span_text(part) + " (SI)",
                              digits(row.least) + " to " + digits(row.greatest) + " (SI)"});
        }
        if (!row.needs.empty() && !is_given(parts, row.needs)) {
            missing(path, part.name + " without " + std::string(row.needs),
                    rate_part(kind, row.needs, path));
        }
    }
    for (const RatePart& row : parts_of(kind)) {
        if (row.required && !is_given(parts, row.name)) {
            missing(path, "no " + std::string(row.name), row);
        }
    }
}

template <class T>
T built_up_rate(BuiltUp kind, std::span<const NamedPart<T>> parts) {
    const Given<T> part(parts);
    switch (kind) {
    case BuiltUp::wage:
        return wage(part).si();
    case BuiltUp::overtime_share:
        return overtime_share(part);
    case BuiltUp::equipment:
        return equipment(part).si();
    case BuiltUp::none:
        break;
    }
    return T(0.0);
}

double built_up_rate(BuiltUp kind, std::span<const PartValue> parts) {
    std::vector<NamedPart<double>> named_parts;
    for (const PartValue& part : parts) {
        named_parts.push_back({part.name, part.value});
    }
    return built_up_rate<double>(kind, named_parts);
}

ThreePoint built_up_range(BuiltUp kind, std::span<const PartValue> parts) {
    const double likely = built_up_rate(kind, parts);
    std::vector<PartValue> varied(parts.begin(), parts.end());
    double below = 0.0;
    double above = 0.0;
    for (PartValue& part : varied) {
        const double usual = part.value;
        part.value = part.low;
        const double one = built_up_rate(kind, varied);
        part.value = part.high;
        const double other = built_up_rate(kind, varied);
        part.value = usual;
        below = std::hypot(below, std::max(likely - std::min(one, other), 0.0));
        above = std::hypot(above, std::max(std::max(one, other) - likely, 0.0));
    }
    const Family family = below + above > 0.0 ? Family::pert : Family::fixed;
    return {.low = likely - below, .likely = likely, .high = likely + above, .family = family};
}

template double built_up_rate(BuiltUp, std::span<const NamedPart<double>>);
template Traced built_up_rate(BuiltUp, std::span<const NamedPart<Traced>>);

} // namespace scupper::cost
