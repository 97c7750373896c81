#include "core/shape/recipe.hpp"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "core/shape/profile.hpp"

namespace sparewright::shape {
namespace {

using base::Code;
using base::fail;
using base::Result;

double past(Open open, Open end) {
  return has(open, end) ? kOverrun_mm : 0.0;
}

void overrun(HalfSpace& /*endless*/, Open /*open*/) {}

void overrun(Box& b, Open open) {
  const Vector low{past(open, Open::kXLow), past(open, Open::kYLow), past(open, Open::kZLow)};
  const Vector high{past(open, Open::kXHigh), past(open, Open::kYHigh), past(open, Open::kZHigh)};
  b.frame = b.frame.shifted(-low);
  b.size = low + b.size + high;
}

void overrun(Prism& p, Open open) {
  p.frame = p.frame.shifted({0.0, 0.0, -past(open, Open::kStart)});
  p.height_mm += past(open, Open::kStart) + past(open, Open::kEnd);
}

void overrun(ProfiledBody& p, Open open) {
  p.frame = p.frame.shifted({0.0, 0.0, -past(open, Open::kStart)});
  p.height_mm += past(open, Open::kStart) + past(open, Open::kEnd);
}

void overrun(TurnedBody& /*its contour has it*/, Open /*open*/) {}

void overrun(Cylinder& c, Open open) {
  c.frame = c.frame.shifted({0.0, 0.0, -past(open, Open::kStart)});
  c.height_mm += past(open, Open::kStart) + past(open, Open::kEnd);
}

// How far a cone can go on past an end where its radius is r and grows by `growth` a millimetre outwards.
double up_to_point(double wanted_mm, double r, double growth) {
  return growth < 0.0 ? std::min(wanted_mm, -r / growth) : wanted_mm;
}

void overrun(Cone& c, Open open) {
  const double slope = (c.end_radius_mm - c.start_radius_mm) / c.height_mm;
  const double before = up_to_point(past(open, Open::kStart), c.start_radius_mm, -slope);
  const double after = up_to_point(past(open, Open::kEnd), c.end_radius_mm, slope);
  c.frame = c.frame.shifted({0.0, 0.0, -before});
  c.start_radius_mm -= slope * before;
  c.end_radius_mm += slope * after;
  c.height_mm += before + after;
  for (double* radius : {&c.start_radius_mm, &c.end_radius_mm}) {
    if (*radius < kShortestSide_mm) *radius = 0.0;
  }
}

void overrun(DrilledHole& h, Open open) {
  h.frame = h.frame.shifted({0.0, 0.0, -past(open, Open::kStart)});
  h.depth_mm += past(open, Open::kStart);
}

base::Fingerprint of_blank(const Blank& blank) {
  base::Hasher hasher;
  hasher.add("blank").add(blank.name);
  add_to(hasher, blank.body);
  return hasher.done();
}

base::Fingerprint of_cut(const base::Fingerprint& before, const Cut& cut) {
  base::Hasher hasher;
  hasher.add(before).add(cut.feature).add(static_cast<std::uint64_t>(cut.open));
  add_to(hasher, cut.nominal);
  return hasher.done();
}

}  // namespace

Primitive with_overrun(const Primitive& nominal, Open open) {
  Primitive body = nominal;
  std::visit([&](auto& p) { overrun(p, open); }, body);
  return body;
}

Result<Recipe> Recipe::make(const Blank& blank, std::span<const Cutter> cutters) {
  const bool is_stock = std::visit(
      [](const auto& b) {
        using Body = std::decay_t<decltype(b)>;
        return std::is_same_v<Body, Box> || std::is_same_v<Body, Prism> || std::is_same_v<Body, Cylinder> ||
               std::is_same_v<Body, Cone>;
      },
      blank.body);
  if (!is_stock) {
    return fail(Code::kValueNotAccepted, "a cutter's shape", "a box, a prism, a cylinder or a cone",
                blank.name);
  }
  if (cutters.size() > kMostCutters) {
    return fail(Code::kTooMany, fmt::format("{} cutters", cutters.size()),
                fmt::format("at most {}", kMostCutters), blank.name);
  }
  Recipe recipe;
  auto body = checked(snapped(blank.body), blank.name);
  if (!body) return tl::unexpected(body.error());
  recipe.blank_ = {blank.name, std::move(*body)};
  recipe.fingerprints_.push_back(of_blank(recipe.blank_));
  for (const Cutter& cutter : cutters) {
    auto nominal = checked(snapped(cutter.nominal), cutter.feature);
    if (!nominal) return tl::unexpected(nominal.error());
    Primitive with = with_overrun(*nominal, cutter.open);
    recipe.cuts_.push_back({cutter.feature, std::move(*nominal), cutter.open, std::move(with)});
    recipe.fingerprints_.push_back(of_cut(recipe.fingerprints_.back(), recipe.cuts_.back()));
  }
  return recipe;
}

Work Recipe::work_after(std::size_t count) const {
  return {blank_.body, std::span<const Cut>(cuts_).first(std::min(count, cuts_.size()))};
}

Recipe Recipe::first(std::size_t count) const {
  Recipe prefix;
  const auto kept = static_cast<std::ptrdiff_t>(std::min(count, cuts_.size()));
  prefix.blank_ = blank_;
  prefix.cuts_.assign(cuts_.begin(), cuts_.begin() + kept);
  prefix.fingerprints_.assign(fingerprints_.begin(), fingerprints_.begin() + kept + 1);
  return prefix;
}

}  // namespace sparewright::shape
