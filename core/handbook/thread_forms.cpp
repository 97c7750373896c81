#include "core/handbook/thread_forms.hpp"

#include <array>

#include "core/handbook/thread_formulas.hpp"

namespace sparewright::handbook {
namespace {

namespace unit = quantity::unit;

constexpr Source kGeometry{"geometry of the sharp 60 degree thread", "", Basis::kDerived};
constexpr Source kNational{"American National form, flats of P/8", "", Basis::kFromMemory};
constexpr Source kPipe{"ASME B1.20.1, height of thread 0.8 P at most", "", Basis::kFromMemory};
constexpr Source kWhitworth{"BS 84, Whitworth form: depth 0.640327 P, radius 0.137329 P", "",
                            Basis::kFromMemory};
constexpr Source kAssociation{"BS 93, British Association form: depth 0.6 P, radius 2 P / 11", "",
                              Basis::kFromMemory};
constexpr Source kCycle{"BS 811, cycle form: depth 0.5327 P, radius P/6", "", Basis::kFromMemory};
constexpr Source kAcme{"ASME B1.5, general purpose Acme form: depth P/2, flat 0.3707 P", "",
                       Basis::kFromMemory};
constexpr Source kTrapezoidal{"ISO 2901, trapezoidal form: depth P/2, flat 0.366 P", "", Basis::kFromMemory};

constexpr double kHeight = 0.8660254037844386;        // H / P of the sharp 60 degree triangle, sqrt(3) / 2
constexpr double kScrewRoot = 17.0 / 24.0 * kHeight;  // Unified and metric: round root of radius H/6

constexpr ThreadGroove kSharpGroove{kHeight / 2.0, kHeight, 0.0};
constexpr ThreadGroove kNationalGroove{kPitchLinePerPitch / 2.0, 0.75 * kHeight, 0.0};
constexpr ThreadGroove kIsoScrew{kPitchLinePerPitch / 2.0, kScrewRoot, kHeight / 6.0};
constexpr ThreadGroove kIsoHole{(kInternalMinorPerPitch - kPitchLinePerPitch) / 2.0,
                                kInternalMinorPerPitch / 2.0, 0.0};
constexpr ThreadGroove kPipeGroove{0.4, 0.8, 0.0};
constexpr ThreadGroove kWhitworthGroove{0.640327 / 2.0, 0.640327, 0.137329};
constexpr ThreadGroove kAssociationGroove{0.3, 0.6, 2.0 / 11.0};
constexpr ThreadGroove kCycleGroove{0.5327 / 2.0, 0.5327, 1.0 / 6.0};
constexpr ThreadGroove kHalfPitchGroove{0.25, 0.5, 0.0};

constexpr ThreadProfile profile(ThreadForm form, std::string_view name, double degrees,
                                const ThreadGroove& screw, const ThreadGroove& hole, const Source& source) {
  return {form, name, quantity::Angle::of(degrees, unit::degree), screw, hole, source};
}

constexpr std::array kProfiles{
    profile(ThreadForm::kSharpV, "sharp V", 60, kSharpGroove, kSharpGroove, kGeometry),
    profile(ThreadForm::kAmericanNational, "American National", 60, kNationalGroove, kNationalGroove,
            kNational),
    profile(ThreadForm::kUnified, "Unified", 60, kIsoScrew, kIsoHole, kThreadProfile),
    profile(ThreadForm::kMetric, "ISO metric", 60, kIsoScrew, kIsoHole, kThreadProfile),
    profile(ThreadForm::kAmericanPipe, "American pipe", 60, kPipeGroove, kPipeGroove, kPipe),
    profile(ThreadForm::kWhitworth, "Whitworth", 55, kWhitworthGroove, kWhitworthGroove, kWhitworth),
    profile(ThreadForm::kBritishAssociation, "British Association", 47.5, kAssociationGroove,
            kAssociationGroove, kAssociation),
    profile(ThreadForm::kBritishCycle, "British cycle", 60, kCycleGroove, kCycleGroove, kCycle),
    profile(ThreadForm::kAcme, "Acme", 29, kHalfPitchGroove, kHalfPitchGroove, kAcme),
    profile(ThreadForm::kTrapezoidal, "trapezoidal", 30, kHalfPitchGroove, kHalfPitchGroove, kTrapezoidal),
};

constexpr bool profiles_stand_in_order() {
  for (std::size_t i = 0; i < kProfiles.size(); ++i) {
    if (kProfiles[i].form != static_cast<ThreadForm>(i)) return false;
  }
  return true;
}
static_assert(profiles_stand_in_order(), "profiles stand in the order of the forms");

}  // namespace

const ThreadProfile& profile_of(ThreadForm form) {
  return kProfiles.at(static_cast<std::size_t>(form));
}

}  // namespace sparewright::handbook
