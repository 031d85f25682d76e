#include "scupper/json/job_log.hpp"

#include "cells.hpp"
#include "csv.hpp"
#include "scupper/error.hpp"
#include "scupper/work.hpp"

#include <algorithm>
#include <limits>
#include <optional>

namespace scupper::json {

namespace {

using simulate::JobLog;
using simulate::LogRow;

/// What a column of amounts may hold.
struct Amount {
    std::string_view column;
    Dimension dimension;
    Dimension other; ///< what it may hold as well; the same where nothing else
    double LogRow::*member;
    double LogRow::*other_member;
    std::string_view bare; ///< unit of a bare number without one in the header
};

constexpr std::array<Amount, 4> amounts{{
    {"hours", dim::time, dim::time, &LogRow::hours, &LogRow::hours, "h"},
    {"water", dim::volume, dim::volume, &LogRow::water, &LogRow::water, ""},
    {"debris", dim::volume, dim::mass, &LogRow::debris_volume, &LogRow::debris_mass, ""},
    {"loads", dim::count, dim::count, &LogRow::loads, &LogRow::loads, "each"},
}};

/// A column of text.
struct Words {
    std::string_view column;
    std::string LogRow::*member;
};

constexpr std::array<Words, 4> word_columns{{
    {"structure_id", &LogRow::structure},
    {"operation", &LogRow::operation},
    {"crew", &LogRow::crew},
    {"agency", &LogRow::agency},
}};

bool is_bound(const std::string& cell) {
    return std::string_view("<>~").find(cell.front()) != std::string_view::npos ||
           cell.back() == '+';
}

/// The columns of a log, looked up.
class LogTable {
  public:
    LogTable(std::string_view name, const std::vector<std::string>& headers) {
        log_.name = name;
        for (const std::string& header : headers) {
            look_up(header);
        }
        const auto has = [&](std::string_view column) { return place_of(column).has_value(); };
        if (!has("structure_id") && !has("operation")) {
            refuse("neither structure_id nor operation", "one of them, or both");
        }
        if (!has("hours") && !has("water") && !has("debris") && !has("loads")) {
            refuse("no amounts", "one of hours, water, debris, loads");
        }
    }

    void read(const LogCells& row) {
        ++log_.lines;
        if (row.cells.size() != columns_.size()) {
            log_.faults.push_back({row.line, "", std::to_string(row.cells.size()) + " cells",
                                   std::to_string(columns_.size()) + " in the header"});
            return;
        }
        LogRow read;
        read.line = row.line;
        row_ = &row;
        read_words(read);
        read_quantity(read);
        for (const Amount& amount : amounts) {
            read_amount(amount, read);
        }
        log_.rows.push_back(std::move(read));
    }
    JobLog take() { return std::move(log_); }

  private:
    struct Column {
        std::string key, header;
        std::optional<Unit> unit;
    };

    [[noreturn]] void refuse(const std::string& found, const std::string& allowed,
                             const std::string& column = {}) const {
        throw FileError({"log.header",
                         log_.name + ":1" + (column.empty() ? "" : ": column " + column), found,
                         allowed});
    }

    void look_up(const std::string& header) {
        const detail::HeaderParts parts = detail::split_header(header);
        if (std::find(log_columns.begin(), log_columns.end(), parts.key) == log_columns.end()) {
            const std::string near = nearest_name(parts.key, log_columns);
            std::string all;
            for (const std::string_view c : log_columns) {
                all += (all.empty() ? "" : ", ") + std::string(c);
            }
            refuse("\"" + parts.key + "\"", near.empty() ? all : "\"" + near + "\"?", header);
        }
        if (place_of(parts.key)) {
            refuse("a second column of " + parts.key, "each column once", header);
        }
        std::optional<Unit> unit;
        if (!parts.unit.empty()) {
            unit = unit_for(parts, header);
        }
        columns_.push_back({parts.key, header, unit});
    }

    Unit unit_for(const detail::HeaderParts& parts, const std::string& header) const {
        const Unit unit = parse_unit(parts.unit, log_.name + ":1: column " + header);
        for (const Amount& a : amounts) {
            if (a.column == parts.key &&
                (unit.dimension == a.dimension || unit.dimension == a.other)) {
                return unit;
            }
        }
        refuse("[" + parts.unit + "]", "a unit that fits, as water [gal], debris [yd3]", header);
    }

    std::optional<std::size_t> place_of(std::string_view column) const {
        const auto at = std::find_if(columns_.begin(), columns_.end(),
                                     [&](const Column& c) { return c.key == column; });
        return at == columns_.end()
                   ? std::nullopt
                   : std::optional(static_cast<std::size_t>(at - columns_.begin()));
    }
    /// The cell of a column; empty where there is none.
    std::string cell(std::string_view column) const {
        const auto place = place_of(column);
        return place ? row_->cells[*place] : std::string{};
    }
    void fault(std::string_view column, const std::string& found, const std::string& reason) {
        log_.faults.push_back({row_->line, std::string(column), found, reason});
    }

    void read_words(LogRow& read) {
        for (const Words& w : word_columns) {
            read.*w.member = cell(w.column);
        }
        const std::string date = cell("date");
        guarded("date", date, [&] {
            work::parse_date(date, "date");
            read.date = date;
        });
    }

    /// What cannot be read is a fault; an empty cell says nothing.
    template <class Read>
    void guarded(std::string_view column, const std::string& text, Read read) {
        if (text.empty()) {
            return;
        }
        try {
            read();
        } catch (const InputError& e) {
            fault(column, text, "right would be: " + e.allowed());
        }
    }

    void read_quantity(LogRow& read) {
        const std::string text = cell("quantity"), unit = cell("unit");
        guarded("quantity", text, [&] {
            if (is_bound(text)) {
                fault("quantity", text, "a bound, not an amount");
                return;
            }
            ParsedQuantity q = parse_quantity(unit.empty() ? text : text + " " + unit, "quantity");
            const bool plain = q.dimension == dim::none;
            read.quantity = q.si;
            read.quantity_dimension = plain ? dim::count : q.dimension;
        });
    }

    void read_amount(const Amount& amount, LogRow& read) {
        const std::string text = cell(amount.column);
        guarded(amount.column, text, [&] {
            if (is_bound(text)) {
                fault(amount.column, text, "a bound, not an amount");
                return;
            }
            const Column& column = columns_[*place_of(amount.column)];
            ParsedQuantity q = parse_quantity(text, amount.column);
            if (q.dimension == dim::none && (column.unit || !amount.bare.empty())) {
                const Unit unit = column.unit ? *column.unit : parse_unit(amount.bare, "bare");
                q = {from_unit(q.si, unit), unit.dimension, {}, false};
            }
            if (q.dimension == amount.dimension) {
                read.*amount.member = q.si;
            } else if (q.dimension == amount.other) {
                read.*amount.other_member = q.si;
            } else {
                fault(amount.column, text, "right would be: " + dimension_phrase(amount.dimension));
            }
        });
    }

    JobLog log_;
    std::vector<Column> columns_;
    const LogCells* row_ = nullptr;
};

} // namespace

JobLog read_job_log(std::string_view name, const std::vector<std::string>& headers,
                    const std::vector<LogCells>& rows) {
    LogTable table(name, headers);
    for (const LogCells& row : rows) {
        table.read(row);
    }
    return table.take();
}

JobLog read_job_log_csv(std::string_view text, std::string_view name) {
    detail::CsvLines lines(text, name);
    std::vector<std::string> header;
    do {
        if (!lines.next(header)) {
            throw FileError({"log.header", std::string(name), "an empty file",
                             "a header row and finished jobs"});
        }
    } while (detail::all_empty(header));
    LogTable table(name, header);
    LogCells row;
    while (lines.next(row.cells)) {
        row.line = lines.line();
        if (!detail::all_empty(row.cells)) {
            table.read(row);
        }
    }
    return table.take();
}

} // namespace scupper::json
