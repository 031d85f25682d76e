#pragma once
// The bill of quantities while it is written: given quantities replace computed ones here.

#include "scupper/takeoff/quantities.hpp"
#include "scupper/traced.hpp"

#include <string_view>

namespace scupper::takeoff {

namespace detail {

/// "takeoff[cap_area].quantity" for one slot.
template <Slot S>
struct FigureKey {
    static constexpr std::string_view before = "takeoff[";
    static constexpr std::string_view after = "].quantity";
    static constexpr std::size_t size = before.size() + slot_table[S].key.size() + after.size();
    static constexpr std::array<char, size> text = [] {
        std::array<char, size> out{};
        std::size_t n = 0;
        for (const std::string_view part : {before, slot_table[S].key, after}) {
            for (const char c : part) {
                out[n++] = c;
            }
        }
        return out;
    }();
    static constexpr std::string_view view{text.data(), size};
};

} // namespace detail

/// What has been taken off so far, and what is given instead.
template <class T>
class Bill {
  public:
    explicit Bill(const Given<T>& given) : given_(given) {}

    /// Whether somebody counted or measured the slot.
    bool is_given(Slot slot) const { return given_.is_given[slot]; }

    /// Enters a quantity, or the given one in its place, and returns what stands there now.
    template <Slot S>
    Quantity<slot_table[S].dimension, T> put(const Quantity<slot_table[S].dimension, T>& computed) {
        using Entry = Quantity<slot_table[S].dimension, T>;
        out_.by_slot[S] =
            is_given(S) ? given_.value[S]
                        : named(slot_table[S].label, computed, detail::FigureKey<S>::view).si();
        return Entry(out_.by_slot[S]);
    }
    /// The given quantity of a slot that is given.
    template <Slot S>
    Quantity<slot_table[S].dimension, T> given() const {
        return Quantity<slot_table[S].dimension, T>(given_.value[S]);
    }
    /// What stands in a slot.
    template <Slot S>
    Quantity<slot_table[S].dimension, T> get() const {
        return Quantity<slot_table[S].dimension, T>(out_.by_slot[S]);
    }
    const Quantities<T>& quantities() const { return out_; }

  private:
    const Given<T>& given_;
    Quantities<T> out_;
};

/// How many items a category counts.
template <class T>
Count<T> count_of(int items) {
    return Count<T>(T(static_cast<double>(items)));
}

} // namespace scupper::takeoff
