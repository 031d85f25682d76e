#pragma once
// The error with which a call refuses its input.

#include "scupper/error.hpp"

#include <stdexcept>

template <class F>
scupper::InputError refusal(F&& call) {
    try {
        call();
    } catch (const scupper::InputError& e) {
        return e;
    }
    throw std::logic_error("nothing was refused");
}
