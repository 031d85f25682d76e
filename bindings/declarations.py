"""Reads public C++ headers: which declarations they hold, each with the `///` comment above it.

A parser for this project's own headers, not for C++ at large: it follows namespaces, classes and
access, and needs no compiler. Serves the Python docstrings and the check that every public function
is documented.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from cpp_tokens import (
    Cursor,
    Token,
    matching,
    parameter_name,
    split_commas,
    strip_default,
)

SPECIFIERS = {"inline", "constexpr", "consteval", "constinit", "static", "virtual", "explicit",
              "friend", "extern", "mutable"}  # fmt: skip
KEYED_PARENS = {"decltype", "noexcept", "alignas", "requires", "explicit", "sizeof", "operator"}
TYPE_KEYS = {"class", "struct", "union", "enum"}


@dataclass
class Declaration:
    """One declaration of a header. `kind`: function, type, member (data) or enumerator."""

    kind: str
    name: str  # qualified: "scupper::hydraulics::nozzle_flow"
    line: int
    doc: list[str]  # lines of the comment, without the slashes
    parameters: list[str] = field(default_factory=list)  # names; unnamed ones are left out
    types: list[str] = field(default_factory=list)  # of all parameters, the unnamed ones too
    returns: str = ""  # empty: a constructor or destructor
    in_class: bool = False
    exempt: str = ""  # operator, constructor, friend, deleted, static constant, definition


class Reader(Cursor):
    """Walks the tokens of one header."""

    def __init__(self, text: str) -> None:
        super().__init__(text)
        self.found: list[Declaration] = []

    def read(self) -> list[Declaration]:
        self.scope([], None, public=True)
        return self.found

    # -- scopes -------------------------------------------------------------------------------

    def scope(self, path: list[str], class_name: str | None, public: bool) -> None:
        """Everything up to the brace that closes this namespace or class."""
        while self.at < len(self.tokens):
            doc = self.docs()
            self.trailing(doc)
            doc = [d for d in doc if not d.text.startswith("///<")]
            word = self.peek()
            if word == "}":
                self.at += 1
                return
            if word in ("public", "private", "protected"):
                public = word == "public"
                self.at += 2
            elif word == ";":
                self.at += 1
            elif word:
                self.statement(path, class_name, public, doc)

    def trailing(self, doc: list[Token]) -> None:
        """`///<` belongs to the declaration before it (and may run over several lines)."""
        following = [d for d in doc if d.text.startswith("///<")]
        if following and self.found:
            self.found[-1].doc += [d.text[4:].strip() for d in following]

    def statement(
        self, path: list[str], class_name: str | None, public: bool, doc: list[Token]
    ) -> None:
        line = self.tokens[self.at].line
        lines = [d.text[3:].removeprefix(" ").rstrip() for d in doc]
        if self.skip_heads() == "skip":
            return
        word = self.peek()
        if word in ("namespace", "inline") and self.is_namespace():
            self.namespace(path)
        elif word == "extern" and self.tokens[self.at + 1].kind == "string":
            self.at += 3
            self.scope(path, class_name, public)
        elif word in TYPE_KEYS and self.defines_type():
            self.type(path, public, lines, line)
        elif self.is_macro():
            self.at += 1
            self.balanced()
        else:
            self.declaration(path, class_name, public, lines, line)

    def is_namespace(self) -> bool:
        return "namespace" in (self.peek(), self.tokens[self.at + 1].text)

    def is_macro(self) -> bool:
        """SOME_MACRO(...) standing alone."""
        word = self.peek()
        return word.isupper() and len(word) > 2 and self.tokens[self.at + 1].text == "("

    def defines_type(self) -> bool:
        """Whether a body follows the class key before the statement ends."""
        for token in self.tokens[self.at :]:
            if token.text in (";", "(", "="):
                return False
            if token.text == "{":
                return True
        return False

    def namespace(self, path: list[str]) -> None:
        names = []
        while self.peek() not in ("{", "=", ";"):
            if self.tokens[self.at].kind == "word" and self.peek() not in ("namespace", "inline"):
                names.append(self.peek())
            self.at += 1
        if self.peek() != "{":
            self.to_end()
        elif not names or "detail" in names:
            self.balanced()
        else:
            self.at += 1
            self.scope(path + names, None, public=True)

    def type(self, path: list[str], public: bool, doc: list[str], line: int) -> None:
        key = self.peek()
        head = []
        while self.peek() != "{":
            if self.peek() == "[[":
                self.balanced()
                continue
            head.append(self.peek())
            self.at += 1
        before_base = head[: head.index(":")] if ":" in head else head
        words = [w for w in before_base if w.isidentifier() and w not in {*TYPE_KEYS, "final"}]
        name = words[0] if words else ""
        specialised = "<" in before_base
        if public and name and not specialised:
            self.found.append(Declaration("type", "::".join([*path, name]), line, doc))
        if key == "enum" and public and name:
            self.enumerators([*path, name])
        elif key == "enum" or not public or not name or specialised:
            self.balanced()
        else:
            self.at += 1
            self.scope([*path, name], name, public=key != "class")
        self.to_end()

    def enumerators(self, path: list[str]) -> None:
        self.at += 1
        doc: list[Token] = []
        while self.peek() != "}":
            doc = self.docs() or doc
            self.trailing(doc)
            doc = [d for d in doc if not d.text.startswith("///<")]
            if self.peek() == "}":
                break
            token = self.tokens[self.at]
            lines = [d.text[3:].strip() for d in doc]
            self.found.append(
                Declaration("enumerator", "::".join([*path, token.text]), token.line, lines)
            )
            doc = []
            while self.peek() not in (",", "}") and self.tokens[self.at].kind != "doc":
                self.at += 1
            if self.peek() == ",":
                self.at += 1
        self.at += 1

    # -- functions and variables --------------------------------------------------------------

    def declaration(
        self, path: list[str], class_name: str | None, public: bool, doc: list[str], line: int
    ) -> None:
        tokens, call = self.collect()
        if not public:
            return
        if call is None:
            self.variable(path, class_name, tokens, doc, line)
        else:
            self.function(path, class_name, tokens, call, doc, line)

    def collect(self) -> tuple[list[Token], int | None]:
        """The tokens of one declaration up to its `;` or body, and where its parameters open."""
        tokens: list[Token] = []
        call: int | None = None
        after_colon = assigned = False
        while self.at < len(self.tokens):
            token = self.tokens[self.at]
            if token.kind == "doc":
                self.at += 1
            elif token.text == ";":
                self.at += 1
                return tokens, call
            elif token.text == "{":
                value = assigned or call is None or tokens[-1].text == "requires"
                member = after_colon and (tokens[-1].kind == "word" or tokens[-1].text == ">")
                group = self.balanced()
                if not (value or member):
                    return tokens, call
                tokens += group
            elif token.text == "(":
                if call is None and not assigned and self.opens_parameters(tokens):
                    call = len(tokens)
                tokens += self.balanced()
            elif token.text in ("[", "[["):
                tokens += self.balanced()
            elif token.text == "<" and tokens and tokens[-1].kind == "word" and call is None \
                    and tokens[-1].text != "operator":  # fmt: skip
                tokens += self.angles()
            else:
                assigned |= token.text == "=" and (call is not None or not names_operator(tokens))
                after_colon |= token.text == ":" and call is not None
                tokens.append(token)
                self.at += 1
        return tokens, call

    @staticmethod
    def opens_parameters(before: list[Token]) -> bool:
        if not before or before[-1].text in KEYED_PARENS:
            return False
        named = before[-1].kind == "word" or before[-1].text == ">"
        return named or names_operator(before)

    def variable(
        self,
        path: list[str],
        class_name: str | None,
        tokens: list[Token],
        doc: list[str],
        line: int,
    ) -> None:
        texts = [token.text for token in tokens]
        if class_name is None or "friend" in texts or not texts:
            return
        stop = min([texts.index(s) for s in ("=", "{", "[") if s in texts] or [len(texts)])
        name = "::".join([*path, texts[stop - 1]])
        exempt = "static constant" if "static" in texts else ""
        self.found.append(Declaration("member", name, line, doc, in_class=True, exempt=exempt))

    def function(
        self,
        path: list[str],
        class_name: str | None,
        tokens: list[Token],
        call: int,
        doc: list[str],
        line: int,
    ) -> None:
        head = [token.text for token in tokens[:call]]
        close = matching(tokens, call)
        inner = tokens[call + 1 : close]
        tail = [token.text for token in tokens[close + 1 :]]
        parts = [p for p in split_commas(inner) if [t.text for t in p] != ["void"]]
        name = head[-1]
        returns = [w for w in head[:-1] if w not in SPECIFIERS]
        if "->" in tail:
            returns = tail[tail.index("->") + 1 :]
        self.found.append(
            Declaration(
                kind="function",
                name="::".join([*path, name]),
                line=line,
                doc=doc,
                parameters=[name for name in map(parameter_name, parts) if name],
                types=[" ".join(t.text for t in strip_default(part)) for part in parts],
                returns=" ".join(returns),
                in_class=class_name is not None,
                exempt=exemption(head, tail, returns),
            )
        )


def names_operator(tokens: list[Token]) -> bool:
    return any(token.text == "operator" for token in tokens)


def exemption(head: list[str], tail: list[str], returns: list[str]) -> str:
    """Why a function needs no documentation of its own, or empty text."""
    if "operator" in head:
        return "operator"
    if head[-1] == ">":
        return "specialisation"
    if "friend" in head:
        return "friend"
    if not returns or "~" in head:
        return "constructor"
    if "=" in tail and tail[tail.index("=") + 1] in ("delete", "default"):
        return "deleted or defaulted"
    if len(head) > 1 and head[-2] == "::":
        return "definition"
    return ""


def read_declarations(text: str) -> list[Declaration]:
    """The public declarations of one header, in their order."""
    return Reader(text).read()


def read_headers(include: Path) -> Iterator[tuple[Path, Declaration]]:
    """Every public declaration under a folder of headers, by file name."""
    for header in sorted(include.rglob("*.hpp")):
        for declaration in read_declarations(header.read_text(encoding="utf-8")):
            yield header, declaration
