#include "core/handbook/gear_pitches.hpp"

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Length;
namespace unit = quantity::unit;

constexpr GearPitch kPitches[] = {
#include "generated/core/handbook/gear_pitches.inc"
};
constexpr ToothForm kForms[] = {
#include "generated/core/handbook/gear_tooth_forms.inc"
};
constexpr GearCutter kCutters[] = {
#include "generated/core/handbook/gear_cutters.inc"
};

}  // namespace

Length GearPitch::module() const {
  return system == GearPitchSystem::kModule ? Length::of(number, unit::millimetre)
                                            : Length::of(1.0 / number, unit::inch);
}

std::string to_string(const GearPitch& pitch) {
  return pitch.system == GearPitchSystem::kModule ? fmt::format("module {:g}", pitch.number)
                                                  : fmt::format("{:g} DP", pitch.number);
}

std::span<const GearPitch> gear_pitches() {
  return kPitches;
}

std::span<const ToothForm> tooth_forms() {
  return kForms;
}

base::Result<ToothForm> find_tooth_form(std::string_view name) {
  const std::string wanted = folded(name);
  for (const ToothForm& form : kForms) {
    if (folded(form.name) == wanted) return form;
  }
  return unknown(name, "form of gear teeth",
                 names_of(kForms, [](const ToothForm& form) { return form.name; }));
}

base::Result<GearCutter> gear_cutter(int teeth) {
  for (const GearCutter& cutter : kCutters) {
    if (teeth >= cutter.from_teeth && (cutter.up_to_teeth == 0 || teeth <= cutter.up_to_teeth)) return cutter;
  }
  return not_tabled("the gear cutter", fmt::format("{} teeth", teeth),
                    "12 teeth to a rack; nearest: number 8, for 12 and 13 teeth");
}

}  // namespace sparewright::handbook
