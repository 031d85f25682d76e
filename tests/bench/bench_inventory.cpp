// How fast a delimited inventory is read. Give a real file as the argument; without one the rows
// are made up: 123 columns, about 410 bytes each, as in the national file.
#include "bench.hpp"
#include "scupper/inventory.hpp"

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <cstdio>
#include <ctime>
#include <fstream>
#include <iterator>
#include <string>

#if defined(__GLIBC__)
#include <malloc.h>
#endif

namespace {

constexpr const char* names =
    "STATE_CODE_001,STRUCTURE_NUMBER_008,RECORD_TYPE_005A,HIGHWAY_DISTRICT_002,COUNTY_CODE_003,"
    "FEATURES_DESC_006A,FACILITY_CARRIED_007,LOCATION_009,LAT_016,LONG_017,DETOUR_KILOS_019,"
    "MAINTENANCE_021,OWNER_022,FUNCTIONAL_CLASS_026,YEAR_BUILT_027,TRAFFIC_LANES_ON_028A,"
    "TRAFFIC_LANES_UND_028B,ADT_029,YEAR_ADT_030,APPR_WIDTH_MT_032,MEDIAN_CODE_033,"
    "DEGREES_SKEW_034,STRUCTURE_FLARED_035,NAVIGATION_038,NAV_VERT_CLR_MT_039,"
    "OPEN_CLOSED_POSTED_041,SERVICE_ON_042A,SERVICE_UND_042B,STRUCTURE_KIND_043A,"
    "STRUCTURE_TYPE_043B,APPR_KIND_044A,APPR_TYPE_044B,MAIN_UNIT_SPANS_045,APPR_SPANS_046,"
    "MAX_SPAN_LEN_MT_048,STRUCTURE_LEN_MT_049,LEFT_CURB_MT_050A,RIGHT_CURB_MT_050B,"
    "ROADWAY_WIDTH_MT_051,DECK_WIDTH_MT_052,VERT_CLR_OVER_MT_053,VERT_CLR_UND_REF_054A,"
    "VERT_CLR_UND_054B,DECK_COND_058,SUPERSTRUCTURE_COND_059,SUBSTRUCTURE_COND_060,"
    "CULVERT_COND_062,STRUCTURAL_EVAL_067,POSTING_EVAL_070,DATE_OF_INSPECT_090,"
    "PARALLEL_STRUCTURE_101,TRAFFIC_DIRECTION_102,HIGHWAY_SYSTEM_104,YEAR_RECONSTRUCTED_106,"
    "DECK_STRUCTURE_TYPE_107,SURFACE_TYPE_108A,PERCENT_ADT_TRUCK_109";
constexpr const char* rest =
    ",1,03,130,'MILL RIVER','FERRY ROAD','NORTH OF THE TOWN',55212367,131422649,19,02,01,17,1998,"
    "2,0,1313,2017,9.8,0,15,0,0,0,A,5,5,3,02,0,00,3,0,20,58.5,0.3,1.8,8.5,10.9,99.99,H,5.21,6,5,6,"
    "N,5,5,717,N,2,0,0,1,6,5";
constexpr int other_columns = 66; // to make up 123

std::string made_up(int rows) {
    std::string text = names;
    for (int i = 0; i < other_columns; ++i) {
        text += ",OTHER_" + std::to_string(i);
    }
    for (int i = 0; i < rows; ++i) {
        char number[24];
        std::snprintf(number, sizeof number, "\n02,%015d", i);
        text.append(number).append(rest);
        for (int k = 0; k < other_columns; ++k) {
            text += k % 3 == 0 ? ",12" : ",0";
        }
    }
    return text + "\n";
}

std::string text_of(const char* path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// Seconds on the clock, and of the processor: other programs leave the second alone.
struct Spent {
    double clock, processor;
};

double processor_seconds() {
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

Spent time_to_read(const std::string& text) {
    const auto start = std::chrono::steady_clock::now();
    const double before = processor_seconds();
    const auto inventory = scupper::inventory::read_inventory_text(text, "bench");
    bench::keep(inventory.structures.size());
    const double processor = processor_seconds() - before;
    const std::chrono::duration<double> clock = std::chrono::steady_clock::now() - start;
    return {clock.count(), processor};
}

/// Lets the memory of one round serve the next: what is timed warm is the reading, not the system
/// as it hands out zeroed pages.
void keep_memory() {
#if defined(__GLIBC__)
    mallopt(M_MMAP_MAX, 0);
    mallopt(M_TRIM_THRESHOLD, -1);
#endif
}

void report(const char* name, double megabytes, const Spent& spent) {
    std::printf("%-30s %6.1f MB in %.3f s, %4.0f MB/s; %4.0f MB/s of processor time\n", name,
                megabytes, spent.clock, megabytes / spent.clock, megabytes / spent.processor);
}

} // namespace

int main(int argc, char** argv) {
    constexpr int rounds = 15;
    const std::string text = argc > 1 ? text_of(argv[1]) : made_up(100'000);
    const double megabytes = static_cast<double>(text.size()) / 1e6;
    report("read_inventory_text, first", megabytes, time_to_read(text));
    keep_memory();
    Spent best = time_to_read(text);
    for (int i = 1; i < rounds; ++i) {
        const Spent spent = time_to_read(text);
        best = {std::min(best.clock, spent.clock), std::min(best.processor, spent.processor)};
    }
    report("the same warm, best of 15", megabytes, best);
}
