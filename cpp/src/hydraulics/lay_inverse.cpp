#include "scupper/hydraulics/lay_inverse.hpp"

#include "bracketed.hpp"
#include "require.hpp"
#include "scupper/hydraulics/friction.hpp"
#include "scupper/hydraulics/lay_solution.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace scupper::hydraulics {
namespace {

constexpr double far = 1e5;         // metre of hose or height
constexpr double strong = 1e9;      // pascal
constexpr double small = 1e-11;     // of what is wanted
constexpr std::size_t many = 10000; // equal nozzles

[[noreturn]] void no_answer(const std::string& path, const std::string& best,
                            const std::string& wanted) {
    throw SolveError({"hydraulics.no_answer", path, best, wanted});
}

std::string pascals(double p) {
    return std::to_string(p) + " Pa";
}

void require_wanted(const char* name, double wanted) {
    detail::require(!(wanted > 0.0 && std::isfinite(wanted)), name, wanted, "> 0 and finite");
}

void require_nozzle(const HoseLay& lay, std::size_t nozzle) {
    detail::require(nozzle >= lay.nozzles.size(), "nozzle", static_cast<double>(nozzle),
                    "the index of a nozzle");
}

/// Refuses a segment that the nozzle's water does not pass.
void require_on_way(const HoseLay& lay, std::size_t segment, std::size_t nozzle) {
    std::size_t s = lay.nozzles[nozzle].at;
    while (s != at_pump && s != segment) {
        s = lay.segments[s].from;
    }
    if (s == at_pump) {
        throw InputError({"hydraulics.segment", "segment", std::to_string(segment),
                          "a segment between the pump and the nozzle"});
    }
}

void require_question(const HoseLay& lay, std::size_t segment, std::size_t nozzle,
                      const Pressure<>& wanted) {
    check_lay(lay);
    require_nozzle(lay, nozzle);
    require_on_way(lay, segment, nozzle);
    require_wanted("pressure", wanted.si());
}

double pressure_at(const HoseLay& lay, std::size_t nozzle) {
    LaySolver solver(lay);
    solver.run();
    return solver.nozzle_pressure(nozzle).si();
}

/// The root of a monotone function of two signs at low and high.
template <class F>
double search(F&& excess, detail::Root low, detail::Root high, double scale) {
    const double first = low.x + (high.x - low.x) * low.f / (low.f - high.f);
    return detail::bracketed_root(excess, low, high, first, small * scale).x;
}

/// Doubles the distance from `from` until the excess changes sign or the limit is reached.
template <class F>
detail::Root reach(F&& excess, const detail::Root& from, double step, double limit) {
    detail::Root next = from;
    while ((next.f > 0.0) == (from.f > 0.0) && std::abs(next.x) < limit) {
        const double x = std::clamp(from.x + step, -limit, limit);
        next = {x, excess(x)};
        step *= 2.0;
    }
    return next;
}

bool same_side(const detail::Root& a, const detail::Root& b) {
    return (a.f > 0.0) == (b.f > 0.0);
}

/// The rise from the pump to a nozzle.
Length<> lift_of(const HoseLay& lay, std::size_t nozzle) {
    Length<> sum;
    for (std::size_t s = lay.nozzles[nozzle].at; s != at_pump; s = lay.segments[s].from) {
        sum += lay.segments[s].rise;
    }
    return sum;
}

} // namespace

Pressure<> pump_pressure_for(const HoseLay& lay, std::size_t nozzle, const Pressure<>& wanted) {
    check_lay(lay);
    require_nozzle(lay, nozzle);
    require_wanted("pressure", wanted.si());
    HoseLay asked = lay;
    asked.pump = Pump{};
    asked.pump.pressure = wanted;
    LaySolver solver(asked);
    const auto excess = [&](double p) {
        solver.set_pressure(Pressure<>(p));
        solver.run();
        return (solver.nozzle_pressure(nozzle) - wanted).si();
    };
    const Pressure<> lift = static_pressure(lift_of(lay, nozzle), water_density(lay.temperature));
    const double least = std::max((wanted + lift).si(), small * wanted.si());
    const detail::Root low{least, excess(least)};
    if (low.f >= 0.0) {
        if (least > small * wanted.si()) {
            return Pressure<>(least); // no loss on the way
        }
        no_answer("pump.pressure", pascals(low.f + wanted.si()) + " without a pump",
                  "a wanted pressure above it");
    }
    const detail::Root high = reach(excess, low, std::max(wanted.si(), least), strong);
    if (high.f < 0.0) {
        no_answer("pump.pressure", pascals(high.f + wanted.si()) + " at 1 GPa",
                  pascals(wanted.si()));
    }
    return Pressure<>(search(excess, low, high, wanted.si()));
}

Length<> longest_hose(const HoseLay& lay, std::size_t segment, std::size_t nozzle,
                      const Pressure<>& wanted) {
    require_question(lay, segment, nozzle, wanted);
    HoseLay asked = lay;
    const auto excess = [&](double length) {
        asked.segments[segment].hose.length = Length<>(length);
        return pressure_at(asked, nozzle) - wanted.si();
    };
    const std::string path = "segments[" + std::to_string(segment) + "].length";
    const detail::Root none{0.0, excess(0.0)};
    if (none.f < 0.0) {
        no_answer(path, pascals(none.f + wanted.si()) + " without it", pascals(wanted.si()));
    }
    const detail::Root high = reach(excess, none, 1.0, far);
    if (same_side(none, high)) {
        no_answer(path, pascals(high.f + wanted.si()) + " at 100 km", "a length that matters");
    }
    return Length<>(search(excess, none, high, wanted.si()));
}

Length<> greatest_lift(const HoseLay& lay, std::size_t segment, std::size_t nozzle,
                       const Pressure<>& wanted) {
    require_question(lay, segment, nozzle, wanted);
    HoseLay asked = lay;
    const auto excess = [&](double rise) {
        asked.segments[segment].rise = Length<>(rise);
        return pressure_at(asked, nozzle) - wanted.si();
    };
    const double now = lay.segments[segment].rise.si();
    const detail::Root here{now, excess(now)};
    const detail::Root there = reach(excess, here, here.f > 0.0 ? 1.0 : -1.0, far);
    if (same_side(here, there)) {
        no_answer("segments[" + std::to_string(segment) + "].rise",
                  pascals(there.f + wanted.si()) + " at 100 km", pascals(wanted.si()));
    }
    return Length<>(search(excess, here, there, wanted.si()));
}

Length<> nozzle_bore_for(const HoseLay& lay, std::size_t nozzle, const Flow<>& wanted) {
    check_lay(lay);
    require_nozzle(lay, nozzle);
    require_wanted("flow", wanted.si());
    HoseLay asked = lay;
    LayNozzle& tip = asked.nozzles[nozzle];
    tip.state = NozzleState::open;
    const auto excess = [&](double bore) {
        tip.tip.bore = Length<>(bore);
        LaySolver solver(asked);
        solver.run();
        return (solver.nozzle_flow(nozzle) - wanted).si();
    };
    const bool pump = tip.at == at_pump;
    const double most = pump ? 0.3 : lay.segments[tip.at].hose.bore.si();
    const detail::Root open{most, excess(most)};
    if (open.f < 0.0) {
        no_answer("nozzles[" + std::to_string(nozzle) + "].bore",
                  std::to_string((Flow<>(open.f) + wanted).si()) + " m3/s from the open hose",
                  std::to_string(wanted.si()) + " m3/s");
    }
    const detail::Root low{0.0, -wanted.si()}; // no bore, no flow
    return Length<>(search(excess, low, open, wanted.si()));
}

namespace {

/// The lay with a leg, and all that hangs on it, n times.
HoseLay with_legs(const HoseLay& lay, std::size_t leg, std::size_t n) {
    const std::size_t count = lay.segments.size();
    std::vector<std::size_t> members{leg};
    std::vector<char> inside(count, 0);
    inside[leg] = 1;
    for (std::size_t k = 0; k < members.size(); ++k) { // grows while it runs
        for (std::size_t s = 0; s < count; ++s) {
            if (lay.segments[s].from == members[k]) {
                members.push_back(s);
                inside[s] = 1;
            }
        }
    }
    HoseLay out = lay;
    std::vector<std::size_t> moved(count);
    for (std::size_t copy = 1; copy < n; ++copy) {
        const std::string mark = " #" + std::to_string(copy + 1);
        for (const std::size_t s : members) {
            moved[s] = out.segments.size();
            out.segments.push_back(lay.segments[s]);
            out.segments.back().name += mark;
            if (s != leg) {
                out.segments.back().from = moved[lay.segments[s].from];
            }
        }
        for (const LayNozzle& nozzle : lay.nozzles) {
            if (nozzle.at != at_pump && inside[nozzle.at]) {
                out.nozzles.push_back(nozzle);
                out.nozzles.back().name += mark;
                out.nozzles.back().at = moved[nozzle.at];
            }
        }
    }
    return out;
}

/// Equal nozzles at one point let through as much as one of n times the coefficient.
HoseLay with_nozzles(const HoseLay& lay, std::size_t nozzle, std::size_t n) {
    HoseLay out = lay;
    double& c = out.nozzles[nozzle].tip.discharge_coefficient;
    c *= static_cast<double>(n);
    return out;
}

} // namespace

std::size_t nozzle_count(const HoseLay& lay, std::size_t nozzle, std::size_t leg,
                         const Pressure<>& wanted) {
    check_lay(lay);
    require_nozzle(lay, nozzle);
    require_wanted("pressure", wanted.si());
    if (leg != at_pump) {
        require_on_way(lay, leg, nozzle);
    }
    const auto enough = [&](std::size_t n) {
        const HoseLay asked =
            leg == at_pump ? with_nozzles(lay, nozzle, n) : with_legs(lay, leg, n);
        return pressure_at(asked, nozzle) >= wanted.si();
    };
    if (!enough(1)) {
        no_answer("nozzles", pascals(pressure_at(lay, nozzle)) + " with one", pascals(wanted.si()));
    }
    std::size_t good = 1;
    std::size_t bad = 2;
    while (bad <= many && enough(bad)) {
        good = bad;
        bad *= 2;
    }
    if (good == many || (bad > many && enough(many))) {
        no_answer("nozzles", "enough pressure with 10,000", "a number that matters");
    }
    bad = std::min(bad, many);
    while (bad - good > 1) {
        const std::size_t middle = good + (bad - good) / 2;
        (enough(middle) ? good : bad) = middle;
    }
    return good;
}

namespace {

void require_bore_law(const HoseLay& lay, std::size_t segment) {
    if (lay.segments[segment].hose.law == FrictionLaw::hose_coefficient) {
        throw InputError({"hydraulics.law", "segments[" + std::to_string(segment) + "].coefficient",
                          "a hose coefficient, which holds for one bore only",
                          "a segment with roughness or Hazen-Williams C"});
    }
}

/// The narrowest bore whose roughness the friction factor still covers.
double narrowest(const Segment<>& hose) {
    const double rough = hose.law == FrictionLaw::darcy_weisbach ? hose.roughness.si() : 0.0;
    return std::max(1e-3, rough / roughest * (1.0 + 1e-12));
}

} // namespace

Length<> smallest_bore(const HoseLay& lay, std::size_t segment, std::size_t nozzle,
                       const Pressure<>& wanted) {
    require_question(lay, segment, nozzle, wanted);
    require_bore_law(lay, segment);
    HoseLay asked = lay;
    const auto excess = [&](double bore) {
        asked.segments[segment].hose.bore = Length<>(bore);
        return pressure_at(asked, nozzle) - wanted.si();
    };
    const double narrow = narrowest(lay.segments[segment].hose);
    const detail::Root low{narrow, excess(narrow)};
    if (low.f >= 0.0) {
        return Length<>(narrow);
    }
    const detail::Root high = reach(excess, low, narrow, 1.0);
    if (high.f < 0.0) {
        no_answer("segments[" + std::to_string(segment) + "].bore",
                  pascals(high.f + wanted.si()) + " with a bore of 1 m", pascals(wanted.si()));
    }
    return Length<>(search(excess, low, high, wanted.si()));
}

Length<> smallest_bore(const HoseLay& lay, std::size_t segment, std::size_t nozzle,
                       const Pressure<>& wanted, const std::vector<Length<>>& bores) {
    const Length<> least = smallest_bore(lay, segment, nozzle, wanted);
    Length<> best(INFINITY);
    for (const Length<>& bore : bores) {
        if (bore >= least * (1.0 - 1e-12) && bore < best) {
            best = bore;
        }
    }
    if (std::isinf(best.si())) {
        no_answer("bores", "none", "a bore of at least " + std::to_string(least.si()) + " m");
    }
    return best;
}

} // namespace scupper::hydraulics
