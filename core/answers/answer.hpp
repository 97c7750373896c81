// An answer to one question of the bench: short tables of numbers, each with its source. Content only: the terminal,
// the bench card and the page print it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/handbook/source.hpp"
#include "core/quantity/kind.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::answers {

// `value` is what is read; numbers are the same in `unit`, rounded alike: none for words, two for a range.
struct Row {
  std::string what;   // "pitch diameter"
  std::string value;  // "0.3287 to 0.3331 in (8.349 to 8.461 mm)"
  std::vector<double> numbers;
  std::string unit;
  std::string note;  // may be empty
  handbook::Source source;
};

struct Table {
  std::string heading;  // "screw 2A"
  std::vector<Row> rows;
};

struct Answer {
  std::string asked;  // as it was understood: "3/8-16 UNC-2A"
  std::string says;   // the one thing wanted, in the fewest words: "drill 5/16"; empty where it is the tables
  std::vector<std::string> assumed;
  std::vector<Table> tables;
  std::vector<std::string> cautions;
};

// Writes rows of one table in the reader's system, the other one behind it.
class TableWriter {
 public:
  TableWriter(std::string heading, quantity::UnitSystem system) : system_(system) {
    table_.heading = std::move(heading);
  }

  // Lengths to 0.0001 in and 0.001 mm.
  TableWriter& length(std::string what, quantity::Length value, const handbook::Source& source,
                      std::string note = {});
  TableWriter& length(std::string what, quantity::Diameter value, const handbook::Source& source,
                      std::string note = {}) {
    return length(std::move(what), across(value), source, std::move(note));
  }
  // From what is found or foretold to what is: both ends to the nearest.
  TableWriter& range(std::string what, quantity::Length low, quantity::Length high,
                     const handbook::Source& source, std::string note = {});
  TableWriter& range(std::string what, quantity::Diameter low, quantity::Diameter high,
                     const handbook::Source& source, std::string note = {}) {
    return range(std::move(what), across(low), across(high), source, std::move(note));
  }
  // What has to be kept to: rounded inwards, never wider than it is.
  TableWriter& limits(std::string what, quantity::Length low, quantity::Length high,
                      const handbook::Source& source, std::string note = {});
  TableWriter& limits(std::string what, quantity::Diameter low, quantity::Diameter high,
                      const handbook::Source& source, std::string note = {}) {
    return limits(std::move(what), across(low), across(high), source, std::move(note));
  }
  // Any other kind, with `places` decimals in the unit it is printed in.
  TableWriter& number(std::string what, double base, quantity::Kind kind, int places,
                      const handbook::Source& source, std::string note = {});
  TableWriter& numbers(std::string what, double low_base, double high_base, quantity::Kind kind, int places,
                       const handbook::Source& source, std::string note = {});
  // Of thread, of slope: whole per cents.
  TableWriter& percent(std::string what, double percent, const handbook::Source& source,
                       std::string note = {});
  TableWriter& words(std::string what, std::string value, const handbook::Source& source,
                     std::string note = {});

  [[nodiscard]] Table take() { return std::move(table_); }

 private:
  TableWriter& add(Row row, std::string what, const handbook::Source& source, std::string note);

  quantity::UnitSystem system_;
  Table table_;
};

// "0.3750 in (9.525 mm)", or the other way round; what is worked out in the system given.
[[nodiscard]] std::string both_ways(quantity::Length length, quantity::UnitSystem system);

// "the same (from memory)": how a source is named at the foot of a table; the same text once.
[[nodiscard]] std::vector<std::string> sources_of(const Answer& answer);

}  // namespace sparewright::answers
