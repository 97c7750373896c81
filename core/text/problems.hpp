// What goes wrong while a text is read, gathered so that all of it can be told at once.
#pragma once

#include <optional>
#include <utility>

#include "core/base/result.hpp"

namespace sparewright::text {

class Problems {
 public:
  void add(base::Failure failure) { failures_.push_back(std::move(failure)); }
  void add(base::Failures failures) {
    for (base::Failure& failure : failures)
      add(std::move(failure));
  }

  // The value, or nothing, its failure being kept here.
  template <typename Value>
  [[nodiscard]] std::optional<Value> keep(base::Result<Value> result) {
    if (result) return std::move(*result);
    add(std::move(result.error()));
    return std::nullopt;
  }

  [[nodiscard]] bool empty() const { return failures_.empty(); }

  // In the order of their places, those without a place first.
  [[nodiscard]] base::Failures sorted() const;

  // The value if nothing went wrong, else all that did.
  template <typename Value>
  [[nodiscard]] base::ResultOrAll<Value> unless_any(Value value) const {
    if (empty()) return value;
    return tl::unexpected<base::Failures>(sorted());
  }

 private:
  base::Failures failures_;
};

}  // namespace sparewright::text
