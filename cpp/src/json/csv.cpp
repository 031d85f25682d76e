#include "csv.hpp"

#include "scupper/error.hpp"

#include <algorithm>

namespace scupper::json::detail {

namespace {

std::string trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t\r");
    if (first == std::string_view::npos) {
        return {};
    }
    return std::string(text.substr(first, text.find_last_not_of(" \t\r") + 1 - first));
}

} // namespace

CsvLines::CsvLines(std::string_view text, std::string_view name)
    : text_(text.substr(text.substr(0, 3) == "\xEF\xBB\xBF" ? 3 : 0)), name_(name) {}

bool CsvLines::next(std::vector<std::string>& cells) {
    cells.clear();
    if (at_ >= text_.size()) {
        return false;
    }
    line_ = next_line_;
    while (true) {
        cells.push_back(cell());
        const bool more = at_ < text_.size() && text_[at_] == ',';
        ++at_; // the comma, or the end of the line
        if (!more) {
            ++next_line_;
            return true;
        }
    }
}

/// A cell up to the comma or the end of its line.
std::string CsvLines::cell() {
    const std::size_t begin = std::min(text_.find_first_not_of(" \t", at_), text_.size());
    if (begin < text_.size() && text_[begin] == '"') {
        at_ = begin + 1;
        return quoted();
    }
    const std::size_t end = std::min(text_.find_first_of(",\n", at_), text_.size());
    std::string text = trimmed(text_.substr(at_, end - at_));
    at_ = end;
    return text;
}

/// What stands between quotes; two of them are one. What follows them up to the comma belongs to it.
std::string CsvLines::quoted() {
    std::string text;
    for (bool open = true; open;) {
        const std::size_t quote = text_.find('"', at_);
        if (quote == std::string_view::npos) {
            throw FileError({"structures.csv", name_ + ":" + std::to_string(line_),
                             "a quote that is never closed", "quotes in pairs"});
        }
        text += text_.substr(at_, quote - at_);
        at_ = quote + 1;
        open = at_ < text_.size() && text_[at_] == '"';
        if (open) {
            text += '"';
            ++at_;
        }
    }
    const auto lines = std::count(text.begin(), text.end(), '\n');
    next_line_ += static_cast<std::uint64_t>(lines);
    const std::size_t end = std::min(text_.find_first_of(",\n", at_), text_.size());
    text += trimmed(text_.substr(at_, end - at_));
    at_ = end;
    return trimmed(text);
}

bool all_empty(const std::vector<std::string>& cells) {
    return std::all_of(cells.begin(), cells.end(), [](const auto& cell) { return cell.empty(); });
}

} // namespace scupper::json::detail
