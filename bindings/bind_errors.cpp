// The C++ family of errors becomes the Python family of scupper.errors, facts as attributes.
#include "convert.hpp"
#include "scupper/error.hpp"

namespace scupper::python {

namespace {

void set(const char* name, const Error& e) {
    const py::object type = py::module_::import("scupper.errors").attr(name);
    const py::object error = type(text(e.id()), text(e.path()), text(e.found()), text(e.allowed()));
    PyErr_SetObject(type.ptr(), error.ptr());
}

void translate(std::exception_ptr thrown) {
    if (!thrown) {
        return;
    }
    try {
        std::rethrow_exception(thrown);
    } catch (const UnitError& e) {
        set("UnitError", e);
    } catch (const UnknownNameError& e) {
        set("UnknownNameError", e);
    } catch (const FileError& e) {
        set("FileError", e);
    } catch (const MoneyError& e) {
        set("MoneyError", e);
    } catch (const InputError& e) {
        set("InputError", e);
    } catch (const SolveError& e) {
        set("SolveError", e);
    } catch (const Interrupted& e) {
        set("Interrupted", e);
    } catch (const Error& e) {
        set("Error", e);
    }
}

py::str message(const std::string& id, const std::string& path, const std::string& found,
                const std::string& allowed) {
    return text(Error({id, path, found, allowed}).what());
}

} // namespace

void bind_errors(py::module_& m) {
    py::register_local_exception_translator(translate);
    m.def("error_message", &message, "The message of an error from its facts.", py::arg("id"),
          py::arg("path"), py::arg("found"), py::arg("allowed"));
}

} // namespace scupper::python
