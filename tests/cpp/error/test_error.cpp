#include "catch.hpp"
#include "scupper/error.hpp"

#include <string>

using namespace scupper;

TEST_CASE("an error carries its facts and says them in one line") {
    const UnitError error({"unit.unknown", "equipment.hose[2].bore", "\"1.5 inc\"", "\"in\""});
    CHECK(error.id() == "unit.unknown");
    CHECK(error.path() == "equipment.hose[2].bore");
    CHECK(error.found() == "\"1.5 inc\"");
    CHECK(error.allowed() == "\"in\"");
    CHECK(std::string(error.what()) ==
          "equipment.hose[2].bore: \"1.5 inc\"; allowed: \"in\" [unit.unknown]");
}

TEST_CASE("an error without a place or a remedy leaves them out") {
    CHECK(std::string(SolveError({"solve.steps", "", "no root in 50 steps", ""}).what()) ==
          "no root in 50 steps [solve.steps]");
}

template <class Thrown, class Caught>
bool is_caught_as() {
    try {
        throw Thrown({"a.b", "", "x", ""});
    } catch (const Caught&) {
        return true;
    } catch (...) {
        return false;
    }
}

TEST_CASE("what a person can mend is an InputError, the rest is not") {
    CHECK(is_caught_as<UnitError, InputError>());
    CHECK(is_caught_as<UnknownNameError, InputError>());
    CHECK(is_caught_as<FileError, InputError>());
    CHECK(is_caught_as<MoneyError, InputError>());
    CHECK_FALSE(is_caught_as<SolveError, InputError>());
    CHECK_FALSE(is_caught_as<Interrupted, InputError>());
    CHECK(is_caught_as<SolveError, Error>());
    CHECK(is_caught_as<Interrupted, std::runtime_error>());
}
