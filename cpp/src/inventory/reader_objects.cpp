// Records that are objects of a JSON text: the national specification of 2022.

#include "bytes.hpp"
#include "national.hpp"
#include "reader.hpp"
#include "text.hpp"

#include <algorithm>
#include <cctype>

namespace scupper::inventory::detail {

std::size_t Reader::feed(std::string_view block) {
    if (kind_ == Kind::untold) {
        const std::size_t first = block.find_first_not_of("\xEF\xBB\xBF \t\r\n");
        if (first == std::string_view::npos) {
            lead_ += block;
            return block.size();
        }
        kind_ = opens_objects(block[first]) ? Kind::objects : Kind::lines;
        if (kind_ == Kind::lines) {
            feed_lines(lead_);
        } else {
            block.remove_prefix(first);
            return first + feed_objects(block);
        }
    }
    return kind_ == Kind::objects ? feed_objects(block) : feed_lines(block);
}

void Reader::finish() {
    finished_ = true;
    if (kind_ == Kind::objects) {
        finish_objects();
        return;
    }
    feed_lines(kind_ == Kind::untold ? std::string_view(lead_) : std::string_view{});
    finish_lines();
}

std::size_t Reader::feed_objects(std::string_view block) {
    std::size_t at = 0;
    while (at < block.size() && !full()) {
        at += objects_.feed(block.substr(at));
        read_ready_object();
    }
    return at;
}

void Reader::read_ready_object() {
    if (objects_.ready()) {
        ++line_;
        ++inventory_.rows;
        read_object(to_utf8(objects_.take()));
    }
}

void Reader::read_object(const std::string& text) {
    const auto object = nlohmann::json::parse(text, nullptr, false);
    if (object.is_discarded()) {
        reject({}, {}, text, "not valid JSON: what stands up to its end is not read");
    } else if (!object.is_object()) {
        reject({}, {}, shown(object), "no record: a value that is no object");
    } else {
        read_national_record(object, text);
    }
}

namespace {

std::string text_at(const nlohmann::json& object, const char* tag) {
    const auto found = object.find(tag);
    if (found == object.end() || found->is_null()) {
        return {};
    }
    return found->is_string()           ? found->get<std::string>()
           : found->is_number_integer() ? found->dump()
                                        : std::string{};
}

} // namespace

void Reader::read_national_record(const nlohmann::json& object, const std::string& text) {
    const std::string code = text_at(object, "BL01");
    state_ = state_of(trimmed(code));
    number_ = text_at(object, "BID01");
    const std::string id(trimmed(number_));
    if (state_.empty()) {
        reject({}, id, code, "the state code is not a state's number");
        return;
    }
    if (id.empty()) {
        reject(state_, {}, {}, "the structure number is blank");
        return;
    }
    if (is_repeated(id, text_hash(text))) {
        return;
    }
    Structure& structure = inventory_.structures.emplace_back();
    structure.state = state_;
    structure.id = id;
    structure.number = number_;
    structure.line = line_;
    const Items items(object, {}, structure, inventory_.doubts);
    read_national(items);
    read_national_elements(items, elements_);
    const auto position = static_cast<std::uint32_t>(inventory_.structures.size() - 1);
    inventory_.index_.add(id, position);
    hashes_.push_back(text_hash(text));
}

void Reader::finish_objects() {
    objects_.finish();
    read_ready_object();
    if (objects_.cut_off() || objects_.left_open()) {
        ++line_;
        ++inventory_.rows;
        const bool within = objects_.cut_off();
        reject({}, {}, "the file ends",
               within ? "the last record is cut off"
                      : "the list of records is not closed: some may be missing");
    }
}

/// Elements within records join as those of an element file do.
void Reader::join_own_elements() {
    if (!elements_.records.empty()) {
        elements_.file = name_;
        join_elements(inventory_, elements_);
        elements_ = {};
    }
}

} // namespace scupper::inventory::detail
