#pragma once
// Reading and writing documents.

#include "scupper/json/documents.hpp"
