// Which fit a hole and what goes in it have, and the standard fits that come near it.
//
// Limits of ISO 286 and ANSI B4.1, and which fit is for what, as the handbook has them.
#pragma once

#include <string>
#include <vector>

#include "core/base/hash.hpp"
#include "core/handbook/recommended_fits.hpp"

namespace sparewright::intent {

// The clearance of a pair, in mm; negative is interference. least <= most.
struct Clearance {
  double least_mm = 0.0;
  double most_mm = 0.0;
};

// The fit of one duty and one standard that comes nearest.
struct NearFit {
  handbook::FitDuty duty = handbook::FitDuty::kRunning;
  handbook::FitStandard standard = handbook::FitStandard::kIso286;
  std::string fit;   // "H7/g6", "RC4"
  std::string name;  // "close running"
  Clearance has;     // what any pair within its limits has
  double out_mm =
      0.0;  // how far the pair's clearance reaches out of that, both ends together; 0: wholly within
  std::string source;

  friend bool operator==(const NearFit& a, const NearFit& b) {
    return a.fit == b.fit && a.out_mm == b.out_mm;
  }
};

// For sliding, running, locating and press, of each standard, the fit whose clearance comes nearest to the pair's, those it
// lies within first; of several it lies within, the one whose middle is nearest. Nothing of what is not tabled at that size.
[[nodiscard]] std::vector<NearFit> near_fits(double nominal_mm, const Clearance& clearance);

// A fit that a measured pair may have been made to, hole and shaft each within its limits.
struct MadeTo {
  std::string fit;       // "3/4 in RC4", "19 mm H7/g6"
  bool certain = false;  // both lie within the limits with all that the readings leave open
};
// Sizes in mm and what the readings leave open of each. The likelier first, at most two of each standard.
[[nodiscard]] std::vector<MadeTo> may_be_made_to(double hole_mm, double hole_unknown_mm, double shaft_mm,
                                                 double shaft_unknown_mm);

// What is published of a pair.
struct FitOfPair {
  bool is_measured = true;  // both as measured; else the hole is one of the new part
  double nominal_mm = 0.0;
  std::vector<NearFit> near;
  std::vector<MadeTo> made_to;
};
[[nodiscard]] base::Fingerprint fingerprint(const FitOfPair& fit);

}  // namespace sparewright::intent
