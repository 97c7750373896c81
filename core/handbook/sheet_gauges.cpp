#include "core/handbook/sheet_gauges.hpp"

#include <array>
#include <cmath>
#include <vector>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

constexpr Source kAmericanWire{"American wire gauge, ASTM B258", "", Basis::kFromMemory};
constexpr Source kManufacturers{
    "manufacturers' standard gauge for steel sheet, 41.82 lb per square foot and inch", "",
    Basis::kFromMemory};

// Ounces a square foot of gauges 3 to 30. Source: kManufacturers.
constexpr int kFirstSteelGauge = 3;
constexpr std::array kOunces{160, 150, 140, 130, 120, 110, 100, 90, 80, 70, 60, 50, 45, 40,
                             36,  32,  28,  24,  22,  20,  18,  16, 14, 12, 11, 10, 9,  8};

std::vector<Gauge> american_wire() {
  std::vector<Gauge> out;
  constexpr int kLast = 40;
  for (int n = -3; n <= kLast; ++n) {
    const double inches = 0.005 * std::pow(92.0, (36.0 - n) / 39.0);
    out.push_back({n < 0 ? fmt::format("{}/0", 1 - n) : std::to_string(n), Length::of(inches, unit::inch),
                   kAmericanWire});
  }
  return out;
}

std::vector<Gauge> manufacturers_standard() {
  std::vector<Gauge> out;
  int number = kFirstSteelGauge;
  for (const int ounces : kOunces)
    out.push_back({std::to_string(number++), Length::of(ounces / 16.0 / 41.82, unit::inch), kManufacturers});
  return out;
}

std::vector<Gauge> gauges(GaugeSystem system) {
  return system == GaugeSystem::kAmericanWire ? american_wire() : manufacturers_standard();
}

// 00 is 2/0.
std::string spelled(std::string_view number) {
  const std::string typed = folded(number);
  const bool zeros = typed.size() > 1 && typed.find_first_not_of('0') == std::string::npos;
  return zeros ? fmt::format("{}/0", typed.size()) : typed;
}

}  // namespace

std::string_view name_of(GaugeSystem system) {
  return system == GaugeSystem::kAmericanWire ? "American wire gauge" : "manufacturers' standard gauge";
}

base::Result<Gauge> gauge_thickness(GaugeSystem system, std::string_view number) {
  const std::string wanted = spelled(number);
  for (Gauge& gauge : gauges(system)) {
    if (gauge.number == wanted) return std::move(gauge);
  }
  return unknown(number, name_of(system), {},
                 system == GaugeSystem::kAmericanWire ? "4/0 (or 0000), 3/0, 2/0, 0 to 40" : "3 to 30");
}

base::Result<NearGauge> nearest_gauge(GaugeSystem system, Length thickness) {
  if (thickness <= Length()) {
    return base::fail(base::Code::kSizeNotPositive, fmt::format("{} mm", thickness.in(unit::millimetre)),
                      "more than zero", "the thickness");
  }
  std::vector<Gauge> all = gauges(system);
  Gauge* best = &all.front();
  for (Gauge& gauge : all) {
    if (std::abs((gauge.thickness - thickness).base()) < std::abs((best->thickness - thickness).base()))
      best = &gauge;
  }
  const Length off = thickness - best->thickness;
  return NearGauge{std::move(*best), off};
}

}  // namespace sparewright::handbook
