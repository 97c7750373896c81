#include <fmt/format.h>

#include "core/answers/quick.hpp"
#include "core/handbook/eccentric_packing.hpp"

namespace sparewright::answers {

using quantity::Length;
using quantity::UnitSystem;

base::Result<Answer> packing(const Question& question) {
  const auto diameter = size_entry(question, "diameter");
  if (!diameter) return tl::unexpected(diameter.error());
  const auto wanted = size_entry(question, "throw");
  if (!wanted) return tl::unexpected(wanted.error());
  const auto width = maybe_size(question, "jaw-width");
  if (!width) return tl::unexpected(width.error());
  const auto found = handbook::eccentric_packing(wanted->length(), diameter->diameter(),
                                                 *width ? (*width)->length() : Length());
  if (!found) return tl::unexpected(found.error());
  const UnitSystem system = system_of(*diameter);
  Answer answer;
  answer.asked = fmt::format("throw of {} on {} in a three-jaw chuck", both_ways(wanted->length(), system),
                             both_ways(diameter->length(), system));
  answer.says = fmt::format("packing {} under one jaw", both_ways(found->packing, system));
  if (!*width) answer.assumed.emplace_back("jaws that touch the work on a narrow line");
  answer.assumed.emplace_back(
      "all three jaws grip true and parallel without the packing; what the bare work runs out adds itself to "
      "the throw");
  TableWriter writer("packing under one jaw", system);
  writer.length("for these jaws", found->packing, handbook::kPackingGeometry,
                "the work moves away from the packed jaw");
  writer.length("jaws that touch on a narrow line", found->narrow, handbook::kPackingGeometry);
  writer.length("wide flat jaws", found->by_the_rule, handbook::kOneAndAHalfThrow);
  TableWriter proof("to prove it by", system);
  proof.length("an indicator shows in one turn", found->run_out, handbook::kPackingGeometry,
               "twice the throw; change the packing by three quarters of what it is off");
  answer.tables = {writer.take(), proof.take()};
  answer.cautions = {
      "The work runs out of balance and its high side swings past the jaws: slowest speed first, "
      "stand clear.",
      "The packing is held by the grip alone: metal, as long as the jaw, curved to the work where it is "
      "thick; tighten again after the first cut.",
      std::string(kKeyOut)};
  return answer;
}

}  // namespace sparewright::answers
