#pragma once
// The whole vocabulary and schema as text, one key a line: what other parts and files rely on.

#include <string>

namespace scupper {

/// Every name that documents, tables and programs may rely on, one a line, with its dimension.
///
/// @return [text] sections of lines "section<tab>key<tab>dimension"
/// Range: none.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/schema/test_keys.cpp
std::string key_listing();

} // namespace scupper
