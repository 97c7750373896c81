// The lines of a slit or a split, by a slitting saw that lies flat on an upright arbor.
#include <cmath>

#include <fmt/format.h>

#include "core/route/milled_cuts.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using shop::ToolKind;

// How far the saw's teeth go past the far side of what is sawn right through. Common practice.
constexpr double kRunOut_mm = 1.0;

struct Cut {
  const Figure* upper = nullptr;  // the cut's upper face, below what is up
  const Figure* width = nullptr;  // to make
  const Figure* in = nullptr;     // how deep the teeth go in from the side they start on
  const Figure* edge = nullptr;   // the coordinate of that side
  part::Face from = part::Face::kFront;
};

const Figure& between(MillBench& bench, const std::string& local, std::string_view words, const Figure& one,
                      const Figure& other) {
  return bench.pen.work(
      local, Kind::kLength, words,
      [](auto a, auto b) {
        using std::abs;
        return abs(a - b);
      },
      one, other);
}

// From its side to the middle of the hole it leads into.
Cut slit(MillBench& bench, const std::string& name, const part::Formed& formed) {
  const auto hole_at = [&](part::Face face) -> const Figure& {
    return bench.feature_figure(formed.of, fmt::format("at {}", part::name_of(part::axis_of(face))));
  };
  Cut cut;
  cut.from = formed.side;
  cut.width = &to_make(bench, name, "width", formed.sizes.at("width"));
  cut.edge = &bench.feature_figure(name, "starts at");
  cut.in = &between(bench, name + "/in", "from its side to the middle of the hole", *cut.edge,
                    hole_at(formed.side));
  const Figure& down = between(bench, name + "/middle down", "from what is up to the middle of the hole",
                               bench.side(bench.orientation.up), hole_at(bench.orientation.up));
  cut.upper = &bench.pen.work(
      name + "/upper face", Kind::kLength, "to the middle, less half its width",
      [](auto middle, auto width) { return middle - width / 2.0; }, down, *cut.width);
  return cut;
}

// Right through, from the operator towards the fixed jaw.
Cut split(MillBench& bench, const std::string& name, const part::Formed& formed) {
  Cut cut;
  cut.from = part::opposite(bench.orientation.away);
  cut.width = &to_make(bench, name, "width", formed.sizes.at("width"));
  cut.edge = &bench.side(cut.from);
  const Figure& across =
      between(bench, name + "/across", "from side to side", *cut.edge, bench.side(bench.orientation.away));
  const Figure& out = stated_length(bench, name + "/run out", kRunOut_mm, "run out, 1 mm (common practice)");
  cut.in = &bench.pen.work(
      name + "/in", Kind::kLength, "right across and out", [](auto a, auto o) { return a + o; }, across, out);
  const Figure& from_side = bench.feature_figure(name, "from side");
  if (formed.side == bench.orientation.up) {
    cut.upper = &bench.pen.work(
        name + "/upper face", Kind::kLength, "from its side", [](auto d) { return d; }, from_side);
    return cut;
  }
  const Figure& tall = between(bench, name + "/tall", "from what is up to its side",
                               bench.side(bench.orientation.up), bench.feature_figure(name, "starts at"));
  cut.upper = &bench.pen.work(
      name + "/upper face", Kind::kLength, "what there is, less the way from its side and its width",
      [](auto all, auto d, auto width) { return all - d - width; }, tall, from_side, *cut.width);
  return cut;
}

const Figure& saw_width(MillBench& bench, const std::string& name, const shop::Tool& saw) {
  ledger::Root root;
  root.kind = Kind::kLength;
  root.origin = ledger::Origin::kReading;
  root.source = fmt::format("{}, as the shop has it", saw.name);
  if (saw.width) root.value = saw.width->base();
  return bench.pen.root(fmt::format("{}/{} width", name, saw.name), root);
}

// The saw's middle, outside its side by its radius less how deep it goes.
Dialled dial_saw(MillBench& bench, const std::string& name, const Cut& cut, const Figure& diameter,
                 MachineAxis axis) {
  const double out = (part::at_greater_end(cut.from) ? 1.0 : -1.0) * inwards(bench.on, axis);
  const Figure& offset = bench.pen.work(
      fmt::format("{}/{} offset", name, name_of(axis)), Kind::kLength, "half the saw less how deep it goes",
      [out](auto d, auto in) { return out * (d / 2.0 - in); }, diameter, *cut.in);
  return dial(bench, axis, fmt::format("{}/{}", name, name_of(axis)), *cut.edge, &offset);
}

void write_above_jaws(MillBench& bench, const std::string& name, const Cut& cut) {
  if (bench.on.holding.vise() == nullptr) return;
  const std::string hold = bench.pen.stage() + "/hold/";
  bench.pen.work(
      name + "/above jaws", Kind::kLength, "what shows above the jaws, less the lower face of the cut",
      [](auto showing, auto upper, auto width) { return showing - upper - width; },
      bench.pen.ask(hold + "showing"), *cut.upper, *cut.width);
}

// Wider than the saw it is sawn twice; a split is sawn once in the middle, and filed.
std::vector<const Figure*> lower_faces(MillBench& bench, const std::string& name, const Cut& cut,
                                       const Figure& thick, bool once) {
  const auto last = [&]() -> const Figure& {
    return bench.pen.work(
        name + "/saw down", Kind::kLength, "the cut's lower face", [](auto u, auto w) { return u + w; },
        *cut.upper, *cut.width);
  };
  if (once)
    return {&bench.pen.work(
        name + "/saw down", Kind::kLength, "the saw in the middle of the cut",
        [](auto u, auto w, auto t) { return u + (w + t) / 2.0; }, *cut.upper, *cut.width, thick)};
  constexpr double kSame_mm = 0.02;  // less is not sawn a second time; a choice made here, without a source
  if (cut.width->value - thick.value < kSame_mm) return {&last()};
  return {&bench.pen.work(
              name + "/saw down first", Kind::kLength, "the cut's upper face and the saw",
              [](auto u, auto t) { return u + t; }, *cut.upper, thick),
          &last()};
}

void say_saw(MillBench& bench, const std::string& name, const Cut& cut, MachineAxis axis, bool through) {
  const auto note = [&](const std::string& says) {
    bench.sheet.items.emplace_back(Note{fmt::format("{}: {}", name, says)});
  };
  note(fmt::format(
      "the saw's lower face touches the {}, Z collar to 0, the saw clear of the work before it goes down.",
      part::name_of(bench.orientation.up)));
  note(fmt::format(
      "feed {} in from the {}, against the saw's turning, to the line's reading: there its teeth are {} in. "
      "Where that turns against the finishing way, add the slack.",
      wheel_of(axis), part::name_of(cut.from), bench.print.plain(cut.in->value)));
  if (through) note("the upper piece comes off at the end: hold it down, do not catch it.");
}

}  // namespace

void write_sawn(MillBench& bench, const Work& work, const part::Formed& formed) {
  const std::string& name = work.feature;
  const bool is_split = formed.form == part::Form::kSplit;
  const Cut cut = is_split ? split(bench, name, formed) : slit(bench, name, formed);
  const shop::Tool* saw = first_tool(work, ToolKind::kSlittingSaw);
  write_above_jaws(bench, name, cut);
  if (saw == nullptr || !saw->width || !saw->diameter || !cut.upper->known() || !cut.in->known()) {
    bench.add_line(fmt::format("{}: saw", name)).expect = "NOT KNOWN";
    return;
  }
  const Figure& thick = saw_width(bench, name, *saw);
  const Figure& diameter = cutter_diameter(bench, fmt::format("{}/{} diameter", name, saw->name), *saw);
  const MachineAxis axis = machine_axis(bench, part::axis_of(cut.from));
  const Dialled place = dial_saw(bench, name, cut, diameter, axis);
  const std::string rpm = rpm_text(bench, fmt::format("{}/{}", name, saw->name), *saw,
                                   handbook::Operation::kMilling, saw->diameter->base);
  bench.take(*saw);
  say_saw(bench, name, cut, axis, is_split);
  const auto faces = lower_faces(bench, name, cut, thick, is_split);
  for (std::size_t i = 0; i < faces.size(); ++i) {
    const bool last = i + 1 == faces.size();
    const DepthReading reading = depth_reading(bench, fmt::format("{}/cut {}", name, i + 1), *faces[i]);
    Line& line = bench.add_line(fmt::format("{}: saw, its lower face {} down, {}", name,
                                            bench.print.plain(reading.makes_mm),
                                            is_split ? "right through" : "into the hole"));
    put_reading(line, axis, place.reads);
    line.z_reads = reading.reads;
    line.rpm = rpm;
    line.feed = "hand, slow, oil";
    const Figure& least = bench.feature_figure(name, "width/least");
    const Figure& most = bench.feature_figure(name, "width/most");
    line.expect = !last || is_split ? bench.print.plain(thick.value) + " wide"
                                    : or_not_known(least, bench.print.limits(least.value, most.value, false));
    line.to_fill = last;
  }
}

}  // namespace sparewright::route
