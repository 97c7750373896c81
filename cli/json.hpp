// Rows as JSON.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/questions.hpp"
#include "app/rows.hpp"

namespace sparewright::cli {

// Whatever is given; the keys numbers, verdicts and queries are always there.
struct Printed {
  std::vector<app::NumberRow> numbers;
  std::vector<app::VerdictRow> verdicts;
  std::vector<app::QueryRow> queries;
};
[[nodiscard]] std::string as_json(const Printed& printed);
[[nodiscard]] std::string as_json(const app::Measured& measured, const std::optional<app::Drawn>& drawn);
[[nodiscard]] std::string as_json(const app::Sizes& sizes);
[[nodiscard]] std::string as_json(const std::vector<app::DimensionRow>& dimensions);
[[nodiscard]] std::string as_json(const app::TrailRow& trail);
[[nodiscard]] std::string as_json(const std::vector<app::OrderRow>& order);
[[nodiscard]] std::string as_json(const app::AnswerRow& answer);
[[nodiscard]] std::string as_json(const std::vector<app::Trouble>& troubles);

}  // namespace sparewright::cli
