#include "scupper/rates/rate_book.hpp"

#include <algorithm>
#include <utility>

namespace scupper {

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

} // namespace scupper
