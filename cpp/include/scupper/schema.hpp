#pragma once
// Names and keys that everything else relies on.

#include "scupper/schema/figure_table.hpp"
#include "scupper/schema/fixed_text.hpp"
#include "scupper/schema/form_keys.hpp"
#include "scupper/schema/input_table.hpp"
#include "scupper/schema/layout.hpp"
#include "scupper/schema/listing.hpp"
#include "scupper/schema/shown_in.hpp"
#include "scupper/schema/slots.hpp"
#include "scupper/schema/vocabulary.hpp"
