#pragma once
// Errors of a document that people write say the line on which the fault stands.

#include "scupper/error.hpp"

#include <string>
#include <string_view>

namespace scupper::json::detail {

/// The line of a document on which what an error speaks of begins, from 1; 0 where that cannot be
/// told, as in a document of one line.
std::size_t line_of(const ErrorFacts& facts, std::string_view text, std::string_view name);

/// Throws the error that is being handled again, its path as "job.json:12 inputs.tank.volume".
[[noreturn]] void rethrow_with_line(std::string_view text, std::string_view name);

/// Reads a document; what is wrong with it says its line.
template <class Read>
auto read_with_lines(std::string_view text, std::string_view name, Read read) {
    try {
        return read();
    } catch (const InputError&) {
        rethrow_with_line(text, name);
    }
}

} // namespace scupper::json::detail
