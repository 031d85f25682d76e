#include "scupper/inventory/read.hpp"

#include "columns.hpp"
#include "record.hpp"
#include "scupper/error.hpp"
#include "split.hpp"
#include "text.hpp"

#include <algorithm>
#include <cctype>
#include <cstddef>
#include <fstream>
#include <memory>
#include <string>
#include <system_error>
#include <utility>
#include <vector>

namespace scupper::inventory {

namespace detail {

namespace {

constexpr std::uint64_t progress_step = std::uint64_t{1} << 20U;

/// The lines of a text, one after the other, without their ends.
class Lines {
  public:
    explicit Lines(std::string_view text) : text_(text) {}

    bool next(std::string_view& line) {
        if (at_ >= text_.size()) {
            return false;
        }
        const std::size_t end = text_.find('\n', at_);
        ended_ = end != std::string_view::npos;
        line = text_.substr(at_, (ended_ ? end : text_.size()) - at_);
        at_ += line.size() + (ended_ ? 1 : 0);
        if (!line.empty() && line.back() == '\r') {
            line.remove_suffix(1);
        }
        ++number_;
        return true;
    }

    std::uint64_t number() const { return number_; }
    std::uint64_t done() const { return at_; }
    /// Whether the line had an end: the last line of a file that was cut off has none.
    bool ended() const { return ended_; }

  private:
    std::string_view text_;
    std::size_t at_ = 0;
    std::uint64_t number_ = 0;
    bool ended_ = true;
};

bool is_blank(std::string_view line) {
    constexpr char end_of_file = '\x1a'; // some old programs close a text with it
    return std::all_of(line.begin(), line.end(),
                       [](char c) { return c == ' ' || c == '\t' || c == end_of_file; });
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// Two digits of the state: a dropped zero is put back, the region digit of the three-digit form
/// goes; empty where it is no state code.
std::string state_of(std::string_view text) {
    if (text.empty() || text.size() > 3 || !std::all_of(text.begin(), text.end(), is_digit)) {
        return {};
    }
    std::string state(text.substr(0, 2));
    state.insert(0, 2 - state.size(), '0');
    return state == "00" ? std::string{} : state;
}

/// What item 5A makes of a record.
enum class RecordKind { structure, route_under, unknown };

RecordKind kind_of(std::string_view code) {
    if (code == "1") {
        return RecordKind::structure;
    }
    const bool under = code.size() == 1 && (code == "2" || (code[0] >= 'A' && code[0] <= 'Z'));
    return under ? RecordKind::route_under : RecordKind::unknown;
}

} // namespace

/// Reads the rows of one text into an inventory.
class Reader {
  public:
    Reader(std::string_view text, std::string_view name, const Progress& progress)
        : text_(text), progress_(progress) {
        inventory_.files.emplace_back(name);
    }

    Inventory read() {
        Lines lines(text_);
        open(lines);
        std::string_view line;
        for (std::uint64_t told = 0; lines.next(line);) {
            if (is_blank(line)) {
                ++inventory_.blank_lines;
            } else {
                read_row(line, lines);
            }
            if (lines.done() - told >= progress_step) {
                told = lines.done();
                tell(told);
            }
        }
        tell(text_.size());
        return std::move(inventory_);
    }

  private:
    void open(Lines& lines) {
        std::string_view line;
        if (!lines.next(line)) {
            throw FileError({"inventory.header", inventory_.files[0], "an empty file",
                             "a header row and records"});
        }
        header_ = read_header(line, inventory_.files[0]);
        inventory_.absent_columns = header_.absent_columns;
        fields_.resize(header_.fields);
        // A row holds at least its commas; four bytes a field are common.
        const std::size_t likely = text_.size() / (3 * header_.fields + 1);
        inventory_.structures.reserve(std::min<std::size_t>(likely, 4'000'000));
    }

    void tell(std::uint64_t done) const {
        if (progress_ && !progress_(done, text_.size())) {
            throw Interrupted({"inventory.stopped", inventory_.files[0],
                               "reading stopped after " + std::to_string(done) + " bytes",
                               "the whole file of " + std::to_string(text_.size()) + " bytes"});
        }
    }

    void read_row(std::string_view row, const Lines& lines) {
        ++inventory_.rows;
        line_ = lines.number();
        if (row.size() > longest_row) {
            reject({}, {}, std::to_string(row.size()) + " bytes",
                   "the line is too long for a record");
            return;
        }
        const std::size_t count = splitter_.split(row, fields_);
        const bool repaired = count != fields_.size() && resplit_row(row, fields_);
        if (count != fields_.size() && !repaired) {
            reject_count(count, lines.ended());
            return;
        }
        const std::string state = state_of(at(Column::state));
        const std::string number = to_utf8(fields_[header_.at(Column::number)]);
        const std::string id(trimmed(number));
        if (state.empty()) {
            reject({}, id, at(Column::state), "the state code is not a state's number");
        } else if (id.empty()) {
            reject(state, {}, at(Column::number), "the structure number is blank");
        } else {
            read_kind(row, {state, id, number}, repaired);
        }
    }

    struct Names {
        const std::string& state;
        const std::string& id;
        const std::string& number;
    };

    void read_kind(std::string_view row, const Names& names, bool repaired) {
        const RecordKind kind = kind_of(at(Column::record_type));
        if (kind == RecordKind::route_under) {
            ++inventory_.routes_under;
        } else if (kind == RecordKind::unknown) {
            reject(names.state, names.id, at(Column::record_type),
                   "the record type is not 1, 2 or A to Z");
        } else if (const std::uint32_t first =
                       inventory_.index_.find(names.state, names.id, inventory_.structures);
                   first != IdIndex::none) {
            reject(names.state, names.id,
                   "first on line " + std::to_string(inventory_.structures[first].line),
                   row == rows_[first] ? "the same record again"
                                       : "second record of the same structure");
        } else {
            add(row, names, repaired);
        }
    }

    void add(std::string_view row, const Names& names, bool repaired) {
        inventory_.index_.add(names.id, static_cast<std::uint32_t>(inventory_.structures.size()));
        rows_.push_back(row);
        Structure& structure = inventory_.structures.emplace_back();
        structure.state = names.state;
        structure.id = names.id;
        structure.number = names.number;
        structure.line = line_;
        const Record record{header_, fields_, structure, inventory_.doubts, 0};
        if (repaired) {
            record.doubt(Column::crosses,
                         "quotes within the texts of the row: read so that the "
                         "number of fields is right",
                         true);
        }
        read_fields(record);
        check_consistency(record);
    }

    std::string_view at(Column column) const { return trimmed(fields_[header_.at(column)]); }

    /// A field of a row cut wrongly: what stands before the fault still tells which row it is.
    std::string likely(Column column, std::size_t count) const {
        return header_.at(column) < count ? excerpt(at(column)) : std::string{};
    }

    void reject_count(std::size_t count, bool ended) {
        const bool few = count < fields_.size();
        const std::string found =
            std::to_string(count) + " fields, " + std::to_string(fields_.size()) + " in the header";
        reject(state_of(likely(Column::state, count)), likely(Column::number, count), found,
               !ended && few ? "the last line is cut off"
               : few         ? "fewer fields than the header"
                             : "more fields than the header");
    }

    void reject(const std::string& state, const std::string& id, std::string_view found,
                std::string_view reason) {
        inventory_.rejected.push_back({0, line_, state, id, excerpt(found), std::string(reason)});
    }

    std::string_view text_;
    const Progress& progress_;
    Header header_;
    Splitter splitter_;
    std::vector<std::string_view> fields_;
    std::vector<std::string_view> rows_; // of the structures, to tell copies from contradictions
    std::uint64_t line_ = 0;
    Inventory inventory_;
};

} // namespace detail

namespace {

std::string_view without_mark(std::string_view text, std::string_view name) {
    if (text.substr(0, 2) == "\xFF\xFE" || text.substr(0, 2) == "\xFE\xFF") {
        throw FileError(
            {"inventory.header", std::string(name), "UTF-16 text", "UTF-8 or Latin-1 text"});
    }
    return text.substr(text.substr(0, 3) == "\xEF\xBB\xBF" ? 3 : 0);
}

} // namespace

Inventory read_inventory_text(std::string_view text, std::string_view name,
                              const Progress& progress) {
    return detail::Reader(without_mark(text, name), name, progress).read();
}

Inventory read_inventory(const std::filesystem::path& path, const Progress& progress) {
    const std::string name = path.string();
    const auto refuse = [&name](const std::string& found) {
        throw FileError({"inventory.open", name, found, "a delimited inventory file"});
    };
    std::error_code error;
    const std::uintmax_t size = std::filesystem::file_size(path, error);
    if (error) {
        refuse(error.message());
    }
    std::ifstream in(path, std::ios::binary);
    const auto bytes = std::make_unique_for_overwrite<char[]>(size);
    in.read(bytes.get(), static_cast<std::streamsize>(size));
    if (!in || static_cast<std::uintmax_t>(in.gcount()) != size) {
        refuse("a file that cannot be read");
    }
    return read_inventory_text({bytes.get(), size}, name, progress);
}

} // namespace scupper::inventory
