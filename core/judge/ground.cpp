#include "core/judge/ground.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace sparewright::judge {
namespace {

using ledger::Pen;

void write_ground(Pen& pen, const Subject& subject) {
  auto recipe = std::make_shared<const shape::Recipe>(pen.need_value<shape::Recipe>(part::kRecipe));
  double most_out_mm = 0.0;
  for (const part::Feature& feature : subject.route.part.features) {
    if (const auto* hole = std::get_if<part::Hole>(&feature.shape))
      most_out_mm =
          std::max(most_out_mm, thinner_by_mm(pen, {feature.name, *hole}, std::nullopt, std::nullopt));
  }
  const base::Fingerprint print = base::Hasher().add(recipe->fingerprint()).add(most_out_mm).done();
  const shape::NearCuts near(recipe->work());
  pen.publish("all", Ground{std::move(recipe), near, most_out_mm}, print);
}

}  // namespace

const shape::Wall& Ground::wall_of_pair(std::size_t one, std::size_t other, double limit_mm) const {
  const auto [lesser, greater] = std::minmax(one, other);
  const std::tuple key{lesser, greater, limit_mm};
  const auto known = walls->find(key);
  if (known != walls->end()) return known->second;
  return walls->emplace(key, near.wall_between(lesser, greater, limit_mm)).first->second;
}

// In the order part/hole_cutters.cpp makes them.
std::string_view local_of_cut(const part::Hole& hole, std::size_t place) {
  std::vector<std::string_view> cuts{"diameter"};
  if (hole.counterbore) cuts.emplace_back("counterbore diameter");
  if (hole.countersink) cuts.emplace_back("countersink diameter");
  if (hole.beyond) cuts.emplace_back("tap drill");
  return place < cuts.size() ? cuts[place] : cuts.front();
}

std::string HoleEnd::size() const {
  return fmt::format("{}/{}", part::feature_path(name), cut);
}

double HoleEnd::grows_mm(Pen& pen, const std::optional<shape::Vector>& direction) const {
  const double along = direction ? std::abs(shape::dot(*direction, part::outward(hole.into))) : 0.0;
  const double sideways = std::sqrt(std::max(0.0, 1.0 - along * along));
  return sideways * (pen.need(size() + "/most").value - pen.need(size()).value) / 2.0;
}

double HoleEnd::room_mm(Pen& pen, part::Axis axis) const {
  if (!hole.at.contains(axis)) return 0.0;
  const std::string place = fmt::format("{}/{}", part::feature_path(name), part::name_of(axis));
  return (pen.need(place + "/most").value - pen.need(place + "/least").value) / 2.0;
}

bool HoleEnd::is_placed_from(const std::string& other, part::Axis axis) const {
  const auto position = hole.at.find(axis);
  return position != hole.at.end() && position->second.from == std::variant<part::Face, std::string>(other);
}

double thinner_by_mm(Pen& pen, const HoleEnd& end, const std::optional<HoleEnd>& other,
                     const std::optional<shape::Vector>& direction) {
  double thinner = end.grows_mm(pen, direction) + (other ? other->grows_mm(pen, direction) : 0.0);
  for (const part::Axis axis : part::kAxes) {
    const double lean = direction ? std::abs(part::component(*direction, axis)) : 1.0;
    const bool only_other = other && other->is_placed_from(end.name, axis);
    const bool only_end = other && end.is_placed_from(other->name, axis);
    if (!only_other) thinner += lean * end.room_mm(pen, axis);
    if (other && !only_end) thinner += lean * other->room_mm(pen, axis);
  }
  return thinner;
}

void add_ground(const Shared& subject, Stages& stages) {
  ledger::Stage stage =
      check_stage(subject, "ground", "", [subject](Pen& pen) { write_ground(pen, *subject); });
  stage.name = "check/ground";
  stages.push_back(std::move(stage));
}

}  // namespace sparewright::judge
