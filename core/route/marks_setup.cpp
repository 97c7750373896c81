// A setup at a drill press, a saw or a bench: how the work is held, and its works in their order. Places are marked,
// nothing is dialled across.
#include <fmt/format.h>

#include "core/route/deburr.hpp"
#include "core/route/marks.hpp"

namespace sparewright::route {
namespace {

using shop::HolderKind;
using shop::MachineKind;

void write_marks_machine(MarksBench& bench) {
  const shop::Machine& machine = bench.setup.machine;
  bench.sheet.machine.push_back(
      fmt::format("{}. Sizes in {}.", machine.name, bench.print.unit_name() == "in" ? "inches" : "mm"));
  if (machine.kind != MachineKind::kDrillPress) return;
  bench.sheet.machine.push_back(machine.collars.contains("quill")
                                    ? "Depths by the quill's collar, from where the tool touches."
                                    : "Depths by the depth stop, from where the tool touches.");
  bench.sheet.check.emplace_back("table square to the spindle: a bent rod in the chuck, swung round on it");
  bench.sheet.check.emplace_back("drill ground even: both lips cut");
}

std::string how_held(const ByMarks& by, MachineKind machine) {
  const auto* holder = std::get_if<shop::Holder>(&by.in);
  if (holder == nullptr) {
    return machine == MachineKind::kDrillPress
               ? "bolted down, or against a stop; parallels clear of the drills"
               : "jaws tight on the kept side";
  }
  switch (holder->kind) {
    case HolderKind::kClamps:
      return machine == MachineKind::kDrillPress
                 ? "one strap on each side, on packing as high as the work, bolts next to the work"
                 : "tight on the side that is kept, the other end held up, so that nothing closes on the "
                   "blade";
    case HolderKind::kVBlocks:
      return "strapped down in the V, level";
    case HolderKind::kBenchVise:
      return "soft jaws, the line just above them";
    default:
      return "tight";
  }
}

void write_marks_hold(MarksBench& bench) {
  bench.sheet.hold.push_back(fmt::format("{}: {}. Side up: {}.", name_of_holder(bench.by),
                                         how_held(bench.by, bench.setup.machine.kind),
                                         part::name_of(bench.by.up)));
}

void write_form(MarksBench& bench, const Work& work, const part::Formed& formed) {
  using part::Form;
  switch (formed.form) {
    case Form::kSplit:
      return write_split(bench, work, formed);
    case Form::kSlit:
      return write_slit(bench, work, formed);
    case Form::kChamfer:
    case Form::kRoundedEdge:
      return write_filed_edge(bench, work, formed);
    case Form::kProfile:
      return write_filed_outline(bench, work, formed);
    case Form::kThread:
      return write_die(bench, work, formed);
    case Form::kBush:
      return write_bush(bench, work, formed);
    default:
      return;  // not worked out: said before
  }
}

void write_form_or_flat(MarksBench& bench, const Work& work, const part::Feature& feature) {
  if (!is_worked_out_by_marks(bench.setup.machine.kind, feature)) return write_not_worked_out(bench, feature);
  if (const auto* formed = std::get_if<part::Formed>(&feature.shape)) return write_form(bench, work, *formed);
  const auto& flat = std::get<part::Flat>(feature.shape);
  const bool sawn = bench.setup.machine.kind == MachineKind::kSaw;
  sawn ? write_sawn_flat(bench, work, flat) : write_filed_flat(bench, work, flat);
}

// Holes that stand next to each other in the list are marked and proved together first.
void write_marks_works(MarksBench& bench) {
  std::vector<MarkedHole> group;
  int groups = 0;
  const auto finish_group = [&] {
    if (group.empty()) return;
    write_punched(bench, group, ++groups);
    for (const MarkedHole& one : group)
      write_drilled(bench, *one.work, *one.hole);
    group.clear();
  };
  for (std::size_t i = 0; i < bench.setup.works.size(); ++i) {
    const Work& work = bench.setup.works[i];
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    if (feature == nullptr) continue;  // refused when the text was read
    if (deburrs_before(bench.setup, i)) finish_group();
    write_deburring(bench, i);
    const auto* hole = std::get_if<part::Hole>(&feature->shape);
    const bool worked_out = is_worked_out_by_marks(bench.setup.machine.kind, *feature);
    if (hole != nullptr && worked_out && !work.joins && hole->placed_by == part::PlacedBy::kCoordinates) {
      group.push_back(
          {&work, hole, marks_of(bench, work, *hole), part::is_round(bench.route.part.blank.shape)});
      continue;
    }
    finish_group();
    const auto* formed = std::get_if<part::Formed>(&feature->shape);
    if (work.joins) {
      if (formed != nullptr && formed->form == part::Form::kSplit) write_join(bench, work, *formed);
    } else if (hole != nullptr && worked_out) {
      write_through_mate(bench, work, *hole);
    } else {
      write_form_or_flat(bench, work, *feature);
    }
  }
  finish_group();
  write_deburring(bench, bench.setup.works.size());
}

bool is_drilled_by_hand(const part::Hole& hole) {
  return !hole.lean && !hole.around_bar && hole.make != part::HoleMake::kBored;
}

bool is_made_at_bench(const part::Formed& formed) {
  using part::Form;
  switch (formed.form) {
    case Form::kSplit:
    case Form::kSlit:
    case Form::kChamfer:
    case Form::kRoundedEdge:
    case Form::kThread:
    case Form::kBush:
      return true;
    case Form::kProfile:
      return !formed.sizes.contains("depth");  // right through
    default:
      return false;
  }
}

}  // namespace

bool is_worked_out_by_marks(shop::MachineKind machine, const part::Feature& feature) {
  if (const auto* hole = std::get_if<part::Hole>(&feature.shape))
    return machine != MachineKind::kSaw && is_drilled_by_hand(*hole);
  if (const auto* flat = std::get_if<part::Flat>(&feature.shape))
    return machine != MachineKind::kDrillPress && !flat->region;
  const auto& formed = std::get<part::Formed>(feature.shape);
  if (machine == MachineKind::kBench) return is_made_at_bench(formed);
  return machine == MachineKind::kSaw &&
         (formed.form == part::Form::kSplit || formed.form == part::Form::kSlit);
}

void write_marks_setup(MarksBench& bench) {
  bench.sheet.dials = {"1ST MARK", "2ND MARK",
                       bench.setup.machine.collars.contains("quill") ? "DEPTH READS" : "STOP AT"};
  write_marks_machine(bench);
  write_marks_hold(bench);
  write_marks_works(bench);
  write_before_unclamp(bench);
  write_cautions(bench);
  write_marks_cautions(bench);
}

}  // namespace sparewright::route
