#pragma once
// The one place that knows which Catch2 is installed: version 3 or version 2.

#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
using Catch::Approx;
#else
#include <catch2/catch.hpp>
#endif
