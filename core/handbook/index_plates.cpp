#include "core/handbook/index_plates.hpp"

#include <utility>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

struct CircleRow {
  std::string_view set;
  std::string_view plate;
  int circle;
  Source source;
};
constexpr CircleRow kCircles[] = {
#include "generated/core/handbook/index_plates.inc"
};

}  // namespace

std::vector<IndexPlateSet> index_plate_sets() {
  std::vector<IndexPlateSet> sets;
  for (const CircleRow& row : kCircles) {
    if (sets.empty() || sets.back().name != row.set) sets.push_back({std::string(row.set), {}, row.source});
    std::vector<IndexPlate>& plates = sets.back().plates;
    if (plates.empty() || plates.back().name != row.plate) plates.push_back({std::string(row.plate), {}});
    plates.back().circles.push_back(row.circle);
  }
  return sets;
}

base::Result<IndexPlateSet> find_index_plates(std::string_view name) {
  const std::string wanted = folded(name);
  for (IndexPlateSet& set : index_plate_sets()) {
    if (set.name == wanted) return std::move(set);
  }
  return unknown(name, "set of index plates",
                 names_of(kCircles, [](const CircleRow& row) { return row.set; }));
}

base::Result<DividingHead> checked(DividingHead head) {
  const auto refuse = [](std::string_view subject, const std::string& found, const std::string& accepted) {
    return base::fail(base::Code::kValueNotAccepted, found, accepted, subject);
  };
  if (head.worm < kLeastWorm || head.worm > kMostWorm) {
    return refuse("the worm of the head", fmt::format("{}:1", head.worm),
                  fmt::format("{}:1 to {}:1, such as 40:1, 60:1 or 90:1", kLeastWorm, kMostWorm));
  }
  bool any = false;
  for (const IndexPlate& plate : head.plates) {
    for (const int holes : plate.circles) {
      any = true;
      if (holes >= 2 && holes <= kMostHoles) continue;
      return refuse("a circle of " + plate.name, fmt::format("{} holes", holes),
                    fmt::format("2 to {} holes", kMostHoles));
    }
  }
  if (!any) return refuse("the plates of the head", "no circle", "at least one plate with a circle of holes");
  return head;
}

}  // namespace sparewright::handbook
