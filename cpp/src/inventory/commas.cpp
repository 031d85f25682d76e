#include "commas.hpp"

#include "bytes.hpp"
#include "split.hpp"

#include <algorithm>
#include <bit>

#if defined(__x86_64__) && defined(__GNUC__)
#define SCUPPER_WIDE_BLOCKS
#include <immintrin.h>
#endif

namespace scupper::inventory::detail {

namespace {

constexpr std::size_t block = 64;
static_assert(padding >= block);

/// Which of the bytes of a block are commas, and which may be quotation signs: a bit for each.
struct Marks {
    std::uint64_t commas = 0;
    std::uint64_t quotes = 0; ///< also of # and &, which differ from " and ' as these do
    std::uint64_t beyond_ascii = 0;
};

constexpr char quote_bits = '\'' & '"';
constexpr char quote_mask = static_cast<char>(~('\'' ^ '"'));

struct PlainBlock {
    static std::size_t count(std::uint64_t bits) { return count_bits(bits); }
    static Marks marks(const char* bytes) {
        // The high bits of eight bytes, gathered into eight bits by a multiplication.
        const auto bits = [](std::uint64_t high) {
            return ((high >> 7U) * 0x0102040810204080ULL) >> 56U;
        };
        Marks marks;
        for (unsigned i = 0; i < block; i += 8) {
            const std::uint64_t word = word_of(bytes + i);
            marks.commas |= bits(marks_of(word, ',')) << i;
            marks.quotes |= bits(marks_of(word & eight_of(quote_mask), quote_bits)) << i;
            marks.beyond_ascii |= word & eight_of(static_cast<char>(0x80));
        }
        return marks;
    }
};

#if defined(SCUPPER_WIDE_BLOCKS)
#define SCUPPER_WIDE __attribute__((target("avx2,bmi,popcnt")))

struct WideBlock {
    SCUPPER_WIDE static std::uint64_t equal(__m256i low, __m256i high, char c) {
        const __m256i all = _mm256_set1_epi8(c);
        const auto first =
            static_cast<std::uint32_t>(_mm256_movemask_epi8(_mm256_cmpeq_epi8(low, all)));
        const auto second =
            static_cast<std::uint32_t>(_mm256_movemask_epi8(_mm256_cmpeq_epi8(high, all)));
        return static_cast<std::uint64_t>(second) << 32U | first;
    }
    SCUPPER_WIDE static std::size_t count(std::uint64_t bits) {
        return static_cast<std::size_t>(__builtin_popcountll(bits));
    }
    SCUPPER_WIDE static Marks marks(const char* bytes) {
        const __m256i low = _mm256_loadu_si256(reinterpret_cast<const __m256i*>(bytes));
        const __m256i high = _mm256_loadu_si256(reinterpret_cast<const __m256i*>(bytes + 32));
        const __m256i mask = _mm256_set1_epi8(quote_mask);
        const int beyond = _mm256_movemask_epi8(_mm256_or_si256(low, high));
        return {equal(low, high, ','),
                equal(_mm256_and_si256(low, mask), _mm256_and_si256(high, mask), quote_bits),
                static_cast<std::uint32_t>(beyond)};
    }
};
#endif

/// Writes where the field after each comma starts, by fours: writing too much is cheaper than a
/// branch that cannot be foreseen.
[[gnu::always_inline]] inline void put_starts(std::uint64_t commas, std::size_t count,
                                              std::size_t from, std::uint32_t* out) {
    constexpr std::uint64_t never_zero = std::uint64_t{1} << 63U; // or countr_zero would ask
    for (std::size_t done = 0; done < count; done += 4) {
        for (std::size_t i = 0; i < 4; ++i) {
            const auto at = static_cast<std::size_t>(std::countr_zero(commas | never_zero));
            out[done + i] = static_cast<std::uint32_t>(from + at + 1);
            commas &= commas - 1;
        }
    }
}

template <class Block>
[[gnu::always_inline]] inline std::size_t search(std::string_view row, Starts& starts) {
    std::uint32_t* const out = starts.fields.data();
    std::size_t count = 0;
    std::size_t quotes = 0;
    std::uint64_t beyond_ascii = 0;
    std::uint64_t after_comma = 1; // the first byte of the row begins a field
    for (std::size_t at = 0; at < row.size(); at += block) {
        const std::size_t rest = row.size() - at;
        const std::uint64_t within =
            rest < block ? (std::uint64_t{1} << rest) - 1 : ~std::uint64_t{0};
        const Marks marks = Block::marks(row.data() + at);
        const std::uint64_t commas = marks.commas & within;
        for (std::uint64_t open = marks.quotes & (commas << 1U | after_comma) & within; open != 0;
             open &= open - 1) {
            const std::uint64_t before = (open & (~open + 1)) - 1;
            if (is_quote(row[at + static_cast<std::size_t>(std::countr_zero(open))])) {
                starts.texts.push_back(
                    static_cast<std::uint32_t>(count + Block::count(commas & before)));
            }
        }
        quotes += Block::count(marks.quotes & within);
        beyond_ascii |= marks.beyond_ascii; // what follows the row may be, which does no harm
        const std::size_t here = Block::count(commas);
        put_starts(commas, here, at, out + count + 1);
        after_comma = commas >> (block - 1);
        count += here;
    }
    starts.plain = beyond_ascii == 0 && quotes == 2 * starts.texts.size();
    return count;
}

std::size_t search_plain(std::string_view row, Starts& starts) {
    return search<PlainBlock>(row, starts);
}

#if defined(SCUPPER_WIDE_BLOCKS)
SCUPPER_WIDE std::size_t search_wide(std::string_view row, Starts& starts) {
    return search<WideBlock>(row, starts);
}

/// What this machine can do; asked once.
bool has_wide_blocks() {
    return __builtin_cpu_supports("avx2") && __builtin_cpu_supports("bmi") &&
           __builtin_cpu_supports("popcnt");
}
#endif

using CommaSearch = std::size_t (*)(std::string_view, Starts&);

CommaSearch fastest_search() {
#if defined(SCUPPER_WIDE_BLOCKS)
    return has_wide_blocks() ? search_wide : search_plain;
#else
    return search_plain;
#endif
}

} // namespace

std::size_t find_commas(std::string_view row, Starts& starts) {
    static const CommaSearch search = fastest_search();
    starts.fields.resize(std::max(starts.fields.size(), row.size() + 8)); // for careless writes
    starts.fields[0] = 0;
    starts.texts.clear();
    return search(row, starts);
}

} // namespace scupper::inventory::detail
