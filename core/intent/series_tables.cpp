// Series that are tables: drills, bearings, keys, bar and flats, tubes and pipes, pins, tapers.
#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/bearings.hpp"
#include "core/handbook/drills.hpp"
#include "core/handbook/parallel_keys.hpp"
#include "core/handbook/pins.hpp"
#include "core/handbook/stock_sizes.hpp"
#include "core/handbook/tapers.hpp"
#include "core/intent/collecting.hpp"

namespace sparewright::intent {
namespace {

constexpr double kInch_mm = 25.4;
constexpr double kThou_mm = 0.0254;

bool may_be_hole(const MeasuredUp& m) {
  return m.role == Role::kHole || (m.role == Role::kOther && m.kind == quantity::Kind::kDiameter);
}
bool may_be_shaft(const MeasuredUp& m) {
  return m.role == Role::kShaft || (m.role == Role::kOther && m.kind == quantity::Kind::kDiameter);
}
bool may_be_flat(const MeasuredUp& m) {
  return m.kind != quantity::Kind::kDiameter;
}

// A drill cuts over its size, now and then to it.
Made made_by_drill(double n) {
  return {{0.8, 0.0, grade_mm(11, n), "as a hole is drilled"},
          {0.2, grade_mm(11, n), grade_mm(13, n), "as a drill wanders"}};
}

Table drills(handbook::DrillSeries series, const char* name) {
  std::vector<Row> rows;
  for (const handbook::Drill& drill : handbook::drills(series)) {
    const double size = drill.diameter.base();
    rows.push_back({std::string(drill.name), name, size, made_by_drill(size), handbook::cite(drill.source)});
  }
  return Table(std::move(rows));
}

void add_drills(Collector& found) {
  using handbook::DrillSeries;
  static const Table kNumbers = drills(DrillSeries::kNumber, "number drill");
  static const Table kLetters = drills(DrillSeries::kLetter, "letter drill");
  static const Table kMetric = drills(DrillSeries::kMetric, "metric drill");
  found.add_table(kNumbers, {0.08, 0.002});
  found.add_table(kLetters, {0.05, 0.001});
  found.add_table(kMetric, {0.003, 0.06});
}

// Of a bore the seat on its shaft, of an outside the seat in its housing; the ring itself is all minus.
Made made_as_bearing_seat(double n) {
  const double it6 = grade_mm(6, n);
  return {{0.55, -0.4 * it6, 1.2 * it6, "as a bearing's seat is ground"},
          {0.30, -grade_mm(7, n), 0.0, "as a seat is made to slide on"},
          {0.15, it6, 2.5 * it6, "as a seat for a heavy load is made"}};
}
Made made_as_housing(double n) {
  const double it7 = grade_mm(7, n);
  return {{0.60, 0.0, it7, "as a housing is bored"},
          {0.25, -0.5 * it7, 0.5 * it7, "as a housing is bored"},
          {0.15, -it7, 0.0, "as a tight housing is bored"}};
}

Made made_as_ring(double n) {
  return made_within(-grade_mm(6, n), 0.0, "as a bearing's ring is made");
}

bool has(const std::vector<Row>& rows, double size) {
  return std::any_of(rows.begin(), rows.end(),
                     [&](const Row& one) { return std::abs(one.size_mm - size) < kSame_mm; });
}

// Every size once, by the first bearing of it.
Table bearings(bool is_bore, Made (*made)(double)) {
  std::vector<Row> rows;
  for (const handbook::Bearing& bearing : handbook::bearings()) {
    const double size = (is_bore ? bearing.bore : bearing.outside).base();
    if (has(rows, size)) continue;
    rows.push_back({metric_name(size),
                    fmt::format("{} of bearing {}", is_bore ? "bore" : "outside", bearing.number), size,
                    made(size), handbook::cite(bearing.source)});
  }
  return Table(std::move(rows));
}

void add_bearings(Collector& found) {
  static const Table kSeats = bearings(true, made_as_bearing_seat);
  static const Table kHousings = bearings(false, made_as_housing);
  static const Table kBores = bearings(true, made_as_ring);
  static const Table kOutsides = bearings(false, made_as_ring);
  if (may_be_shaft(found.measured())) {
    found.add_table(kSeats, {0.045, 0.10});
    found.add_table(kOutsides, {0.005, 0.01});
  }
  if (may_be_hole(found.measured())) {
    found.add_table(kHousings, {0.045, 0.10});
    found.add_table(kBores, {0.005, 0.01});
  }
}

// Keys over metal, keyways between it. Inch: ASME B17.1, bar and key stock 0.002 under to 0.001 over, keyways up to 0.0025
// over; metric: key h9, keyway N9, JS9, D10 (from memory).
Made made_as_key(double n, bool is_inch, Role role) {
  const double it9 = grade_mm(9, n);
  Made made;
  if (role != Role::kHole) {
    made.push_back(is_inch ? Zone{1.0, -2 * kThou_mm, kThou_mm, "as a key is made"}
                           : Zone{1.0, -it9, 0.0, "as a key is made"});
  }
  if (role != Role::kShaft) {
    if (is_inch) made.push_back({1.0, 0.0, 2.5 * kThou_mm, "as a keyway is cut"});
    if (!is_inch) made.push_back({0.6, -it9, 0.5 * it9, "as a keyway is cut"});
    if (!is_inch) made.push_back({0.4, 0.0, 2.0 * it9, "as a loose keyway is cut"});
  }
  double sum = 0.0;
  for (const Zone& zone : made)
    sum += zone.weight;
  for (Zone& zone : made)
    zone.weight /= sum;
  return made;
}

Table keys(handbook::KeySystem system, Role role) {
  const bool is_inch = system == handbook::KeySystem::kInch;
  std::vector<Row> rows;
  for (const handbook::ParallelKey& key : handbook::parallel_keys()) {
    const double size = key.width.base();
    if (key.system != system || has(rows, size)) continue;
    rows.push_back({is_inch ? fraction_name(size) : metric_name(size),
                    is_inch ? "width of an inch key" : "width of a metric key", size,
                    made_as_key(size, is_inch, role), handbook::cite(key.source)});
  }
  return Table(std::move(rows));
}

void add_keys(Collector& found) {
  using handbook::KeySystem;
  static const std::array kInch{keys(KeySystem::kInch, Role::kHole), keys(KeySystem::kInch, Role::kShaft),
                                keys(KeySystem::kInch, Role::kOther)};
  static const std::array kMetric{keys(KeySystem::kMetric, Role::kHole),
                                  keys(KeySystem::kMetric, Role::kShaft),
                                  keys(KeySystem::kMetric, Role::kOther)};
  const auto role = static_cast<std::size_t>(found.measured().role);
  found.add_table(kInch.at(role), {0.08, 0.003});
  found.add_table(kMetric.at(role), {0.003, 0.08});
}

// Bar is all minus: inch steel to A108 at 0.28 % carbon, metric to h9 or h11. Plate and flats may lie either way.
Made made_as_stock(handbook::StockKind kind, double n) {
  using handbook::StockKind;
  switch (kind) {
    case StockKind::kInchRoundSteel:
      return {{0.7, -2 * kThou_mm, 0.0, "as bar is drawn"}, {0.3, -5 * kThou_mm, 0.0, "as bar is drawn"}};
    case StockKind::kInchFlatThickness:
      return made_within(-4 * kThou_mm, 0.0, "as flat bar is drawn");
    case StockKind::kMetricRoundSteel:
      return made_within(-grade_mm(9, n), 0.0, "as bar is drawn");
    case StockKind::kMetricFlatThickness:
      return made_within(-grade_mm(11, n), 0.0, "as flat bar is drawn");
    case StockKind::kInchTubeOutside:
      return made_within(-5 * kThou_mm, 5 * kThou_mm, "as tube is drawn");
    default:
      return made_within(-grade_mm(13, n), grade_mm(13, n), "as plate is rolled");
  }
}

Table stock(handbook::StockKind kind, const char* words) {
  std::vector<Row> rows;
  for (const handbook::StockSize& size : handbook::stock_sizes(kind)) {
    rows.push_back({size.name, words, size.size.base(), made_as_stock(kind, size.size.base()),
                    handbook::cite(size.source)});
  }
  return Table(std::move(rows));
}

void add_stock(Collector& found) {
  using handbook::StockKind;
  static const Table kInchRound = stock(StockKind::kInchRoundSteel, "round bar, inch");
  static const Table kMetricRound = stock(StockKind::kMetricRoundSteel, "round bar, metric");
  static const Table kTube = stock(StockKind::kInchTubeOutside, "outside of tube");
  static const Table kInchFlat = stock(StockKind::kInchFlatThickness, "flat bar, inch");
  static const Table kMetricFlat = stock(StockKind::kMetricFlatThickness, "flat bar, metric");
  static const Table kInchPlate = stock(StockKind::kInchPlate, "plate, inch");
  static const Table kMetricPlate = stock(StockKind::kMetricPlate, "plate, metric");
  if (found.measured().role == Role::kHole) return;
  if (may_be_shaft(found.measured())) {
    found.add_table(kInchRound, {0.07, 0.002});
    found.add_table(kMetricRound, {0.002, 0.07});
    found.add_table(kTube, {0.01, 0.005});
  }
  if (may_be_flat(found.measured())) {
    found.add_table(kInchFlat, {0.05, 0.002});
    found.add_table(kMetricFlat, {0.002, 0.05});
    found.add_table(kInchPlate, {0.02, 0.001});
    found.add_table(kMetricPlate, {0.001, 0.02});
  }
}

// Steel pipe: 1/64 in either way up to 1-1/2, one part in 100 above, ASTM A53 (from memory); mostly within a quarter of it (a
// choice made here).
Table pipes() {
  std::vector<Row> rows;
  for (const handbook::Pipe& pipe : handbook::pipes()) {
    const double size = pipe.outside.base();
    const double within = std::max(kInch_mm / 64.0, 0.01 * size);
    rows.push_back({fmt::format("{} pipe", pipe.nominal),
                    "outside of steel pipe",
                    size,
                    {{0.6, -within / 4.0, within / 4.0, "as pipe is rolled"},
                     {0.4, -within, within, "as pipe is rolled"}},
                    handbook::cite(pipe.source)});
  }
  return Table(std::move(rows));
}

void add_pipes(Collector& found) {
  static const Table kPipes = pipes();
  found.add_table(kPipes, {0.012, 0.012});
}

// The sizes there are of both are among those of reamers.
Table dowels(bool is_inch, bool is_hole) {
  std::vector<Row> rows;
  using handbook::StockKind;
  for (const handbook::StockSize& reamer :
       handbook::stock_sizes(is_inch ? StockKind::kInchReamer : StockKind::kMetricReamer)) {
    const auto pin = handbook::dowel_pin(reamer.name);
    if (!pin) continue;
    const double size = pin->nominal.base();
    const handbook::DiameterRange& range = is_hole ? pin->pressed_hole : pin->pin;
    rows.push_back({std::string(pin->name), is_hole ? "hole for a dowel pin" : "dowel pin", size,
                    made_within(range.low.base() - size, range.high.base() - size,
                                is_hole ? "as a hole for a dowel is reamed" : "as a dowel is ground"),
                    handbook::cite(pin->source)});
  }
  return Table(std::move(rows));
}

void add_pins(Collector& found) {
  static const std::array kInch{dowels(true, false), dowels(true, true)};
  static const std::array kMetric{dowels(false, false), dowels(false, true)};
  const std::size_t hole = may_be_hole(found.measured()) ? 1 : 0;
  found.add_table(kInch.at(hole), {0.03, 0.001});
  found.add_table(kMetric.at(hole), {0.001, 0.03});
}

// The ends of a taper are seldom met exactly: 0.2 mm either way on the diameter (a choice made here).
Made made_as_taper_end() {
  return made_within(-0.2, 0.2, "as far along a taper as it was read");
}

Table taper_ends() {
  std::vector<Row> rows;
  for (const handbook::Taper& taper : handbook::tapers()) {
    if (!taper.large_end) continue;
    rows.push_back({fmt::format("{} large end", to_string(taper)), "large end of a standard taper",
                    taper.large_end->base(), made_as_taper_end(), handbook::cite(taper.source)});
  }
  return Table(std::move(rows));
}

Table taper_pins() {
  std::vector<Row> rows;
  for (const handbook::TaperPin& pin : handbook::taper_pins()) {
    rows.push_back({fmt::format("taper pin {}", pin.number), "large end of a taper pin", pin.large_end.base(),
                    made_as_taper_end(), handbook::cite(pin.source)});
  }
  return Table(std::move(rows));
}

void add_tapers(Collector& found) {
  static const Table kEnds = taper_ends();
  static const Table kPins = taper_pins();
  found.add_table(kEnds, {0.01, 0.01});
  found.add_table(kPins, {0.01, 0.002});
}

}  // namespace

void collect_tables(Collector& found) {
  const MeasuredUp& measured = found.measured();
  if (may_be_hole(measured)) add_drills(found);
  if (may_be_hole(measured) || may_be_shaft(measured)) {
    add_bearings(found);
    add_pins(found);
    add_tapers(found);
  }
  if (may_be_shaft(measured)) add_pipes(found);
  add_stock(found);
  if (may_be_flat(measured)) add_keys(found);
}

}  // namespace sparewright::intent
