#include "objects.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace scupper::inventory::detail {

namespace {

constexpr std::size_t longest_record = std::size_t{1} << 24U;
/// Deeper nesting than any record has; the text is cut short, so that no parser meets it.
constexpr int deepest = 64;

/// Lists within a record. From memory, as the names of the exchange file are.
constexpr std::array<std::string_view, 9> sets{
    "Elements",           "Features",         "Inspections",
    "PostingEvaluations", "PostingStatuses",  "Routes",
    "SpanSets",           "SubstructureSets", "Works"};

bool is_blank(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

} // namespace

void ObjectSplitter::put(char c) {
    if (text_.size() < longest_record && depth_ < deepest) {
        text_ += c;
    }
}

void ObjectSplitter::begin(bool stray) {
    recording_ = true;
    stray_ = stray;
    text_.clear();
    key_.clear();
}

void ObjectSplitter::read_in_string(char c) {
    if (recording_) {
        put(c);
    }
    if (escaped_) {
        escaped_ = false;
    } else if (c == '\\') {
        escaped_ = true;
    } else if (c == '"') {
        in_string_ = false;
        if (recording_ && depth_ == 1) {
            key_ = text_.substr(std::min(key_begin_, text_.size()));
            key_ = key_.substr(0, key_.size() - std::min<std::size_t>(key_.size(), 1));
        }
    }
}

/// An object that holds a list of its own, and nothing that names a structure, is no record.
bool ObjectSplitter::is_wrapper() const {
    return records_depth_ == 0 && depth_ == 1 && text_.find("\"BID01\"") == std::string::npos &&
           text_.find("\"BL01\"") == std::string::npos &&
           std::find(sets.begin(), sets.end(), key_) == sets.end();
}

void ObjectSplitter::open(char c) {
    if (!recording_ && depth_ == 0 && c == '[') {
        records_depth_ = 1;
        depth_ = 1;
        return;
    }
    if (!recording_ && depth_ == records_depth_) {
        begin(false);
    } else if (recording_ && c == '[' && is_wrapper()) {
        recording_ = false;
        records_depth_ = 2;
    }
    if (recording_) {
        put(c);
    }
    ++depth_;
}

/// Whether the bracket ends a record.
bool ObjectSplitter::close(char c) {
    depth_ = std::max(depth_ - 1, 0);
    if (recording_) {
        put(c);
    }
    const bool ends = recording_ && depth_ <= records_depth_;
    if (depth_ == 0 && !ends) {
        records_depth_ = 0;
    }
    return ends;
}

/// Whether the sign ends a stray value.
bool ObjectSplitter::read_other(char c) {
    if (!recording_) {
        if (depth_ == records_depth_ && !is_blank(c) && c != ',') {
            begin(true);
            put(c);
        }
        return false;
    }
    if (stray_ && (is_blank(c) || c == ',')) {
        return true;
    }
    put(c);
    return false;
}

std::size_t ObjectSplitter::feed(std::string_view bytes) {
    for (std::size_t at = 0; at < bytes.size(); ++at) {
        const char c = bytes[at];
        bool ends = false;
        if (in_string_) {
            read_in_string(c);
        } else if (c == '"') {
            if (!recording_ && depth_ == records_depth_) {
                begin(true);
            }
            if (recording_) {
                put(c);
            }
            in_string_ = true;
            key_begin_ = text_.size();
        } else if (recording_ && stray_ && (c == '{' || c == '[' || c == '}' || c == ']')) {
            ready_ = true; // it belongs to what comes next
            recording_ = false;
            return at;
        } else if (c == '{' || c == '[') {
            open(c);
        } else if (c == '}' || c == ']') {
            ends = close(c);
        } else {
            ends = read_other(c);
        }
        if (ends) {
            ready_ = true;
            recording_ = false;
            return at + 1;
        }
    }
    return bytes.size();
}

void ObjectSplitter::finish() {
    if (recording_ && stray_ && !in_string_) {
        ready_ = true;
        recording_ = false;
    }
}

std::string ObjectSplitter::take() {
    ready_ = false;
    stray_ = false;
    return std::exchange(text_, {});
}

} // namespace scupper::inventory::detail
