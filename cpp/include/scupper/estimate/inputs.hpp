#pragma once
// The flat span of numbers a price depends on, read by keys known when compiling.

#include <cstddef>

#include "scupper/quantity.hpp"
#include "scupper/schema.hpp"

namespace scupper::estimate {

/// A view of all inputs of one structure under one job. Reading is an index, not a look-up.
template <class T>
class Inputs {
  public:
    Inputs(const Layout& layout, const T* values) : layout_(&layout), values_(values) {}

    /// A field as a quantity of its dimension, or as a plain number where it has none.
    template <FixedText Key>
    auto get(std::size_t row = 0) const {
        constexpr FieldPlace place = input_place(Key.view());
        constexpr InputField field = input_table[place.index];
        static_assert(field.per_driver == PerDriver::no, "read a field by driver with raw()");
        return scupper::detail::wrap<field.dimension>(values_[layout_->place(place, row)]);
    }
    /// A field whose unit follows from the driver of its row, in SI units of that row.
    template <FixedText Key>
    const T& raw(std::size_t row) const {
        constexpr FieldPlace place = input_place(Key.view());
        return values_[layout_->place(place, row)];
    }
    /// The value at a place of the layout [SI unit of its field].
    const T& at(std::size_t place) const { return values_[place]; }

  private:
    const Layout* layout_;
    const T* values_;
};

} // namespace scupper::estimate
