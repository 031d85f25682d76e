#pragma once
// Reading and writing documents.

#include "scupper/json/dirt_table.hpp"
#include "scupper/json/documents.hpp"
#include "scupper/json/estimate_document.hpp"
#include "scupper/json/form_mappings.hpp"
#include "scupper/json/forms.hpp"
#include "scupper/json/hose_lay.hpp"
#include "scupper/json/hose_library.hpp"
#include "scupper/json/item_lists.hpp"
#include "scupper/json/job_log.hpp"
#include "scupper/json/job_schema.hpp"
#include "scupper/json/rate_books.hpp"
#include "scupper/json/section_library.hpp"
#include "scupper/json/structure.hpp"
#include "scupper/json/structure_columns.hpp"
#include "scupper/json/structures.hpp"
