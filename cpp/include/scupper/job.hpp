#pragma once
// What a person asks for.

#include "scupper/job/calendar.hpp"
#include "scupper/job/job.hpp"
