#pragma once
// The flat span of numbers a price yields, written by keys known when compiling.

#include "scupper/quantity.hpp"
#include "scupper/schema.hpp"
#include "scupper/traced.hpp"

#include <cstddef>
#include <type_traits>
#include <vector>

namespace scupper::estimate {

/// All figures of one structure. Writing a figure also gives it its name in the explanation.
template <class T>
class Figures {
  public:
    Figures() = default;
    explicit Figures(const Layout& layout) : layout_(&layout), values_(layout.size(), T(0.0)) {}

    /// Sets every figure to nothing.
    void clear() { values_.assign(values_.size(), T(0.0)); }

    /// Writes a figure and gives it back named, so that what follows from it is explained by name.
    ///
    /// @param value [SI unit of the figure] a quantity of its dimension, or a plain number
    /// @param row [-] index of the row, 0 for a group without rows
    /// @return [SI unit of the figure] the same value; `Traced` carries the figure's label and key
    /// Range: row < number of rows of the group.
    /// Errors: none; a misspelt key or another dimension does not compile.
    /// Source: own convention
    template <FixedText Key, class Q>
    Q set(const Q& value, std::size_t row = 0) {
        constexpr FieldPlace place = figure_place(Key.view());
        constexpr FigureField field = figure_table[place.index];
        const std::size_t at = layout_->place(place, row);
        if constexpr (scupper::detail::is_quantity<Q>) {
            static_assert(Q::dimension == field.dimension, "the figure has another dimension");
            values_[at] = name(value.si(), at);
            return Q(values_[at]);
        } else {
            static_assert(field.dimension == dim::none, "the figure has a dimension");
            values_[at] = name(value, at);
            return values_[at];
        }
    }
    /// Writes a figure whose dimension follows from the driver of its row, known only when running.
    ///
    /// @param value [SI unit of the row's driver] the figure
    /// @param row [-] index of the row
    /// @return [SI unit of the row's driver] the same value; `Traced` carries its label and key
    /// Range: row < number of rows of the group.
    /// Errors: none; a misspelt key does not compile.
    /// Source: own convention
    template <FixedText Key>
    T set_raw(const T& value, std::size_t row) {
        const std::size_t at = layout_->place(figure_place(Key.view()), row);
        return values_[at] = name(value, at);
    }
    /// A figure that was written, as a quantity of its dimension or as a plain number.
    ///
    /// @param row [-] index of the row, 0 for a group without rows
    /// @return [SI unit of the figure] its value; zero where it was not written since `clear`
    /// Range: row < number of rows of the group.
    /// Errors: none; a misspelt key does not compile.
    /// Source: own convention
    template <FixedText Key>
    auto get(std::size_t row = 0) const {
        constexpr FieldPlace place = figure_place(Key.view());
        constexpr FigureField field = figure_table[place.index];
        return scupper::detail::wrap<field.dimension>(values_[layout_->place(place, row)]);
    }
    /// The value at a place of the layout, for code that goes through all fields.
    ///
    /// @param place [-] index into the flat span, from `Layout::find` or `Layout::place`
    /// @return [SI unit of its field] the value
    /// Range: place < size of the layout.
    /// Errors: none.
    /// Source: own convention
    const T& at(std::size_t place) const { return values_[place]; }
    /// All values in the order of the layout [SI unit of each, n].
    const std::vector<T>& values() const { return values_; }

  private:
    T name(const T& value, std::size_t at) const {
        if constexpr (std::is_same_v<T, double>) {
            return value;
        } else {
            const LayoutField& field = layout_->fields()[at];
            return named(field.label, value, field.dimension, field.key);
        }
    }

    const Layout* layout_ = nullptr;
    std::vector<T> values_;
};

} // namespace scupper::estimate
