#include "scupper/work/outing.hpp"

namespace scupper::work {

template <class T>
Time<T> available_time(const Shift<T>& shift) {
    return named("time a shift leaves on site",
                 min_of(shift.length - shift.travel - shift.briefing - shift.meal,
                        shift.window - shift.meal));
}

template <class T>
Time<T> work_time(const Shift<T>& shift) {
    return named("time a shift leaves for work", available_time(shift) - shift.closure);
}

template <class T>
Count<T> closures(const Time<T>& work, const Shift<T>& shift, ShiftSharing sharing,
                  const Count<T>& structures_a_closure) {
    const Time<T> longest =
        sharing == ShiftSharing::whole ? work_time(shift) + shift.overtime : work_time(shift);
    const T together = number(structures_a_closure);
    return Count<T>(count_up(together * (work / longest)) / together);
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

/// Shared pro rata, a shift is idle only while it waits for the window; written so that it is
/// exactly nothing where the window does not bind.
template <class T>
Time<T> idle_time(const Time<T>& on_site, const Shift<T>& shift, ShiftSharing sharing,
                  const OutingHours<T>& hours) {
    switch (sharing) {
    case ShiftSharing::hourly:
        return Time<T>(T(0.0));
    case ShiftSharing::pro_rata:
        return hours.shifts *
               (shift.length - shift.travel - shift.briefing - shift.meal - available_time(shift));
    case ShiftSharing::whole:
    case ShiftSharing::counted:
        break;
    }
    return hours.paid - on_site - hours.travel - hours.briefing - hours.meal;
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
    hours.idle = idle_time(on_site, shift, sharing, hours);
    return hours;
}

template Time<double> available_time(const Shift<double>&);
template Time<Traced> available_time(const Shift<Traced>&);
template Time<double> work_time(const Shift<double>&);
template Time<Traced> work_time(const Shift<Traced>&);
template Count<double> closures(const Time<double>&, const Shift<double>&, ShiftSharing,
                                const Count<double>&);
template Count<Traced> closures(const Time<Traced>&, const Shift<Traced>&, ShiftSharing,
                                const Count<Traced>&);
template OutingHours<double> price_outing(const Time<double>&, const Shift<double>&, ShiftSharing,
                                          const Count<double>&);
template OutingHours<Traced> price_outing(const Time<Traced>&, const Shift<Traced>&, ShiftSharing,
                                          const Count<Traced>&);

} // namespace scupper::work
