#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/rates.hpp"

using namespace scupper;

namespace {

DirtTable table() {
    DirtTable all;
    all.kinds.resize(2);
    all.kinds[0].material = "sand";
    all.kinds[0].moisture = "wet";
    all.kinds[1].material = "leaves";
    all.kinds[1].moisture = "unstated";
    all.build_ups = {{"washed_last_year", {}, {}}, {"neglected", {}, "long ago"}};
    return all;
}

template <class F>
UnknownNameError refusal(F call) {
    try {
        call();
    } catch (const UnknownNameError& e) {
        return e;
    }
    throw InputError({"test.accepted", "dirt", "was accepted", "an error"});
}

} // namespace

TEST_CASE("dirt is found by material and moisture, a build-up by its word") {
    const DirtTable all = table();
    CHECK(&dirt_of(all, "leaves", "unstated", "here") == &all.kinds[1]);
    CHECK(build_up_of(all, "neglected", "here").note == "long ago");
}

TEST_CASE("unknown dirt and words are refused, naming the nearest") {
    const DirtTable all = table();
    const auto kind = refusal([&] { dirt_of(all, "sand", "wett", "job.dirt"); });
    CHECK(kind.id() == "dirt.kind");
    CHECK(kind.path() == "job.dirt");
    CHECK(kind.allowed() == "\"sand, wet\"?");
    const auto word = refusal([&] { build_up_of(all, "neglect", "job.build_up"); });
    CHECK(word.id() == "dirt.since");
    CHECK(word.allowed() == "\"neglected\"?");
}
