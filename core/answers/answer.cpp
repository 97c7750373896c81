#include "core/answers/answer.hpp"

#include <utility>

#include <fmt/format.h>

#include "core/base/once.hpp"
#include "core/quantity/display.hpp"
#include "core/quantity/inwards.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;

UnitSystem other(UnitSystem system) {
  return system == UnitSystem::kInch ? UnitSystem::kMetric : UnitSystem::kInch;
}

// What is printed of a number, and the same as a number.
struct Printed {
  std::string text;
  double number = 0.0;
};
Printed printed(double base, const quantity::Unit& unit, int places) {
  return {quantity::fixed(unit.from_base(base), places), quantity::rounded(unit.from_base(base), places)};
}

std::string with_unit(std::string text, const quantity::Unit& unit) {
  if (!unit.symbol.empty()) text += fmt::format(" {}", unit.symbol);
  return text;
}

Row range_row(double low_base, double high_base, Kind kind, int places, UnitSystem system) {
  const quantity::Unit unit = quantity::display_unit(kind, system);
  const Printed low = printed(low_base, unit, places);
  const Printed high = printed(high_base, unit, places);
  Row row;
  row.numbers = {low.number, high.number};
  row.unit = unit.symbol;
  row.value =
      low.text == high.text ? with_unit(low.text, unit) : with_unit(low.text + " to " + high.text, unit);
  return row;
}

enum class Ends { kNearest, kInwards };

Row lengths_row(Length low, Length high, Ends ends, UnitSystem system) {
  const auto in = [&](UnitSystem which) {
    const int places = quantity::usual_places(Kind::kLength, which);
    const quantity::Unit unit = quantity::display_unit(Kind::kLength, which);
    const bool inwards = ends == Ends::kInwards;
    const auto end = [&](Length length, auto rounding) {
      return inwards ? unit.to_base(rounding(unit.from_base(length.base()), places)) : length.base();
    };
    return range_row(end(low, quantity::rounded_up), end(high, quantity::rounded_down), Kind::kLength, places,
                     which);
  };
  Row row = in(system);
  row.value += fmt::format(" ({})", in(other(system)).value);
  return row;
}

}  // namespace

std::string both_ways(Length length, UnitSystem system) {
  return lengths_row(length, length, Ends::kNearest, system).value;
}

TableWriter& TableWriter::add(Row row, std::string what, const handbook::Source& source, std::string note) {
  row.what = std::move(what);
  row.note = std::move(note);
  row.source = source;
  table_.rows.push_back(std::move(row));
  return *this;
}

TableWriter& TableWriter::length(std::string what, Length value, const handbook::Source& source,
                                 std::string note) {
  range(std::move(what), value, value, source, std::move(note));
  table_.rows.back().numbers.pop_back();
  return *this;
}

TableWriter& TableWriter::range(std::string what, Length low, Length high, const handbook::Source& source,
                                std::string note) {
  Row row = lengths_row(low, high, Ends::kNearest, system_);
  return add(std::move(row), std::move(what), source, std::move(note));
}

TableWriter& TableWriter::limits(std::string what, Length low, Length high, const handbook::Source& source,
                                 std::string note) {
  Row row = lengths_row(low, high, Ends::kInwards, system_);
  return add(std::move(row), std::move(what), source, std::move(note));
}

TableWriter& TableWriter::number(std::string what, double base, Kind kind, int places,
                                 const handbook::Source& source, std::string note) {
  numbers(std::move(what), base, base, kind, places, source, std::move(note));
  table_.rows.back().numbers.pop_back();
  return *this;
}

TableWriter& TableWriter::numbers(std::string what, double low_base, double high_base, Kind kind, int places,
                                  const handbook::Source& source, std::string note) {
  Row row = range_row(low_base, high_base, kind, places, system_);
  return add(std::move(row), std::move(what), source, std::move(note));
}

TableWriter& TableWriter::percent(std::string what, double percent, const handbook::Source& source,
                                  std::string note) {
  const double whole = quantity::rounded(percent, 0);
  table_.rows.push_back(
      {std::move(what), quantity::fixed(percent, 0) + " %", {whole}, "%", std::move(note), source});
  return *this;
}

TableWriter& TableWriter::words(std::string what, std::string value, const handbook::Source& source,
                                std::string note) {
  table_.rows.push_back({std::move(what), std::move(value), {}, {}, std::move(note), source});
  return *this;
}

std::vector<std::string> sources_of(const Answer& answer) {
  base::Once sources;
  for (const Table& table : answer.tables) {
    for (const Row& row : table.rows) {
      if (!row.source.text.empty()) sources.add(cite(row.source));
    }
  }
  return sources.texts();
}

}  // namespace sparewright::answers
