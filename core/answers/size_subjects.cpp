#include <cmath>

#include <fmt/format.h>

#include "core/answers/groups.hpp"
#include "core/answers/sizes.hpp"
#include "core/handbook/size_conversion.hpp"
#include "core/handbook/standard_sizes.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr handbook::Source kExactInch{"1 in = 25.4 mm exactly (international yard and pound agreement, 1959)",
                                      "", handbook::Basis::kPublished};
constexpr handbook::Source kRounding{"rounded, halves away from zero", "", handbook::Basis::kDerived};

constexpr double kNearDrill_mm = 0.5;  // farther off a drill is no help

std::string off_words(quantity::Length off) {
  return off.base() == 0.0 ? "exactly" : fmt::format("off by {}", both_ways(off, UnitSystem::kInch));
}

}  // namespace

base::Result<Answer> convert(const Question& question) {
  const auto size = handbook::convert_size(question.words);
  if (!size) return tl::unexpected(size.error());
  const auto exactly = [](const handbook::WrittenDecimal& decimal, std::string_view unit) {
    return fmt::format("{}{} {}", decimal.exact ? "" : "about ", decimal.text, unit);
  };
  TableWriter writer("the same size", UnitSystem::kInch);
  writer.words("decimal inch", exactly(size->inch, "in"), kExactInch);
  writer.words("millimetres", exactly(size->millimetre, "mm"), kExactInch);
  writer.words("nearest 64th", fmt::format("{} in", to_string(size->nearest_64th)), kRounding,
               off_words(size->nearest_64th.error));
  writer.length("nearest thou", size->nearest_thou, kRounding, off_words(size->thou_off));
  writer.length("nearest 0.01 mm", size->nearest_hundredth, kRounding, off_words(size->hundredth_off));
  if (std::abs(size->drill_off.in(unit::millimetre)) <= kNearDrill_mm) {
    writer.length(fmt::format("nearest drill, {}", size->nearest_drill.name), size->nearest_drill.diameter,
                  size->nearest_drill.source, off_words(size->drill_off));
  } else {
    writer.words("nearest drill", "none near it", size->nearest_drill.source);
  }
  Answer answer;
  answer.asked = size->typed;
  answer.says = fmt::format("{} = {}", exactly(size->inch, "in"), exactly(size->millimetre, "mm"));
  answer.tables.push_back(writer.take());
  return answer;
}

base::Result<Answer> near_size(const Question& question) {
  const auto size = quantity::read_number(question.words, quantity::Kind::kLength, std::nullopt);
  if (!size) return tl::unexpected(size.error());
  const auto good_to = maybe_size(question, "good-to");
  if (!good_to) return tl::unexpected(good_to.error());
  const auto uncertain = *good_to ? (*good_to)->length() : quantity::Length();
  const auto near = handbook::nearest_standard_sizes(size->diameter(), uncertain);
  if (!near) return tl::unexpected(near.error());
  TableWriter writer("nearest of each series", system_of(*size));
  for (const handbook::NearStandardSize& one : *near)
    writer.length(fmt::format("{}, {}", name_of(one.series), one.name), one.size, one.source,
                  one.off.base() == 0.0
                      ? "exactly"
                      : fmt::format("measured {} {}{}",
                                    both_ways(one.off.base() < 0.0 ? -one.off : one.off, system_of(*size)),
                                    one.off.base() < 0.0 ? "under" : "over",
                                    one.possible ? ", within what it is good to" : ""));
  Answer answer;
  answer.asked = both_ways(size->length(), system_of(*size));
  if (!near->empty()) answer.says = fmt::format("{}, {}", name_of(near->front().series), near->front().name);
  answer.tables.push_back(writer.take());
  return answer;
}

std::vector<Subject> size_subjects() {
  return {
      {"fit",
       "limits of hole and shaft, and the clearance they leave",
       "25 mm H7/g6, 1.0000 in RC4, 25 mm H7",
       "\"25 mm H7/g6\"",
       {},
       fit},
      {"drill",
       "the size of a drill, what it really cuts, its neighbours, the taps it suits",
       "a drill: #7, letter F, 27/64, 6.8 mm",
       "\"#7\"",
       {},
       drill},
      {"convert",
       "a size in inches, millimetres, 64ths and drills",
       "a size: 1-27/32 in, 46.83 mm, #7",
       "\"1-27/32 in\"",
       {},
       convert},
      {"size",
       "the standard sizes nearest to a measured one",
       "a size with its unit: 0.4725 in",
       "\"0.4725 in\" --good-to \"0.001 in\"",
       {{"good-to", "SIZE", "how far off the measurement may be"}},
       near_size},
  };
}

}  // namespace sparewright::answers
