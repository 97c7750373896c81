// Jobs on a lathe from texts to verdicts, for tests: a bar in a three-jaw chuck, one division of the cross slide 0.04 mm on
// diameter.
#pragma once

#include <string>

#include <fmt/format.h>

#include "judged_job.hpp"

namespace sparewright::tests {

struct LatheShop {
  std::string cross =
      R"({ turn = "2", divisions = 100, reads = "travel", numbers_rise = "clockwise", clockwise_moves_tool = "in", slack = "0.15" })";
  std::string compound =
      R"({ turn = "2", divisions = 100, reads = "travel", numbers_rise = "clockwise", clockwise_moves_tool = "to headstock", slack = "0.10" })";
  std::string carriage =
      R"(collar.carriage = { turn = "20", divisions = 200, numbers_rise = "clockwise", clockwise_moves_tool = "to headstock", slack = "0.30" })";
  std::string tapers = R"({ by = "0.010", over = "150" })";
  std::string grips_to = "110";
};

inline std::string lathe_shop(const LatheShop& s = {}) {
  return R"(
[shop]
title = "Test lathe"
units = "mm"
[[machine]]
name = "lathe"
kind = "lathe"
speeds = [60, 100, 160, 260, 420, 700, 1100, 1800]
tapers = )" +
         s.tapers + "\ncollar.cross_slide = " + s.cross + "\ncollar.compound = " + s.compound + "\n" +
         s.carriage +
         R"(
[[holding]]
name = "chuck"
kind = "three-jaw chuck"
jaws = "30"
grips = { from = "3", to = ")" +
         s.grips_to + R"(" }
[[instrument]]
name = "micrometer 25-50"
kind = "outside micrometer"
reads = "0.001"
good_to = "0.003"
zero = "0.000"
[[instrument]]
name = "bore gauge"
kind = "dial bore gauge"
reads = "0.001"
good_to = "0.003"
zero = "0.000"
jaws = ["inside"]
[[tool]]
name = "R1.2"
kind = "turning tool"
nose_radius = "1.2"
[[tool]]
name = "R0.8"
kind = "turning tool"
nose_radius = "0.8"
[[tool]]
name = "bar"
kind = "boring bar"
least_bore = "10"
[[tool]]
name = "groover"
kind = "grooving tool"
width = "2"
[[tool]]
name = "parter"
kind = "parting tool"
width = "3"
[[tool]]
name = "threader"
kind = "threading tool"
[[tool]]
name = "centre drill"
kind = "centre drill"
diameter = "2.5"
[[tool]]
name = "knurls"
kind = "knurling tool"
pitch = "1"
[[tool]]
name = "drill 12"
kind = "twist drill"
diameter = "12"
[[tool]]
name = "reamer 12"
kind = "reamer"
diameter = "12.2"
[[tool]]
name = "tap"
kind = "tap"
thread = "M14x2"
)";
}

// A bar 25.57 across and 80 long, 30 of it in the chuck.
inline std::string lathe_job(const std::string& features, const std::string& works,
                             const std::string& more = {}, const std::string& diameter = "25.57") {
  return R"(
[job]
title = "Test job"
units = "mm"
[blank]
shape = "round bar"
material = "1018 cold drawn"
size = { length = "80", diameter = ")" +
         diameter + R"(" }
)" + features +
         R"(
[[setup]]
op = 20
name = "turn"
machine = "lathe"
hold = { in = "chuck", free_end = "right end", gripped = "30" }
)" + more +
         works;
}

inline std::string lathe_work(const std::string& feature, const std::string& tools,
                              const std::string& found = {}) {
  return fmt::format("[[setup.do]]\nmake = \"{}\"\nwith = [{}]\n{}", feature, tools,
                     found.empty() ? "" : fmt::format("found = \"{}\"\n", found));
}

}  // namespace sparewright::tests
