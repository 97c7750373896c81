#include "core/survey/touched_turns.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

#include "core/survey/explanations.hpp"
#include "core/survey/touch_odds.hpp"

namespace sparewright::survey {
namespace {

std::vector<std::size_t> furthest_off(const OrthogonalFit& fit) {
  std::vector<std::size_t> order(fit.off.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return std::abs(fit.off[a]) > std::abs(fit.off[b]); });
  order.resize(std::min(order.size(), kMostTouchesTried));
  std::sort(order.begin(), order.end());
  return order;
}

void try_turn(const FormTouched& form, TurnInTouch tried, std::vector<TurnInTouch>& found) {
  auto touches = form.touches;
  touches[tried.touch][tried.axis] += tried.by;
  auto then = touched_numbers(form.form, form.side, touches, form.tip);
  if (!then) return;
  const TouchOdds odds = touch_odds(then->fit, form.doubts);
  if (!odds.agree(then->fit.spare())) return;
  tried.weight = -tried.turn.rank * std::log(kRarer) - odds.total / 2.0;
  tried.then = std::move(*then);
  found.push_back(std::move(tried));
}

}  // namespace

std::vector<TurnInTouch> turns_in_touches(const FormTouched& form, const OrthogonalFit& fit) {
  std::vector<TurnInTouch> found;
  for (const std::size_t touch : furthest_off(fit)) {
    for (std::size_t axis = 0; axis < form.touches[touch].size(); ++axis) {
      for (const Turn& turn : form.turns) {
        if (turn.by <= 2.0 * kTouchOddsLimit * form.doubts[touch]) continue;
        for (const double by : {turn.by, -turn.by}) {
          TurnInTouch tried;
          tried.touch = touch;
          tried.axis = axis;
          tried.turn = turn;
          tried.by = by;
          try_turn(form, std::move(tried), found);
        }
      }
    }
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const TurnInTouch& a, const TurnInTouch& b) { return a.weight > b.weight; });
  while (!found.empty() && found.back().weight < found.front().weight - kOutweighs)
    found.pop_back();
  return found;
}

}  // namespace sparewright::survey
