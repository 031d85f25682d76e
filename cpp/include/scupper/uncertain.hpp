#pragma once
// Values with low, likely, high, basis and origin.

#include "scupper/uncertain/uncertain.hpp"
