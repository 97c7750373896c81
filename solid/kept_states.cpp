#include "solid/kept_states.hpp"

#include <algorithm>
#include <bit>
#include <limits>
#include <tuple>

namespace sparewright::solid {
namespace {

int worth(std::size_t cuts, std::size_t of) {
  constexpr int kMost = std::numeric_limits<int>::max();
  if (cuts == of) return kMost;
  if (cuts + 1 == of) return kMost - 1;
  return std::countr_zero(cuts);
}

}  // namespace

std::optional<Begun> KeptStates::longest(const shape::Recipe& recipe, std::uint64_t request) {
  std::optional<Begun> longest;
  const std::size_t of = recipe.cuts().size();
  for (std::size_t cuts = 1; cuts <= of; ++cuts) {
    const auto found = states_.find(recipe.fingerprint_after(cuts));
    if (found == states_.end()) continue;
    found->second.request = std::max(found->second.request, request);
    found->second.worth = worth(cuts, of);
    longest = found->second.begun;
  }
  return longest;
}

void KeptStates::keep(const shape::Recipe& recipe, const Begun& state, std::size_t bytes,
                      std::uint64_t request) {
  const State kept{state, bytes, request, worth(state.cuts, recipe.cuts().size())};
  if (!states_.emplace(recipe.fingerprint_after(state.cuts), kept).second) return;
  bytes_ += bytes;
  while (bytes_ > budget_bytes_)
    drop_the_least();
}

void KeptStates::drop_the_least() {
  const auto rank = [](const State& s) { return std::tuple(s.request, s.worth, s.begun.cuts); };
  const auto least = std::min_element(states_.begin(), states_.end(), [&](const auto& a, const auto& b) {
    return rank(a.second) < rank(b.second);
  });
  bytes_ -= least->second.bytes;
  states_.erase(least);
}

}  // namespace sparewright::solid
