#pragma once
// Between C++ and Python values: text, columns of a table, arrays.

#include "parts.hpp"

#include <algorithm>
#include <pybind11/numpy.h>
#include <pybind11/pybind11.h>
#include <pybind11/typing.h>
#include <string_view>
#include <utility>
#include <vector>

namespace scupper::python {

using Array = py::array_t<double, py::array::c_style | py::array::forcecast>;
/// The columns of a table by name.
using Columns = py::typing::Dict<py::str, py::object>;
using NumberArray = py::array_t<double>;

/// Text for Python, whatever its bytes: what is no UTF-8 is shown as U+FFFD.
inline py::str text(std::string_view bytes) {
    PyObject* s =
        PyUnicode_DecodeUTF8(bytes.data(), static_cast<Py_ssize_t>(bytes.size()), "replace");
    if (s == nullptr) {
        throw py::error_already_set();
    }
    return py::reinterpret_steal<py::str>(s);
}

/// A list of Python text from one member or function of every row.
template <class Rows, class Get>
py::list texts(const Rows& rows, Get get) {
    py::list list(rows.size());
    std::size_t i = 0;
    for (const auto& row : rows) {
        list[i++] = text(get(row));
    }
    return list;
}

/// An array of numbers from one member or function of every row.
template <class T, class Rows, class Get>
py::array_t<T> numbers(const Rows& rows, Get get) {
    py::array_t<T> array(static_cast<py::ssize_t>(rows.size()));
    std::transform(rows.begin(), rows.end(), array.mutable_data(), get);
    return array;
}

/// A vector handed over to Python as an array of a shape, without a copy.
template <class T>
py::array_t<T> hand_over(std::vector<T>&& values, std::vector<py::ssize_t> shape) {
    auto owned = std::make_unique<std::vector<T>>(std::move(values));
    const T* data = owned->data();
    const py::capsule owner(owned.get(), [](void* p) { delete static_cast<std::vector<T>*>(p); });
    owned.release();
    return py::array_t<T>(std::move(shape), data, owner);
}

} // namespace scupper::python
