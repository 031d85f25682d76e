#pragma once
// One family of errors. Facts cross every border (C++, Python, command line), prose does not have
// to be parsed.

#include <stdexcept>
#include <string>
#include <string_view>

namespace scupper {

/// What is wrong, where, what was found and what would be right.
struct ErrorFacts {
    std::string id;      ///< stable word for the kind of error: "unit.unknown"
    std::string path;    ///< the offending input: "equipment.hose[2].bore", "DE22.txt:118 ADT_029"
    std::string found;   ///< what stands there
    std::string allowed; ///< what would be right
};

/// The root of the family. The message reads "<path>: <found>; allowed: <allowed> [<id>]".
class Error : public std::runtime_error {
  public:
    explicit Error(ErrorFacts facts);
    /// The stable word for the kind of error [text].
    const std::string& id() const noexcept { return facts_.id; }
    /// Where the offending input stands [text].
    const std::string& path() const noexcept { return facts_.path; }
    /// What stands there [text].
    const std::string& found() const noexcept { return facts_.found; }
    /// What would be right [text].
    const std::string& allowed() const noexcept { return facts_.allowed; }

  private:
    ErrorFacts facts_;
};

/// A person gave something that cannot be used: a value, a unit, a name, a job.
class InputError : public Error {
    using Error::Error;
};

/// A unit is unknown, ambiguous or of the wrong dimension.
class UnitError : public InputError {
    using InputError::InputError;
};

/// A name is not one of those known; `allowed` holds the nearest.
class UnknownNameError : public InputError {
    using InputError::InputError;
};

/// A file cannot be read: absent, of another format, cut off.
class FileError : public InputError {
    using InputError::InputError;
};

/// Money of two currencies met, or a sum left the range of exact decimals.
class MoneyError : public InputError {
    using InputError::InputError;
};

/// A solve did not converge, or was asked something without an answer.
class SolveError : public Error {
    using Error::Error;
};

/// The caller stopped a long run.
class Interrupted : public Error {
    using Error::Error;
};

} // namespace scupper
