// Whether a machine is inch or metric as a whole, before any of its sizes is looked at.
#pragma once

#include <optional>

#include "core/base/hash.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::intent {

enum class Country { kAmerica, kBritain, kContinent, kAsia };

// Where and when the machine was made, where that is said.
struct Machine {
  std::optional<Country> made_in;
  std::optional<int> made_about;  // a year

  friend bool operator==(const Machine&, const Machine&) = default;
};

// How likely it has inch sizes, 0 to 1. American machines are inch ones, from about 1980 not all; British ones were up to
// about 1968, changed over in ten years and few are since; those of the Continent are metric; of Asia most are, but for those
// built for export. Where nothing is said the units of the job lean a little. How likely each is is a choice made here,
// without a source; the years of the British change are from memory.
[[nodiscard]] double chance_of_inch(const Machine& machine, quantity::UnitSystem units);

[[nodiscard]] base::Fingerprint fingerprint(const Machine& machine);

}  // namespace sparewright::intent
