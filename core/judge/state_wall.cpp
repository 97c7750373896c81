// Least metal beside a cut in the states of the work before the finished one: a wall that a later cut takes away is thin
// while it stands all the same.
#include <algorithm>
#include <limits>
#include <optional>

#include <fmt/format.h>

#include "core/judge/ground.hpp"
#include "core/judge/least_wall.hpp"
#include "core/shape/wall.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;

// Two that touch leave none in either state.
bool is_wall(const shape::Wall& wall) {
  return wall.kind == shape::WallKind::kMetal;
}

// A wall that is too thin in one state of the work.
struct Thin {
  double least_mm = std::numeric_limits<double>::infinity();
  std::string towards;
};

// Where the cuts of the finished part that one of the work became are, in its recipe: the n-th of the same feature.
std::optional<std::size_t> same_cut(const shape::Work& work, std::size_t cut, const shape::Work& finished) {
  const std::string& feature = work.cuts[cut].feature;
  const auto before = work.cuts.first(cut);
  auto nth = std::count_if(before.begin(), before.end(),
                           [&](const shape::Cut& earlier) { return earlier.feature == feature; });
  for (std::size_t i = 0; i < finished.cuts.size(); ++i) {
    if (finished.cuts[i].feature == feature && nth-- == 0) return i;
  }
  return std::nullopt;
}

class Look {
 public:
  Look(const shape::Work& work, const Ground& finished, double asked_mm)
      : work_(work), near_(work), finished_(finished), asked_mm_(asked_mm) {}

  // What is thin beside a cut as it is made and is not so on the finished part: there other checks say it.
  Thin beside(std::size_t cut) const {
    Thin thin;
    const auto in_finished = same_cut(work_, cut, finished_.recipe->work());
    if (!in_finished) return thin;
    outside(cut, *in_finished, thin);
    for (const auto& [other, gap_mm] : near_.within(cut, asked_mm_)) {
      const shape::Wall wall = near_.wall_between(cut, other, asked_mm_);
      if (!takes(wall, thin)) continue;
      const auto other_in_finished = same_cut(work_, other, finished_.recipe->work());
      if (other_in_finished &&
          is_wall(finished_.near.wall_between(*in_finished, *other_in_finished, asked_mm_)))
        continue;
      thin = {wall.least_mm, work_.cuts[other].feature};
    }
    return thin;
  }

 private:
  [[nodiscard]] bool takes(const shape::Wall& wall, const Thin& thin) const {
    return is_wall(wall) && wall.least_mm < std::min(asked_mm_, thin.least_mm);
  }

  void outside(std::size_t cut, std::size_t in_finished, Thin& thin) const {
    const auto walls = near_.walls_to_outside(cut, asked_mm_);
    if (std::none_of(walls.begin(), walls.end(), [&](const auto& w) { return takes(w.wall, thin); })) return;
    const auto later = finished_.near.walls_to_outside(in_finished, asked_mm_);
    for (std::size_t i = 0; i < walls.size(); ++i) {
      if (!takes(walls[i].wall, thin) || is_wall(later[i].wall)) continue;
      const auto face = part::find_blank_face(walls[i].face);
      thin = {walls[i].wall.least_mm, face ? std::string(part::name_of(*face)) : "the outside"};
    }
  }

  const shape::Work work_;
  const shape::NearCuts near_;
  const Ground& finished_;
  double asked_mm_;
};

void judge_state(Pen& pen, const Subject& subject, const route::Setup& setup, const std::string& feature) {
  const auto path = route::recipe_path_after(subject.route.plan, setup.op);
  if (!path) return;
  const auto& recipe = pen.need_value<shape::Recipe>(*path);
  const auto& finished = pen.need_value<Ground>(kGround);
  const Figure& allowed = least_wall_allowed(pen, subject);
  Thin thin;
  for (std::size_t cut = 0; cut < recipe.cuts().size(); ++cut) {
    if (recipe.cuts()[cut].feature != feature) continue;
    const Thin here = Look(recipe.work_after(cut + 1), finished, allowed.value).beside(cut);
    if (here.least_mm < thin.least_mm) thin = here;
  }
  if (thin.towards.empty()) return;
  const route::Printing print(subject.route.system);
  pen.state({.check = "least wall while it is made",
             .subject = feature,
             .state = ledger::State::kClose,
             .figure = limit(pen, "least wall", thin.least_mm, ledger::Origin::kStandard,
                             "by rays through the exact shapes at nominal size")
                           .name,
             .low = allowed.name,
             .reason = fmt::format(
                 "in {} only {} of metal stands between it and {} until a later cut takes that away",
                 route::setup_path(setup), print.plain(thin.least_mm), thin.towards),
             .source = least_wall_source(subject),
             .todo = fmt::format("make what cuts towards {} first, or take light cuts", thin.towards)});
}

}  // namespace

void add_state_wall_checks(const Shared& subject, Stages& stages) {
  for (const Made& made : all_made(*subject)) {
    stages.push_back(check_stage(subject, "state wall", made.feature.name,
                                 [subject, &setup = made.setup, feature = made.feature.name](Pen& pen) {
                                   judge_state(pen, *subject, setup, feature);
                                 }));
  }
}

}  // namespace sparewright::judge
