// British screw threads of old machines: Whitworth coarse BSW and fine BSF (BS 84), cycle BSC (BS 811),
// British Association BA (BS 93). Basic sizes; their limits are not tabled here.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/thread_shape.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// kWhit is a thread of Whitworth form with another number of threads per inch.
enum class WhitworthSeries { kBsw, kBsf, kBsc, kWhit };
[[nodiscard]] std::string_view name_of(WhitworthSeries series);  // "BSW"

struct WhitworthThread {
  std::string size;
  quantity::Diameter major;
  double threads_per_inch = 0.0;
  WhitworthSeries series = WhitworthSeries::kBsw;
  bool left_hand = false;
  std::vector<std::string> assumed;

  [[nodiscard]] quantity::Length pitch() const;
};

// Reads 1/4-20 BSW, 1/4 BSW, BSF 1/4, 1/4x26 BSF, 1/4-26 BSC, 1/4-26 CEI, 3/8-24 WHIT, W 3/8-24. Assumed and
// told: the threads per inch the size has in its series. A size or threads per inch the series has not fail,
// naming what the size has; WHIT takes any from 2 to 80. Fails with kNameUnknown.
[[nodiscard]] base::Result<WhitworthThread> read_whitworth_thread(std::string_view text);
[[nodiscard]] std::string to_string(const WhitworthThread& thread);  // "1/4-20 BSW"
[[nodiscard]] ThreadShape shape_of(const WhitworthThread& thread);

struct StandardWhitworthThread {
  std::string_view size;
  WhitworthSeries series = WhitworthSeries::kBsw;
  double threads_per_inch = 0.0;
  Source source;
};
[[nodiscard]] std::span<const StandardWhitworthThread> standard_whitworth_threads();

// British Association number 0 to 25: 47.5 degrees, depth 0.6 P. The pitch is 0.9 to the power of the number
// in mm, the diameter 6 times the pitch to the power 6/5; the standard rounds both to two figures. Source: BS
// 93 (rule from memory; the printed tables of 0 and 2 to 5 BA agree).
struct AssociationThread {
  int number = 0;
  bool left_hand = false;
  std::vector<std::string> assumed;  // always empty: the number says all

  [[nodiscard]] quantity::Diameter major() const;
  [[nodiscard]] quantity::Length pitch() const;
};
inline constexpr int kFinestAssociation = 25;

// Reads 2 BA, 2BA, BA 2, No. 2 BA. Fails with kNameUnknown.
[[nodiscard]] base::Result<AssociationThread> read_association_thread(std::string_view text);
[[nodiscard]] std::string to_string(const AssociationThread& thread);  // "2 BA"
[[nodiscard]] ThreadShape shape_of(const AssociationThread& thread);

}  // namespace sparewright::handbook
