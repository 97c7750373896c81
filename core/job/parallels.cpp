#include "core/job/parallels.hpp"

#include "core/handbook/drills.hpp"

namespace sparewright::job {

base::Result<shop::Parallel> read_parallel(const text::Node& node, text::System system) {
  const std::string typed(node.typed());
  const auto cross = typed.find('x');
  if (cross == std::string::npos) {
    return base::fail(
        text::failure_at(node, base::Code::kValueNotAccepted, typed, "height x thickness: 3/4 x 1/8"));
  }
  const auto height = quantity::read_number(typed.substr(0, cross), quantity::Kind::kLength, system);
  const auto thickness = quantity::read_number(typed.substr(cross + 1), quantity::Kind::kLength, system);
  for (const auto& part : {height, thickness}) {
    if (!part)
      return base::fail(text::failure_at(node, part.error().code, typed, "height x thickness: 3/4 x 1/8"));
    if (part->base <= 0.0) return base::fail(text::failure_at(node, base::Code::kSizeNotPositive, typed));
  }
  return shop::Parallel{height->length(), thickness->length(), typed};
}

std::optional<quantity::Typed> drill_size(const text::TableReader& in, std::string_view key,
                                          const quantity::Designation& designation) {
  const auto drill =
      in.problems().keep(text::located(handbook::find_drill(designation), *in.node().find(key)));
  if (!drill) return std::nullopt;
  quantity::Typed typed;
  typed.base = drill->diameter.base();
  typed.kind = quantity::Kind::kDiameter;
  typed.unit = quantity::unit::inch;
  typed.typed = designation.typed;
  typed.places = 4;
  typed.unit_given = true;
  return typed;
}

}  // namespace sparewright::job
