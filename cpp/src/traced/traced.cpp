#include "scupper/traced/traced.hpp"

#include <array>
#include <utility>
#include <vector>

#include "scupper/traced/choose.hpp"
#include "scupper/traced/named.hpp"

namespace scupper {

namespace {

Recording* recording_of(const Traced& a, const Traced& b) {
    return a.recording() != nullptr ? a.recording() : b.recording();
}

Traced unary(Op op, double value, const Traced& a) {
    if (a.recording() == nullptr) {
        return value;
    }
    const std::array<Step, 1> args{a.step_in(*a.recording())};
    return {value, a.recording(), a.recording()->record(op, value, args)};
}

Traced binary(Op op, double value, const Traced& a, const Traced& b) {
    Recording* r = recording_of(a, b);
    if (r == nullptr) {
        return value;
    }
    const std::array<Step, 2> args{a.step_in(*r), b.step_in(*r)};
    return {value, r, r->record(op, value, args)};
}

/// A constant that changes nothing where it stands is not worth a step: the value is the same.
bool is_plain(const Traced& a, double value) {
    return a.recording() == nullptr && a.value() == value;
}

Traced with_value(double value, const Traced& a) {
    return a.recording() == nullptr ? Traced(value)
                                    : Traced(value, a.recording(), a.step_in(*a.recording()));
}

TracedCondition compare(Op op, bool outcome, const Traced& a, const Traced& b) {
    Recording* r = recording_of(a, b);
    if (r == nullptr) {
        return {outcome, nullptr, 0};
    }
    const std::array<Step, 2> args{a.step_in(*r), b.step_in(*r)};
    return {outcome, r, r->record(op, outcome ? 1.0 : 0.0, args)};
}

Step condition_step(const TracedCondition& c, Recording& r) {
    return c.recording() != nullptr ? c.step()
                                    : r.record(Op::constant, c.value() ? 1.0 : 0.0, {});
}

TracedCondition join(Op op, bool outcome, const TracedCondition& a, const TracedCondition& b) {
    Recording* r = a.recording() != nullptr ? a.recording() : b.recording();
    if (r == nullptr) {
        return {outcome, nullptr, 0};
    }
    const std::array<Step, 2> args{condition_step(a, *r), condition_step(b, *r)};
    return {outcome, r, r->record(op, outcome ? 1.0 : 0.0, args)};
}

} // namespace

Step Traced::step_in(Recording& recording) const {
    if (recording_ != nullptr) {
        return step_;
    }
    std::int32_t label = -1;
    if (constant_ != nullptr && recording.has_names()) {
        label = recording.add_label({.name = std::string(constant_->name),
                                     .key = {},
                                     .dimension = constant_->dimension,
                                     .basis = {},
                                     .source = std::string(constant_->source)});
    }
    return recording.record(Op::constant, value_, {}, label);
}

Traced& Traced::operator+=(const Traced& b) { return *this = *this + b; }
Traced& Traced::operator-=(const Traced& b) { return *this = *this - b; }
Traced Traced::operator-() const { return unary(Op::negate, -value_, *this); }

Traced operator+(const Traced& a, const Traced& b) {
    if (is_plain(a, 0.0)) {
        return with_value(a.value_ + b.value_, b);
    }
    if (is_plain(b, 0.0)) {
        return with_value(a.value_ + b.value_, a);
    }
    return binary(Op::add, a.value_ + b.value_, a, b);
}
Traced operator-(const Traced& a, const Traced& b) {
    return binary(Op::subtract, a.value_ - b.value_, a, b);
}
Traced operator*(const Traced& a, const Traced& b) {
    if (is_plain(a, 1.0)) {
        return with_value(a.value_ * b.value_, b);
    }
    if (is_plain(b, 1.0)) {
        return with_value(a.value_ * b.value_, a);
    }
    return binary(Op::multiply, a.value_ * b.value_, a, b);
}
Traced operator/(const Traced& a, const Traced& b) {
    return binary(Op::divide, a.value_ / b.value_, a, b);
}
TracedCondition operator<(const Traced& a, const Traced& b) {
    return compare(Op::less, a.value_ < b.value_, a, b);
}
TracedCondition operator<=(const Traced& a, const Traced& b) {
    return compare(Op::less_equal, a.value_ <= b.value_, a, b);
}
TracedCondition operator==(const Traced& a, const Traced& b) {
    return compare(Op::equal, a.value_ == b.value_, a, b);
}

Traced sqrt(const Traced& a) { return unary(Op::sqrt, std::sqrt(a.value()), a); }
Traced exp(const Traced& a) { return unary(Op::exp, std::exp(a.value()), a); }
Traced log(const Traced& a) { return unary(Op::log, std::log(a.value()), a); }
Traced cos(const Traced& a) { return unary(Op::cos, std::cos(a.value()), a); }
Traced tan(const Traced& a) { return unary(Op::tan, std::tan(a.value()), a); }
Traced abs(const Traced& a) { return unary(Op::abs, std::abs(a.value()), a); }
Traced ceil(const Traced& a) { return unary(Op::ceil, std::ceil(a.value()), a); }
Traced pow(const Traced& a, const Traced& b) {
    return binary(Op::power, std::pow(a.value(), b.value()), a, b);
}
Traced min_of(const Traced& a, const Traced& b) {
    return binary(Op::min, min_of(a.value(), b.value()), a, b);
}
Traced max_of(const Traced& a, const Traced& b) {
    return binary(Op::max, max_of(a.value(), b.value()), a, b);
}
Traced count_up(const Traced& x) { return unary(Op::count_up, count_up(x.value()), x); }

TracedCondition operator&&(const TracedCondition& a, const TracedCondition& b) {
    return join(Op::both, a.value() && b.value(), a, b);
}
TracedCondition operator||(const TracedCondition& a, const TracedCondition& b) {
    return join(Op::either, a.value() || b.value(), a, b);
}
TracedCondition operator!(const TracedCondition& a) {
    if (a.recording() == nullptr) {
        return {!a.value(), nullptr, 0};
    }
    const std::array<Step, 1> args{a.step()};
    return {!a.value(), a.recording(),
            a.recording()->record(Op::negation, a.value() ? 0.0 : 1.0, args)};
}

Traced choose(const TracedCondition& condition, const Traced& if_true, const Traced& if_false) {
    const double value = choose(condition.value(), if_true.value(), if_false.value());
    Recording* r = condition.recording() != nullptr ? condition.recording()
                                                    : recording_of(if_true, if_false);
    if (r == nullptr) {
        return value;
    }
    const std::array<Step, 3> args{condition_step(condition, *r), if_true.step_in(*r),
                                   if_false.step_in(*r)};
    return {value, r, r->record(Op::choose, value, args)};
}

Traced named(std::string_view name, const Traced& value, const Dimension& dimension,
             std::string_view key) {
    Recording* r = value.recording();
    if (r == nullptr || !r->has_names()) {
        return value;
    }
    const std::array<Step, 1> args{value.step_in(*r)};
    const std::int32_t label =
        r->add_label({.name = std::string(name), .key = std::string(key), .dimension = dimension,
                      .basis = {}, .source = {}});
    return {value.value(), r, r->record(Op::named, value.value(), args, label)};
}

namespace detail {
Traced record_solve(const SolveInfo& info, const Solved& solved, std::span<const Traced> inputs,
                    Solver solver) {
    Recording* r = nullptr;
    for (std::size_t i = 0; i < inputs.size() && r == nullptr; ++i) {
        r = inputs[i].recording();
    }
    if (r == nullptr) {
        return solved.value;
    }
    std::vector<Step> args;
    for (const Traced& input : inputs) {
        args.push_back(input.step_in(*r));
    }
    const std::int32_t label = r->has_names() ? r->add_label({.name = std::string(info.name),
                                                              .key = {},
                                                              .dimension = info.dimension,
                                                              .basis = {},
                                                              .source = std::string(info.method),
                                                              .residual = solved.residual})
                                              : -1;
    return {solved.value, r, r->solve(solved.value, args, label, std::move(solver))};
}
} // namespace detail

} // namespace scupper
