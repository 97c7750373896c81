#include "core/job/tree_text.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/part/dimension_tree.hpp"

namespace sparewright::job {
namespace {

// at.x.from, or region.start.from of a flat; as far down as it is written.
text::Node place_of(const text::Node& feature, part::Axis axis) {
  text::Node node = feature;
  const bool is_flat = feature.find("region").has_value();
  for (const std::string_view key :
       {is_flat ? std::string_view("region") : std::string_view("at"),
        is_flat ? std::string_view("start") : part::name_of(axis), std::string_view("from")}) {
    const auto below = node.find(key);
    if (!below) break;
    node = *below;
  }
  return node;
}

std::string with_a_place(const part::TreeFault& fault) {
  constexpr std::size_t kMostNames = 12;
  const std::size_t names = std::min(fault.accepted.size(), kMostNames);
  std::string words = fmt::format("{} or {}", part::name_of(part::face_at(fault.axis, false)),
                                  part::name_of(part::face_at(fault.axis, true)));
  if (names > 0)
    words += fmt::format(
        ", or what has a place along {}: {}", part::name_of(fault.axis),
        fmt::join(fault.accepted.begin(), fault.accepted.begin() + static_cast<std::ptrdiff_t>(names), ", "));
  return words;
}

base::Code code_of(part::TreeFault::What what) {
  switch (what) {
    case part::TreeFault::What::kNoPlace:
      return base::Code::kValueNotAccepted;
    case part::TreeFault::What::kCircle:
      return base::Code::kNameCircle;
    case part::TreeFault::What::kTooLong:
      break;
  }
  return base::Code::kTooMany;
}

}  // namespace

void tell_tree_faults(const std::vector<text::TableReader>& tables,
                      const std::vector<part::Feature>& features) {
  for (const part::TreeFault& fault : part::tree_faults(features)) {
    const bool no_place = fault.what == part::TreeFault::What::kNoPlace;
    const std::string& name = features[fault.feature].name;
    auto failure = text::failure_at(
        place_of(tables[fault.feature].node(), fault.axis), code_of(fault.what), fault.found,
        no_place ? with_a_place(fault) : std::string("a chain that starts at a side of the work"));
    failure.subject = no_place ? fmt::format("{} of {} from", part::name_of(fault.axis), name)
                               : fmt::format("the place of {}", name);
    tables[fault.feature].problems().add(std::move(failure));
  }
}

}  // namespace sparewright::job
