#pragma once
// The records of a JSON text, cut out one after the other wherever its blocks were cut.

#include <cstddef>
#include <string>
#include <string_view>

namespace scupper::inventory::detail {

/// Cuts a text into its records: the values of the list it is, or of the lists within an object
/// around them; or objects one after the other. Only one record is held at a time.
class ObjectSplitter {
  public:
    /// Reads on up to the end of the next record [byte taken in].
    std::size_t feed(std::string_view bytes);
    /// A stray value at the very end has no sign after it that ends it.
    void finish();
    /// Whether a record is complete.
    bool ready() const { return ready_; }
    /// Its text; longer ones than any record are cut short, and so no valid JSON.
    std::string take();
    /// Whether the end came within a record.
    bool cut_off() const { return recording_ || in_string_; }
    /// Whether a list was never closed.
    bool left_open() const { return depth_ > 0; }

  private:
    void put(char c);
    void read_in_string(char c);
    void open(char c);
    bool close(char c);
    bool read_other(char c);
    void begin(bool stray);
    bool is_wrapper() const;

    std::string text_;          ///< of the record so far
    std::string key_;           ///< the last text directly within an object around the records
    std::size_t key_begin_ = 0; ///< where it begins
    int depth_ = 0;             ///< brackets open
    int records_depth_ = 0;     ///< brackets around each record
    bool in_string_ = false;
    bool escaped_ = false;
    bool recording_ = false;
    bool stray_ = false; ///< a value that is neither object nor list
    bool ready_ = false;
};

/// Whether the first sign of a text makes it such a list rather than rows.
constexpr bool opens_objects(char first) {
    return first == '{' || first == '[';
}

} // namespace scupper::inventory::detail
