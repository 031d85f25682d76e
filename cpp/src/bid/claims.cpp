#include "claims.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::bid::detail {

namespace {

constexpr std::size_t most_named = 12;

std::string name_of(const estimate::PricedLine& line) {
    return line.component + "/" + line.operation + "/" + line.resource;
}

std::string with_amount(const estimate::PricedLine& line) {
    return name_of(line) + " (" +
           to_text(rounded_from_double(line.amount, 2, "cost line " + name_of(line))) + ")";
}

int closest(const std::vector<Cover>& covers, const estimate::PricedLine& line) {
    int best = 0;
    for (const Cover& cover : covers) {
        best = std::max(best, closeness(cover, line.component, line.operation, line.resource));
    }
    return best;
}

void note(std::vector<std::string>& list, const std::string& text) {
    if (std::find(list.begin(), list.end(), text) == list.end()) {
        list.push_back(text);
    }
}

std::string listed(const std::vector<std::string>& texts) {
    std::string all;
    for (std::size_t i = 0; i < std::min(texts.size(), most_named); ++i) {
        all += (i == 0 ? "" : "; ") + texts[i];
    }
    return texts.size() > most_named
               ? all + "; and " + std::to_string(texts.size() - most_named) + " more"
               : all;
}

} // namespace

std::size_t Claims::owner(const estimate::PricedLine& line) {
    std::size_t owner = nobody;
    std::string who;
    int best = 0;
    const auto claim = [&](int close, std::size_t place, const std::string& name) {
        if (close > best) {
            best = close;
            owner = place;
            who = name;
        } else if (close == best && close > 0 && place != owner) {
            note(twice_, name_of(line) + " by " + who + " and " + name);
        }
    };
    for (std::size_t i = 0; i < list_->rules.size(); ++i) {
        claim(closest(list_->rules[i].covers, line), i, list_->rules[i].item.code);
    }
    for (const SpreadRule& rule : list_->spread) {
        claim(closest(rule.covers, line), spread_out, "what is spread");
    }
    return owner;
}

void Claims::require_single() const {
    if (!twice_.empty()) {
        throw InputError({"bid.twice", "items", "counted twice: " + listed(twice_),
                          "one item for each cost line; a cover that names a resource or an "
                          "operation beats one that names the component alone"});
    }
}

void Claims::leave(const estimate::PricedLine& line) {
    note(left_, with_amount(line));
}

void Claims::require_none_left() const {
    if (!left_.empty()) {
        throw InputError({"bid.left_over", "items", "left over: " + listed(left_),
                          "every cost line in an item or spread"});
    }
}

void LineSums::add(const estimate::PricedLine& line) {
    const auto [found, is_new] =
        places_.try_emplace({line.component, line.operation, line.resource}, lines_.size());
    if (is_new) {
        lines_.push_back(line);
    } else {
        lines_[found->second].amount += line.amount;
    }
}

} // namespace scupper::bid::detail
