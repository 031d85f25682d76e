"""Words, numbers, strings, symbols and `///` comments of C++ text, and the brackets they form."""

from __future__ import annotations

import re
from dataclasses import dataclass

TOKEN = re.compile(
    r"""
    (?P<doc>///<?[^\n]*)
  | (?P<comment>//[^\n]*|/\*.*?\*/)
  | (?P<directive>(?:(?<=\n)|\A)[ \t]*\#(?:[^\n\\]|\\\n|\\.)*)
  | (?P<string>(?:u8|[LuU])?R"(?P<delimiter>[^(\s]*)\(.*?\)(?P=delimiter)"
             |(?:u8|[LuU])?"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)+')
  | (?P<number>\.?\d(?:[\w.]|'\w|[eEpP][+-])*)
  | (?P<word>[A-Za-z_]\w*)
  | (?P<symbol>::|->|\.\.\.|<=>|[<>=!]=|&&|\|\||\[\[|\]\]|[^\s\w])
    """,
    re.VERBOSE | re.DOTALL,
)
OPENING = {"(": ")", "{": "}", "[": "]", "[[": "]]"}
TYPE_WORDS = {"void", "bool", "char", "short", "int", "long", "signed", "unsigned", "float",
              "double", "auto", "const", "volatile", "typename", "class", "struct"}  # fmt: skip


@dataclass(frozen=True)
class Token:
    kind: str
    text: str
    line: int


def tokenize(text: str) -> list[Token]:
    """Words, numbers, strings, symbols and `///` comments, each with its line."""
    tokens = []
    line, end = 1, 0
    for match in TOKEN.finditer(text):
        line += text.count("\n", end, match.start())
        end = match.start()
        kind = match.lastgroup if match.lastgroup != "delimiter" else "string"
        if kind not in ("comment", "directive"):
            tokens.append(Token(kind or "", match.group(), line))
    return tokens


def split_commas(tokens: list[Token]) -> list[list[Token]]:
    """The parts between commas that stand outside every kind of bracket, angle ones included."""
    parts: list[list[Token]] = [[]]
    depth = 0
    for token in tokens:
        if token.text in ("(", "{", "[", "[[", "<"):
            depth += 1
        elif token.text in (")", "}", "]", "]]", ">"):
            depth -= 1
        if token.text == "," and depth == 0:
            parts.append([])
        else:
            parts[-1].append(token)
    return [part for part in parts if part]


def strip_default(parameter: list[Token]) -> list[Token]:
    """A parameter without ` = its default`."""
    texts = [token.text for token in parameter]
    return parameter[: texts.index("=")] if "=" in texts else parameter


def parameter_name(parameter: list[Token]) -> str:
    """The name of one parameter, or empty text where it has none."""
    tokens = strip_default(parameter)
    texts = [token.text for token in tokens]
    for i, text in enumerate(texts):  # (*callback)(...) and (&array)[n]
        if text == "(" and i + 2 < len(texts) and texts[i + 1] in ("*", "&"):
            return texts[i + 2]
    while texts and texts[-1] == "]":
        texts = texts[: len(texts) - 1 - texts[::-1].index("[")]
    if len(texts) < 2 or not texts[-1].isidentifier() or texts[-1] in TYPE_WORDS:
        return ""
    type_words = [text for text in texts[:-1] if text not in ("const", "volatile", "typename")]
    return texts[-1] if type_words and type_words[-1] != "::" else ""


def matching(tokens: list[Token], opening: int) -> int:
    """Where the bracket that opens at `opening` closes."""
    depth = 0
    for i in range(opening, len(tokens)):
        depth += {"(": 1, ")": -1}.get(tokens[i].text, 0)
        if depth == 0:
            return i
    return len(tokens) - 1


class Cursor:
    """A place in the tokens of one header, and steps over what declares nothing."""

    def __init__(self, text: str) -> None:
        self.tokens = tokenize(text)
        self.at = 0

    def peek(self) -> str:
        return self.tokens[self.at].text if self.at < len(self.tokens) else ""

    def balanced(self) -> list[Token]:
        """The bracketed group that starts here, brackets included."""
        start, stack = self.at, []
        while self.at < len(self.tokens):
            text = self.tokens[self.at].text
            if self.tokens[self.at].kind != "doc":
                if text in OPENING:
                    stack.append(OPENING[text])
                elif stack and text == stack[-1]:
                    stack.pop()
            self.at += 1
            if not stack:
                break
        return [t for t in self.tokens[start : self.at] if t.kind != "doc"]

    def docs(self) -> list[Token]:
        found = []
        while self.at < len(self.tokens) and self.tokens[self.at].kind == "doc":
            found.append(self.tokens[self.at])
            self.at += 1
        return found

    def angles(self) -> list[Token]:
        """The `<...>` group that starts here."""
        start, depth = self.at, 0
        while self.at < len(self.tokens):
            text = self.peek()
            if text in OPENING:
                self.balanced()
                continue
            depth += {"<": 1, ">": -1}.get(text, 0)
            self.at += 1
            if depth == 0:
                break
        return self.tokens[start : self.at]

    def skip_heads(self) -> str:
        """Steps over `template <...> requires ...` and attributes; "skip": nothing is declared."""
        while True:
            word = self.peek()
            if word == "[[":
                self.balanced()
            elif word == "extern" and self.tokens[self.at + 1].text == "template":
                self.at += 1
            elif word == "template":
                self.at += 1
                if self.peek() != "<":
                    self.to_end()
                    return "skip"
                self.angles()
                self.requires()
            elif word in ("using", "typedef", "static_assert", "concept"):
                self.to_end()
                return "skip"
            else:
                return ""

    def requires(self) -> None:
        """A requires clause after a template head: parenthesised, or names joined by && and ||."""
        if self.peek() != "requires":
            return
        self.at += 1
        while True:
            if self.peek() == "requires":  # a requires expression
                self.at += 1
                while self.peek() in ("(", "{"):
                    self.balanced()
            elif self.peek() in ("(", "!"):
                self.at += self.peek() == "!"
                self.balanced()
            else:
                while self.tokens[self.at].kind == "word" and self.tokens[self.at + 1].text == "::":
                    self.at += 2
                self.at += 1
                if self.peek() == "<":
                    self.angles()
            if self.peek() not in ("&&", "||"):
                return
            self.at += 1

    def to_end(self) -> None:
        """Past the `;` of this statement."""
        while self.at < len(self.tokens):
            if self.peek() in OPENING:
                self.balanced()
                continue
            self.at += 1
            if self.tokens[self.at - 1].text == ";":
                return
