#include "core/handbook/pitch_text.hpp"

#include <array>
#include <string>
#include <utility>

#include "core/handbook/lookup.hpp"
#include "core/handbook/thread_text.hpp"
#include "core/quantity/spelling.hpp"
#include "core/quantity/typed_system.hpp"

namespace sparewright::handbook {
namespace {

constexpr std::string_view kExamples = "8 tpi, 4-1/2 tpi, 1.25 mm, 1/8 in";
constexpr std::array<std::string_view, 3> kPerInch{"tpi", "threads per inch",
                                                   "per inch"};  // longer ones first

}  // namespace

base::Result<TypedPitch> read_pitch(std::string_view text, std::optional<quantity::UnitSystem> bare) {
  const std::string written = folded(text);
  for (const std::string_view ending : kPerInch) {
    if (!written.ends_with(ending)) continue;
    const std::string count(quantity::trimmed(written.substr(0, written.size() - ending.size())));
    const PerInch per_inch = threads_per_inch_at(count);
    if (per_inch.taken != count.size() || !(per_inch.value > 0.0))
      return base::fail(base::Code::kNotANumber, text, kExamples, "threads per inch, more than zero");
    return TypedPitch{quantity::Length::of(1.0, quantity::unit::inch) / per_inch.value,
                      quantity::UnitSystem::kInch};
  }
  const auto length = quantity::read_number(text, quantity::Kind::kLength, bare);
  if (!length) {
    base::Failure failure = length.error();
    failure.accepted = kExamples;
    return base::fail(std::move(failure));
  }
  if (!(length->base > 0.0))
    return base::fail(base::Code::kSizeNotPositive, length->typed, kExamples, "a pitch");
  return TypedPitch{length->length(), quantity::system_of(*length)};
}

}  // namespace sparewright::handbook
