// Tightening by torque, and how far off the preload it leaves may be.
#pragma once

#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/screw_grades.hpp"
#include "core/handbook/screw_thread.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// T = K F d: torque of a preload F on a screw of nominal diameter d. Source: the usual formula of machine
// design (Mechanical Engineering Design, from memory).
template <class Scalar>
[[nodiscard]] Scalar tightening_torque_nmm(const Scalar& nut_factor, const Scalar& preload_n,
                                           const Scalar& diameter_mm) {
  return nut_factor * preload_n * diameter_mm;
}

// State of the threads and of the face under head or nut.
enum class ThreadState {
  kAsReceived,
  kMachineOil,
  kMolybdenumPaste,
  kCopperPaste,
  kZincPlated,
  kCadmiumPlated
};
[[nodiscard]] std::string_view name_of(ThreadState state);  // "machine oil"

// A nut factor K as one source has it. All from memory: they show the scatter and replace no test.
struct NutFactor {
  ThreadState state = ThreadState::kAsReceived;
  std::string_view as_printed;  // "molybdenum paste or grease"
  double low = 0.0;
  double mean = 0.0;
  double high = 0.0;
  Source source;
};

struct NutFactors {
  double low = 0.0;   // of all sources
  double mean = 0.0;  // of the first source, which has tests behind it
  double high = 0.0;
  std::vector<NutFactor> printed;  // not empty
};
[[nodiscard]] NutFactors nut_factors(ThreadState state);

// Usual preloads as a share of the proof load: 0.75 for joints taken apart again, 0.90 for those that stay
// (Mechanical Engineering Design, from memory).
inline constexpr double kPreloadReused = 0.75;
inline constexpr double kPreloadPermanent = 0.90;

struct Tightening {
  ThreadState state = ThreadState::kAsReceived;
  quantity::Force preload;       // asked for
  quantity::Torque torque;       // that gives it at the mean K
  quantity::Force preload_low;   // what the same torque leaves at the highest K
  quantity::Force preload_high;  // and at the lowest
  quantity::Torque most;         // the torque that no K in print takes past the proof load
  bool may_pass_proof = false;   // preload_high is over the proof load: the screw may stretch for good
  ScrewLoads loads;
  NutFactors factors;
};

// share of the proof load, more than 0 up to 1; else kValueNotAccepted.
[[nodiscard]] base::Result<Tightening> tightening(const ScrewThread& thread, const ScrewGrade& grade,
                                                  ThreadState state, double share = kPreloadReused);

}  // namespace sparewright::handbook
