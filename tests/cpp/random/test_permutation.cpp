#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/random/permutation.hpp"

#include <cmath>
#include <vector>

using namespace scupper;

namespace {

bool is_bijection(const Permutation& pi) {
    std::vector<bool> hit(pi.size(), false);
    for (std::uint64_t i = 0; i < pi.size(); ++i) {
        const std::uint64_t image = pi(i);
        if (image >= pi.size() || hit[image]) {
            return false;
        }
        hit[image] = true;
    }
    return true;
}

/// Chi-square, in its standard deviations, of the images of the first and the last index together.
double pair_excess(std::uint64_t n, std::uint64_t keys) {
    std::vector<double> counts(n * n, 0.0);
    for (std::uint64_t k = 0; k < keys; ++k) {
        const Permutation pi({k, 5, 6}, n);
        counts[pi(0) * n + pi(n - 1)] += 1.0;
    }
    const double cells = static_cast<double>(n * (n - 1));
    const double expected = static_cast<double>(keys) / cells;
    double chi2 = 0.0;
    for (std::uint64_t i = 0; i < n * n; ++i) {
        const double off = counts[i] - expected;
        chi2 += i % (n + 1) == 0 ? 0.0 : off * off / expected; // no two indices share an image
    }
    return (chi2 - (cells - 1.0)) / std::sqrt(2.0 * std::max(1.0, cells - 1.0));
}

} // namespace

TEST_CASE("A keyed permutation is a bijection for every size", "[random]") {
    for (std::uint64_t n = 1; n <= 300; ++n) {
        INFO(n);
        CHECK(is_bijection(Permutation({n, 2, 3}, n)));
    }
    for (const std::uint64_t n :
         {511u, 512u, 1000u, 1024u, 4097u, 9973u, 65536u, 65537u, 1000003u}) {
        INFO(n);
        CHECK(is_bijection(Permutation({1, 2, 3}, n)));
    }
}

TEST_CASE("The largest permutation stays in range and does not repeat", "[random]") {
    const Permutation pi({1, 2, 3}, Permutation::max_size);
    std::vector<std::uint64_t> images;
    for (std::uint64_t i = 0; i < 20000; ++i) {
        images.push_back(pi(i));
        images.push_back(pi(Permutation::max_size - 1 - i));
    }
    std::sort(images.begin(), images.end());
    CHECK(std::adjacent_find(images.begin(), images.end()) == images.end());
    CHECK(images.back() < Permutation::max_size);
    CHECK(images.back() > Permutation::max_size / 1000 * 999); // 40 000 images fill the range
}

TEST_CASE("Over the keys all pairs of places are equally likely", "[random]") {
    for (const std::uint64_t n : {2u, 3u, 5u, 6u, 10u, 30u, 100u}) {
        INFO(n);
        CHECK(pair_excess(n, 40000) < 4.0);
    }
}

TEST_CASE("A permutation needs 1 to 2^32 places", "[random]") {
    CHECK_THROWS_AS(Permutation({1, 2, 3}, 0), InputError);
    CHECK_THROWS_AS(Permutation({1, 2, 3}, Permutation::max_size + 1), InputError);
}

TEST_CASE("Filling gives the images that asking gives", "[random]") {
    for (const std::uint64_t n : {5u, 511u, 512u, 1000u, 10007u}) {
        const Permutation pi({4, 5, 6}, n);
        for (const std::uint64_t first : {std::uint64_t{0}, n / 3, n - 1}) {
            std::vector<std::uint64_t> images(std::min<std::uint64_t>(n - first, 300));
            pi.fill(first, images);
            for (std::size_t i = 0; i < images.size(); ++i) {
                REQUIRE(images[i] == pi(first + i));
            }
        }
    }
}
