#include "solid/shelf.hpp"

#include <exception>
#include <optional>
#include <utility>

#include "solid/make_solid.hpp"
#include "solid/memory.hpp"

namespace sparewright::solid {
namespace {

Shelf::Answer stopped(const shape::Recipe& recipe) {
  return base::fail(base::Code::kStopped, {}, {}, recipe.blank().name);
}

}  // namespace

Shelf::Shelf(std::size_t budget_bytes) : kept_(budget_bytes), worker_([this] { work(); }) {}

Shelf::~Shelf() {
  {
    const std::scoped_lock lock(mutex_);
    stopping_ = true;
  }
  asked_.notify_all();
  worker_.join();
}

std::shared_future<Shelf::Answer> Shelf::solid(const shape::Recipe& recipe) {
  const std::scoped_lock lock(mutex_);
  ++counts_.asked;
  if (const auto found = under_way_.find(recipe.fingerprint()); found != under_way_.end()) {
    ++counts_.shared;
    return found->second;
  }
  Request request{recipe, counts_.asked, {}};
  const std::shared_future<Answer> future = request.answer.get_future().share();
  const auto known = kept_.longest(recipe, request.number);
  if (known && known->cuts == recipe.cuts().size()) {
    request.answer.set_value(known->solid);
    return future;
  }
  under_way_.emplace(recipe.fingerprint(), future);
  waiting_.push_back(std::move(request));
  asked_.notify_one();
  return future;
}

Shelf::Counts Shelf::counts() const {
  const std::scoped_lock lock(mutex_);
  Counts counts = counts_;
  counts.kept = kept_.size();
  counts.kept_bytes = kept_.bytes();
  return counts;
}

void Shelf::work() {
  std::unique_lock lock(mutex_);
  for (;;) {
    asked_.wait(lock, [&] { return stopping_ || !waiting_.empty(); });
    if (waiting_.empty()) return;  // and stopping
    Request request = std::move(waiting_.front());
    waiting_.pop_front();
    lock.unlock();
    answer(request);
    lock.lock();
  }
}

void Shelf::answer(Request& request) {
  std::optional<Answer> made;
  std::exception_ptr thrown;
  try {
    made = make(request);
  } catch (...) {
    thrown = std::current_exception();
  }
  {
    const std::scoped_lock lock(mutex_);
    under_way_.erase(request.recipe.fingerprint());
    if (!made || !*made) ++counts_.failures;
  }
  if (made) {
    request.answer.set_value(std::move(*made));
  } else {
    request.answer.set_exception(thrown);
  }
}

Shelf::Answer Shelf::make(const Request& request) {
  std::optional<Begun> begun;
  {
    const std::scoped_lock lock(mutex_);
    if (stopping_) return stopped(request.recipe);
    begun = kept_.longest(request.recipe, request.number);
  }
  auto made = make_solid(request.recipe, begun, [&](std::size_t cuts, const Solid& work) {
    return keep(request, cuts, work) || cuts == request.recipe.cuts().size();
  });
  if (!made) return tl::unexpected(std::move(made.error()));
  return std::move(made->solid);
}

// Whether to go on.
bool Shelf::keep(const Request& request, std::size_t cuts, const Solid& work) {
  const std::size_t bytes = memory_bytes(work);
  const std::scoped_lock lock(mutex_);
  ++counts_.cuts;
  kept_.keep(request.recipe, {work, cuts}, bytes, request.number);
  return !stopping_;
}

}  // namespace sparewright::solid
