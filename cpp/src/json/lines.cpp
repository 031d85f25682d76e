#include "lines.hpp"

#include "values.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <vector>

namespace scupper::json::detail {

namespace {

/// Reads a text letter by letter and counts its lines.
class CountingIterator {
  public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    CountingIterator(const char* at, std::size_t* line) : at_(at), line_(line) {}
    reference operator*() const { return *at_; }
    CountingIterator& operator++() {
        *line_ += *at_ == '\n' ? 1u : 0u;
        ++at_;
        return *this;
    }
    CountingIterator operator++(int) {
        const CountingIterator before = *this;
        ++*this;
        return before;
    }
    bool operator==(const CountingIterator& other) const { return at_ == other.at_; }
    bool operator!=(const CountingIterator& other) const { return at_ != other.at_; }

  private:
    const char* at_;
    std::size_t* line_;
};

/// Notes on which line each place of a document begins: "inputs.tank.volume", "stages[1].name".
class LineReader : public nlohmann::json_sax<Json> {
  public:
    explicit LineReader(const std::size_t& line) : line_(line) {}
    const std::map<std::string, std::size_t>& lines() const { return lines_; }

    bool null() override { return value(); }
    bool boolean(bool) override { return value(); }
    bool number_integer(number_integer_t) override { return value(); }
    bool number_unsigned(number_unsigned_t) override { return value(); }
    bool number_float(number_float_t, const string_t&) override { return value(); }
    bool string(string_t&) override { return value(); }
    bool binary(binary_t&) override { return value(); }
    bool start_object(std::size_t) override { return open(false); }
    bool start_array(std::size_t) override { return open(true); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool key(string_t& name) override {
        const std::string& above = open_.back().path;
        place_ = above.empty() ? name : above + "." + name;
        lines_[place_] = line_; // a key stands on one line, its value may begin on the next
        return true;
    }
    bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception&) override {
        return false;
    }

  private:
    struct Open {
        std::string path;
        bool is_list;
        std::size_t next = 0;
    };

    /// Where the value that begins now stands.
    std::string place() {
        if (open_.empty() || !open_.back().is_list) {
            return place_;
        }
        Open& list = open_.back();
        std::string path = list.path + "[" + std::to_string(list.next++) + "]";
        lines_[path] = line_;
        return path;
    }
    bool value() {
        place();
        return true;
    }
    bool open(bool is_list) {
        open_.push_back({place(), is_list});
        return true;
    }
    bool close() {
        open_.pop_back();
        return true;
    }

    const std::size_t& line_;
    std::map<std::string, std::size_t> lines_;
    std::vector<Open> open_;
    std::string place_;
};

std::map<std::string, std::size_t> lines_of(std::string_view text) {
    std::size_t line = 1;
    LineReader reader(line);
    Json::sax_parse(CountingIterator(text.data(), &line),
                    CountingIterator(text.data() + text.size(), &line), &reader);
    return reader.lines();
}

/// The word that an error about a key puts between quotes.
std::string quoted(const std::string& found) {
    const std::size_t first = found.find('"');
    const std::size_t last = found.find('"', first + 1);
    return last == std::string::npos ? std::string{} : found.substr(first + 1, last - first - 1);
}

/// The path within the document; none where an error speaks of something else.
std::string within(const std::string& path, std::string_view name) {
    const bool inside = path.size() > name.size() && path.starts_with(name);
    return inside && path[name.size()] == '.' ? path.substr(name.size() + 1) : std::string{};
}

/// The line of a place, or of the nearest one around it.
std::size_t nearest_line(std::string place, const std::map<std::string, std::size_t>& lines) {
    while (!place.empty()) {
        if (const auto found = lines.find(place); found != lines.end()) {
            return found->second;
        }
        const std::size_t end = place.find_last_of(".[");
        place.resize(end == std::string::npos ? 0 : end);
    }
    return 0;
}

template <class Kind>
[[noreturn]] void throw_at(const Kind& e, std::string_view text, std::string_view name) {
    ErrorFacts facts{e.id(), e.path(), e.found(), e.allowed()};
    if (const std::size_t line = line_of(facts, text, name); line > 0) {
        const std::string place = within(facts.path, name);
        facts.path = std::string(name) + ":" + std::to_string(line);
        facts.path += place.empty() ? "" : " " + place;
    }
    throw Kind(facts);
}

} // namespace

std::size_t line_of(const ErrorFacts& facts, std::string_view text, std::string_view name) {
    if (text.find('\n') == std::string_view::npos) {
        return 0;
    }
    const auto lines = lines_of(text);
    const std::string place = within(facts.path, name);
    if (const std::string key = quoted(facts.found); !key.empty()) {
        const auto at_key = lines.find(place.empty() ? key : place + "." + key);
        if (at_key != lines.end()) {
            return at_key->second;
        }
    }
    return nearest_line(place, lines);
}

void rethrow_with_line(std::string_view text, std::string_view name) {
    try {
        throw;
    } catch (const UnitError& e) {
        throw_at(e, text, name);
    } catch (const UnknownNameError& e) {
        throw_at(e, text, name);
    } catch (const MoneyError& e) {
        throw_at(e, text, name);
    } catch (const FileError&) {
        throw; // it says line and column itself
    } catch (const InputError& e) {
        throw_at(e, text, name);
    }
}

} // namespace scupper::json::detail
