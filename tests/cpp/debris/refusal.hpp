#pragma once
// The error of a call that must refuse.

#include "scupper/error.hpp"

namespace scupper {

template <class F>
InputError refusal(F call) {
    try {
        call();
    } catch (const InputError& e) {
        return e;
    }
    throw InputError({"test.accepted", "call", "was accepted", "an error"});
}

} // namespace scupper
