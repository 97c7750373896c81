// What the writers of one setup's stage share. Used inside this room only.
#pragma once

#include <map>
#include <string>

#include "core/ledger/pen.hpp"
#include "core/part/part.hpp"
#include "core/route/orientation.hpp"
#include "core/route/printing.hpp"
#include "core/route/route.hpp"
#include "core/route/sheet.hpp"

namespace sparewright::route {

struct Bench {
  ledger::Pen& pen;
  const Route& route;
  const Setup& setup;
  Printing print;
  SetupSheet sheet;
  std::string in_spindle = {};  // the tool of the line before

  // A figure of a feature: feature_figure("pivot bore", "diameter/aim").
  const ledger::Figure& feature_figure(std::string_view feature, std::string_view local) const;
  // The coordinate of a side of the work, as its flats leave it.
  const ledger::Figure& side(part::Face face) const;
  // A root that is zero but for what is not known about it.
  const ledger::Figure& error_root(const std::string& local, double standard_uncertainty_mm,
                                   std::string source) const;
  const ledger::Figure& choice(const std::string& local, quantity::Kind kind, double base, std::string words,
                               std::vector<const ledger::Figure*> inputs = {}) const;

  Line& add_line(std::string says);
  // Says which tool goes into the spindle, where another one was in it.
  void take(const shop::Tool& tool);
};

struct MillBench : Bench {
  const OnMill& on;
  Orientation orientation;
};

struct LatheBench;  // lathe_bench.hpp

struct MarksBench : Bench {
  const ByMarks& by;
};

// What a dimension is made to: its aim where it has one, else the middle of its limits. "<feature>/<local> to make".
const ledger::Figure& to_make(Bench& bench, const std::string& feature, const std::string& local,
                              const part::Dimension& dimension);

// Half-width of a rectangular distribution to standard uncertainty (JCGM 100:2008, 4.3.7).
[[nodiscard]] double from_half_width(double half_width_mm);

// --- one setup, by what its machine is; the sheet in the order it is read ---------------------------------------------
void write_mill_setup(MillBench& bench);
void write_lathe_setup(LatheBench& bench);
void write_marks_setup(MarksBench& bench);

// A line for what is made here but not worked out: its expected size is NOT KNOWN.
void write_not_worked_out(Bench& bench, const part::Feature& feature);

// --- of every setup -----------------------------------------------------------------------------------------------
void write_before_unclamp(Bench& bench);
void write_cautions(Bench& bench);

// --- of a setup on a mill -----------------------------------------------------------------------------------------
void write_machine(MillBench& bench);
// That the head of a round column loses its place when it is raised between tools.
void say_round_column(MillBench& bench);
void write_hold(MillBench& bench);
void write_pick_up(MillBench& bench);
void write_works(MillBench& bench);
// Says where setting to whole divisions costs more than a quarter of a tolerance.
void write_rounding(MillBench& bench);
void write_view(MillBench& bench);

// Round work lies on its lowest line: the parallels stand side by side under its middle, not against the jaws.
[[nodiscard]] bool sits_on_middle(const MillBench& bench);

enum class MachineAxis { kX, kY };
[[nodiscard]] std::string_view name_of(MachineAxis axis);
[[nodiscard]] const EdgePickUp& pick_up_of(const OnMill& on, MachineAxis axis);
[[nodiscard]] Along along(const Orientation& orientation, MachineAxis axis);

// Readings rise from the picked-up side into the work. +1 where the part's own axis runs that way too, else -1.
[[nodiscard]] double inwards(const OnMill& on, MachineAxis axis);
// Whether that is to the right (x) or away from the operator (y).
[[nodiscard]] bool rises_right_or_away(const MillBench& bench, MachineAxis axis);
// The way to turn that goes into the work; every move ends so.
[[nodiscard]] shop::Turning finishing(const MillBench& bench, MachineAxis axis, const shop::Collar& collar);

// Dials one axis to a coordinate of the part (mm, part frame) plus an offset into the work (a cutter's radius).
// name is what the figures are called below the stage: "pivot bore/x".
struct Dialled {
  std::string reads;                       // "5t + 62"; "NOT KNOWN" where something is missing
  const ledger::Figure* wanted = nullptr;  // from the picked-up side into the work
  const ledger::Figure* lands = nullptr;   // where the rounded reading puts it, with all its causes
};
Dialled dial(MillBench& bench, MachineAxis axis, const std::string& name, const ledger::Figure& at,
             const ledger::Figure* offset = nullptr);

// The knee's collar at a depth below the touched surface, and the depth its nearest division makes; its figures are
// called "<name> z turns" and "<name> z division".
struct DepthReading {
  std::string reads;  // "1t + 86"; "NOT KNOWN" where something is missing
  double makes_mm = 0.0;
};
[[nodiscard]] DepthReading depth_reading(MillBench& bench, const std::string& name,
                                         const ledger::Figure& depth);

// Writes "<feature>/depth made": what a reading of the knee makes, as known as the touch and the setting are. cut is the
// name the reading was written under.
void write_depth_made(MillBench& bench, const std::string& feature, const std::string& cut,
                      const DepthReading& reading);

// Writes "<feature>/x made": the distance the position is measured by, as these readings make it.
void write_made(MillBench& bench, MachineAxis axis, const std::string& feature,
                const part::Position& position, const ledger::Figure& lands);

// Dials one axis to where a feature's middle is, and writes what it makes of the place: "<feature>/x wanted ... made".
Dialled dial_place(MillBench& bench, MachineAxis axis, const std::string& feature,
                   const std::map<part::Axis, part::Position>& places);

// The lines of one hole after its spot; for a pin hole, which is a form, `formed` stands for `hole`.
struct HoleWork {
  const Work* work = nullptr;
  const part::Hole* hole = nullptr;
  const part::Formed* formed = nullptr;
  Dialled x;
  Dialled y;

  [[nodiscard]] const std::map<part::Axis, part::Position>& places() const {
    return hole != nullptr ? hole->at : formed->at;
  }
};
void write_spots(MillBench& bench, const std::vector<HoleWork>& holes);
void write_hole(MillBench& bench, const HoleWork& hole);
void write_bore(MillBench& bench, const HoleWork& hole, const shop::Tool& head);
void write_countersink(MillBench& bench, const HoleWork& hole, const shop::Tool& tool);

// Puts the hole's collar readings on a line.
Line& place(Line& line, const HoleWork& hole);
// "0.6258-0.6269" of a dimension of the hole.
[[nodiscard]] std::string feature_limits(const Bench& bench, const HoleWork& hole, const char* figure,
                                         bool fine);
// Whether it is printed to the finest place.
[[nodiscard]] bool is_fine(const part::Dimension& dimension);
void write_flat(MillBench& bench, const Work& work, const part::Flat& flat);
// A slot, a keyseat or a pocket.
void write_opening(MillBench& bench, const Work& work, const part::Formed& formed);
// A chamfer on a straight edge.
void write_chamfer(MillBench& bench, const Work& work, const part::Formed& formed);
// A slit or a split, by a slitting saw that lies flat.
void write_sawn(MillBench& bench, const Work& work, const part::Formed& formed);
// A seat for the point of a set screw.
void write_dimple(MillBench& bench, const Work& work, const part::Formed& formed);
// A hole for a taper pin or a spring pin, after its spot.
void write_pin_hole(MillBench& bench, const HoleWork& hole);

// The speed for a tool of a diameter, written as a figure; NOT KNOWN where it is not. Not above what is engraved on the
// chuck. share: how much of the cutting speed is wanted, less than 1 for threads and knurls.
[[nodiscard]] std::string rpm_text(Bench& bench, const std::string& name, const shop::Tool& tool,
                                   handbook::Operation operation, double diameter_mm, double share = 1.0);

}  // namespace sparewright::route
