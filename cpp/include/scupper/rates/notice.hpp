#pragma once
// Notices and permits that are asked for before the work: dates, not hours.

#include <string>
#include <vector>

namespace scupper {

/// Something that is asked for so many days before the work may begin.
struct Notice {
    std::string name;              ///< [text] stable word: "railway"
    int shortest = 0;              ///< [d] from asking to the first day of work, at best
    int usual = 0;                 ///< [d] what to plan with
    int longest = 0;               ///< [d] what has been seen
    std::vector<std::string> when; ///< condition_names or closure_kind_names; any may hold
    std::string source;            ///< [text] regulation or guide, or "common practice"
    std::string note;              ///< [text] free text
};

} // namespace scupper
