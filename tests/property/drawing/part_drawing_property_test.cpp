// Drawings of 200 random parts: no words overlap or lie on a line, nothing lies outside, and every length and note is there
// once, on one of the sheets.
#include <algorithm>
#include <map>
#include <numbers>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "drawing/part_drawing.hpp"
#include "drawing_faults.hpp"
#include "fixed_ruler.hpp"
#include "splitmix.hpp"

namespace sparewright::drawing {
namespace {

using tests::SplitMix;

void add_box(View& view, double width, double height) {
  view.low = {0.0, 0.0};
  view.high = {width, height};
  view.lines = {{{0, 0}, {width, 0}},
                {{width, 0}, {width, height}},
                {{width, height}, {0, height}},
                {{0, height}, {0, 0}}};
}

struct Hole {
  double x = 0.0;
  double y = 0.0;
  double radius = 0.0;
};

// A plate with holes as its three views would show it.
PartContent random_part(SplitMix& random) {
  const double x = random.between(20.0, 400.0);
  const double y = random.between(20.0, 200.0);
  const double z = random.between(5.0, 80.0);
  PartContent content;
  content.projection = random.one_in(3) ? Projection::kFirstAngle : Projection::kThirdAngle;
  add_box(content.views.front, x, z);
  content.views.top.emplace();
  add_box(*content.views.top, x, y);
  if (random.one_in(2)) {
    content.views.end.emplace();
    add_box(*content.views.end, y, z);
  }
  add_box(content.views.slant, x, y);
  const std::size_t holes = random.below(7);
  for (std::size_t i = 0; i < holes; ++i) {
    const Hole hole{random.between(0.1, 0.9) * x, random.between(0.1, 0.9) * y,
                    random.between(0.02, 0.1) * std::min(x, y)};
    content.views.top->arcs.push_back(
        {{hole.x, hole.y}, hole.radius, 0.0, 2.0 * std::numbers::pi, Seen::kVisible});
    for (const double side : {-1.0, 1.0})
      content.views.front.lines.push_back(
          {{hole.x + side * hole.radius, 0}, {hole.x + side * hole.radius, z}, Seen::kHidden});
    const auto length = [&](part::Axis along, shape::Point from) {
      LengthMark mark;
      mark.from = from;
      mark.to = {hole.x, hole.y, z};
      mark.along = along;
      mark.strong = random.one_in(3);
      mark.says = {fmt::format("{:.3f}", random.between(1.0, 99.0))};
      if (random.one_in(2)) mark.says.push_back(fmt::format("{:.3f}", random.between(1.0, 99.0)));
      mark.names = {fmt::format("length {}", content.marks.lengths.size())};
      content.marks.lengths.push_back(std::move(mark));
    };
    length(part::Axis::kX, {random.one_in(2) ? 0.0 : x, hole.y, z});
    length(part::Axis::kY, {hole.x, random.one_in(2) ? 0.0 : y, z});
    NoteMark note;
    note.at = {hole.x, hole.y, z};
    note.radius_mm = hole.radius;
    note.lines = {fmt::format("hole {}:", i + 1), "dia 6.60 through"};
    if (random.one_in(2)) note.lines.emplace_back("counterbore dia 11.00 x 6.80 deep");
    note.strong = random.one_in(4);
    content.marks.notes.push_back(std::move(note));
  }
  LengthMark thick;
  thick.to = {0, 0, z};
  thick.along = part::Axis::kZ;
  thick.seen_from = part::Face::kFront;
  thick.says = {"thick"};
  content.marks.lengths.push_back(std::move(thick));
  return content;
}

TEST(PartDrawing, OfRandomPartsReadsWell) {
  constexpr int kParts = 200;
  const DrawingRoom room{187.0, 220.0};
  const tests::FixedRuler ruler;
  int notes = 0;
  int below = 0;
  for (int i = 0; i < kParts; ++i) {
    SplitMix random(static_cast<std::uint64_t>(i) + 1);
    const PartContent content = random_part(random);
    std::map<std::string, int> printed;
    for (const PartDrawing& sheet : draw_part(content, room, ruler)) {
      ASSERT_FALSE(sheet.scale.empty()) << i;
      EXPECT_LE(sheet.height_mm, room.height_mm);
      EXPECT_THAT(tests::drawing_faults(sheet.list, {0.0, 0.0, room.width_mm, sheet.height_mm}),
                  testing::IsEmpty())
          << "part " << i << " at " << sheet.scale;
      for (const Element& element : sheet.list) {
        if (const auto* text = std::get_if<Text>(&element)) ++printed[text->says];
      }
      for (const NoteMark& note : sheet.below) {
        for (const std::string& line : note.lines)
          ++printed[line];
      }
      below += static_cast<int>(sheet.below.size());
    }
    notes += static_cast<int>(content.marks.notes.size());
    std::map<std::string, int> wanted;
    for (const LengthMark& mark : content.marks.lengths) {
      for (const std::string& line : mark.says)
        ++wanted[line];
    }
    for (const NoteMark& note : content.marks.notes) {
      for (const std::string& line : note.lines)
        ++wanted[line];
    }
    EXPECT_EQ(printed, wanted) << "part " << i;
  }
  fmt::print("{} parts, {} notes, {} of them listed below the views\n", kParts, notes, below);
  EXPECT_LT(below, notes / 5);
}

TEST(PartDrawing, OfEqualPartsIsEqual) {
  const tests::FixedRuler ruler;
  const auto drawn = [&] {
    SplitMix random(7);
    return draw_part(random_part(random), {187.0, 220.0}, ruler);
  };
  const auto one = drawn();
  const auto other = drawn();
  ASSERT_EQ(one.size(), other.size());
  for (std::size_t i = 0; i < one.size(); ++i)
    EXPECT_EQ(one[i].list, other[i].list);
}

}  // namespace
}  // namespace sparewright::drawing
