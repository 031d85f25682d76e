#include "scupper/job/terms.hpp"

namespace scupper {

Terms::Terms() : payment_interval(factor::year / 12.0), retainage_release(0.0) {}

} // namespace scupper
