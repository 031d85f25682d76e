#pragma once
// What a person asks for: scope, service level, closure, crews, equipment, values, exceptions.

#include "scupper/job/calendar.hpp"
#include "scupper/job/correlation.hpp"
#include "scupper/job/haul.hpp"
#include "scupper/job/terms.hpp"
#include "scupper/rates.hpp"
#include "scupper/schema.hpp"

#include <map>
#include <string>
#include <vector>

namespace scupper {

/// At which value of every input the estimate prices.
enum class PriceAt { mean, likely };

/// How an outing's fixed time is shared; the words are `sharing_names`, in this order.
enum class Sharing { own_shifts, pro_rata, count_a_shift, one_closure, by_the_hour };

/// What is done at a bridge posted for less than the loaded water truck weighs; the words are
/// `posting_names`, in this order.
enum class AtPosted { approach, half_fill, refuse };

/// People who work side by side with the other parties of their stage.
struct Party {
    std::string name; ///< [text] what people call it
    std::vector<std::string>
        work; ///< operations, component_names, crew_kind_names; the first named beat the others
};

/// Work that has the site to itself, with shifts and closures of its own. Stages follow each other.
struct Stage {
    std::string name;           ///< [text] "deck at night"
    std::string closure;        ///< a closure kind, or "by_record"; empty: as the job has it
    std::vector<Party> parties; ///< [-, n] at least one
};

/// When the crew works; the words are `work_time_names`, in this order.
enum class WorkTime { day, night };

/// How traffic meets a closure.
struct Traffic {
    std::string hours = "by_record";   ///< one of hour_pattern_names, or by the record's road class
    std::vector<double> shares;        ///< [-, 24] of the hours from midnight; empty: by `hours`
    std::string capacity = "hcm_2010"; ///< one of capacity_method_names
};

/// A job. Values are settings by schema key: those of the rate book first, then the job's own.
struct Job {
    std::string name;                           ///< [text] what people call the job
    std::string note;                           ///< [text] free text
    std::string currency = "USD";               ///< [text] three-letter code of every amount
    std::string units = "us";                   ///< "us", "metric" or "si": how results are shown
    PriceAt price_at = PriceAt::mean;           ///< [-] which value of every input is priced
    std::map<std::string, std::string> service; ///< component name to service level
    std::map<std::string, std::string> ways;    ///< component name to the way it is served
    std::string closure = "by_record";          ///< a closure kind, or "by_record"
    Sharing sharing = Sharing::pro_rata;        ///< [-] how an outing's fixed time is shared
    WorkTime work_time = WorkTime::day;         ///< [-] when the crew works
    Traffic traffic;                            ///< [-] how traffic meets a closure
    AtPosted posting = AtPosted::approach;      ///< [-] at a bridge too weak for the truck
    std::vector<Stage> stages;                  ///< [-, n] none: one stage and party for all
    std::vector<Operation> operations;          ///< [-, n] the rate book's, then the job's own
    std::vector<Resource> labour;               ///< [-, n] kinds of people, paid by the hour
    std::vector<Resource> equipment;            ///< [-, n] kinds of equipment, paid by the hour
    std::vector<Resource> charges;              ///< [-, n] amounts by the visit or shift: permits
    std::vector<WashMethod> methods;            ///< [-, n] ways to bring water to bear
    std::map<std::string, std::string> hoses;   ///< hose segment to a hose of the library
    std::vector<Haul> hauls; ///< [-, n] haul trucks; empty: one that carries all debris
    std::string build_up = "washed_last_year";            ///< one of build_up_names
    WashWater wash_water = WashWater::release;            ///< [-] what may become of the wash water
    std::map<std::string, std::vector<std::string>> site; ///< id or "every" to site_word_names
    std::vector<Pace> paces;               ///< [-, n] what makes operations take longer
    std::vector<Surrounding> surroundings; ///< [-, n] what lies around and costs money
    std::vector<Alternative> alternatives; ///< [-, n] to compare; none of them is in the price
    std::vector<Setting> settings; ///< [SI unit of each, n] a later one of the same key wins
    std::vector<Correlation> correlations;   ///< [-, n] inputs that vary together
    JetRules jets;                           ///< [-] what jets need, and what surfaces bear
    std::vector<Notice> notices;             ///< [-, n] what is asked for before the work
    Calendar calendar;                       ///< [-] the days on which a crew may work
    std::map<std::string, double> frequency; ///< component to times a year; one not named: once
    Terms terms;                             ///< [-] of the contract, beside the price
    std::vector<Caution> cautions;           ///< [-] what the crew must mind
    std::vector<std::string> rate_books; ///< [text, n] name, version and date of what it rests on
    std::map<std::string, std::vector<Setting>> overrides; ///< by structure id or "state:id"
};

/// The service level of a component in a job.
///
/// @param job [-] the job
/// @param component [text] one of component_names
/// @return [text] one of service_level_names; "none" where the job does not name the component
/// Range: any text.
/// Errors: none.
/// Source: own convention
std::string service_level(const Job& job, const std::string& component);

/// The way a component is served: the job's; else the deck's, where its operations offer that; else
/// the first that they offer.
///
/// @param job [-] the job
/// @param component [text] one of component_names
/// @return [text] a way, for example "flusher"; empty where its operations offer none
/// Range: any text.
/// Errors: none.
/// Source: own convention
std::string way_of(const Job& job, const std::string& component);

/// Whether a job's scope calls for an operation: by level and way of its component. Traffic
/// control, supply, disposal and the visit come with any scope.
///
/// @param job [-] the job
/// @param operation [-] one of its operations
/// @return [-] true where it is part of the work
/// Range: any.
/// Errors: none.
/// Source: own convention
bool in_scope(const Job& job, const Operation& operation);

/// The names of all stages and parties of a job, stages first.
///
/// @param job [-] the job
/// @return [text, n] names; empty where one party does all
/// Range: any job.
/// Errors: none.
/// Source: own convention
std::vector<std::string> crew_names(const Job& job);

/// The party that does an operation: the one that names it, else the one that names its component,
/// else the one that names its kind of crew, else the first.
///
/// @param job [-] the job
/// @param operation [-] one of its operations
/// @return [-] number of the party, counted through all stages
/// Range: any.
/// Errors: none.
/// Source: own convention
std::size_t party_of(const Job& job, const Operation& operation);

/// The haul trucks of a job: its own, or one that carries all debris.
///
/// @param job [-] the job
/// @return [-, n] at least one truck
/// Range: any job.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/job/test_hauls.cpp
std::vector<Haul> haul_trucks(const Job& job);

/// Gives every haul truck the values stated for all of them (row `truck`) where it has none of its
/// own, in the job's values and in every override.
///
/// @param job [-] the job to change
/// Range: any job; nothing changes where the job names no truck, or calls its only one "truck".
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/job/test_hauls.cpp
void spread_haul_values(Job& job);

/// The hose segments of all methods, each once, in the order in which they are named.
///
/// @param job [-] the job
/// @return [text, n] names of segments
/// Range: any job.
/// Errors: none.
/// Source: own convention
std::vector<std::string> hose_segments(const Job& job);

/// Whether somebody holds the nozzle of a method, and so feels its reaction.
///
/// @param method [-] a way to bring water to bear
/// @return [-] false for the bar of a flusher and for a nozzle without hose: a truck carries them
/// Range: any method.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/job/test_hoses.cpp
bool is_hand_held(const WashMethod& method);

/// Gives hose segments the bore and roughness of their hose in the library, where the job has no
/// value of its own.
///
/// @param job [-] the job to change; `hoses` says which hose a segment is
/// @param library [-] hoses and fittings
/// Range: any job.
/// Errors: UnknownNameError `job.word` for a segment that no method has, `hose.kind` for a hose that
/// the library does not have, each naming the nearest.
/// Source: own convention
/// Verified by: tests/cpp/job/test_hoses.cpp
void fill_hose_values(Job& job, const HoseLibrary& library);

/// Takes away what `fill_hose_values` gave, so that other hoses can be named.
///
/// @param job [-] the job to change; a value that is not the library's stays
/// @param library [-] hoses and fittings
/// Range: any job whose hoses are in the library.
/// Errors: as `fill_hose_values`.
/// Source: own convention
/// Verified by: tests/cpp/job/test_hoses.cpp
void clear_hose_values(Job& job, const HoseLibrary& library);

/// Gives a job the build-up of dirt by how long since the last cleaning, where it has no value of
/// its own.
///
/// @param job [-] the job to change; `build_up` says how long since
/// @param table [-] what is known of dirt
/// Range: any job.
/// Errors: UnknownNameError `dirt.since` naming the nearest word.
/// Source: own convention
/// Verified by: tests/cpp/job/test_build_up.cpp
void fill_build_up_values(Job& job, const DirtTable& table);

/// Takes away what `fill_build_up_values` gave, so that another word can be named.
///
/// @param job [-] the job to change; a value that is not the table's stays
/// @param table [-] what is known of dirt
/// Range: any job.
/// Errors: as `fill_build_up_values`.
/// Source: own convention
/// Verified by: tests/cpp/job/test_build_up.cpp
void clear_build_up_values(Job& job, const DirtTable& table);

/// Checks what can be checked without a structure: words, operations, and that every component in
/// the scope has an operation that serves it.
///
/// @param job [-] the job
/// Range: any job.
/// Errors: UnknownNameError `job.word` with the nearest word; InputError `job.scope` where no
/// operation serves a component, `job.empty` where nothing is in the scope.
/// Source: own convention
void check_job(const Job& job);

/// The key of `Job::site` that stands for every structure.
inline constexpr std::string_view every_site = "every";

/// A job with an alternative in place of what it has: ways, closure, equipment, operations. Values of
/// what is no longer there go with it; values of the alternative stand where the job has none.
///
/// @param job [-] the job
/// @param alternative [-] one way to do a part of the work
/// @return [-] the changed job, without alternatives of its own
/// Range: any.
/// Errors: none; what does not fit together is found where the job is made ready.
/// Source: own convention
/// Verified by: tests/cpp/job/test_alternatives.cpp
Job with_alternative(const Job& job, const Alternative& alternative);

/// A job with what its ways and its closure need besides: machines, people, charges and their prices
/// of those of its alternatives that choose nothing but ways and closure, and choose as it does.
///
/// @param job [-] the job
/// @return [-] the job with what was missing; what it has stays as it is
/// Range: any.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/job/test_alternatives.cpp
Job with_means(const Job& job);

/// Whether a job already works as an alternative does.
///
/// @param job [-] the job
/// @param alternative [-] one way to do a part of the work
/// @return [-] true where the alternative would change no way, closure, equipment or operation
/// Range: any.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/job/test_alternatives.cpp
bool works_as(const Job& job, const Alternative& alternative);

/// The layout of a job's inputs: its operations, hose, people and equipment as rows.
///
/// @param job [-] the job
/// @return [-] the layout
/// Range: a job that `check_job` accepts.
/// Errors: none.
/// Source: own convention
Layout input_layout(const Job& job);

} // namespace scupper
