// Checked solids by recipe: made once, kept within a memory budget, gone on from where a recipe begins like another.
#pragma once

#include <condition_variable>
#include <cstddef>
#include <cstdint>
#include <deque>
#include <future>
#include <map>
#include <mutex>
#include <thread>

#include "core/base/hash.hpp"
#include "core/base/result.hpp"
#include "core/shape/recipe.hpp"
#include "solid/kept_states.hpp"
#include "solid/solid.hpp"

namespace sparewright::solid {

// Solids are made by one thread of the shelf's own, in the order they are asked for. The state of the work after every
// cut is kept as far as the budget allows (kept_states.hpp says which go first), so a recipe that differs from an earlier
// one in its last cuts costs those cuts alone: put the feature under edit last.
//
// Guarantees: (1) the solid is that of make_solid(recipe), to the byte of its STEP file, whatever was kept. (2) A recipe
// that is asked for while it is being made is not made twice. (3) Failures are not kept: asked for again, it is tried
// again. (4) What is kept takes no more than the budget by memory_bytes(); solids handed out and the one being made are
// outside it.
//
// All functions may be called from several threads at once; only the destructor must be the last call.
class Shelf {
 public:
  using Answer = base::Result<Solid>;

  explicit Shelf(std::size_t budget_bytes);
  // Waits for the cut being made. What has been asked for and is not done is answered with kStopped.
  ~Shelf();
  Shelf(const Shelf&) = delete;
  Shelf& operator=(const Shelf&) = delete;

  // Ready at once where the solid is kept. Fails as make_solid() does. The future throws where memory ran out.
  [[nodiscard]] std::shared_future<Answer> solid(const shape::Recipe& recipe);

  struct Counts {
    std::uint64_t asked = 0;     // requests
    std::uint64_t shared = 0;    // of them those that joined one that was being made
    std::uint64_t cuts = 0;      // cuts made
    std::uint64_t failures = 0;  // answers that are failures
    std::size_t kept = 0;        // states
    std::size_t kept_bytes = 0;
  };
  [[nodiscard]] Counts counts() const;

 private:
  struct Request {
    shape::Recipe recipe;
    std::uint64_t number = 0;
    std::promise<Answer> answer;
  };

  void work();
  void answer(Request& request);
  [[nodiscard]] Answer make(const Request& request);
  [[nodiscard]] bool keep(const Request& request, std::size_t cuts, const Solid& work);

  mutable std::mutex mutex_;  // guards everything below but the thread
  std::condition_variable asked_;
  std::deque<Request> waiting_;
  std::map<base::Fingerprint, std::shared_future<Answer>> under_way_;  // waiting or being made
  KeptStates kept_;
  Counts counts_;
  bool stopping_ = false;
  std::thread worker_;  // last: it starts when all else is there
};

}  // namespace sparewright::solid
