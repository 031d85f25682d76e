#include "recorded.hpp"

namespace scupper::estimate {

Derivation explain(const Estimate& e, std::string_view key) {
    const std::size_t place = figure_place_of(*e.plan, key);
    detail::Recorded recorded(e);
    const Step figure = recorded.figure(place);
    return derive(recorded.recording, figure);
}

} // namespace scupper::estimate
