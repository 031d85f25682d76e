"""Every public function says what it answers, its units, range, errors and source."""

from __future__ import annotations

import re
import sys
from collections import defaultdict
from pathlib import Path

import check

sys.path.insert(0, str(check.ROOT / "bindings"))
from comments import Comment, read_comment  # noqa: E402
from declarations import Declaration, read_headers  # noqa: E402

REQUIRED_SECTIONS = ("Range", "Errors", "Source")
UNIT = re.compile(r"\[[^\]]+\]")


def own_types(declarations: list[tuple[Path, Declaration]]) -> set[str]:
    """Structures of the library: their members have units, they have none. Quantities do."""
    return {
        declaration.name.rsplit("::", 1)[1]
        for header, declaration in declarations
        if declaration.kind == "type" and header.parent.name != "quantity"
    } | {"Dimension"}


class Form:
    """The full form of a function's comment."""

    def __init__(self, own: set[str]) -> None:
        self.own = own

    def has_unit(self, cpp_type: str) -> bool:
        return not self.own & set(cpp_type.split())

    def missing(self, declaration: Declaration, comment: Comment) -> list[str]:
        """What the comment lacks."""
        lacks = [] if comment.summary else ["a summary line"]
        described = {item.name: item for item in comment.parameters}
        types = {t.split()[-1]: t for t in declaration.types}
        for name in declaration.parameters:
            if name not in described:
                lacks.append(f"@param {name}")
            elif not described[name].unit and self.has_unit(types.get(name, "")):
                lacks.append(f"@param {name} [unit]")
        if declaration.returns != "void":
            if not comment.result:
                lacks.append("@return")
            elif not comment.result.unit and self.has_unit(declaration.returns):
                lacks.append("@return [unit]")
        sections = comment.sections
        return lacks + [f"{t}:" for t in REQUIRED_SECTIONS if not any(sections.get(t, []))]


def unknown_parameters(group: list[Declaration], comment: Comment) -> list[str]:
    names = {name for declaration in group for name in declaration.parameters}
    return [f"no parameter named {p.name}" for p in comment.parameters if p.name not in names]


def needs_form(declaration: Declaration) -> bool:
    return declaration.kind == "function" and bool(declaration.types)


def missing_in_short(declaration: Declaration) -> list[str]:
    """What the comment of a type, data member or accessor lacks."""
    if not any(declaration.doc):
        return ["a comment"]
    accessor = declaration.kind == "function" and declaration.returns != "void"
    return ["[unit]"] if accessor and not UNIT.search(" ".join(declaration.doc)) else []


def missing(form: Form, declaration: Declaration, group: list[Declaration]) -> list[str]:
    """What is missing. Overloads may share the comment of one that names all their parameters."""
    if not needs_form(declaration):
        return missing_in_short(declaration)
    if not declaration.doc:
        shared = [read_comment(other.doc) for other in group if other.doc]
        if any(not form.missing(declaration, comment) for comment in shared):
            return []
        return ["a comment"]
    comment = read_comment(declaration.doc)
    return form.missing(declaration, comment) + unknown_parameters(group, comment)


def find(root: Path) -> list[str]:
    public = [
        (header, declaration)
        for header, declaration in read_headers(root / "cpp/include")
        if not declaration.exempt and declaration.kind != "enumerator"
    ]
    groups: dict[str, list[Declaration]] = defaultdict(list)
    for _, declaration in public:
        groups[declaration.name].append(declaration)
    form = Form(own_types(public))
    found = []
    for header, declaration in public:
        if lacks := missing(form, declaration, groups[declaration.name]):
            place = f"{header.relative_to(root)}:{declaration.line}"
            found.append(f"{place}: {declaration.name} lacks {', '.join(lacks)}")
    return found


GOOD = """\
#pragma once
#define SOME_MACRO(name) int name(int x);
SOME_MACRO(one)
namespace scupper::wash {
/// A dirty deck.
struct Deck {
    double length = 0.0; ///< [m] along the road
    double width{0.0};   ///< [m]
    Deck() = default;
    explicit Deck(double l) : length(l), width{2.0} {}
    friend bool operator==(const Deck&, const Deck&) = default;
    /// Its area [m2].
    [[nodiscard]] constexpr double area() const noexcept { return length * width; }
};
/// What the dirt weighs.
///
/// Formula: m = A t
/// @param deck the deck
/// @param depth [m, n] build-up by strip, at least
///   one of them
/// @param report [call] told the progress
/// @return [kg] its mass
/// Range: any.
/// Errors: none.
/// Source: definition
template <class T, int N = 3>
    requires(N > 2 && sizeof(T) > 1)
constexpr auto mass(const Deck& deck,
                    const std::map<std::string, std::vector<T>>& depth = {},
                    void (*report)(int, int) = nullptr) -> double {
    return depth.size() < 2 ? 0.0 : N;
}
double mass(const Deck& deck);
/// An iterator's category is no function.
class Hidden {
    int secret(int x);

  public:
    Hidden& operator=(const Hidden&) = delete;
    Hidden& operator+=(const Hidden& other);
};
namespace detail {
int helper(int x);
}
} // namespace scupper::wash
"""
BAD = """\
#pragma once
namespace scupper {
int bare(int x);
/// Half documented.
/// @param x [m] one
/// @param z [m] stale
/// @return the sum
/// Range: any.
/// Errors: none.
[[nodiscard]] inline double half(double x, double y = 2.0) { return x + y; }
/// A thing.
class Thing {
  public:
    /// Its weight.
    double weight() const;
    void load(const std::vector<double>& masses);
    int loose;
};
} // namespace scupper
"""
EXPECTED = [
    "bad.hpp:3: scupper::bare lacks a comment",
    "half lacks @param y, @return [unit], Source:, no parameter named z",
    "bad.hpp:15: scupper::Thing::weight lacks [unit]",
    "bad.hpp:16: scupper::Thing::load lacks a comment",
    "bad.hpp:17: scupper::Thing::loose lacks a comment",
]

if __name__ == "__main__":
    tree = {"cpp/include/scupper/good.hpp": GOOD, "cpp/include/scupper/bad.hpp": BAD}
    sys.exit(check.run("Public functions are documented", find, tree, EXPECTED))
