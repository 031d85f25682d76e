#include "scupper/work/shift_layout.hpp"

#include "shift_blocks.hpp"

#include <algorithm>

namespace scupper::work {

namespace {

using detail::Block;

/// One shift of an outing: when what begins, in seconds, the same for all parties.
struct Frame {
    double wait;    ///< for the window to open
    double arrive;  ///< first minute on site
    double on_site; ///< time on site, the meal apart
    double meal_at; ///< time on site before the meal
    double paid;
};

/// Writes the segments of one party's shift one after the other.
class Writer {
  public:
    Writer(std::span<const Site> sites, const Shift<double>& rules, std::size_t shift,
           const Frame& frame, std::string party, std::vector<Segment>& segments)
        : sites_(sites), rules_(rules), shift_(shift), frame_(frame), party_(std::move(party)),
          segments_(segments) {}

    void begin() {
        add(Spent::travel, 0.5 * rules_.travel.si());
        add(Spent::briefing, 0.5 * rules_.briefing.si());
        add(Spent::wait, frame_.wait);
    }

    void block(const Block& block) {
        const Site& site = sites_[block.site];
        on_site(Spent::travel, block.move, {}, sites_.size());
        on_site(Spent::set_up, block.set_up, {}, block.site);
        work(site, block);
        on_site(Spent::removal, block.removal, {}, block.site);
    }

    void end() {
        if (!eaten_) {
            add(Spent::meal, rules_.meal.si());
        }
        add(Spent::briefing, 0.5 * rules_.briefing.si());
        add(Spent::travel, 0.5 * rules_.travel.si());
        add(Spent::idle, frame_.paid - now_);
    }

  private:
    void work(const Site& site, const Block& block) {
        double before = 0.0;
        for (const PartyTasks& party : site.parties) {
            if (party.party != party_) {
                continue;
            }
            for (const Task& task : party.tasks) {
                const double from = std::max(before, block.from);
                const double to = std::min(before + task.time.si(), block.to);
                on_site(Spent::work, to - from, task.what, block.site);
                before += task.time.si();
            }
        }
        on_site(Spent::standby, block.to - std::max(before, block.from), {}, block.site);
    }

    /// A stretch on site, with the meal within it where its time has come.
    void on_site(Spent spent, double time, const std::string& what, std::size_t site) {
        if (!(time > 0.0)) {
            return;
        }
        const double first = eaten_ ? time : std::min(time, frame_.meal_at - done_);
        add(spent, first, what, site);
        done_ += time;
        if (!eaten_ && done_ >= frame_.meal_at) {
            eaten_ = true;
            add(Spent::meal, rules_.meal.si());
            add(spent, time - first, what, site);
        }
    }

    void add(Spent spent, double time, const std::string& what = {},
             std::size_t site = static_cast<std::size_t>(-1)) {
        if (!(time > 1e-6)) {
            return; // what is left of rounding
        }
        const std::size_t place = std::min(site, sites_.size());
        const std::string name = place < sites_.size() ? sites_[place].name : std::string();
        segments_.push_back(
            {shift_, party_, spent, what, name, Time<>(now_), Time<>(now_ + time), place});
        now_ += time;
    }

    std::span<const Site> sites_;
    const Shift<double>& rules_;
    std::size_t shift_;
    Frame frame_;
    std::string party_;
    std::vector<Segment>& segments_;
    double now_ = 0.0;
    double done_ = 0.0; ///< time on site so far
    bool eaten_ = false;
};

Frame frame_of(const std::vector<Block>& blocks, const Shift<double>& rules) {
    const double available = available_time(rules).si();
    const double lost = rules.travel.si() + rules.briefing.si() + rules.meal.si();
    Frame frame{};
    frame.wait = std::max(rules.length.si() - lost - available, 0.0);
    frame.arrive = 0.5 * (rules.travel.si() + rules.briefing.si()) + frame.wait;
    for (const Block& block : blocks) {
        frame.on_site += detail::time_of(block);
    }
    frame.meal_at = std::clamp(0.5 * rules.length.si() - frame.arrive, 0.0, frame.on_site);
    frame.paid = rules.length.si() + std::max(frame.on_site - available, 0.0);
    return frame;
}

/// The parties that have work in a shift, in the order of their sites.
std::vector<std::string> parties_of(std::span<const Site> sites, const std::vector<Block>& blocks) {
    std::vector<std::string> names;
    for (const Block& block : blocks) {
        for (const PartyTasks& party : sites[block.site].parties) {
            double sum = 0.0;
            for (const Task& task : party.tasks) {
                sum += task.time.si();
            }
            const bool works = sum > block.from;
            if (works && std::find(names.begin(), names.end(), party.party) == names.end()) {
                names.push_back(party.party);
            }
        }
    }
    return names;
}

void lay_out_shift(std::span<const Site> sites, const Shift<double>& rules, std::size_t shift,
                   const std::vector<Block>& blocks, ShiftLayout& layout) {
    const Frame frame = frame_of(blocks, rules);
    for (const std::string& party : parties_of(sites, blocks)) {
        Writer writer(sites, rules, shift, frame, party, layout.segments);
        writer.begin();
        for (const Block& block : blocks) {
            writer.block(block);
        }
        writer.end();
    }
    layout.paid.emplace_back(frame.paid);
    layout.overtime.emplace_back(frame.paid - rules.length.si());
    layout.stops.push_back(blocks.size());
}

} // namespace

ShiftLayout lay_out_shifts(std::span<const Site> sites, const Shift<double>& rules) {
    const double plain = available_time(rules).si();
    const double most = plain + rules.overtime.si();
    const std::vector<Block> all =
        detail::blocks_of(sites, std::max(detail::time_on_site_needed(sites, plain, most), plain));
    ShiftLayout layout;
    std::vector<Block> blocks;
    for (std::size_t i = 0; i < all.size(); ++i) {
        blocks.push_back(all[i]);
        if (i + 1 == all.size() || all[i + 1].shift != all[i].shift) {
            lay_out_shift(sites, rules, all[i].shift, blocks, layout);
            blocks.clear();
        }
    }
    return layout;
}

SpentTimes spent_times(const ShiftLayout& layout, std::string_view party) {
    SpentTimes times{};
    for (const Segment& segment : layout.segments) {
        if (segment.party == party) {
            times[static_cast<std::size_t>(segment.spent)] += segment.end - segment.start;
        }
    }
    return times;
}

} // namespace scupper::work
