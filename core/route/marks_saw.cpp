// What is sawn, at a saw or by hand: a part in two, a slit into a hole, an end to length.
#include <fmt/format.h>

#include "core/route/marks.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using part::Face;
using quantity::Kind;

// How far a sawn face lies from its line, from a new blade to a usual one: on a bandsaw or power hacksaw 0.5 to 1.5 mm,
// 0.020 to 0.060 in, by hand 0.5 to 1 mm, 0.020 to 0.040 in. From memory.
struct SawnGoodTo {
  double least_mm = 0.0;
  double most_mm = 0.0;
};
SawnGoodTo sawn_good_to(bool by_hand, quantity::UnitSystem system) {
  if (system == quantity::UnitSystem::kMetric) return {0.5, by_hand ? 1.0 : 1.5};
  return {0.020 * 25.4, (by_hand ? 0.040 : 0.060) * 25.4};
}

// "<feature>/saw's cut", as wide as the blade takes.
const Figure& kerf(MarksBench& bench, const std::string& feature, const shop::Tool* blade) {
  ledger::Root root;
  root.kind = Kind::kLength;
  root.origin = ledger::Origin::kChoice;
  root.source = blade == nullptr ? "no saw blade among its tools" : fmt::format("the shop, {}", blade->name);
  if (blade != nullptr && blade->width) root.value = blade->width->base();
  return bench.pen.root(feature + "/saw's cut", root);
}

const shop::Tool* blade_of(const Work& work) {
  const shop::Tool* blade = tool_of_kind(work, shop::ToolKind::kSawBlade);
  return blade != nullptr ? blade : tool_of_kind(work, shop::ToolKind::kSlittingSaw);
}

std::string blade_name(const shop::Tool* blade) {
  return blade == nullptr ? "the saw" : blade->name;
}

Line& saw_line(MarksBench& bench, std::string says) {
  Line& line = bench.add_line(std::move(says));
  line.rpm = bench.setup.machine.kind == shop::MachineKind::kBench ? "by hand" : "";
  line.feed = "slow at the end";
  return line;
}

void write_good_to(MarksBench& bench, const std::string& feature) {
  const SawnGoodTo good =
      sawn_good_to(bench.setup.machine.kind == shop::MachineKind::kBench, bench.print.system());
  const std::string name = feature + "/sawn good to";
  const auto root = [&](const std::string& local, double mm, double half_width_mm) {
    ledger::Root one;
    one.kind = Kind::kLength;
    one.value = mm;
    one.origin = ledger::Origin::kDefault;
    one.source = fmt::format("sawn to a line: {} to {}, from memory", bench.print.nominal(good.least_mm),
                             bench.print.nominal(good.most_mm));
    if (half_width_mm > 0.0) one.shares = {{"the saw", from_half_width(half_width_mm)}};
    bench.pen.root(local, one);
  };
  root(name, (good.least_mm + good.most_mm) / 2.0, (good.most_mm - good.least_mm) / 2.0);
  root(name + "/least", good.least_mm, 0.0);
  root(name + "/most", good.most_mm, 0.0);
}

}  // namespace

void write_split(MarksBench& bench, const Work& work, const part::Formed& split) {
  const std::string& feature = work.feature;
  const shop::Tool* blade = blade_of(work);
  const Figure& cut = kerf(bench, feature, blade);
  const Figure& near = bench.feature_figure(feature, "from side");
  const Figure& width = bench.feature_figure(feature, "width");
  const Figure& far = bench.pen.work(
      feature + "/far line", Kind::kLength, "near face of the cut and its width",
      [](auto from, auto wide) { return from + wide; }, near, width);
  const Figure& leave = bench.pen.work(
      feature + "/left on each face", Kind::kLength, "half of what the split is wider than the saw's cut",
      [](auto wide, auto saw) { return (wide - saw) / 2.0; }, width, cut);
  const std::string side(part::name_of(split.side));
  Line& mark =
      put(bench, bench.add_line(fmt::format("mark {}: two lines all round, from the {}", feature, side)),
          {{part::axis_of(split.side), split.side, &near}, {part::axis_of(split.side), split.side, &far}});
  mark.expect = "lines meet";
  bench
      .add_line(
          fmt::format("match-mark both pieces across the lines: piece towards the {}, piece towards the {}",
                      side, part::name_of(part::opposite(split.side))))
      .expect = "marks on both";
  saw_line(bench, fmt::format("saw between the lines with {}, which takes {}", blade_name(blade),
                              or_not_known(cut, bench.print.plain(cut.value))))
      .expect = "both lines stand";
  const bool is_faced = !leave.known() || leave.value > 0.0;
  Line& face = bench.add_line(is_faced ? fmt::format("face both pieces to their lines, {} off each",
                                                     or_not_known(leave, bench.print.plain(leave.value)))
                                       : std::string("take the burrs off both pieces"));
  face.feed = "file";
  face.expect = limits_of(bench, feature, split.sizes.at("width"), "width") + " out";
  bench.sheet.items.emplace_back(
      Note{fmt::format("{}: both pieces are kept, together, until they are joined again.", feature)});
}

void write_slit(MarksBench& bench, const Work& work, const part::Formed& slit) {
  const std::string& feature = work.feature;
  const shop::Tool* blade = blade_of(work);
  kerf(bench, feature, blade);
  std::vector<Mark> marks;
  for (const part::Axis axis : part::kAxes) {
    if (axis == part::axis_of(slit.side) || axis == part::axis_of(slit.of_into)) continue;
    const Figure& at = bench.feature_figure(slit.of, fmt::format("at {}", part::name_of(axis)));
    marks.push_back(mark_at(bench, fmt::format("{}/{}", feature, part::name_of(axis)), feature, axis, at));
  }
  put(bench,
      bench.add_line(
          fmt::format("mark {}: {}, through the middle of {}", feature, from_words(marks), slit.of)),
      marks)
      .expect = "through its middle";
  Line& line = saw_line(bench, fmt::format("saw {} from the {} into {} with {}", feature,
                                           part::name_of(slit.side), slit.of, blade_name(blade)));
  line.expect = limits_of(bench, feature, slit.sizes.at("width"), "width");
  line.to_fill = true;
  bench.sheet.items.emplace_back(Note{fmt::format(
      "{}: {} may close or open as the slit runs in. Measure it again after.", feature, slit.of)});
}

void write_sawn_flat(MarksBench& bench, const Work& work, const part::Flat& flat) {
  const std::string& feature = work.feature;
  const shop::Tool* blade = blade_of(work);
  const Figure& cut = kerf(bench, feature, blade);
  write_good_to(bench, feature);
  const Face kept = part::opposite(flat.side);
  const Figure& leaves = to_make(bench, feature, "leaves", flat.leaves);
  const std::string kept_name(part::name_of(kept));
  put(bench, bench.add_line(fmt::format("mark {}: a line all round, from the {}", feature, kept_name)),
      {{part::axis_of(flat.side), kept, &leaves}})
      .expect = "line meets";
  bench.sheet.items.emplace_back(Note{
      fmt::format("{}: the piece towards the {} is kept. The saw's cut, {}, goes into the waste, the line "
                  "stands.",
                  feature, kept_name, or_not_known(cut, bench.print.plain(cut.value)))});
  Line& line = saw_line(
      bench, fmt::format("{}: saw on the waste side of the line with {}", feature, blade_name(blade)));
  line.expect = limits_of(bench, feature, flat.leaves, "leaves");
  line.to_fill = true;
}

}  // namespace sparewright::route
