#include "core/handbook/change_gears.hpp"

#include <fmt/format.h>

#include "core/answers/dividing.hpp"
#include "core/answers/quick.hpp"
#include "core/handbook/thread_designation.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::ChangeGears;
using handbook::TypedPitch;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

struct Asked {
  TypedPitch wanted;  // the lead: pitch times starts
  handbook::LatheGearing lathe;
  std::size_t most_gears = 4;
  Length over;
  std::string over_typed;
  std::vector<std::string> assumed;
};

// A pitch as such, or that of a thread.
base::Result<TypedPitch> wanted_lead(const std::string& words, std::vector<std::string>& assumed) {
  if (auto plain = handbook::read_pitch(words)) return plain;
  const auto thread = handbook::read_thread(words);
  if (!thread)
    return base::fail(base::Code::kValueNotAccepted, words, "13 tpi, 1.5 mm, or a thread such as M10x1.5",
                      "pitch");
  assumed = handbook::assumed_of(*thread);
  const bool metric = std::holds_alternative<handbook::MetricThread>(*thread) ||
                      std::holds_alternative<handbook::TrapezoidalThread>(*thread);
  return TypedPitch{handbook::shape_of(*thread).lead(), metric ? UnitSystem::kMetric : UnitSystem::kInch};
}

// The lathe --on names, or --screw and --gears.
base::Result<handbook::LatheGearing> lathe_of(const Question& question) {
  if (find_entry(question, "on") != nullptr) {
    const auto box = on_entry(question, &shop::Shop::change_gears, "lathe with change gears");
    if (!box) return tl::unexpected(box.error());
    return (*box)->gearing;
  }
  const auto screw = pitch_entry(question, "screw");
  if (!screw) return tl::unexpected(screw.error());
  const auto text = text_entry(question, "gears");
  if (!text) return tl::unexpected(text.error());
  auto gears = read_counts(*text, "gears", handbook::kLeastTeeth, handbook::kMostTeeth);
  if (!gears) return tl::unexpected(gears.error());
  return handbook::LatheGearing{screw->pitch, std::move(*gears), std::nullopt};
}

base::Result<Asked> asked_of(const Question& question) {
  constexpr int kUsual = 4;
  Asked asked;
  const auto wanted = wanted_lead(question.words, asked.assumed);
  if (!wanted) return tl::unexpected(wanted.error());
  asked.wanted = *wanted;
  auto lathe = lathe_of(question);
  if (!lathe) return tl::unexpected(lathe.error());
  asked.lathe = std::move(*lathe);
  const auto most = count_or(question, "most", 2, 6, kUsual);
  if (!most) return tl::unexpected(most.error());
  if (*most % 2 != 0)
    return base::fail(base::Code::kValueNotAccepted, std::to_string(*most), "2, 4 or 6", "--most");
  asked.most_gears = static_cast<std::size_t>(*most);
  const auto over = maybe_size(question, "over");
  if (!over) return tl::unexpected(over.error());
  const bool metric = wanted->system == UnitSystem::kMetric;
  asked.over = *over    ? (*over)->length()
               : metric ? Length::of(25.0, unit::millimetre)
                        : Length::of(1.0, unit::inch);
  asked.over_typed = *over ? (*over)->typed : metric ? "25 mm" : "1 in";
  return asked;
}

std::string lead_words(Length lead, UnitSystem system) {
  if (system == UnitSystem::kMetric) return fmt::format("{:g} mm", lead.in(unit::millimetre));
  return fmt::format("{:.6g} threads per inch", 1.0 / lead.in(unit::inch));
}

// Finer than lengths are printed elsewhere: a good train is out by millionths.
std::string error_words(const ChangeGears& one, const Asked& asked) {
  if (one.exact) return "exact";
  const Length off = one.error_over(asked.over);
  return fmt::format("{} by {:.5f} in ({:.4f} mm) in {}", off > Length() ? "long" : "short",
                     magnitude(off).in(unit::inch), magnitude(off).in(unit::millimetre), asked.over_typed);
}

Table trains_table(const std::vector<ChangeGears>& found, const Asked& asked) {
  const UnitSystem system = asked.wanted.system;
  TableWriter writer("trains, drivers : drivens, and the lead they cut", system);
  for (const ChangeGears& one : found)
    writer.number(to_string(one.train), one.lead.base(), quantity::Kind::kLength,
                  system == UnitSystem::kInch ? 6 : 5, handbook::kChangeGears,
                  system == UnitSystem::kInch
                      ? fmt::format("{}; {}", lead_words(one.lead, system), error_words(one, asked))
                      : error_words(one, asked));
  return writer.take();
}

// How the train goes on the banjo, stud by stud.
Table banjo_table(const handbook::BanjoFit& fit, UnitSystem system) {
  TableWriter writer("on the banjo, from the fixed stud to the lead screw", system);
  for (const handbook::BanjoStud& stud : fit.studs)
    writer.length(stud.idler ? fmt::format("{} as idler", stud.in)
                             : fmt::format("{} and {} keyed together", stud.in, stud.out),
                  stud.along, handbook::kMeshing,
                  fmt::format("along slot {}, from the lead screw", stud.slot + 1));
  writer.length("narrowest gap", fit.least_gap, handbook::kMeshing);
  return writer.take();
}

base::Failure no_train(const Question& question, const Asked& asked) {
  base::Failure failure;
  failure.code = base::Code::kNotTabled;
  failure.subject =
      asked.lathe.banjo ? "a train of these gears that goes on the banjo" : "a train of these gears";
  failure.found = question.words;
  failure.accepted = asked.lathe.banjo
                         ? "more gears, --most 6, or --screw and --gears, which look without the banjo"
                         : "more gears, or --most 6";
  return failure;
}

}  // namespace

std::vector<Entry> change_gear_entries() {
  return {{"screw", "PITCH", "of the lead screw: 8 tpi, 4 mm"},
          {"gears", "TEETH", "every gear in the box: 20,30,40,63"},
          {"most", "COUNT", "gears in the train: 2, 4 or 6; 4 where left out"},
          {"over", "LENGTH", "of thread the error is told over; 1 in or 25 mm where left out"},
          {"on", "LATHE", "a lathe with change gears in the shop text, instead of --screw and --gears"}};
}

base::Result<Answer> change_gears(const Question& question) {
  const auto asked = asked_of(question);
  if (!asked) return tl::unexpected(asked.error());
  const auto found =
      handbook::change_gears(asked->lathe, {.lead = asked->wanted.pitch, .most_gears = asked->most_gears});
  if (!found) return tl::unexpected(found.error());
  if (found->empty()) return base::fail(no_train(question, *asked));
  const UnitSystem system = asked->wanted.system;
  Answer answer;
  answer.asked = fmt::format("{} on a lead screw of {}", lead_words(asked->wanted.pitch, system),
                             both_ways(asked->lathe.screw_lead, system));
  answer.says = fmt::format("{}, {}", to_string(found->front().train), error_words(found->front(), *asked));
  answer.assumed = asked->assumed;
  answer.assumed.emplace_back(
      "drivers (from the spindle) : drivens (towards the lead screw); idlers only change the "
      "direction");
  answer.assumed.emplace_back(
      "equal gears cut the pitch of the lead screw: gearing in the head and a gearbox change that");
  if (!asked->lathe.banjo) answer.assumed.emplace_back("whether they go on the banjo was not looked at");
  answer.tables.push_back(trains_table(*found, *asked));
  if (found->front().fit) answer.tables.push_back(banjo_table(*found->front().fit, system));
  answer.cautions.emplace_back("Lathe off at the wall while gears are changed; guard shut before it turns.");
  answer.cautions.emplace_back(
      "Cut a scratch first and measure it over ten threads: the gears in the head count too.");
  return answer;
}

}  // namespace sparewright::answers
