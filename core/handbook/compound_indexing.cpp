#include "core/handbook/compound_indexing.hpp"

#include <algorithm>
#include <cassert>
#include <cstdlib>
#include <numeric>
#include <optional>
#include <utility>

#include <fmt/format.h>

namespace sparewright::handbook {
namespace {

// x with a x = 1 (mod m), a and m without a common factor, m > 1: Euclid's algorithm run backwards.
std::int64_t inverse(std::int64_t a, std::int64_t m) {
  std::int64_t x = 1;
  std::int64_t x_next = 0;
  std::int64_t b = m;
  while (b != 0) {
    const std::int64_t q = a / b;
    a -= q * b;
    std::swap(a, b);
    x -= q * x_next;
    std::swap(x, x_next);
  }
  return (x % m + m) % m;
}

struct Holes {
  std::int64_t x = 0;  // on the circle of A
  std::int64_t y = 0;  // on the circle of B
};

// The x, y with x/A + y/B = k/lcm(A, B) that turn least to and fro, then with the least |y|. Multiplied out
// that is x B/g + y A/g = k with g the greatest common factor, so that y is known but for multiples of B/g.
// Of k not below 0 the answer is the least y that is not negative or the one before: beyond those the turning
// grows.
Holes least_turning(std::int64_t k, std::int64_t a, std::int64_t b) {
  const std::int64_t common = std::gcd(a, b);
  const std::int64_t of_x = b / common;
  const std::int64_t of_y = a / common;
  const std::int64_t y = of_x == 1 ? 0 : (k % of_x) * inverse(of_y % of_x, of_x) % of_x;
  const auto with = [&](std::int64_t holes) { return Holes{(k - holes * of_y) / of_x, holes}; };
  const auto rank = [&](const Holes& h) {
    return std::pair(std::abs(h.x) * b + std::abs(h.y) * a, std::abs(h.y));
  };
  const Holes forward = with(y);
  const Holes back = with(y - of_x);
  return rank(back) < rank(forward) ? back : forward;
}

std::optional<CompoundIndexing> nearest_move(const IndexPlate& plate, int a, int b, const Ratio& crank) {
  const std::int64_t whole = std::lcm(std::int64_t{a}, std::int64_t{b});
  const std::int64_t k = (crank * Ratio::of(whole)).nearest_whole();
  Holes holes = least_turning(k, a, b);
  if (holes.x % a == 0 || holes.y % b == 0) return std::nullopt;  // one circle does it
  if (holes.x < 0) {                                              // the forward move first
    std::swap(holes.x, holes.y);
    std::swap(a, b);
  }
  CompoundIndexing move;
  move.turns = static_cast<int>(holes.x / a);
  move.first_holes = static_cast<int>(holes.x % a);
  move.first_circle = a;
  move.second_holes = static_cast<int>(holes.y);
  move.second_circle = b;
  move.plate = plate.name;
  move.crank = Ratio::of(k, whole);
  return move;
}

Ratio turning(const CompoundIndexing& move) {
  return Ratio::of(move.turns) + Ratio::of(move.first_holes, move.first_circle) +
         Ratio::of(std::abs(move.second_holes), move.second_circle);
}

// A move and how far off it is, exactly.
struct Ranked {
  CompoundIndexing move;
  Ratio off;
};

void add_moves(const DividingHead& head, const Ratio& part, int spaces, std::vector<Ranked>& all) {
  const Ratio wanted = part * Ratio::of(spaces);
  const Ratio crank = wanted * Ratio::of(head.worm);
  for (const IndexPlate& plate : head.plates) {
    for (std::size_t i = 0; i < plate.circles.size(); ++i) {
      for (std::size_t j = i + 1; j < plate.circles.size(); ++j) {
        auto move = nearest_move(plate, plate.circles[i], plate.circles[j], crank);
        if (!move) continue;
        move->spaces = spaces;
        move->error = index_error(move->crank / Ratio::of(head.worm), wanted);
        const Ratio off = magnitude(move->crank - crank);
        all.push_back({std::move(*move), off});
      }
    }
  }
}

std::vector<CompoundIndexing> best_of(std::vector<Ranked> all, std::size_t most) {
  std::stable_sort(all.begin(), all.end(), [](const Ranked& a, const Ranked& b) {
    if (a.off != b.off) return a.off < b.off;
    if (a.move.spaces != b.move.spaces) return a.move.spaces < b.move.spaces;
    return turning(a.move) < turning(b.move);
  });
  std::vector<CompoundIndexing> out;
  for (std::size_t i = 0; i < std::min(most, all.size()); ++i)
    out.push_back(std::move(all[i].move));
  return out;
}

}  // namespace

base::Result<std::vector<CompoundIndexing>> compound_indexing(const DividingHead& head, const Ratio& part,
                                                              std::size_t most) {
  assert(part > Ratio() && part <= Ratio::of(1));
  if (const auto good = checked(head); !good) return tl::unexpected(good.error());
  std::vector<Ranked> all;
  add_moves(head, part, 1, all);
  return best_of(std::move(all), most);
}

base::Result<std::vector<CompoundIndexing>> compound_divisions(const DividingHead& head, int divisions,
                                                               int most_spaces, std::size_t most) {
  const auto part = part_for_divisions(divisions);
  if (!part) return tl::unexpected(part.error());
  if (const auto good = checked(head); !good) return tl::unexpected(good.error());
  constexpr int kMostSpaces = 100;
  if (most_spaces < 1 || most_spaces > kMostSpaces) {
    return base::fail(base::Code::kValueNotAccepted, std::to_string(most_spaces),
                      fmt::format("1 to {}", kMostSpaces), "the number of spaces in one move");
  }
  std::vector<Ranked> all;
  for (int spaces = 1; spaces <= std::min(most_spaces, divisions - 1); ++spaces) {
    if (std::gcd(spaces, divisions) == 1) add_moves(head, *part, spaces, all);
  }
  return best_of(std::move(all), most);
}

}  // namespace sparewright::handbook
