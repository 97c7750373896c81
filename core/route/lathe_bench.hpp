// What the writers of a setup on a lathe share. Used inside this room only.
//
// Lengths are counted from the free end as it stands, into the work. Diameters are dialled from the work of a known
// diameter that the tool touches: cross slide to 0 there, then feed in.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/route/bench.hpp"
#include "core/route/hole_tools.hpp"
#include "core/route/outside.hpp"

namespace sparewright::route {

// What lengths along the bed are set by.
enum class AlongBy { kCarriage, kCompound, kStop };

struct LatheBench : Bench {
  const OnLathe& on;
  AlongBy along_by = AlongBy::kStop;
  Outside outside = {};                 // as the works so far leave it
  const ledger::Figure* end = nullptr;  // coordinate of the free end
  const ledger::Figure* far_end = nullptr;
  const ledger::Figure* held_far = nullptr;    // the far end as the work is put in
  double cut_to_mm = 0.0;                      // how far from the free end the outside is cut in this setup
  double farthest_mm = 0.0;                    // and how far any tool goes that is set along the bed
  std::string touched_by = {};                 // the tool that the cross slide's zero is of, and
  const ledger::Figure* touched_at = nullptr;  // the diameter it touched
  std::map<std::string, const ledger::Figure*> made = {};  // sizes to make, by "<feature>/<local>"

  [[nodiscard]] double way() const { return part::at_greater_end(on.free_end) ? -1.0 : 1.0; }
  // From the free end as it stands into the work.
  [[nodiscard]] double in_mm(double at_mm) const { return way() * (at_mm - end->value); }
};

// --- the setup ----------------------------------------------------------------------------------------------------
// Where ends and outside stand before this setup, and what lengths are set by.
void start_from_work_before(LatheBench& bench);
void write_lathe_machine(LatheBench& bench);
void write_lathe_hold(LatheBench& bench);
void write_lathe_zeros(LatheBench& bench);
void write_turned_view(LatheBench& bench);
void write_lathe_cautions(LatheBench& bench);

// The outside after a feature is made; moves the ends where it does.
void leave(LatheBench& bench, const part::Feature& feature);

// How far from the free end as this setup leaves it a turned form reaches; 0 where that is not known, and for holes and
// faces.
[[nodiscard]] double reaches_mm(LatheBench& bench, const part::Feature& feature);

// --- the collars --------------------------------------------------------------------------------------------------
[[nodiscard]] const shop::Collar* lathe_collar(const LatheBench& bench, std::string_view wheel);

// What one division changes a diameter by.
[[nodiscard]] double on_diameter_mm(const shop::Collar& collar);

// Whether the compound is set at an angle as the fine feed, and has a collar.
[[nodiscard]] bool has_fine_feed(const LatheBench& bench);
// What one of its divisions then changes a diameter by, as a figure "<feature>/<local>/fine division".
[[nodiscard]] const ledger::Figure& fine_division(LatheBench& bench, const std::string& name);

// A size to be made, written once: aim, or the middle of its limits.
[[nodiscard]] const ledger::Figure& size_to_make(LatheBench& bench, const std::string& feature,
                                                 const std::string& local, const part::Dimension& dimension);

// From the free end to a place that lies `from_start` from where the feature starts: "<name> wanted".
[[nodiscard]] const ledger::Figure& along_wanted(LatheBench& bench, const std::string& name,
                                                 const std::string& feature,
                                                 const std::vector<const ledger::Figure*>& from_start,
                                                 double less_mm = 0.0);
// What shows that place: a reading of the carriage or the compound, "spacer 12.50", "at the stop".
[[nodiscard]] std::string along_reads(LatheBench& bench, const std::string& name,
                                      const ledger::Figure& wanted);

// A sentence about a tool, with its name; the tool goes in where another one was.
void say_with_tool(LatheBench& bench, const shop::Tool& tool, std::string says);

// Touches work of a known diameter with this tool and sets the cross slide to 0, where it does not stand there already.
void touch(LatheBench& bench, const shop::Tool& tool, const ledger::Figure& diameter, bool inside = false);
// The next tool has to touch again: the size just made is the one that is known.
void forget_touch(LatheBench& bench);

// A diameter from the touch. Figures "<name> infeed", "<name> turns", "<name> division", "<name> rounding" (what the
// nearest division costs, on diameter), "<name> lands" (the diameter it makes, with all its causes).
struct CrossReading {
  std::string reads;                      // "1t + 20"; "NOT KNOWN" where something is missing
  double makes_mm = 0.0;                  // on diameter
  const ledger::Figure* lands = nullptr;  // nullptr where it is not known
};
// keeps_mm: nothing is rounded past this limit (of a shaft the least, of a bore the most); then the division before it.
[[nodiscard]] CrossReading cross_reads(LatheBench& bench, const std::string& name, const ledger::Figure& size,
                                       double keeps_mm);

// --- diameters ----------------------------------------------------------------------------------------------------
// One diameter to be turned or bored.
struct Diameter {
  const Work* work = nullptr;
  std::string feature;
  std::string local = "diameter";  // of its figures
  const part::Dimension* dimension = nullptr;
  const shop::Tool* tool = nullptr;
  const ledger::Figure* from = nullptr;  // what stands there
  bool inside = false;
  std::string what;         // "turn", "bore"
  std::string rough_along;  // what the along column shows for all cuts but the last
  std::string last_along;
  std::string to_where;  // " to the shoulder"
  bool has_shoulder = false;
  const ledger::Figure* length = nullptr;  // from the free end, of the cut
};
// The lines from what stands there to the aim: roughing cuts, two alike, a STOP, the last one.
void write_diameter(LatheBench& bench, const Diameter& d);
// After the STOP, with the compound set as the fine feed.
void write_fine_last(LatheBench& bench, const Diameter& d, const ledger::Figure& before,
                     const std::string& rpm, const std::string& feed);
// What was found at the STOP where the job says it, else what the cut before should have made.
[[nodiscard]] const ledger::Figure& found_at_stop(LatheBench& bench, const Diameter& d,
                                                  const ledger::Figure& before);
// Stops before the last cut where the size is held closely.
[[nodiscard]] bool is_close(const part::Dimension& dimension, const ledger::Figure& least,
                            const ledger::Figure& most);
[[nodiscard]] std::string limits_of(LatheBench& bench, const std::string& feature, const std::string& local,
                                    bool fine);

// How much larger the headstock makes it turn towards the chuck, over a length: "<feature>/headstock taper".
void write_headstock_taper(LatheBench& bench, const std::string& feature, const ledger::Figure& length);

// Feed of a tool as the sheet prints it: "0.10 a turn", "hand".
[[nodiscard]] std::string feed_a_turn(LatheBench& bench, const std::string& name, const shop::Tool& tool,
                                      handbook::Operation operation);

// Reads the collars of the lathe's wheels by these names.
inline constexpr std::string_view kCrossSlide = "cross slide";
inline constexpr std::string_view kCompound = "compound";
inline constexpr std::string_view kCarriage = "carriage";
inline constexpr std::string_view kTailstock = "tailstock";

// --- the works ----------------------------------------------------------------------------------------------------
void turn_face(LatheBench& bench, const Work& work, const part::Flat& flat);
void turn_diameter(LatheBench& bench, const Work& work, const part::Formed& turned);
void turn_hole(LatheBench& bench, const Work& work, const part::Hole& hole);
void turn_bore(LatheBench& bench, const Work& work, const part::Hole& hole, const shop::Tool& bar);
void turn_centre_hole(LatheBench& bench, const Work& work, const part::Formed& centre);
void turn_groove(LatheBench& bench, const Work& work, const part::Formed& groove);
void turn_chamfer(LatheBench& bench, const Work& work, const part::Formed& chamfer);
void turn_taper(LatheBench& bench, const Work& work, const part::Formed& taper);
void turn_thread(LatheBench& bench, const Work& work, const part::Formed& thread);
void cut_single_point(LatheBench& bench, const Work& work, const part::Formed& thread,
                      const shop::Tool& tool);
void turn_knurl(LatheBench& bench, const Work& work, const part::Formed& knurl);
void part_off(LatheBench& bench, const Work& work, const part::Formed& piece);

}  // namespace sparewright::route
