// What one setup's sheet says, in the order it is used at the machine. Lengths and speeds are printed already, in the
// job's unit; trade words that differ between British and American stand in square brackets (base/words.hpp).
#pragma once

#include <array>
#include <string>
#include <variant>
#include <vector>

#include "core/base/hash.hpp"
#include "core/part/face.hpp"

namespace sparewright::route {

// One numbered line: do it, dial this, at this speed, expect that, write down what was found.
struct Line {
  int number = 0;
  std::string says;  // "bore to AIM 0.6259"
  // "5t + 62"; empty where nothing is dialled. On a lathe x is the cross slide, y the compound, z along the bed.
  std::string x_reads;
  std::string y_reads;
  std::string z_reads;
  std::string rpm;       // "660", "hand"
  std::string feed;      // "0.003 a turn", "hand, oil"
  std::string expect;    // "0.6256-0.6264"
  bool to_fill = false;  // a blank for the size found, else a box to tick
};

// One reading to take: what, what it must show.
struct ProofReading {
  std::string what;    // "bore to hole 1, same-side edges"
  std::string expect;  // "2.305"
};

// Measure before going on.
struct Stop {
  std::string says;  // "STOP. Caliper, same-side edges of the dimples."
  std::vector<ProofReading> readings;
  std::string rule;  // "More than 0.003 out: do NOT drill."
};

// A sentence between the lines.
struct Note {
  std::string says;
};

using Item = std::variant<Line, Stop, Note>;

// How the part stands: which of its sides is where, and, as its own coordinates along those ways, the picked-up zero and
// the side it sits on. mm; NaN where not known.
struct Stance {
  part::Face right = part::Face::kRightEnd;
  part::Face away = part::Face::kBack;
  part::Face up = part::Face::kTop;
  double zero_right_mm = 0.0;
  double zero_away_mm = 0.0;
  double sits_at_mm = 0.0;
};

// The work as it is held, seen by the operator from above: mm, x to the right, y away, from the picked-up zero.
struct PlanView {
  struct Circle {
    std::string name;
    double x_mm = 0.0;
    double y_mm = 0.0;
    double radius_mm = 0.0;
    bool cut_here = false;
  };
  struct Rectangle {
    std::string name;
    double left_mm = 0.0;
    double near_mm = 0.0;
    double right_mm = 0.0;
    double far_mm = 0.0;
    bool cut_here = false;
  };
  Rectangle work;
  std::vector<Circle> holes;     // those that open to the top
  std::vector<Rectangle> flats;  // milled from the top
  std::vector<Rectangle> forms;  // what else is cut from the top: as far as it reaches each way
  bool x_rises_right = true;     // which way the collar readings rise
  bool y_rises_away = true;
  double jaw_left_mm = 0.0;  // the jaws along x
  double jaw_right_mm = 0.0;
  double parallel_mm = 0.0;          // thickness of the parallels, along both jaws
  bool parallels_in_middle = false;  // or side by side under a bar
  double parallel_high_mm = 0.0;
  double jaw_high_mm = 0.0;  // above what the parallels stand on
  Stance stance;
  std::string left_side;  // names of the part's sides as they lie
  std::string right_side;
  std::string near_side;
  std::string far_side;
};

// The work on a lathe as this setup leaves it, seen by the operator: headstock to the left. mm along the axis from the
// picked-up zero, more to the left; NaN where not known.
struct TurnedView {
  struct Step {
    std::string name;
    double from_mm = 0.0;  // nearer the tailstock
    double to_mm = 0.0;
    double from_diameter_mm = 0.0;  // a taper where they differ
    double to_diameter_mm = 0.0;
    bool cut_here = false;
    bool is_bore = false;
  };
  std::vector<Step> steps;  // outsides first; later ones are cut into earlier ones
  double work_from_mm = 0.0;
  double work_to_mm = 0.0;
  double jaws_from_mm = 0.0;  // the jaws' faces; from work_to where nothing grips by jaws
  double jaws_grip_diameter_mm = 0.0;
  std::string holder;  // "3-jaw chuck"
  std::string tail;    // "live centre"; empty where there is none
  bool tail_is_centre = false;
  std::string free_end;  // name of the end towards the tailstock
};

struct SetupSheet {
  int op = 0;
  std::string name;
  std::string done_before;
  std::string stock;
  std::vector<std::string>
      not_cleared;  // what stands against cutting; put in where the sheets are printed, as the stock
  std::vector<std::string> sizes_that_matter;
  std::string the_rest;  // the general tolerance, in full
  std::vector<std::string> machine;
  std::vector<std::string> check;  // each with a blank to fill
  std::vector<std::string> hold;
  std::vector<std::string> pick_up;
  std::vector<Item> items;
  std::vector<std::string> before_unclamp;
  std::vector<std::string> if_wrong;
  std::vector<std::string> cautions;                                  // dangers of this setup, where they sit
  std::array<std::string, 3> dials{"X READS", "Y READS", "Z READS"};  // what x_reads, y_reads and z_reads are
  std::variant<std::monostate, PlanView, TurnedView> view;            // nothing where work is held to marks
};

[[nodiscard]] base::Fingerprint fingerprint(const SetupSheet& sheet);

}  // namespace sparewright::route
