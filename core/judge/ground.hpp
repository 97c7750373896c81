// What the checks of walls look at, worked out once for all of them. Used inside this room only.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <tuple>

#include "core/judge/checks.hpp"
#include "core/shape/near_cuts.hpp"

namespace sparewright::judge {

// A hole at one end of a wall.
struct HoleEnd {
  const std::string& name;
  const part::Hole& hole;
  std::string_view cut = "diameter";  // which of its cuts: local_of_cut()

  [[nodiscard]] std::string size() const;  // its diameter's figure
  // How far its surface can come out by its size, in a direction (none: any). mm
  [[nodiscard]] double grows_mm(ledger::Pen& pen, const std::optional<shape::Vector>& direction) const;
  // How far its middle can lie from its place along an axis. mm
  [[nodiscard]] double room_mm(ledger::Pen& pen, part::Axis axis) const;
  [[nodiscard]] bool is_placed_from(const std::string& other, part::Axis axis) const;
};

// Which diameter the cut of a hole has that comes at that place among its own: "diameter", "counterbore diameter",
// "countersink diameter", "tap drill".
[[nodiscard]] std::string_view local_of_cut(const part::Hole& hole, std::size_t place);

// How much thinner than at nominal a wall can turn out: both holes at their largest, and out of place towards each other
// as far as their tolerances let them. Where one is placed from the other, its own tolerance is all there is.
// direction: from the one to the other, length 1; none: any.
[[nodiscard]] double thinner_by_mm(ledger::Pen& pen, const HoleEnd& end, const std::optional<HoleEnd>& other,
                                   const std::optional<shape::Vector>& direction);

// The finished part and where its cuts are.
struct Ground {
  std::shared_ptr<const shape::Recipe> recipe;
  shape::NearCuts near;
  double most_out_mm = 0.0;  // no hole's surface comes further out of its place, by size and place together
  // Those worked out so far, by pair and limit.
  using Walls = std::map<std::tuple<std::size_t, std::size_t, double>, shape::Wall>;
  std::shared_ptr<Walls> walls = std::make_shared<Walls>();

  // As near.wall_between() from the lesser cut to the greater; each pair and limit is worked out once.
  [[nodiscard]] const shape::Wall& wall_of_pair(std::size_t one, std::size_t other, double limit_mm) const;
};
inline constexpr std::string_view kGround = "check/ground/all";
void add_ground(const Shared& subject, Stages& stages);

}  // namespace sparewright::judge
