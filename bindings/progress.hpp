#pragma once
// Long calls: the interpreter is free meanwhile, Ctrl-C stops them, a Python function is told how
// far they are.

#include "parts.hpp"

namespace scupper::python {

/// Told numbers done and in all. Looks for a waiting Ctrl-C; where `told` is not None it is called
/// with the two numbers, and False from it stops the run. `told` must outlive the result.
inline auto watcher(const py::object& told) {
    return [&told](auto done, auto all) {
        const py::gil_scoped_acquire interpreter;
        if (PyErr_CheckSignals() != 0) {
            throw py::error_already_set();
        }
        if (told.is_none()) {
            return true;
        }
        const py::object answer = told(done, all);
        return answer.is_none() || answer.cast<bool>();
    };
}

} // namespace scupper::python
