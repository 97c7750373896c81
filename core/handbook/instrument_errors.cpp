#include "core/handbook/instrument_errors.hpp"

#include <algorithm>
#include <string>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;
using Rows = std::vector<UsualError>;

struct CaliperError {
  Length up_to;
  Length coarse;
  std::optional<Length> fine;
  Length digital;
  Source source;
};
constexpr CaliperError kCalipers[] = {
#include "generated/core/handbook/caliper_errors.inc"
};

struct MicrometerError {
  Length up_to;
  Length error;
  Source source;
};
constexpr MicrometerError kMicrometers[] = {
#include "generated/core/handbook/micrometer_errors.inc"
};

struct IndicatorError {
  IndicatorBezel bezel;
  Length graduation;
  Length range;
  Length retrace;
  Length repeatability;
  Length tenth_turn;
  Length half_turn;
  Length one_turn;
  Length whole_range;
  Source source;
};
constexpr IndicatorError kIndicators[] = {
#include "generated/core/handbook/indicator_errors.inc"
};

struct HandGaugeError {
  std::string_view gauge;
  Length practised;
  Length otherwise;
  Source source;
};
constexpr HandGaugeError kHandGauges[] = {
#include "generated/core/handbook/hand_gauge_errors.inc"
};

// DIN 862, inside and depth measurement (the same sheet as its table).
constexpr Length kInsideAndDepthMore = Length::of(20, unit::micrometre);
// Steps between those the table has columns for go to the nearer column; a choice made here, without a source.
constexpr Length kCoarseFrom = Length::of(0.03, unit::millimetre);
constexpr Length kDigitalUpTo = Length::of(0.015, unit::millimetre);
constexpr Length kUsualTravel =
    Length::of(10, unit::millimetre);  // the common plunger indicator (from memory)

bool has(std::string_view kind, std::string_view word) {
  return kind.find(word) != std::string_view::npos;
}

UsualError alike(std::optional<Length> up_to, Length error, const Source& source) {
  return {up_to, error, error, error, source};
}

// The greater figure: whose hand it is is not known.
Rows by_hand(std::string_view gauge, std::optional<Length> up_to = std::nullopt) {
  const auto* row = std::find_if(std::begin(kHandGauges), std::end(kHandGauges),
                                 [&](const HandGaugeError& each) { return each.gauge == gauge; });
  return {alike(up_to, row->otherwise, row->source)};
}

Rows with_more_inside(Rows rows) {
  for (UsualError& row : rows) {
    row.inside = row.outside + kInsideAndDepthMore;
    row.depth = row.inside;
  }
  return rows;
}

Rows calipers(const AskedInstrument& asked) {
  Rows rows;
  const Length six_inches = Length::of(6, unit::inch);
  if (asked.in_inches) rows = by_hand("inch caliper to 6 in", six_inches);
  for (const CaliperError& row : kCalipers) {
    if (asked.in_inches && row.up_to <= six_inches) continue;
    const Length error = asked.reads > kCoarseFrom     ? row.coarse
                         : asked.reads <= kDigitalUpTo ? row.digital
                                                       : row.fine.value_or(row.digital);
    rows.push_back(alike(row.up_to, error, row.source));
  }
  return with_more_inside(std::move(rows));
}

Rows micrometers(const AskedInstrument& asked) {
  Rows rows;
  if (asked.in_inches) rows = by_hand("inch micrometer to 1 in", Length::of(1, unit::inch));
  for (const MicrometerError& row : kMicrometers)
    rows.push_back(alike(row.up_to, row.error, row.source));
  return rows;
}

Rows indicators(const AskedInstrument& asked, std::string_view kind) {
  const bool is_small = has(kind, "small") || has(kind, "back");
  const Length range = asked.range.value_or(kUsualTravel);
  const Length slack = Length::of(kSizeSlackMm, unit::millimetre);
  for (const IndicatorError& row : kIndicators) {
    if ((row.bezel == IndicatorBezel::kSmall) != is_small) continue;
    if (row.graduation > asked.reads + slack || row.graduation < asked.reads - slack) continue;
    const bool last = &row + 1 == std::end(kIndicators) || (&row + 1)->graduation != row.graduation ||
                      (&row + 1)->bezel != row.bezel;
    if (row.range < range - slack && !(last && !asked.range)) continue;
    const Length turn = row.graduation * 100.0;
    const bool known_turn = row.graduation == Length::of(0.01, unit::millimetre);
    if (!known_turn) return {alike(std::nullopt, row.whole_range, row.source)};
    return {alike(turn * 0.1, row.tenth_turn, row.source), alike(turn * 0.5, row.half_turn, row.source),
            alike(turn, row.one_turn, row.source), alike(std::nullopt, row.whole_range, row.source)};
  }
  return {};
}

Rows spring_calipers(std::string_view kind) {
  return by_hand(has(kind, "micrometer") ? "calipers felt against a micrometer"
                                         : "spring calipers set to a rule");
}

Rows rows_of(const AskedInstrument& asked, std::string_view kind) {
  if (has(kind, "telescop")) return by_hand("telescoping gauge");
  if (has(kind, "small hole") || has(kind, "small-hole") || has(kind, "split ball"))
    return by_hand("small hole gauge");
  const bool is_caliper = has(kind, "caliper") || has(kind, "calliper");
  const bool is_plain = has(kind, "spring") || has(kind, "firm") || kind.starts_with("outside cal") ||
                        kind.starts_with("inside cal");
  if (is_caliper) return is_plain ? spring_calipers(kind) : calipers(asked);
  if (has(kind, "micrometer")) {
    if (has(kind, "depth") || has(kind, "bore")) return {};
    if (has(kind, "inside")) return by_hand("inside micrometer");
    return micrometers(asked);
  }
  if (has(kind, "depth gauge")) return calipers(asked);
  if (has(kind, "indicator") && !has(kind, "test") && !has(kind, "lever") && !has(kind, "bore"))
    return asked.in_inches ? Rows{} : indicators(asked, kind);
  if (has(kind, "rule")) return {alike(std::nullopt, asked.reads * 0.5, kHandGauges[0].source)};
  return {};
}

}  // namespace

base::Result<Rows> usual_errors(const AskedInstrument& asked) {
  Rows rows = rows_of(asked, folded(asked.kind));
  if (!rows.empty()) return rows;
  return not_tabled(
      "the usual error of an instrument", asked.kind,
      "calipers, outside micrometers, dial indicators in mm, telescoping and small hole gauges, "
      "inside micrometers, rules; of any other write good_to");
}

}  // namespace sparewright::handbook
