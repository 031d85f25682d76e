// Bids checked and beside each other; exact decimals cross as text.
#include "convert.hpp"
#include "decimals.hpp"
#include "docstrings.hpp"
#include "scupper/bid.hpp"
#include "scupper/error.hpp"

#include <array>
#include <limits>
#include <optional>
#include <pybind11/stl.h>
#include <tuple>

namespace scupper::python {

namespace {

using namespace bid;
using Text = std::optional<std::string>;
/// Code, description, unit, quantity, low, high, kind and group of an item.
using ItemTexts = std::array<std::string, 8>;
/// Code, quantity, unit price, extension, words, price in words, file, sheet and line.
using LineTexts =
    std::tuple<std::string, Text, Text, Text, std::string, Text, std::string, std::string, int>;
/// Bidder, lines, total and days.
using BidTexts = std::tuple<std::string, std::vector<LineTexts>, Text, Text>;

std::optional<Decimal> number(const Text& text, const std::string& path) {
    return text ? std::optional(parse_decimal(*text, path)) : std::nullopt;
}

template <std::size_t N>
std::size_t place_of(const std::array<std::string_view, N>& names, const std::string& word,
                     const std::string& path) {
    const auto found = std::find(names.begin(), names.end(), word);
    if (found == names.end()) {
        std::string known;
        for (const std::string_view name : names) {
            known += (known.empty() ? "" : ", ") + std::string(name);
        }
        throw UnknownNameError({"bid.word", path, "\"" + word + "\"", known});
    }
    return static_cast<std::size_t>(found - names.begin());
}

PayItem item_of(const ItemTexts& t) {
    const std::string path = "items[" + t[0] + "].";
    PayItem item{t[0],
                 t[1],
                 t[2],
                 parse_decimal(t[3], path + "quantity"),
                 parse_decimal(t[4], path + "low"),
                 parse_decimal(t[5], path + "high")};
    item.kind = static_cast<ItemKind>(place_of(item_kind_names, t[6], path + "kind"));
    item.group = t[7];
    return item;
}

Bid bid_of(const BidTexts& t) {
    const auto& [bidder, lines, total, days] = t;
    Bid bid{bidder, {}, number(total, bidder + ".total"), number(days, bidder + ".days"), {}};
    for (const auto& [code, quantity, price, written, words, in_words, file, sheet, line] : lines) {
        const std::string path = bidder + "[" + code + "].";
        bid.lines.push_back({code, number(quantity, path + "quantity"),
                             number(price, path + "unit_price"),
                             number(written, path + "extension"), words,
                             number(in_words, path + "price_in_words"), Place{file, sheet, line}});
    }
    return bid;
}

/// Bids with everything that follows from the rule that governs.
struct Review {
    BidSet set;
    std::vector<CheckedBid> checked;
    std::optional<CheckedBid> engineer;
    PriceTable table;
    Comparison comparison;

    Review(BidSet given, Governs governs, const OutlierRule& rule)
        : set(std::move(given)), checked(check_bids(set, governs)), engineer(check_estimate(set)),
          table(price_table(set.form, checked, engineer ? &*engineer : nullptr)),
          comparison(compare(table, rule)) {}

    Amounts reference(const std::string& word) const {
        constexpr std::array<std::string_view, 2> words{"estimate", "median"};
        if (place_of(words, word, "reference") == 0) {
            if (table.estimate.empty()) {
                throw InputError({"bid.reference", "reference", "no engineer's estimate",
                                  "\"median\", or bids with an estimate"});
            }
            return table.estimate;
        }
        Amounts medians;
        for (const ItemSpread& spread : comparison.items) {
            medians.push_back(spread.median);
        }
        return medians;
    }
    std::size_t low() const {
        const auto found = low_bid(table);
        if (!found) {
            throw InputError(
                {"bid.price", "bids", "no bid that prices every base item", "one or more"});
        }
        return *found;
    }
    const std::string& bidder(std::size_t at) const { return table.bidders.at(at); }
    const std::string& code(std::size_t at) const { return table.form.items.at(at).code; }
};

std::unique_ptr<Review> review(const std::string& currency, const std::vector<ItemTexts>& items,
                               const std::vector<BidTexts>& bids,
                               const std::optional<BidTexts>& engineer, const std::string& governs,
                               double outlier, std::size_t fewest) {
    BidSet set{{parse_currency(currency, "currency"), {}}, {}};
    for (const ItemTexts& item : items) {
        set.form.items.push_back(item_of(item));
    }
    for (const BidTexts& bid : bids) {
        set.bids.push_back(bid_of(bid));
    }
    if (engineer) {
        set.engineer = bid_of(*engineer);
    }
    const auto rule = static_cast<Governs>(place_of(governs_names, governs, "governs"));
    const py::gil_scoped_release free;
    return std::make_unique<Review>(std::move(set), rule, OutlierRule{outlier, fewest});
}

double maybe(const std::optional<double>& value) {
    return value.value_or(std::numeric_limits<double>::quiet_NaN());
}

Columns summary(const Review& r) {
    const auto& bids = r.checked;
    Amounts read;
    for (const CheckedBid& bid : bids) {
        read.push_back(bid.as_read);
    }
    Columns d;
    d["bidder"] = texts(bids, [](const CheckedBid& b) { return b.bidder; });
    d["as_read"] = decimals(read, [](const auto& t) { return t; });
    d["rank_as_read"] = py::cast(ranks(read));
    d["corrected"] = decimals(bids, [](const CheckedBid& b) { return b.corrected; });
    d["rank"] = py::cast(r.comparison.ranks);
    d["over_low"] = numbers<double>(r.comparison.totals, [&](const auto& t) {
        return maybe(ratio(t, r.comparison.spread.low));
    });
    d["over_estimate"] = numbers<double>(
        r.comparison.totals, [&](const auto& t) { return maybe(ratio(t, r.comparison.estimate)); });
    d["irregular"] = numbers<bool>(bids, [](const CheckedBid& b) { return b.irregular(); });
    d["days"] = decimals(bids, [](const CheckedBid& b) { return b.days; });
    return d;
}

Columns findings(const Review& r) {
    std::vector<std::pair<std::string, Finding>> rows;
    const auto take = [&](const CheckedBid& bid) {
        for (const Finding& f : bid.findings) {
            rows.emplace_back(bid.bidder, f);
        }
    };
    std::for_each(r.checked.begin(), r.checked.end(), take);
    if (r.engineer) {
        take(*r.engineer);
    }
    const auto kind = [](const auto& row) {
        return finding_table[static_cast<std::size_t>(row.second.kind)];
    };
    Columns d;
    d["bidder"] = texts(rows, [](const auto& row) { return row.first; });
    d["item"] = texts(rows, [](const auto& row) { return row.second.item; });
    d["kind"] = texts(rows, [&](const auto& row) { return kind(row).name; });
    d["irregular"] = numbers<bool>(rows, [&](const auto& row) { return kind(row).irregular; });
    d["text"] = texts(rows, [](const auto& row) { return row.second.text; });
    d["remedy"] = texts(rows, [&](const auto& row) { return kind(row).remedy; });
    d["file"] = texts(rows, [](const auto& row) { return row.second.place.file; });
    d["sheet"] = texts(rows, [](const auto& row) { return row.second.place.sheet; });
    d["line"] = numbers<int>(rows, [](const auto& row) { return row.second.place.line; });
    return d;
}

Columns items(const Review& r) {
    const auto& rows = r.table.form.items;
    const auto& spreads = r.comparison.items;
    Columns d;
    d["item"] = texts(rows, [](const PayItem& i) { return i.code; });
    d["description"] = texts(rows, [](const PayItem& i) { return i.description; });
    d["group"] = texts(rows, [](const PayItem& i) { return i.group; });
    d["kind"] = texts(
        rows, [](const PayItem& i) { return item_kind_names[static_cast<std::size_t>(i.kind)]; });
    d["unit"] = texts(rows, [](const PayItem& i) { return i.unit; });
    d["quantity"] = decimals(rows, [](const PayItem& i) { return i.quantity; });
    d["least"] = decimals(rows, [](const PayItem& i) { return i.low; });
    d["most"] = decimals(rows, [](const PayItem& i) { return i.high; });
    const Amounts none(rows.size());
    d["estimate"] = decimals(r.table.estimate.empty() ? none : r.table.estimate,
                             [](const auto& price) { return price; });
    d["low"] = decimals(spreads, [](const ItemSpread& s) { return s.low; });
    d["median"] = decimals(spreads, [](const ItemSpread& s) { return s.median; });
    d["high"] = decimals(spreads, [](const ItemSpread& s) { return s.high; });
    d["deviation"] = decimals(spreads, [](const ItemSpread& s) { return s.deviation; });
    d["bids"] = numbers<std::int64_t>(spreads, [](const ItemSpread& s) { return s.number; });
    return d;
}

/// Every price of one bid, or of the engineer where the place is beyond the last.
Columns prices(const Review& r, std::size_t at) {
    const CheckedBid& bid = at < r.checked.size() ? r.checked[at] : r.engineer.value();
    py::list estimate;
    py::list median;
    for (std::size_t i = 0; i < bid.lines.size(); ++i) {
        const auto& guess = r.table.estimate;
        estimate.append(maybe(ratio(bid.lines[i].price, guess.empty() ? std::nullopt : guess[i])));
        median.append(maybe(ratio(bid.lines[i].price, r.comparison.items[i].median)));
    }
    Columns d;
    d["read_price"] = decimals(bid.lines, [](const CheckedLine& l) { return l.read_price; });
    d["read_extension"] =
        decimals(bid.lines, [](const CheckedLine& l) { return l.read_extension; });
    d["price"] = decimals(bid.lines, [](const CheckedLine& l) { return l.price; });
    d["extension"] = decimals(bid.lines, [](const CheckedLine& l) { return l.extension; });
    d["over_estimate"] = estimate;
    d["over_median"] = median;
    return d;
}

Columns spread(const Review& r) {
    const Spread& s = r.comparison.spread;
    const Competition near = competition(r.comparison.totals);
    Columns d;
    d["bids"] = py::int_(s.number);
    d["estimate"] = decimal(r.comparison.estimate);
    d["low"] = decimal(s.low);
    d["second"] = decimal(s.second);
    d["high"] = decimal(s.high);
    d["left_on_the_table"] = decimal(s.left);
    d["left_share"] = py::float_(maybe(s.left_share));
    d["second_over_low"] = py::float_(maybe(s.second_ratio));
    d["high_over_low"] = py::float_(maybe(s.high_ratio));
    d["mean"] = py::float_(maybe(s.mean));
    d["sd"] = py::float_(maybe(s.sd));
    d["within_5_percent"] = py::int_(near.within[0]);
    d["within_10_percent"] = py::int_(near.within[1]);
    d["within_20_percent"] = py::int_(near.within[2]);
    d["excellent_competition"] = py::bool_(near.excellent);
    return d;
}

Columns outliers(const Review& r) {
    const auto& rows = r.comparison.outliers;
    Columns d;
    d["bidder"] = texts(rows, [&](const Outlier& o) { return r.bidder(o.bid); });
    d["item"] = texts(rows, [&](const Outlier& o) { return r.code(o.item); });
    d["score"] = numbers<double>(rows, [](const Outlier& o) { return o.score; });
    return d;
}

void bind_review(py::class_<Review>& c);
void bind_judgement(py::class_<Review>& c);

} // namespace

void bind_bid_review(py::module_& m) {
    using py::arg;
    py::class_<Review> c(m, "BidReview", "Bids checked by a rule and beside each other.");
    c.def(py::init(&review), doc("bid::check_bids"), arg("currency"), arg("items"), arg("bids"),
          arg("engineer"), arg("governs"), arg("outlier"), arg("fewest"));
    bind_review(c);
    bind_judgement(c);
    m.def(
        "estimate_accuracy",
        [](const std::vector<std::pair<std::string, std::string>>& projects) {
            std::vector<std::pair<Decimal, Decimal>> pairs;
            for (const auto& [estimate, low] : projects) {
                pairs.emplace_back(parse_decimal(estimate, "estimate"), parse_decimal(low, "low"));
            }
            const EstimateAccuracy a = estimate_accuracy(pairs);
            return std::tuple(a.projects, a.near, a.met);
        },
        doc("bid::estimate_accuracy"), arg("projects"));
}

namespace {

void bind_review(py::class_<Review>& c) {
    c.def("summary", &summary, doc("bid::CheckedBid"))
        .def("findings", &findings, doc("bid::Finding"))
        .def("items", &items, doc("bid::ItemSpread"))
        .def("prices", &prices, doc("bid::CheckedLine"), py::arg("bid"))
        .def("spread", &spread, doc("bid::Spread"))
        .def("outliers", &outliers, doc("bid::Outlier"));
}

Columns stages(const Review& r) {
    Columns d;
    const std::vector<AwardStage> all = award_stages(r.table);
    d["stage"] = texts(all, [](const AwardStage& s) { return s.name; });
    py::list totals;
    py::list places;
    for (const AwardStage& stage : all) {
        totals.append(decimals(stage.totals, [](const auto& t) { return t; }));
        places.append(py::cast(stage.ranks));
    }
    d["totals"] = totals;
    d["ranks"] = places;
    return d;
}

Columns with_daily_cost(const Review& r, const std::string& daily_cost) {
    Amounts days;
    for (const CheckedBid& bid : r.checked) {
        days.push_back(bid.days);
    }
    const Amounts sums =
        with_time(r.table.form, r.comparison.totals, days, parse_decimal(daily_cost, "daily_cost"));
    Columns d;
    d["sum"] = decimals(sums, [](const auto& t) { return t; });
    d["rank"] = py::cast(ranks(sums));
    return d;
}

Columns flags(const Review& r, const std::string& reference, double above, double below,
              double token, double weight) {
    const auto rows =
        unbalanced_items(r.table, r.reference(reference),
                         {.above = above, .below = below, .token = token, .weight = weight});
    const auto kind = [](const UnbalancedItem& f) {
        return unbalance_table[static_cast<std::size_t>(f.kind)];
    };
    Columns d;
    d["bidder"] = texts(rows, [&](const UnbalancedItem& f) { return r.bidder(f.bid); });
    d["item"] = texts(rows, [&](const UnbalancedItem& f) { return r.code(f.item); });
    d["kind"] = texts(rows, [&](const UnbalancedItem& f) { return kind(f).name; });
    d["ratio"] = numbers<double>(rows, [](const UnbalancedItem& f) { return f.ratio; });
    d["relative"] = numbers<double>(rows, [](const UnbalancedItem& f) { return f.relative; });
    d["weight"] = numbers<double>(rows, [](const UnbalancedItem& f) { return f.weight; });
    d["means"] = texts(rows, [&](const UnbalancedItem& f) { return kind(f).means; });
    d["ask"] = texts(rows, [&](const UnbalancedItem& f) { return kind(f).ask; });
    return d;
}

Columns early(const Review& r, std::size_t bid, const std::string& reference, const Array& shares,
              double interest, double limit) {
    const PaymentSchedule schedule{
        shares.ndim() == 2 ? static_cast<std::size_t>(shares.shape(1)) : 0,
        std::vector<double>(shares.data(), shares.data() + shares.size()), interest};
    const EarlyPayment e =
        early_payment(r.table, bid, r.reference(reference), schedule, {.early = limit});
    const UnbalanceRow& words = unbalance_table[static_cast<std::size_t>(Unbalance::early)];
    Columns d;
    d["as_bid"] = py::float_(e.as_bid);
    d["balanced"] = py::float_(e.balanced);
    d["gain"] = py::float_(e.gain);
    d["gain_share"] = py::float_(e.gain_share);
    d["early"] = py::bool_(e.early);
    d["means"] = text(e.early ? words.means : "");
    d["ask"] = text(e.early ? words.ask : "");
    d["paid"] = numbers<double>(e.paid, [](double x) { return x; });
    d["expected"] = numbers<double>(e.expected, [](double x) { return x; });
    return d;
}

Columns crossing(const Review& r) {
    const auto rows = crossovers(r.table, r.low());
    Columns d;
    d["other"] = texts(rows, [&](const Crossover& c) { return r.bidder(c.other); });
    d["item"] = texts(rows, [&](const Crossover& c) { return r.code(c.item); });
    d["exact"] = texts(rows, [](const Crossover& c) { return to_text(c.quantity); });
    d["quantity"] = numbers<double>(rows, [](const Crossover& c) { return c.quantity.value(); });
    d["upward"] = numbers<bool>(rows, [](const Crossover& c) { return c.upward; });
    d["in_range"] = numbers<bool>(rows, [](const Crossover& c) { return c.in_range; });
    return d;
}

Columns joint(const Review& r) {
    const auto rows = joint_changes(r.table, r.low());
    Columns d;
    d["other"] = texts(rows, [&](const JointChange& c) { return r.bidder(c.other); });
    d["gap"] = decimals(rows, [](const JointChange& c) { return c.gap; });
    d["least_gap"] = decimals(rows, [](const JointChange& c) { return c.least_gap; });
    d["share"] = numbers<double>(rows, [](const JointChange& c) { return maybe(c.share); });
    return d;
}

py::typing::List<py::object> totals_of(const Review& r,
                                       const std::vector<std::string>& quantities) {
    std::vector<Decimal> numbers;
    for (const std::string& q : quantities) {
        numbers.push_back(parse_decimal(q, "quantities"));
    }
    return decimals(totals_at(r.table, numbers), [](const auto& t) { return t; });
}

NumberArray drawn(const Review& r, std::size_t draws, std::uint64_t seed, double shared) {
    QuantityDraws q = draw_quantities(r.table.form, draws, seed, shared);
    const auto items = static_cast<py::ssize_t>(q.items);
    return hand_over(std::move(q.values), {static_cast<py::ssize_t>(draws), items});
}

Columns reversed(const Review& r, const Array& quantities) {
    const QuantityDraws draws{
        quantities.ndim() == 2 ? static_cast<std::size_t>(quantities.shape(1)) : 0,
        std::vector<double>(quantities.data(), quantities.data() + quantities.size())};
    const Reversal v = reversal(r.table, draws);
    Columns d;
    d["low"] = text(r.bidder(v.low));
    d["draws"] = py::int_(v.draws);
    d["chance"] = py::float_(v.chance);
    d["error"] = py::float_(v.error);
    d["regret"] = py::float_(v.regret);
    d["lowest"] = numbers<double>(v.lowest, [](double x) { return x; });
    d["mean_total"] = numbers<double>(v.mean_total, [](double x) { return x; });
    return d;
}

void bind_judgement(py::class_<Review>& c) {
    using py::arg;
    c.def("stages", &stages, doc("bid::award_stages"))
        .def("with_time", &with_daily_cost, doc("bid::with_time"), arg("daily_cost"))
        .def("flags", &flags, doc("bid::unbalanced_items"), arg("reference"), arg("above"),
             arg("below"), arg("token"), arg("weight"))
        .def("early_payment", &early, doc("bid::early_payment"), arg("bid"), arg("reference"),
             arg("shares"), arg("interest"), arg("limit"))
        .def("crossovers", &crossing, doc("bid::crossovers"))
        .def("joint_changes", &joint, doc("bid::joint_changes"))
        .def("totals_at", &totals_of, doc("bid::totals_at"), arg("quantities"))
        .def("draw_quantities", &drawn, doc("bid::draw_quantities"), arg("draws"), arg("seed"),
             arg("shared"))
        .def("reversal", &reversed, doc("bid::reversal"), arg("quantities"));
}

} // namespace

} // namespace scupper::python
