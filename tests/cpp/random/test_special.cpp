#include "catch.hpp"
#include "rows.hpp"
#include "scupper/error.hpp"
#include "scupper/random/special.hpp"

using namespace scupper;

TEST_CASE("The normal quantile and its inverse agree with a reference library", "[random]") {
    for (const auto& row : rows_of("special.csv", "normal_quantile")) {
        INFO(row.id);
        CHECK(error_of(normal_quantile(row.inputs.at("u")), std::stod(row.value)) < 2e-15);
    }
    for (const auto& row : rows_of("special.csv", "normal_cdf")) {
        INFO(row.id);
        const double expected = std::stod(row.value);
        CHECK(std::fabs(normal_cdf(row.inputs.at("z")) / expected - 1.0) < 1e-13);
    }
}

TEST_CASE("The beta distribution agrees with a reference library", "[random]") {
    for (const auto& row : rows_of("special.csv", "beta_cdf")) {
        INFO(row.id);
        const auto& in = row.inputs;
        const double expected = std::stod(row.value);
        CHECK(std::fabs(beta_cdf(in.at("x"), in.at("alpha"), in.at("beta")) / expected - 1.0) <
              1e-13);
    }
    for (const auto& row : rows_of("special.csv", "beta_quantile")) {
        INFO(row.id);
        const auto& in = row.inputs;
        CHECK(error_of(beta_quantile(in.at("u"), in.at("alpha"), in.at("beta")),
                       std::stod(row.value)) < 1e-12);
    }
}

TEST_CASE("Student's quantile agrees with a reference library and with a printed table",
          "[random]") {
    for (const auto& row : rows_of("special.csv", "student_quantile")) {
        INFO(row.id);
        const auto& in = row.inputs;
        const double confidence = in.at("confidence");
        CHECK(student_quantile(0.5 + 0.5 * confidence, in.at("freedom")) ==
              Approx(std::stod(row.value)).epsilon(1e-11));
    }
    // NIST/SEMATECH e-Handbook 1.3.6.7.2, upper 2.5 % (from memory)
    CHECK(student_quantile(0.975, 9.0) == Approx(2.262).margin(5e-4));
    CHECK(student_quantile(0.975, 4.0) == Approx(2.776).margin(5e-4));
    CHECK(student_quantile(0.5, 3.0) == 0.0);
    CHECK(student_quantile(0.25, 7.0) == -student_quantile(0.75, 7.0));
    // scipy.stats.t.ppf
    CHECK(student_quantile(0.9, 1000.0) == Approx(1.2823987214609247).epsilon(1e-8));
    CHECK_THROWS_AS(student_quantile(1.0, 4.0), InputError);
}

TEST_CASE("The beta distribution has its closed forms and its symmetry", "[random]") {
    for (const double x : {1e-9, 0.01, 0.2, 0.5, 0.77, 0.999}) {
        CHECK(beta_cdf(x, 1.0, 1.0) == Approx(x).epsilon(1e-14));
        CHECK(beta_cdf(x, 5.0, 1.0) == Approx(std::pow(x, 5)).epsilon(1e-14)); // x^alpha
        CHECK(beta_cdf(x, 2.0, 2.0) == Approx(x * x * (3.0 - 2.0 * x)).epsilon(1e-14));
        CHECK(beta_cdf(x, 2.2, 3.8) == Approx(1.0 - beta_cdf(1.0 - x, 3.8, 2.2)).margin(1e-14));
    }
}

TEST_CASE("The ends and what lies beyond them", "[random]") {
    CHECK(normal_quantile(0.0) == -std::numeric_limits<double>::infinity());
    CHECK(normal_quantile(1.0) == std::numeric_limits<double>::infinity());
    CHECK(normal_quantile(0.5) == 0.0);
    CHECK(std::isnan(normal_quantile(-0.1)));
    CHECK(std::isnan(normal_quantile(1.1)));
    CHECK(beta_cdf(-1.0, 2.0, 3.0) == 0.0);
    CHECK(beta_cdf(2.0, 2.0, 3.0) == 1.0);
    CHECK(beta_quantile(0.0, 2.0, 3.0) == 0.0);
    CHECK(beta_quantile(1.0, 2.0, 3.0) == 1.0);
    CHECK_THROWS_AS(beta_cdf(0.5, 0.0, 1.0), InputError);
    CHECK_THROWS_AS(beta_cdf(0.5, 100.0, 100.0), InputError);
    CHECK_THROWS_AS(beta_quantile(1.5, 2.0, 3.0), InputError);
    CHECK_THROWS_AS(beta_quantile(std::nan(""), 2.0, 3.0), InputError);
}
