// Deck, spans, joints, drains, edges.

#include "sheet.hpp"

#include <algorithm>

namespace scupper::takeoff::detail {

namespace {

constexpr std::size_t width = dimension("deck.width");
constexpr std::size_t roadway = dimension("deck.roadway_width");
constexpr std::size_t walk = dimension("deck.walk_width");

void infer_width(const Record& r, Sheet& sheet) {
    if (r.irregular) {
        sheet.exact(width, "deck.width.irregular", r.deck_width);
    } else if (r.deck_width > 0.0) {
        sheet.exact(width, "deck.width.recorded", r.deck_width);
    } else if (r.approach > 0.0 && (r.deck_width == 0.0 || !(r.roadway > 0.0))) {
        sheet.exact(width, "deck.width.approach", r.approach);
    } else if (r.roadway > 0.0) {
        constexpr RuleId rule("deck.width.from_roadway");
        sheet.range(width, rule, r.roadway + rule->low, r.roadway + rule->likely,
                    r.roadway + rule->high);
    } else {
        sheet.absent(width);
    }
}

double walk_of(double recorded) {
    return recorded >= RuleId("deck.walk_width.recorded")->low ? recorded : 0.0;
}

void infer_walk(const Record& r, Sheet& sheet) {
    const bool told = r.left_walk >= 0.0 || r.right_walk >= 0.0;
    const double sum = walk_of(r.left_walk) + walk_of(r.right_walk);
    const double beside = r.roadway > 0.0 && !r.is_through()
                              ? std::max(sheet.likely(width) - r.roadway, 0.0)
                              : sheet.likely(width);
    if (told) {
        sheet.exact(walk, "deck.walk_width.recorded", std::min(sum, beside));
    } else {
        sheet.exact(walk, "deck.walk_width.missing", 0.0);
    }
}

void infer_roadway(const Record& r, Sheet& sheet) {
    if (r.irregular && r.roadway > 0.0) {
        sheet.exact(roadway, "deck.roadway_width.irregular", r.roadway);
    } else if (r.roadway > 0.0) {
        sheet.exact(roadway, "deck.roadway_width.recorded",
                    std::min(r.roadway, sheet.likely(width)));
    } else {
        sheet.scaled(roadway, "deck.roadway_width.inferred",
                     std::max(sheet.likely(width) - sheet.likely(walk), 0.0));
    }
}

/// Only a barrier on a raised strip lies beside the roadway; other medians are part of it.
void infer_median(const Record& r, Sheet& sheet) {
    constexpr std::size_t median = dimension("deck.median_width");
    constexpr int with_barrier = 3;
    if (r.median != with_barrier) {
        sheet.absent(median);
        return;
    }
    constexpr RuleId edges("deck.median_width.barrier");
    const double beside = sheet.likely(width) - sheet.likely(roadway) - sheet.likely(walk);
    sheet.range(median, edges, beside - edges->high, beside - edges->likely, beside - edges->low);
}

void infer_skew(const Record& r, Sheet& sheet) {
    if (r.skew >= 0.0) {
        sheet.exact(dimension("deck.skew"), "deck.skew.recorded", r.skew);
    } else {
        sheet.scaled(dimension("deck.skew"), "deck.skew.assumed");
    }
}

void infer_span(const Record& r, Sheet& sheet) {
    if (r.longest > 0.0) {
        sheet.exact(dimension("span.longest"), "span.longest.recorded", r.longest);
    } else {
        sheet.scaled(dimension("span.longest"), "span.longest.inferred", r.length / r.spans,
                     r.length);
    }
}

void infer_joints(const Record& r, const Shape& shape, Sheet& sheet) {
    constexpr std::size_t joints = dimension("joint.count");
    const double most = shape.spans + 1.0;
    const double likely = shape.units + 1.0;
    const double least = r.joints != ' ' ? 1.0 : 0.0; // one that is rated is there
    if (r.joints == 'N') {
        sheet.exact(joints, "joint.count.none", 0.0);
    } else if (shape.outline == Outline::arch_soffit || shape.outline == Outline::timber_beam) {
        sheet.range(joints, "joint.count.seldom", least, least, most);
    } else if (jointless_possible(r)) {
        sheet.range(joints, "joint.count.jointless_possible", least, likely, most);
    } else {
        sheet.range(joints, "joint.count.expansion", 2.0, likely, most);
    }
}

void infer_drains(const Record& r, Sheet& sheet) {
    constexpr std::size_t along = dimension("drain.per_length");
    constexpr double short_deck = 30.0;
    if (r.deck_type == '3' || r.deck_type == '8') {
        sheet.scaled(along, "drain.per_length.open_deck");
    } else if (r.is_newer()) {
        sheet.scaled(along, "drain.per_length.newer");
    } else if (r.length <= short_deck) {
        sheet.scaled(along, "drain.per_length.short");
    } else {
        sheet.scaled(along, "drain.per_length.older");
    }
    sheet.scaled(dimension("drain.clogged_share"), "drain.clogged_share");
    sheet.scaled(dimension("drain.frozen_share"), "drain.frozen_share");
    sheet.scaled(dimension("drain.box_share"), "drain.box_share");
}

/// What stands on an edge may run on over the wings at both its ends.
void share_of(const Record& r, std::size_t edge, RuleId rule, Sheet& sheet) {
    constexpr RuleId beyond("edge.share.beyond_ends");
    constexpr double ends = 2.0;
    sheet.range(edge, rule, rule->low, rule->likely, rule->high + ends * beyond->high / r.length);
}

void infer_edges(const Record& r, Sheet& sheet) {
    constexpr std::size_t parapet = dimension("parapet.share");
    constexpr std::size_t rail = dimension("rail.share");
    sheet.scaled(dimension("parapet.face_height"), "parapet.face_height");
    if (r.rails == 'N') {
        sheet.exact(parapet, "parapet.share.none", 0.0);
        sheet.exact(rail, "rail.share.none", 0.0);
    } else if (r.is_through() || r.material == Material::timber) {
        share_of(r, parapet, "parapet.share.rare", sheet);
        share_of(r, rail, "rail.share.usual", sheet);
    } else if (r.is_newer()) {
        share_of(r, parapet, "parapet.share.newer", sheet);
        share_of(r, rail, "rail.share.newer", sheet);
    } else {
        share_of(r, parapet, "parapet.share.older", sheet);
        share_of(r, rail, "rail.share.older", sheet);
    }
}

} // namespace

void infer_extent(const Record& r, Sheet& sheet) {
    if (r.length > 0.0) {
        sheet.exact(dimension("deck.length"), "deck.length.recorded", r.length);
    } else {
        sheet.absent(dimension("deck.length"));
    }
    infer_width(r, sheet);
}

void infer_deck(const Record& r, const Shape& shape, Sheet& sheet) {
    infer_extent(r, sheet);
    infer_walk(r, sheet);
    infer_roadway(r, sheet);
    infer_median(r, sheet);
    infer_skew(r, sheet);
    if (shape.walk_present) {
        sheet.scaled(dimension("deck.pocket_share"), "deck.pocket_share");
    } else {
        sheet.absent(dimension("deck.pocket_share"));
    }
    infer_span(r, sheet);
    infer_joints(r, shape, sheet);
    infer_drains(r, sheet);
    infer_edges(r, sheet);
}

} // namespace scupper::takeoff::detail
