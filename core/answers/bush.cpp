#include <array>
#include <optional>

#include <fmt/format.h>

#include "core/answers/quick.hpp"
#include "core/base/messages.hpp"
#include "core/handbook/fits.hpp"
#include "core/handbook/lame_formulas.hpp"
#include "core/handbook/press_fits.hpp"
#include "core/handbook/reaming.hpp"

namespace sparewright::answers {
namespace {

using handbook::Fit;
using quantity::Diameter;
using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

// The fits a bush is made by where none is asked for, inch and metric: the lightest of the press fits, as a thin wall
// wants; a snug location for one that is held otherwise; close running on the shaft (recommended_fits.hpp).
struct UsualFits {
  std::string_view pressed;
  std::string_view slipped;
  std::string_view running;
};
constexpr UsualFits kInchFits{"FN1", "LC2", "RC4"};
constexpr UsualFits kMetricFits{"H7/s6", "H7/h6", "H8/f7"};

// Thinner ones buckle as they are pressed in, and there is nothing to ream. A choice made here, without a source.
constexpr Length kThinWall = Length::of(0.5, unit::millimetre);

// The boss reckoned with: steel, and so thick that it hardly gives. Any other closes the bush less.
constexpr std::string_view kBossMaterial = "1018";
constexpr double kBossInJoints = 100.0;

constexpr handbook::Source kAsMeasured{"the size measured, with what the fit allows between the two", "",
                                       handbook::Basis::kDerived};
constexpr handbook::Source kWall{"half of outside less bore", "", handbook::Basis::kDerived};
constexpr handbook::Source kBoreClosing{
    "Lame's thick cylinders, hoop strain at the bore of the bush; a thick steel boss", "",
    handbook::Basis::kDerived};
constexpr handbook::Source kMostClosing{"interference x hole / bore: metal that keeps its volume, geometry",
                                        "", handbook::Basis::kDerived};
constexpr handbook::Source kUsualLength{"length of a bush, 0.8 to 2 times the shaft", "",
                                        handbook::Basis::kCommonPractice};

struct Asked {
  quantity::Typed hole;
  quantity::Typed shaft;
  UnitSystem system = UnitSystem::kInch;
  bool pressed = true;
  std::optional<quantity::Typed> length;
  Length good_to;
  Fit seat;
  Fit running;
  handbook::FoundMaterial material;
};

// The fit named by an entry, or the usual one, at a size.
base::Result<Fit> fit_entry(const Question& question, std::string_view entry, std::string_view usual,
                            Diameter at) {
  const std::string* named = find_entry(question, entry);
  return handbook::fit_at(named == nullptr ? usual : std::string_view(*named), at);
}

base::Result<bool> is_pressed(const Question& question) {
  const std::string* how = find_entry(question, "how");
  if (how == nullptr || *how == "pressed") return true;
  if (*how == "slip") return false;
  return base::fail(base::Code::kValueNotAccepted, *how, "pressed or slip", "--how");
}

base::Result<void> read_fits(const Question& question, Asked& asked) {
  const UsualFits& usual = asked.system == UnitSystem::kInch ? kInchFits : kMetricFits;
  auto seat =
      fit_entry(question, "seat", asked.pressed ? usual.pressed : usual.slipped, asked.hole.diameter());
  if (!seat) return tl::unexpected(seat.error());
  const auto wanted = asked.pressed ? handbook::FitKind::kInterference : handbook::FitKind::kClearance;
  if (seat->kind() != wanted)
    return base::fail(base::Code::kValueNotAccepted, seat->name,
                      asked.pressed ? "a press fit, such as FN1 or H7/s6" : "a fit that leaves clearance",
                      "--seat");
  auto running = fit_entry(question, "run", usual.running, asked.shaft.diameter());
  if (!running) return tl::unexpected(running.error());
  if (running->kind() != handbook::FitKind::kClearance)
    return base::fail(base::Code::kValueNotAccepted, running->name, "a running fit, such as RC4 or H8/f7",
                      "--run");
  asked.seat = std::move(*seat);
  asked.running = std::move(*running);
  return {};
}

base::Result<Asked> asked_of(const Question& question) {
  Asked asked;
  const auto hole = size_entry(question, "hole");
  if (!hole) return tl::unexpected(hole.error());
  const auto shaft = size_entry(question, "shaft");
  if (!shaft) return tl::unexpected(shaft.error());
  if (!(shaft->base < hole->base))
    return base::fail(base::Code::kValueNotAccepted, hole->typed,
                      fmt::format("more than the shaft, {}", shaft->typed), "--hole");
  const auto pressed = is_pressed(question);
  if (!pressed) return tl::unexpected(pressed.error());
  const auto length = maybe_size(question, "length");
  if (!length) return tl::unexpected(length.error());
  const auto good_to = maybe_size(question, "good-to");
  if (!good_to) return tl::unexpected(good_to.error());
  const std::string* material = find_entry(question, "material");
  const auto found = handbook::find_material(material == nullptr ? "C932" : *material);
  if (!found) return tl::unexpected(found.error());
  asked.hole = *hole;
  asked.shaft = *shaft;
  asked.system = system_of(*hole);
  asked.pressed = *pressed;
  asked.length = *length;
  if (*good_to) asked.good_to = (*good_to)->length();
  asked.material = *found;
  if (const auto fits = read_fits(question, asked); !fits) return tl::unexpected(fits.error());
  return asked;
}

struct Limits {
  Length low;
  Length high;
};

// A size that leaves what the fit allows beside one measured: all of the fit's range, less what the measurement may be out
// at either end.
base::Result<Limits> beside(Length measured, Length least, Length most, Length good_to) {
  const Limits limits{measured + least + good_to, measured + most - good_to};
  if (limits.low < limits.high) return limits;
  return base::fail(base::Code::kValueNotAccepted, fmt::format("{} mm", good_to.in(unit::millimetre)),
                    fmt::format("less than half of what the fit leaves, {:.4g} mm",
                                (most - least).in(unit::millimetre) / 2.0),
                    "--good-to");
}

struct Bush {
  Limits outside;
  Limits bore;  // as it shall be in its place
  [[nodiscard]] Length least_wall() const { return (outside.low - bore.high) / 2.0; }
  [[nodiscard]] Length most_wall() const { return (outside.high - bore.low) / 2.0; }
};

base::Result<Bush> bush_of(const Asked& asked) {
  const auto outside =
      beside(asked.hole.length(), -asked.seat.most_clearance(), -asked.seat.least_clearance(), asked.good_to);
  if (!outside) return tl::unexpected(outside.error());
  const auto bore = beside(asked.shaft.length(), asked.running.least_clearance(),
                           asked.running.most_clearance(), asked.good_to);
  if (!bore) return tl::unexpected(bore.error());
  const Bush bush{*outside, *bore};
  if (bush.least_wall() > Length()) return bush;
  return base::fail(base::Code::kValueNotAccepted, asked.hole.typed,
                    fmt::format("a hole more than the bore, {}: there is no wall left",
                                both_ways(bore->high, asked.system)),
                    "--hole");
}

// What pressing does to the bush while it stays elastic, at most.
struct Pressed {
  Length closes;
  quantity::Force force;
  bool yields = false;
};

base::Result<Pressed> pressed_in(const Asked& asked, const Bush& bush) {
  const auto part = handbook::elastic_part(asked.material.material);
  if (!part) return tl::unexpected(part.error());
  const auto boss_material = handbook::find_material(kBossMaterial);
  if (!boss_material) return tl::unexpected(boss_material.error());
  const auto boss = handbook::elastic_part(boss_material->material);
  if (!boss) return tl::unexpected(boss.error());
  const auto friction =
      handbook::press_friction(boss_material->material.group, handbook::PressAssembly::kPressed);
  if (!friction) return tl::unexpected(friction.error());
  handbook::PressFit fit;
  fit.joint = asked.hole.diameter();
  fit.shaft_bore = as_diameter(bush.bore.low);
  fit.hub_outside = as_diameter(asked.hole.length() * kBossInJoints);
  fit.length = asked.length ? asked.length->length() : Length::of(1.0, unit::millimetre);
  fit.least_interference = bush.outside.low - asked.hole.length();
  fit.most_interference = bush.outside.high - asked.hole.length();
  fit.hub = *boss;
  fit.shaft = *part;
  fit.friction_low = friction->low;
  fit.friction_high = friction->high;
  const auto answer = handbook::press_fit(fit);
  if (!answer) return tl::unexpected(answer.error());
  return Pressed{Length::from_base(handbook::bore_closing(answer->most_pressure.base(), fit.joint.base(),
                                                          fit.shaft_bore.base(), part->modulus.base())),
                 answer->pressing_at_most, answer->shaft_yields.value_or(false)};
}

Table sizes_table(const Asked& asked, const Bush& bush) {
  TableWriter writer("the bush", asked.system);
  const auto fit_note = [&](const Fit& fit, std::string_view what) {
    return fmt::format("{} for the {} as measured", fit.name, what);
  };
  writer.limits("outside", bush.outside.low, bush.outside.high, kAsMeasured, fit_note(asked.seat, "hole"));
  writer.limits("bore, in its place", bush.bore.low, bush.bore.high, kAsMeasured,
                fit_note(asked.running, "shaft"));
  writer.range("wall", bush.least_wall(), bush.most_wall(), kWall);
  if (asked.length)
    writer.number("length, in shafts", asked.length->length() / asked.shaft.length(), Kind::kNumber, 2,
                  kUsualLength, "0.8 to 2 is usual");
  writer.range(
      asked.pressed ? "tighter than its hole" : "looser than its hole",
      asked.pressed ? bush.outside.low - asked.hole.length() : asked.hole.length() - bush.outside.high,
      asked.pressed ? bush.outside.high - asked.hole.length() : asked.hole.length() - bush.outside.low,
      asked.seat.sources.front());
  writer.range("looser than the shaft", bush.bore.low - asked.shaft.length(),
               bush.bore.high - asked.shaft.length(), asked.running.sources.front());
  return writer.take();
}

void add_closing(TableWriter& writer, const Asked& asked, const Bush& bush,
                 const base::Result<Pressed>& pressed) {
  if (pressed && !pressed->yields) {
    writer.length("the bore closes by, at most", pressed->closes, kBoreClosing,
                  "less in iron, aluminium or a thin boss");
    return;
  }
  const Length most = bush.outside.high - asked.hole.length();
  writer.length(
      "the bore closes by, at most",
      Length::from_base(handbook::most_bore_closing(most.base(), asked.hole.base, bush.bore.low.base())),
      kMostClosing, pressed ? "it yields" : base::sentence(pressed.error()));
}

void add_pressing(const Asked& asked, const Bush& bush, Answer& answer) {
  TableWriter writer("pressing in", asked.system);
  const auto pressed = pressed_in(asked, bush);
  add_closing(writer, asked, bush, pressed);
  if (pressed && asked.length)
    writer.number("force, at most", pressed->force.base(), Kind::kForce, 0, handbook::kLamePressure,
                  "with the highest friction in print");
  if (!pressed) writer.words("force", "NOT KNOWN", handbook::kLamePressure);
  if (const auto stock = handbook::reaming_stock(as_diameter(bush.bore.low)))
    writer.limits("bore before, to ream after", bush.bore.low - stock->high, bush.bore.low - stock->low,
                  stock->source, "ream or bore it to size in its place");
  answer.tables.push_back(writer.take());
  if (pressed && pressed->yields)
    answer.cautions.emplace_back(
        "At its tightest the bush yields as it is pressed in, and grips less than was meant: keep to the low "
        "end of the outside, or take a lighter fit.");
  answer.cautions.emplace_back(
      "Press it square on a shouldered mandrel, with a lead on its edge; stand out of line, for a bush that "
      "tips flies.");
}

}  // namespace

base::Result<Answer> bush(const Question& question) {
  const auto asked = asked_of(question);
  if (!asked) return tl::unexpected(asked.error());
  const auto bush = bush_of(*asked);
  if (!bush) return tl::unexpected(bush.error());
  Answer answer;
  answer.asked = fmt::format(
      "bush {} for a hole of {} and a shaft of {}", asked->pressed ? "pressed in" : "to slip in",
      both_ways(asked->hole.length(), asked->system), both_ways(asked->shaft.length(), asked->system));
  const Limits& outside = bush->outside;
  answer.says =
      fmt::format("turn the outside to {}", both_ways((outside.low + outside.high) / 2.0, asked->system));
  answer.assumed.emplace_back(
      "hole and shaft as measured, round and without taper: all of the fit's tolerance goes to the bush");
  if (find_entry(question, "good-to") == nullptr)
    answer.assumed.emplace_back("nothing was taken off for what the measuring is good to");
  if (asked->pressed && find_entry(question, "material") == nullptr)
    answer.assumed.push_back("bush of " + to_string(asked->material.material));
  if (!asked->material.assumed.empty()) answer.assumed.push_back(asked->material.assumed);
  answer.tables.push_back(sizes_table(*asked, *bush));
  if (asked->pressed)
    add_pressing(*asked, *bush, answer);
  else
    answer.assumed.emplace_back("bonded or pinned: a bush that slips in is held by something else");
  if (bush->least_wall() < kThinWall)
    answer.cautions.push_back(
        fmt::format("A wall of {} is thin: it may buckle. Bond it, or bore the hole larger.",
                    both_ways(bush->least_wall(), asked->system)));
  return answer;
}

}  // namespace sparewright::answers
