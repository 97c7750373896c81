// An order of work. The job's text gives one; a search may propose others of the same type.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/hash.hpp"
#include "core/part/face.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/typed.hpp"
#include "core/shop/shop.hpp"

namespace sparewright::route {

// In a vise on parallels, the fixed jaw away from the operator; or under clamps on the table. The machine's x runs to the
// operator's right, y away, z up.
struct Holding {
  std::variant<shop::Vise, shop::Holder> in;
  part::Face sits_on = part::Face::kUnderside;  // the side of the part that lies on what is under it
  part::Face away = part::Face::kBack;  // the side away from the operator: in a vise against the fixed jaw
  // In a vise a pair of parallels, hard against the jaws. On the table packing of no thickness: it stands where nothing goes
  // through; of no height where the work lies on the table itself.
  shop::Parallel under;

  [[nodiscard]] const shop::Vise* vise() const { return std::get_if<shop::Vise>(&in); }
  [[nodiscard]] const std::string& name() const;  // of the vise or the clamps
};

// How the zero of x or y is found: an edge finder on a side of the work.
struct EdgePickUp {
  part::Face side = part::Face::kLeftEnd;
  shop::Tool edge_finder;
};

// On a mill.
struct OnMill {
  Holding holding;
  EdgePickUp x;
  EdgePickUp y;
};

enum class TailSupport { kNone, kLiveCentre, kDeadCentre, kSteady };
[[nodiscard]] std::string_view name_of(TailSupport tail);

// On a lathe round work turns about the x axis of the part, through the middle of its blank.
struct OnLathe {
  shop::Holder holder;
  part::Face free_end = part::Face::kRightEnd;  // the end towards the tailstock
  std::string on;                               // the feature it is gripped on; empty: the blank's outside
  std::optional<quantity::Length> gripped;      // how much of it lies in the jaws
  TailSupport tail = TailSupport::kNone;
  std::optional<quantity::Angle> compound;  // of the compound slide's travel to the axis of the work
};

// At a drill press, a saw or a bench: places are marked, nothing is dialled across.
struct ByMarks {
  std::variant<shop::Vise, shop::Holder> in;
  part::Face up = part::Face::kTop;
};
[[nodiscard]] std::string_view name_of_holder(const ByMarks& by);

using Held = std::variant<OnMill, OnLathe, ByMarks>;

// One feature made in this setup, with the tools in the order they are used.
struct Work {
  std::string feature;
  std::vector<shop::Tool> tools;
  std::optional<quantity::Typed> found;  // what was measured at the stop before its last cuts
  bool joins = false;                    // a split part's pieces are put together again here, nothing is cut
};

// Burrs taken off as a step of its own, after so many of the setup's works.
struct Deburring {
  std::vector<std::string> features;  // whose edges; all edges where there are none
  std::vector<shop::Tool> tools;
  std::size_t after = 0;
};

struct Setup {
  int op = 10;
  std::string name;
  shop::Machine machine;
  Held held;
  std::vector<Work> works;
  std::vector<Deburring> deburrings;
  std::string done_before;  // "ends square", for the head of the sheet
};

struct Plan {
  std::vector<Setup> setups;
};

[[nodiscard]] base::Fingerprint fingerprint(const Setup& setup);

// The side of the part that the tool comes from: the upper one, on a lathe the free end.
[[nodiscard]] part::Face worked_side(const Setup& setup);

// "op 20"
[[nodiscard]] std::string setup_path(const Setup& setup);

}  // namespace sparewright::route
