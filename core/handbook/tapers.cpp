#include "core/handbook/tapers.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/handbook/taper_formulas.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr Taper kTapers[] = {
#include "generated/core/handbook/tapers.inc"
};
constexpr TaperPin kTaperPins[] = {
#include "generated/core/handbook/taper_pins.inc"
};

constexpr double kPinTaper = 1.0 / 48.0;  // 1/4 in per foot; taper_pins.csv names the sources

// How families are written, longest first. Source: common practice.
constexpr std::array<std::pair<std::string_view, TaperFamily>, 11> kFamilyWords{
    {{"brown & sharpe", TaperFamily::kBrownAndSharpe},
     {"brown and sharpe", TaperFamily::kBrownAndSharpe},
     {"morse taper", TaperFamily::kMorse},
     {"jacobs taper", TaperFamily::kJacobs},
     {"jacobs", TaperFamily::kJacobs},
     {"morse", TaperFamily::kMorse},
     {"b&s", TaperFamily::kBrownAndSharpe},
     {"mt", TaperFamily::kMorse},
     {"mk", TaperFamily::kMorse},
     {"jt", TaperFamily::kJacobs},
     {"r", TaperFamily::kR8}}};

std::string_view without_number_sign(std::string_view text) {
  text = quantity::trimmed(text);
  for (const std::string_view sign : {"no.", "no ", "#", "-"}) {
    if (text.starts_with(sign)) text.remove_prefix(sign.size());
    text = quantity::trimmed(text);
  }
  return text;
}

const Taper* taper_named(TaperFamily family, std::string_view number) {
  const auto* found = std::find_if(std::begin(kTapers), std::end(kTapers), [&](const Taper& taper) {
    return taper.family == family && taper.number == number;
  });
  return found == std::end(kTapers) ? nullptr : found;
}

base::Result<void> positive(std::string_view name, double mm) {
  if (mm > 0.0) return {};
  return base::fail(base::Code::kSizeNotPositive, fmt::format("{} mm", mm), "more than zero", name);
}

tl::unexpected<base::Failure> cannot_check(const std::string& found, std::string_view accepted) {
  return base::fail(base::Code::kOutsideDomain, found, accepted, "a check of a taper");
}

base::Result<void> with_ends(const Taper& taper) {
  if (taper.large_end && taper.small_end && taper.length) return {};
  return cannot_check(to_string(taper), "a taper whose ends are in the table: Morse, Jacobs, Brown & Sharpe");
}

// Where a ball touches the socket, or why not.
base::Result<Length> ball_in_socket(const Taper& taper, Diameter ball) {
  if (auto size = positive("the ball", ball.base()); !size) return tl::unexpected(size.error());
  const double large_end = taper.large_end->base();
  const double touches = ball_contact_depth(large_end, taper.ratio(), ball.base());
  if (touches < 0.0 || touches > taper.length->base()) {
    return cannot_check(fmt::format("a ball of {:.4f} in touching {:.4f} in below the face",
                                    ball.in(unit::inch), touches / 25.4),
                        fmt::format("a ball between {:.4f} and {:.4f} in", taper.small_end->in(unit::inch),
                                    taper.large_end->in(unit::inch)));
  }
  return Length::from_base(ball_depth(large_end, taper.ratio(), ball.base()));
}

MeasuredTaper measured(double ratio, double end_mm) {
  return {Length::of(1.0, unit::foot) * ratio, Angle::from_base(half_angle_rad(ratio)),
          Diameter::from_base(end_mm)};
}

}  // namespace

std::string_view name_of(TaperFamily family) {
  constexpr std::array<std::string_view, 4> kNames{"Morse", "Jacobs", "Brown & Sharpe", "R8"};
  return kNames.at(static_cast<std::size_t>(family));
}

Angle Taper::included_angle() const {
  return Angle::from_base(2.0 * half_angle_rad(ratio()));
}

std::span<const Taper> tapers() {
  return kTapers;
}

std::string to_string(const Taper& taper) {
  if (taper.family == TaperFamily::kR8) return std::string(name_of(taper.family));
  return std::string(name_of(taper.family)) + " " + std::string(taper.number);
}

base::Result<Taper> find_taper(std::string_view text) {
  std::string typed = folded(text);
  if (typed == "r8") typed = "r R8";                     // family and number as the table has them
  if (typed.ends_with("mt") || typed.ends_with("jt")) {  // 2MT
    typed = typed.substr(typed.size() - 2) + typed.substr(0, typed.size() - 2);
  }
  for (const auto& [word, family] : kFamilyWords) {
    if (!typed.starts_with(word)) continue;
    const std::string_view number = without_number_sign(std::string_view(typed).substr(word.size()));
    if (const Taper* taper = taper_named(family, number)) return *taper;
  }
  return unknown(text, "taper", names_of(kTapers, [](const Taper& one) { return to_string(one); }));
}

Diameter TaperPin::small_end(Length length) const {
  return quantity::as_diameter(quantity::across(large_end) - length * kPinTaper);
}

std::span<const TaperPin> taper_pins() {
  return kTaperPins;
}

base::Result<TaperPin> find_taper_pin(std::string_view text) {
  const std::string typed = folded(text);
  const std::string_view number = without_number_sign(typed);
  for (const TaperPin& pin : kTaperPins) {
    if (pin.number == number) return pin;
  }
  return unknown(text, "taper pin", names_of(kTaperPins, [](const TaperPin& one) { return one.number; }));
}

base::Result<PlugCheck> check_plug(const Taper& taper, Diameter roller, Length blocks) {
  if (auto ends = with_ends(taper); !ends) return tl::unexpected(ends.error());
  for (const auto& [name, mm] :
       {std::pair("the roller", roller.base()), std::pair("the blocks", blocks.base())}) {
    if (auto size = positive(name, mm); !size) return tl::unexpected(size.error());
  }
  const double small_end = taper.small_end->base();
  const double radius = roller.base() / 2.0;
  const double touches = blocks.base() + radius + radius * std::sin(half_angle_rad(taper.ratio()));
  if (touches > taper.length->base()) {
    return cannot_check(
        fmt::format("a roller touching {:.4f} in up", touches / 25.4),
        fmt::format("lower blocks: the plug is {:.4f} in long", taper.length->in(unit::inch)));
  }
  const auto over = [&](double height) {
    return Length::from_base(over_rollers(small_end, taper.ratio(), roller.base(), height));
  };
  return PlugCheck{over(radius), over(radius + blocks.base()), kTaperGauging};
}

base::Result<SocketCheck> check_socket(const Taper& taper, Diameter large_ball, Diameter small_ball) {
  if (auto ends = with_ends(taper); !ends) return tl::unexpected(ends.error());
  const auto large = ball_in_socket(taper, large_ball);
  if (!large) return tl::unexpected(large.error());
  const auto small = ball_in_socket(taper, small_ball);
  if (!small) return tl::unexpected(small.error());
  if (large_ball <= small_ball) {
    return cannot_check("two balls of which the first is not the larger", "the large ball first");
  }
  return SocketCheck{*large, *small, kTaperGauging};
}

base::Result<MeasuredTaper> measured_plug(Length on_plate, Length on_blocks, Length blocks, Diameter roller) {
  for (const auto& [name, mm] :
       {std::pair("the measurement on the plate", on_plate.base()), std::pair("the blocks", blocks.base()),
        std::pair("the roller", roller.base()),
        std::pair("the growth from plate to blocks", (on_blocks - on_plate).base())}) {
    if (auto size = positive(name, mm); !size) return tl::unexpected(size.error());
  }
  const double ratio = taper_between(on_blocks.base(), on_plate.base(), blocks.base());
  const double end = small_end_from_rollers(on_plate.base(), ratio, roller.base(), roller.base() / 2.0);
  if (auto size = positive("the small end", end); !size) return tl::unexpected(size.error());
  return measured(ratio, end);
}

base::Result<MeasuredTaper> measured_socket(Diameter large_ball, Length large_depth, Diameter small_ball,
                                            Length small_depth) {
  for (const Diameter ball : {large_ball, small_ball}) {
    if (auto size = positive("the ball", ball.base()); !size) return tl::unexpected(size.error());
  }
  const double apart = (small_depth - large_depth).base() - (large_ball.base() - small_ball.base()) / 2.0;
  if (large_ball <= small_ball || apart * 2.0 <= large_ball.base() - small_ball.base()) {
    return cannot_check(fmt::format("balls of {} and {} mm with centres {} mm apart", large_ball.base(),
                                    small_ball.base(), apart),
                        "the large ball first, and the small one deeper by more than half their difference");
  }
  const double ratio = taper_of_two_discs(large_ball.base(), small_ball.base(), apart);
  return measured(ratio, large_end_from_ball(large_depth.base(), ratio, large_ball.base()));
}

std::vector<NearTaper> nearest_tapers(Length taper_per_foot, std::optional<Diameter> large_end,
                                      std::size_t most) {
  std::vector<std::pair<double, NearTaper>> near;
  const Length usual = Length::of(2.0, unit::inch);  // for the one without a length
  for (const Taper& taper : kTapers) {
    NearTaper one{taper, taper_per_foot - taper.taper_per_foot, std::nullopt};
    const double share = taper.length.value_or(usual) / Length::of(1.0, unit::foot);
    double off_mm = std::abs(one.taper_off.base()) * share;
    if (large_end && taper.large_end) {
      one.large_end_off = *large_end - *taper.large_end;
      off_mm += std::abs(one.large_end_off->base());
    }
    near.emplace_back(off_mm, one);
  }
  std::stable_sort(near.begin(), near.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<NearTaper> out;
  for (std::size_t i = 0; i < std::min(most, near.size()); ++i)
    out.push_back(near[i].second);
  return out;
}

}  // namespace sparewright::handbook
