#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/answers/quick.hpp"
#include "core/handbook/change_gears.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/thread_designation.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::ChangeGears;
using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr std::size_t kAnswers = 5;

struct Lead {
  Length lead;
  UnitSystem system = UnitSystem::kInch;
  std::vector<std::string> assumed;
};

// "13 tpi": threads in an inch. Nothing where the text does not end so.
std::optional<base::Result<Lead>> per_inch(const std::string& typed, std::string_view subject) {
  const std::string text = handbook::folded(typed);
  const std::size_t unit_at = text.rfind("tpi");
  if (unit_at == std::string::npos || unit_at + 3 != text.size()) return std::nullopt;
  const auto count = quantity::read_number(text.substr(0, unit_at), Kind::kNumber, std::nullopt);
  if (!count || !(count->base > 0.0))
    return base::fail(base::Code::kValueNotAccepted, typed,
                      "threads per inch such as 13 tpi, or a pitch such as 1.5 mm", subject);
  return Lead{Length::of(1.0, unit::inch) / count->base, UnitSystem::kInch, {}};
}

base::Result<Lead> read_lead(const std::string& text, std::string_view subject) {
  if (auto inch = per_inch(text, subject)) return std::move(*inch);
  const auto length = quantity::read_number(text, Kind::kLength, std::nullopt);
  if (!length)
    return base::fail(base::Code::kValueNotAccepted, text,
                      "threads per inch such as 8 tpi, or a lead such as 4 mm", subject);
  return Lead{length->length(), system_of(*length), {}};
}

// A pitch as such, or that of a thread.
base::Result<Lead> wanted_lead(const std::string& words) {
  if (auto plain = read_lead(words, "pitch")) return plain;
  const auto thread = handbook::read_thread(words);
  if (!thread)
    return base::fail(base::Code::kValueNotAccepted, words, "13 tpi, 1.5 mm, or a thread such as M10x1.5",
                      "pitch");
  const bool metric = std::holds_alternative<handbook::MetricThread>(*thread) ||
                      std::holds_alternative<handbook::TrapezoidalThread>(*thread);
  return Lead{handbook::shape_of(*thread).lead(), metric ? UnitSystem::kMetric : UnitSystem::kInch,
              handbook::assumed_of(*thread)};
}

std::string lead_words(const Lead& lead) {
  if (lead.system == UnitSystem::kMetric) return fmt::format("{:g} mm", lead.lead.in(unit::millimetre));
  return fmt::format("{:.6g} threads per inch", 1.0 / lead.lead.in(unit::inch));
}

struct Asked {
  Lead wanted;
  handbook::LatheGearing lathe;
  std::size_t most_gears = 4;
  quantity::Typed over;
};

// The lathe --on names, or --screw and --gears.
base::Result<handbook::LatheGearing> lathe_of(const Question& question) {
  if (find_entry(question, "on") != nullptr) {
    const auto box =
        named_in_shop(question, question.shop == nullptr ? nullptr : &question.shop->change_gears,
                      "lathe with change gears");
    if (!box) return tl::unexpected(box.error());
    return (*box)->gearing;
  }
  const auto screw_text = text_entry(question, "screw");
  if (!screw_text) return tl::unexpected(screw_text.error());
  const auto screw = read_lead(*screw_text, "--screw");
  if (!screw) return tl::unexpected(screw.error());
  const auto gears_text = text_entry(question, "gears");
  if (!gears_text) return tl::unexpected(gears_text.error());
  auto gears = read_counts(*gears_text, "gears", handbook::kLeastTeeth, handbook::kMostTeeth);
  if (!gears) return tl::unexpected(gears.error());
  return handbook::LatheGearing{screw->lead, std::move(*gears), std::nullopt};
}

base::Result<Asked> asked_of(const Question& question) {
  Asked asked;
  auto wanted = wanted_lead(question.words);
  if (!wanted) return tl::unexpected(wanted.error());
  auto lathe = lathe_of(question);
  if (!lathe) return tl::unexpected(lathe.error());
  if (find_entry(question, "most") != nullptr) {
    const auto most = count_entry(question, "most", 2, 6);
    if (!most) return tl::unexpected(most.error());
    if (*most % 2 != 0)
      return base::fail(base::Code::kValueNotAccepted, std::to_string(*most), "2, 4 or 6", "--most");
    asked.most_gears = static_cast<std::size_t>(*most);
  }
  const bool metric = wanted->system == UnitSystem::kMetric;
  asked.over.base = (metric ? Length::of(25.0, unit::millimetre) : Length::of(1.0, unit::inch)).base();
  asked.over.typed = metric ? "25 mm" : "1 in";
  if (find_entry(question, "over") != nullptr) {
    const auto over = size_entry(question, "over");
    if (!over) return tl::unexpected(over.error());
    asked.over = *over;
  }
  asked.wanted = std::move(*wanted);
  asked.lathe = std::move(*lathe);
  return asked;
}

std::string error_words(const ChangeGears& one, const Asked& asked) {
  if (one.exact) return "exact";
  const Length off = one.error_over(asked.over.length());
  // Printed finer than lengths are: a good train is out by millionths.
  const double in = magnitude(off).in(unit::inch);
  const double mm = magnitude(off).in(unit::millimetre);
  return fmt::format("{} by {:.5f} in ({:.4f} mm) in {}", off > Length() ? "long" : "short", in, mm,
                     asked.over.typed);
}

}  // namespace

base::Result<Answer> pitch(const Question& question) {
  const auto asked = asked_of(question);
  if (!asked) return tl::unexpected(asked.error());
  const auto found = handbook::change_gears(asked->lathe, {asked->wanted.lead, asked->most_gears, kAnswers});
  if (!found) return tl::unexpected(found.error());
  if (found->empty())
    return base::fail(base::Code::kNotTabled, lead_words(asked->wanted), "more gears, or --most 6",
                      "a train of these gears");
  Answer answer;
  answer.asked = fmt::format("gears for {}", lead_words(asked->wanted));
  answer.says = fmt::format("{}, {}", to_string(found->front().train), error_words(found->front(), *asked));
  answer.assumed = asked->wanted.assumed;
  answer.assumed.emplace_back(
      "drivers (from the spindle) : drivens (towards the lead screw), idlers left out");
  if (!asked->lathe.banjo) answer.assumed.emplace_back("whether they go on the banjo was not looked at");
  TableWriter writer("trains, and the lead they cut", asked->wanted.system);
  for (const ChangeGears& one : *found)
    writer.length(to_string(one.train), one.lead, handbook::kChangeGears, error_words(one, *asked));
  answer.tables.push_back(writer.take());
  answer.cautions.emplace_back("Lathe off at the wall while gears are changed; guard shut before it turns.");
  answer.cautions.emplace_back(
      "Cut a scratch first and measure it over ten threads: the gears in the head count too.");
  return answer;
}

}  // namespace sparewright::answers
