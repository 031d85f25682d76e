#pragma once
// The flat span of numbers a price depends on, read by keys known when compiling.

#include "scupper/quantity.hpp"
#include "scupper/schema.hpp"

#include <cstddef>

namespace scupper::estimate {

/// A view of all inputs of one structure under one job. Reading is an index, not a look-up.
template <class T>
class Inputs {
  public:
    Inputs(const Layout& layout, const T* values) : layout_(&layout), values_(values) {}

    /// A field as a quantity of its dimension, or as a plain number where it has none.
    ///
    /// @param row [-] index of the row, 0 for a group without rows
    /// @return [SI unit of its field] the value
    /// Range: row < number of rows of the group.
    /// Errors: none; a misspelt key, or a field that is per unit of a driver, does not compile.
    /// Source: own convention
    template <FixedText Key>
    auto get(std::size_t row = 0) const {
        constexpr FieldPlace place = input_place(Key.view());
        constexpr InputField field = input_table[place.index];
        static_assert(field.per_driver == PerDriver::no, "read a field by driver with raw()");
        return scupper::detail::wrap<field.dimension>(values_[layout_->place(place, row)]);
    }
    /// A field whose dimension follows from the driver of its row, as a plain number.
    ///
    /// @param row [-] index of the row
    /// @return [SI unit of its field, per unit of the row's driver] the value
    /// Range: row < number of rows of the group.
    /// Errors: none; a misspelt key does not compile.
    /// Source: own convention
    template <FixedText Key>
    const T& raw(std::size_t row) const {
        constexpr FieldPlace place = input_place(Key.view());
        return values_[layout_->place(place, row)];
    }
    /// The value at a place of the layout, for code that goes through all fields.
    ///
    /// @param place [-] index into the flat span, from `Layout::find` or `Layout::place`
    /// @return [SI unit of its field] the value
    /// Range: place < size of the layout.
    /// Errors: none.
    /// Source: own convention
    const T& at(std::size_t place) const { return values_[place]; }

  private:
    const Layout* layout_;
    const T* values_;
};

} // namespace scupper::estimate
