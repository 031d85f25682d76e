#pragma once
// Room for long lists.

#include <cstddef>
#include <vector>

namespace scupper::inventory::detail {

/// Asks for memory in large pages, where the system has them: a hint that saves most of the time in
/// which memory is handed out page by page, and much of that in which it is found again.
void ask_for_large_pages(void* begin, std::size_t bytes);

/// Reserves room in a list, in large pages.
template <class T>
void reserve_large(std::vector<T>& list, std::size_t room) {
    list.reserve(room);
    ask_for_large_pages(list.data(), list.capacity() * sizeof(T));
}

} // namespace scupper::inventory::detail
