#pragma once
// The error family: what is wrong, where, what was found, what is allowed.

#include "scupper/error/entry.hpp"
#include "scupper/error/error.hpp"
#include "scupper/error/nearest.hpp"
