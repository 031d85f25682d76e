// The test runner's main for Catch2 version 2; version 3 brings its own library.
#define CATCH_CONFIG_MAIN
#include <catch2/catch.hpp>
