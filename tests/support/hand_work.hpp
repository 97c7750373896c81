// A shop without collars, and the lines of a setup's sheet, for tests.
#pragma once

#include <string>
#include <vector>

#include <fmt/format.h>

#include "core/route/sheet.hpp"
#include "judged_job.hpp"

namespace sparewright::tests {

inline std::string hand_shop(const std::string& more = "") {
  std::string shop = R"([shop]
title = "Hand shop"
units = "mm"
[[machine]]
name = "drill press"
kind = "drill press"
speeds = [200, 400, 800, 1600]
[[machine]]
name = "saw"
kind = "saw"
[[machine]]
name = "bench"
kind = "bench"
[[machine]]
name = "lathe"
kind = "lathe"
speeds = [100, 200, 400]
collar.cross_slide = { turn = "4", divisions = 80, numbers_rise = "clockwise", clockwise_moves_tool = "in", slack = "0.2" }
[[holding]]
name = "clamps"
kind = "clamps"
[[holding]]
name = "chuck"
kind = "three-jaw chuck"
[[instrument]]
name = "caliper"
kind = "dial caliper"
reads = "0.02"
good_to = "0.02"
zero = "0.00"
)";
  const auto add = [&](const std::string& name, const std::string& kind, const std::string& rest) {
    shop += fmt::format("[[tool]]\nname = \"{}\"\nkind = \"{}\"\n{}\n", name, kind, rest);
  };
  for (const char* size : {"5", "6.8", "7.9", "8.02", "8.5", "9.6", "19", "20"})
    add(fmt::format("drill {}", size), "twist drill", fmt::format("diameter = \"{}\"", size));
  add("spot", "spot drill", "diameter = \"6\"");
  add("tap M8", "tap", "thread = \"M8x1.25\"");
  add("reamer 10", "reamer", "diameter = \"10.01\"");
  add("counterbore M8", "counterbore", "diameter = \"15\"\npilot = \"9\"");
  add("countersink", "countersink", "diameter = \"20\"");
  add("blade", "saw blade", "width = \"1.6\"");
  add("file", "file", "");
  add("press", "press", "");
  add("die", "die", "thread = \"M8x1.25\"");
  add("tool", "turning tool", "");
  return shop + more;
}

// "make" or "join" with its tools, each in quotes; none: join.
inline std::string step(const std::string& feature, const std::string& tools = "") {
  if (tools.empty()) return fmt::format("[[setup.do]]\njoin = \"{}\"\n", feature);
  return fmt::format("[[setup.do]]\nmake = \"{}\"\nwith = [{}]\n", feature, tools);
}

inline std::string hand_setup(int op, const std::string& machine, const std::string& up,
                              const std::string& steps) {
  return fmt::format(
      "[[setup]]\nop = {}\nname = \"test\"\nmachine = \"{}\"\nhold = {{ in = \"clamps\", up = \"{}\" }}\n{}",
      op, machine, up, steps);
}

inline route::SetupSheet sheet_of(Judged& job, int op) {
  const auto sheet = job.ledger.value<route::SetupSheet>(fmt::format("op {}/sheet", op));
  if (!sheet) {
    ADD_FAILURE() << "no sheet of op " << op;
    return {};
  }
  return *sheet;
}

// The lines, notes and stops of a sheet, one text each, in their order.
inline std::vector<std::string> items_of(const route::SetupSheet& sheet) {
  std::vector<std::string> all;
  for (const route::Item& item : sheet.items) {
    if (const auto* line = std::get_if<route::Line>(&item)) {
      all.push_back(line->says);
    } else if (const auto* note = std::get_if<route::Note>(&item)) {
      all.push_back(note->says);
    } else {
      const auto& stop = std::get<route::Stop>(item);
      std::string says = stop.says;
      for (const route::ProofReading& reading : stop.readings)
        says += " | " + reading.what + " " + reading.expect;
      all.push_back(says + " | " + stop.rule);
    }
  }
  return all;
}

// The line that says so; fails the test where there is none.
inline route::Line line_with(const route::SetupSheet& sheet, const std::string& words) {
  for (const route::Item& item : sheet.items) {
    const auto* line = std::get_if<route::Line>(&item);
    if (line != nullptr && line->says.find(words) != std::string::npos) return *line;
  }
  ADD_FAILURE() << "no line says '" << words << "'";
  return {};
}

}  // namespace sparewright::tests
