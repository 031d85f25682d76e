#include "catch.hpp"
#include "rows.hpp"
#include "scupper/error.hpp"
#include "scupper/random/three_point.hpp"

#include <map>

using namespace scupper;

namespace {

const std::map<std::string, Family> kFamilies = {{"uniform", Family::uniform},
                                                 {"triangular", Family::triangular},
                                                 {"pert", Family::pert},
                                                 {"normal", Family::normal},
                                                 {"lognormal", Family::lognormal}};

ThreePoint point_of(const nlohmann::json& in) {
    const Meaning meaning = in.at("meaning") == "limits" ? Meaning::limits : Meaning::p10_p90;
    return {in.at("low"), in.at("likely"), in.at("high"), kFamilies.at(in.at("family")), meaning};
}

/// A usable guess of every family and meaning, leaning right where the family can.
std::vector<ThreePoint> guesses() {
    std::vector<ThreePoint> all;
    for (const Meaning meaning : {Meaning::limits, Meaning::p10_p90}) {
        for (const auto& [name, family] : kFamilies) {
            const bool middle = family == Family::normal || family == Family::lognormal;
            all.push_back(
                {2.0, middle ? implied_likely(2.0, 7.0, family) : 3.0, 7.0, family, meaning});
        }
    }
    return all;
}

} // namespace

TEST_CASE("Moments, quantiles and probabilities agree with a reference library", "[random]") {
    for (const auto& row : rows_of("three_point.csv", "mean")) {
        INFO(row.id);
        CHECK(error_of(point_of(row.inputs).mean(), std::stod(row.value)) < 1e-12);
    }
    for (const auto& row : rows_of("three_point.csv", "sd")) {
        INFO(row.id);
        CHECK(error_of(point_of(row.inputs).sd(), std::stod(row.value)) < 1e-12);
    }
    for (const auto& row : rows_of("three_point.csv", "quantile")) {
        INFO(row.id);
        const ThreePoint point = point_of(row.inputs);
        CHECK(error_of(point.quantile(row.inputs.at("u")), std::stod(row.value)) < 1e-12);
    }
    for (const auto& row : rows_of("three_point.csv", "cdf")) {
        INFO(row.id);
        const ThreePoint point = point_of(row.inputs);
        CHECK(error_of(point.cdf(row.inputs.at("x")), std::stod(row.value)) < 1e-12);
    }
}

TEST_CASE("The mean of a PERT is (low + 4 likely + high) / 6", "[random]") {
    CHECK(ThreePoint{2.0, 3.0, 10.0, Family::pert}.mean() == Approx(4.0).epsilon(1e-15));
    CHECK(ThreePoint{2.0, 3.0, 10.0, Family::triangular}.mean() == Approx(5.0).epsilon(1e-15));
}

TEST_CASE("P10 and P90 are met, and the mode stays where it was put", "[random]") {
    for (const auto& [name, family] : kFamilies) {
        for (const double likely : {2.0, 2.4, 4.5, 6.9, 7.0}) {
            const ThreePoint point{2.0, likely, 7.0, family, Meaning::p10_p90};
            INFO(name << " " << likely);
            if (family != Family::lognormal) {
                CHECK(point.quantile(0.1) == Approx(2.0).epsilon(1e-12));
                CHECK(point.quantile(0.9) == Approx(7.0).epsilon(1e-12));
            }
            if (family == Family::triangular || family == Family::pert) {
                const ThreePoint limits = point.limits();
                const double shape = detail::parameters_of(point).shape;
                CHECK(limits.low + shape * (limits.high - limits.low) ==
                      Approx(likely).epsilon(1e-9));
            }
        }
    }
    const ThreePoint wage{2.0, std::sqrt(14.0), 7.0, Family::lognormal, Meaning::p10_p90};
    CHECK(wage.quantile(0.1) == Approx(2.0).epsilon(1e-12));
    CHECK(wage.quantile(0.9) == Approx(7.0).epsilon(1e-12));
}

TEST_CASE("Stating a guess by its limits leaves the distribution alone", "[random]") {
    for (const ThreePoint& point : guesses()) {
        const ThreePoint limits = point.limits();
        CHECK(limits.meaning == Meaning::limits);
        CHECK_NOTHROW(check(limits, "limits"));
        CHECK(limits.mean() == Approx(point.mean()).epsilon(1e-12));
        CHECK(limits.sd() == Approx(point.sd()).epsilon(1e-12));
        CHECK(limits.quantile(0.83) == Approx(point.quantile(0.83)).epsilon(1e-12));
    }
}

TEST_CASE("Quantile and probability undo each other and rise", "[random]") {
    for (const ThreePoint& point : guesses()) {
        double before = point.quantile(1e-9);
        for (double u = 0.001; u < 1.0; u += 0.01) {
            const double x = point.quantile(u);
            CHECK(x > before);
            CHECK(point.cdf(x) == Approx(u).epsilon(1e-10));
            before = x;
        }
    }
}

TEST_CASE("A wider range has a larger spread; moving it moves the mean", "[random]") {
    for (const Family family :
         {Family::uniform, Family::triangular, Family::pert, Family::normal}) {
        const ThreePoint near{4.0, 5.0, 6.0, family};
        const ThreePoint wide{3.0, 5.0, 7.0, family};
        const ThreePoint moved{14.0, 15.0, 16.0, family};
        CHECK(wide.sd() == Approx(2.0 * near.sd()).epsilon(1e-14));
        CHECK(moved.mean() == Approx(near.mean() + 10.0).epsilon(1e-14));
    }
}

TEST_CASE("An input without width is its value to the bit", "[random]") {
    for (const double value : {0.1, 1.0 / 3.0, 123456.789, 1e300, 7e-310}) {
        for (const auto& [name, family] : kFamilies) {
            for (const Meaning meaning : {Meaning::limits, Meaning::p10_p90}) {
                const ThreePoint point{value, value, value, family, meaning};
                CHECK_NOTHROW(check(point, name));
                CHECK(point.mean() == value);
                CHECK(point.sd() == 0.0);
                for (const double u : {0.0, 1e-9, 0.3, 0.5, 1.0}) {
                    CHECK(point.quantile(u) == value);
                }
                CHECK(point.limits().mean() == value);
            }
        }
    }
}

TEST_CASE("Limits are reached at the ends, and nothing lies beyond", "[random]") {
    for (const Family family : {Family::uniform, Family::triangular, Family::pert}) {
        const ThreePoint point{0.1, 0.2, 0.7, family};
        CHECK(point.quantile(0.0) == 0.1);
        CHECK(point.quantile(1.0) == 0.7);
        CHECK(point.cdf(0.05) == 0.0);
        CHECK(point.cdf(0.8) == 1.0);
    }
    CHECK(ThreePoint{2.0, 4.5, 7.0, Family::normal}.cdf(2.0) == Approx(0.001).epsilon(1e-12));
    CHECK(ThreePoint{2.0, 3.74, 7.0, Family::lognormal}.cdf(7.0) == Approx(0.999).epsilon(1e-12));
    CHECK(ThreePoint{2.0, 3.74, 7.0, Family::lognormal}.cdf(-1.0) == 0.0);
}
