#include <fmt/format.h>

#include "core/answers/quick.hpp"
#include "core/handbook/countersinks.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using quantity::Angle;
using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr handbook::Source kSinkGeometry{
    "depth of a countersink = (diameter at the surface - hole) / (2 tan(half its angle)), geometry", "",
    handbook::Basis::kDerived};

struct Asked {
  Length diameter;
  Length hole;
  Angle angle;
  UnitSystem system = UnitSystem::kInch;
  std::string of;
};

base::Result<Asked> for_screw(const std::string& size) {
  const auto sunk = handbook::countersink(handbook::FlatHeadStyle::kSocket, size);
  if (!sunk) return tl::unexpected(sunk.error());
  const bool metric = size.find_first_of("Mm") == 0;
  return Asked{across(sunk->diameter), across(sunk->hole.hole), sunk->screw.angle,
               metric ? UnitSystem::kMetric : UnitSystem::kInch,
               fmt::format("flat head socket screw {}", sunk->screw.size)};
}

base::Result<Asked> asked_of(const Question& question) {
  if (const std::string* screw = find_entry(question, "screw")) return for_screw(*screw);
  const auto diameter = size_entry(question, "diameter");
  if (!diameter) return tl::unexpected(diameter.error());
  const auto hole = maybe_size(question, "hole");
  if (!hole) return tl::unexpected(hole.error());
  const auto angle = number_entry(question, "angle", Kind::kAngle);
  if (!angle) return tl::unexpected(angle.error());
  if (!(angle->angle() >= Angle::of(30.0, unit::degree) && angle->angle() <= Angle::of(150.0, unit::degree)))
    return base::fail(base::Code::kValueNotAccepted, angle->typed, "an included angle from 30 to 150 deg",
                      "--angle");
  if (*hole && !((*hole)->base < diameter->base))
    return base::fail(base::Code::kValueNotAccepted, (*hole)->typed,
                      fmt::format("less than {}", diameter->typed), "--hole");
  return Asked{diameter->length(), *hole ? (*hole)->length() : Length(), angle->angle(), system_of(*diameter),
               ""};
}

}  // namespace

base::Result<Answer> sink(const Question& question) {
  const auto asked = asked_of(question);
  if (!asked) return tl::unexpected(asked.error());
  const Length depth = Length::from_base(
      handbook::countersink_depth_mm(asked->diameter.base(), asked->hole.base(), asked->angle.base()));
  const std::string degrees = fmt::format("{:g} degree countersink", asked->angle.in(unit::degree));
  Answer answer;
  answer.asked = fmt::format("{} to {} across{}{}", degrees, both_ways(asked->diameter, asked->system),
                             asked->of.empty() ? "" : ", ", asked->of);
  const bool in_hole = asked->hole > Length();
  answer.says = fmt::format("down {} from touching", both_ways(depth, asked->system));
  answer.assumed.emplace_back(in_hole ? "touching the edge of the hole, the cutter true on it"
                                      : "no hole: from the point touching the surface");
  TableWriter writer("the countersink", asked->system);
  writer.length("down from touching", depth, kSinkGeometry);
  writer.length("across at the surface", asked->diameter, kSinkGeometry);
  if (in_hole) writer.length("hole", asked->hole, kSinkGeometry);
  const Length thou = Length::of(1.0, unit::thou);
  writer.length("0.001 in deeper widens it by", thou * (asked->diameter - asked->hole).base() / depth.base(),
                kSinkGeometry);
  answer.tables.push_back(writer.take());
  if (find_entry(question, "on") == nullptr) return answer;
  const auto machine = machine_entry(question);
  if (!machine) return tl::unexpected(machine.error());
  auto down = depth_on(**machine, depth, asked->system);
  if (!down) return tl::unexpected(down.error());
  answer.tables.push_back(std::move(*down));
  return answer;
}

}  // namespace sparewright::answers
