#include "calendar.hpp"

#include "embedded.hpp"
#include "scupper/json/documents.hpp"
#include "scupper/unit.hpp"
#include "scupper/work/calendar.hpp"

#include <algorithm>
#include <cstdio>

namespace scupper::json {

namespace {

using detail::Json;

[[noreturn]] void refuse_days(const Json& value, const std::string& path) {
    throw InputError({"json.days", path, value.is_null() ? "nothing" : value.dump(),
                      "whole days, as 90 or [60, 90, 120], the shortest first"});
}

int whole_days(const Json& value, const std::string& path) {
    if (!value.is_number_integer() || value.get<long long>() < 0 || value.get<long long>() > 3650) {
        refuse_days(value, path);
    }
    return value.get<int>();
}

void read_days(const Json& value, const std::string& path, Notice& notice) {
    if (!value.is_array()) {
        notice.shortest = notice.usual = notice.longest = whole_days(value, path);
        return;
    }
    if (value.size() != 3) {
        refuse_days(value, path);
    }
    notice.shortest = whole_days(value[0], path + "[0]");
    notice.usual = whole_days(value[1], path + "[1]");
    notice.longest = whole_days(value[2], path + "[2]");
    if (notice.shortest > notice.usual || notice.usual > notice.longest) {
        refuse_days(value, path);
    }
}

Notice read_notice(const Json& value, const std::string& path) {
    detail::require_known_keys(value, job_notice_keys, path);
    Notice notice;
    notice.name = detail::text_or(value, "name", {}, path);
    if (notice.name.empty()) {
        throw InputError({"json.missing", path + ".name", "nothing", "a name for the notice"});
    }
    read_days(value.contains("days") ? value["days"] : Json(), path + ".days", notice);
    notice.when = detail::words(value, "when", path);
    notice.source = detail::text_or(value, "source", "the job", path);
    notice.note = detail::text_or(value, "note", {}, path);
    return notice;
}

void put_notice(std::vector<Notice>& notices, Notice notice) {
    const auto same = std::find_if(notices.begin(), notices.end(),
                                   [&](const Notice& n) { return n.name == notice.name; });
    if (same == notices.end()) {
        notices.push_back(std::move(notice));
    } else {
        *same = std::move(notice);
    }
}

std::string required_text(const Json& value, const char* key, const std::string& path) {
    if (!value.contains(key)) {
        throw InputError({"json.missing", path + "." + key, "nothing", "a day"});
    }
    return detail::text_or(value, key, {}, path);
}

ClosedSeason read_season(const Json& value, const std::string& path) {
    detail::require_known_keys(value, job_season_keys, path);
    ClosedSeason season;
    season.name = detail::text_or(value, "name", "closed season", path);
    season.first = work::parse_month_day(required_text(value, "from", path), path + ".from");
    season.last = work::parse_month_day(required_text(value, "to", path), path + ".to");
    season.when = detail::words(value, "when", path);
    season.source = detail::text_or(value, "source", "the job", path);
    return season;
}

unsigned read_weekdays(const Json& value, const std::string& path) {
    unsigned days = 0;
    for (const std::string& word : detail::words(value, "weekdays", path)) {
        const int index = index_of(weekday_names, word);
        if (index < 0) {
            throw UnknownNameError({"json.word", path + ".weekdays", "\"" + word + "\"",
                                    "\"" + nearest_name(word, weekday_names) + "\"?"});
        }
        days |= 1U << index;
    }
    if (days == 0) {
        throw InputError({"json.missing", path + ".weekdays", "no day", "at least one day"});
    }
    return days;
}

Temperature<> temperature_or(const Json& value, const char* key, Temperature<> otherwise,
                             const std::string& path) {
    if (!value.contains(key)) {
        return otherwise;
    }
    return parse_temperature(detail::text_or(value, key, {}, path), path + "." + key);
}

void read_days_off(const Json& value, const std::string& path, Calendar& calendar) {
    if (value.contains("asked")) {
        const std::string day = detail::text_or(value, "asked", {}, path);
        calendar.asked = work::parse_date(day, path + ".asked");
    }
    if (value.contains("weekdays")) {
        calendar.weekdays = read_weekdays(value, path);
    }
    for (const std::string& day : detail::words(value, "holidays", path)) {
        calendar.holidays.push_back(work::parse_date(day, path + ".holidays"));
    }
    calendar.closed = detail::list_of(value, "closed", path, read_season);
    if (value.contains("daylight")) {
        if (!value["daylight"].is_boolean()) {
            throw InputError(
                {"json.type", path + ".daylight", value["daylight"].dump(), "true or false"});
        }
        calendar.daylight = value["daylight"].get<bool>();
    }
}

std::string month_day_text(std::chrono::month_day day) {
    return work::date_text(Date(std::chrono::year(2000) / day.month() / day.day())).substr(5);
}

Json write_season(const ClosedSeason& season) {
    return {{"name", season.name},
            {"from", month_day_text(season.first)},
            {"to", month_day_text(season.last)},
            {"when", season.when},
            {"source", season.source}};
}

} // namespace

std::vector<Notice> detail::read_notices(const Json& doc, const std::string& path) {
    std::vector<Notice> notices = shipped_notices();
    for (Notice& own : list_of(doc, "notices", path, read_notice)) {
        put_notice(notices, std::move(own));
    }
    return notices;
}

Json detail::write_notices(const std::vector<Notice>& notices) {
    Json list = Json::array();
    for (const Notice& n : notices) {
        list.push_back({{"name", n.name},
                        {"days", {n.shortest, n.usual, n.longest}},
                        {"when", n.when},
                        {"source", n.source},
                        {"note", n.note}});
    }
    return list;
}

Calendar detail::read_calendar(const Json& doc, const std::string& path) {
    Calendar calendar;
    if (!doc.contains("calendar")) {
        return calendar;
    }
    const Json& value = doc["calendar"];
    const std::string place = path + ".calendar";
    require_known_keys(value, job_calendar_keys, place);
    read_days_off(value, place, calendar);
    calendar.least_air = temperature_or(value, "least_air_temperature", calendar.least_air, place);
    calendar.least_falling_air =
        temperature_or(value, "least_falling_air_temperature", calendar.least_falling_air, place);
    return calendar;
}

Json detail::write_calendar(const Calendar& calendar) {
    Json weekdays = Json::array();
    for (std::size_t day = 0; day < weekday_names.size(); ++day) {
        if ((calendar.weekdays >> day & 1U) != 0) {
            weekdays.push_back(weekday_names.at(day));
        }
    }
    Json doc{{"weekdays", weekdays}, {"holidays", Json::array()}, {"closed", Json::array()}};
    doc["daylight"] = calendar.daylight;
    if (calendar.asked) {
        doc["asked"] = work::date_text(*calendar.asked);
    }
    for (const Date& day : calendar.holidays) {
        doc["holidays"].push_back(work::date_text(day));
    }
    for (const ClosedSeason& season : calendar.closed) {
        doc["closed"].push_back(write_season(season));
    }
    doc["least_air_temperature"] = digits(calendar.least_air.kelvin()) + " K";
    doc["least_falling_air_temperature"] = digits(calendar.least_falling_air.kelvin()) + " K";
    return doc;
}

const std::vector<Notice>& shipped_notices() {
    static const std::vector<Notice> list = [] {
        static constexpr std::array<std::string_view, 3> keys{"scupper_notices", "date", "notices"};
        const std::string name = "notices.json";
        const Json doc = detail::parse(data::notices_json, name);
        detail::require_known_keys(doc, keys, name);
        detail::require_version(doc, "scupper_notices", name);
        return detail::list_of(doc, "notices", name, read_notice);
    }();
    return list;
}

} // namespace scupper::json
