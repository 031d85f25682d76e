#include "scupper/cost.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate.hpp"
#include "scupper/json/documents.hpp"
#include "scupper/json/forms.hpp"
#include "values.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>

namespace scupper::json {

namespace {

using detail::Json;
using Form = nlohmann::ordered_json;
using Texts = std::array<std::string, 3>;

/// Writes values as people write them, so that reading them gives the same values.
class FormWriter {
  public:
    explicit FormWriter(const Job& job) : FormWriter(job.units, job.currency) {}
    FormWriter(const std::string& units, const std::string& currency)
        : show_(units, currency), context_{.layout = nullptr, .currency = currency, .origin = {}} {}

    Form setting(const Setting& s, const LayoutField& field, Basis usual) const {
        Form out;
        if (s.origin && !s.origin->parts.empty()) {
            out["built_up"] = built_up(s.origin->parts, field);
        } else if (s.value.guess.listed != nullptr) {
            detail::write_listed(*s.value.guess.listed, out, [&](double si) {
                const bool plain = detail::takes_plain_number(field.dimension);
                const std::string text = plain ? std::string{} : short_text(si, field);
                return text.empty() ? bare(si, field) : Form(text);
            });
        } else {
            put_points(out, s.value.guess, field);
        }
        if (!is_certain(s.value)) {
            put_distribution(out, detail::write_setting(s, field, context_.currency), s.value,
                             field.key);
        }
        if (s.value.basis != usual) {
            out["basis"] = basis_name(s.value.basis);
        }
        out["source"] = s.origin ? s.origin->source : "";
        if (s.origin && !s.origin->date.empty()) {
            out["date"] = s.origin->date;
        }
        out["note"] = s.origin ? s.origin->note : "";
        return out;
    }

  private:
    static constexpr std::array<const char*, 3> names{"low", "likely", "high"};

    /// The parts of a rate in the trade's units; a word stays a word.
    Form built_up(const std::vector<PartValue>& parts, const LayoutField& whole) const {
        const Json words = detail::write_parts(parts, whole, context_.currency);
        Form out = Form::object();
        for (const PartValue& part : parts) {
            LayoutField field = whole;
            field.key += "." + part.name;
            field.dimension =
                cost::rate_part(cost::built_up_of(whole.key), part.name, whole.key).dimension;
            const bool is_word =
                words[part.name].is_string() && detail::takes_plain_number(field.dimension);
            const std::string text = is_word || detail::takes_plain_number(field.dimension)
                                         ? std::string{}
                                         : short_text(part.value, field);
            out[part.name] = is_word                 ? Form(words[part.name])
                             : part.low != part.high ? Form(words[part.name])
                             : text.empty()          ? bare(part.value, field)
                                                     : Form(text);
        }
        return out;
    }

    /// What is as usual is left out.
    static void put_distribution(Form& out, const Json& whole, const Uncertain& value,
                                 const std::string& key) {
        if (whole.contains("family") && value.guess.family != Family::pert) {
            out["family"] = whole["family"];
        }
        if (value.guess.meaning != Meaning::limits) {
            out["meaning"] = whole["meaning"];
        }
        if (value.shared_share != usual_shared_share(key)) {
            out["shared_share"] = value.shared_share;
        }
    }

    void put_points(Form& out, const ThreePoint& guess, const LayoutField& field) const {
        const std::array<double, 3> si{guess.low, guess.likely, guess.high};
        const std::optional<Texts> texts = trade_texts(si, field);
        for (std::size_t i = 0; i < names.size(); ++i) {
            out[names.at(i)] = texts ? Form(texts->at(i)) : bare(si.at(i), field);
        }
    }

    /// A number without unit, or a value that has no text in the trade's unit.
    Form bare(double si, const LayoutField& field) const {
        if (detail::takes_plain_number(field.dimension)) {
            return short_number(si, field);
        }
        return detail::write_number(si, field.dimension, context_.currency);
    }

    /// Low, likely and high in the trade's unit, of a rate the least first; nothing where one of
    /// them has no such text or needs no unit.
    std::optional<Texts> trade_texts(std::array<double, 3> si, const LayoutField& field) const {
        if (detail::takes_plain_number(field.dimension)) {
            return std::nullopt;
        }
        if (shown(si[0], field) > shown(si[2], field)) {
            std::swap(si[0], si[2]);
        }
        Texts texts;
        for (std::size_t i = 0; i < texts.size(); ++i) {
            texts[i] = short_text(si[i], field);
        }
        const bool all = !texts[0].empty() && !texts[1].empty() && !texts[2].empty();
        return all ? std::optional(texts) : std::nullopt;
    }

    double shown(double si, const LayoutField& field) const {
        return show_.number(si, field.dimension, field.key);
    }

    /// The shortest text in the trade's unit that reads back as the value, or none.
    std::string short_text(double si, const LayoutField& field) const {
        const double number = shown(si, field);
        if (!std::isfinite(number)) {
            return {};
        }
        const std::string unit = " " + show_.unit(field.dimension, field.key).name;
        for (int digits = 1; digits <= most_digits; ++digits) {
            std::string text = format_number(number, digits) + unit;
            if (is_read_as(text, si, field)) {
                return text;
            }
        }
        std::string text = detail::digits(number) + unit;
        return is_read_as(text, si, field) ? text : std::string{};
    }

    /// The number with the fewest digits that means the same.
    double short_number(double si, const LayoutField& field) const {
        for (int digits = 1; digits <= most_digits; ++digits) {
            const std::string text = format_number(si, digits);
            if (is_read_as(text, si, field)) {
                return parse_as(text, dim::none, field.key);
            }
        }
        return si;
    }

    /// Units that do not divide evenly leave a few units in the last place.
    bool is_read_as(const std::string& text, double si, const LayoutField& field) const {
        constexpr double last_places = 4.0 * std::numeric_limits<double>::epsilon();
        const double read = detail::read_number(text, field, context_, field.key);
        return std::abs(read - si) <= last_places * std::abs(si);
    }

    static constexpr int most_digits = 15;

    estimate::Show show_;
    detail::ValueContext context_;
};

/// The values of a job in the order of the schema.
Form settings_form(const std::vector<Setting>& settings, const Layout& layout,
                   const FormWriter& writer, Basis usual) {
    std::vector<const Setting*> by_place(layout.size(), nullptr);
    for (const Setting& s : settings) {
        by_place[layout.at(s.key, "job.inputs")] = &s;
    }
    Form object = Form::object();
    for (std::size_t i = 0; i < by_place.size(); ++i) {
        if (by_place[i] != nullptr) {
            const LayoutField& field = layout.fields()[i];
            object[field.key] = writer.setting(*by_place[i], field, usual);
        }
    }
    return object;
}

/// Every component that an operation serves, with its level.
Form service_form(const Job& job) {
    Form object = Form::object();
    for (const std::string_view component : component_names) {
        const std::string name(component);
        const bool served =
            std::any_of(job.operations.begin(), job.operations.end(), [&](const Operation& op) {
                return op.component == name && !op.levels.empty();
            });
        if (served || job.service.contains(name)) {
            object[name] = service_level(job, name);
        }
    }
    return object;
}

/// Every component that can be served in more than one way, with the way that is priced.
Form ways_form(const Job& job) {
    Form object = Form::object();
    for (const std::string_view component : component_names) {
        const std::string name(component);
        if (const std::string way = way_of(job, name); !way.empty()) {
            object[name] = way;
        }
    }
    return object;
}

} // namespace

std::string job_form(const Job& job) {
    const Layout layout = input_layout(job);
    const FormWriter writer(job);
    const Json whole = detail::job_document(job);
    Form form = Form::object();
    for (const std::string_view key : job_keys) {
        form[std::string(key)] = whole[std::string(key)];
    }
    form["service"] = service_form(job);
    form["ways"] = ways_form(job);
    form["inputs"] = settings_form(job.settings, layout, writer, Basis::given);
    form["overrides"] = Form::object();
    for (const auto& [id, settings] : job.overrides) {
        form["overrides"][id] = settings_form(settings, layout, writer, Basis::measured);
    }
    return form.dump(2);
}

std::string write_rate_book(const RateBook& book, const RateBook& beneath,
                            const std::string& units) {
    Form form = Form::object();
    form["scupper_rates"] = 1;
    form["name"] = book.name;
    form["version"] = book.version;
    form["date"] = book.date;
    form["currency"] = book.currency;
    form["source"] = book.source;
    form["note"] = book.note;
    form["operations"] = Form::array();
    for (const Operation& op : book.operations) {
        form["operations"].push_back(Form(detail::write_operation(op)));
    }
    form["labour"] = detail::write_resources(book.labour);
    form["equipment"] = detail::write_resources(book.equipment);
    form["inputs"] = settings_form(book.settings, rate_layout(book, beneath),
                                   FormWriter(units, book.currency), Basis::given);
    return form.dump(2);
}

} // namespace scupper::json
