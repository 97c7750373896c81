// A bush, liner or shaft of a size that is there, pressed into a hole of a size that is there.
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/base/messages.hpp"
#include "core/handbook/lame_formulas.hpp"
#include "core/handbook/press_fits.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;

// A boss whose outside is not given: so thick that it hardly gives.
constexpr double kThickBossInJoints = 100.0;
constexpr handbook::Source kDifference{"outside less hole", "", handbook::Basis::kDerived};
constexpr handbook::Source kBoreClosing{"Lame's thick cylinders, hoop strain at the bore", "",
                                        handbook::Basis::kDerived};
constexpr handbook::Source kMostClosing{"interference x hole / bore: metal that keeps its volume, geometry",
                                        "", handbook::Basis::kDerived};
constexpr handbook::Source kClosesAsMuch{"the bore of a bush closes by about what it is tight", "",
                                         handbook::Basis::kCommonPractice};

struct Pressed {
  Length outside;
  Length hole;
  std::optional<Length> bore;
  std::optional<Length> boss;
  std::optional<Length> length;
  std::optional<Length> finish;
  handbook::FoundMaterial inside;
  handbook::FoundMaterial around;
  UnitSystem system = UnitSystem::kInch;

  [[nodiscard]] Length tight() const { return outside - hole; }
};

base::Result<Pressed> pressed_of(const Question& question) {
  EntryReader read(question);
  Pressed asked;
  asked.outside = read.size("outside");
  asked.hole = read.size("hole");
  asked.bore = read.maybe_size("bore");
  asked.boss = read.maybe_size("boss");
  asked.length = read.maybe_size("length");
  asked.finish = read.maybe_size("finish");
  asked.inside = read.material("material", "bronze C932");
  asked.around = read.material("into", "steel 1018");
  if (!read.failed()) {
    read.refuse_unless(asked.tight() > Length(), "outside", "more than the hole: it is not tight");
    read.refuse_unless(!asked.bore || *asked.bore < asked.hole, "bore", "less than the hole");
    read.refuse_unless(!asked.boss || *asked.boss > asked.hole, "boss", "more than the hole");
    read.refuse_unless(asked.tight() < asked.hole / 20.0, "outside", "within a twentieth of the hole");
    read.refuse_unless(!asked.finish || asked.bore, "finish", "the bore as well, --bore");
  }
  asked.system = read.system();
  if (read.failed()) return read.failure();
  return asked;
}

base::Result<handbook::PressFit> fit_of(const Pressed& asked) {
  const auto inside = handbook::elastic_part(asked.inside.material);
  if (!inside) return tl::unexpected(inside.error());
  const auto around = handbook::elastic_part(asked.around.material);
  if (!around) return tl::unexpected(around.error());
  const auto friction =
      handbook::press_friction(asked.around.material.group, handbook::PressAssembly::kPressed);
  if (!friction) return tl::unexpected(friction.error());
  handbook::PressFit fit;
  fit.joint = as_diameter(asked.hole);
  fit.shaft_bore = as_diameter(asked.bore.value_or(Length()));
  fit.hub_outside = as_diameter(asked.boss.value_or(asked.hole * kThickBossInJoints));
  fit.length = asked.length.value_or(Length::of(1.0, quantity::unit::millimetre));
  fit.least_interference = asked.tight();
  fit.most_interference = asked.tight();
  fit.hub = *around;
  fit.shaft = *inside;
  fit.friction_low = friction->low;
  fit.friction_high = friction->high;
  return fit;
}

Table bore_table(const Pressed& asked, const base::Result<handbook::PressFit>& fit,
                 const base::Result<handbook::PressFitAnswer>& held) {
  TableWriter writer("the bore, once it is in", asked.system);
  const Length bore = *asked.bore;
  writer.length("closes by about, rule", asked.tight(), kClosesAsMuch,
                "thin bushes; reckon with it before pressing");
  if (held)
    writer.length("closes by, while elastic",
                  Length::from_base(handbook::bore_closing(held->least_pressure.base(), asked.hole.base(),
                                                           bore.base(), fit->shaft.modulus.base())),
                  kBoreClosing, held->shaft_yields.value_or(false) ? "it yields: the rule is nearer" : "");
  writer.length(
      "closes by, at most",
      Length::from_base(handbook::most_bore_closing(asked.tight().base(), asked.hole.base(), bore.base())),
      kMostClosing);
  writer.length("bore left, by the rule", bore - asked.tight(), kClosesAsMuch);
  if (asked.finish)
    writer.length("to open it then to the size wanted", *asked.finish - (bore - asked.tight()), kClosesAsMuch,
                  "after it is in, not before");
  return writer.take();
}

Table force_table(const Pressed& asked, const handbook::PressFitAnswer& held) {
  TableWriter writer("held together", asked.system);
  const bool inch = asked.system == UnitSystem::kInch;
  writer.number("pressure between them", held.least_pressure.base(), Kind::kPressure, inch ? 0 : 1,
                held.pressure_source);
  if (asked.length) {
    writer.number("force to press it in, at most", held.pressing_at_most.base(), Kind::kForce, 0,
                  held.pressure_source);
    if (held.shaft_yields.value_or(true) || held.hub_yields.value_or(false)) {
      writer.words("slides out at, turns at", "NOT KNOWN", held.pressure_source,
                   "it yields, or nothing is known of when: it grips less than an elastic one");
    } else {
      writer.number("slides out at, at least", held.holds_at_least.base(), Kind::kForce, 0,
                    held.pressure_source, "friction alone, new and dry of grease: no promise that it holds");
      writer.number("turns at, at least", held.turns_at_least.base(), Kind::kTorque, 1, held.pressure_source);
    }
  }
  return writer.take();
}

void add_yielding(const handbook::PressFitAnswer& held, Answer& answer) {
  if (held.shaft_yields.value_or(false))
    answer.cautions.emplace_back(
        "What is pressed in yields: it grips less than said here. Take less, or ream the hole larger.");
  if (held.hub_yields.value_or(false))
    answer.cautions.emplace_back("The boss round it yields: it may split. Take less.");
}

}  // namespace

base::Result<Answer> press(const Question& question) {
  const auto asked = pressed_of(question);
  if (!asked) return tl::unexpected(asked.error());
  const auto fit = fit_of(*asked);
  const auto held = fit ? handbook::press_fit(*fit) : tl::unexpected<base::Failure>(fit.error());
  Answer answer;
  answer.asked = fmt::format("{} pressed into {}", both_ways(asked->outside, asked->system),
                             both_ways(asked->hole, asked->system));
  answer.says = fmt::format("{} tight", both_ways(asked->tight(), asked->system));
  for (const auto& [found, entry, what] : {std::tuple(&asked->inside, "material", "pressed in"),
                                           std::tuple(&asked->around, "into", "round it")}) {
    if (find_entry(question, entry) == nullptr)
      answer.assumed.push_back(fmt::format("{}: {}", what, to_string(found->material)));
    if (!found->assumed.empty()) answer.assumed.push_back(found->assumed);
  }
  if (!asked->boss) answer.assumed.emplace_back("metal round the hole so thick that it hardly gives");
  TableWriter writer("how tight", asked->system);
  writer.length("on the diameter", asked->tight(), kDifference);
  writer.number("for 1000 of diameter", asked->tight() / asked->hole * 1000.0, Kind::kNumber, 2, kDifference,
                "thou to the inch");
  answer.tables.push_back(writer.take());
  if (asked->bore) answer.tables.push_back(bore_table(*asked, fit, held));
  if (held) {
    answer.tables.push_back(force_table(*asked, *held));
    add_yielding(*held, answer);
  } else {
    answer.cautions.push_back("Pressure and force: NOT KNOWN. " + base::sentence(held.error()));
  }
  answer.cautions.emplace_back(
      "Press it square, with a lead on its edge; stand out of line, for what tips flies.");
  return answer;
}

}  // namespace sparewright::answers
