#include "scupper/hydraulics/trade_friction.hpp"

#include "require.hpp"
#include "scupper/hydraulics/friction.hpp"
#include "scupper/traced.hpp"

#include <cmath>

namespace scupper::hydraulics {
namespace {

using namespace scupper::literals;

// Loss per length = factor * (flow / C)^flow_power / bore^bore_power in the units of the form.
struct FormConstants {
    double factor;
    double flow_power;
    double bore_power;
    Flow<double> flow_unit;
    Length<double> bore_unit;
    Length<double> length_unit;
    Length<double> head_unit; // one of these two is zero
    Pressure<double> pressure_unit;
};

constexpr FormConstants constants_of(HazenWilliamsForm form) {
    switch (form) {
    case HazenWilliamsForm::si_10_67_4_8704:
        return {10.67, 1.852, 4.8704, 1.0_m3ps, 1.0_m, 1.0_m, 1.0_m, 0.0_psi};
    case HazenWilliamsForm::us_1043_94_4_8655:
        return {1043.94, 1.852, 4.8655, 1.0_gpm, 1.0_in, 100.0_ft, 1.0_ft, 0.0_psi};
    case HazenWilliamsForm::us_4_52_4_87:
        return {4.52, 1.85, 4.87, 1.0_gpm, 1.0_in, 1.0_ft, 0.0_ft, 1.0_psi};
    case HazenWilliamsForm::us_4_52_4_8655:
        break;
    }
    return {4.52, 1.852, 4.8655, 1.0_gpm, 1.0_in, 1.0_ft, 0.0_ft, 1.0_psi};
}

} // namespace

double hazen_williams_power(HazenWilliamsForm form) {
    return constants_of(form).flow_power;
}

template <class T>
Pressure<T> hazen_williams_loss(HazenWilliamsForm form, const Flow<T>& flow, const Length<T>& bore,
                                const Length<T>& length, const T& coefficient,
                                const Density<T>& density) {
    using std::pow;
    detail::not_negative("flow", flow);
    detail::positive("bore", bore);
    detail::not_negative("length", length);
    detail::positive("coefficient", coefficient);
    const FormConstants form_is = constants_of(form);
    const T slope = form_is.factor *
                    pow(flow.in(form_is.flow_unit) / coefficient, T(form_is.flow_power)) /
                    pow(bore.in(form_is.bore_unit), T(form_is.bore_power));
    const T loss = slope * length.in(form_is.length_unit);
    if (form_is.pressure_unit.si() > 0.0) {
        return loss * Pressure<T>(form_is.pressure_unit);
    }
    return static_pressure<T>(loss * Length<T>(form_is.head_unit), density);
}

template <class T>
Pressure<T> hose_coefficient_loss(const Flow<T>& flow, const Length<T>& length,
                                  const T& coefficient) {
    detail::not_negative("flow", flow);
    detail::not_negative("length", length);
    detail::not_negative("coefficient", coefficient);
    const T hundreds = flow.in(100.0_gpm);
    return coefficient * (hundreds * hundreds) * length.in(100.0_ft) * Pressure<T>(1.0_psi);
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Pressure<T> hazen_williams_loss(HazenWilliamsForm, const Flow<T>&, const Length<T>&,  \
                                             const Length<T>&, const T&, const Density<T>&);       \
    template Pressure<T> hose_coefficient_loss(const Flow<T>&, const Length<T>&, const T&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::hydraulics
