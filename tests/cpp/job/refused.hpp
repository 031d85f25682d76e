#pragma once
// How a job is refused.

#include "scupper/error.hpp"
#include "scupper/job.hpp"

/// The error with which a job is refused; accepting it fails the test.
template <class E>
E refused(const scupper::Job& job) {
    try {
        check_job(job);
    } catch (const E& e) {
        return e;
    }
    throw scupper::InputError({"test.accepted", "", "was accepted", "an error"});
}
