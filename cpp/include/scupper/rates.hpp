#pragma once
// Operations, resources and values with their origin; hoses and fittings.

#include "scupper/rates/hose_library.hpp"
#include "scupper/rates/jets.hpp"
#include "scupper/rates/notice.hpp"
#include "scupper/rates/rate_book.hpp"
