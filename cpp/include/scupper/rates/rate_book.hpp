#pragma once
// A rate book: the operations of the trade and the values they need, each with its origin.
// Plain data; reading and writing it is the business of `json`.

#include "scupper/schema.hpp"
#include "scupper/uncertain.hpp"

#include <memory>
#include <string>
#include <vector>

namespace scupper {

/// How the time of an operation follows; the words are `timing_names`, in this order.
enum class Timing { rate, clock_rate, closure, refill, dump, lost };

/// Whether the time of an operation is its quantity times a time per unit.
///
/// @param timing [-] how its time follows
/// @return [-] true for rate and clock_rate, which have a time and a water per unit as inputs
/// Range: any.
/// Errors: none.
/// Source: definition
constexpr bool is_rated(Timing timing) {
    return timing == Timing::rate || timing == Timing::clock_rate;
}

/// One operation as data.
struct Operation {
    std::string name;                ///< word of the trade, or the user's own
    std::string component;           ///< one of component_names
    std::vector<std::string> levels; ///< service levels of the component that call for it
    Slot driver = 0;                 ///< quantity slot that drives it
    double factor = 1.0;             ///< [-] how often the quantity is worked
    Timing timing = Timing::rate;    ///< how its time follows
    std::string method;              ///< how water is brought to bear; empty where none runs
    std::vector<std::string> ways;   ///< [text, n] the ways it belongs to; empty: to all
    std::vector<std::string> when;   ///< condition_names or closure_kind_names; any may hold
    std::string note;                ///< free text
    std::string crew{};              ///< one of crew_kind_names; a party may take all of its kind
    std::vector<std::string> equipment{}; ///< [text, n] what it needs; on site only where needed
};

/// Where the truck of a method stands; the words are `truck_place_names`, in this order.
enum class TruckPlace { on_deck, below };

/// A way to bring water to bear: one pump, hose segments in series, one nozzle.
struct WashMethod {
    std::string name;                       ///< one of method_names, or the user's own
    std::vector<std::string> hose;          ///< names of its segments, from pump to nozzle
    std::string note;                       ///< free text
    TruckPlace truck = TruckPlace::on_deck; ///< below: the lift follows from the structure
};

/// What a charge is counted by; the words are `charge_per_names`, in this order.
enum class ChargePer { visit, shift };

/// A kind of people or equipment that is paid by the hour, or a charge by the visit or shift.
struct Resource {
    std::string name;              ///< "wash_crew", "water_truck"
    std::vector<std::string> when; ///< condition_names or closure_kind_names; any may hold
    std::string note;              ///< free text
    std::string party{};           ///< [text] party or stage it works in; empty: in all of them
    std::string plan{}; ///< what of the closure says how many; one of closure_count_names
    ChargePer per = ChargePer::visit; ///< [-] of a charge alone
};

/// One value with its key and origin. Copies share the origin.
struct Setting {
    std::string key;                          ///< key of the input schema
    Uncertain value;                          ///< SI; its origin points into `origin`
    std::shared_ptr<const Provenance> origin; ///< [text] source, date, note; shared by copies
};

/// What a crew must mind, and when.
struct Caution {
    std::string id;                ///< [text] stable word: "wash_water"
    std::string text;              ///< [text] what to mind, in one or two sentences
    std::string source;            ///< [text] regulation or guide, or "common practice"
    std::vector<std::string> when; ///< [text] condition_names or closure_kind_names; any may hold
};

/// A dated, sourced collection of operations and values.
struct RateBook {
    std::string name;                   ///< [text] what people call the book
    std::string date;                   ///< ISO 8601
    std::string currency;               ///< [text] three-letter code of every amount
    std::vector<Operation> operations;  ///< [-, n] what can be done, whatever the scope
    std::vector<Resource> labour;       ///< [-, n] kinds of people
    std::vector<Resource> equipment;    ///< [-, n] kinds of equipment
    std::vector<Setting> settings;      ///< [SI unit of each, n] values with their origin
    std::string version{};              ///< [text] edition of the book; may be empty
    std::string source{};               ///< [text] where its values come from unless they say so
    std::string note{};                 ///< [text] free text
    std::vector<std::string> beneath{}; ///< [text, n] titles of the books it was laid over
};

/// What a rate book is cited as.
///
/// @param book [-] the book
/// @return [text] "county rates, version 3, 2027-01"
/// Range: any.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/rates/test_rate_book.cpp
std::string title_of(const RateBook& book);

/// Binds a value to its origin, so that copies stay valid.
///
/// @param key [text] key of the input schema
/// @param value [SI unit of its field] low, likely, high
/// @param origin [text] source, date and note
/// @return [-] the setting
/// Range: any key; it is checked where the job is prepared.
/// Errors: none.
/// Source: own convention
Setting make_setting(std::string key, Uncertain value, Provenance origin);

/// Puts an operation in place of one with the same name; another follows the last of its component,
/// or stands before the walk-through, since the order of the list is that of the work.
///
/// @param operations [-, n] the operations to change
/// @param operation [-] the new one
/// Range: any.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/json/test_documents.cpp
void put_operation(std::vector<Operation>& operations, Operation operation);

/// One rate book over another: what the second says stands, what it does not say is the first's.
///
/// @param base [-] the book beneath
/// @param over [-] the book on top; its name, version, date and source are those of the result
/// @return [-] the merged book; every value keeps its own origin
/// Range: books of one currency.
/// Errors: InputError `rates.currency` where they have two.
/// Source: own convention
/// Verified by: tests/cpp/rates/test_rate_book.cpp
RateBook merge(const RateBook& base, const RateBook& over);

/// Puts a setting in place of one with the same key, or at the end.
///
/// @param settings [-, n] the settings to change
/// @param setting [-] the new value
/// Range: any.
/// Errors: none.
/// Source: own convention
void put_setting(std::vector<Setting>& settings, Setting setting);

} // namespace scupper
