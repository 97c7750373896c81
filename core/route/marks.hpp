// What the lines of a setup by marks share: a drill press, a saw, a bench. Used inside this room only.
#pragma once

#include <string>
#include <vector>

#include "core/route/bench.hpp"
#include "core/route/hole_tools.hpp"

namespace sparewright::route {

// Whether a drill press, a saw or a bench is a place where its cuts are worked out.
[[nodiscard]] bool is_worked_out_by_marks(shop::MachineKind machine, const part::Feature& feature);

// Whether the finished side is cut, not the blank's own.
[[nodiscard]] bool is_cut(const part::Part& part, part::Face side);

// One line to scribe: how far from a side. The figure is called "<name> mark".
struct Mark {
  part::Axis axis = part::Axis::kX;
  part::Face from = part::Face::kLeftEnd;
  const ledger::Figure* height = nullptr;
};
[[nodiscard]] Mark mark_at(MarksBench& bench, const std::string& name, const std::string& feature,
                           part::Axis axis, const ledger::Figure& at);
// The lines of a hole along the axes of its side; on round work along the bar alone.
[[nodiscard]] std::vector<Mark> marks_of(MarksBench& bench, const Work& work, const part::Hole& hole);
// Puts the marks into the columns of a line: the first one, the second one.
Line& put(MarksBench& bench, Line& line, const std::vector<Mark>& marks);
// "from the left end, then from the back"
[[nodiscard]] std::string from_words(const std::vector<Mark>& marks);

// How far a place that is punched and drilled by hand lies from where it should: "<feature>/place good to" with /least and
// /most. 0.25 to 0.5 mm, 0.010 to 0.020 in (common practice).
void write_place_good_to(MarksBench& bench, const std::string& feature);

// A hole that is made by marks.
struct MarkedHole {
  const Work* work = nullptr;
  const part::Hole* hole = nullptr;
  std::vector<Mark> marks;
  bool on_round = false;  // of round work
};
// On the end of round work: it has no lines to scribe, but a middle.
[[nodiscard]] bool is_on_end(const MarkedHole& one);
// Middle to middle of two holes of one side, as the figure of that name.
[[nodiscard]] const ledger::Figure& apart(MarksBench& bench, const std::string& local, const MarkedHole& a,
                                          const MarkedHole& b);
// How a place on an end is marked; round a bolt circle from the one before, if there is one. before may be nullptr.
[[nodiscard]] std::string end_words(MarksBench& bench, const MarkedHole& one, const MarkedHole* before);
// Marks, punches and spots a group of holes, and proves them before they are drilled.
void write_punched(MarksBench& bench, const std::vector<MarkedHole>& holes, int group);
// The lines that make one hole after its place is found.
void write_drilled(MarksBench& bench, const Work& work, const part::Hole& hole);
// The whole of a hole whose place comes from the mate.
void write_through_mate(MarksBench& bench, const Work& work, const part::Hole& hole);
// The drill that is put through the mate's hole: the first one of its tools; none where it has no drill.
[[nodiscard]] const shop::Tool* drill_through_mate(const Work& work);
// "45", "2t + 62": the depth stop or the collar of the quill at a depth below where the tool touches.
[[nodiscard]] std::string quill_reads(MarksBench& bench, const std::string& name,
                                      const ledger::Figure& depth);
// The speed, "by hand" at a bench.
[[nodiscard]] std::string turning(MarksBench& bench, const std::string& name, const shop::Tool& tool,
                                  handbook::Operation operation);

// --- the saw and the bench ----------------------------------------------------------------------------------------
void write_split(MarksBench& bench, const Work& work, const part::Formed& split);
void write_slit(MarksBench& bench, const Work& work, const part::Formed& slit);
void write_sawn_flat(MarksBench& bench, const Work& work, const part::Flat& flat);
void write_filed_flat(MarksBench& bench, const Work& work, const part::Flat& flat);
void write_filed_edge(MarksBench& bench, const Work& work, const part::Formed& edge);
void write_filed_outline(MarksBench& bench, const Work& work, const part::Formed& outline);
void write_die(MarksBench& bench, const Work& work, const part::Formed& thread);
void write_bush(MarksBench& bench, const Work& work, const part::Formed& bush);
void write_join(MarksBench& bench, const Work& work, const part::Formed& split);

void write_marks_cautions(MarksBench& bench);

// "12.00-12.25" of any dimension of a feature; NOT KNOWN where it is not.
[[nodiscard]] std::string limits_of(const Bench& bench, const std::string& feature,
                                    const part::Dimension& dimension, const std::string& local);

}  // namespace sparewright::route
