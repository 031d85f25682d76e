#include "scupper/inventory/elements.hpp"

#include "element_table.hpp"
#include "scupper/error.hpp"
#include "text.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <iterator>
#include <map>
#include <optional>

namespace scupper::inventory {

namespace {

using detail::ElementInfo;

constexpr std::string_view record_tag = "FHWAED";
constexpr std::string_view root_tag = "FHWAELEMENT";

const ElementInfo* find_element(int element) {
    const auto found =
        std::lower_bound(detail::element_table.begin(), detail::element_table.end(), element,
                         [](const ElementInfo& info, int number) { return info.number < number; });
    return found != detail::element_table.end() && found->number == element ? &*found : nullptr;
}

std::string cleaned(std::string_view field) {
    std::string text;
    detail::put_text(field, false, text);
    return text;
}

/// A tag, and the text before it.
struct Tag {
    std::string_view before; ///< text between the last tag and this one
    std::string_view name;   ///< without a leading slash or attributes
    bool closes = false;
    std::uint64_t line = 0; ///< on which it stands, from 1
};

/// Walks over the tags of a text; comments and declarations are passed over.
class Tags {
  public:
    explicit Tags(std::string_view text) : text_(text) {}

    std::optional<Tag> next() {
        const std::size_t from = at_;
        while (true) {
            const std::size_t open = text_.find('<', at_);
            if (open == text_.npos) {
                return std::nullopt;
            }
            line_ += lines_in(text_.substr(at_, open - at_));
            if (text_.substr(open, 4) == "<!--") {
                if (!skip_to("-->", open)) {
                    return std::nullopt;
                }
                continue;
            }
            const std::size_t close = text_.find('>', open);
            if (close == text_.npos) {
                return std::nullopt;
            }
            const std::string_view inside = text_.substr(open + 1, close - open - 1);
            const std::uint64_t line = line_;
            line_ += lines_in(inside);
            at_ = close + 1;
            if (!inside.empty() && (inside.front() == '?' || inside.front() == '!')) {
                continue;
            }
            return named(text_.substr(from, open - from), inside, line);
        }
    }

  private:
    static std::uint64_t lines_in(std::string_view text) {
        return static_cast<std::uint64_t>(std::count(text.begin(), text.end(), '\n'));
    }

    static Tag named(std::string_view before, std::string_view inside, std::uint64_t line) {
        Tag tag{before, inside, !inside.empty() && inside.front() == '/', line};
        tag.name.remove_prefix(tag.closes ? 1 : 0);
        tag.name = tag.name.substr(0, tag.name.find_first_of(" \t\r\n/"));
        return tag;
    }

    bool skip_to(std::string_view end, std::size_t open) {
        const std::size_t found = text_.find(end, open);
        if (found == text_.npos) {
            return false;
        }
        line_ += lines_in(text_.substr(open, found - open));
        at_ = found + end.size();
        return true;
    }

    std::string_view text_;
    std::size_t at_ = 0;
    std::uint64_t line_ = 1;
};

/// The fields of one record by their tag.
using Fields = std::map<std::string_view, std::string_view>;

class ElementReader {
  public:
    ElementReader(std::string_view text, std::string_view name) : tags_(text), name_(name) {
        found_.file = name;
    }

    ElementRecords read() {
        bool root = false;
        while (const std::optional<Tag> tag = tags_.next()) {
            root |= tag->name == root_tag;
            if (tag->name == record_tag && !tag->closes) {
                read_record(tag->line);
            }
        }
        if (!root) {
            throw FileError({"inventory.elements", name_, "no element FHWAELEMENT",
                             "an element file: FHWAELEMENT with FHWAED records"});
        }
        return std::move(found_);
    }

  private:
    void read_record(std::uint64_t line) {
        Fields fields;
        while (const std::optional<Tag> tag = tags_.next()) {
            if (tag->closes && tag->name == record_tag) {
                take(fields, line);
                return;
            }
            if (tag->closes) {
                fields[tag->name] = trimmed_lines(tag->before);
            }
        }
        reject(fields, line, "the file ends", "the last record is cut off");
    }

    static std::string_view trimmed_lines(std::string_view text) {
        const std::size_t first = text.find_first_not_of(" \t\r\n");
        const std::size_t last = text.find_last_not_of(" \t\r\n");
        return first == text.npos ? std::string_view{} : text.substr(first, last - first + 1);
    }

    void take(const Fields& fields, std::uint64_t line) {
        ElementRecord record;
        record.line = line;
        record.state = state_of(fields);
        record.structure = cleaned(text_of(fields, "STRUCNUM"));
        const auto element = detail::read_integer(text_of(fields, "EN"));
        const auto total = detail::read_number(text_of(fields, "TOTALQTY"));
        if (record.state.empty() || record.structure.empty()) {
            reject(fields, line, text_of(fields, "STATE"), "no state or no structure number");
            return;
        }
        if (!element || *element <= 0) {
            reject(fields, line, text_of(fields, "EN"), "EN is no element number");
            return;
        }
        if (!total || *total < 0.0) {
            reject(fields, line, text_of(fields, "TOTALQTY"), "TOTALQTY is no quantity");
            return;
        }
        record.element = *element;
        record.total = *total;
        record.parent = detail::read_integer(text_of(fields, "EPN")).value_or(0);
        take_states(fields, record);
        found_.records.push_back(std::move(record));
    }

    void take_states(const Fields& fields, ElementRecord& record) {
        static constexpr std::array<std::string_view, 4> tags{"CS1", "CS2", "CS3", "CS4"};
        double sum = 0.0;
        for (std::size_t i = 0; i < tags.size(); ++i) {
            record.states.at(i) = detail::read_number(text_of(fields, tags.at(i))).value_or(0.0);
            sum += record.states.at(i);
        }
        if (std::abs(sum - record.total) > 0.5) {
            found_.doubts.push_back({0, record.line, record.state, record.structure,
                                     "EN " + std::to_string(record.element),
                                     std::string(text_of(fields, "TOTALQTY")),
                                     "condition states do not add up to the total", true});
        }
    }

    /// Two digits; a leading zero may have been dropped.
    static std::string state_of(const Fields& fields) {
        const std::string state = cleaned(text_of(fields, "STATE"));
        return state.size() == 1 ? "0" + state : state.substr(0, 2);
    }

    static std::string_view text_of(const Fields& fields, std::string_view tag) {
        const auto found = fields.find(tag);
        return found == fields.end() ? std::string_view{} : found->second;
    }

    void reject(const Fields& fields, std::uint64_t line, std::string_view found,
                std::string_view reason) {
        found_.rejected.push_back({0, line, state_of(fields), cleaned(text_of(fields, "STRUCNUM")),
                                   detail::excerpt(found), std::string(reason)});
    }

    Tags tags_;
    std::string name_;
    ElementRecords found_;
};

} // namespace

ElementUnit element_unit(int element) {
    const ElementInfo* info = find_element(element);
    return info == nullptr ? ElementUnit::unknown : info->unit;
}

std::string_view element_name(int element) {
    const ElementInfo* info = find_element(element);
    return info == nullptr ? std::string_view{} : info->name;
}

ElementRecords read_elements_text(std::string_view text, std::string_view name) {
    return ElementReader(text, name).read();
}

ElementRecords read_elements(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    const std::string text((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
    if (!in) {
        throw FileError({"inventory.open", path.string(), "a file that cannot be read",
                         "an element file: FHWAELEMENT with FHWAED records"});
    }
    return read_elements_text(text, path.string());
}

} // namespace scupper::inventory
