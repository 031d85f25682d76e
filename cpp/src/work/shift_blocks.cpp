#include "shift_blocks.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <limits>

namespace scupper::work::detail {

namespace {

constexpr double instant = 1e-6; // [s] shorter stretches come from rounding

/// Fills shift after shift.
class Filling {
  public:
    Filling(std::span<const Site> sites, double time_on_site)
        : sites_(sites), time_on_site_(time_on_site) {}

    std::vector<Block> fill() {
        for (std::size_t i = 0; i < sites_.size(); ++i) {
            put(i);
        }
        return std::move(blocks_);
    }

  private:
    bool begun() const { return !blocks_.empty() && blocks_.back().shift == shift_; }

    void put(std::size_t i) {
        const double work = elapsed(sites_[i]);
        double done = 0.0;
        while (done < work - instant) {
            Block block = opened(i, done);
            const double room = time_on_site_ - used_ - time_of(block);
            const double left = work - done;
            if (room < left - instant && begun() && (room <= instant || fits_alone(i, left))) {
                next_shift();
                continue;
            }
            require_room(i, room);
            block.to = std::min(done + room, work);
            if (work - block.to < instant) {
                block.to = work;
            }
            done = block.to;
            add(block);
        }
    }

    /// The site's block without work yet; under a closure that stands it takes the removal over.
    Block opened(std::size_t i, double done) const {
        const Site& site = sites_[i];
        Block block{shift_,           i,    begun() ? site.move.si() : 0.0,
                    site.set_up.si(), done, done,
                    site.removal.si()};
        if (takes_over(i)) {
            block.set_up = 0.0;
            block.removal = 0.0; // counted with the site before, until it is moved here
        }
        return block;
    }

    bool takes_over(std::size_t i) const {
        return sites_[i].closure_stands && begun() && blocks_.back().site + 1 == i;
    }

    bool fits_alone(std::size_t i, double work) const {
        return sites_[i].set_up.si() + work + sites_[i].removal.si() <= time_on_site_ + instant;
    }

    void require_room(std::size_t i, double room) const {
        if (!(room > instant)) {
            throw InputError({"work.no_time", sites_[i].name,
                              "travel, briefing, meal and closure take the whole shift",
                              "a longer shift or window"});
        }
    }

    void add(Block block) {
        used_ += time_of(block);
        if (takes_over(block.site)) {
            std::swap(block.removal, blocks_.back().removal);
        }
        blocks_.push_back(block);
    }

    void next_shift() {
        ++shift_;
        used_ = 0.0;
    }

    std::span<const Site> sites_;
    double time_on_site_;
    std::vector<Block> blocks_;
    std::size_t shift_ = 0;
    double used_ = 0.0;
};

bool has_room(std::span<const Site> sites, double time_on_site) {
    return std::all_of(sites.begin(), sites.end(), [&](const Site& site) {
        return site.set_up.si() + site.removal.si() + instant < time_on_site;
    });
}

std::size_t shifts_of(std::span<const Site> sites, double time_on_site) {
    if (!has_room(sites, time_on_site)) {
        return std::numeric_limits<std::size_t>::max();
    }
    const std::vector<Block> blocks = blocks_of(sites, time_on_site);
    return blocks.empty() ? 0 : blocks.back().shift + 1;
}

} // namespace

double elapsed(const Site& site) {
    double longest = 0.0;
    for (const PartyTasks& party : site.parties) {
        double sum = 0.0;
        for (const Task& task : party.tasks) {
            sum += task.time.si();
        }
        longest = std::max(longest, sum);
    }
    return longest;
}

double time_of(const Block& block) {
    return block.move + block.set_up + (block.to - block.from) + block.removal;
}

std::vector<Block> blocks_of(std::span<const Site> sites, double time_on_site) {
    return Filling(sites, time_on_site).fill();
}

double time_on_site_needed(std::span<const Site> sites, double plain, double most) {
    const std::size_t fewest = shifts_of(sites, most);
    if (shifts_of(sites, plain) == fewest) {
        return plain;
    }
    double too_short = plain;
    double enough = most;
    while (enough - too_short > 1e-3) { // a millisecond of overtime
        const double middle = 0.5 * (too_short + enough);
        (shifts_of(sites, middle) == fewest ? enough : too_short) = middle;
    }
    return enough;
}

} // namespace scupper::work::detail
