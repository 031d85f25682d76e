#include "scupper/estimate/workbook.hpp"

#include "price_steps.hpp"
#include "recorded.hpp"
#include "scupper/cost.hpp"
#include "scupper/estimate/show.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <optional>
#include <string_view>
#include <utility>

namespace scupper::estimate {

namespace {

constexpr char time_left[] = "time left for work in a shift";
constexpr double bound_slack = 1e-9; // a bound in another unit is not the same to the bit

/// What rules of inference start from: measured elsewhere, what they infer would follow.
constexpr std::array<std::string_view, 5> rule_inputs{
    "deck.length", "deck.width", "deck.roadway_width", "deck.skew", "span.longest"};

/// What decides how a bridge with a weight limit is washed; the sheet holds what was decided.
constexpr std::array<std::string_view, 3> posting_inputs{"posting.limit", "tank.volume",
                                                         "tank.empty_mass"};

template <class Keys>
bool is_any_of(const Keys& keys, const std::string& key) {
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

bool decides_posting(const std::string& key) {
    return is_any_of(posting_inputs, key) ||
           (key.starts_with("haul[") && key.ends_with("].gross_limit"));
}

/// The fewest digits of a number that keep a condition, 15 at most: those a spreadsheet keeps.
template <class Keeps>
double rounded(double number, Keeps keeps) {
    double shorter = number;
    for (int digits = 6; digits <= 15; ++digits) {
        std::array<char, 40> text{};
        std::snprintf(text.data(), text.size(), "%.*g", digits, number);
        shorter = std::strtod(text.data(), nullptr);
        if (keeps(shorter)) {
            break;
        }
    }
    return shorter;
}

bool nearly(double a, double b) {
    return std::abs(a - b) <= 1e-15 * std::abs(b);
}

std::string factor_text(double factor) {
    return formula_number(rounded(factor, [&](double f) { return nearly(f, factor); }));
}

void convert_plainly(const Unit& unit, ShownCell& shown) {
    if (unit.factor == 1.0 && unit.offset == 0.0) {
        return;
    }
    const std::string factor = factor_text(unit.factor);
    shown.to_si.after = "*" + factor;
    shown.to_shown.after = "/" + factor;
    if (unit.offset != 0.0) {
        const std::string offset = formula_number(unit.offset);
        shown.to_si = {"(", "+" + offset + ")*" + factor};
        shown.to_shown.after += "-" + offset;
    }
}

void convert_inversely(const Unit& unit, ShownCell& shown) {
    const std::string factor = factor_text(unit.factor);
    shown.to_si = {"1/(", "*" + factor + ")"};
    shown.to_shown = {"1/", "/" + factor};
}

/// A value as the trade writes it; a rate of no time at all has no number, and stays a time.
ShownCell shown_cell(const SheetCell& cell, const Show& show, const Show& show_si) {
    ShownCell shown;
    shown.si_unit = cell.kind == CellKind::part ? "" : show_si.unit(cell.dimension).name;
    const Unit unit = show.unit(cell.dimension, cell.key);
    shown.number = show.number(cell.value, cell.dimension, cell.key);
    if (!std::isfinite(shown.number)) {
        shown.number = cell.value;
        shown.unit = shown.si_unit;
        return shown;
    }
    shown.unit = unit.name;
    const bool inverse = unit.dimension != cell.dimension;
    if (inverse) {
        convert_inversely(unit, shown);
    } else {
        convert_plainly(unit, shown);
    }
    if (cell.kind == CellKind::input) {
        shown.number = rounded(shown.number, [&](double number) {
            const double in_unit = from_unit(number, unit);
            return nearly(inverse ? 1.0 / in_unit : in_unit, cell.value);
        });
    }
    return shown;
}

/// The guess of an input in words.
void show_guess(const Uncertain& value, const Show& show, const SheetCell& cell, ShownCell& shown) {
    const auto text = [&](double si) { return show.text(si, cell.dimension, cell.key); };
    shown.likely = text(value.guess.likely);
    if (!is_certain(value)) {
        shown.low = text(value.guess.low);
        shown.high = text(value.guess.high);
        if (show.number(value.guess.low, cell.dimension, cell.key) >
            show.number(value.guess.high, cell.dimension, cell.key)) {
            std::swap(shown.low, shown.high); // a rate stands for a time per unit
        }
    }
}

Formula check_bounds(std::size_t cell, double least, double greatest) {
    Formula formula{{"IFERROR(IF(AND(", no_cell}, {{}, cell}};
    formula.push_back({">=" + formula_number(least - bound_slack * std::abs(least)), no_cell});
    if (std::isfinite(greatest)) {
        formula.back().text += ",";
        formula.push_back({{}, cell});
        const double most = greatest + bound_slack * std::abs(greatest);
        formula.push_back({"<=" + formula_number(most), no_cell});
    }
    formula.push_back({"),0,1),1)", no_cell});
    return formula;
}

/// The part of a built-up rate that a cell holds: "labour[wash_crew].wage.cash".
const cost::RatePart& part_of(const SheetCell& cell) {
    const std::size_t dot = cell.key.rfind('.');
    return cost::rate_part(cost::built_up_of(cell.key.substr(0, dot)), cell.key.substr(dot + 1),
                           "workbook");
}

/// Writes a workbook from a recorded price.
class WorkbookWriter {
  public:
    explicit WorkbookWriter(const Estimate& e)
        : e_(e), show_(e.plan->job), show_si_("si", e.plan->job.currency), recorded_(e) {}

    Workbook run(std::span<const std::string> keys) {
        for (const std::string& key : keys) {
            add_figure(figure_place_of(*e_.plan, key));
        }
        for (std::size_t row = 0; row < e_.plan->lines.size(); ++row) {
            add_line(row);
        }
        roots_.push_back(time_for_work());
        sheet_ = sheet_of(recorded_.recording, roots_);
        place_cells();
        show_cells();
        add_checks();
        book_.cells = std::move(sheet_.cells);
        return std::move(book_);
    }

  private:
    void add_figure(std::size_t place) {
        const LayoutField& field = e_.plan->figures.fields()[place];
        book_.figures.push_back({field.key, field.label, 0});
        roots_.push_back(recorded_.figure(place));
    }

    /// Lines that no input can move stay out: of operations that do not run or use no water.
    void add_line(std::size_t row) {
        const CostLine& line = e_.plan->lines[row];
        const std::size_t place = e_.plan->figures.place(figure_place("line.cost"), row);
        const std::size_t water =
            e_.plan->figures.place(figure_place("operation.water"), line.operation);
        if (!moves(place) || (line.charge == Charge::water && !moves(water))) {
            return;
        }
        book_.lines.push_back({line.component, line.operation_name, line.resource_name, 0});
        roots_.push_back(recorded_.figure(place));
    }

    bool moves(std::size_t place) const {
        return recorded_.workspace.figures.at(place).recording() != nullptr;
    }

    /// Whether the shifts of every stage leave time for work; without it there is no price.
    Step time_for_work() {
        const Inputs<Traced> in(e_.plan->inputs, recorded_.inputs.data());
        const Model& model = e_.resolved.model;
        Time<Traced> least = work::work_time(detail::stage_shift(model, 0, in));
        for (std::size_t stage = 1; stage < e_.plan->stages.size(); ++stage) {
            least = min_of(least, work::work_time(detail::stage_shift(model, stage, in)));
        }
        return (least.si() > Traced(0.0)).step();
    }

    void place_cells() {
        std::size_t root = 0;
        for (WorkbookFigure& figure : book_.figures) {
            figure.cell = sheet_.roots[root++];
        }
        for (WorkbookLine& line : book_.lines) {
            line.cell = sheet_.roots[root++];
        }
    }

    void show_cells() {
        for (const SheetCell& cell : sheet_.cells) {
            ShownCell shown = shown_cell(cell, show_, show_si_);
            if (cell.kind == CellKind::input) {
                show_guess(known(cell), show_, cell, shown);
            }
            book_.shown.push_back(std::move(shown));
        }
    }

    void add_checks() {
        sheet_.cells[sheet_.roots.back()].label = time_left;
        book_.checks.push_back(
            {time_left,
             {{"IFERROR(IF(", no_cell}, {{}, sheet_.roots.back()}, {",0,1),1)", no_cell}}});
        for (std::size_t i = 0; i < sheet_.cells.size(); ++i) {
            const SheetCell& cell = sheet_.cells[i];
            if (cell.kind != CellKind::input) {
                continue;
            }
            book_.checks.push_back({cell.label + ": a number within bounds", bounds(i, cell)});
            if (is_any_of(rule_inputs, cell.key)) {
                book_.checks.push_back({cell.label + ": what is inferred from it by rule",
                                        changed(std::array{i}, sheet_)});
            }
            if (e_.resolved.model.posting != Posting::none && decides_posting(cell.key)) {
                book_.checks.push_back({cell.label + ": what the weight posting leaves to do",
                                        changed(std::array{i}, sheet_)});
            }
        }
    }

    std::optional<std::size_t> place_of(const SheetCell& cell) const {
        return e_.plan->inputs.find(cell.key);
    }

    /// What is known of an input; a part of a built-up rate is what it is.
    Uncertain known(const SheetCell& cell) const {
        const auto place = place_of(cell);
        return place ? e_.resolved.uncertain[*place] : certain(cell.value, Basis::given);
    }

    Formula bounds(std::size_t i, const SheetCell& cell) const {
        if (const auto place = place_of(cell)) {
            const LayoutField& field = e_.plan->inputs.fields()[*place];
            return check_bounds(i, field.least, field.greatest);
        }
        const cost::RatePart& part = part_of(cell);
        return check_bounds(i, part.least, part.greatest);
    }

    const Estimate& e_;
    Show show_;
    Show show_si_; // for what formulas work in
    detail::Recorded recorded_;
    std::vector<Step> roots_;
    Sheet sheet_;
    Workbook book_;
};

} // namespace

std::vector<std::string> workbook_figures(const Estimate& e) {
    std::vector<std::string> keys{
        "cost.total",       "cost.labour",  "cost.equipment", "cost.materials",
        "shift.count",      "hours.labour", "hours.paid",     "hours.on_site",
        "hours.productive", "hours.lost",   "water.volume",   "water.refills",
        "debris.volume",    "debris.mass",  "debris.loads",   "takeoff[wash_area_total].quantity"};
    for (std::size_t row = 0; row < e.plan->methods.size(); ++row) {
        if (e.resolved.model.active_methods[row]) {
            for (const char* field : {"flow", "pressure", "reaction"}) {
                keys.push_back("nozzle[" + e.plan->methods[row].name + "]." + field);
            }
        }
    }
    return keys;
}

Workbook workbook(const Estimate& e, std::span<const std::string> keys) {
    return WorkbookWriter(e).run(keys);
}

} // namespace scupper::estimate
