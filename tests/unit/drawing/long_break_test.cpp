// A long bar is drawn shorter where it is the same all along, and only there.
#include "drawing/long_break.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sparewright::drawing {
namespace {

// A bar 400 long and 20 high, a shoulder at 360.
PartViews bar() {
  PartViews views;
  View& view = views.front;
  view.low = {0, 0};
  view.high = {400, 20};
  view.lines = {{{0, 0}, {360, 0}},   {{0, 20}, {360, 20}},   {{0, 0}, {0, 20}},    {{360, 0}, {360, 20}},
                {{360, 4}, {400, 4}}, {{400, 16}, {360, 16}}, {{400, 4}, {400, 16}}};
  return views;
}

Marks note_at(double x) {
  Marks marks;
  NoteMark note;
  note.at = {x, 10, 10};
  note.radius_mm = 5;
  marks.notes.push_back(note);
  return marks;
}

// Nothing between 0 and 360: a tenth of that stays at either side, and 0.3 of the height is shown for the rest.
TEST(LongBreak, TakesOutWhatIsTheSameAllAlong) {
  const PartViews out = with_break(bar(), {});
  ASSERT_TRUE(out.broken);
  EXPECT_NEAR(out.broken->from_mm, 36.0, 1e-9);
  EXPECT_NEAR(out.broken->to_mm, 324.0, 1e-9);
  EXPECT_NEAR(out.front.high.u, 400.0 - 288.0 + 6.0, 1e-9);
  EXPECT_EQ(out.front.lines.size(), 9U) << "two lines along it are cut in two";
  ASSERT_EQ(out.front.waves.size(), 2U);
  EXPECT_NEAR(out.front.waves[0].u, 36.0, 1e-9);
  EXPECT_NEAR(out.front.waves[1].u, 42.0, 1e-9);
  EXPECT_NEAR(out.front.waves[0].low, 0.0, 1e-9);
  EXPECT_NEAR(out.front.waves[0].high, 20.0, 1e-9);
}

TEST(LongBreak, ShowsPlacesWhereTheyCameToLie) {
  const PartViews out = with_break(bar(), {});
  EXPECT_NEAR(out.shown(ViewOf::kFront, {10, 5, 7}).u, 10.0, 1e-9);
  EXPECT_NEAR(out.shown(ViewOf::kFront, {360, 5, 7}).u, 78.0, 1e-9);
  EXPECT_NEAR(out.shown(ViewOf::kFront, {360, 5, 7}).v, 7.0, 1e-9);
  EXPECT_NEAR(out.shown(ViewOf::kEnd, {360, 5, 7}).u, 5.0, 1e-9) << "the end view has no length";
}

TEST(LongBreak, KeepsWhatHasANoteOrALengthInIt) {
  const PartViews beside = with_break(bar(), note_at(100));
  ASSERT_TRUE(beside.broken);
  EXPECT_GE(beside.broken->from_mm, 105.0);
  Marks marks = note_at(180);
  EXPECT_TRUE(with_break(bar(), marks).broken) << "170 of 400 are plain still";
  LengthMark length;
  length.from = {0, 0, 0};
  for (const double x : {90.0, 270.0}) {
    length.to = {x, 0, 0};
    marks.lengths.push_back(length);
  }
  EXPECT_FALSE(with_break(bar(), marks).broken);
}

TEST(LongBreak, LeavesShortPartsAndSectionsWhole) {
  PartViews squat = bar();
  squat.front.high.v = 80;
  EXPECT_FALSE(with_break(squat, {}).broken);
  PartViews section = bar();
  section.section_y_mm = 10.0;
  EXPECT_FALSE(with_break(section, {}).broken);
}

}  // namespace
}  // namespace sparewright::drawing
