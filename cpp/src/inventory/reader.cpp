#include "reader.hpp"

#include "bytes.hpp"
#include "consistency.hpp"
#include "fixed.hpp"
#include "scupper/error.hpp"
#include "text.hpp"

#include <algorithm>
#include <utility>

namespace scupper::inventory::detail {

namespace {

bool is_blank(std::string_view line) {
    constexpr char end_of_file = '\x1a'; // some old programs close a text with it
    return std::all_of(line.begin(), line.end(),
                       [](char c) { return c == ' ' || c == '\t' || c == end_of_file; });
}

constexpr std::string_view cut_off = "the last line is cut off";

std::string_view without_mark(std::string_view line, const std::string& name) {
    if (line.substr(0, 2) == "\xFF\xFE" || line.substr(0, 2) == "\xFE\xFF") {
        throw FileError({"inventory.header", name, "UTF-16 text", "UTF-8 or Latin-1 text"});
    }
    return line.substr(line.substr(0, 3) == "\xEF\xBB\xBF" ? 3 : 0);
}

} // namespace

Reader::Reader(std::string_view name, std::size_t most)
    : name_(name), most_(std::max<std::size_t>(most, 1)) {
    inventory_.files.emplace_back(name);
}

std::size_t Reader::feed_lines(std::string_view block) {
    std::size_t at = 0;
    while (at < block.size() && !full()) {
        const std::size_t end = block.find('\n', at);
        const std::string_view part = block.substr(at, end - at);
        at += part.size();
        if (end == std::string_view::npos) {
            keep(part);
            break;
        }
        ++at;
        if (kept_.empty() && overlong_ == 0 && block.size() - at >= padding) {
            read_line({part, true});
        } else {
            keep(part);
            read_kept(true);
        }
    }
    return at;
}

/// Of a line that is none only its length is of use.
void Reader::keep(std::string_view part) {
    if (overlong_ == 0 && kept_.size() + part.size() <= longest_row + 2) { // its end apart
        kept_ += part;
    } else {
        overlong_ = std::max<std::uint64_t>(overlong_, kept_.size()) + part.size();
    }
}

void Reader::read_kept(bool ended) {
    const std::size_t length = kept_.size();
    kept_.append(padding, '\0');
    read_line({std::string_view(kept_).substr(0, length), ended});
    kept_.clear();
    overlong_ = 0;
}

void Reader::finish_lines() {
    if (!kept_.empty() || overlong_ > 0) {
        read_kept(false);
    }
    if (!opened_) {
        throw FileError({"inventory.header", name_, "an empty file", "a header row and records"});
    }
}

Inventory Reader::take() {
    join_own_elements();
    inventory_.absent_columns = header_.absent_columns;
    if (!finished_) { // nothing follows that might be a second record
        seen_.add(inventory_.structures, hashes_);
    }
    hashes_.clear();
    Inventory piece = std::exchange(inventory_, {});
    inventory_.files.emplace_back(name_);
    return piece;
}

void Reader::read_line(Line line) {
    ++line_;
    if (!line.text.empty() && line.text.back() == '\r') {
        line.text.remove_suffix(1);
    }
    if (!opened_) {
        open(line);
    } else if (is_blank(line.text) && overlong_ == 0) {
        ++inventory_.blank_lines;
    } else {
        read_row(line);
    }
}

/// The first line: a header row, or a record of the fixed form, which has none.
void Reader::open(Line& line) {
    if (overlong_ > 0) {
        throw FileError({"inventory.header", name_ + ":1",
                         "a line of " + std::to_string(overlong_) + " bytes",
                         "a header row of at most " + std::to_string(longest_row)});
    }
    line.text = without_mark(line.text, name_);
    opened_ = true;
    fixed_ = overlong_ == 0 && looks_fixed(line.text);
    if (fixed_) {
        header_ = fixed_header();
        read_row(line);
    } else {
        header_ = read_header(line.text, name_);
    }
}

/// Room for the structures of a file whose length is known, by its first row.
void Reader::reserve(std::size_t row) {
    constexpr std::uint64_t most = 4'000'000; // more are likely no structures
    const std::uint64_t likely = std::min(expected_ / (row + 1) * 21 / 20 + 1, most);
    const auto room = static_cast<std::size_t>(std::min<std::uint64_t>(likely, most_));
    inventory_.structures.reserve(room);
    hashes_.reserve(room);
    inventory_.index_.reserve(room);
}

void Reader::read_row(const Line& line) {
    ++inventory_.rows;
    if (overlong_ > 0 || line.text.size() > longest_row) {
        const std::uint64_t bytes = std::max<std::uint64_t>(overlong_, line.text.size());
        reject({}, {}, std::to_string(bytes) + " bytes", "the line is too long for a record");
        return;
    }
    if (expected_ > 0 && inventory_.structures.capacity() == 0) {
        reserve(line.text.size());
    }
    if (fixed_ ? cut_fixed(line) : cut_delimited(line)) {
        read_named(line);
    }
}

bool Reader::cut_delimited(const Line& line) {
    const std::size_t count = splitter_.split(line.text, header_.fields);
    repaired_ = count != header_.fields && splitter_.resplit(line.text, header_.fields);
    const bool right = count == header_.fields || repaired_;
    if (!right) {
        splitter_.split(line.text, header_.fields); // what tells which row it is
    }
    fields_ = splitter_.fields(line.text);
    fields_.plain = fields_.plain && !repaired_; // its quotes are not what they seem
    if (!right) {
        const bool few = count < header_.fields;
        reject(likely_state(count), likely(Column::number, count),
               std::to_string(count) + " fields, " + std::to_string(header_.fields) +
                   " in the header",
               !line.ended && few ? cut_off
               : few              ? "fewer fields than the header"
                                  : "more fields than the header");
    }
    return right;
}

bool Reader::cut_fixed(const Line& line) {
    fields_ = cutter_.cut(line.text);
    const std::size_t length = FixedCutter::length(line.text);
    const std::size_t least = line.ended ? shortest_fixed_record : fixed_record;
    if (length >= least && length <= longest_fixed_record) {
        return true;
    }
    const bool few = length < least;
    reject(likely_state(column_count), likely(Column::number, column_count),
           std::to_string(length) + " characters, " + std::to_string(fixed_record) + " in a record",
           !line.ended && few ? cut_off
           : few              ? "shorter than a record"
                              : "longer than a record");
    return false;
}

void Reader::read_named(const Line& line) {
    const std::string_view code = field(Column::state);
    if (code != state_code_) { // nearly always that of the row before
        state_code_ = code;
        state_ = state_of(trimmed(code));
    }
    number_ = to_utf8(field(Column::number));
    const std::string_view id = trimmed(number_);
    if (state_.empty()) {
        reject({}, id, trimmed(code), "the state code is not a state's number");
    } else if (id.empty()) {
        reject(state_, {}, {}, "the structure number is blank");
    } else {
        inventory_.index_.prefetch(id);
        read_kind(line, id);
    }
}

void Reader::read_kind(const Line& line, std::string_view id) {
    const std::string_view code = trimmed(field(Column::record_type));
    const RecordKind kind = kind_of(code);
    if (kind == RecordKind::route_under) {
        ++inventory_.routes_under;
    } else if (kind == RecordKind::unknown) {
        reject(state_, id, code, "the record type is not 1, 2 or A to Z");
    } else {
        add(line, id);
    }
}

/// Adds the structure of a record, and takes it back where one was read before: by the time its
/// fields are read the memory that tells so has come.
void Reader::add(const Line& line, std::string_view id) {
    const std::size_t doubts = inventory_.doubts.size();
    read_structure(id);
    const std::uint64_t hash = text_hash(line.text);
    if (is_repeated(id, hash)) {
        inventory_.structures.pop_back();
        inventory_.doubts.resize(doubts);
        return;
    }
    const std::size_t position = inventory_.structures.size() - 1;
    inventory_.index_.add(id, static_cast<std::uint32_t>(position));
    hashes_.push_back(hash);
}

/// Whether a record of the structure was read before; then this one is rejected.
bool Reader::is_repeated(std::string_view id, std::uint64_t hash) {
    std::uint64_t line = 0;
    std::uint64_t row = 0;
    if (const std::uint32_t first = inventory_.index_.find(state_, id, inventory_.structures);
        first != IdIndex::none) {
        line = inventory_.structures[first].line;
        row = hashes_[first];
    } else if (const Seen::Entry* entry = seen_.find(state_, id)) {
        line = entry->line;
        row = entry->row;
    } else {
        return false;
    }
    reject(state_, id, "first on line " + std::to_string(line),
           row == hash ? "the same record again" : "second record of the same structure");
    return true;
}

void Reader::read_structure(std::string_view id) {
    Structure& structure = inventory_.structures.emplace_back();
    structure.state = state_;
    structure.id = id;
    structure.number = number_;
    structure.line = line_;
    const Record record{header_, fields_, structure, inventory_.doubts, 0};
    if (repaired_) {
        record.doubt(Column::crosses,
                     "quotes within the texts of the row: read so that the number of fields is "
                     "right",
                     true);
    }
    read_fields(record);
    const bool has_approaches =
        header_.has(Column::approach_material) && header_.has(Column::approach_design);
    check_consistency(
        {structure, has_approaches, [&record](Column column, std::string_view reason) {
             record.doubt(column, reason, true);
         }});
}

std::string_view Reader::field(Column column) const {
    const std::string_view field = fields_.at(header_.at(column));
    return fields_.quoted ? unquoted(field) : field;
}

/// A field of a row cut wrongly: what stands before the fault still tells which row it is.
std::string Reader::likely(Column column, std::size_t count) const {
    return header_.at(column) < count ? excerpt(trimmed(field(column))) : std::string{};
}

std::string Reader::likely_state(std::size_t count) const {
    return state_of(likely(Column::state, count));
}

void Reader::reject(std::string_view state, std::string_view id, std::string_view found,
                    std::string_view reason) {
    inventory_.rejected.push_back(
        {0, line_, std::string(state), std::string(id), excerpt(found), std::string(reason)});
}

} // namespace scupper::inventory::detail
