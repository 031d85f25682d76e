#include "terms.hpp"

#include "scupper/error.hpp"
#include "scupper/unit.hpp"
#include "scupper/work/calendar.hpp"

#include <charconv>
#include <cmath>
#include <optional>

namespace scupper::json::detail {

namespace {

/// Bounds of a term, in SI.
struct Bounds {
    double least, greatest;
};

constexpr Bounds share{0.0, 1.0};
constexpr Bounds price_ratio{0.0, 100.0};
constexpr Bounds yearly{-0.5, 1.0};
constexpr Bounds waiting{0.0, 100.0 * factor::year};
constexpr Bounds interval{factor::day, 10.0 * factor::year};

/// A number or text of a member; nothing where it is not there.
std::optional<double> number_of(const Json& value, const char* key, const Dimension& dimension,
                                Bounds bounds, const std::string& path) {
    if (!value.contains(key)) {
        return std::nullopt;
    }
    const std::string where = path + "." + key;
    const Json& given = value[key];
    double si = 0.0;
    if (given.is_number() && takes_plain_number(dimension)) {
        si = given.get<double>();
    } else {
        si =
            parse_as(given.is_string() ? given.get<std::string>() : given.dump(), dimension, where);
    }
    if (!(si >= bounds.least && si <= bounds.greatest)) {
        throw InputError({"json.bounds", where, given.dump(),
                          digits(bounds.least) + " to " + digits(bounds.greatest) + " (SI)"});
    }
    return si;
}

std::optional<Date> date_of(const Json& value, const char* key, const std::string& path) {
    if (!value.contains(key)) {
        return std::nullopt;
    }
    return work::parse_date(text_or(value, key, {}, path), path + "." + key);
}

void check_dates(const Terms& terms, const std::string& path) {
    if (terms.rates_of && terms.midpoint && *terms.midpoint < *terms.rates_of) {
        throw InputError({"json.order", path + ".midpoint", work::date_text(*terms.midpoint),
                          "a day not before rates_of, " + work::date_text(*terms.rates_of)});
    }
}

[[noreturn]] void refuse_frequency(const Json& value, const std::string& path) {
    throw InputError({"json.frequency", path, value.dump(),
                      "times a year above 0, as 2 or 0.5, or \"every 2 years\""});
}

/// "every 2 years" is half a time a year.
double times_a_year(const Json& value, const std::string& path) {
    if (value.is_number() && value.get<double>() > 0.0 && std::isfinite(value.get<double>())) {
        return value.get<double>();
    }
    constexpr std::string_view before = "every ";
    std::string text = value.is_string() ? value.get<std::string>() : std::string();
    if (text == "every year") {
        return 1.0;
    }
    if (!text.starts_with(before) || !text.ends_with(" years")) {
        refuse_frequency(value, path);
    }
    text = text.substr(before.size(), text.rfind(" years") - before.size());
    double years = 0.0;
    const auto [stop, error] = std::from_chars(text.data(), text.data() + text.size(), years);
    if (error != std::errc{} || stop != text.data() + text.size() || !(years > 0.0) ||
        !std::isfinite(years)) {
        refuse_frequency(value, path);
    }
    return 1.0 / years;
}

} // namespace

Terms read_terms(const Json& doc, const std::string& name) {
    Terms terms;
    if (!doc.contains("terms")) {
        return terms;
    }
    const Json& value = doc["terms"];
    const std::string path = name + ".terms";
    require_known_keys(value, job_terms_keys, path);
    const auto number = [&](const char* key, const Dimension& dimension, Bounds bounds) {
        return number_of(value, key, dimension, bounds, path);
    };
    terms.rates_of = date_of(value, "rates_of", path);
    terms.midpoint = date_of(value, "midpoint", path);
    check_dates(terms, path);
    terms.payment_interval = Time<>(
        number("payment_interval", dim::time, interval).value_or(terms.payment_interval.si()));
    terms.retainage = number("retainage", dim::none, share).value_or(0.0);
    terms.retainage_limit = number("retainage_limit", dim::none, share).value_or(1.0);
    terms.retainage_release = Time<>(number("retainage_release", dim::time, waiting).value_or(0.0));
    terms.interest = number("interest", dim::none, yearly).value_or(0.0);
    terms.variation_limit = number("variation_limit", dim::none, share);
    terms.price_over = number("price_over", dim::none, price_ratio).value_or(1.0);
    terms.price_under = number("price_under", dim::none, price_ratio).value_or(1.0);
    return terms;
}

Json write_terms(const Terms& terms) {
    Json doc{{"payment_interval", digits(terms.payment_interval.si()) + " s"},
             {"retainage", terms.retainage},
             {"retainage_limit", terms.retainage_limit},
             {"retainage_release", digits(terms.retainage_release.si()) + " s"},
             {"interest", terms.interest},
             {"price_over", terms.price_over},
             {"price_under", terms.price_under}};
    if (terms.rates_of) {
        doc["rates_of"] = work::date_text(*terms.rates_of);
    }
    if (terms.midpoint) {
        doc["midpoint"] = work::date_text(*terms.midpoint);
    }
    if (terms.variation_limit) {
        doc["variation_limit"] = *terms.variation_limit;
    }
    return doc;
}

std::map<std::string, double> read_frequency(const Json& doc, const std::string& name) {
    std::map<std::string, double> frequency;
    if (!doc.contains("frequency")) {
        return frequency;
    }
    const std::string path = name + ".frequency";
    require_known_keys(doc["frequency"], component_names, path);
    for (const auto& [component, value] : doc["frequency"].items()) {
        frequency[component] = times_a_year(value, path + "." + component);
    }
    return frequency;
}

} // namespace scupper::json::detail
