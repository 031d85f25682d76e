#include "scupper/inventory/read.hpp"

#include "reader.hpp"
#include "scupper/error.hpp"
#include "scupper/inventory/stream.hpp"

#include <algorithm>
#include <fstream>
#include <system_error>
#include <utility>
#include <vector>

namespace scupper::inventory {

namespace {

constexpr std::size_t block_size = std::size_t{1} << 18U; // stays in the cache

void tell(const Progress& progress, const std::string& name, std::uint64_t done,
          std::uint64_t total) {
    if (progress && !progress(done, total)) {
        throw Interrupted({"inventory.stopped", name,
                           "reading stopped after " + std::to_string(done) + " bytes",
                           "the whole file of " + std::to_string(total) + " bytes"});
    }
}

/// Tells how far the reading is, about once a megabyte, at the end of a piece and of the file.
class Teller {
  public:
    void operator()(const Progress& progress, const std::string& name, std::uint64_t done,
                    std::uint64_t total, bool piece = false) {
        constexpr std::uint64_t step = std::uint64_t{1} << 20U;
        if (done - told_ >= step || done == total || piece) {
            told_ = done;
            tell(progress, name, done, total);
        }
    }

  private:
    std::uint64_t told_ = 0;
};

} // namespace

BlockReader::BlockReader(std::string_view name, std::size_t most)
    : reader_(std::make_unique<detail::Reader>(name, most)) {}
BlockReader::BlockReader(BlockReader&&) noexcept = default;
BlockReader& BlockReader::operator=(BlockReader&&) noexcept = default;
BlockReader::~BlockReader() = default;

std::size_t BlockReader::feed(std::string_view block) {
    return reader_->feed(block);
}

void BlockReader::finish() {
    reader_->finish();
}

bool BlockReader::full() const {
    return reader_->full();
}

void BlockReader::expect(std::uint64_t bytes) {
    reader_->expect(bytes);
}

Inventory BlockReader::take() {
    return reader_->take();
}

/// An open file and what was read of it.
struct FileReader::State {
    State(const std::filesystem::path& path, std::size_t most)
        : name(path.string()), reader(name, most) {
        std::error_code error;
        size = std::filesystem::file_size(path, error);
        if (error) {
            refuse(error.message());
        }
        in.open(path, std::ios::binary);
        if (!in) {
            refuse("a file that cannot be read");
        }
        bytes.resize(static_cast<std::size_t>(std::min<std::uint64_t>(size, block_size)));
        reader.expect(size);
    }

    [[noreturn]] void refuse(const std::string& found) const {
        throw FileError({"inventory.open", name, found, "an inventory file"});
    }

    /// Reads the next block of the file.
    void load() {
        const std::uint64_t rest = size - done;
        const auto length = static_cast<std::size_t>(std::min<std::uint64_t>(rest, bytes.size()));
        in.read(bytes.data(), static_cast<std::streamsize>(length));
        if (!in || static_cast<std::size_t>(in.gcount()) != length) {
            refuse("a file that cannot be read");
        }
        done += length;
        block = {bytes.data(), length};
    }

    std::string name;
    detail::Reader reader;
    std::ifstream in;
    std::vector<char> bytes;
    std::string_view block; ///< what is loaded and not taken in yet
    std::uint64_t size = 0;
    std::uint64_t done = 0;
    bool finished = false;
    Teller teller;
};

FileReader::FileReader(const std::filesystem::path& path, std::size_t most)
    : state_(std::make_unique<State>(path, most)) {}
FileReader::FileReader(FileReader&&) noexcept = default;
FileReader& FileReader::operator=(FileReader&&) noexcept = default;
FileReader::~FileReader() = default;

std::optional<Inventory> FileReader::next(const Progress& progress) {
    State& s = *state_;
    if (s.finished) {
        return std::nullopt;
    }
    const bool first = s.done == 0;
    while (!s.reader.full()) {
        if (s.block.empty() && s.done == s.size) {
            s.reader.finish();
            s.finished = true;
            break;
        }
        if (s.block.empty()) {
            s.load();
        }
        s.block.remove_prefix(s.reader.feed(s.block));
        s.teller(progress, s.name, s.done - s.block.size(), s.size, s.reader.full());
    }
    Inventory piece = s.reader.take();
    const bool empty = piece.rows == 0 && piece.blank_lines == 0;
    return empty && !first ? std::nullopt : std::optional(std::move(piece));
}

Inventory read_inventory(const std::filesystem::path& path, const Progress& progress) {
    return std::move(*FileReader(path).next(progress));
}

Inventory read_inventory_text(std::string_view text, std::string_view name,
                              const Progress& progress) {
    detail::Reader reader(name, all_records);
    reader.expect(text.size());
    const std::string file(name);
    Teller teller;
    for (std::size_t done = 0; done < text.size();) {
        // A block ends with a line, so that no line has to be put together from two.
        const std::size_t end = text.find('\n', std::min(done + block_size, text.size()));
        const std::string_view block =
            text.substr(done, end == std::string_view::npos ? end : end + 1 - done);
        reader.feed(block);
        done += block.size();
        teller(progress, file, done, text.size());
    }
    reader.finish();
    return reader.take();
}

} // namespace scupper::inventory
