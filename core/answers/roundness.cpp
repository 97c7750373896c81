// Is it round: diameters across several ways at several heights, and the swing of an indicator over work in a vee.
#include <algorithm>
#include <array>
#include <numeric>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/handbook/vee_block.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr handbook::Source kReadings{"largest less smallest of the diameters read", "",
                                     handbook::Basis::kDerived};
constexpr handbook::Source kMeans{"the means of the diameters at the two ends", "",
                                  handbook::Basis::kDerived};
// A vee that shows less than this part of the out of round shows nothing one may divide by.
constexpr double kLeastShown = 0.2;

struct Height {
  std::string_view name;
  std::vector<Length> diameters;

  [[nodiscard]] auto ends() const { return std::minmax_element(diameters.begin(), diameters.end()); }
  [[nodiscard]] Length out_of_round() const { return *ends().second - *ends().first; }
  [[nodiscard]] Length mean() const {
    return std::accumulate(diameters.begin(), diameters.end(), Length()) /
           static_cast<double>(diameters.size());
  }
  [[nodiscard]] std::size_t largest() const {
    return static_cast<std::size_t>(ends().second - diameters.begin()) + 1;
  }
};

// Out of round against a limit, both diameters of the difference as bad as they may be.
std::string verdict(Length out, Length limit, Length good_to, UnitSystem system) {
  const Length doubt = good_to * 2.0;
  const std::string numbers =
      fmt::format("out of round {}, limit {}", both_ways(out, system), both_ways(limit, system));
  if (out - doubt > limit) return "NO: " + numbers;
  if (out + doubt <= limit) return "OK: " + numbers;
  return fmt::format("NOT KNOWN: {}, two readings that may be {} out together", numbers,
                     both_ways(doubt, system));
}

Table heights_table(const std::vector<Height>& heights, UnitSystem system) {
  TableWriter writer("out of round, on the diameter", system);
  for (const Height& one : heights)
    writer.length(std::string(one.name), one.out_of_round(), kReadings,
                  fmt::format("{} to {}, largest at reading {}", both_ways(*one.ends().first, system),
                              both_ways(*one.ends().second, system), one.largest()));
  return writer.take();
}

Table taper_table(const Height& front, const Height& back, UnitSystem system) {
  TableWriter writer("from end to end", system);
  writer.length("taper, on the diameter", magnitude(front.mean() - back.mean()), kMeans,
                fmt::format("larger at the {}", front.mean() >= back.mean() ? front.name : back.name));
  const bool twisted = front.diameters.size() == back.diameters.size() && front.largest() != back.largest();
  if (front.out_of_round() > Length() && back.out_of_round() > Length())
    writer.words("the long axis", twisted ? "turns from front to back" : "lies the same way", kReadings,
                 "where the readings are in the same order at both ends");
  return writer.take();
}

}  // namespace

base::Result<Answer> roundness(const Question& question) {
  constexpr std::size_t kLeast = 2;
  constexpr std::size_t kMost = 12;
  EntryReader read(question);
  std::vector<Height> heights{{"front", read.lengths("front", kLeast, kMost)}};
  if (read.has("middle")) heights.push_back({"middle", read.lengths("middle", kLeast, kMost)});
  if (read.has("back")) heights.push_back({"back", read.lengths("back", kLeast, kMost)});
  const auto limit = read.maybe_size("limit");
  const Length good_to = read.maybe_size("good-to").value_or(Length());
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  Length worst;
  for (const Height& one : heights)
    worst = std::max(worst, one.out_of_round());
  Answer answer;
  answer.asked =
      fmt::format("round, by diameters read at {} height{}", heights.size(), heights.size() == 1 ? "" : "s");
  answer.says = limit ? verdict(worst, *limit, good_to, system)
                      : fmt::format("out of round {} on the diameter", both_ways(worst, system));
  answer.tables.push_back(heights_table(heights, system));
  if (read.has("back")) answer.tables.push_back(taper_table(heights.front(), heights.back(), system));
  if (!read.has("good-to")) answer.assumed.emplace_back("the readings are taken as they stand");
  if (limit && good_to * 2.0 >= *limit)
    answer.cautions.push_back(
        fmt::format("Readings good to {} can show that it is too far out, never that it is good enough.",
                    both_ways(good_to, system)));
  answer.cautions.emplace_back(
      "Diameters never show three or five lobes: turn outside work in a vee under an indicator, a bore "
      "against a three-point gauge.");
  return answer;
}

base::Result<Answer> lobes(const Question& question) {
  EntryReader read(question);
  const Length swing = read.size("swing");
  const int count = read.count_or("lobes", 2, 25, 3);
  const double usual_vee = unit::degree.to_base(90.0);
  const double vee = read.maybe_positive("vee", Kind::kAngle).value_or(usual_vee);
  const double degrees = vee / unit::degree.to_base(1.0);
  if (!read.failed()) read.refuse_unless(degrees >= 30.0 && degrees <= 150.0, "vee", "from 30 to 150 deg");
  if (read.failed()) return read.failure();
  const double factor = handbook::vee_swing_factor(count, vee);
  if (factor < kLeastShown)
    return base::fail(base::Code::kValueNotAccepted, fmt::format("{:g} deg", degrees),
                      fmt::format("a vee of another angle: this one does not show {} lobes", count), "--vee");
  const UnitSystem system = read.system();
  const Length out = swing / factor;
  Answer answer;
  answer.asked = fmt::format("{} lobes, turned in a vee of {:g} deg", count, degrees);
  answer.says = fmt::format("out of round {}", both_ways(out, system));
  TableWriter writer("out of round", system);
  writer.length("on the radius, lowest to highest", out, handbook::kVeeBlock);
  writer.number("the indicator shows it times", factor, Kind::kNumber, 2, handbook::kVeeBlock);
  const bool odd = count % 2 == 1;
  writer.length("a micrometer shows", odd ? Length() : out * 2.0, handbook::kVeeBlock,
                odd ? "nothing: every diameter is the same" : "across high, less across low");
  answer.tables.push_back(writer.take());
  if (!read.has("lobes")) answer.assumed.emplace_back("three lobes, as centreless ground bar has them");
  if (!read.has("vee")) answer.assumed.emplace_back("a vee of 90 deg");
  answer.assumed.emplace_back("the lobes are even, the indicator stands in the middle of the vee");
  answer.cautions.emplace_back(
      "Count the highs in one turn: that is the number of lobes. Another vee shows another factor: try two.");
  return answer;
}

}  // namespace sparewright::answers
