// How a sheet prints sizes: in the job's unit, the unit itself left out (the sheet says it once).
#pragma once

#include <string>

#include "core/ledger/figure.hpp"
#include "core/quantity/display.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::route {

class Printing {
 public:
  explicit Printing(quantity::UnitSystem system) : system_(system) {}

  // Decimal places: fine 4 in, 3 mm; plain 3 in, 2 mm.
  [[nodiscard]] std::string fine(double mm) const;
  [[nodiscard]] std::string plain(double mm) const;

  // A size that is only named, without needless noughts: "10 in", "2.5 mm".
  [[nodiscard]] std::string nominal(double mm) const;

  // One limit, to its inner side.
  [[nodiscard]] std::string least(double mm, bool is_fine) const;
  [[nodiscard]] std::string most(double mm, bool is_fine) const;
  // Limits, never wider than they are: the least is rounded up, the most down. "0.6256-0.6264"
  [[nodiscard]] std::string limits(double least_mm, double most_mm, bool is_fine) const;
  // "1.062 ±0.004" where that says the same as limits() would, else the limits.
  [[nodiscard]] std::string size_with_room(double nominal_mm, double least_mm, double most_mm) const;

  [[nodiscard]] std::string unit_name() const;  // "in" or "mm"
  [[nodiscard]] quantity::UnitSystem system() const { return system_; }

 private:
  [[nodiscard]] double in_unit(double mm) const;
  [[nodiscard]] int places(bool is_fine) const;

  quantity::UnitSystem system_;
};

// What is printed of a figure: `text`, or NOT KNOWN where it is not.
[[nodiscard]] std::string or_not_known(const ledger::Figure& figure, const std::string& text);

}  // namespace sparewright::route
