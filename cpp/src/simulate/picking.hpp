#pragma once
// Picks the best visits, one after the other. Internal to the part.

#include "scupper/simulate/survey_list.hpp"
#include "strata.hpp"

#include <array>
#include <map>

namespace scupper::simulate::detail {

/// The expected cost of all structures together by strata of what they share of an input, as far as
/// nobody has measured it. The same bits in whatever order structures are added.
class SharedTotals {
  public:
    using Part = std::vector<std::pair<std::size_t, std::vector<double>>>;

    void add(const Part& structure) {
        for (const auto& [place, costs] : structure) {
            auto& totals = totals_[place];
            for (std::size_t k = 0; k < strata; ++k) {
                totals[k].add(costs[k]);
            }
        }
    }
    void add(const SharedTotals& other) {
        for (const auto& [place, parts] : other.totals_) {
            auto& totals = totals_[place];
            for (std::size_t k = 0; k < strata; ++k) {
                totals[k].add(parts[k]);
            }
        }
    }
    /// By input place and stratum [currency].
    std::map<std::size_t, std::array<double, strata>> values() const;

  private:
    std::map<std::size_t, std::array<estimate::FixedTotal, strata>> totals_;
};

/// Keeps the best visits of a list and says what each does to the range of the programme.
void pick(std::size_t number, const SharedTotals& shared, SurveyList& list);

} // namespace scupper::simulate::detail
