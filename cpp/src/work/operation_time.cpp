#include "scupper/work/operation_time.hpp"

namespace scupper::work {

template <class T>
Time<T> clock_time(const Time<T>& productive, const T& productive_share) {
    return productive / productive_share;
}

template <class T>
Volume<T> nozzle_water(const Flow<T>& flow, const Time<T>& productive, const T& trigger_share) {
    return flow * productive * trigger_share;
}

template <class T>
Time<T> trip_time(const Length<T>& distance, const Speed<T>& speed, const Time<T>& stop) {
    return 2.0 * distance / speed + stop;
}

template <class T>
Time<T> waiting_time(const Time<T>& away, const Time<T>& work, const Count<T>& vehicles) {
    return max_of(away - work * (number(vehicles) - 1.0), Time<T>(T(0.0)));
}

template <class T>
Count<T> refills(const Volume<T>& water, const Volume<T>& tank, bool shared) {
    const T full = water / tank;
    return Count<T>(shared ? full : max_of(count_up(full) - 1.0, T(0.0)));
}

template <class T>
Volume<T> water_fetched(const Volume<T>& water, const Volume<T>& tank, bool shared) {
    return shared ? water : max_of(water - tank, Volume<T>(T(0.0)));
}

template Time<double> clock_time(const Time<double>&, const double&);
template Time<Traced> clock_time(const Time<Traced>&, const Traced&);
template Volume<double> nozzle_water(const Flow<double>&, const Time<double>&, const double&);
template Volume<Traced> nozzle_water(const Flow<Traced>&, const Time<Traced>&, const Traced&);
template Time<double> trip_time(const Length<double>&, const Speed<double>&, const Time<double>&);
template Time<Traced> trip_time(const Length<Traced>&, const Speed<Traced>&, const Time<Traced>&);
template Time<double> waiting_time(const Time<double>&, const Time<double>&, const Count<double>&);
template Time<Traced> waiting_time(const Time<Traced>&, const Time<Traced>&, const Count<Traced>&);
template Count<double> refills(const Volume<double>&, const Volume<double>&, bool);
template Count<Traced> refills(const Volume<Traced>&, const Volume<Traced>&, bool);
template Volume<double> water_fetched(const Volume<double>&, const Volume<double>&, bool);
template Volume<Traced> water_fetched(const Volume<Traced>&, const Volume<Traced>&, bool);

} // namespace scupper::work
