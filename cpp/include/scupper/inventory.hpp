#pragma once
// Readers of the public bridge inventory.

#include "scupper/inventory/elements.hpp"
#include "scupper/inventory/faults.hpp"
#include "scupper/inventory/inventory.hpp"
#include "scupper/inventory/read.hpp"
#include "scupper/inventory/stream.hpp"
