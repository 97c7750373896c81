// Friction and grip of chucks, vises and clamps, as ranges.
//
// CAUTION: calculated grip may say NO, never OK. It leaves out oil, burrs, a rocking jaw, a springy part and
// a tired arm.
#pragma once

#include <span>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/handbook/work.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct FrictionRange {
  double low = 0.0;
  double high = 0.0;
};

enum class JawFace { kSmooth, kDiamond, kSerrated };
enum class WorkFinish {
  kFine,   // smooth machined or ground
  kRough,  // rough to medium machined
  kUnmachined,
};

struct JawFriction {
  double coefficient = 0.0;
  Source source;
};
// Of a chuck jaw on work of a metal: the figure for steel times the metal's factor. Fails with kNotTabled for
// metals other than steel, aluminium, brass and grey iron.
[[nodiscard]] base::Result<JawFriction> jaw_friction(JawFace jaw, WorkFinish finish, WorkGroup work);

// Pairs in vises and under clamps, per face.
struct GripPair {
  std::string_view pair;  // "ground steel jaw on steel, oily"
  double low = 0.0;
  double high = 0.0;
  std::string_view note;
  Source source;
};
[[nodiscard]] std::span<const GripPair> grip_pairs();
// By its name. Fails with kNameUnknown.
[[nodiscard]] base::Result<GripPair> find_grip_pair(std::string_view text);

// By how much the grip must be more than the cut asks for.
struct GripSafety {
  std::string_view case_of;
  double new_chuck = 0.0;
  double older_chuck = 0.0;
  std::string_view note;
  Source source;
};
[[nodiscard]] std::span<const GripSafety> grip_safeties();

// What vises and chucks may grip with.
struct ClampingForce {
  std::string_view device;
  std::string_view condition;
  double low_kn = 0.0;
  double high_kn = 0.0;
  Source source;

  [[nodiscard]] quantity::Force low() const {
    return quantity::Force::of(low_kn, quantity::unit::kilonewton);
  }
  [[nodiscard]] quantity::Force high() const {
    return quantity::Force::of(high_kn, quantity::unit::kilonewton);
  }
};
[[nodiscard]] std::span<const ClampingForce> clamping_forces();

// There is no third answer.
enum class GripVerdict {
  kNo,         // at the low friction and with the safety factor it does not hold
  kNotProven,  // the calculation has nothing against it, which proves nothing
};

struct GripCheck {
  quantity::Force holds_low;   // faces x low friction x clamping force
  quantity::Force holds_high;  // at the high friction
  quantity::Force needed;      // cutting force x safety
  GripVerdict verdict = GripVerdict::kNotProven;
};

// Grip against a force that would slide the work along the jaws. faces: how many hold by friction, 2 in a
// vise. clamping: the force on each face. Fails with kSizeNotPositive (faces, clamping, friction; cutting may
// be zero), and with kOutsideDomain for a friction range upside down or a safety below 1.
[[nodiscard]] base::Result<GripCheck> check_grip(quantity::Force clamping, int faces, FrictionRange friction,
                                                 quantity::Force cutting, double safety);

}  // namespace sparewright::handbook
