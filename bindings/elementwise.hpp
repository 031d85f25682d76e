#pragma once
// A function of numbers over arrays of one shape, with the interpreter free meanwhile.

#include "convert.hpp"
#include "scupper/quantity.hpp"

#include <array>
#include <type_traits>

namespace scupper::python {

/// The numbers of an array, or the same one throughout.
struct Walk {
    const double* data;
    py::ssize_t step;

    double operator[](py::ssize_t i) const { return data[i * step]; }
};

/// f of every element; single numbers stand for whole arrays, all others have one shape.
template <class F, class... Arrays>
NumberArray elementwise(F f, const Arrays&... arrays) {
    const std::array<const Array*, sizeof...(Arrays)> all{&arrays...};
    const Array* whole = all.front();
    for (const Array* a : all) {
        whole = whole->ndim() == 0 ? a : whole;
    }
    const py::ssize_t size = whole->size();
    if (((arrays.ndim() > 0 && arrays.size() != size) || ...)) {
        throw py::value_error("arrays of different size");
    }
    NumberArray result(std::vector<py::ssize_t>(whole->shape(), whole->shape() + whole->ndim()));
    double* out = result.mutable_data();
    const std::array<Walk, sizeof...(Arrays)> in{
        Walk{arrays.data(), arrays.ndim() == 0 ? 0 : 1}...};
    const py::gil_scoped_release free;
    for (py::ssize_t i = 0; i < size; ++i) {
        out[i] = std::apply([&](const auto&... walk) { return f(walk[i]...); }, in);
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
