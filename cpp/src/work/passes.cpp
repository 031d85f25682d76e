#include "scupper/work/passes.hpp"

namespace scupper::work {

template <class T>
Count<T> passes(const Length<T>& width, const Length<T>& effective_width, const T& overlap) {
    return Count<T>(count_up(width / (effective_width * (1.0 - overlap))));
}

template Count<double> passes(const Length<double>&, const Length<double>&, const double&);
template Count<Traced> passes(const Length<Traced>&, const Length<Traced>&, const Traced&);

} // namespace scupper::work
