#pragma once
// Runs work over a list in blocks on several threads, with progress and cancel.

#include <cstddef>
#include <functional>

namespace scupper::estimate {

/// Does the items from first to last - 1 on one thread.
using Block = std::function<void(std::size_t first, std::size_t last)>;

/// Runs every block of a list; which thread does which block does not matter to the caller.
///
/// @param items [-] length of the list
/// @param threads [-] how many; 0 for as many as the machine has
/// @param block [-] does a range of items; called from several threads at once
/// @param progress [-] told items done and all, from the calling thread; false stops
/// @param block_size [-] items of a block: few where an item takes long
/// Range: any list; blocks of at least one item.
/// Errors: Interrupted `estimate.stopped` where progress says so; the first error of a block.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_programme.cpp
void run_blocks(std::size_t items, unsigned threads, const Block& block,
                const std::function<bool(std::size_t, std::size_t)>& progress,
                std::size_t block_size = 256);

} // namespace scupper::estimate
