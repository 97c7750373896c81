#include "core/survey/slips.hpp"

#include <array>
#include <cstdlib>
#include <string_view>
#include <utility>

#include <fmt/format.h>

namespace sparewright::survey {
namespace {

constexpr double kInch_mm = 25.4;

void add(std::vector<Slip>& all, std::string says, double shift, int rank) {
  Slip& one = all.emplace_back();
  one.says = std::move(says);
  one.shift = shift;
  one.rank = rank;
}

bool has(std::string_view kind, std::string_view word) {
  return kind.find(word) != std::string_view::npos;
}

std::string size_of(double turn, bool is_metric) {
  return is_metric ? fmt::format("{:.6g} mm", turn) : fmt::format("{:.6g} in", turn / kInch_mm);
}

void add_collar(std::vector<Turn>& all, bool is_metric) {
  // Collars of hand machines, one turn of their screws of 4 to 20 threads an inch, or of 1 to 6 mm (common practice).
  constexpr std::array kInches{0.05, 0.1, 0.125, 0.2, 0.25};
  constexpr std::array kMillimetres{1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0};
  const auto add_one = [&](double turn) {
    all.push_back({"turn of the collar", turn, size_of(turn, is_metric), 1});
  };
  if (is_metric) {
    for (const double turn : kMillimetres)
      add_one(turn);
  } else {
    for (const double turn : kInches)
      add_one(turn * kInch_mm);
  }
}

void add_turns(const AsRead& read, std::vector<Slip>& all) {
  for (const Turn& turn : usual_turns(read.instrument_kind, read.turn, read.is_metric)) {
    add(all, fmt::format("one {} ({}) was missed", turn.of, turn.size), -turn.by, turn.rank);
    add(all, fmt::format("one {} ({}) was counted too many", turn.of, turn.size), turn.by, turn.rank);
  }
}

void add_zero(const AsRead& read, std::vector<Slip>& all) {
  if (read.zero_found == 0.0) return;
  add(all, "its zero had been taken off already", -read.zero_found, 1);
  add(all, "its zero is the other way round", -2.0 * read.zero_found, 1);
}

void add_units(const AsRead& m, std::vector<Slip>& all) {
  add(all, "it is a radius, not a diameter", -m.reading, 2);
  add(all, "it is a diameter, not a radius", m.reading / 2.0, 2);
  if (m.is_metric)
    add(all, "it is in inches, not millimetres", m.reading - m.reading * kInch_mm, 2);
  else
    add(all, "it is in millimetres, not inches", m.reading - m.reading / kInch_mm, 2);
}

// Two neighbouring figures of what was typed changed about, and its point moved.
void add_figures(const AsRead& m, std::vector<Slip>& all) {
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

std::vector<Turn> usual_turns(std::string_view kind, std::optional<double> turn, bool is_metric) {
  std::vector<Turn> all;
  const bool is_micrometer = has(kind, "micrometer");
  const bool is_collar = has(kind, "collar") || has(kind, "handwheel");
  const double thimble = is_metric ? 0.5 : 0.025 * kInch_mm;
  if (turn || is_micrometer) {
    const std::string_view what = is_micrometer ? "thimble" : is_collar ? "collar" : "dial";
    const double by = turn.value_or(thimble);
    all.push_back({fmt::format("turn of the {}", what), by, size_of(by, is_metric), 0});
  } else if (is_collar) {
    add_collar(all, is_metric);
  }
  if (!is_micrometer && !has(kind, "caliper")) return all;
  const double figure = is_metric ? 1.0 : 0.1 * kInch_mm;
  all.push_back({"figure of the scale", figure, size_of(figure, is_metric), 1});
  return all;
}

std::vector<Slip> usual_slips(const AsRead& read) {
  std::vector<Slip> all;
  if (read.typed.empty()) return all;
  if (read.kind != quantity::Kind::kAngle) {
    add_turns(read, all);
    add_zero(read, all);
    add_units(read, all);
  }
  add_figures(read, all);
  return all;
}

}  // namespace sparewright::survey
