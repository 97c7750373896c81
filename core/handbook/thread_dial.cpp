#include "core/handbook/thread_dial.hpp"

#include <cmath>
#include <numeric>

#include <fmt/format.h>

#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;

constexpr Source kKinematics{"a whole number of leads of the thread between two closings, kinematics", "",
                             Basis::kDerived};

// Leads are ratios of small numbers; what is whole is so to the last bits.
bool is_whole(double count) {
  constexpr double kLastBits = 1e-7;
  return std::abs(count - std::round(count)) < kLastBits;
}

// The fewest lines between two closings, up to 100 turns; none where there are none.
std::optional<int> fewest_lines(double leads_per_line, int lines) {
  constexpr int kMostTurns = 100;
  for (int k = 1; k <= kMostTurns * lines; ++k) {
    if (is_whole(k * leads_per_line)) return k;
  }
  return std::nullopt;
}

std::vector<std::vector<int>> groups_of(int lines, int every) {
  std::vector<std::vector<int>> out(static_cast<std::size_t>(every));
  for (int line = 0; line < lines; ++line)
    out[static_cast<std::size_t>(line % every)].push_back(line + 1);
  return out;
}

std::optional<base::Failure> wrong(Length lead_screw_lead, Length thread_lead, const ThreadDial& dial) {
  for (const auto& [what, lead] : {std::pair{"the lead of the lead screw", lead_screw_lead},
                                   std::pair{"the lead of the thread", thread_lead}}) {
    if (!(lead > Length()))
      return base::fail(base::Code::kSizeNotPositive, quantity::three_ways(lead), "a lead", what).value();
  }
  constexpr int kMostTeeth = 200;
  if (dial.wheel_teeth < 1 || dial.wheel_teeth > kMostTeeth)
    return base::fail(base::Code::kValueNotAccepted, fmt::format("{}", dial.wheel_teeth), "1 to 200 teeth",
                      "teeth of the dial's wheel")
        .value();
  if (dial.lines < 1 || dial.wheel_teeth % dial.lines != 0)
    return base::fail(base::Code::kValueNotAccepted, fmt::format("{}", dial.lines),
                      fmt::format("a number that divides its {} teeth", dial.wheel_teeth),
                      "lines of the dial")
        .value();
  return std::nullopt;
}

}  // namespace

base::Result<DialLines> dial_lines(Length lead_screw_lead, Length thread_lead, const ThreadDial& dial) {
  if (auto failure = wrong(lead_screw_lead, thread_lead, dial)) return base::fail(std::move(*failure));
  DialLines out;
  out.source = kKinematics;
  const int teeth_per_line = dial.wheel_teeth / dial.lines;
  out.travel_per_line = static_cast<double>(teeth_per_line) * lead_screw_lead;
  out.any_place = is_whole(lead_screw_lead / thread_lead);
  const auto fewest = fewest_lines(out.travel_per_line / thread_lead, dial.lines);
  if (!fewest) return out;
  if (dial.lines % *fewest == 0) {
    out.every = *fewest;
    out.groups = groups_of(dial.lines, *fewest);
  } else {
    out.turns = std::lcm(*fewest, dial.lines) / dial.lines;
  }
  return out;
}

}  // namespace sparewright::handbook
