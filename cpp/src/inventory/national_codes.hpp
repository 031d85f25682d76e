#pragma once
// Code lists of the national specification of 2022. All of them are from memory: the letters with
// which the codes begin are sure, the single numbers less so; a code that is not listed is a doubt.

#include "scupper/structure/codes.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace scupper::inventory::detail {

/// A code, or how a group of codes begins, and what it means.
template <class Meaning>
struct CodeMeaning {
    std::string_view code;
    Meaning meaning;
};

/// What a span type means: the guide's design, and whether units stand side by side or apart.
struct SpanKind {
    Design design = Design::unknown;
    char layout = ' '; ///< A side by side, S apart, 1 a single box
};

/// B.SP.04, from memory: the material before its continuity.
inline constexpr std::array span_materials{
    CodeMeaning<Material>{"C01", Material::concrete},
    CodeMeaning<Material>{"C02", Material::concrete},
    CodeMeaning<Material>{"C03", Material::prestressed},
    CodeMeaning<Material>{"C04", Material::prestressed},
    CodeMeaning<Material>{"C05", Material::prestressed},
    CodeMeaning<Material>{"S", Material::steel},
    CodeMeaning<Material>{"T", Material::timber},
    CodeMeaning<Material>{"M", Material::masonry},
    CodeMeaning<Material>{"A", Material::aluminum_or_iron},
    CodeMeaning<Material>{"I", Material::aluminum_or_iron},
    CodeMeaning<Material>{"F", Material::other},
    CodeMeaning<Material>{"P", Material::other},
    CodeMeaning<Material>{"X", Material::other},
};

/// B.SP.06, from memory.
inline constexpr std::array span_types{
    CodeMeaning<SpanKind>{"A01", {Design::arch_deck}},
    CodeMeaning<SpanKind>{"A02", {Design::arch_deck}},
    CodeMeaning<SpanKind>{"A03", {Design::arch_deck}},
    CodeMeaning<SpanKind>{"A04", {Design::arch_through}},
    CodeMeaning<SpanKind>{"A05", {Design::arch_through}},
    CodeMeaning<SpanKind>{"B01", {Design::box_single, '1'}},
    CodeMeaning<SpanKind>{"B02", {Design::box_multiple, 'A'}},
    CodeMeaning<SpanKind>{"B03", {Design::box_multiple, 'S'}},
    CodeMeaning<SpanKind>{"B04", {Design::segmental_box}},
    CodeMeaning<SpanKind>{"F", {Design::frame}},
    CodeMeaning<SpanKind>{"G01", {Design::multi_beam, 'A'}},
    CodeMeaning<SpanKind>{"G02", {Design::multi_beam, 'S'}},
    CodeMeaning<SpanKind>{"G03", {Design::tee_beam}},
    CodeMeaning<SpanKind>{"G04", {Design::tee_beam}},
    CodeMeaning<SpanKind>{"G05", {Design::tee_beam, 'A'}},
    CodeMeaning<SpanKind>{"G06", {Design::tee_beam, 'S'}},
    CodeMeaning<SpanKind>{"G07", {Design::channel_beam, 'A'}},
    CodeMeaning<SpanKind>{"G08", {Design::channel_beam, 'S'}},
    CodeMeaning<SpanKind>{"G10", {Design::girder_floorbeam}},
    CodeMeaning<SpanKind>{"L01", {Design::stayed_girder}},
    CodeMeaning<SpanKind>{"L02", {Design::suspension}},
    CodeMeaning<SpanKind>{"M01", {Design::movable_lift}},
    CodeMeaning<SpanKind>{"M02", {Design::movable_bascule}},
    CodeMeaning<SpanKind>{"M03", {Design::movable_swing}},
    CodeMeaning<SpanKind>{"P", {Design::culvert}},
    CodeMeaning<SpanKind>{"S", {Design::slab}},
    CodeMeaning<SpanKind>{"T01", {Design::truss_deck}},
    CodeMeaning<SpanKind>{"T02", {Design::truss_through}},
    CodeMeaning<SpanKind>{"T03", {Design::truss_through}},
    CodeMeaning<SpanKind>{"X", {Design::other}},
};

/// B.SP.09 as item 107 has it, from memory.
inline constexpr std::array deck_types{
    CodeMeaning<char>{"0", 'N'},   CodeMeaning<char>{"C01", '1'}, CodeMeaning<char>{"C", '2'},
    CodeMeaning<char>{"S01", '3'}, CodeMeaning<char>{"S02", '4'}, CodeMeaning<char>{"S03", '5'},
    CodeMeaning<char>{"S", '6'},   CodeMeaning<char>{"A", '7'},   CodeMeaning<char>{"T", '8'},
    CodeMeaning<char>{"X", '9'},   CodeMeaning<char>{"F", '9'},
};

/// The meaning of a code by the first entry it begins with.
template <class Meaning, std::size_t N>
constexpr std::optional<Meaning> meaning_of(std::string_view code,
                                            const std::array<CodeMeaning<Meaning>, N>& list) {
    for (const CodeMeaning<Meaning>& entry : list) {
        if (code.substr(0, entry.code.size()) == entry.code) {
            return entry.meaning;
        }
    }
    return std::nullopt;
}

/// The continuous kin of a material; itself where the guide has none.
constexpr Material continuous(Material material) {
    switch (material) {
    case Material::concrete:
        return Material::concrete_continuous;
    case Material::steel:
        return Material::steel_continuous;
    case Material::prestressed:
        return Material::prestressed_continuous;
    default:
        return material;
    }
}

/// The class of the guide's item 26 for B.H.01 1 to 7 (from memory), rural or urban.
constexpr int functional_class_of(int national, bool urban) {
    constexpr std::array rural{1, 2, 2, 6, 7, 8, 9};
    constexpr std::array urban_classes{11, 12, 14, 16, 17, 17, 19};
    const auto at = static_cast<std::size_t>(national - 1);
    return urban ? urban_classes.at(at) : rural.at(at);
}

} // namespace scupper::inventory::detail
