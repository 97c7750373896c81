// A piece of stock that lies in the shop.
#pragma once

#include <map>
#include <string>

#include "core/base/hash.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::shop {

struct Stock {
  std::string name;      // what it is called, or where it lies
  std::string shape;     // as a job's blank says it: "flat bar"
  std::string material;  // likewise
  // "length", and of its section "width" and "thickness", "diameter", "across", "bore"; all more than 0
  std::map<std::string, quantity::Typed> sizes;
};

[[nodiscard]] base::Fingerprint fingerprint(const Stock& stock);

}  // namespace sparewright::shop
