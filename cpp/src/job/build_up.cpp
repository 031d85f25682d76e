#include "library_values.hpp"
#include "scupper/job/job.hpp"

namespace scupper {

void fill_build_up_values(Job& job, const DirtTable& table) {
    for (const Setting& value : build_up_of(table, job.build_up, "job.build_up").values) {
        detail::fill_value(job, value);
    }
}

void clear_build_up_values(Job& job, const DirtTable& table) {
    for (const Setting& value : build_up_of(table, job.build_up, "job.build_up").values) {
        detail::clear_value(job, value);
    }
}

} // namespace scupper
