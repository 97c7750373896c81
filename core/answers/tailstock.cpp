#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/handbook/taper_turning.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;

// Diameter gained for each unit of length.
struct Taper {
  double value = 0.0;
  bool cut = false;  // wanted, not to be taken out
};

base::Result<Taper> measured_taper(const Question& question) {
  const auto large = size_entry(question, "large");
  if (!large) return tl::unexpected(large.error());
  const auto small = size_entry(question, "small");
  if (!small) return tl::unexpected(small.error());
  const auto over = size_entry(question, "over");
  if (!over) return tl::unexpected(over.error());
  if (!(large->base > small->base))
    return base::fail(base::Code::kValueNotAccepted, small->typed, fmt::format("less than {}", large->typed),
                      "--small");
  const double taper = handbook::taper_of(large->base, small->base, over->base);
  if (!(taper <= 0.5))
    return base::fail(base::Code::kValueNotAccepted, large->typed, "a taper up to 1:2: is --over right?",
                      "--large");
  return Taper{taper, false};
}

base::Result<Taper> taper_asked(const Question& question) {
  if (find_entry(question, "taper") == nullptr) return measured_taper(question);
  const auto taper = taper_entry(question, "taper");
  if (!taper) return tl::unexpected(taper.error());
  return Taper{*taper, true};
}

// Which end is thick. The tool cuts on the operator's side: an end whose centre stands too far away is left thick.
base::Result<bool> thick_at_tailstock(const Question& question) {
  const auto end = text_entry(question, "thick-end");
  if (!end) return tl::unexpected(end.error());
  if (*end == "tailstock" || *end == "headstock") return *end == "tailstock";
  return base::fail(base::Code::kValueNotAccepted, *end, "tailstock or headstock", "--thick-end");
}

// Ball-ended centres or small tapers beyond this part of the length (common practice).
constexpr double kMostSetOverPart = 1.0 / 50.0;

Table setting_table(const Taper& taper, Length rule, Length exact, std::string_view direction,
                    UnitSystem system) {
  TableWriter writer("the tailstock", system);
  writer.length("move it", rule, handbook::kTailstockSetOver, std::string(direction));
  writer.length("along the work's own centres", exact, handbook::kTaperRules,
                "where the length was taken between the centre holes");
  const double per_foot = handbook::taper_per_foot(taper.value);
  writer.words(
      "taper",
      fmt::format("1:{} ({} in per ft)", quantity::fixed(1.0 / taper.value, 2), quantity::fixed(per_foot, 4)),
      handbook::kTaperRules);
  writer.number("angle to the axis", handbook::angle_to_axis_rad(taper.value), Kind::kAngle, 3,
                handbook::kTaperRules);
  const Length inch = Length::of(1.0, quantity::unit::inch);
  writer.length("an indicator along the axis shows, in 1 in",
                Length::from_base(handbook::indicator_change_mm(taper.value, inch.base())),
                handbook::kTaperRules);
  return writer.take();
}

}  // namespace

base::Result<Answer> tailstock(const Question& question) {
  const auto taper = taper_asked(question);
  if (!taper) return tl::unexpected(taper.error());
  const auto between = size_entry(question, "between");
  if (!between) return tl::unexpected(between.error());
  const auto thick = thick_at_tailstock(question);
  if (!thick) return tl::unexpected(thick.error());
  const UnitSystem system = system_of(*between);
  const Length rule = Length::from_base(handbook::tailstock_set_over_mm(taper->value, between->base));
  const Length exact = Length::from_base(handbook::exact_set_over_mm(taper->value, between->base));
  // Cutting a taper is the opposite of taking out the one that is there.
  const std::string_view direction = *thick == taper->cut ? "away from the operator" : "towards the operator";
  Answer answer;
  answer.asked = fmt::format("{} a taper of 1:{}, thick at the {}, {} between centres",
                             taper->cut ? "cut" : "take out", quantity::fixed(1.0 / taper->value, 2),
                             *thick ? "tailstock" : "headstock", both_ways(between->length(), system));
  answer.says = fmt::format("move the tailstock {} {}", both_ways(rule, system), direction);
  answer.assumed.emplace_back("the tool cuts on the operator's side of the work");
  answer.assumed.emplace_back(
      "set it by an indicator on the quill, and clamp before it is read; the last of it by trial");
  answer.tables.push_back(setting_table(*taper, rule, exact, direction, system));
  if (rule > between->length() * kMostSetOverPart)
    answer.cautions.emplace_back(
        "More than a fiftieth of the length: the centres no longer bear in their holes. Use ball centres, a "
        "taper attachment or the compound slide.");
  if (taper->cut)
    answer.cautions.emplace_back(
        "The driving dog slides in its slot as the work turns: leave it room, oil the dead centre.");
  answer.cautions.emplace_back("Spindle stopped while the tailstock is moved and measured.");
  return answer;
}

}  // namespace sparewright::answers
