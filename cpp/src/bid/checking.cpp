#include "scupper/bid/checking.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <unordered_map>

namespace scupper::bid {

namespace {

using Places = std::unordered_map<std::string_view, std::size_t>;

Places places_of(const ItemList& form) {
    Places places;
    for (std::size_t i = 0; i < form.items.size(); ++i) {
        if (!places.emplace(form.items[i].code, i).second) {
            throw InputError({"bid.code", "items[" + std::to_string(i) + "].code",
                              "\"" + form.items[i].code + "\" again", "a code of its own"});
        }
    }
    return places;
}

/// Decimals enough for a quotient to give its extension back to the cent.
Decimal unit_price_of(const Decimal& extension, const Decimal& quantity) {
    const double units = to_double(quantity);
    const int decimals =
        4 + static_cast<int>(std::to_string(std::abs(static_cast<long long>(units))).size());
    return rounded_from_double(to_double(extension) / units, std::min(decimals, 12), "unit price");
}

/// How the two stand apart where one is the other with its point moved.
std::string moved_point(const Decimal& a, const Decimal& b) {
    if (a.coefficient() == 0 || b.coefficient() == 0) {
        return "";
    }
    std::string factor = "1";
    for (int n = 1; n <= 6; ++n) {
        factor += "0";
        const Decimal ten(std::stoll(factor));
        if (a == b * ten || b == a * ten) {
            return " The two are apart by a factor of " + factor +
                   ": a decimal point may be misplaced.";
        }
    }
    return "";
}

/// Checks one bid against the form.
class Checker {
  public:
    Checker(const ItemList& form, const Places& places, const Bid& bid, Governs governs)
        : form_(form), places_(places), bid_(bid), governs_(governs) {
        out_.bidder = bid.bidder;
        out_.days = bid.days;
        out_.lines.resize(form.items.size());
    }

    CheckedBid run() {
        std::vector<const BidLine*> lines(form_.items.size(), nullptr);
        for (const BidLine& line : bid_.lines) {
            sort_in(line, lines);
        }
        for (std::size_t i = 0; i < lines.size(); ++i) {
            if (lines[i] != nullptr) {
                check_line(form_.items[i], *lines[i], out_.lines[i]);
            } else if (form_.items[i].kind == ItemKind::base) {
                find(FindingKind::missing_line, form_.items[i].code, "has no line in this bid.",
                     {});
            }
        }
        for (const BidLine* line : strangers_) {
            find(FindingKind::unknown_item, line->code, "is not on the form.", line->place);
        }
        add_up();
        return std::move(out_);
    }

  private:
    void sort_in(const BidLine& line, std::vector<const BidLine*>& lines) {
        const auto place = places_.find(line.code);
        if (place == places_.end()) {
            strangers_.push_back(&line);
            return;
        }
        const BidLine*& first = lines[place->second];
        if (first != nullptr) {
            find(FindingKind::duplicate, line.code, "stands twice; the first line is used.",
                 line.place);
        } else {
            first = &line;
        }
    }

    void check_line(const PayItem& item, const BidLine& line, CheckedLine& out) {
        out.read_price = line.unit_price;
        out.read_extension = line.extension;
        if (line.quantity && *line.quantity != item.quantity) {
            find(FindingKind::quantity_differs, item.code,
                 "is bid on " + to_text(*line.quantity) + " " + item.unit +
                     " where the form asks for " + to_text(item.quantity) + ".",
                 line.place);
        }
        if (line.unit_price && line.price_in_words && *line.unit_price != *line.price_in_words) {
            find(FindingKind::words_differ, item.code,
                 "has " + money(*line.unit_price) + " in figures and " +
                     money(*line.price_in_words) + " in words." +
                     moved_point(*line.unit_price, *line.price_in_words),
                 line.place);
        }
        settle(item, line, out);
        look_at_price(item, line, out);
    }

    /// The price that governs, and its extension.
    void settle(const PayItem& item, const BidLine& line, CheckedLine& out) {
        const bool divides = line.extension && item.quantity.coefficient() != 0;
        const auto& figures = line.unit_price;
        const auto& words = line.price_in_words;
        out.price = governs_ == Governs::words && words ? words : (figures ? figures : words);
        if (governs_ == Governs::extension && divides) {
            out.price = agreed_price(item, line);
        }
        if (!out.price && divides) {
            out.price = unit_price_of(*line.extension, item.quantity);
        }
        if (!figures && !words) {
            find(FindingKind::missing_price, item.code,
                 divides
                     ? "has no unit price; its extension " + money(*line.extension) + " gives one."
                     : "has no price.",
                 line.place);
        }
        if (out.price) {
            out.extension = extended(item, *out.price);
        }
    }

    /// The unit price as written where it gives the extension as written, else what the latter tells.
    Decimal agreed_price(const PayItem& item, const BidLine& line) const {
        for (const auto& price : {line.unit_price, line.price_in_words}) {
            if (price && extended(item, *price) == *line.extension) {
                return *price;
            }
        }
        return unit_price_of(*line.extension, item.quantity);
    }

    void look_at_price(const PayItem& item, const BidLine& line, const CheckedLine& out) {
        const auto written = line.unit_price ? line.unit_price : line.price_in_words;
        if (written && line.extension) {
            const Decimal product = extended(item, *written);
            if (product != *line.extension) {
                find(FindingKind::extension_differs, item.code,
                     "has " + money(*written) + " times " + to_text(item.quantity) + " " +
                         item.unit + ", which is " + money(product) + "; the bid says " +
                         money(*line.extension) + "." + moved_point(product, *line.extension),
                     line.place);
            }
        }
        if (!out.price) {
            return;
        }
        const Decimal cent(1, minor_digits(form_.currency));
        if (*out.price == Decimal()) {
            find(FindingKind::zero_price, item.code, "is bid at nothing.", line.place);
        } else if (*out.price < Decimal()) {
            find(FindingKind::negative_price, item.code,
                 "is bid at " + money(*out.price) + ", a credit.", line.place);
        } else if (*out.price <= cent) {
            find(FindingKind::penny_price, item.code, "is bid at " + money(*out.price) + ".",
                 line.place);
        }
    }

    void add_up() {
        std::optional<Decimal> read = Decimal();
        out_.corrected = Decimal();
        for (std::size_t i = 0; i < out_.lines.size(); ++i) {
            if (form_.items[i].kind == ItemKind::base) {
                const CheckedLine& line = out_.lines[i];
                add(read, line.read_extension ? line.read_extension : line.extension);
                add(out_.corrected, line.extension);
            }
        }
        out_.as_read = bid_.total ? bid_.total : read;
        if (!bid_.total) {
            find(FindingKind::no_total, "", "The form has no total.", {});
        } else if (read && *read != *bid_.total) {
            find(FindingKind::total_differs, "",
                 "The extensions as written add up to " + money(*read) + "; the bid says " +
                     money(*bid_.total) + "." + moved_point(*read, *bid_.total),
                 {});
        }
    }

    static void add(std::optional<Decimal>& sum, const std::optional<Decimal>& part) {
        sum = sum && part ? std::optional(*sum + *part) : std::nullopt;
    }

    Decimal extended(const PayItem& item, const Decimal& price) const {
        return extension(Money(price, form_.currency), item.quantity).amount();
    }

    std::string money(const Decimal& amount) const {
        return to_text(Money(amount, form_.currency));
    }

    void find(FindingKind kind, const std::string& item, const std::string& text,
              const Place& place) {
        out_.findings.push_back(
            {kind, item, item.empty() ? text : "Item " + item + " " + text, place});
    }

    const ItemList& form_;
    const Places& places_;
    const Bid& bid_;
    Governs governs_;
    std::vector<const BidLine*> strangers_;
    CheckedBid out_;
};

} // namespace

bool CheckedBid::irregular() const {
    return std::any_of(findings.begin(), findings.end(), [](const Finding& f) {
        return finding_table[static_cast<std::size_t>(f.kind)].irregular;
    });
}

std::vector<CheckedBid> check_bids(const BidSet& set, Governs governs) {
    const Places places = places_of(set.form);
    std::vector<CheckedBid> checked;
    checked.reserve(set.bids.size());
    for (const Bid& bid : set.bids) {
        checked.push_back(Checker(set.form, places, bid, governs).run());
    }
    return checked;
}

std::optional<CheckedBid> check_estimate(const BidSet& set) {
    if (!set.engineer) {
        return std::nullopt;
    }
    const Places places = places_of(set.form);
    return Checker(set.form, places, *set.engineer, Governs::unit_price).run();
}

} // namespace scupper::bid
