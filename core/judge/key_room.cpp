// Whether a hexagon key gets into the head of a screw and can be turned: its long arm swung over the finished part, by rays.
#include <algorithm>
#include <numbers>

#include <fmt/format.h>

#include "core/handbook/hexagon_keys.hpp"
#include "core/handbook/socket_head_screws.hpp"
#include "core/judge/ground.hpp"
#include "core/shape/material.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using ledger::State;
using quantity::Kind;

// A hexagon comes round to itself every sixth of a turn: that far the key has to go before it is set over.
constexpr int kSwing_deg = 60;
constexpr int kStep_deg = 5;
// A socket is about half as deep as its head is high. ASME B18.3, from memory.
constexpr double kSocketInHead = 0.5;

struct Key {
  handbook::SocketHeadScrew screw;
  handbook::HexagonKey key;
};

std::optional<Key> key_of(const part::Hole& hole) {
  const auto screw = handbook::socket_head_screw(hole.screw->size);
  if (!screw) return std::nullopt;
  const auto key = handbook::hexagon_key(screw->key);
  return key ? std::optional(Key{*screw, *key}) : std::nullopt;
}

// The head's middle, as high as the socket's bottom.
shape::Point socket_bottom(Pen& pen, const part::Feature& feature, const part::Hole& hole, const Key& key) {
  shape::Vector at;
  for (const part::Axis axis : part::axes_in(hole.into))
    part::component(at, axis) = pen.need(part::at_path(feature.name, axis)).value;
  const std::string path = part::feature_path(feature.name);
  const double sunk = hole.counterbore ? pen.need(path + "/counterbore depth").value : 0.0;
  part::component(at, part::axis_of(hole.into)) = pen.need(path + "/starts at").value;
  const double head = key.screw.head_height_max.base();
  return shape::Point{} + at + (head * (1.0 - kSocketInHead) - sunk) * part::outward(hole.into);
}

bool is_free(const shape::Work& work, const shape::Point& from, const shape::Vector& direction,
             double reach_mm) {
  for (const shape::Interval& metal : shape::metal_along(work, {from, direction})) {
    if (metal.exit_mm > 0.0 && metal.enter_mm < reach_mm) return false;
  }
  return true;
}

// The widest sweep of the long arm with nothing in its way, in degrees; all round is 360.
int widest_swing_deg(const shape::Work& work, const shape::Point& bottom, part::Face into, const Key& key) {
  const auto axes = part::axes_in(into);
  shape::Vector one;
  shape::Vector other;
  part::component(one, axes[0]) = 1.0;
  part::component(other, axes[1]) = 1.0;
  const double top = key.key.short_arm.base();
  const double under = top - key.key.across.base();
  constexpr int kSteps = 360 / kStep_deg;
  std::array<bool, kSteps> free{};
  for (int step = 0; step < kSteps; ++step) {
    const double angle = step * kStep_deg * std::numbers::pi / 180.0;
    const shape::Vector direction = std::cos(angle) * one + std::sin(angle) * other;
    free.at(static_cast<std::size_t>(step)) =
        is_free(work, bottom + under * part::outward(into), direction, key.key.long_arm.base()) &&
        is_free(work, bottom + top * part::outward(into), direction, key.key.long_arm.base());
  }
  int longest = 0;
  int run = 0;
  for (int step = 0; step < 2 * kSteps; ++step) {  // twice round, for a run over the start
    run = free.at(static_cast<std::size_t>(step % kSteps)) ? run + 1 : 0;
    longest = std::max(longest, std::min(run, kSteps));
  }
  return longest == kSteps ? 360 : std::max(0, longest - 1) * kStep_deg;
}

void judge_key(Pen& pen, const part::Feature& feature, const part::Hole& hole, const Key& key) {
  const auto& ground = pen.need_value<Ground>(kGround);
  const int swing =
      widest_swing_deg(ground.recipe->work(), socket_bottom(pen, feature, hole, key), hole.into, key);
  constexpr double kDegree_rad = std::numbers::pi / 180.0;
  const auto angle = [&](std::string_view local, int degrees, std::string source) -> const Figure& {
    ledger::Root root;
    root.kind = Kind::kAngle;
    root.value = degrees * kDegree_rad;
    root.origin = Origin::kStandard;
    root.source = std::move(source);
    return pen.root(local, root);
  };
  const Figure& found =
      angle("swing", swing,
            fmt::format("by rays every {} degrees at both sides of the key's long arm, the part at "
                        "nominal size",
                        kStep_deg));
  const Figure& asked = angle("swing asked", kSwing_deg, "a hexagon comes round every 60 degrees");
  const bool turns = swing >= kSwing_deg;
  pen.state(
      {.check = "key can turn",
       .subject = feature.name,
       .state = turns ? State::kOk : State::kClose,
       .figure = found.name,
       .low = asked.name,
       .reason = fmt::format("a bent {} key swings over {} degrees of the part and needs {}",
                             key.screw.key_name, swing, kSwing_deg),
       .source = handbook::cite(key.key.source),
       .todo =
           turns ? "" : "a straight key, a T-handle or a bit from above; or leave more room round the head"});
}

}  // namespace

void add_key_room_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr || !hole->screw || hole->through || hole->lean || hole->around_bar) continue;
    const auto key = key_of(*hole);
    if (!key) continue;
    stages.push_back(check_stage(subject, "key room", feature.name, [subject, feature, key = *key](Pen& pen) {
      judge_key(pen, feature, std::get<part::Hole>(feature.shape), key);
    }));
  }
}

}  // namespace sparewright::judge
