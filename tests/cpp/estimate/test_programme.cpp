#include <algorithm>
#include <atomic>
#include <cstring>
#include <vector>

#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"

using namespace scupper;
using namespace made_up;

namespace {

std::vector<Structure> county() {
    std::vector<Structure> list;
    for (int i = 0; i < 700; ++i) {
        Structure s = i % 3 == 0 ? creek_bridge() : overpass();
        if (i % 10 == 0) {
            s = culvert();
        }
        s.id = s.number = "N" + std::to_string(i);
        s.dimensions.length = Length<>(10.0 + 0.37 * i);
        list.push_back(s);
    }
    return list;
}

bool same_bytes(const std::vector<double>& a, const std::vector<double>& b) {
    return a.size() == b.size() && std::memcmp(a.data(), b.data(), a.size() * sizeof(double)) == 0;
}

std::size_t total_column(const estimate::Programme& p) {
    return static_cast<std::size_t>(
        std::find(p.keys.begin(), p.keys.end(), "cost.total") - p.keys.begin());
}

} // namespace

TEST_CASE("a programme gives the same bits for one, two and seven threads") {
    const auto structures = county();
    const auto one = estimate::estimate_all(structures, demo_plan(), 1);
    for (const unsigned threads : {2u, 7u}) {
        const auto many = estimate::estimate_all(structures, demo_plan(), threads);
        CHECK(same_bytes(one.table, many.table));
        CHECK(same_bytes(one.totals, many.totals));
        CHECK(one.priced == many.priced);
    }
}

TEST_CASE("totals do not depend on the order of the structures") {
    auto structures = county();
    const auto forward = estimate::estimate_all(structures, demo_plan(), 2);
    std::reverse(structures.begin(), structures.end());
    const auto backward = estimate::estimate_all(structures, demo_plan(), 2);
    CHECK(same_bytes(forward.totals, backward.totals));
}

TEST_CASE("programmes of parts put together are the programme of the list, to the bit") {
    const auto structures = county();
    const std::span<const Structure> all(structures);
    const auto whole = estimate::estimate_all(all, demo_plan(), 2);
    const auto a = estimate::estimate_all(all.first(13), demo_plan(), 1);
    const auto b = estimate::estimate_all(all.subspan(13, 0), demo_plan(), 1);
    const auto c = estimate::estimate_all(all.subspan(13), demo_plan(), 2);
    const std::vector<const estimate::Programme*> parts{&a, &b, &c};
    const auto joined = estimate::joined(parts);
    CHECK(same_bytes(joined.table, whole.table));
    CHECK(same_bytes(joined.totals, whole.totals));
    CHECK(joined.priced == whole.priced);
    CHECK(joined.closures == whole.closures);
    REQUIRE(joined.unpriced.size() == whole.unpriced.size());
    for (std::size_t i = 0; i < joined.unpriced.size(); ++i) {
        CHECK(joined.unpriced[i].index == whole.unpriced[i].index);
        CHECK(joined.unpriced[i].id == whole.unpriced[i].id);
    }
    CHECK_THROWS_AS(estimate::joined({}), InputError);
}

TEST_CASE("every structure is priced or listed with its reason") {
    const auto structures = county();
    const auto p = estimate::estimate_all(structures, demo_plan());
    CHECK(p.priced.size() + p.unpriced.size() == structures.size());
    CHECK(p.unpriced.size() == 70);
    for (const auto& u : p.unpriced) {
        CHECK(u.id == structures[u.index].id);
        CHECK(u.reason.find("culvert") != std::string::npos);
    }
}

TEST_CASE("a row of the programme is the estimate of that structure alone") {
    const auto structures = county();
    const auto p = estimate::estimate_all(structures, demo_plan(), 2);
    const std::size_t column = total_column(p);
    double sum = 0.0;
    for (std::size_t row = 0; row < p.priced.size(); ++row) {
        const double total = p.table[row * p.keys.size() + column];
        sum += total;
        if (row % 50 == 0) {
            const auto e = estimate::estimate(structures[p.priced[row]], demo_plan());
            CHECK(total == e.figure("cost.total"));
            CHECK(p.closures[row] == e.resolved.model.closure);
        }
    }
    CHECK(p.totals[column] == Approx(sum).epsilon(1e-9));
}

TEST_CASE("a run stops when its listener says so, and passes on errors") {
    const auto structures = county();
    const auto stop = [](std::size_t, std::size_t) { return false; };
    CHECK_THROWS_AS(estimate::estimate_all(structures, demo_plan(), 2, stop), Interrupted);
    const auto fail = [](std::size_t first, std::size_t) {
        if (first > 256) {
            throw InputError({"test.fail", "", "on purpose", ""});
        }
    };
    CHECK_THROWS_AS(estimate::run_blocks(5000, 3, fail, {}), InputError);
}

TEST_CASE("blocks cover every item once") {
    std::vector<std::atomic<int>> hits(3001);
    const auto block = [&](std::size_t first, std::size_t last) {
        for (std::size_t i = first; i < last; ++i) {
            ++hits[i];
        }
    };
    estimate::run_blocks(hits.size(), 4, block, {});
    CHECK(std::all_of(hits.begin(), hits.end(), [](const auto& n) { return n == 1; }));
    estimate::run_blocks(0, 2, block, {});
}

TEST_CASE("fixed-point totals do not depend on order") {
    estimate::FixedTotal forward, backward, parts;
    std::vector<double> values;
    for (int i = 1; i <= 2000; ++i) {
        values.push_back(1e7 / i - 1e3 * i + 1e-5 * i * i);
    }
    for (const double v : values) {
        forward.add(v);
    }
    std::reverse(values.begin(), values.end());
    for (const double v : values) {
        backward.add(v);
    }
    parts.add(forward);
    CHECK(forward.value() == backward.value());
    CHECK(parts.value() == forward.value());
    double plain = 0.0;
    for (const double v : values) {
        plain += v;
    }
    CHECK(forward.value() == Approx(plain).epsilon(1e-10));
}
