// Whether the part has a hand, and what turning it over does.
#include "core/judge/hand.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include <fmt/format.h>

#include "core/judge/checks.hpp"
#include "core/shape/likeness.hpp"
#include "core/shape/metal_bounds.hpp"

namespace sparewright::judge {
namespace {

using ledger::Pen;
using ledger::State;

constexpr const char* kSource = "the exact shapes at nominal size against their images, by rays";

std::vector<shape::Image> images_of(const Subject& subject, const shape::Work& work) {
  return shape::images_of(shape::metal_bounds(work), alike_mm(subject));
}

void judge_hand(Pen& pen, const Subject& subject) {
  const shape::Work work = pen.need_value<shape::Recipe>(part::kRecipe).work();
  if (work.cuts.empty()) return;
  const bool own_image = is_its_own_mirror_image(subject, work);
  ledger::Verdict verdict;
  verdict.check = "left or right";
  verdict.subject = "part";
  verdict.source = kSource;
  if (own_image) {
    verdict.state = State::kOk;
    verdict.reason = "it is its own mirror image: there is no left and right of it";
  } else if (subject.hand.starts_with("not")) {
    verdict.state = State::kClose;
    verdict.reason = fmt::format("the job says '{}', and its mirror image is another part", subject.hand);
    verdict.todo = "look at the places for a slip, or say which of the two it is";
  } else if (!subject.hand.empty()) {
    verdict.state = State::kOk;
    verdict.reason = fmt::format("its mirror image is another part; this one is: {}", subject.hand);
  } else {
    verdict.state = State::kNotKnown;
    verdict.reason = "its mirror image is another part, and the job does not say which of the two is wanted";
    verdict.todo = "say it under [job]: hand = \"right, seen from ...\"; or hand = \"as drawn\"";
    verdict.missing = {"job.hand"};
  }
  pen.state(std::move(verdict));
}

// --- turned over ----------------------------------------------------------------------------------------------------

bool is_half_turn(const shape::Image& image) {
  const double trace = image.axes[0].x + image.axes[1].y + image.axes[2].z;
  const bool along_axes =
      std::abs(image.axes[0].x) + std::abs(image.axes[1].y) + std::abs(image.axes[2].z) > 2.5;
  return !image.mirrors() && along_axes && trace < 0.0;
}

std::string axis_words(const shape::Image& image) {
  if (image.axes[0].x > 0.0) return "over sideways";
  return image.axes[1].y > 0.0 ? "over end for end" : "half round, the same side up";
}

// What stands elsewhere after the turn, and how far from where it, or one like it, stood.
struct Moved {
  std::string feature;
  double by_mm = 0.0;
};

Moved farthest_moved(const shape::Work& work, const shape::Image& image) {
  Moved most;
  for (const shape::Cut& cut : work.cuts) {
    const shape::Bounds before = shape::common(shape::bounds(cut.body), shape::bounds(work.blank));
    if (before.empty()) continue;
    const shape::Point there = image.of(before.middle());
    double nearest = std::numeric_limits<double>::infinity();
    for (const shape::Cut& other : work.cuts) {
      const bool alike = other.body.index() == cut.body.index() &&
                         std::abs(shape::volume_mm3(other.body) - shape::volume_mm3(cut.body)) <
                             shape::kAlikeAtLeast_mm * (1.0 + shape::volume_mm3(cut.body));
      const shape::Bounds its = shape::common(shape::bounds(other.body), shape::bounds(work.blank));
      if (alike && !its.empty()) nearest = std::min(nearest, shape::distance_mm(there, its.middle()));
    }
    if (nearest > most.by_mm) most = {cut.feature, nearest};
  }
  return most;
}

void judge_turned_over(Pen& pen, const Subject& subject) {
  const shape::Work work = pen.need_value<shape::Recipe>(part::kRecipe).work();
  if (work.cuts.empty()) return;
  ledger::Verdict verdict;
  verdict.check = "may be turned over";
  verdict.subject = "part";
  verdict.source = kSource;
  std::optional<Moved> least;
  std::string way;
  for (const shape::Image& image : images_of(subject, work)) {
    if (!is_half_turn(image)) continue;
    const auto unlike = shape::difference(work, image, alike_mm(subject));
    if (!unlike) {
      verdict.state = State::kOk;
      verdict.reason = fmt::format("turned {} it is the same part", axis_words(image));
      return pen.state(std::move(verdict));
    }
    Moved moved = farthest_moved(work, image);
    if (moved.feature.empty() && *unlike < work.cuts.size()) moved.feature = work.cuts[*unlike].feature;
    if (least && least->by_mm <= moved.by_mm) continue;
    least = moved;
    way = axis_words(image);
  }
  if (!least) return;
  const route::Printing print(subject.route.system);
  verdict.state = State::kClose;
  verdict.reason = least->by_mm > shape::kAlikeAtLeast_mm
                       ? fmt::format("turned {}, {} stands {} from where it was", way, least->feature,
                                     print.plain(least->by_mm))
                       : fmt::format("turned {}, {} is not the same", way, least->feature);
  verdict.todo = "see that what it works with allows that, or say turn_over = false";
  pen.state(std::move(verdict));
}

}  // namespace

double alike_mm(const Subject& subject) {
  const auto& band = subject.route.part.surroundings.general.three_places;
  return std::max({shape::kAlikeAtLeast_mm, band.upper, -band.lower});
}

bool is_its_own_mirror_image(const Subject& subject, const shape::Work& work) {
  for (const shape::Image& image : images_of(subject, work)) {
    if (image.mirrors() && !shape::difference(work, image, alike_mm(subject))) return true;
  }
  return false;
}

void add_hand_checks(const Shared& subject, Stages& stages) {
  stages.push_back(check_stage(subject, "hand", "part", [subject](Pen& pen) { judge_hand(pen, *subject); }));
  if (subject->turn_over.value_or(false))
    stages.push_back(
        check_stage(subject, "turn over", "part", [subject](Pen& pen) { judge_turned_over(pen, *subject); }));
}

}  // namespace sparewright::judge
