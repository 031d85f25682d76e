#include "price_steps.hpp"

namespace scupper::estimate::detail {

namespace {

/// The water that the limit leaves room for. The choice to fill it so is held in every draw, so a
/// drawn limit may leave less than the least filling: then that is priced.
template <class T>
Volume<T> filled_to_limit(const Inputs<T>& in, const Density<T>& density) {
    const Volume<T> tank = in.template get<"tank.volume">();
    const Mass<T> room = in.template get<"posting.limit">() - in.template get<"tank.empty_mass">();
    const Volume<T> least = tank * in.template get<"posting.least_fill">();
    return min_of(tank, max_of(named("room for water", room / density), least));
}

} // namespace

template <class T>
Length<T> approach_hose(const Inputs<T>& in) {
    return in.template get<"posting.set_back">() +
           in.template get<"deck.length">() * in.template get<"posting.deck_share">();
}

template <class T>
void price_truck(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    const Temperature<T> temperature(in.template get<"water.temperature">().si());
    const Density<T> density = hydraulics::water(temperature).density;
    const Volume<T> fill = ws.figures.template set<"truck.fill">(
        model.posting == Posting::half_fill ? filled_to_limit(in, density)
                                            : in.template get<"tank.volume">());
    ws.figures.template set<"truck.loaded_mass">(in.template get<"tank.empty_mass">() +
                                                 fill * density);
}

template Length<double> approach_hose(const Inputs<double>&);
template Length<Traced> approach_hose(const Inputs<Traced>&);
SCUPPER_INSTANTIATE_STEP(price_truck);

} // namespace scupper::estimate::detail
