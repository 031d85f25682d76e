#pragma once
// Ways to clean a deck, means of access to the underside, closures: what they change in a job, what
// they need, what they leave. Plain data; reading it is the business of `json`.

#include "scupper/rates/surrounding.hpp"

#include <limits>
#include <map>
#include <string>
#include <vector>

namespace scupper {

/// The questions that alternatives answer; the words are `question_names`, in this order.
enum class Question { deck, underside, closure };

/// What a site measures; the words are `site_measure_names`, in this order.
enum class SiteMeasure { reach_height, walk_width, daily_traffic, detour, posted_limit };

/// How little or how much of a measure an alternative bears.
struct SiteLimit {
    SiteMeasure measure = SiteMeasure::reach_height;         ///< [-] what is measured
    double least = -std::numeric_limits<double>::infinity(); ///< [SI unit of the measure]
    double most = std::numeric_limits<double>::infinity();   ///< [SI unit of the measure]
    std::string reason;                                      ///< [text] why there is a limit
};

/// What one pass takes away of the dirt.
struct Removal {
    Setting share;                 ///< [-] of one pass: low, likely, high
    std::string passes;            ///< [text] row of group `pass` whose rounds count; empty: once
    std::vector<std::string> dirt; ///< dirt_names that it concerns
};

/// One way to do a part of the work, as a change of a job.
struct Alternative {
    std::string name;                        ///< [text] what people call it
    Question question = Question::deck;      ///< [-] what it answers
    std::map<std::string, std::string> ways; ///< component name to the way it is served
    std::string closure;                     ///< a closure kind; empty: as the job has it
    std::map<std::string, std::string>
        instead;                              ///< equipment to what takes its place; empty: nothing
    std::vector<std::string> without;         ///< operations that it does not have
    std::vector<Resource> labour;             ///< [-, n] people besides the job's
    std::vector<Resource> equipment;          ///< [-, n] equipment besides the job's
    std::vector<Resource> charges;            ///< [-, n] charges besides the job's
    std::vector<Pace> paces;                  ///< [-, n] faster or slower than the rates say
    std::map<std::string, std::string> needs; ///< condition to why it cannot be without
    std::map<std::string, std::string> forbids; ///< condition or site word to why it cannot be with
    std::vector<SiteLimit> limits;              ///< [-, n] of what the site measures
    std::map<std::string, std::string> misses;  ///< component to what it does not reach there
    Removal removes;               ///< [-] what it takes away; a share of NaN: nobody says
    std::vector<Setting> settings; ///< [SI unit of each, n] where the job has none
    std::string source;            ///< [text] document, or "common practice"
    std::string note;              ///< [text] free text
};

} // namespace scupper
