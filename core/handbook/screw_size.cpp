#include "core/handbook/screw_size.hpp"

#include <fmt/format.h>

#include "core/handbook/inch_size.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/metric_threads.hpp"
#include "core/handbook/unified_threads.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

std::string joined(const std::vector<std::string>& sentences) {
  std::string out;
  for (const std::string& sentence : sentences)
    out += (out.empty() ? "" : "; ") + sentence;
  return out;
}

// A whole number alone: 10 is #10; 1 is 1 in, since screws of #1 are rare and 1 in ones are written so.
ScrewSize of_bare_number(const InchSize& size) {
  if (*size.bare != 1 && is_numbered_size(*size.bare)) {
    const InchSize numbered = as_numbered(*size.bare, size.taken);
    return {numbered.name, numbered.nominal,
            fmt::format("{} read as the numbered size {}", size.name, numbered.name)};
  }
  return {size.name, size.nominal,
          fmt::format("{} read as {} in, not as a numbered size", size.name, size.name)};
}

}  // namespace

base::Result<ScrewSize> read_screw_size(std::string_view text) {
  const std::string_view typed = quantity::trimmed(text);
  if (typed.starts_with('M') || typed.starts_with('m')) {
    const auto thread = read_metric_thread(typed);
    if (!thread) return tl::unexpected(thread.error());
    const double mm = thread->major.in(quantity::unit::millimetre);
    return ScrewSize{fmt::format("M{}", mm), thread->major, {}};
  }
  const auto size = inch_size_at(typed);
  if (!size)
    return unknown(typed, "screw size", {}, "a size such as #10, 1/4, M8 or a thread such as 1/4-20");
  const std::string_view rest = quantity::trimmed(typed.substr(size->taken));
  if (rest.empty()) {
    if (size->bare) return of_bare_number(*size);
    return ScrewSize{size->name, size->nominal, {}};
  }
  if (rest == "in" || rest == "\"") return ScrewSize{size->name, size->nominal, {}};
  const auto thread = read_unified_thread(typed);
  if (!thread) return tl::unexpected(thread.error());
  return ScrewSize{thread->size, thread->major, size->bare ? joined(thread->assumed) : std::string()};
}

}  // namespace sparewright::handbook
