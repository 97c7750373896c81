// A gear's pitch said every way, and the standard ones a worn gear may have had.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include <fmt/format.h>

#include "core/answers/dividing.hpp"
#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/handbook/gear_pitches.hpp"
#include "core/handbook/spur_gears.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr handbook::Source kPitches{"circular pitch = pi x module; diametral pitch = 25.4 mm / module", "",
                                    handbook::Basis::kDerived};
constexpr handbook::Source kFullDepthOutside{"outside = module x (teeth + 2), full depth teeth", "",
                                             handbook::Basis::kDerived};
// Pitches within so much of what was measured are named: wear and short teeth go no further. A choice made here, without a
// source.
constexpr double kNear = 0.10;
constexpr double kWorn = 0.08;

struct Near {
  handbook::GearPitch pitch;
  double off = 0.0;  // measured module over the standard one, less 1
};

// From `least` to `most`, the nearest first.
std::vector<Near> near_pitches(Length module, double least, double most) {
  std::vector<Near> near;
  for (const handbook::GearPitch& pitch : handbook::gear_pitches()) {
    const double off = module / pitch.module() - 1.0;
    if (off >= least && off <= most) near.push_back({pitch, off});
  }
  std::stable_sort(near.begin(), near.end(),
                   [](const Near& a, const Near& b) { return std::abs(a.off) < std::abs(b.off); });
  constexpr std::size_t kShown = 6;
  if (near.size() > kShown) near.resize(kShown);
  return near;
}

// One of the four ways a pitch may be given.
Length module_of(EntryReader& read, std::optional<int> teeth) {
  if (read.has("circular")) return read.size("circular") / std::numbers::pi;
  if (read.has("module")) return read.size("module");
  if (read.has("dp")) {
    const double dp = read.positive("dp", Kind::kNumber);
    return read.failed() ? Length() : Length::of(1.0 / dp, unit::inch);
  }
  const Length outside = read.size("outside");
  read.refuse_unless(read.failed() || teeth.has_value(), "outside", "the teeth as well, --teeth");
  return teeth ? outside / static_cast<double>(*teeth + 2) : Length();
}

}  // namespace

base::Result<Answer> gear_pitch(const Question& question) {
  EntryReader read(question);
  const auto teeth =
      read.has("teeth")
          ? std::optional(read.count("teeth", handbook::kLeastGearTeeth, handbook::kMostGearTeeth))
          : std::nullopt;
  const auto outside = read.maybe_size("outside");
  const Length module = module_of(read, teeth);
  if (read.failed()) return read.failure();
  const UnitSystem system = read.has("dp") ? UnitSystem::kInch : read.system();
  // A worn tooth is shorter, never longer: what it was had an outside no less than is left.
  const bool by_outside = outside && !read.has("circular") && !read.has("module") && !read.has("dp");
  const auto near = by_outside ? near_pitches(module, -kWorn, 0.002) : near_pitches(module, -kNear, kNear);
  const double mm = module.in(unit::millimetre);
  Answer answer;
  answer.asked = fmt::format("module {:.4g} mm", mm);
  answer.says = fmt::format("{:.4g} DP, module {:.4g}", 25.4 / mm, mm);
  TableWriter writer("the same pitch", system);
  writer.number("module, mm", mm, Kind::kNumber, 4, kPitches);
  writer.number("diametral pitch", 25.4 / mm, Kind::kNumber, 3, kPitches);
  writer.length("circular pitch", module * std::numbers::pi, kPitches,
                "tooth to tooth along the pitch circle");
  if (teeth)
    writer.length(fmt::format("outside of {} teeth", *teeth), module * (*teeth + 2), kFullDepthOutside);
  answer.tables.push_back(writer.take());
  TableWriter standard(by_outside ? "standard pitches it may have had, and what wore off"
                                  : "nearest standard pitches, off in per cent",
                       system);
  for (const Near& one : near) {
    if (by_outside) {
      const Length made = one.pitch.module() * (teeth.value_or(0) + 2);
      standard.length(to_string(one.pitch), std::max(Length(), made - *outside), kFullDepthOutside,
                      fmt::format("outside when new {}", both_ways(made, system)));
    } else {
      standard.number(to_string(one.pitch), one.off * 100.0, Kind::kNumber, 2, one.pitch.source,
                      teeth ? fmt::format("outside of {} teeth {}", *teeth,
                                          both_ways(one.pitch.module() * (*teeth + 2), system))
                            : "");
    }
  }
  if (near.empty()) standard.words("none", "within what wear explains", kFullDepthOutside);
  if (!near.empty() && !by_outside) answer.says += fmt::format("; nearest {}", to_string(near.front().pitch));
  if (!near.empty() && by_outside && near.size() == 1) answer.says = to_string(near.front().pitch);
  answer.tables.push_back(standard.take());
  answer.assumed.emplace_back("full depth teeth, not shifted");
  answer.cautions.emplace_back(
      "The distance of its axis from its mate's settles it: (teeth + mate's teeth) x module / 2. `handbook "
      "gear` "
      "compares all that was measured.");
  return answer;
}

}  // namespace sparewright::answers
