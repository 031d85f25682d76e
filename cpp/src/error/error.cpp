#include "scupper/error/error.hpp"

#include <utility>

namespace scupper {

namespace {
std::string message_of(const ErrorFacts& f) {
    std::string text = f.path.empty() ? f.found : f.path + ": " + f.found;
    if (!f.allowed.empty()) {
        text += "; allowed: " + f.allowed;
    }
    return text + " [" + f.id + "]";
}
} // namespace

Error::Error(ErrorFacts facts) : std::runtime_error(message_of(facts)), facts_(std::move(facts)) {}

} // namespace scupper
