#include "catch.hpp"
#include "rows.hpp"
#include "scupper/error.hpp"
#include "scupper/random.hpp"

#include <cmath>

using namespace scupper;

namespace {

using Numbers = std::vector<double>;

Discrete discrete_of(const nlohmann::json& in) {
    return Discrete(in.at("values").get<Numbers>(), in.at("weights").get<Numbers>(), "test");
}

template <typename Call>
std::string refusal(Call&& call) {
    try {
        call();
    } catch (const InputError& error) {
        return error.id() + " at " + error.path();
    }
    return "";
}

/// Mean and standard deviation of what the quantile function gives at evenly spaced probabilities.
template <typename Distribution>
std::pair<double, double> integrated(const Distribution& d) {
    constexpr int n = 40000;
    double sum = 0.0;
    double squares = 0.0;
    for (int i = 0; i < n; ++i) {
        const double x = d.quantile((i + 0.5) / n);
        sum += x;
        squares += x * x;
    }
    return {sum / n, std::sqrt(squares / n - sum / n * (sum / n))};
}

} // namespace

TEST_CASE("Discrete and empirical distributions agree with a reference library", "[random]") {
    for (const auto& row : rows_of("samples.csv", "discrete_mean")) {
        CHECK(discrete_of(row.inputs).mean() == Approx(std::stod(row.value)).epsilon(1e-14));
    }
    for (const auto& row : rows_of("samples.csv", "discrete_sd")) {
        CHECK(discrete_of(row.inputs).sd() == Approx(std::stod(row.value)).epsilon(1e-14));
    }
    for (const auto& row : rows_of("samples.csv", "discrete_quantile")) {
        CHECK(discrete_of(row.inputs).quantile(row.inputs.at("u")) == std::stod(row.value));
    }
    for (const auto& row : rows_of("samples.csv", "discrete_cdf")) {
        CHECK(discrete_of(row.inputs).cdf(row.inputs.at("x")) ==
              Approx(std::stod(row.value)).epsilon(1e-14));
    }
    for (const auto& row : rows_of("samples.csv", "empirical_quantile")) {
        const Empirical sample(row.inputs.at("sample").get<Numbers>(), "test");
        CHECK(sample.quantile(row.inputs.at("u")) == Approx(std::stod(row.value)).epsilon(1e-14));
    }
}

TEST_CASE("Mean and spread are those of the draws", "[random]") {
    const Empirical sample({3.0, 1.0, 4.0, 1.5, 9.0, 4.0}, "test");
    CHECK(sample.mean() == Approx(integrated(sample).first).epsilon(1e-6));
    CHECK(sample.sd() == Approx(integrated(sample).second).epsilon(1e-6));
    const Discrete values({3.0, 1.0, 4.0, 3.0}, {1.0, 0.0, 2.0, 1.0}, "test");
    CHECK(values.mean() == Approx(integrated(values).first).epsilon(1e-12));
    CHECK(values.sd() == Approx(integrated(values).second).epsilon(1e-12));
}

TEST_CASE("Quantile and probability of a sample undo each other", "[random]") {
    const Empirical sample({3.0, 1.0, 4.0, 1.5, 9.0}, "test");
    for (double u = 0.0; u < 1.0; u += 0.07) {
        CHECK(sample.cdf(sample.quantile(u)) == Approx(u).margin(1e-14));
    }
    CHECK(sample.cdf(0.5) == 0.0);
    CHECK(sample.cdf(9.0) == 1.0);
}

TEST_CASE("A value of weight zero never occurs", "[random]") {
    const Discrete values({1.0, 2.0, 3.0}, {0.0, 1.0, 0.0}, "test");
    for (const double u : {0.0, 0.5, 1.0}) {
        CHECK(values.quantile(u) == 2.0);
    }
    CHECK(values.cdf(1.0) == 0.0);
    CHECK(values.cdf(2.0) == 1.0);
}

TEST_CASE("Equal values give their value to the bit", "[random]") {
    const double value = 0.1;
    const Discrete values({value, value, value}, {0.3, 0.3, 0.1}, "test");
    const Empirical sample({value, value, value}, "test");
    const Empirical single({value}, "test");
    for (const double u : {0.0, 0.3, 1.0}) {
        CHECK(values.quantile(u) == value);
        CHECK(sample.quantile(u) == value);
        CHECK(single.quantile(u) == value);
    }
    CHECK(values.mean() == value);
    CHECK(sample.mean() == value);
    CHECK(single.mean() == value);
    CHECK(values.sd() == 0.0);
    CHECK(sample.sd() == 0.0);
    CHECK(single.sd() == 0.0);
}

TEST_CASE("Values and samples that cannot be used are refused where they stand", "[random]") {
    const double nan = std::nan("");
    CHECK(refusal([] { Discrete({}, {}, "a.b"); }) == "random.count at a.b");
    CHECK(refusal([] { Discrete({1.0}, {1.0, 2.0}, "a.b"); }) == "random.count at a.b");
    CHECK(refusal([&] {
              Discrete({1.0, nan}, {1.0, 1.0}, "a.b");
          }) == "random.nan at a.b.values[1]");
    CHECK(refusal([] { Discrete({1.0}, {-1.0}, "a.b"); }) == "random.weights at a.b.weights[0]");
    CHECK(refusal([] { Discrete({1.0}, {0.0}, "a.b"); }) == "random.weights at a.b");
    CHECK(refusal([] { Empirical({}, "a.b"); }) == "random.count at a.b");
    CHECK(refusal([&] { Empirical({1.0, nan}, "a.b"); }) == "random.nan at a.b[1]");
    CHECK(refusal([] { Empirical({1.0}, "a.b").quantile(2.0); }) == "random.probability at u");
}

TEST_CASE("Listed values are drawn as inputs, exactly", "[random]") {
    const Listed two({1.0, 2.0, 9.0}, {3.0, 1.0, 0.0}, "test");
    const ThreePoint guess = two.guess();
    CHECK_NOTHROW(check(guess, "test"));
    CHECK(guess.low == 1.0);
    CHECK(guess.likely == 1.0);
    CHECK(guess.high == 2.0); // what has no weight does not occur
    CHECK(guess.mean() == 1.25);
    CHECK(guess.sd() == Approx(std::sqrt(0.1875)));
    CHECK(guess.cdf(1.5) == 0.75);
    CHECK(guess.limits().listed == &two);
    int ones = 0;
    for (std::uint64_t d = 0; d < 1000; ++d) {
        const double x = FastQuantile(guess)(latin_hypercube({1, 2, 3}, d, 1000));
        CHECK((x == 1.0 || x == 2.0));
        ones += x == 1.0 ? 1 : 0;
    }
    CHECK(ones == 750);

    const Listed sample({4.0, 1.0, 2.0}, "test");
    CHECK(sample.family() == Family::empirical);
    CHECK(sample.guess().likely == 2.0);
    CHECK(sample.guess().quantile(0.75) == 3.0);
    CHECK(sample.guess().mean() == Approx(2.25)); // halfway of 1 and 2, halfway of 2 and 4
    CHECK(FastQuantile(sample.guess())(0.25) == 1.5);
    CHECK(FastQuantile(Listed({7.0, 7.0}, "test").guess())(0.3) == 7.0);
    CHECK_THROWS_AS(Listed({1.0}, {1.0, 2.0}, "test"), InputError);
    CHECK_THROWS_AS(
        check({.low = 1.0, .likely = 1.0, .high = 2.0, .family = Family::discrete}, "x"),
        InputError);
}
