#include "library_values.hpp"
#include "scupper/job/job.hpp"

#include <algorithm>
#include <string_view>

namespace scupper {

namespace {

template <class Rows>
auto named_row(Rows& rows, const std::string& name) {
    return std::find_if(rows.begin(), rows.end(),
                        [&](const auto& row) { return row.name == name; });
}

/// Takes the values of a row away, which no input of the changed job has a place for.
void drop_values(Job& job, const std::string& group, const std::string& row) {
    const std::string before = group + "[" + row + "].";
    const auto of_row = [&](const Setting& s) { return s.key.starts_with(before); };
    std::erase_if(job.settings, of_row);
    for (auto& [id, settings] : job.overrides) {
        std::erase_if(settings, of_row);
    }
    for (Correlation& c : job.correlations) {
        std::erase_if(c.inputs, [&](const std::string& key) { return key.starts_with(before); });
    }
    std::erase_if(job.correlations, [](const Correlation& c) { return c.inputs.size() < 2; });
}

void add_rows(const std::vector<Resource>& own, std::vector<Resource>& rows) {
    for (const Resource& r : own) {
        if (named_row(rows, r.name) == rows.end()) {
            rows.push_back(r);
        }
    }
}

bool has_equipment(const Job& job, const std::string& name) {
    return named_row(job.equipment, name) != job.equipment.end() ||
           std::any_of(job.operations.begin(), job.operations.end(), [&](const Operation& op) {
               return std::find(op.equipment.begin(), op.equipment.end(), name) !=
                      op.equipment.end();
           });
}

/// What takes the place of a piece of equipment stands with the same party, and is needed as it was.
void swap_equipment(Job& job, const std::string& name, const std::string& other) {
    if (!has_equipment(job, name)) {
        return;
    }
    for (Operation& op : job.operations) {
        const auto found = std::find(op.equipment.begin(), op.equipment.end(), name);
        if (found != op.equipment.end() && other.empty()) {
            op.equipment.erase(found);
        } else if (found != op.equipment.end()) {
            *found = other;
        }
    }
    const auto row = named_row(job.equipment, name);
    if (row != job.equipment.end()) {
        if (other.empty() || named_row(job.equipment, other) != job.equipment.end()) {
            job.equipment.erase(row);
        } else {
            row->name = other;
        }
    } else if (!other.empty()) {
        add_rows({{other, {"underside"}, {}}}, job.equipment);
    }
    drop_values(job, "equipment", name);
}

void leave_out(Job& job, const std::string& operation) {
    std::erase_if(job.operations, [&](const Operation& op) { return op.name == operation; });
    for (Stage& stage : job.stages) {
        for (Party& party : stage.parties) {
            std::erase(party.work, operation);
        }
    }
    drop_values(job, "operation", operation);
}

void close_as(Job& job, const std::string& closure) {
    job.closure = closure;
    for (Stage& stage : job.stages) {
        stage.closure = stage.closure.empty() ? std::string{} : closure;
    }
}

} // namespace

namespace {

/// People, machines, charges, paces and prices of an alternative, where the job has none.
void bring_means(const Alternative& a, Job& job) {
    add_rows(a.labour, job.labour);
    add_rows(a.equipment, job.equipment);
    add_rows(a.charges, job.charges);
    for (const Pace& pace : a.paces) {
        if (named_row(job.paces, pace.name) == job.paces.end()) {
            job.paces.push_back(pace);
        }
    }
    for (const Setting& value : a.settings) {
        detail::fill_value(job, value);
    }
}

} // namespace

Job with_alternative(const Job& job, const Alternative& a) {
    Job changed = job;
    changed.alternatives.clear();
    for (const auto& [component, way] : a.ways) {
        changed.ways[component] = way;
    }
    if (!a.closure.empty()) {
        close_as(changed, a.closure);
    }
    for (const auto& [name, other] : a.instead) {
        swap_equipment(changed, name, other);
    }
    for (const std::string& operation : a.without) {
        leave_out(changed, operation);
    }
    bring_means(a, changed);
    return changed;
}

Job with_means(const Job& job) {
    Job changed = job;
    for (const Alternative& a : job.alternatives) {
        const bool chooses = !a.ways.empty() || !a.closure.empty();
        if (chooses && a.instead.empty() && a.without.empty() && works_as(job, a)) {
            bring_means(a, changed);
        }
    }
    return changed;
}

bool works_as(const Job& job, const Alternative& a) {
    const bool ways = std::all_of(a.ways.begin(), a.ways.end(), [&](const auto& way) {
        return way_of(job, way.first) == way.second;
    });
    const bool same_equipment =
        std::all_of(a.instead.begin(), a.instead.end(), [&](const auto& swap) {
            return !has_equipment(job, swap.first) &&
                   (swap.second.empty() || has_equipment(job, swap.second));
        });
    const bool same_operations =
        std::all_of(a.without.begin(), a.without.end(), [&](const std::string& name) {
            return named_row(job.operations, name) == job.operations.end();
        });
    return ways && same_equipment && same_operations &&
           (a.closure.empty() || a.closure == job.closure);
}

} // namespace scupper
