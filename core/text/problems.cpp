#include "core/text/problems.hpp"

#include <algorithm>
#include <tuple>

namespace sparewright::text {

base::Failures Problems::sorted() const {
  base::Failures failures = failures_;
  const auto place = [](const base::Failure& failure) {
    return failure.place ? std::tuple(failure.place->line, failure.place->column) : std::tuple(0, 0);
  };
  std::stable_sort(failures.begin(), failures.end(),
                   [&](const base::Failure& a, const base::Failure& b) { return place(a) < place(b); });
  return failures;
}

}  // namespace sparewright::text
