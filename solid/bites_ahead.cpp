#include "solid/bites_ahead.hpp"

#include <exception>

namespace sparewright::solid {

BitesAhead::BitesAhead(const shape::Recipe& recipe, std::size_t first_cut)
    : recipe_(recipe),
      first_(first_cut),
      bites_(recipe.cuts().size() - first_cut),
      worker_([this] { work(); }) {}

BitesAhead::~BitesAhead() {
  stopping_ = true;
  worker_.join();
}

std::future<ExpectedBite> BitesAhead::bite(std::size_t cut) {
  return bites_.at(cut - first_).get_future();
}

void BitesAhead::work() {
  for (std::size_t i = 0; i < bites_.size() && !stopping_; ++i) {
    const shape::Cut& cut = recipe_.cuts()[first_ + i];
    try {
      bites_[i].set_value(ExpectedBite(recipe_.work_after(first_ + i), cut.body));
    } catch (...) {
      bites_[i].set_exception(std::current_exception());
    }
  }
}

}  // namespace sparewright::solid
