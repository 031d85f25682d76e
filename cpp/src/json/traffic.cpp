#include "traffic.hpp"

namespace scupper::json::detail {

namespace {

constexpr double percent = 100.0;

std::vector<double> read_shares(const Json& value, const std::string& path) {
    std::vector<double> shares;
    for (const Json& share : value) {
        if (!share.is_number()) {
            throw InputError({"json.type", path, share.dump(), "24 numbers in percent"});
        }
        shares.push_back(share.get<double>() / percent);
    }
    return shares;
}

} // namespace

Traffic read_traffic(const Json& doc, const std::string& name) {
    Traffic traffic;
    if (!doc.contains("traffic")) {
        return traffic;
    }
    const Json& value = doc["traffic"];
    const std::string path = name + ".traffic";
    require_known_keys(value, job_traffic_keys, path);
    if (value.contains("hours") && value["hours"].is_array()) {
        traffic.shares = read_shares(value["hours"], path + ".hours");
    } else {
        traffic.hours = text_or(value, "hours", traffic.hours, path);
    }
    traffic.capacity = text_or(value, "capacity", traffic.capacity, path);
    return traffic;
}

Json write_traffic(const Traffic& traffic) {
    Json hours = traffic.hours;
    if (!traffic.shares.empty()) {
        hours = Json::array();
        for (const double share : traffic.shares) {
            hours.push_back(share * percent);
        }
    }
    return {{"hours", hours}, {"capacity", traffic.capacity}};
}

} // namespace scupper::json::detail
