// Whatever the setup: no words overlap, no line runs through words, nothing lies outside the picture.
#include <gtest/gtest.h>

#include "drawing/json.hpp"
#include "drawing/plan_view.hpp"
#include "drawing_faults.hpp"
#include "fixed_ruler.hpp"
#include "random_setups.hpp"

namespace sparewright::drawing {
namespace {

constexpr std::uint32_t kSeed = 20;
constexpr int kViews = 200;

TEST(PlanViewProperty, NothingOverlaps) {
  const tests::FixedRuler ruler;
  tests::Dice dice(kSeed);
  std::size_t names = 0;
  std::size_t leaders = 0;
  std::size_t letters = 0;
  for (int i = 0; i < kViews; ++i) {
    const route::PlanView view = tests::random_view(dice);
    const double larger = dice.real(1.0, 1.4);
    const PictureRoom room{dice.real(larger * kLeastPicture_mm, 190.0),
                           dice.real(larger * kLeastPicture_mm, 120.0), larger};
    const HeldViews held = tests::random_held(dice, view);
    const auto picture = plan_view(view, dice.one_in(3) ? nullptr : &held, room, ruler);
    ASSERT_TRUE(picture.has_value());
    EXPECT_LE(picture->height_mm, room.height_mm + 1e-9) << "view " << i;
    for (const std::string& fault :
         tests::drawing_faults(picture->list, {0.0, 0.0, room.width_mm, picture->height_mm})) {
      ADD_FAILURE() << "seed " << kSeed << ", view " << i << ": " << fault;
    }
    letters += picture->key.size();
    names += view.holes.size() + view.flats.size() + view.forms.size() - picture->not_named.size();
    for (const Element& e : picture->list)
      leaders += std::holds_alternative<Filled>(e) ? 1U : 0U;
  }
  EXPECT_GT(names, 500U);
  EXPECT_GT(letters, 20U);
  EXPECT_GT(leaders, 1000U);  // diamonds and the arrows of the compass among them: four a picture
}

TEST(PlanViewProperty, IsTheSameEveryTime) {
  const tests::FixedRuler ruler;
  tests::Dice dice(kSeed + 1);
  for (int i = 0; i < 20; ++i) {
    const route::PlanView view = tests::random_view(dice);
    EXPECT_EQ(to_json(plan_view(view, nullptr, {90.0, 70.0}, ruler)->list),
              to_json(plan_view(view, nullptr, {90.0, 70.0}, ruler)->list));
  }
}

}  // namespace
}  // namespace sparewright::drawing
