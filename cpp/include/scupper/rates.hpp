#pragma once
// Operations, resources and values with their origin.

#include "scupper/rates/notice.hpp"
#include "scupper/rates/rate_book.hpp"
