#include "scupper/rates/rate_book.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <utility>

namespace scupper {

namespace {

void put_resource(std::vector<Resource>& resources, const Resource& resource) {
    const auto same = std::find_if(resources.begin(), resources.end(),
                                   [&](const Resource& r) { return r.name == resource.name; });
    if (same == resources.end()) {
        resources.push_back(resource);
    } else {
        *same = resource;
    }
}

} // namespace

std::string title_of(const RateBook& book) {
    std::string title = book.name;
    title += book.version.empty() ? "" : ", version " + book.version;
    title += book.date.empty() ? "" : ", " + book.date;
    return title;
}

Setting make_setting(std::string key, Uncertain value, Provenance origin) {
    Setting setting{std::move(key), value, std::make_shared<const Provenance>(std::move(origin))};
    setting.value.origin = setting.origin.get();
    return setting;
}

void put_setting(std::vector<Setting>& settings, Setting setting) {
    const auto same = std::find_if(settings.begin(), settings.end(),
                                   [&](const Setting& s) { return s.key == setting.key; });
    if (same == settings.end()) {
        settings.push_back(std::move(setting));
    } else {
        *same = std::move(setting);
    }
}

void put_operation(std::vector<Operation>& operations, Operation op) {
    const auto same = std::find_if(operations.begin(), operations.end(),
                                   [&](const Operation& o) { return o.name == op.name; });
    if (same != operations.end()) {
        *same = std::move(op);
        return;
    }
    const auto last = std::find_if(operations.rbegin(), operations.rend(),
                                   [&](const Operation& o) { return o.component == op.component; });
    const auto walk = std::find_if(operations.begin(), operations.end(),
                                   [](const Operation& o) { return o.name == "walk_through"; });
    operations.insert(last == operations.rend() ? walk : last.base(), std::move(op));
}

RateBook merge(const RateBook& base, const RateBook& over) {
    if (base.currency != over.currency) {
        throw InputError({"rates.currency", over.name, "amounts in " + over.currency,
                          "amounts in " + base.currency + ", as in " + base.name});
    }
    RateBook merged = over;
    merged.operations = base.operations;
    merged.labour = base.labour;
    merged.equipment = base.equipment;
    merged.settings = base.settings;
    merged.beneath = base.beneath;
    merged.beneath.push_back(title_of(base));
    for (const Operation& op : over.operations) {
        put_operation(merged.operations, op);
    }
    for (const Resource& r : over.labour) {
        put_resource(merged.labour, r);
    }
    for (const Resource& r : over.equipment) {
        put_resource(merged.equipment, r);
    }
    for (const Setting& s : over.settings) {
        put_setting(merged.settings, s);
    }
    return merged;
}

} // namespace scupper
