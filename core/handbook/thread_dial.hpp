// The thread dial (chasing dial): when the half-nuts may be closed again so that the tool falls into its
// groove.
#pragma once

#include <optional>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// The dial's wheel runs on the lead screw while the half-nuts are open.
struct ThreadDial {
  int wheel_teeth = 32;
  int lines = 8;  // evenly spaced, numbered ones and those between them
};

struct DialLines {
  // Closing at any place the half-nuts go in will do: the thread's lead goes a whole number of times into the
  // lead screw's.
  bool any_place = false;
  // From the line started on, every so many lines: 1 any line, 2 every other one. None where lines alone do
  // not tell.
  std::optional<int> every;
  // Where a line alone does not tell: the same line after so many turns of the dial, which must be counted.
  // None where no number up to 100 serves: leave the half-nuts closed and run the lathe back.
  std::optional<int> turns;
  // Lines that go together, counted from 1; empty where `every` is.
  std::vector<std::vector<int>> groups;
  quantity::Length travel_per_line;
  Source source;
};

// Which lines serve for a thread of that lead (pitch times starts) on a lead screw of that lead. The carriage
// moved by k lines has gone k (teeth / lines) leads of the screw; that must be a whole number of leads of the
// thread. For a metric thread on an inch lead screw, or one cut by gears that only come near, the lead is
// taken as given: cut by a train that is off, leave the half-nuts closed whatever the dial says. Fails with
// kSizeNotPositive, or kValueNotAccepted where the lines do not divide the teeth (between two teeth the
// half-nuts do not go in). Source: kinematics; the rules printed beside lathes with 8 threads per inch (even
// numbers at any line, odd at every other, halves at every fourth, quarters at the same line) follow for 32
// teeth and 8 lines.
[[nodiscard]] base::Result<DialLines> dial_lines(quantity::Length lead_screw_lead,
                                                 quantity::Length thread_lead, const ThreadDial& dial = {});

}  // namespace sparewright::handbook
