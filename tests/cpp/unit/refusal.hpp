#pragma once
// The error a call raises, to look at its facts.

#include "scupper/error.hpp"

#include <stdexcept>

template <class Call>
scupper::UnitError refusal(Call call) {
    try {
        call();
    } catch (const scupper::UnitError& error) {
        return error;
    }
    throw std::logic_error("nothing was refused");
}
