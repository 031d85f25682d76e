#pragma once
// Figures as people read them: in the units of the job, and in the unit the trade uses for each.

#include "scupper/job.hpp"
#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"
#include "scupper/unit.hpp"

#include <string>
#include <string_view>

namespace scupper::estimate {

/// The unit system of a word.
///
/// @param word [text] "us", "metric" or "si"
/// @return [-] the system
/// Range: any text.
/// Errors: UnknownNameError `unit.system`.
/// Source: own convention
UnitSystem unit_system(std::string_view word);

/// The units and the currency in which figures are shown.
class Show {
  public:
    /// Shows as a job asks.
    explicit Show(const Job& job);
    /// Shows in a system of units and a currency.
    Show(std::string_view units, std::string currency);

    /// The unit a value is shown in.
    ///
    /// @param dimension [-] of the value
    /// @param key [text] its schema key; empty for a value without one
    /// @return [-] the unit; for time per area or length that of the rate it stands for
    /// Range: any.
    /// Errors: none.
    /// Source: common practice
    /// Verified by: tests/cpp/estimate/test_show.cpp
    Unit unit(const Dimension& dimension, std::string_view key = {}) const;
    /// The number of those units in a value.
    ///
    /// @param si [SI unit of the dimension] the value
    /// @param dimension [-] of the value
    /// @param key [text] its schema key; empty for a value without one
    /// @return [unit as shown] the number; of a time per unit the rate
    /// Range: any.
    /// Errors: none.
    /// Source: definition
    /// Verified by: tests/cpp/estimate/test_show.cpp
    double number(double si, const Dimension& dimension, std::string_view key = {}) const;
    /// A value as text: "1,234 gal"; one that does not exist says so.
    ///
    /// @param si [SI unit of the dimension] the value
    /// @param dimension [-] of the value
    /// @param key [text] its schema key; empty for a value without one
    /// @return [text] number and unit
    /// Range: any.
    /// Errors: none.
    /// Source: common practice
    /// Verified by: tests/cpp/estimate/test_show.cpp
    std::string text(double si, const Dimension& dimension, std::string_view key = {}) const;
    /// A writer for derivations; it holds a copy of this [-].
    ValueWriter writer() const;

  private:
    UnitSystem system_;
    std::string currency_;
};

} // namespace scupper::estimate
