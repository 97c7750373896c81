// Published sizes of which whole parts are put together, on purpose not the tables of the product: seats, fits, keys, threads,
// drills and bar, each as printed in the source named above it.
#pragma once

#include <array>
#include <string_view>

namespace sparewright::tests {

// A fit of ANSI B4.1 over a range of inches: limits of hole and shaft in thousandths of an inch from the nominal size.
struct InchFit {
  std::string_view name;
  double over_in, to_in, hole_low, hole_high, shaft_low, shaft_high;
};
// ANSI/ASME B4.1-1967, Machinery's Handbook 31st ed., tables 8a to 8e.
inline constexpr std::array kInchFits{
    InchFit{"RC2", 0.12, 0.24, 0, 0.3, -0.35, -0.15}, InchFit{"RC2", 0.24, 0.4, 0, 0.4, -0.45, -0.2},
    InchFit{"RC2", 0.4, 0.71, 0, 0.4, -0.55, -0.25},  InchFit{"RC2", 0.71, 1.19, 0, 0.5, -0.7, -0.3},
    InchFit{"RC2", 1.19, 1.97, 0, 0.6, -0.8, -0.4},   InchFit{"RC3", 0.12, 0.24, 0, 0.5, -0.7, -0.4},
    InchFit{"RC3", 0.24, 0.4, 0, 0.6, -0.9, -0.5},    InchFit{"RC3", 0.4, 0.71, 0, 0.7, -1, -0.6},
    InchFit{"RC3", 0.71, 1.19, 0, 0.8, -1.3, -0.8},   InchFit{"RC3", 1.19, 1.97, 0, 1, -1.6, -1},
    InchFit{"RC4", 0.12, 0.24, 0, 0.7, -0.9, -0.4},   InchFit{"RC4", 0.24, 0.4, 0, 0.9, -1.1, -0.5},
    InchFit{"RC4", 0.4, 0.71, 0, 1, -1.3, -0.6},      InchFit{"RC4", 0.71, 1.19, 0, 1.2, -1.6, -0.8},
    InchFit{"RC4", 1.19, 1.97, 0, 1.6, -2, -1},       InchFit{"RC5", 0.12, 0.24, 0, 0.7, -1.3, -0.8},
    InchFit{"RC5", 0.24, 0.4, 0, 0.9, -1.6, -1},      InchFit{"RC5", 0.4, 0.71, 0, 1, -1.9, -1.2},
    InchFit{"RC5", 0.71, 1.19, 0, 1.2, -2.4, -1.6},   InchFit{"RC5", 1.19, 1.97, 0, 1.6, -3, -2},
    InchFit{"RC6", 0.12, 0.24, 0, 1.2, -1.5, -0.8},   InchFit{"RC6", 0.24, 0.4, 0, 1.4, -1.9, -1},
    InchFit{"RC6", 0.4, 0.71, 0, 1.6, -2.2, -1.2},    InchFit{"RC6", 0.71, 1.19, 0, 2, -2.8, -1.6},
    InchFit{"RC6", 1.19, 1.97, 0, 2.5, -3.6, -2},     InchFit{"LT2", 0.12, 0.24, 0, 0.7, -0.25, 0.25},
    InchFit{"LT2", 0.24, 0.4, 0, 0.9, -0.3, 0.3},     InchFit{"LT2", 0.4, 0.71, 0, 1, -0.35, 0.35},
    InchFit{"LT2", 0.71, 1.19, 0, 1.2, -0.4, 0.4},    InchFit{"LT2", 1.19, 1.97, 0, 1.6, -0.5, 0.5},
    InchFit{"LN2", 0.12, 0.24, 0, 0.5, 0.5, 0.8},     InchFit{"LN2", 0.24, 0.4, 0, 0.6, 0.6, 1},
    InchFit{"LN2", 0.4, 0.71, 0, 0.7, 0.7, 1.1},      InchFit{"LN2", 0.71, 1.19, 0, 0.8, 0.8, 1.3},
    InchFit{"LN2", 1.19, 1.97, 0, 1, 1, 1.6},         InchFit{"LC2", 0.12, 0.24, 0, 0.5, -0.3, 0},
    InchFit{"LC2", 0.24, 0.4, 0, 0.6, -0.4, 0},       InchFit{"LC2", 0.4, 0.71, 0, 0.7, -0.4, 0},
    InchFit{"LC2", 0.71, 1.19, 0, 0.8, -0.5, 0},      InchFit{"LC2", 1.19, 1.97, 0, 1, -0.6, 0},
    InchFit{"LC3", 0.12, 0.24, 0, 0.7, -0.5, 0},      InchFit{"LC3", 0.24, 0.4, 0, 0.9, -0.6, 0},
    InchFit{"LC3", 0.4, 0.71, 0, 1, -0.7, 0},         InchFit{"LC3", 0.71, 1.19, 0, 1.2, -0.8, 0},
    InchFit{"LC3", 1.19, 1.97, 0, 1.6, -1, 0},        InchFit{"LC5", 0.12, 0.24, 0, 0.5, -0.45, -0.15},
    InchFit{"LC5", 0.24, 0.4, 0, 0.6, -0.6, -0.2},    InchFit{"LC5", 0.4, 0.71, 0, 0.7, -0.65, -0.25},
    InchFit{"LC5", 0.71, 1.19, 0, 0.8, -0.8, -0.3},   InchFit{"LC5", 1.19, 1.97, 0, 1, -1, -0.4},
    InchFit{"FN2", 0.12, 0.24, 0, 0.5, 0.7, 1},       InchFit{"FN2", 0.24, 0.4, 0, 0.6, 1, 1.4},
    InchFit{"FN2", 0.4, 0.56, 0, 0.7, 1.2, 1.6},      InchFit{"FN2", 0.56, 0.71, 0, 0.7, 1.2, 1.6},
    InchFit{"FN2", 0.71, 0.95, 0, 0.8, 1.4, 1.9},     InchFit{"FN2", 0.95, 1.19, 0, 0.8, 1.4, 1.9},
    InchFit{"FN2", 1.19, 1.58, 0, 1, 1.8, 2.4},       InchFit{"FN2", 1.58, 1.97, 0, 1, 1.8, 2.4},
};

// Shafts and holes of ISO 286 over a range of millimetres: lower and upper deviations in micrometres.
struct MetricZone {
  double over_mm, to_mm;
  double h7_high, h8_high, h9_high;         // of holes H7, H8, H9; the lower is 0
  double f7_low, f7_high, g6_low, g6_high;  // of shafts
  double h6_low, h9_low, k6_low, k6_high, p6_low, p6_high, h11_low;
};
// ISO hole and shaft index page (engineersvault.blogspot.com/2007/02/index-of-iso-hole-and-shaft.html) for grades; fundamental
// deviations: cobanengineering.com/Tolerances and Machinery's Handbook 31st ed., table 6a.
inline constexpr std::array kMetricZones{
    MetricZone{3, 6, 12, 18, 30, -22, -10, -12, -4, -8, -30, 1, 9, 12, 20, -75},
    MetricZone{6, 10, 15, 22, 36, -28, -13, -14, -5, -9, -36, 1, 10, 15, 24, -90},
    MetricZone{10, 18, 18, 27, 43, -34, -16, -17, -6, -11, -43, 1, 12, 18, 29, -110},
    MetricZone{18, 30, 21, 33, 52, -41, -20, -20, -7, -13, -52, 2, 15, 22, 35, -130},
    MetricZone{30, 50, 25, 39, 62, -50, -25, -25, -9, -16, -62, 2, 18, 26, 42, -160},
    MetricZone{50, 80, 30, 46, 74, -60, -30, -29, -10, -19, -74, 2, 21, 32, 51, -190},
};

// A bearing and its usual seats: bore and outside in mm, shaft and housing in micrometres from them.
struct Seat {
  double bore_mm, outside_mm, shaft_low, shaft_high, housing_high;
};
// ISO 15 sizes; j5, k5 and H7 as in a maker's catalogue for a turning shaft under normal load.
inline constexpr std::array kSeats{
    Seat{4, 12, -2, 3, 18},  Seat{5, 14, -2, 3, 18},   Seat{6, 17, -2, 3, 18},   Seat{7, 19, -2, 4, 21},
    Seat{8, 22, -2, 4, 21},  Seat{9, 24, -2, 4, 21},   Seat{3, 10, -2, 2, 15},   Seat{4, 13, -2, 3, 18},
    Seat{5, 16, -2, 3, 18},  Seat{6, 19, -2, 3, 21},   Seat{7, 22, -2, 4, 21},   Seat{8, 24, -2, 4, 21},
    Seat{9, 26, -2, 4, 21},  Seat{5, 19, -2, 3, 21},   Seat{10, 26, -2, 4, 21},  Seat{12, 28, -3, 5, 21},
    Seat{15, 32, -3, 5, 25}, Seat{17, 35, -3, 5, 25},  Seat{20, 42, 2, 11, 25},  Seat{25, 47, 2, 11, 25},
    Seat{30, 55, 2, 11, 30}, Seat{35, 62, 2, 13, 30},  Seat{40, 68, 2, 13, 30},  Seat{45, 75, 2, 13, 30},
    Seat{50, 80, 2, 13, 30}, Seat{10, 30, -2, 4, 21},  Seat{12, 32, -3, 5, 25},  Seat{15, 35, -3, 5, 25},
    Seat{17, 40, -3, 5, 25}, Seat{20, 47, 2, 11, 25},  Seat{25, 52, 2, 11, 30},  Seat{30, 62, 2, 11, 30},
    Seat{35, 72, 2, 13, 30}, Seat{40, 80, 2, 13, 30},  Seat{45, 85, 2, 13, 35},  Seat{50, 90, 2, 13, 35},
    Seat{10, 35, -2, 4, 25}, Seat{12, 37, -3, 5, 25},  Seat{15, 42, -3, 5, 25},  Seat{17, 47, -3, 5, 25},
    Seat{20, 52, 2, 11, 30}, Seat{25, 62, 2, 11, 30},  Seat{30, 72, 2, 11, 30},  Seat{35, 80, 2, 13, 30},
    Seat{40, 90, 2, 13, 35}, Seat{45, 100, 2, 13, 35}, Seat{50, 110, 2, 13, 35},
};

// Widths of keys for shafts over and up to a diameter, in the unit of the name.
struct Key {
  double over, to, width;
};
// ANSI B17.1-1967, table 1; DIN 6885-1.
inline constexpr std::array kInchKeys{
    Key{0.3125, 0.4375, 0.09375}, Key{0.4375, 0.5625, 0.125}, Key{0.5625, 0.875, 0.1875},
    Key{0.875, 1.25, 0.25},       Key{1.25, 1.375, 0.3125},   Key{1.375, 1.75, 0.375},
    Key{1.75, 2.25, 0.5},
};
inline constexpr std::array kMetricKeys{
    Key{6, 8, 2},   Key{8, 10, 3},   Key{10, 12, 4},  Key{12, 17, 5},  Key{17, 22, 6},
    Key{22, 30, 8}, Key{30, 38, 10}, Key{38, 44, 12}, Key{44, 50, 14}, Key{50, 58, 16},
};

// Screws: nominal, least and most major diameter, pitch.
struct Screw {
  double major, least, most, pitch;
};
// ASME B1.1 class 2A limits as tabulated in lookup_data of the package pypbomb, inches and threads per inch.
inline constexpr std::array kInchScrews{
    Screw{0.1120, 0.1061, 0.1112, 1.0 / 40}, Screw{0.1120, 0.1068, 0.1113, 1.0 / 48},
    Screw{0.1250, 0.1191, 0.1242, 1.0 / 40}, Screw{0.1250, 0.1195, 0.1243, 1.0 / 44},
    Screw{0.1380, 0.1312, 0.1372, 1.0 / 32}, Screw{0.1380, 0.1321, 0.1372, 1.0 / 40},
    Screw{0.1640, 0.1571, 0.1631, 1.0 / 32}, Screw{0.1640, 0.1577, 0.1632, 1.0 / 36},
    Screw{0.1900, 0.1818, 0.1890, 1.0 / 24}, Screw{0.1900, 0.1831, 0.1891, 1.0 / 32},
    Screw{0.2500, 0.2408, 0.2489, 1.0 / 20}, Screw{0.2500, 0.2425, 0.2490, 1.0 / 28},
    Screw{0.3125, 0.3026, 0.3113, 1.0 / 18}, Screw{0.3125, 0.3042, 0.3114, 1.0 / 24},
    Screw{0.3750, 0.3643, 0.3737, 1.0 / 16}, Screw{0.3750, 0.3667, 0.3739, 1.0 / 24},
    Screw{0.4375, 0.4258, 0.4361, 1.0 / 14}, Screw{0.4375, 0.4281, 0.4362, 1.0 / 20},
    Screw{0.5000, 0.4876, 0.4985, 1.0 / 13}, Screw{0.5000, 0.4906, 0.4987, 1.0 / 20},
    Screw{0.5625, 0.5495, 0.5609, 1.0 / 12}, Screw{0.5625, 0.5524, 0.5611, 1.0 / 18},
    Screw{0.6250, 0.6113, 0.6234, 1.0 / 11}, Screw{0.6250, 0.6149, 0.6236, 1.0 / 18},
    Screw{0.7500, 0.7353, 0.7482, 1.0 / 10}, Screw{0.7500, 0.7391, 0.7485, 1.0 / 16},
    Screw{0.8750, 0.8592, 0.8731, 1.0 / 9},  Screw{0.8750, 0.8631, 0.8734, 1.0 / 14},
    Screw{1.0000, 0.9830, 0.9980, 1.0 / 8},  Screw{1.0000, 0.9868, 0.9982, 1.0 / 12},
};
// ISO 965 limits of 6g, a tool catalogue page (mastik.pt page 711), mm.
inline constexpr std::array kMetricScrews{
    Screw{3, 2.874, 2.980, 0.5},     Screw{4, 3.838, 3.978, 0.7},    Screw{5, 4.826, 4.976, 0.8},
    Screw{6, 5.794, 5.974, 1},       Screw{8, 7.760, 7.972, 1.25},   Screw{10, 9.732, 9.968, 1.5},
    Screw{6, 5.838, 5.978, 0.75},    Screw{8, 7.794, 7.974, 1},      Screw{10, 9.794, 9.974, 1},
    Screw{10, 9.760, 9.972, 1.25},   Screw{12, 11.794, 11.974, 1},   Screw{12, 11.760, 11.972, 1.25},
    Screw{12, 11.701, 11.966, 1.75}, Screw{14, 13.682, 13.962, 2},   Screw{16, 15.682, 15.962, 2},
    Screw{18, 17.623, 17.958, 2.5},  Screw{20, 19.623, 19.958, 2.5}, Screw{24, 23.577, 23.952, 3},
    Screw{12, 11.732, 11.968, 1.5},  Screw{14, 13.732, 13.968, 1.5}, Screw{16, 15.732, 15.968, 1.5},
    Screw{18, 17.732, 17.968, 1.5},  Screw{20, 19.732, 19.968, 1.5}, Screw{24, 23.682, 23.962, 2},
};

// Number and letter drills from 0.1 in: metric, inch and fractional-inch drills table (CircuitousRoot, v.2 2007).
inline constexpr std::array kNumberAndLetterDrills_in{
    0.1015, 0.1040, 0.1065, 0.1100, 0.1110, 0.1130, 0.1160, 0.1200, 0.1285, 0.1360, 0.1405, 0.1440, 0.1470,
    0.1495, 0.1520, 0.1540, 0.1570, 0.1590, 0.1610, 0.1660, 0.1695, 0.1730, 0.1770, 0.1800, 0.1820, 0.1850,
    0.1890, 0.1910, 0.1935, 0.1960, 0.1990, 0.2010, 0.2040, 0.2055, 0.2090, 0.2130, 0.2210, 0.2280, 0.2340,
    0.2380, 0.2420, 0.2460, 0.2500, 0.2570, 0.2610, 0.2660, 0.2720, 0.2770, 0.2810, 0.2900, 0.2950, 0.3020,
    0.3160, 0.3230, 0.3320, 0.3390, 0.3480, 0.3580, 0.3680, 0.3770, 0.3860, 0.3970, 0.4040, 0.4130,
};

// Metric drills of 2.5 to 16 mm: BS 328 list in the same table.
inline constexpr std::array kMetricDrills_mm{
    2.5,  2.55, 2.6,   2.65, 2.7,   2.75, 2.8,   2.85, 2.9,   2.95, 3.0,  3.1,  3.2,  3.3,  3.4,  3.5,  3.6,
    3.7,  3.8,  3.9,   4.0,  4.1,   4.2,  4.3,   4.4,  4.5,   4.6,  4.7,  4.8,  4.9,  5.0,  5.1,  5.2,  5.3,
    5.4,  5.5,  5.6,   5.7,  5.8,   5.9,  6.0,   6.1,  6.2,   6.3,  6.4,  6.5,  6.6,  6.7,  6.8,  6.9,  7.0,
    7.1,  7.2,  7.3,   7.4,  7.5,   7.6,  7.7,   7.8,  7.9,   8.0,  8.1,  8.2,  8.3,  8.4,  8.5,  8.6,  8.7,
    8.8,  8.9,  9.0,   9.1,  9.2,   9.3,  9.4,   9.5,  9.6,   9.7,  9.8,  9.9,  10.0, 10.1, 10.2, 10.3, 10.4,
    10.5, 10.6, 10.7,  10.8, 10.9,  11.0, 11.1,  11.2, 11.3,  11.4, 11.5, 11.6, 11.7, 11.8, 11.9, 12.0, 12.1,
    12.2, 12.3, 12.4,  12.5, 12.6,  12.7, 12.8,  12.9, 13.0,  13.1, 13.2, 13.3, 13.4, 13.5, 13.6, 13.7, 13.8,
    13.9, 14.0, 14.25, 14.5, 14.75, 15.0, 15.25, 15.5, 15.75, 16.0,
};

// Usual bar: inch rounds by sixteenths, 0.002 in under at the most (ASTM A108, carbon to 0.28 %); metric rounds to h9 and flats
// to h11 (EN 10278). Which sizes are usual is from memory.
// Bright round bar.
inline constexpr std::array kMetricRounds_mm{
    5.0,  6.0,  8.0,  10.0, 12.0, 14.0, 15.0, 16.0, 18.0, 20.0,
    22.0, 25.0, 28.0, 30.0, 32.0, 35.0, 40.0, 45.0, 50.0,
};

// Thickness of bright flat bar.
inline constexpr std::array kMetricFlats_mm{
    3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 16.0, 20.0, 25.0, 30.0, 40.0,
};

// Thickness of cold-drawn flat bar.
inline constexpr std::array kInchFlats_in{
    0.125, 0.1875, 0.25, 0.3125, 0.375, 0.5, 0.625, 0.75, 1.0,
};

}  // namespace sparewright::tests
