// Whatever is turned: no words overlap, no line runs through words, nothing lies outside the picture.
#include <gtest/gtest.h>

#include "drawing/json.hpp"
#include "drawing/turned_view.hpp"
#include "drawing_faults.hpp"
#include "fixed_ruler.hpp"
#include "random_setups.hpp"

namespace sparewright::drawing {
namespace {

constexpr std::uint32_t kSeed = 31;
constexpr int kViews = 200;

route::TurnedView random_turned(tests::Dice& dice) {
  route::TurnedView view;
  const double length = dice.real(5.0, 400.0);
  const double across = dice.real(3.0, 150.0);
  view.work_to_mm = length;
  view.jaws_from_mm = dice.one_in(4) ? length : length * dice.real(0.5, 0.95);
  view.jaws_grip_diameter_mm = across;
  view.holder = "3-jaw chuck";
  view.free_end = "right end";
  if (dice.one_in(2)) {
    view.tail = "live centre";
    view.tail_is_centre = true;
  }
  view.steps.push_back({"", 0.0, length, across, across, false, false});
  double out = across;
  double to = view.jaws_from_mm;
  for (int i = dice.whole(0, 6); i > 0; --i) {
    out *= dice.real(0.6, 0.98);
    to *= dice.real(0.4, 0.95);
    const double small = dice.one_in(4) ? out * 0.8 : out;
    view.steps.push_back({"step " + std::to_string(i), 0.0, to, small, out, dice.one_in(2), false});
  }
  for (int i = dice.whole(0, 2); i > 0; --i) {
    out *= dice.real(0.3, 0.8);
    view.steps.push_back(
        {"bore " + std::to_string(i), 0.0, length * dice.real(0.2, 1.0), out, out, dice.one_in(2), true});
  }
  return view;
}

TEST(TurnedViewProperty, NothingOverlaps) {
  const tests::FixedRuler ruler;
  tests::Dice dice(kSeed);
  std::size_t names = 0;
  for (int i = 0; i < kViews; ++i) {
    const route::TurnedView view = random_turned(dice);
    const double larger = dice.real(1.0, 1.4);
    const PictureRoom room{dice.real(1.4 * larger * kLeastPicture_mm, 190.0),
                           dice.real(1.4 * larger * kLeastPicture_mm, 120.0), larger};
    const auto picture = turned_view(view, room, ruler);
    ASSERT_TRUE(picture.has_value());
    EXPECT_LE(picture->height_mm, room.height_mm + 1e-9) << "view " << i;
    for (const std::string& fault :
         tests::drawing_faults(picture->list, {0.0, 0.0, room.width_mm, picture->height_mm})) {
      ADD_FAILURE() << "seed " << kSeed << ", view " << i << ": " << fault;
    }
    names += view.steps.size() - picture->not_named.size();
    EXPECT_EQ(to_json(picture->list), to_json(turned_view(view, room, ruler)->list));
  }
  EXPECT_GT(names, 400U);
}

TEST(TurnedView, IsRefusedWhereTheWorkIsNothing) {
  const tests::FixedRuler ruler;
  const PictureRoom room{90.0, 90.0};
  EXPECT_FALSE(turned_view({}, room, ruler));
  route::TurnedView flat;
  flat.work_to_mm = 10.0;
  EXPECT_FALSE(turned_view(flat, room, ruler));
}

}  // namespace
}  // namespace sparewright::drawing
