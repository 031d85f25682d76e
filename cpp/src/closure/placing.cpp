#include "scupper/closure/placing.hpp"

#include "lines.hpp"
#include "require.hpp"
#include "scupper/closure/signs.hpp"
#include "scupper/traced.hpp"

#include <algorithm>
#include <array>

namespace scupper::closure {
namespace {

using namespace scupper::literals;

constexpr std::string_view with_traffic = "closed_lane";
constexpr std::string_view against = "opposite";
constexpr Speed<> slow_end = 45.0_mph;
constexpr Speed<> middle_end = 55.0_mph;

std::string_view sign_of(const Element& e) {
    const char last = e.name.back();
    return last == 'c' ? "advance_sign_c" : last == 'b' ? "advance_sign_b" : "advance_sign_a";
}

int approaches(const Plan& plan) {
    return plan.opposite_approach > 0.0_ft ? 2 : 1;
}

/// Signs of one place of one approach: two where they stand on both sides of the road.
Count<> signs_at_a_place(const Plan& plan) {
    const auto places =
        std::count_if(plan.elements.begin(), plan.elements.end(), detail::is_warning);
    return Count<>(static_cast<double>(plan.advance_signs) /
                   (static_cast<double>(places) * approaches(plan)));
}

void place_signs(const Plan& plan, std::vector<Placing>& order) {
    for (const Element& e : plan.elements) {
        if (detail::is_warning(e)) {
            order.push_back({sign_of(e), with_traffic, e.start, 0.0_ft, signs_at_a_place(plan)});
        }
    }
    for (const Element& e : plan.elements) {
        if (detail::is_warning(e) && approaches(plan) > 1) {
            order.push_back({sign_of(e), against, plan.length + plan.opposite_approach - e.start,
                             0.0_ft, signs_at_a_place(plan)});
        }
    }
}

void place_pieces(std::string_view what, int pieces, const Length<>& station,
                  std::vector<Placing>& order) {
    if (pieces > 0) {
        order.push_back({what, with_traffic, station, 0.0_ft, Count<>(pieces)});
    }
}

} // namespace

Length<> roll_ahead(const Speed<>& speed) {
    detail::positive("speed", speed);
    const double slack = 1.0 + count_slack;
    return speed <= slow_end * slack ? 75.0_ft : speed <= middle_end * slack ? 100.0_ft : 150.0_ft;
}

std::vector<Placing> placing_order(const Plan& plan) {
    std::vector<Placing> order;
    place_signs(plan, order);
    place_pieces("flagger", plan.flaggers, detail::first_line(plan), order);
    place_pieces("shadow_vehicle", plan.shadow_vehicles, detail::shadow_station(plan), order);
    place_pieces("arrow_board", plan.arrow_boards, detail::first_board(plan), order);
    for (const Element& e : plan.elements) {
        if (!detail::is_warning(e)) {
            order.push_back({e.name, with_traffic, e.start, e.length, e.devices});
        }
    }
    return order;
}

std::vector<Placing> taking_order(const Plan& plan) {
    std::vector<Placing> order = placing_order(plan);
    std::reverse(order.begin(), order.end());
    return order;
}

} // namespace scupper::closure
