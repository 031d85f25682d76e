// A program of somebody else's, with nothing of this project's but its public headers.
#include <array>
#include <iostream>
#include <scupper/error.hpp>
#include <scupper/quantity.hpp>

int main() {
    using namespace scupper::literals;
    constexpr auto deck = 120.0_ft * 40.0_ft;
    constexpr std::array<std::string_view, 2> known{"flushing", "sweeping"};
    const auto nearest = scupper::nearest_name("flusing", known);
    std::cout << deck.in(1.0_ft2) << " ft2, " << nearest << '\n';
    return nearest == "flushing" && deck.in(1.0_ft2) > 4799.0 ? 0 : 1;
}
