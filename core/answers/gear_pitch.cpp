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
  std::string name;
  Length module;
  handbook::Source source;
  double off = 0.0;  // measured module over this one, less 1
};

// Whole diametral pitches that no standard has, as old makers took them.
constexpr int kCoarsestWhole = 4;
constexpr int kFinestWhole = 40;
constexpr handbook::Source kWholePitch{
    "whole diametral pitches outside the standards, as old gears have them", "",
    handbook::Basis::kCommonPractice};

std::vector<Near> known_pitches() {
  std::vector<Near> known;
  for (const handbook::GearPitch& pitch : handbook::gear_pitches())
    known.push_back({to_string(pitch), pitch.module(), pitch.source, 0.0});
  for (int whole = kCoarsestWhole; whole <= kFinestWhole; ++whole) {
    const std::string name = fmt::format("{} DP", whole);
    const bool standard =
        std::any_of(known.begin(), known.end(), [&](const Near& one) { return one.name == name; });
    if (!standard)
      known.push_back({name + ", of no standard", Length::of(1.0 / whole, unit::inch), kWholePitch, 0.0});
  }
  return known;
}

// From `least` to `most`, the nearest first, but standard ones before others.
std::vector<Near> near_pitches(Length module, double least, double most) {
  std::vector<Near> near;
  for (Near& one : known_pitches()) {
    one.off = module / one.module - 1.0;
    if (one.off >= least && one.off <= most) near.push_back(std::move(one));
  }
  std::stable_sort(near.begin(), near.end(), [](const Near& a, const Near& b) {
    const bool a_standard = a.source.text != kWholePitch.text;
    const bool b_standard = b.source.text != kWholePitch.text;
    if (a_standard != b_standard) return a_standard;
    return std::abs(a.off) < std::abs(b.off);
  });
  constexpr std::size_t kShown = 8;
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
  TableWriter standard(
      by_outside ? "pitches it may have had, and what wore off" : "nearest pitches, off in per cent", system);
  for (const Near& one : near) {
    if (by_outside) {
      const Length made = one.module * (teeth.value_or(0) + 2);
      standard.length(one.name, std::max(Length(), made - *outside), kFullDepthOutside,
                      fmt::format("outside when new {}", both_ways(made, system)));
    } else {
      standard.number(
          one.name, one.off * 100.0, Kind::kNumber, 2, one.source,
          teeth ? fmt::format("outside of {} teeth {}", *teeth, both_ways(one.module * (*teeth + 2), system))
                : "");
    }
  }
  if (near.empty()) standard.words("none", "within what wear explains", kFullDepthOutside);
  if (!near.empty() && !by_outside) answer.says += fmt::format("; nearest {}", near.front().name);
  if (!near.empty() && by_outside && near.size() == 1) answer.says = near.front().name;
  answer.tables.push_back(standard.take());
  answer.assumed.emplace_back("full depth teeth, not shifted");
  answer.cautions.emplace_back(
      "The distance of its axis from its mate's settles it: (teeth + mate's teeth) x module / 2. `handbook "
      "gear` "
      "compares all that was measured.");
  return answer;
}

}  // namespace sparewright::answers
