#include "scupper/random/listed.hpp"

#include <utility>

namespace scupper {

Listed::Listed(std::vector<double> values, std::vector<double> weights, std::string_view path)
    : values_(std::move(values)), weights_(std::move(weights)),
      distribution_(Discrete(values_, weights_, path)) {}

Listed::Listed(std::vector<double> sample, std::string_view path)
    : values_(std::move(sample)), distribution_(Empirical(values_, path)) {}

double Listed::mean() const {
    return std::visit([](const auto& d) { return d.mean(); }, distribution_);
}

double Listed::sd() const {
    return std::visit([](const auto& d) { return d.sd(); }, distribution_);
}

double Listed::quantile(double u) const {
    return std::visit([u](const auto& d) { return d.quantile(u); }, distribution_);
}

double Listed::cdf(double x) const {
    return std::visit([x](const auto& d) { return d.cdf(x); }, distribution_);
}

ThreePoint Listed::guess() const {
    double likely = quantile(0.5);
    double greatest = 0.0;
    for (std::size_t i = 0; i < weights_.size(); ++i) {
        if (weights_[i] > greatest || (weights_[i] == greatest && values_[i] < likely)) {
            greatest = weights_[i];
            likely = values_[i];
        }
    }
    return {.low = quantile(0.0),
            .likely = likely,
            .high = quantile(1.0),
            .family = family(),
            .meaning = Meaning::limits,
            .listed = this};
}

} // namespace scupper
