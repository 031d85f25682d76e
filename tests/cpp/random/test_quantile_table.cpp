#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/random.hpp"

#include <cmath>
#include <thread>

using namespace scupper;

namespace {

double exact(double shape, double u) {
    return beta_quantile(u, 1.0 + 4.0 * shape, 5.0 - 4.0 * shape);
}

/// Probabilities that look at the tails as closely as at the middle.
std::vector<double> probabilities(double deepest, int n) {
    const double z = normal_quantile(1.0 - deepest);
    std::vector<double> all;
    for (int i = 0; i <= n; ++i) {
        all.push_back(normal_cdf(z * (2.0 * i / n - 1.0)));
    }
    return all;
}

} // namespace

TEST_CASE("The table keeps its error bound for every shape and probability", "[random]") {
    const PertTable& table = PertTable::instance();
    double worst = 0.0;
    for (int i = 0; i <= 101; ++i) {
        const double shape = i / 101.0;
        for (const double u : probabilities(1e-6, 600)) {
            worst = std::max(worst, std::fabs(table.quantile(shape, u) - exact(shape, u)));
        }
    }
    CHECK(worst <= PertTable::error_bound);
    CHECK(worst > 0.0); // a table, not the exact path
    CHECK(table.bytes() < 1000000);
}

TEST_CASE("The fast quantile rises with the probability, across every seam", "[random]") {
    const PertTable& table = PertTable::instance();
    for (const double shape : {0.0, 0.003, 0.2, 0.4999, 0.5, 0.5001, 0.77, 0.9961, 1.0}) {
        auto all = probabilities(1e-8, 3000);
        for (const double seam : {PertTable::tail, 0.5, 1.0 - PertTable::tail}) {
            all.insert(all.end(), {std::nextafter(seam, 0.0), seam, std::nextafter(seam, 1.0)});
        }
        std::sort(all.begin(), all.end());
        double before = 0.0;
        for (const double u : all) {
            const double x = table.quantile(shape, u);
            INFO(shape << " " << u);
            CHECK(x >= before - 4e-16); // the last bit may round
            before = x;
        }
        CHECK(before <= 1.0);
    }
}

TEST_CASE("Outside the table the exact quantile answers", "[random]") {
    const PertTable& table = PertTable::instance();
    for (const double shape : {0.0, 0.25, 0.7, 1.0}) {
        CHECK(table.quantile(shape, 0.0) == 0.0);
        CHECK(table.quantile(shape, 1.0) == 1.0);
        CHECK(table.quantile(shape, 1e-12) == Approx(exact(shape, 1e-12)).epsilon(1e-12));
    }
    CHECK_THROWS_AS(table.quantile(0.5, -1e-9), InputError);
    CHECK_THROWS_AS(table.quantile(0.5, std::nan("")), InputError);
}

TEST_CASE("Mirrored shapes give mirrored quantiles", "[random]") {
    const PertTable& table = PertTable::instance();
    for (const double u : {0.001, 0.3, 0.5, 0.6, 0.99}) {
        CHECK(table.quantile(0.2, u) == Approx(1.0 - table.quantile(0.8, 1.0 - u)).margin(1e-14));
    }
}

TEST_CASE("The fast quantile is the exact one, but for PERT", "[random]") {
    for (const Meaning meaning : {Meaning::limits, Meaning::p10_p90}) {
        for (const Family family :
             {Family::uniform, Family::triangular, Family::normal, Family::lognormal}) {
            const ThreePoint point{2.0, implied_likely(2.0, 7.0, family), 7.0, family, meaning};
            const FastQuantile fast(point);
            for (const double u : {1e-9, 0.2, 0.5, 0.8, 0.999}) {
                CHECK(fast(u) == point.quantile(u));
                CHECK(fast_quantile(point, u) == point.quantile(u));
            }
        }
        const ThreePoint pert{2.0, 3.0, 7.0, Family::pert, meaning};
        const double width = pert.limits().high - pert.limits().low;
        for (const double u : {1e-9, 0.2, 0.5, 0.8, 0.999}) {
            CHECK(std::fabs(fast_quantile(pert, u) - pert.quantile(u)) <=
                  PertTable::error_bound * width);
        }
    }
}

TEST_CASE("An input without width is its value to the bit, fast as well", "[random]") {
    for (const Family family :
         {Family::fixed, Family::triangular, Family::pert, Family::lognormal}) {
        const ThreePoint point{0.1, 0.1, 0.1, family};
        for (const double u : {1e-9, 0.3, 0.5, 0.9}) {
            CHECK(fast_quantile(point, u) == 0.1);
        }
    }
}

TEST_CASE("Several threads may ask for the table at once", "[random]") {
    std::vector<double> seen(4);
    std::vector<std::thread> threads;
    for (double& x : seen) {
        threads.emplace_back([&x] { x = fast_quantile({1.0, 2.0, 4.0}, 0.3); });
    }
    for (auto& thread : threads) {
        thread.join();
    }
    CHECK(seen == std::vector<double>(4, fast_quantile({1.0, 2.0, 4.0}, 0.3)));
}
