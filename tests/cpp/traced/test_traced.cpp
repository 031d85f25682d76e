#include "catch.hpp"
#include "scupper/random.hpp"
#include "scupper/traced.hpp"

#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>

using namespace scupper;

namespace test_traced {

namespace {

bool same_bits(double a, double b) {
    return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b);
}

Traced leaf(Recording& recording, double value, const char* name) {
    Label label;
    label.name = name;
    return {value, &recording, recording.leaf(value, label)};
}

/// Every operator and function once, in both arms of a choice.
template <class T>
T everything(const T& a, const T& b, const T& c) {
    using std::abs;
    using std::cos;
    using std::exp;
    using std::log;
    using std::pow;
    using std::sqrt;
    using std::tan;
    T sum = a + b * c - a / (c + 2.0);
    sum += sqrt(abs(a)) + exp(-abs(b)) + log(abs(c) + 1.0);
    sum -= cos(a) * tan(b / 10.0) + pow(abs(a) + 0.5, c / 8.0);
    const T less = min_of(a, b) + max_of(b, c);
    return choose(a < b, sum + less, choose(b <= c || a == c, less - sum, count_up(abs(sum))));
}

} // namespace

TEST_CASE("a formula over Traced gives the bits of the same formula over double") {
    const DrawKey key{7, hash_text("traced"), 0};
    for (std::uint64_t i = 0; i < 3000; ++i) {
        const double a = 20.0 * uniform(key, 3 * i) - 10.0;
        const double b = 20.0 * uniform(key, 3 * i + 1) - 10.0;
        const double c = 20.0 * uniform(key, 3 * i + 2) - 10.0;
        Recording recording;
        const Traced traced = everything<Traced>(leaf(recording, a, "a"), leaf(recording, b, "b"),
                                                 leaf(recording, c, "c"));
        REQUIRE(same_bits(traced.value(), everything(a, b, c)));
        REQUIRE(same_bits(recording.steps()[traced.step_in(recording)].value, traced.value()));
    }
}

TEST_CASE("both arms of a choice are recorded, and which was taken") {
    Recording recording;
    const Traced x = leaf(recording, 3.0, "x");
    const Traced y = choose(x > 2.0, x * 10.0, x + 100.0);
    CHECK(y.value() == 30.0);
    const Step step = y.step_in(recording);
    CHECK(recording.steps()[step].op == Op::choose);
    const auto args = recording.arguments(step);
    REQUIRE(args.size() == 3);
    CHECK(recording.steps()[args[0]].value == 1.0);
    CHECK(recording.steps()[args[1]].value == 30.0);
    CHECK(recording.steps()[args[2]].value == 103.0);
}

TEST_CASE("count_up is a ceiling that a change of unit does not move") {
    CHECK(count_up(2.1) == 3.0);
    CHECK(count_up(3.0) == 3.0);
    CHECK(count_up(0.0) == 0.0);
    CHECK(count_up(1e-12) == 1.0);
    CHECK(std::isnan(count_up(std::numeric_limits<double>::quiet_NaN())));
    for (int n = 1; n < 2000; ++n) {
        const double there_and_back = n * 0.3048 / 0.3048 * (1.0 + 4e-16);
        CHECK(count_up(there_and_back) == n);
        CHECK(count_up(n * 1.0001) == n + 1);
    }
}

TEST_CASE("minimum and maximum keep the first of equals and pass on what is not a number") {
    CHECK(min_of(1.0, 2.0) == 1.0);
    CHECK(max_of(1.0, 2.0) == 2.0);
    CHECK(std::signbit(min_of(-0.0, 0.0)));
    const double nan = std::numeric_limits<double>::quiet_NaN();
    CHECK(std::isnan(min_of(nan, 1.0)));
    CHECK(std::isnan(max_of(nan, 1.0)));
}

TEST_CASE("constants are folded until they meet an input; adding nothing is no step") {
    Recording recording;
    const Traced two = Traced(1.0) + Traced(1.0);
    CHECK(two.recording() == nullptr);
    CHECK(two.value() == 2.0);
    const Traced x = leaf(recording, 5.0, "x");
    const std::size_t before = recording.steps().size();
    const Traced y = 0.0 + x * 1.0;
    CHECK(recording.steps().size() == before);
    CHECK(y.step_in(recording) == x.step_in(recording));
    CHECK((x + 1.0).value() == 6.0);
    CHECK(recording.steps().size() == before + 2); // the constant and the sum
}

TEST_CASE("a solve is one step: inputs, method, result, residual") {
    Recording recording;
    const std::array<Traced, 2> inputs{leaf(recording, 2.0, "p"), leaf(recording, 8.0, "q")};
    const SolveInfo info{"root", "by hand", dim::length};
    const auto solve = [](const std::array<double, 2>& v) {
        return Solved{std::sqrt(v[0] * v[1]), 1e-16};
    };
    const Traced root = solve_opaque(info, inputs, solve);
    CHECK(root.value() == 4.0);
    CHECK(solve_opaque(info, std::array<double, 2>{2.0, 8.0}, solve) == 4.0);
    const Step step = root.step_in(recording);
    CHECK(recording.steps()[step].op == Op::opaque);
    CHECK(recording.arguments(step).size() == 2);
    const Label* label = recording.label(step);
    REQUIRE(label != nullptr);
    CHECK(label->source == "by hand");
    CHECK(label->residual == 1e-16);
    CHECK(recording.solver(step)(std::array<double, 2>{3.0, 12.0}) == 6.0);
    CHECK_THROWS_AS(recording.solver(0), std::out_of_range);
}

TEST_CASE("a recording without names has the values of one with them, and fewer steps") {
    Recording with;
    Recording without(Naming::no_names);
    const auto priced = [](Recording& recording) {
        const Traced x = leaf(recording, 3.0, "x");
        return named("sum", named("product", x * 2.0) + x);
    };
    CHECK(priced(with).value() == priced(without).value());
    CHECK(without.steps().size() + 2 == with.steps().size());
    CHECK(without.label(0) == nullptr);
}

TEST_CASE("quantities of traced numbers check dimensions like any other") {
    Recording recording;
    const Length<Traced> length(leaf(recording, 3.0, "length"));
    const Length<Traced> width(leaf(recording, 2.0, "width"));
    const Area<Traced> area = named("area", length * width);
    CHECK(area.si().value() == 6.0);
    CHECK(choose(length > width, length, width).si().value() == 3.0);
    CHECK(min_of(length, width).si().value() == 2.0);
    CHECK((length / width).value() == 1.5);
}

} // namespace test_traced
