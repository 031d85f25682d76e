// A job document of any bytes is read or refused with one of the project's own errors.
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "scupper/error.hpp"
#include "scupper/estimate.hpp"
#include "scupper/json.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    try {
        const scupper::Job job =
            scupper::json::read_job(text, "job.json", scupper::json::shipped_rates());
        scupper::json::write_job(job);
        scupper::estimate::make_plan(job);
    } catch (const scupper::Error&) {
        return 0;
    }
    return 0;
}
