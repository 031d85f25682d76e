#include "structure_list.hpp"

#include "scupper/unit.hpp"
#include "structure_fields.hpp"
#include "values.hpp"

#include <utility>

namespace scupper::json::detail {

namespace {

/// Finds a field of a record by its address: what it is called and what it says; takes it out where
/// it cannot be.
struct FaultyField {
    const void* address;
    bool take_out;
    std::string key{};
    std::string found{};

    void operator()(const char* name, double& value, const Dimension&) {
        if (&value == address) {
            key = name;
            found = digits(value);
            value = take_out ? not_recorded : value;
        }
    }
    template <class Q>
    void operator()(const char* name, Q& value, const Dimension& d) {
        if (&value == address) {
            key = name;
            found = digits(value.si()) + " " + display_unit(d, UnitSystem::si).name;
            value = take_out ? Q(not_recorded) : value;
        }
    }
    void operator()(const char* name, int& value) {
        if (&value == address) {
            key = name;
            found = std::to_string(value);
            value = take_out ? no_code : value;
        }
    }
    void operator()(const char* name, char& value) {
        if (&value == address) {
            key = name;
            found = std::string(1, value);
            value = take_out ? ' ' : value;
        }
    }
    template <class Other>
    void operator()(const char* name, Other& value) {
        if (&value == address) {
            key = name;
        }
    }
};

} // namespace

StructureList::StructureList(std::string_view name) {
    inventory_.files.emplace_back(name);
}

void StructureList::take_out_faults(Structure& structure) {
    for (const inventory::Fault& fault : inventory::faults_of(structure)) {
        FaultyField field{fault.field, !fault.contradiction};
        fields::for_each_field(structure, [&](auto&&... member) { field(member...); });
        doubt(structure, field.key, field.found, fault.reason, fault.contradiction);
    }
}

void StructureList::add(Structure structure) {
    const auto [first, is_new] = first_.try_emplace(structure_key(structure), structure.line);
    if (!is_new) {
        reject(structure, "first on line " + std::to_string(first->second),
               "second record of the same structure");
        return;
    }
    ++inventory_.rows;
    take_out_faults(structure);
    inventory_.structures.push_back(std::move(structure));
}

void StructureList::reject(const Structure& structure, std::string_view found,
                           std::string_view reason) {
    ++inventory_.rows;
    inventory_.rejected.push_back({0, structure.line, structure.state, structure.id,
                                   std::string(found), std::string(reason)});
}

void StructureList::doubt(const Structure& structure, std::string_view column,
                          std::string_view found, std::string_view reason, bool kept) {
    inventory_.doubts.push_back({0, structure.line, structure.state, structure.id,
                                 std::string(column), std::string(found), std::string(reason),
                                 kept});
}

inventory::Inventory StructureList::take() {
    inventory_.reindex();
    first_.clear();
    return std::exchange(inventory_, {});
}

} // namespace scupper::json::detail
