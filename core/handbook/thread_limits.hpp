// What threads of every system share: basic sizes and limits of size.
#pragma once

#include <optional>
#include <string>

#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct DiameterRange {
  quantity::Diameter low;
  quantity::Diameter high;

  friend bool operator==(const DiameterRange&, const DiameterRange&) = default;
};

// The basic profile: what screw and hole have in common.
struct BasicThread {
  quantity::Diameter major;
  quantity::Diameter pitch;
  quantity::Diameter minor;  // of the hole
  Source source;
};

// The limits of a screw's thread.
struct ExternalThreadLimits {
  std::string thread_class;    // "2A", "6g"
  quantity::Length allowance;  // below the basic size
  DiameterRange major;
  DiameterRange pitch;
  quantity::Diameter flat_root_max;                  // largest minor diameter with a flat root
  std::optional<quantity::Diameter> round_root_max;  // with a rounded root: UNR; none for metric threads
  Source source;
};

// The limits of a tapped hole's thread. Its major diameter has only a lower limit.
struct InternalThreadLimits {
  std::string thread_class;  // "2B", "6H"
  quantity::Diameter major_min;
  DiameterRange pitch;
  DiameterRange minor;
  Source source;
};

// The limits of an Acme or trapezoidal thread, of the screw or of the hole: all three diameters have both,
// the roots being given clearance of their own.
struct PowerThreadLimits {
  std::string thread_class;  // "2G", "7e"
  DiameterRange major;
  DiameterRange pitch;
  DiameterRange minor;
  Source source;
};

}  // namespace sparewright::handbook
