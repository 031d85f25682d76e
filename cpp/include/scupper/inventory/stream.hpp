#pragma once
// Reading an inventory piece by piece, so that memory stays flat however long the file is: fed with
// blocks of bytes by whoever has them, or from a file.

#include "scupper/inventory/inventory.hpp"
#include "scupper/inventory/read.hpp"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <limits>
#include <memory>
#include <optional>
#include <string_view>

namespace scupper::inventory {

/// As many records as there are.
inline constexpr std::size_t all_records = std::numeric_limits<std::size_t>::max();

/// Reads an inventory from blocks of bytes, in their order, wherever they were cut.
///
/// What grows with the file is 24 bytes a structure, to tell second records across pieces: there a
/// structure is known by 64 bits, and 700,000 structures hold one that is wrongly taken for another
/// with a chance of 1e-8.
class BlockReader {
  public:
    /// @param name [text] what to call the file where a line is named
    /// @param most [-] records a piece, > 0
    explicit BlockReader(std::string_view name, std::size_t most = all_records);
    BlockReader(BlockReader&&) noexcept;
    BlockReader& operator=(BlockReader&&) noexcept;
    ~BlockReader();

    /// Reads on in the next block.
    ///
    /// @param block [text] the bytes that follow those taken in before
    /// @return [byte] how many were taken in: fewer than there are where a piece is full; `take` it
    /// and feed the rest
    /// Range: any bytes; lines and characters may be cut anywhere.
    /// Errors: as `read_inventory_text`.
    /// Source: as `read_inventory`
    /// Verified by: tests/cpp/inventory/test_stream.cpp
    std::size_t feed(std::string_view block);

    /// Reads the last line, which may have no end.
    ///
    /// Range: after the last block.
    /// Errors: as `read_inventory_text`; FileError `inventory.header` for an empty file.
    /// Source: as `read_inventory`
    /// Verified by: tests/cpp/inventory/test_stream.cpp
    void finish();

    /// Whether a piece holds as many records as it may.
    ///
    /// @return [-] true where `feed` takes in no more
    /// Range: any time.
    /// Errors: none.
    /// Source: definition
    /// Verified by: tests/cpp/inventory/test_stream.cpp
    bool full() const;

    /// Makes room for structures beforehand.
    ///
    /// @param bytes [byte] how long the file is
    /// Range: any; a guess is enough.
    /// Errors: none.
    /// Source: definition
    void expect(std::uint64_t bytes);

    /// Hands over what was read since the last piece.
    ///
    /// @return [-] structures, rejected records and doubts; rows count for the piece
    /// Range: any time; empty where nothing was read.
    /// Errors: none.
    /// Source: definition
    /// Verified by: tests/cpp/inventory/test_stream.cpp
    Inventory take();

  private:
    std::unique_ptr<detail::Reader> reader_;
};

/// Reads an inventory file in pieces.
class FileReader {
  public:
    /// Opens a file.
    ///
    /// @param path [text] the file
    /// @param most [-] records a piece, > 0
    explicit FileReader(const std::filesystem::path& path, std::size_t most = all_records);
    FileReader(FileReader&&) noexcept;
    FileReader& operator=(FileReader&&) noexcept;
    ~FileReader();

    /// Reads the next piece.
    ///
    /// @param progress [-] told how far the reading is; may be empty
    /// @return [-] the next piece; nothing after the last
    /// Range: as `read_inventory`; a file without records is one piece without structures.
    /// Errors: as `read_inventory`.
    /// Source: as `read_inventory`
    /// Verified by: tests/cpp/inventory/test_stream.cpp
    std::optional<Inventory> next(const Progress& progress = {});

  private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace scupper::inventory
