#pragma once
// Everything about one structure under one job that is a category or an input, decided once.

#include "scupper/estimate/plan.hpp"
#include "scupper/structure.hpp"
#include "scupper/takeoff.hpp"

#include <array>
#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace scupper::estimate {

/// What lies below a structure.
struct Beneath {
    bool water = false;     ///< [-] a waterway, or its relief
    bool navigable = false; ///< [-] under navigation control: item 38 is 1
    bool road = false;      ///< [-] a highway
    bool rail = false;      ///< [-] a railway
};

/// What the weight limit of a bridge does to the work; decided at the values that are priced, and
/// held in every draw.
enum class Posting : std::uint8_t {
    none,      ///< no limit is known
    carried,   ///< the loaded water truck is within the limit
    approach,  ///< the truck stays on the approach, the hose is longer
    half_fill, ///< the tank is filled to what the limit leaves
    too_heavy, ///< not priced: even the least filling is too heavy
    no_hose,   ///< not priced: a method without hose cannot work from the approach
    refused,   ///< not priced: the job refuses such bridges
    closed,    ///< not priced: closed to all traffic, and no limit is given
};

/// The categories a price needs; no text, no numbers that could be drawn.
struct Model {
    const Plan* plan = nullptr;                  ///< [-] outlives the model
    takeoff::Shape shape;                        ///< [-] what the structure is
    std::array<bool, slot_table.size()> given{}; ///< quantities given outright
    closure::Kind closure = closure::Kind::none; ///< [-] of the first stage that has one
    std::vector<closure::Kind> closures;         ///< [-, n] by stage, as job or record has it
    Posting posting = Posting::none;             ///< [-] what its weight limit does to the work
    std::vector<char> haul_stays_off;            ///< by haul truck: on the approach, too heavy
    bool window_by_traffic = false;              ///< [-] queue or delay limit the closure's hours
    bool occupancy = false;                      ///< [-] the contract charges for closed lanes
    bool damages = false;                        ///< [-] it has liquidated damages
    bool show_up = false;                        ///< [-] shifts may be called off, and still pay
    bool unpaid_meal = false;                    ///< [-] a part of the meal is not paid
    bool moving = false;                         ///< [-] equipment is hauled to the work and back
    bool escalation = false;                     ///< [-] prices rise until the work
    bool steel = false;                          ///< [-] the spans are of steel, by the record
    bool underside = false;                      ///< [-] the scope reaches something from below
    Beneath beneath;                             ///< [-] what lies below
    bool ground_below = true;                    ///< [-] a truck or people can stand below
    bool old_paint = false;                      ///< [-] steel so old that its paint may hold lead
    std::uint32_t site = 0;                      ///< bit k: site_word_names[k] holds
    std::vector<char> active;                    ///< by operation
    std::vector<char> refused;                   ///< by operation: no wash water may run
    std::vector<char> active_methods;            ///< by method: an active operation needs it
    std::vector<char> active_labour;             ///< by row
    std::vector<char> active_equipment;          ///< by row
    std::vector<char> active_charges;            ///< by row
    std::vector<char> active_paces;              ///< by row
};

/// A structure made ready to price.
struct Resolved {
    Model model;                      ///< [-] all that is decided before any number is drawn
    std::vector<Uncertain> uncertain; ///< by input place
    std::vector<double> values;       ///< [SI] by input place, at the mean or likely value
    std::array<bool, slot_table.size()> untold{}; ///< quantities no record can tell
    takeoff::Verdict verdict{};                   ///< [-] why it is, or is not, washed as a bridge
    std::uint64_t stream = 0;                     ///< hash of state and structure number, for draws
};

/// What the record says lies below a structure.
///
/// @param service_under [-] code of item 42B
/// @return [-] water for codes 5 to 9, road for 1, 4, 6 and 8, railway for 2, 4, 7 and 8
/// Range: any code; one that is not recorded lies over nothing.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995), item 42B
/// Verified by: tests/cpp/estimate/test_cautions.cpp
Beneath beneath(int service_under);

/// Whether a condition holds for a structure.
///
/// @param condition [-] when something is needed
/// @param model [-] closures and what lies below
/// @param crew [-] row of the crew it is for: only the closures of its stage count
/// @return [-] whether any of its words holds
/// Range: any.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_cautions.cpp
bool holds(const Condition& condition, const Model& model, std::size_t crew = everyone);

/// Decides categories and inputs of a structure under a plan.
///
/// @param structure [-] the record
/// @param plan [-] the job made ready; must outlive the result
/// @param resolved [-] filled; its memory is used again
/// Range: any structure; one that is not washable has its verdict and zero quantities.
/// Errors: InputError `job.bounds` where a measured value is out of bounds; UnknownNameError
/// `schema.key` where a measured value has an unknown key.
/// Source: own convention
void resolve(const Structure& structure, const Plan& plan, Resolved& resolved);

} // namespace scupper::estimate
