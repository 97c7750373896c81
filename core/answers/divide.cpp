#include <cmath>

#include <fmt/format.h>

#include "core/answers/dividing.hpp"
#include "core/handbook/compound_indexing.hpp"
#include "core/handbook/plain_indexing.hpp"

namespace sparewright::answers {
namespace {

using handbook::CompoundIndexing;
using handbook::DividingHead;
using handbook::PlainIndexing;
using quantity::Angle;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr int kMostSpaces = 12;

std::string error_words(Angle error) {
  if (error == Angle()) return "exact";
  const double degrees = error.in(unit::degree);
  return fmt::format("{:.1f} arc seconds too {} each move", std::abs(degrees) * 3600.0,
                     degrees > 0.0 ? "far" : "short");
}

Table plain_table(const std::vector<PlainIndexing>& moves) {
  TableWriter writer("each move, one circle", UnitSystem::kInch);
  for (const PlainIndexing& move : moves) {
    std::string note = error_words(move.error);
    if (move.holes > 0) note += fmt::format("; the sector arms enclose {} holes", move.holes + 1);
    writer.words(move.circle == 0 ? "any circle" : fmt::format("circle {}", move.circle),
                 crank_words(move.turns, move.holes, move.circle), handbook::kIndexing, std::move(note));
  }
  return writer.take();
}

// Where one circle is not exact: two together.
base::Result<std::vector<CompoundIndexing>> two_circles(const DividingHead& head, int divisions) {
  auto moves = handbook::compound_divisions(head, divisions, kMostSpaces);
  if (!moves) return moves;
  std::erase_if(*moves, [](const CompoundIndexing& move) { return !move.exact(); });
  // Moves that pass several spaces are wanted only where none passes one.
  const bool one_at_a_time = !moves->empty() && moves->front().spaces == 1;
  std::erase_if(*moves, [&](const CompoundIndexing& move) { return one_at_a_time && move.spaces > 1; });
  return moves;
}

Table compound_table(const std::vector<CompoundIndexing>& moves) {
  TableWriter writer("each move, two circles of one plate", UnitSystem::kInch);
  for (const CompoundIndexing& move : moves)
    writer.words(fmt::format("circles {} and {}", move.first_circle, move.second_circle), move_words(move),
                 handbook::kCompoundIndexing,
                 move.spaces == 1 ? "exact" : fmt::format("exact; each move passes {} spaces", move.spaces));
  return writer.take();
}

void add_positions_rule(const PlainIndexing& nearest, int divisions, Answer& answer) {
  const double all = std::abs(nearest.error.in(unit::degree)) * divisions * 3600.0;
  answer.cautions.push_back(
      fmt::format("Not exact on one circle: after {} moves the last space is out by {:.0f} arc seconds.",
                  divisions, all));
}

}  // namespace

base::Result<Answer> divide(const Question& question) {
  const auto divisions = count_entry(question, "divisions", 2, handbook::kMostDivisions);
  if (!divisions) return tl::unexpected(divisions.error());
  Answer answer;
  const auto head = head_of(question, answer.assumed);
  if (!head) return tl::unexpected(head.error());
  const auto part = handbook::part_for_divisions(*divisions);
  if (!part) return tl::unexpected(part.error());
  const auto moves = handbook::plain_indexing(*head, *part);
  if (!moves) return tl::unexpected(moves.error());
  answer.asked = fmt::format("{} divisions on a worm of {}:1", *divisions, head->worm);
  answer.assumed.emplace_back("the crank always comes up the same way, spindle clamped to cut");
  answer.says = crank_words(moves->front().turns, moves->front().holes, moves->front().circle);
  if (!moves->front().exact()) {
    const auto compound = two_circles(*head, *divisions);
    if (!compound) return tl::unexpected(compound.error());
    if (!compound->empty()) {
      answer.says = move_words(compound->front());
      answer.tables.push_back(compound_table(*compound));
    } else {
      answer.says += ", " + error_words(moves->front().error);
    }
    add_positions_rule(moves->front(), *divisions, answer);
  }
  answer.tables.push_back(plain_table(*moves));
  return answer;
}

}  // namespace sparewright::answers
