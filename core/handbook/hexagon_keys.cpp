#include "core/handbook/hexagon_keys.hpp"

#include <array>
#include <cmath>

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

struct Row {
  double across;
  double short_arm;
  double long_arm;
};

// Inches. Source: kHexagonKeys.
constexpr std::array kInch{
    Row{0.0625, 0.656, 1.844},   Row{0.078125, 0.703, 1.969}, Row{0.09375, 0.750, 2.094},
    Row{0.109375, 0.797, 2.219}, Row{0.125, 0.844, 2.344},    Row{0.140625, 0.891, 2.469},
    Row{0.15625, 0.938, 2.594},  Row{0.1875, 1.031, 2.844},   Row{0.21875, 1.125, 3.094},
    Row{0.25, 1.219, 3.344},     Row{0.3125, 1.344, 3.844},   Row{0.375, 1.469, 4.344},
    Row{0.4375, 1.594, 4.844},   Row{0.5, 1.719, 5.344},      Row{0.5625, 1.844, 5.844},
    Row{0.625, 1.969, 6.344},    Row{0.75, 2.219, 7.344}};
// Millimetres. Source: kHexagonKeys.
constexpr std::array kMetric{Row{1.5, 14, 45}, Row{2, 16, 50},   Row{2.5, 18, 56}, Row{3, 20, 63},
                             Row{4, 25, 70},   Row{5, 28, 80},   Row{6, 32, 90},   Row{8, 36, 100},
                             Row{10, 40, 112}, Row{12, 45, 125}, Row{14, 56, 140}, Row{17, 63, 160},
                             Row{19, 70, 180}};

template <typename Rows, typename Unit>
std::optional<HexagonKey> find(const Rows& rows, Length across, const Unit& in) {
  constexpr double kSame_mm = 1e-3;
  for (const Row& row : rows) {
    const Length size = Length::of(row.across, in);
    if (std::abs(size.base() - across.base()) < kSame_mm)
      return HexagonKey{size, Length::of(row.short_arm, in), Length::of(row.long_arm, in), kHexagonKeys};
  }
  return std::nullopt;
}

}  // namespace

std::optional<HexagonKey> hexagon_key(Length across) {
  if (auto inch = find(kInch, across, unit::inch)) return inch;
  return find(kMetric, across, unit::millimetre);
}

}  // namespace sparewright::handbook
