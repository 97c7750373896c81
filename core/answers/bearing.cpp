#include <algorithm>
#include <array>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/answers/machines.hpp"
#include "core/base/nearest.hpp"
#include "core/handbook/bearing_seats.hpp"
#include "core/handbook/bearings.hpp"
#include "core/handbook/lookup.hpp"

namespace sparewright::answers {
namespace {

using handbook::BearingLoad;
using handbook::BearingSeat;
using handbook::FitSide;
using handbook::RingTurning;
using quantity::Length;
using quantity::UnitSystem;

template <class Value>
struct Word {
  std::string_view written;
  Value means;
};
constexpr std::array kTurning{Word<RingTurning>{"inner", RingTurning::kInner},
                              Word<RingTurning>{"outer", RingTurning::kOuter},
                              Word<RingTurning>{"either", RingTurning::kEither}};
constexpr std::array kLoads{Word<BearingLoad>{"light", BearingLoad::kLight},
                            Word<BearingLoad>{"normal", BearingLoad::kNormal},
                            Word<BearingLoad>{"heavy", BearingLoad::kHeavy}};

// The entry as one of the words; `otherwise` where it is not there, which `assumed` then says.
template <class Words>
auto word_entry(const Question& question, std::string_view name, const Words& words,
                const typename Words::value_type& otherwise, std::vector<std::string>& assumed)
    -> base::Result<decltype(otherwise.means)> {
  const std::string* text = find_entry(question, name);
  if (text == nullptr) {
    assumed.push_back(fmt::format("--{} was not given: {} is taken", name, otherwise.written));
    return otherwise.means;
  }
  std::vector<std::string> known;
  for (const auto& word : words) {
    if (handbook::folded(*text) == word.written) return word.means;
    known.emplace_back(word.written);
  }
  return base::fail(base::Code::kValueNotAccepted, *text, base::known_words(*text, known),
                    fmt::format("--{}", name));
}

Table size_table(const handbook::Bearing& bearing, UnitSystem system) {
  TableWriter writer("bearing", system);
  writer.length("bore", bearing.bore, bearing.source);
  writer.length("outside", bearing.outside, bearing.source);
  writer.length("width", bearing.width, bearing.source);
  if (const auto bore = handbook::bearing_ring_limits(FitSide::kHole, bearing.bore))
    writer.limits("limits of the bore", bore->limits.lower, bore->limits.upper, bore->source, "class 0");
  if (const auto outside = handbook::bearing_ring_limits(FitSide::kShaft, bearing.outside))
    writer.limits("limits of the outside", outside->limits.lower, outside->limits.upper, outside->source,
                  "class 0");
  return writer.take();
}

// "interference 0.0001 in (0.003 mm) to clearance ...".
std::string together(const BearingSeat& seat, UnitSystem system) {
  const auto one = [&](Length clearance) {
    const bool tight = clearance.base() < 0.0;
    return fmt::format("{} {}", tight ? "interference" : "clearance",
                       both_ways(tight ? -clearance : clearance, system));
  };
  return fmt::format("{} to {}", one(seat.least_clearance), one(seat.most_clearance));
}

Table seats_table(std::string heading, const std::vector<BearingSeat>& seats, UnitSystem system) {
  TableWriter writer(std::move(heading), system);
  for (const BearingSeat& seat : seats) {
    const std::string_view rank =
        seat.rank == handbook::SeatRank::kPreferred ? "printed first" : "alternative";
    writer.limits(fmt::format("{}, {}", to_string(seat.zone), rank), seat.limits.lower, seat.limits.upper,
                  seat.source,
                  fmt::format("{}{}{}", together(seat, system), seat.when.empty() ? "" : "; ", seat.when));
  }
  return writer.take();
}

// "k5 or j6": what each source prints first.
std::string first_choices(const std::vector<BearingSeat>& seats) {
  std::vector<handbook::Source> asked;
  std::vector<std::string> zones;
  for (const BearingSeat& seat : seats) {
    if (std::find(asked.begin(), asked.end(), seat.source) != asked.end()) continue;
    asked.push_back(seat.source);
    if (std::string zone = to_string(seat.zone); std::find(zones.begin(), zones.end(), zone) == zones.end())
      zones.push_back(std::move(zone));
  }
  return fmt::format("{}", fmt::join(zones, " or "));
}

}  // namespace

base::Result<Answer> bearing(const Question& question) {
  const auto found = handbook::find_bearing(question.words);
  if (!found) return tl::unexpected(found.error());
  Answer answer;
  const auto turning = word_entry(question, "turning", kTurning, kTurning[0], answer.assumed);
  if (!turning) return tl::unexpected(turning.error());
  const auto load = word_entry(question, "load", kLoads, kLoads[1], answer.assumed);
  if (!load) return tl::unexpected(load.error());
  const handbook::Bearing& bearing = found->bearing;
  const auto shaft = handbook::bearing_seats(FitSide::kShaft, bearing.bore, *turning, *load);
  if (!shaft) return tl::unexpected(shaft.error());
  const auto housing = handbook::bearing_seats(FitSide::kHole, bearing.outside, *turning, *load);
  if (!housing) return tl::unexpected(housing.error());
  const UnitSystem system = question.system;
  if (!found->assumed.empty()) answer.assumed.push_back(found->assumed);
  answer.assumed.emplace_back("steel shaft, iron or steel housing, ball bearing with rings of class 0");
  answer.asked = fmt::format("bearing {}", bearing.number);
  answer.says = fmt::format("shaft {}, housing {}", first_choices(*shaft), first_choices(*housing));
  answer.tables = {size_table(bearing, system), seats_table("seat on the shaft", *shaft, system),
                   seats_table("seat in the housing", *housing, system)};
  answer.cautions.emplace_back(
      "press on the ring that sits tight, never through the balls; a ring hit with a hammer may splinter");
  return answer;
}

}  // namespace sparewright::answers
