#pragma once
// Structures as their records tell them.

#include "scupper/structure/codes.hpp"
#include "scupper/structure/structure.hpp"
