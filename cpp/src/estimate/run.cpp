#include "scupper/estimate/run.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <condition_variable>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

namespace scupper::estimate {

namespace {

/// What the threads of one run share.
class Run {
  public:
    Run(std::size_t items, std::size_t block_size, const Block& block)
        : items_(items), block_size_(block_size), block_(block) {}

    void work() {
        try {
            while (!stopped_) {
                const std::size_t first = next_.fetch_add(block_size_);
                if (first >= items_) {
                    break;
                }
                const std::size_t last = std::min(first + block_size_, items_);
                block_(first, last);
                done_ += last - first;
            }
        } catch (...) {
            fail(std::current_exception());
        }
        const std::lock_guard lock(mutex_);
        ++finished_;
        changed_.notify_all();
    }

    void stop() { stopped_ = true; }
    std::size_t done() const { return done_; }

    /// Waits a little; true when all threads are through.
    bool wait(unsigned threads) {
        std::unique_lock lock(mutex_);
        return changed_.wait_for(lock, std::chrono::milliseconds(50),
                                 [&] { return finished_ == threads; });
    }

    void rethrow() const {
        if (error_) {
            std::rethrow_exception(error_);
        }
    }

  private:
    void fail(std::exception_ptr error) {
        stopped_ = true;
        const std::lock_guard lock(mutex_);
        if (!error_) {
            error_ = std::move(error);
        }
    }

    const std::size_t items_;
    const std::size_t block_size_;
    const Block& block_;
    std::atomic<std::size_t> next_{0};
    std::atomic<std::size_t> done_{0};
    std::atomic<bool> stopped_{false};
    std::mutex mutex_;
    std::condition_variable changed_;
    unsigned finished_ = 0;
    std::exception_ptr error_;
};

/// Tells how far the run is until it is through; false where the listener wants it stopped.
bool watch(Run& run, std::size_t items, unsigned threads,
           const std::function<bool(std::size_t, std::size_t)>& progress) {
    bool wanted = true;
    while (!run.wait(threads)) {
        if (wanted && progress && !progress(run.done(), items)) {
            wanted = false;
            run.stop();
        }
    }
    return wanted && (!progress || progress(run.done(), items));
}

} // namespace

void run_blocks(std::size_t items, unsigned threads, const Block& block,
                const std::function<bool(std::size_t, std::size_t)>& progress,
                std::size_t block_size) {
    const unsigned wished = threads == 0 ? std::thread::hardware_concurrency() : threads;
    const auto useful = static_cast<unsigned>(items / block_size + 1);
    const unsigned count = std::max(1u, std::min(wished, useful));
    Run run(items, block_size, block);
    std::vector<std::jthread> pool;
    for (unsigned i = 0; i < count; ++i) {
        pool.emplace_back([&run] { run.work(); });
    }
    bool wanted = true;
    try {
        wanted = watch(run, items, count, progress);
    } catch (...) {
        run.stop();
        pool.clear(); // joins before the run goes out of scope
        throw;
    }
    pool.clear();
    run.rethrow();
    if (!wanted) {
        throw Interrupted({"estimate.stopped", "", "the run was stopped", ""});
    }
}

} // namespace scupper::estimate
