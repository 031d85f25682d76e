#pragma once
// Rate books laid over the values of a job.

#include "scupper/job.hpp"
#include "scupper/rates.hpp"

namespace scupper::json {

/// A job with the values of a rate book in place of its own.
///
/// @param job [-] a job
/// @param book [-] a rate book; what it says of people and equipment that the job does not have is
/// left out
/// @return [-] the changed job; it names the book among those it rests on
/// Range: a book in the currency of the job.
/// Errors: InputError `rates.currency` where they have two.
/// Source: own convention
/// Verified by: tests/python/test_rates.py
Job with_rates(const Job& job, const RateBook& book);

} // namespace scupper::json
