#pragma once
// Dirt: volumes, masses, loads.

#include "scupper/debris/build_up.hpp"
#include "scupper/debris/loads.hpp"
