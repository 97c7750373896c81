// An invented job: a bracket for a cider press's idler, bored, drilled and stepped in two holdings.
#pragma once

#include "sheets/packet.hpp"

namespace sparewright::tests {

inline route::SetupSheet bore_drill_and_tap() {
  route::SetupSheet s;
  s.op = 20;
  s.name = "Bore, drill and tap from the top, in one holding";
  s.done_before = "op 10, ends square";
  s.stock = "1018 cold drawn, found 0.748 x 1.998 x 4.248. Not handed: may be turned over.";
  s.sizes_that_matter = {"bore 0.8750-0.8758", "bore to each hole 2.305 ±0.004",
                         "hole 1 to hole 2 1.000 ±0.004"};
  s.the_rest = "all others: two places and fractions ±1/64, three places ±0.005";
  s.machine = {"Knee mill, no readout. Sizes in inches.",
               "X and Y collars 0.200 a turn, slack X 0.014, Y 0.009.", "FINISH EVERY MOVE CLOCKWISE.",
               "Going back, or past it: half a turn beyond, then come up again."};
  s.check = {"head, 10 in sweep: 0.0030 most", "fixed jaw: 0.001 in 6", "micrometer 0"};
  s.hold = {"6 in [vise]. Back to the FIXED jaw, front to the moving jaw.",
            "1-1/4 x 1/4 parallels hard against the jaws; underside down on them. Drills miss them by 0.09.",
            "0.50 gripped, 0.25 showing. Tap down: neither parallel moves."};
  s.pick_up = {
      "X Touch left end, lift, go on 0.100 toward the work (edge finder 0.200), ending clockwise. X collar "
      "to 0.",
      "Y Touch front, the same, ending clockwise. Y collar to 0.", "Then leave both collars alone."};
  const auto line = [&](int number, std::string says, std::string x, std::string y, std::string rpm,
                        std::string feed, std::string expect, bool to_fill) {
    s.items.emplace_back(route::Line{number, std::move(says), std::move(x), std::move(y), "", std::move(rpm),
                                     std::move(feed), std::move(expect), to_fill});
  };
  line(1, "spot bore, dimple 0.1", "5t + 62", "4t + 199", "1115", "hand", "on the cross", false);
  line(2, "spot hole 1, dimple 0.1", "16t + 112", "2t + 99", "1115", "hand", "on the cross", false);
  line(3, "spot hole 2, dimple 0.1", "16t + 112", "7t + 99", "1115", "hand", "on the cross", false);
  s.items.emplace_back(
      route::Stop{"STOP. Caliper, same-side edges of the dimples.",
                  {{"bore to hole 1", "2.305"}, {"bore to hole 2", "2.305"}, {"hole 1 to hole 2", "1.000"}},
                  "More than 0.003 out: do NOT drill."});
  line(4, "drill 5/16 through, hole 2", "16t + 112", "7t + 99", "660", "hand, oil", "0.313-0.318", false);
  line(5, "the same, hole 1", "16t + 112", "2t + 99", "660", "hand, oil", "0.313-0.318", false);
  line(6, "bore: drill 1/4 at 1115, then 27/32", "5t + 62", "4t + 199", "325", "ease the end", "0.844-0.850",
       true);
  s.items.emplace_back(route::Note{"LOCK X AND Y. Turn the boring head round once by hand before power."});
  line(7, "bore, quill feed", "", "", "325", "0.003 a turn", "0.8580", true);
  line(8, "head out 8.6 on diameter", "", "", "325", "0.003 a turn", "0.8666", true);
  s.items.emplace_back(
      route::Stop{"STOP. Bore: let it cool, wipe. Measure top and bottom, two ways.",
                  {{"found", "0.8666"}},
                  "Left to go = 0.8752 less found. It should be like 0.0086; if it is half or double, "
                  "do NOT cut."});
  line(9, "bore to AIM 0.8752", "", "", "325", "0.003 a turn", "0.8750-0.8758", true);
  s.before_unclamp = {"bore 0.8750-0.8758, top and bottom, two ways",
                      "bore edge to plug in hole 1 1.711 ±0.004",
                      "bore edge to plug in hole 2 1.711 ±0.004",
                      "over both plugs 1.312 ±0.004",
                      "chamfer bore 1/32",
                      "THEN tap 3/8-16 at the same X, Y, started in the spindle by hand",
                      "nothing else wants this holding"};
  s.if_wrong = {
      "Bore over 0.8758: stop, leave it clamped, write down the size found. The [bushing] can be turned to "
      "it.",
      "A hole more than 0.004 out: do not tap, do not unclamp."};
  s.cautions = {
      "Boring head: nothing loose near it, sleeves rolled up, stop the spindle before you measure."};
  auto& view = s.view.emplace<route::PlanView>();
  view.work = {"work", 0.0, 0.0, 107.9, 50.75, false};
  view.holes = {
      {"bore", 26.9, 25.4, 11.1, true}, {"hole 1", 83.9, 12.7, 4.0, true}, {"hole 2", 83.9, 38.1, 4.0, true}};
  view.jaw_left_mm = -22.2;
  view.jaw_right_mm = 130.2;
  view.parallel_mm = 6.35;
  view.left_side = "left end";
  view.right_side = "right end";
  view.near_side = "front";
  view.far_side = "back";
  return s;
}

inline route::SetupSheet mill_the_step() {
  route::SetupSheet s;
  s.op = 30;
  s.name = "Mill the idler step";
  s.done_before = "op 20, bore and holes";
  s.sizes_that_matter = {"step, leaves 0.625 ±0.005"};
  s.the_rest = "all others: two places and fractions ±1/64, three places ±0.005";
  s.machine = {"Knee mill, no readout. Sizes in inches.",
               "X collar 0.200 a turn, 200 divisions, slack 0.014.",
               "Z collar 0.100 a turn, 100 divisions; finish every move clockwise."};
  s.check = {"head, 10 in sweep: 0.0030 most", "work on the parallels: jaw lift 0.0005 most"};
  s.hold = {"6 in [vise]. Back to the FIXED jaw, front to the moving jaw.", "0.50 gripped, 0.25 showing."};
  s.pick_up = {"X Touch right end, lift, go on 0.100 toward the work, ending clockwise. X collar to 0.",
               "Then leave the collar alone."};
  s.items.emplace_back(
      route::Note{"Idler step: touch the top with the cutter, Z collar to 0. Feed against the cutter's "
                  "turning. Steps of 0.375 at most, from the open side."});
  s.items.emplace_back(
      route::Line{1, "idler step: rough", "-6t - 50", "", "0t + 60", "660", "4 in a minute", "0.688", true});
  s.items.emplace_back(
      route::Line{2, "idler step: rough", "-6t - 50", "", "1t + 5", "660", "4 in a minute", "0.643", true});
  s.items.emplace_back(
      route::Stop{"STOP. Idler step: wipe, measure what is left.",
                  {{"found", "0.643"}},
                  "Left to go = found less 0.625. It should be like 0.018; if it is half or double, do "
                  "NOT cut."});
  s.items.emplace_back(route::Line{3, "idler step to AIM 0.625", "-6t - 35", "", "1t + 23", "660",
                                   "3 in a minute", "0.620-0.630", true});
  s.before_unclamp = {"step, leaves 0.620-0.630", "nothing else wants this holding"};
  s.if_wrong = {"A place more than its limit out: do not drill, do not tap, do not unclamp."};
  s.view = bore_drill_and_tap().view;
  auto& view = std::get<route::PlanView>(s.view);
  for (auto& hole : view.holes)
    hole.cut_here = false;
  view.flats = {{"idler step", 70.0, 0.0, 107.9, 50.75, true}};
  return s;
}

inline sheets::FirstSheet first_sheet() {
  using ledger::State;
  sheets::FirstSheet f;
  f.hand = "right, seen from the idler side; cannot be turned over";
  f.material = "1018 cold drawn";
  f.blank = "flat bar 3/4 x 2 x 4-1/4";
  f.sizes_in = "inches";
  f.mates = {
      {"pivot pin", "0.7498", "0.0002, 19 times in 20", "micrometer 0-1, sound, inboard of the worn band"},
      {"stud", "0.4985", "0.0012, 19 times in 20", "caliper 8, one reading"}};
  f.sizes_that_matter = {"bore 0.8750-0.8758", "bore to each hole 2.305 ±0.004",
                         "hole 1 to hole 2 1.000 ±0.004"};
  f.the_rest = "all others: two places and fractions ±1/64, three places ±0.005";
  f.checks = {
      {"fit with the mate", "pivot bore", State::kOk, "0.0006",
       "Clearance 0.0012 to 0.0020 with the pin as measured.", ""},
      {"drill breaks out", "clamp screw", State::kNo, "short by 0.016",
       "The counterbore reaches 0.266 and 0.250 is left to the end.", "Move the screw 0.050 in."},
      {"thread engagement", "clamp screw", State::kClose, "0.04",
       "3.3 diameters of thread, more than useful.", "Take a 1-1/2 in screw."},
      {"press", "pivot bush", State::kNotKnown, "", "The outside of the [bushing] was not measured.",
       "Measure it."},
      {"least wall", "pivot bore", State::kOk, "0.21", "0.34 left beside the hole, 0.13 wanted.", ""}};
  f.queries = {{"Centres 6.000, accepted; the readings say 6.0025.",
                "The stud hole would stand 0.0025 off, its limit is 0.002.",
                "Measure over both once more, or take 6.0025.", true, ""}};
  f.cautions = {"The old boss is cast iron with lead paint: no dry sanding."};
  return f;
}

inline route::ListSheet lay_out() {
  route::ListSheet sheet;
  sheet.tab = "LAY OUT";
  sheet.name = "before the first cut";
  route::ListSection stock{"STOCK TO TAKE", {"Add the saw's cut."}, {}, {}, {}};
  stock.table = {{"FOR", "TAKE", "LONG"}, {{"the part", "flat bar 3/4 x 2", "4-1/4"}}, 2, false, true};
  sheet.sections = {
      stock,
      {"HARDWARE", {}, {}, {"2 socket head screws 5/16-18 x 1-1/2", "bronze [bushing] 3/4 x 7/8 x 1"}, {}},
      {"TOOLS",
       {},
       {},
       {"drills 1/4, 5/16, 27/32", "spot drill", "boring head, bar 1/2", "tap 3/8-16", "edge finder 0.200",
        "parallels 1-1/4 x 1/4", "micrometer 0-1", "telescoping gauge"},
       {}}};
  return sheet;
}

inline route::ListSheet inspect() {
  route::ListSheet sheet;
  sheet.tab = "INSPECT";
  sheet.name = "the finished part";
  sheet.cautions = {"Edges are sharp."};
  sheet.is_signed = true;
  route::ListSection sizes{"", {}, {}, {}, {"Out of limits, and what was decided"}};
  sizes.table = {{"", "MEASURE", "MUST SHOW", "WITH"},
                 {{"1", "bore, top and bottom, two ways", "0.8750-0.8758", "bore gauge"},
                  {"2", "bore edge to plug in hole 1", "1.711 ±0.004", "caliper 8"}},
                 2,
                 true,
                 false};
  route::ListSection changed{"CHANGED", {}, {}, {}, {}};
  changed.table = {{"SIZE", "MADE", "WHY"}, {{"", "", ""}, {"", "", ""}}, std::nullopt, false, false};
  sheet.sections = {sizes, changed};
  return sheet;
}

inline sheets::Packet invented_packet() {
  return {"Cider press, idler bracket",
          "C",
          first_sheet(),
          std::nullopt,
          "",
          {bore_drill_and_tap(), mill_the_step()},
          {lay_out()},
          {inspect()},
          {}};
}

}  // namespace sparewright::tests
