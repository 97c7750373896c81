#include "core/survey/slips.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <utility>

#include <fmt/format.h>

namespace sparewright::survey {
namespace {

constexpr double kInch_mm = 25.4;
constexpr double kMostOdds = 2.0;  // a slip has to leave less than this many of the error's doubts
constexpr std::size_t kMostSlips = 3;

// A slip before it is tried: what it makes of the reading, and how usual it is (0 the most).
struct Candidate {
  std::string says;
  double shift = 0.0;
  int rank = 0;
};
using Candidates = std::vector<Candidate>;

void add(Candidates& all, std::string says, double shift, int rank) {
  Candidate& one = all.emplace_back();
  one.says = std::move(says);
  one.shift = shift;
  one.rank = rank;
}

bool has(const std::string& kind, std::string_view word) {
  return kind.find(word) != std::string::npos;
}

void add_scale(const Misread& m, Candidates& all) {
  if (m.kind == quantity::Kind::kAngle) return;
  const bool is_micrometer = has(m.instrument_kind, "micrometer");
  const bool is_caliper = has(m.instrument_kind, "caliper");
  const double turn = m.is_metric ? 0.5 : 0.025 * kInch_mm;
  const double figure = m.is_metric ? 1.0 : 0.1 * kInch_mm;
  const char* turn_says = m.is_metric ? "0.5 mm" : "0.025 in";
  const char* figure_says = m.is_metric ? "1 mm" : "0.1 in";
  if (is_micrometer) {
    add(all, fmt::format("one turn of the thimble ({}) was missed", turn_says), -turn, 0);
    add(all, fmt::format("one turn of the thimble ({}) was counted too many", turn_says), turn, 0);
  }
  if (is_micrometer || is_caliper) {
    add(all, fmt::format("a figure of the scale ({}) was missed", figure_says), -figure, 1);
    add(all, fmt::format("a figure of the scale ({}) was counted too many", figure_says), figure, 1);
  }
  if (m.zero_found != 0.0) {
    add(all, "its zero had been taken off already", -m.zero_found, 1);
    add(all, "its zero is the other way round", -2.0 * m.zero_found, 1);
  }
}

void add_units(const Misread& m, Candidates& all) {
  if (m.kind == quantity::Kind::kAngle) return;
  add(all, "it is a radius, not a diameter", -m.reading, 2);
  add(all, "it is a diameter, not a radius", m.reading / 2.0, 2);
  if (m.is_metric)
    add(all, "it is in inches, not millimetres", m.reading - m.reading * kInch_mm, 2);
  else
    add(all, "it is in millimetres, not inches", m.reading - m.reading / kInch_mm, 2);
}

// Two neighbouring figures of what was typed changed about, and its point moved.
void add_figures(const Misread& m, Candidates& all) {
  add(all, "its point is a place out", m.reading - m.reading * 10.0, 3);
  add(all, "its point is a place out", m.reading - m.reading / 10.0, 3);
  const double typed = std::strtod(m.typed.c_str(), nullptr);
  if (typed == 0.0 || has(m.typed, "/")) return;
  const double scale = m.reading / typed;
  for (std::size_t i = 0; i + 1 < m.typed.size(); ++i) {
    std::string other = m.typed;
    std::size_t next = i + 1;
    if (other[next] == '.' && next + 1 < other.size()) ++next;
    const auto is_figure = [](char c) { return c >= '0' && c <= '9'; };
    if (!is_figure(other[i]) || !is_figure(other[next]) || other[i] == other[next]) continue;
    std::swap(other[i], other[next]);
    add(all, fmt::format("two figures are swapped: {}", other),
        scale * (typed - std::strtod(other.c_str(), nullptr)), 3);
  }
}

}  // namespace

std::vector<Slip> slips(const Misread& misread) {
  if (!(misread.error_u > 0.0) || std::abs(misread.error) <= kMostOdds * misread.error_u) return {};
  Candidates candidates;
  add_scale(misread, candidates);
  add_units(misread, candidates);
  add_figures(misread, candidates);
  std::stable_sort(candidates.begin(), candidates.end(), [&](const Candidate& a, const Candidate& b) {
    const auto rest = [&](const Candidate& c) { return std::abs(misread.error - c.shift); };
    return a.rank != b.rank ? a.rank < b.rank : rest(a) < rest(b);
  });
  std::vector<Slip> explaining;
  for (const Candidate& candidate : candidates) {
    const double rest = std::abs(misread.error - candidate.shift);
    const double odds = rest / misread.error_u;
    const bool explains = odds <= kMostOdds && rest < std::abs(misread.error) / kMostOdds;
    if (explains && explaining.size() < kMostSlips)
      explaining.push_back({candidate.says, candidate.shift, rest, odds});
  }
  return explaining;
}

}  // namespace sparewright::survey
