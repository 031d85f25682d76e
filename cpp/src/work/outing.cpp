#include "scupper/work/outing.hpp"

namespace scupper::work {

template <class T>
Time<T> available_time(const Shift<T>& shift) {
    return named("time a shift leaves for work",
                 shift.length - shift.travel - shift.briefing - shift.meal);
}

namespace {
template <class T>
T shift_count(const Time<T>& on_site, const Shift<T>& shift, ShiftSharing sharing,
              const Count<T>& structures_a_shift) {
    const Time<T> available = available_time(shift);
    switch (sharing) {
    case ShiftSharing::whole:
        return count_up(on_site / (available + shift.overtime));
    case ShiftSharing::counted:
    case ShiftSharing::hourly:
        return max_of(T(1.0) / number(structures_a_shift), on_site / available);
    case ShiftSharing::pro_rata:
        break;
    }
    return on_site / available;
}

/// A small overrun of whole shifts; shared ones pay their time in proportion.
template <class T>
Time<T> overrun(const Time<T>& on_site, const Shift<T>& shift, const T& shifts,
                ShiftSharing sharing) {
    const Time<T> none(T(0.0));
    if (sharing != ShiftSharing::whole) {
        return none;
    }
    return named("overtime", max_of(on_site - shifts * available_time(shift), none));
}
} // namespace

template <class T>
OutingHours<T> price_outing(const Time<T>& on_site, const Shift<T>& shift, ShiftSharing sharing,
                            const Count<T>& structures_a_shift) {
    const T shifts = named("shifts", shift_count<T>(on_site, shift, sharing, structures_a_shift));
    OutingHours<T> hours;
    hours.shifts = shifts;
    hours.overtime = overrun(on_site, shift, shifts, sharing);
    hours.travel = shifts * shift.travel;
    hours.briefing = shifts * shift.briefing;
    hours.meal = shifts * shift.meal;
    hours.paid = sharing == ShiftSharing::hourly
                     ? on_site + hours.travel + hours.briefing + hours.meal
                     : shifts * shift.length + hours.overtime;
    hours.idle = hours.paid - on_site - hours.travel - hours.briefing - hours.meal;
    return hours;
}

template Time<double> available_time(const Shift<double>&);
template Time<Traced> available_time(const Shift<Traced>&);
template OutingHours<double> price_outing(const Time<double>&, const Shift<double>&, ShiftSharing,
                                          const Count<double>&);
template OutingHours<Traced> price_outing(const Time<Traced>&, const Shift<Traced>&, ShiftSharing,
                                          const Count<Traced>&);

} // namespace scupper::work
