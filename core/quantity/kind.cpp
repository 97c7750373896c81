#include "core/quantity/kind.hpp"

#include <array>
#include <cstddef>

namespace sparewright::quantity {
namespace {

struct Row {
  Kind kind;
  Dimension dimension;
  std::string_view name;
  std::string_view code;
};

constexpr std::array<Row, kKinds> kRows{{
    {Kind::kNumber, kNumberDimension, "a plain number", "number"},
    {Kind::kLength, kLengthDimension, "a length", "length"},
    {Kind::kDiameter, kLengthDimension, "a diameter", "diameter"},
    {Kind::kRadius, kLengthDimension, "a radius", "radius"},
    {Kind::kCoordinate, kLengthDimension, "a coordinate", "coordinate"},
    {Kind::kAngle, kAngleDimension, "an angle", "angle"},
    {Kind::kArea, kAreaDimension, "an area", "area"},
    {Kind::kVolume, kVolumeDimension, "a volume", "volume"},
    {Kind::kMass, kMassDimension, "a weight", "mass"},
    {Kind::kDensity, kDensityDimension, "a density", "density"},
    {Kind::kTime, kTimeDimension, "a time", "time"},
    {Kind::kTemperature, kTemperatureDimension, "a temperature", "temperature"},
    {Kind::kTemperatureDifference, kTemperatureDimension, "a temperature difference",
     "temperature difference"},
    {Kind::kForce, kForceDimension, "a force", "force"},
    {Kind::kPressure, kPressureDimension, "a pressure or stress", "pressure"},
    {Kind::kTorque, kTorqueDimension, "a torque", "torque"},
    {Kind::kPower, kPowerDimension, "a power", "power"},
    {Kind::kSpeed, kSpeedDimension, "a cutting speed", "speed"},
    {Kind::kRotationalSpeed, kRotationalSpeedDimension, "a spindle speed", "rpm"},
    {Kind::kFeedPerTurn, kFeedPerTurnDimension, "a feed per turn", "feed per turn"},
    {Kind::kFeedRate, kSpeedDimension, "a feed rate", "feed rate"},
}};

constexpr bool rows_stand_in_order() {
  for (std::size_t i = 0; i < kRows.size(); ++i) {
    if (kRows[i].kind != static_cast<Kind>(i)) return false;
  }
  return true;
}
static_assert(rows_stand_in_order());

const Row& row(Kind kind) {
  return kRows.at(static_cast<std::size_t>(kind));
}

}  // namespace

Dimension dimension_of(Kind kind) {
  return row(kind).dimension;
}
std::string_view name_of(Kind kind) {
  return row(kind).name;
}
std::string_view code_name(Kind kind) {
  return row(kind).code;
}

}  // namespace sparewright::quantity
