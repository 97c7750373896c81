#include "core/handbook/change_gears.hpp"

#include <algorithm>
#include <charconv>

#include <fmt/format.h>

#include "core/answers/dividing.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/thread_text.hpp"
#include "core/quantity/display.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::answers {
namespace {

using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr std::string_view kPitches = "a pitch such as 8 tpi, 4-1/2 tpi, 1.25 mm, 1/8 in";

struct Pitch {
  Length length;
  UnitSystem system = UnitSystem::kInch;
};

// "11 tpi", "4-1/2 tpi", "1.25 mm", "1/8 in".
base::Result<Pitch> read_pitch(std::string_view text) {
  for (const std::string_view ending : {"tpi", "threads per inch", "per inch"}) {
    const std::string folded = handbook::folded(text);
    if (!folded.ends_with(ending)) continue;
    const std::string count(quantity::trimmed(folded.substr(0, folded.size() - ending.size())));
    const handbook::PerInch per_inch = handbook::threads_per_inch_at(count);
    if (per_inch.taken == count.size() && per_inch.value > 0.0)
      return Pitch{Length::of(1.0, unit::inch) / per_inch.value, UnitSystem::kInch};
    return base::fail(base::Code::kNotANumber, text, kPitches, "threads per inch");
  }
  const auto size = quantity::read_number(text, quantity::Kind::kLength, std::nullopt);
  if (!size) {
    base::Failure failure = size.error();
    failure.accepted = kPitches;
    return base::fail(std::move(failure));
  }
  if (!(size->base > 0.0))
    return base::fail(base::Code::kSizeNotPositive, size->typed, kPitches, "the pitch");
  return Pitch{size->length(), system_of(*size)};
}

base::Result<Pitch> pitch_entry(const Question& question, std::string_view name) {
  const auto text = text_entry(question, name);
  if (!text) return tl::unexpected(text.error());
  auto pitch = read_pitch(*text);
  if (!pitch) {
    base::Failure failure = pitch.error();
    failure.subject = fmt::format("--{}: {}", name, failure.subject);
    return base::fail(std::move(failure));
  }
  return pitch;
}

// "20,24,28 32": teeth, as often as there are gears of them.
base::Result<std::vector<int>> box_entry(const Question& question) {
  const auto text = text_entry(question, "box");
  if (!text) return tl::unexpected(text.error());
  std::vector<int> teeth;
  const char* at = text->data();
  const char* const end = at + text->size();
  while (at != end) {
    if (*at == ',' || *at == ' ') {
      ++at;
      continue;
    }
    int one = 0;
    const auto [stopped, error] = std::from_chars(at, end, one);
    if (error != std::errc{})
      return base::fail(base::Code::kValueNotAccepted, std::string(at, end),
                        "teeth of the gears, such as 20,24,30,40,60,127", "--box");
    teeth.push_back(one);
    at = stopped;
  }
  return teeth;
}

base::Result<std::size_t> gears_entry(const Question& question) {
  constexpr int kUsual = 4;
  const auto gears = count_or(question, "gears", 2, 6, kUsual);
  if (!gears) return tl::unexpected(gears.error());
  if (*gears % 2 != 0)
    return base::fail(base::Code::kValueNotAccepted, fmt::format("{}", *gears), "2, 4 or 6", "--gears");
  return static_cast<std::size_t>(*gears);
}

// The lathe --on names, or --screw and --box.
base::Result<handbook::LatheGearing> gearing_of(const Question& question) {
  if (find_entry(question, "on") != nullptr) {
    const auto box =
        named_in_shop(question, question.shop == nullptr ? nullptr : &question.shop->change_gears,
                      "lathe with change gears");
    if (!box) return tl::unexpected(box.error());
    return (*box)->gearing;
  }
  const auto screw = pitch_entry(question, "screw");
  if (!screw) return tl::unexpected(screw.error());
  auto box = box_entry(question);
  if (!box) return tl::unexpected(box.error());
  return handbook::LatheGearing{screw->length, std::move(*box), std::nullopt};
}

// How the train goes on the banjo, stud by stud.
Table banjo_table(const handbook::BanjoFit& fit, UnitSystem system) {
  TableWriter writer("on the banjo, from the fixed stud to the lead screw", system);
  for (const handbook::BanjoStud& stud : fit.studs) {
    writer.length(stud.idler ? fmt::format("{} as idler", stud.in)
                             : fmt::format("{} and {} keyed together", stud.in, stud.out),
                  stud.along, handbook::kMeshing,
                  fmt::format("along slot {}, from the lead screw", stud.slot + 1));
  }
  writer.length("narrowest gap", fit.least_gap, handbook::kMeshing);
  return writer.take();
}

std::string pitch_words(const Pitch& pitch) {
  if (pitch.system == UnitSystem::kMetric) return both_ways(pitch.length, UnitSystem::kMetric);
  return fmt::format("{:.6g} tpi, {}", 1.0 / pitch.length.in(unit::inch),
                     both_ways(pitch.length, pitch.system));
}

std::string error_words(const handbook::ChangeGears& found, UnitSystem system) {
  if (found.exact) return "exact";
  const bool inch = system == UnitSystem::kInch;
  const Length near = inch ? Length::of(1.0, unit::inch) : Length::of(25.0, unit::millimetre);
  const Length far = inch ? Length::of(1.0, unit::foot) : Length::of(300.0, unit::millimetre);
  const auto off = [&](Length over) {
    return inch ? quantity::signed_fixed(found.error_over(over).in(unit::inch), 5) + " in"
                : quantity::signed_fixed(found.error_over(over).in(unit::millimetre), 4) + " mm";
  };
  return fmt::format("{} over {}, {} over {}", off(near), inch ? "1 in" : "25 mm", off(far),
                     inch ? "1 ft" : "300 mm");
}

Table trains_table(const std::vector<handbook::ChangeGears>& found, UnitSystem system) {
  const bool inch = system == UnitSystem::kInch;
  TableWriter writer("trains, drivers : drivens, and the lead they cut", system);
  for (const handbook::ChangeGears& one : found)
    writer.number(
        to_string(one.train), one.lead.base(), quantity::Kind::kLength, inch ? 6 : 5, handbook::kChangeGears,
        inch ? fmt::format("{:.6g} tpi, {}", 1.0 / one.lead.in(unit::inch), error_words(one, system))
             : error_words(one, system));
  return writer.take();
}

}  // namespace

base::Result<Answer> change_gears(const Question& question) {
  const auto wanted = read_pitch(question.words);
  if (!wanted) return tl::unexpected(wanted.error());
  const auto lathe = gearing_of(question);
  if (!lathe) return tl::unexpected(lathe.error());
  const auto gears = gears_entry(question);
  if (!gears) return tl::unexpected(gears.error());
  const auto found = handbook::change_gears(*lathe, {.lead = wanted->length, .most_gears = *gears});
  if (!found) return tl::unexpected(found.error());
  if (found->empty())
    return base::fail(base::Code::kValueNotAccepted, question.words,
                      lathe->banjo ? "a pitch whose gears go on the banjo; --screw and --box look without it"
                                   : fmt::format("a box with at least {} gears", *gears),
                      "the pitch");
  Answer answer;
  answer.asked = fmt::format("{} on a lead screw of {}", pitch_words(*wanted),
                             both_ways(lathe->screw_lead, wanted->system));
  answer.says =
      fmt::format("{}, {}", to_string(found->front().train), error_words(found->front(), wanted->system));
  answer.assumed = {
      "a thread of one start, and equal gears cut the pitch of the lead screw: gearing in the head and a "
      "gearbox "
      "change that",
      lathe->banjo
          ? "idlers only change the direction"
          : "whether the gears reach on the banjo is not looked at; idlers only change the direction"};
  answer.tables.push_back(trains_table(*found, wanted->system));
  if (found->front().fit) answer.tables.push_back(banjo_table(*found->front().fit, wanted->system));
  answer.cautions.emplace_back(
      "switch the lathe off at the mains before changing gears, and close the guard");
  return answer;
}

}  // namespace sparewright::answers
