#include "scupper/debris/windrow.hpp"

#include "require.hpp"

#include <numbers>

namespace scupper::debris {

namespace {

void check_repose(const Angle<double>& repose) {
    const double si = repose.si();
    detail::require(si > 0.0 && si < std::numbers::pi / 2.0, "repose", si,
                    "above 0 and below a right angle");
}
void check_repose(const Angle<Traced>&) {}

} // namespace

template <class T>
Windrow<T> windrow(const Volume<T>& volume, const Length<T>& length, const Angle<T>& repose,
                   Lean lean) {
    detail::not_negative("volume", volume);
    detail::positive("length", length);
    check_repose(repose);
    const double slopes = lean == Lean::none ? 2.0 : 1.0;
    const T slope = tan(repose);
    const Area<T> section = named("cross-section of the windrow", volume / length);
    const Length<T> width = named("width of the windrow", sqrt(2.0 * slopes * section / slope));
    return {section, width, named("height of the windrow", width * slope / slopes)};
}

template <class T>
Length<T> clear_shoulder(const Length<T>& shoulder, const Length<T>& width) {
    detail::not_negative("shoulder", shoulder);
    detail::not_negative("width", width);
    return shoulder - width;
}

bool blocks_shoulder(const Length<>& shoulder, const Length<>& width) {
    return clear_shoulder(shoulder, width).si() <= 0.0;
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Windrow<T> windrow(const Volume<T>&, const Length<T>&, const Angle<T>&, Lean);        \
    template Length<T> clear_shoulder(const Length<T>&, const Length<T>&);

SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)

#undef SCUPPER_INSTANTIATE

} // namespace scupper::debris
