// Whether a feature cuts anything: a hole off the part is a wrong number.
#include <algorithm>

#include <fmt/format.h>

#include "core/judge/checks.hpp"
#include "core/shape/cut_faults.hpp"

namespace sparewright::judge {
namespace {

using ledger::Pen;

void judge_bite(Pen& pen, const part::Feature& feature) {
  const auto& recipe = pen.need_value<shape::Recipe>(part::kRecipe);
  for (std::size_t cut = 0; cut < recipe.cuts().size(); ++cut) {
    if (recipe.cuts()[cut].feature != feature.name) continue;
    const shape::Bite bite = shape::bite_of(recipe.work(), cut);
    if (bite.taken == shape::Taken::kMetal) continue;
    const bool outside = bite.taken == shape::Taken::kOutsideBlank;
    pen.state({.check = "it cuts metal",
               .subject = feature.name,
               .state = ledger::State::kNo,
               .reason = outside ? "it lies outside the blank" : "what it would cut is cut already",
               .source = "the exact shapes",
               .todo = outside
                           ? "look at its place: a slip in a number, a unit, or the side it is measured from"
                           : "look at its size and place, or leave it out"});
    return;
  }
}

// Its end is faced when it is off: the flat there takes all of it in the finished part, flats being cut first.
bool is_faced_after(const part::Part& part, const part::Feature& feature) {
  const auto* piece = std::get_if<part::Formed>(&feature.shape);
  if (piece == nullptr || piece->form != part::Form::kChuckingPiece) return false;
  return std::any_of(part.features.begin(), part.features.end(), [&](const part::Feature& other) {
    const auto* flat = std::get_if<part::Flat>(&other.shape);
    return flat != nullptr && flat->side == piece->side && !flat->region;
  });
}

}  // namespace

void add_bite_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    if (is_faced_after(subject->route.part, feature)) continue;
    stages.push_back(
        check_stage(subject, "bite", feature.name, [feature](Pen& pen) { judge_bite(pen, feature); }));
  }
}

}  // namespace sparewright::judge
