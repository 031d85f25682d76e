// Span sets and substructure sets: several of a kind become the one that the structure has of it.

#include "national.hpp"
#include "national_codes.hpp"

#include <algorithm>

namespace scupper::inventory::detail {

namespace {

/// What one span set says.
struct SpanSet {
    Material material = Material::unknown;
    SpanKind kind;
    int spans = no_code;
    int lines = no_code;
    char deck = ' ';

    bool operator==(const SpanSet& other) const {
        return material == other.material && kind.design == other.kind.design &&
               kind.layout == other.kind.layout && lines == other.lines;
    }
};

Material read_material(const Items& set) {
    const std::string code = set.text("BSP04");
    const auto found = meaning_of(code, span_materials);
    if (!found && !code.empty()) {
        set.doubt("BSP04", reason_code);
    }
    const Material material = found.value_or(Material::unknown);
    const auto continuity = set.integer("BSP05", {1, 7, reason_code, true});
    if (continuity.value_or(1) > 2) { // what 3 to 7 are is not sure
        set.doubt("BSP05",
                  "a continuity between simple (1) and continuous (2): taken as continuous", true);
    }
    return continuity.value_or(1) == 1 ? material : continuous(material);
}

SpanKind read_kind(const Items& set) {
    const std::string code = set.text("BSP06");
    const auto found = meaning_of(code, span_types);
    if (!found && !code.empty()) {
        set.doubt("BSP06", reason_code);
    }
    return found.value_or(SpanKind{});
}

SpanSet read_set(const Items& set) {
    SpanSet span;
    span.material = read_material(set);
    span.kind = read_kind(set);
    span.spans = set.integer("BSP02", {1, 997, "outside 1 to 997 spans"}).value_or(no_code);
    span.lines = set.integer("BSP03", {0, 200, "outside 0 to 200 lines", true}).value_or(no_code);
    span.deck = meaning_of(set.text("BSP09"), deck_types).value_or(' ');
    return span;
}

/// The sets of one kind together: kinds of the one with the most spans, spans of all.
class Group {
  public:
    void add(const Items& set, const SpanSet& span) {
        if (!any_ || span.spans > greatest_) {
            const int before = sum_.spans;
            sum_ = span;
            sum_.spans = before;
            greatest_ = span.spans;
        }
        if (any_ && !(span == first_)) {
            set.doubt("BSP01", "sets of a kind differ: taken as the one of most spans", true);
        }
        first_ = any_ ? first_ : span;
        any_ = true;
        spans_ += std::max(span.spans, 0);
    }
    bool any() const { return any_; }
    const SpanSet& main() const { return sum_; }
    int spans() const { return spans_; }

  private:
    SpanSet sum_;
    SpanSet first_;
    int greatest_ = no_code;
    int spans_ = 0;
    bool any_ = false;
};

struct Groups {
    Group main;
    Group approach;
    Group culvert;
    int widening_lines = 0; ///< no_code where a widening does not tell
};

void sort_in(const Items& set, Groups& groups) {
    const std::string code = set.text("BSP01");
    const SpanSet span = read_set(set);
    switch (code.empty() ? ' ' : code.front()) {
    case 'M':
        groups.main.add(set, span);
        break;
    case 'A':
        groups.approach.add(set, span);
        break;
    case 'C':
        groups.culvert.add(set, span);
        break;
    case 'W': // beside the others, not after them
        groups.widening_lines = span.lines == no_code || groups.widening_lines == no_code
                                    ? no_code
                                    : groups.widening_lines + span.lines;
        break;
    default:
        set.doubt("BSP01", "no set of main spans (M), approaches (A), culvert (C) or widening (W)");
    }
}

void put_main(const SpanSet& span, int spans, int widening, RecordedCodes& codes) {
    codes.material = span.material;
    codes.design = span.kind.design;
    codes.main_spans = spans > 0 ? spans : no_code;
    codes.beam_layout = span.kind.layout;
    codes.beam_lines =
        span.lines == no_code || widening == no_code ? no_code : span.lines + widening;
    codes.deck_type = span.deck;
}

} // namespace

void read_national_spans(const Items& items) {
    Groups groups;
    const std::vector<Items> sets = items.sets("SpanSets");
    for (const Items& set : sets) {
        sort_in(set, groups);
    }
    if (sets.empty()) {
        items.doubt("SpanSets", reason_blank);
    }
    RecordedCodes& codes = items.structure().codes;
    if (groups.main.any()) {
        put_main(groups.main.main(), groups.main.spans(), groups.widening_lines, codes);
        if (groups.culvert.any()) {
            items.doubt("SpanSets", "a culvert beside main spans: passed over", true);
        }
    } else if (groups.culvert.any()) {
        put_main(groups.culvert.main(), groups.culvert.spans(), 0, codes);
        codes.design = Design::culvert;
        codes.beam_lines = no_code;
    }
    codes.approach_spans = sets.empty() ? no_code : groups.approach.spans();
    if (groups.approach.any()) {
        const SpanSet& span = groups.approach.main();
        codes.approach_material = span.material;
        codes.approach_design = span.kind.design;
        codes.approach_beam_lines = span.lines;
        codes.approach_beam_layout = span.kind.layout;
    }
}

void read_national_units(const Items& items) {
    Structure& s = items.structure();
    const auto add = [](int& sum, int units) { sum = std::max(sum, 0) + units; };
    for (const Items& set : items.sets("SubstructureSets")) {
        const std::string code = set.text("BSB01");
        const char kind = code.empty() ? ' ' : code.front();
        const auto units = set.integer("BSB02", {1, 999, "outside 1 to 999 units"});
        if (kind != 'A' && kind != 'P' && kind != 'W') {
            set.doubt("BSB01", "no set of abutments (A), piers (P) or widenings (W)");
        } else if (units && kind != 'W') { // a widening stands beside what is counted already
            add(kind == 'A' ? s.codes.abutment_units : s.codes.pier_units, *units);
            std::string& type = kind == 'A' ? s.abutment_type : s.pier_type;
            type = type.empty() ? set.text("BSB04") : type;
        }
    }
    const int spans = std::max(s.codes.main_spans, 0) + std::max(s.codes.approach_spans, 0);
    if (s.codes.pier_units > spans + 1) {
        items.doubt("SubstructureSets", "more piers than the spans can stand on", true);
    }
}

} // namespace scupper::inventory::detail
