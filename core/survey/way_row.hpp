// One way of measuring: what a reading taken so says of the dimensions it is of.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

#include "core/quantity/kind.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

inline constexpr std::size_t kMostNames = 4;

// `reads` is an expression in which {1}, {2}, ... stand for the dimensions in `of`, in their order; {h1} for half of one
// that is round (a diameter over 2, a radius whole), {a1} for one across (a radius doubled), {n} for the count, {k} for the
// teeth spanned.
struct WayRow {
  Way way = Way::kExpression;
  std::string_view name;                           // in trails: "edge to hole edge, near"
  std::string_view key;                            // in job texts: "edge to hole, near"
  std::string_view reads;                          // empty for an expression
  std::string_view of;                             // "edge to centre, hole": what each name is
  std::array<quantity::Kind, kMostNames> kinds{};  // what each usually is
  std::size_t names = 1;
  Jaws jaws = Jaws::kOutside;                        // those that usually touch
  bool counted = false;                              // wants a count: of threads, of teeth
  quantity::Kind repeats = quantity::Kind::kLength;  // what the instrument shows
  bool is_difference = false;  // of two readings of one instrument: its zero is in both, and it may be 0
  bool spans = false;          // wants the teeth between the jaws, {k}
  double own_mm = 0.0;         // half-width of what this way adds by itself, where no transfer is stated
};

}  // namespace sparewright::survey
