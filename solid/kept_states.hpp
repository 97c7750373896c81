// States of the work between cuts, kept by what was cut so far, within a budget.
#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>

#include "core/base/hash.hpp"
#include "core/shape/recipe.hpp"
#include "solid/make_solid.hpp"

namespace sparewright::solid {

// Every use is told the number of the request it is for; later requests have greater ones. Where the states take more than the budget,
// those of the oldest request go first. Of one request's states those go first whose number of cuts is odd, then the
// even ones that are no multiple of four, and so on: what stays is every second, every fourth state. The solid asked
// for goes last, before it the one that lacks only the last cut, which is where an edit of the last feature begins.
//
// Not safe from several threads.
class KeptStates {
 public:
  explicit KeptStates(std::size_t budget_bytes) : budget_bytes_(budget_bytes) {}

  // The state after the most cuts of this recipe; none where not even the first is known. All states that lie on the
  // recipe's way count as used.
  [[nodiscard]] std::optional<Begun> longest(const shape::Recipe& recipe, std::uint64_t request);

  // Keeps the work as it stands after so many cuts of the recipe, at least one, if there is room. bytes: its size.
  void keep(const shape::Recipe& recipe, const Begun& state, std::size_t bytes, std::uint64_t request);

  [[nodiscard]] std::size_t size() const { return states_.size(); }
  [[nodiscard]] std::size_t bytes() const { return bytes_; }  // never more than the budget

 private:
  struct State {
    Begun begun;
    std::size_t bytes = 0;
    std::uint64_t request = 0;
    int worth = 0;  // among the states of one request
  };
  using States = std::map<base::Fingerprint, State>;

  void drop_the_least();

  std::size_t budget_bytes_;
  std::size_t bytes_ = 0;
  States states_;
};

}  // namespace sparewright::solid
