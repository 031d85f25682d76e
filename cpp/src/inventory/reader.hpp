#pragma once
// Lines, or the objects of a JSON text, into structures.

#include "columns.hpp"
#include "fixed.hpp"
#include "objects.hpp"
#include "record.hpp"
#include "scupper/inventory/elements.hpp"
#include "scupper/inventory/inventory.hpp"
#include "seen.hpp"
#include "split.hpp"

#include <cstddef>
#include <cstdint>
#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::inventory::detail {

/// One line as it stands in the file, with `padding` after it.
struct Line {
    std::string_view text;
    bool ended = true; ///< the last line of a file that was cut off has no end
};

/// Reads lines or objects into an inventory. The first sign tells which of the two a file has, the
/// first line which form its lines have.
class Reader {
  public:
    Reader(std::string_view name, std::size_t most);

    std::size_t feed(std::string_view block);
    void finish();
    bool full() const { return inventory_.rows >= most_; }
    void expect(std::uint64_t bytes) { expected_ = bytes; }
    Inventory take();

    /// The name the file goes by [text].
    const std::string& name() const { return name_; }

  private:
    enum class Kind : std::uint8_t { untold, lines, objects };

    std::size_t feed_lines(std::string_view block);
    std::size_t feed_objects(std::string_view block);
    void finish_lines();
    void finish_objects();
    void read_ready_object();
    void read_object(const std::string& text);
    void read_national_record(const nlohmann::json& object, const std::string& text);
    void join_own_elements();
    void keep(std::string_view part);
    void read_kept(bool ended);
    void read_line(Line line);
    void open(Line& line);
    void reserve(std::size_t row);
    void read_row(const Line& line);
    bool cut_delimited(const Line& line);
    bool cut_fixed(const Line& line);
    void read_named(const Line& line);
    void read_kind(const Line& line, std::string_view id);
    bool is_repeated(std::string_view id, std::uint64_t hash);
    void add(const Line& line, std::string_view id);
    void read_structure(std::string_view id);
    std::string_view field(Column column) const;
    std::string likely(Column column, std::size_t count) const;
    std::string likely_state(std::size_t count) const;
    void reject(std::string_view state, std::string_view id, std::string_view found,
                std::string_view reason);

    std::string name_;
    std::size_t most_;
    std::uint64_t expected_ = 0;
    Kind kind_ = Kind::untold;
    std::string lead_; ///< blanks before the first sign
    ObjectSplitter objects_;
    ElementRecords elements_;    ///< of the records of a piece
    std::string kept_;           ///< a line whose end has not come yet, or that lacks padding
    std::uint64_t overlong_ = 0; ///< bytes of a line of which nothing more is kept
    bool opened_ = false;
    bool fixed_ = false;
    bool finished_ = false;
    Header header_;
    Splitter splitter_;
    FixedCutter cutter_;
    Fields fields_;
    bool repaired_ = false;
    std::uint64_t line_ = 0;
    std::string state_code_; ///< what the row before had, and what it means
    std::string state_;
    std::string number_;                ///< of the row at hand, padding kept
    Seen seen_;                         ///< structures of former pieces
    std::vector<std::uint64_t> hashes_; ///< of the rows of the structures
    Inventory inventory_;
};

} // namespace scupper::inventory::detail
