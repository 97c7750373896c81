// From the dimensions of 200 invented parts to their drawings: what fits or locates is named by exactly one length or note,
// and every word of those is on the sheets once, clear of other words and of every line.
#include <map>
#include <numbers>

#include <BRepAlgoAPI_Cut.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS_Shape.hxx>
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "dimensioned_parts.hpp"
#include "drawing/part_drawing.hpp"
#include "drawing_faults.hpp"
#include "fixed_ruler.hpp"
#include "solid/edges.hpp"
#include "solid/kernel_shape.hpp"

namespace sparewright::drawing {
namespace {

// All cuts at once, and not compared with rays: what is tested here is the paper.
base::Result<std::vector<solid::Edge>> edges_of(const shape::Recipe& recipe) {
  const shape::Primitive& blank = recipe.blank().body;
  double seam_rad = 0.3;
  TopTools_ListOfShape from;
  TopTools_ListOfShape tools;
  from.Append(solid::kernel_body(blank, seam_rad, blank));
  for (const shape::Cut& cut : recipe.cuts())
    tools.Append(solid::kernel_body(cut.body, seam_rad += 2.4, blank));
  BRepAlgoAPI_Cut cut;
  cut.SetArguments(from);
  cut.SetTools(tools);
  cut.Build();
  return solid::edges_of(solid::from_kernel(cut.Shape()));
}

// Views without hidden lines worked out, for most of the parts: boxes, and the rims and sides of what is drilled from above.
PartViews plain_views(const part::Part& part, const shape::Recipe& recipe) {
  const auto size = [&](std::size_t axis) { return part.blank.sizes.at(axis).nominal.base; };
  const auto box = [](double width, double height) {
    View view;
    view.high = {width, height};
    view.lines = {{{0, 0}, {width, 0}},
                  {{width, 0}, {width, height}},
                  {{width, height}, {0, height}},
                  {{0, height}, {0, 0}}};
    return view;
  };
  PartViews views;
  views.front = box(size(0), size(2));
  views.slant = box(size(0), size(1));
  if (part::is_bar(part.blank.shape)) return views;
  views.top = box(size(0), size(1));
  for (const shape::Cut& cut : recipe.cuts()) {
    const auto* hole = std::get_if<shape::Cylinder>(&cut.nominal);
    if (hole == nullptr) continue;
    const shape::Point& at = hole->frame.origin;
    views.top->arcs.push_back({{at.x, at.y}, hole->radius_mm, 0.0, 2.0 * std::numbers::pi, Seen::kVisible});
    for (const double u : {at.x - hole->radius_mm, at.x + hole->radius_mm})
      views.front.lines.push_back({{u, 0.0}, {u, size(2)}, Seen::kHidden});
  }
  return views;
}

using Counts = std::map<std::string, int>;

struct Tally {
  int parts = 0;
  int sheets = 0;
  int texts = 0;
  int lines = 0;
  int with_duty = 0;
  int notes = 0;
  int below = 0;
  int in_line = 0;
};

// How often each figure is named.
Counts named(const Marks& marks) {
  Counts counts;
  for (const LengthMark& mark : marks.lengths) {
    for (const std::string& name : mark.names)
      ++counts[name];
  }
  for (const NoteMark& mark : marks.notes) {
    for (const std::string& name : mark.names)
      ++counts[name];
  }
  return counts;
}

void expect_duties_named_once(const tests::DimensionedPart& made, const Marks& marks,
                              const std::string& which, Tally& tally) {
  const Counts counts = named(marks);
  for (const part::Feature& feature : made.part.features) {
    for (const part::NamedDimension& d : part::dimensions_of(feature)) {
      if (d.dimension->duty != part::Duty::kFits && d.dimension->duty != part::Duty::kLocates) continue;
      const std::string name = fmt::format("{}/{}", part::feature_path(feature.name), d.local);
      const auto found = counts.find(name);
      const int times = found == counts.end() ? 0 : found->second;
      EXPECT_EQ(times, made.told_by_the_first.contains(name) ? 0 : 1) << which << ": " << name;
      ++tally.with_duty;
      const auto* size = std::get_if<quantity::Typed>(&d.dimension->size);
      tally.in_line += size != nullptr && size->base == 0.0 ? 1 : 0;
    }
  }
}

// Of a view of something small, or what stands under that: "A", "A  5:1".
bool is_letter(const std::string& says) {
  const bool is_capital = says.front() >= 'A' && says.front() <= 'Z';
  return is_capital && (says.size() == 1 || says[1] == ' ');
}

void expect_readable(const PartContent& content, const part::Part& part, const std::string& which,
                     Tally& tally) {
  const auto is_caption = [&](const std::string& says) {
    return is_letter(says) || part::find_feature(part, says) != nullptr;
  };
  const DrawingRoom room{187.0, 220.0};
  const tests::FixedRuler ruler;
  Counts printed;
  for (const PartDrawing& sheet : draw_part(content, room, ruler)) {
    EXPECT_FALSE(sheet.scale.empty()) << which;
    ++tally.sheets;
    EXPECT_LE(sheet.height_mm, room.height_mm) << which;
    EXPECT_THAT(tests::drawing_faults(sheet.list, {0.0, 0.0, room.width_mm, sheet.height_mm}),
                testing::IsEmpty())
        << which << " at " << sheet.scale;
    for (const Element& element : sheet.list) {
      const auto* text = std::get_if<Text>(&element);
      tally.texts += text != nullptr ? 1 : 0;
      tally.lines += text != nullptr ? 0 : 1;
      if (text != nullptr && !is_caption(text->says)) ++printed[text->says];
    }
    for (const NoteMark& note : sheet.below) {
      ++tally.below;
      for (const std::string& line : note.lines)
        ++printed[line];
    }
  }
  Counts wanted;
  for (const LengthMark& mark : content.marks.lengths) {
    for (const std::string& line : mark.says)
      ++wanted[line];
  }
  for (const NoteMark& note : content.marks.notes) {
    ++tally.notes;
    for (const std::string& line : note.lines)
      ++wanted[line];
  }
  EXPECT_EQ(printed, wanted) << which;
}

TEST(DimensionedPart, IsDrawnWithEveryDutyOnce) {
  constexpr int kParts = 200;
  constexpr int kTrueViews = 4;  // one in so many parts
  Tally tally;
  for (int i = 0; i < kParts; ++i) {
    const std::string which = fmt::format("part {}", i);
    const tests::DimensionedPart made = tests::PartInventor(static_cast<std::uint64_t>(i) + 1).made();
    ledger::Ledger ledger;
    auto stages = part::stages(made.part);
    // Volume and walls take their time, and no drawing says them.
    std::erase_if(stages, [](const ledger::Stage& stage) { return stage.name.starts_with("part"); });
    ledger.declare(std::move(stages));
    std::vector<const part::Feature*> features;
    for (const part::Feature& feature : made.part.features)
      features.push_back(&feature);
    const auto recipe = part::recipe_of(made.part.blank, features,
                                        [&](const std::string& name) { return ledger.get(name).value; });
    ASSERT_TRUE(recipe) << which;
    const ledger::Snapshot figures = ledger.keep();
    auto views = i % kTrueViews == 0 ? views_of(made.part, figures, *recipe, edges_of)
                                     : base::Result<PartViews>(plain_views(made.part, *recipe));
    ASSERT_TRUE(views) << which;
    PartContent content{std::move(*views), marks_of(made.part, figures, quantity::UnitSystem::kMetric),
                        i % 3 == 0 ? Projection::kFirstAngle : Projection::kThirdAngle};
    for (const LengthMark& mark : content.marks.lengths)
      EXPECT_THAT(mark.says, testing::Not(testing::Contains("NOT KNOWN"))) << which;
    expect_duties_named_once(made, content.marks, which, tally);
    expect_readable(content, made.part, which, tally);
    ++tally.parts;
  }
  fmt::print(
      "{} parts on {} sheets: {} texts among {} lines, {} dimensions that fit or locate, {} notes, {} of "
      "them below\n",
      tally.parts, tally.sheets, tally.texts, tally.lines, tally.with_duty, tally.notes, tally.below);
  EXPECT_GT(tally.with_duty, 800);
  EXPECT_GT(tally.texts, 3000);
  EXPECT_GT(tally.in_line, 20);  // a length of nothing that matters all the same
  EXPECT_LT(tally.below, tally.notes / 5);
}

}  // namespace
}  // namespace sparewright::drawing
