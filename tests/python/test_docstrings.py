"""The comments of the public headers become docstrings: whole, well laid out, under their names."""

from __future__ import annotations

import re
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "bindings"))

from comments import read_comment  # noqa: E402
from declarations import read_declarations, read_headers  # noqa: E402
from docstrings import docstrings, render, source  # noqa: E402

NOZZLE = """\
/// How much water a tip lets through.
///
/// Formula: Q = c A sqrt(2 p / rho)
/// @param bore [m] inside diameter,
///   > 0
/// @param pressure [Pa, n] gauge pressure
/// @return [m3/s] volume flow
/// Range: turbulent jets.
/// Errors: InputError `wash.bore` where bore <= 0,
/// or not a number
/// Source: definition
"""


def declared(text: str) -> dict[str, str]:
    return docstrings(read_declarations(f"namespace scupper::wash {{\n{text}\n}}"))


def test_a_function_comment_gets_sections_that_python_readers_know() -> None:
    text = declared(NOZZLE + "double flow(double bore, double pressure);")["wash::flow"]
    assert text.splitlines() == [
        "How much water a tip lets through.",
        "",
        "Parameters",
        "----------",
        "bore : [m]",
        "    inside diameter,",
        "    > 0",
        "pressure : [Pa, n]",
        "    gauge pressure",
        "",
        "Returns",
        "-------",
        "[m3/s]",
        "    volume flow",
        "",
        "Formula",
        "-------",
        "Q = c A sqrt(2 p / rho)",
        "",
        "Range",
        "-----",
        "turbulent jets.",
        "",
        "Errors",
        "------",
        "InputError `wash.bore` where bore <= 0,",
        "or not a number",
        "",
        "Source",
        "------",
        "definition",
    ]


def test_no_line_of_a_comment_is_lost() -> None:
    lines = [line.removeprefix("///").strip() for line in NOZZLE.splitlines()]
    words = re.sub("@param|@return|:", " ", " ".join(lines)).split()
    rendered = re.sub("Parameters|Returns|--+|:", " ", render(read_comment(lines))).split()
    assert sorted(rendered) == sorted(words)


def test_overloads_go_by_their_parameters() -> None:
    found = declared("/// One.\nint load(int a);\n/// Two.\nint load(int a, int b = 2);")
    assert found == {"wash::load(a)": "One.", "wash::load(a, b)": "Two."}


def test_members_stand_after_their_class_and_private_ones_nowhere() -> None:
    found = declared(
        "/// A deck.\nclass Deck {\n/// Hidden.\nint secret();\npublic:\n"
        "/// Its area [m2].\ndouble area() const;\nint count = 0; ///< [-] how many\n};"
    )
    assert found == {
        "wash::Deck": "A deck.",
        "wash::Deck::area": "Its area [m2].",
        "wash::Deck::count": "[-] how many",
    }


@pytest.mark.parametrize(
    ("declaration", "parameters"),
    [
        ("double f(double a, const B& b);", ["a", "b"]),
        ("template <class T, class U = std::pair<T, T>> T f(const U& a);", ["a"]),
        ("int f(std::map<int, std::vector<int>> a = {{1, {2, 3}}}, int b = g(1, 2));", ["a", "b"]),
        ("[[nodiscard]] constexpr auto f(int a) noexcept -> int { return a; }", ["a"]),
        ("int f(const std::string&, unsigned long, int (&a)[3], int b[], int...);", ["a", "b"]),
        ("void f(void (*a)(int, int), Args&&... b);", ["a", "b"]),
        ("template <class T>\n  requires(sizeof(T) > 1 && std::integral<T>)\nint f(T a);", ["a"]),
        ("template <class T> requires std::integral<T> || requires(T t) { t; } int f(T a);", ["a"]),
        ('#define X(y) \\\n  int y(int z);\nint f(const char* a = "),(");', ["a"]),
    ],
)  # fmt: skip
def test_parameters_are_found_in_every_form(declaration: str, parameters: list[str]) -> None:
    functions = [d for d in read_declarations(declaration) if d.kind == "function"]
    assert [(d.name, d.parameters, d.exempt) for d in functions] == [("f", parameters, "")]


def test_what_is_not_public_or_no_function_is_left_out() -> None:
    text = """
    namespace detail { /// a
    int helper(int x); }
    namespace { int local(int x); }
    using Alias = int (*)(int);
    template <class T> concept Small = requires(T t) { t.size(); };
    extern template int instance<double>(double);
    template int instance<float>(float);
    static_assert(sizeof(int) == 4, "int f(int x)");
    inline constexpr int table[] = {1, 2};
    enum class Way { up, ///< upwards
                     down };
    """
    found = [(d.kind, d.name, d.doc) for d in read_declarations(text)]
    assert found == [
        ("type", "Way", []),
        ("enumerator", "Way::up", ["upwards"]),
        ("enumerator", "Way::down", []),
    ]


def test_the_generated_header_holds_every_documented_name_of_the_library() -> None:
    declarations = [declaration for _, declaration in read_headers(ROOT / "cpp/include")]
    text = source(docstrings(declarations))
    assert '{"nearest_name", R"doc(The known name nearest to a wrong one' in text
    assert '{"Error::path", R"doc(Where the offending input stands [text].' in text
