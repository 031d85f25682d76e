#pragma once
// Where every input (or figure) stands in a flat span of numbers, once the rows have names.

#include "scupper/quantity.hpp"
#include "scupper/schema/fixed_text.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace scupper {

/// Which schema a layout lays out.
enum class Schema { inputs, figures };

/// One place of a layout.
struct LayoutField {
    std::string key;     ///< "operation[joint_flushing].time_per_unit"
    std::string label;   ///< what people call it
    Dimension dimension; ///< of the value, the driver of its row taken into account
    double least;        ///< smallest possible value, SI
    double greatest;     ///< greatest possible value, SI
};

/// A named row and the dimension of the quantity that drives it.
struct LayoutRow {
    std::string name;    ///< [text] what stands in the brackets of a key
    Dimension driver{};  ///< dim::none where nothing drives it
    std::string label{}; ///< what people call the row; its name without underscores if empty
    bool in_use = true;  ///< [-] false where the work at hand has no use for the row
};

/// The rows of one group.
struct LayoutRows {
    std::string group;           ///< [text] key of a group that has rows
    std::vector<LayoutRow> rows; ///< [-, n] in the order of their numbers
};

/// A row for every quantity slot, each driven by itself [-, n].
std::vector<LayoutRow> slot_layout_rows();

/// Lays the schema out: group by group, row by row, field by field.
class Layout {
  public:
    Layout() = default;
    /// Builds the layout of a schema with named rows.
    ///
    /// @param schema [-] inputs or figures
    /// @param rows [-, n] the rows of each group that has rows; a group left out has none
    /// Range: every group named has rows in its schema.
    /// Errors: UnknownNameError `schema.group` where a group has no rows or does not exist.
    /// Source: own convention
    Layout(Schema schema, const std::vector<LayoutRows>& rows);

    /// How many numbers it lays out [-].
    std::size_t size() const { return fields_.size(); }
    /// What stands at each place [-, n].
    const std::vector<LayoutField>& fields() const { return fields_; }
    /// Names of the rows of a group, in order.
    ///
    /// @param group [text] group key
    /// @return [text, n] row names; empty where the group has none
    /// Range: any text.
    /// Errors: none.
    /// Source: own convention
    std::vector<std::string> row_names(std::string_view group) const;
    /// Names of the rows of a group that the work at hand has a use for, in order.
    ///
    /// @param group [text] group key
    /// @return [text, n] row names; empty where the group has none
    /// Range: any text.
    /// Errors: none.
    /// Source: own convention
    std::vector<std::string> rows_in_use(std::string_view group) const;
    /// The place of a full key.
    ///
    /// @param key [text] "deck.length", "operation[joint_flushing].time_per_unit"; the row may be
    /// left out where only one of its group is in use: "nozzle.bore"
    /// @return [-] index into the flat span, or nothing
    /// Range: any text.
    /// Errors: none.
    /// Source: own convention
    std::optional<std::size_t> find(std::string_view key) const;
    /// The place of a full key.
    ///
    /// @param key [text] as for `find`
    /// @param path [text] where the key was written, for the error
    /// @return [-] index into the flat span
    /// Range: any text.
    /// Errors: UnknownNameError `schema.key` naming the nearest known key.
    /// Source: own convention
    std::size_t at(std::string_view key, std::string_view path) const;
    /// The place of a field in a row, for keys known when compiling.
    ///
    /// @param place [-] from input_place or figure_place
    /// @param row [-] index of the row, 0 for a group without rows
    /// @return [-] index into the flat span
    /// Range: row < number of rows.
    /// Errors: none.
    /// Source: own convention
    std::size_t place(const FieldPlace& place, std::size_t row) const {
        return offset_[place.group] + row * stride_[place.group] + place.within_group;
    }

  private:
    std::optional<std::size_t> find_full(std::string_view key) const;
    std::string with_only_row(std::string_view key) const;

    static constexpr std::size_t most_groups = 64;
    std::array<std::size_t, most_groups> offset_{};
    std::array<std::size_t, most_groups> stride_{};
    std::vector<LayoutField> fields_;
    std::vector<std::pair<std::string, std::size_t>> sorted_; // key to place
    std::vector<LayoutRows> rows_;
};

} // namespace scupper
