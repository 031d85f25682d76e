#pragma once
// CSV text into cells. Source: RFC 4180 (2005), section 2.

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::json::detail {

/// The lines of a CSV text, one after the other.
class CsvLines {
  public:
    /// `name` stands in errors. A byte order mark is passed over.
    CsvLines(std::string_view text, std::string_view name);

    /// The cells of the next line, without blanks around them; false after the last. Throws
    /// FileError `structures.csv` for a quote that is never closed.
    bool next(std::vector<std::string>& cells);
    /// Where the cells given last began: line from 1.
    std::uint64_t line() const { return line_; }

  private:
    std::string cell();
    std::string quoted();

    std::string_view text_;
    std::string name_;
    std::size_t at_ = 0;
    std::uint64_t line_ = 0;
    std::uint64_t next_line_ = 1;
};

/// Whether no cell says anything.
bool all_empty(const std::vector<std::string>& cells);

} // namespace scupper::json::detail
