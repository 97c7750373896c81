// What the cuts of a recipe have to take, worked out in a thread of its own while the kernel cuts.
#pragma once

#include <atomic>
#include <cstddef>
#include <future>
#include <thread>
#include <vector>

#include "core/shape/recipe.hpp"
#include "solid/expected_bite.hpp"

namespace sparewright::solid {

// Goes through the cuts in order, as far ahead of the kernel as it comes: a bite depends on the recipe alone, so neither
// has to wait for the other. Valid as long as the recipe is.
class BitesAhead {
 public:
  BitesAhead(const shape::Recipe& recipe, std::size_t first_cut);
  // Waits for the bite under way, and no longer.
  ~BitesAhead();
  BitesAhead(const BitesAhead&) = delete;
  BitesAhead& operator=(const BitesAhead&) = delete;

  // What that cut has to take, once it is known.
  // Precondition: first_cut <= cut < the recipe's cuts; each is asked for once.
  [[nodiscard]] std::future<ExpectedBite> bite(std::size_t cut);

 private:
  void work();

  const shape::Recipe& recipe_;
  std::size_t first_;
  std::vector<std::promise<ExpectedBite>> bites_;
  std::atomic<bool> stopping_ = false;
  std::thread worker_;
};

}  // namespace sparewright::solid
