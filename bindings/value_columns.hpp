#pragma once
// Values of a library as columns of a table, in a system of units.

#include "convert.hpp"
#include "scupper/estimate.hpp"

#include <limits>
#include <optional>
#include <string>
#include <tuple>
#include <vector>

namespace scupper::python {

/// Name, unit and values of a column; the unit of text and plain numbers is "1".
using Column = std::tuple<std::string, std::string, py::object>;
using Table = std::vector<Column>;

inline constexpr double absent = std::numeric_limits<double>::quiet_NaN();

/// Low, likely and high of one value of every row, then its source and date.
class ValueColumns {
  public:
    ValueColumns(std::string group, std::string name, Dimension dimension,
                 const estimate::Show& show)
        : group_(std::move(group)), name_(std::move(name)), dimension_(dimension), show_(&show) {}

    void add(const std::optional<Setting>& value) {
        low_.push_back(value ? shown(value->value.guess.low) : absent);
        likely_.push_back(value ? shown(value->value.guess.likely) : absent);
        high_.push_back(value ? shown(value->value.guess.high) : absent);
        source_.push_back(value ? value->origin->source : "");
        date_.push_back(value ? value->origin->date : "");
    }
    void put(Table& table) const {
        const std::string unit =
            dimension_ == dim::none ? "1" : show_->unit(dimension_, key()).name;
        table.emplace_back(name_ + "_low", unit, py::cast(low_));
        table.emplace_back(name_, unit, py::cast(likely_));
        table.emplace_back(name_ + "_high", unit, py::cast(high_));
        table.emplace_back(name_ + "_source", "1", py::cast(source_));
        table.emplace_back(name_ + "_date", "1", py::cast(date_));
    }

  private:
    /// As the input schema names it, so that a bore is shown in the unit of the trade.
    std::string key() const { return group_ + "[kind]." + name_; }
    double shown(double si) const { return show_->number(si, dimension_, key()); }

    std::string group_, name_;
    Dimension dimension_;
    const estimate::Show* show_;
    std::vector<double> low_, likely_, high_;
    std::vector<std::string> source_, date_;
};

} // namespace scupper::python
