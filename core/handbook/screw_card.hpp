// Everything about one screw, asked for by name: "5/16-18 socket head", "M8 flat head", "1/2-13 hex".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/button_head_screws.hpp"
#include "core/handbook/clearance_holes.hpp"
#include "core/handbook/counterbores.hpp"
#include "core/handbook/countersinks.hpp"
#include "core/handbook/hex_fasteners.hpp"
#include "core/handbook/plain_washers.hpp"
#include "core/handbook/screw_grades.hpp"
#include "core/handbook/screw_thread.hpp"
#include "core/handbook/set_screws.hpp"
#include "core/handbook/socket_head_screws.hpp"
#include "core/handbook/spotfaces.hpp"
#include "core/handbook/tapping.hpp"
#include "core/handbook/tightening.hpp"

namespace sparewright::handbook {

enum class HeadKind { kSocketHead, kButtonHead, kFlatSocketHead, kFlatMachineHead, kHexHead, kSetScrew };
[[nodiscard]] std::string_view name_of(HeadKind head);  // "socket head cap screw"

struct NamedScrew {
  ScrewThread thread;
  HeadKind head = HeadKind::kSocketHead;
  std::vector<std::string> assumed;  // what was not written and how it was taken, a sentence each
};

// Reads a thread or size and behind it the head, in capitals or small letters: "5/16-18 socket head", "#10
// SHCS", "M8 button head", "1/4-20 UNC flat head machine screw", "1/2 hex", "M6 set screw". A size alone is
// taken as the coarse thread, flat head alone as the socket screw, and `assumed` says so. Fails with
// kNameUnknown, naming the heads known, or as read_screw_thread does.
[[nodiscard]] base::Result<NamedScrew> read_named_screw(std::string_view text);

using HeadRow = std::variant<SocketHeadScrew, ButtonHeadScrew, FlatHeadScrew, HexFastener, SetScrew>;

// What is tabled for the screw; empty or none where it does not apply or is not.
struct ScrewCard {
  NamedScrew screw;
  HeadRow head;
  std::vector<ClearanceHole> clearance_holes;  // close, normal, loose; none for a set screw
  std::optional<ChartedTapDrill> tap_drill;    // the chart's 75 % column, with what it leaves
  std::vector<Counterbore> counterbores;       // socket head: every set in print
  std::optional<Countersink> sink;             // flat head
  std::optional<HexFastener> nut;              // hex head
  std::optional<PlainWasher> washer;           // hex head
  std::optional<Spotface> face;                // hex head, under the head itself
  std::optional<ScrewGrade> grade;
  std::optional<ScrewLoads> loads;
  std::optional<Tightening> oiled;  // tightened to 0.75 of the proof load, oiled
};

// grade as in screw_grade. Left out, a socket head cap screw is taken as ASTM A574 or ISO class 12.9 and
// `assumed` says so; of the others no strength is given, since none is sure. Fails as read_named_screw and
// screw_grade do, or with kNotTabled where that head is not made in that size.
[[nodiscard]] base::Result<ScrewCard> screw_card(std::string_view text,
                                                 std::optional<std::string_view> grade = {});

}  // namespace sparewright::handbook
