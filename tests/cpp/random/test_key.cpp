#include "catch.hpp"
#include "scupper/random/key.hpp"

#include <cmath>
#include <set>
#include <thread>
#include <vector>

using namespace scupper;

namespace {

const DrawKey kKey{20, hash_text("17-B"), hash_text("labour.wage")};

std::vector<double> draws(const DrawKey& key, std::size_t n) {
    std::vector<double> u(n);
    for (std::size_t i = 0; i < n; ++i) {
        u[i] = uniform(key, i);
    }
    return u;
}

} // namespace

TEST_CASE("The unit numbers stay inside the open interval", "[random]") {
    STATIC_REQUIRE(detail::open_unit(0) == 0x1p-53);
    STATIC_REQUIRE(detail::open_unit(~std::uint64_t{0}) == 1.0 - 0x1p-53);
    STATIC_REQUIRE(detail::open_unit(0) + detail::open_unit(~std::uint64_t{0}) == 1.0);
}

TEST_CASE("A draw follows from its key alone, in whatever order and thread", "[random]") {
    constexpr std::size_t n = 4000;
    const auto expected = draws(kKey, n);
    std::vector<double> actual(n);
    std::vector<std::thread> threads;
    for (std::size_t k = 0; k < 4; ++k) {
        threads.emplace_back([&actual, k] {
            for (std::size_t i = n - 1 - k; i < n; i -= 4) { // backwards, every fourth
                actual[i] = uniform(kKey, i);
            }
        });
    }
    for (auto& thread : threads) {
        thread.join();
    }
    CHECK(actual == expected);
}

TEST_CASE("Every part of the key and the draw number matter", "[random]") {
    std::set<double> seen;
    for (std::uint64_t i = 0; i < 100; ++i) {
        seen.insert(uniform({i, 0, 0}, 1000));
        seen.insert(uniform({1000, i, 0}, 1000));
        seen.insert(uniform({1000, 2000, i}, 1000));
        seen.insert(uniform({1000, 2000, 3000}, i));
        seen.insert(uniform({1000, 2000, 3000}, i << 40));
        seen.insert(uniform({i << 40, 2000, 3000}, 7));
    }
    CHECK(seen.size() == 599); // draw 0 occurs twice
}

TEST_CASE("Draws are uniform: mean, spread and a chi-square of 64 bins", "[random]") {
    constexpr std::size_t n = 64000;
    double sum = 0.0;
    double squares = 0.0;
    std::vector<double> bins(64, 0.0);
    for (const double u : draws(kKey, n)) {
        sum += u;
        squares += (u - 0.5) * (u - 0.5);
        bins[static_cast<std::size_t>(u * 64.0)] += 1.0;
    }
    CHECK(std::fabs(sum / n - 0.5) < 4.0 * std::sqrt(1.0 / 12.0 / n));
    CHECK(std::fabs(squares / n - 1.0 / 12.0) < 4.0 * std::sqrt(1.0 / 180.0 / n));
    double chi2 = 0.0;
    for (const double count : bins) {
        chi2 += (count - 1000.0) * (count - 1000.0) / 1000.0;
    }
    CHECK(std::fabs(chi2 - 63.0) < 4.0 * std::sqrt(2.0 * 63.0));
}
