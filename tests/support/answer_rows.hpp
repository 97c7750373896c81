// Asks a question of the bench and finds rows of its answer.
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>

#include "core/answers/answer.hpp"
#include "core/answers/question.hpp"

namespace sparewright::tests {

inline answers::Question asked(std::string words) {
  return {std::move(words), {}, nullptr, quantity::UnitSystem::kInch};
}

// The first row of that name, of any table or of the one named.
inline const answers::Row& row(const answers::Answer& answer, std::string_view what,
                               std::string_view table = {}) {
  for (const answers::Table& one : answer.tables) {
    for (const answers::Row& candidate : one.rows) {
      if (candidate.what == what && (table.empty() || one.heading == table)) return candidate;
    }
  }
  throw std::runtime_error("no row '" + std::string(what) + "'");
}

// The first number of that row.
inline double number(const answers::Answer& answer, std::string_view what, std::string_view table = {}) {
  return row(answer, what, table).numbers.at(0);
}

}  // namespace sparewright::tests
