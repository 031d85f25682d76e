#pragma once
// Operations, resources and values with their origin; hoses, fittings, dirt.

#include "scupper/rates/alternative.hpp"
#include "scupper/rates/dirt_table.hpp"
#include "scupper/rates/hose_library.hpp"
#include "scupper/rates/jets.hpp"
#include "scupper/rates/notice.hpp"
#include "scupper/rates/rate_book.hpp"
#include "scupper/rates/shared_share.hpp"
#include "scupper/rates/surrounding.hpp"
