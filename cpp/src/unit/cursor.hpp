#pragma once
// A place in a text that is read from left to right.

#include <cstddef>
#include <string_view>

namespace scupper::detail {

constexpr bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
constexpr bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

class Cursor {
  public:
    constexpr explicit Cursor(std::string_view text) : rest_(text) {}
    constexpr std::string_view rest() const { return rest_; }
    constexpr bool done() const { return rest_.empty(); }
    /// The character n places on; '\0' beyond the end.
    constexpr char peek(std::size_t n = 0) const { return n < rest_.size() ? rest_[n] : '\0'; }

    constexpr std::string_view take(std::size_t n) {
        const std::string_view taken = rest_.substr(0, n);
        rest_.remove_prefix(taken.size());
        return taken;
    }
    constexpr bool skip(std::string_view word) {
        const bool found = rest_.starts_with(word);
        if (found) {
            rest_.remove_prefix(word.size());
        }
        return found;
    }
    constexpr std::string_view take_digits() {
        std::size_t n = 0;
        while (is_digit(peek(n))) {
            ++n;
        }
        return take(n);
    }

  private:
    std::string_view rest_;
};

} // namespace scupper::detail
