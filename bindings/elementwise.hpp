#pragma once
// A function of numbers over arrays of one shape, with the interpreter free meanwhile.

#include "convert.hpp"
#include "scupper/quantity.hpp"

#include <array>
#include <type_traits>

namespace scupper::python {

/// f of every element; all arrays have the shape of the first.
template <class F, class... Rest>
NumberArray elementwise(F f, const Array& first, const Rest&... rest) {
    if (((rest.size() != first.size()) || ...)) {
        throw py::value_error("arrays of different size");
    }
    NumberArray result(std::vector<py::ssize_t>(first.shape(), first.shape() + first.ndim()));
    double* out = result.mutable_data();
    const py::ssize_t size = first.size();
    const std::array<const double*, 1 + sizeof...(Rest)> in{first.data(), rest.data()...};
    const py::gil_scoped_release free;
    for (py::ssize_t i = 0; i < size; ++i) {
        out[i] = std::apply([&](auto... p) { return f(p[i]...); }, in);
    }
    return result;
}

inline double in_si(double value) {
    return value;
}
template <Dimension D>
double in_si(const Quantity<D, double>& value) {
    return value.si();
}

template <class>
using OneArray = Array;

/// A function of quantities as one of arrays in SI.
template <class Result, class... Arguments>
auto over_arrays(Result (*f)(Arguments...)) {
    return [f](const OneArray<Arguments>&... arrays) {
        return elementwise([f](auto... si) { return in_si(f(std::decay_t<Arguments>(si)...)); },
                           arrays...);
    };
}

} // namespace scupper::python
