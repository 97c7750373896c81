#include "core/route/on_hand.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/handbook/materials.hpp"

namespace sparewright::route {
namespace {

using part::BlankShape;

constexpr double kSame_mm = 1e-3;  // a millimetre bar typed in inches is the same bar

bool is_same(double one_mm, double other_mm) {
  return std::abs(one_mm - other_mm) < kSame_mm;
}

// By name and condition, however they are written.
bool is_same_material(const std::string& one, const std::string& other) {
  if (one == other) return true;
  const auto a = handbook::find_material(one);
  const auto b = handbook::find_material(other);
  return a && b && a->material.name == b->material.name && a->material.condition == b->material.condition;
}

double size_of(const shop::Stock& stock, const char* key) {
  const auto found = stock.sizes.find(key);
  return found == stock.sizes.end() ? std::nan("") : found->second.base;
}

// Whether a bar has the section; the thickness and the width of a flat bar may be told either way round.
bool has_section(const part::Blank& blank, const shop::Stock& stock) {
  const double y = blank.sizes[1].nominal.base;
  const double z = blank.sizes[2].nominal.base;
  switch (blank.shape) {
    case BlankShape::kRoundBar:
      return is_same(size_of(stock, "diameter"), z);
    case BlankShape::kTube:
      return is_same(size_of(stock, "diameter"), z) && blank.bore &&
             is_same(size_of(stock, "bore"), blank.bore->nominal.base);
    case BlankShape::kSquareBar:
    case BlankShape::kHexBar:
      return is_same(size_of(stock, "across"), z);
    default: {
      const double wide = size_of(stock, "width");
      const double thick = size_of(stock, "thickness");
      return (is_same(wide, y) && is_same(thick, z)) || (is_same(wide, z) && is_same(thick, y));
    }
  }
}

// What the sizes have over, the greatest against the greatest.
double sorted_spare(std::vector<double> there, std::vector<double> wanted) {
  std::sort(there.begin(), there.end());
  std::sort(wanted.begin(), wanted.end());
  double spare = there.front() - wanted.front();
  for (std::size_t i = 1; i < there.size(); ++i)
    spare = std::min(spare, there[i] - wanted[i]);
  return spare;
}

std::optional<double> to_spare(const part::Blank& blank, const shop::Stock& stock) {
  const std::array<double, 3> wanted{blank.sizes[0].nominal.base, blank.sizes[1].nominal.base,
                                     blank.sizes[2].nominal.base};
  const double length = size_of(stock, "length");
  const double width = size_of(stock, "width");
  const double thickness = size_of(stock, "thickness");
  if (blank.shape == BlankShape::kPlate) {
    if (!is_same(thickness, wanted[2])) return std::nullopt;
    return sorted_spare({length, width}, {wanted[0], wanted[1]});
  }
  if (blank.shape == BlankShape::kBlock)
    return sorted_spare({length, width, thickness}, {wanted[0], wanted[1], wanted[2]});
  if (!has_section(blank, stock)) return std::nullopt;
  return length - wanted[0];
}

// Rather the one with the least to spare that is long enough, else the longest.
bool is_better(double one, double other) {
  if ((one >= 0.0) != (other >= 0.0)) return one >= 0.0;
  return one >= 0.0 ? one < other : one > other;
}

}  // namespace

std::optional<OnHand> on_hand(const part::Blank& blank, const std::vector<shop::Stock>& stock) {
  std::optional<OnHand> best;
  for (const shop::Stock& piece : stock) {
    if (piece.shape != part::name_of(blank.shape) || !is_same_material(piece.material, blank.material))
      continue;
    const auto spare = to_spare(blank, piece);
    if (spare && (!best || is_better(*spare, best->to_spare_mm))) best = OnHand{&piece, *spare};
  }
  return best;
}

bool is_in_hand(const part::Blank& blank) {
  return std::any_of(blank.sizes.begin(), blank.sizes.end(),
                     [](const part::BlankSize& size) { return size.found.has_value(); });
}

}  // namespace sparewright::route
