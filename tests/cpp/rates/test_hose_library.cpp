#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/rates.hpp"

using namespace scupper;

namespace test_hose_library {

namespace {

HoseLibrary two_hoses() {
    HoseLibrary library;
    library.hoses.resize(2);
    library.hoses[0].name = "jetting_1in";
    library.hoses[1].name = "suction_3in";
    library.fittings.push_back({"gated_wye", make_setting("loss_coefficient", {}, {}), {}});
    return library;
}

template <class F>
UnknownNameError refusal(F look_up) {
    try {
        look_up();
    } catch (const UnknownNameError& e) {
        return e;
    }
    throw InputError({"test.accepted", "library", "was accepted", "an error"});
}

} // namespace

TEST_CASE("hoses and fittings are found by name") {
    const HoseLibrary library = two_hoses();
    CHECK(&hose_of(library, "suction_3in", "here") == &library.hoses[1]);
    CHECK(&fitting_of(library, "gated_wye", "here") == library.fittings.data());
}

TEST_CASE("an unknown hose or fitting is refused, naming place and nearest") {
    const HoseLibrary library = two_hoses();
    const auto hose = refusal([&] { hose_of(library, "jeting_1in", "job.hoses.supply"); });
    CHECK(hose.id() == "hose.kind");
    CHECK(hose.path() == "job.hoses.supply");
    CHECK(hose.allowed() == "\"jetting_1in\"?");
    const auto fitting = refusal([&] { fitting_of(library, "gated wye", "segments[0]"); });
    CHECK(fitting.id() == "fitting.kind");
    CHECK(fitting.allowed() == "\"gated_wye\"?");
    const auto far = refusal([&] { fitting_of(library, "x", "segments[0]"); });
    CHECK(far.allowed() == "a name of the hose library");
}

} // namespace test_hose_library
