#include "scupper/money/currency.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace scupper {

namespace {
// By minor unit, each alphabetical.
constexpr std::string_view without_minor_unit =
    "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF ";
constexpr std::string_view with_three_digits = "BHD IQD JOD KWD LYD OMR TND ";
constexpr std::string_view with_two_digits =
    "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD "
    "CDF CHF CNY COP CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ "
    "GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL "
    "MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR "
    "PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT "
    "TOP TRY TTD TWD TZS UAH USD UYU UZS VED VES WST XCD XCG YER ZAR ZMW ZWG ";

bool holds(std::string_view list, std::string_view code) {
    for (; !list.empty(); list.remove_prefix(4)) {
        if (list.substr(0, 3) == code) {
            return true;
        }
    }
    return false;
}

std::string nearest_code(std::string_view wrong) {
    std::vector<std::string_view> codes;
    for (std::string_view list : {with_two_digits, without_minor_unit, with_three_digits}) {
        for (; !list.empty(); list.remove_prefix(4)) {
            codes.push_back(list.substr(0, 3));
        }
    }
    return nearest_name(wrong, codes);
}
} // namespace

bool is_currency_code(std::string_view text) {
    return holds(with_two_digits, text) || holds(without_minor_unit, text) ||
           holds(with_three_digits, text);
}

Currency parse_currency(std::string_view text, std::string_view path) {
    if (!is_currency_code(text)) {
        const std::string near = nearest_code(text);
        throw MoneyError(
            {"money.currency", std::string(path), "\"" + std::string(text) + "\"",
             "a currency code of ISO 4217, e.g. \"" + (near.empty() ? "USD" : near) + "\""});
    }
    return Currency({text[0], text[1], text[2]});
}

int minor_digits(const Currency& currency) {
    if (holds(without_minor_unit, currency.code())) {
        return 0;
    }
    return holds(with_three_digits, currency.code()) ? 3 : 2;
}

} // namespace scupper
