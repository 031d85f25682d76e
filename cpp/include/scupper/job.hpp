#pragma once
// What a person asks for.

#include "scupper/job/job.hpp"
