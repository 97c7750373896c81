#include "solid/pieces.hpp"

#include <gtest/gtest.h>

#include "solid/step.hpp"
#include "solid_samples.hpp"

namespace sparewright::solid {
namespace {

using tests::plate;
using tests::saw_cut;
using tests::solid_of;

TEST(Pieces, OneLumpIsOnePiece) {
  const Solid solid = solid_of(tests::bracket());
  const auto pieces = pieces_of(solid);
  ASSERT_EQ(pieces.size(), 1U);
  EXPECT_DOUBLE_EQ(pieces[0].volume_mm3(), solid.volume_mm3());
}

TEST(Pieces, ASawnBlockIsTwoTheLargerFirst) {
  const Solid sawn = solid_of(plate({saw_cut(40.0, 43.0)}));
  const auto pieces = pieces_of(sawn);
  ASSERT_EQ(pieces.size(), 2U);
  EXPECT_NEAR(pieces[0].volume_mm3(), 57.0 * 60.0 * 20.0, 1e-6);
  EXPECT_NEAR(pieces[1].volume_mm3(), 40.0 * 60.0 * 20.0, 1e-6);
  EXPECT_NEAR(pieces[1].centre_of_gravity().x, 20.0, 1e-9);
  for (const Solid& piece : pieces) {
    EXPECT_EQ(piece.pieces(), 1);
    EXPECT_EQ(piece.faces(), 6);
    EXPECT_TRUE(piece.valid());
    EXPECT_TRUE(mesh_of(piece));
  }
}

TEST(Pieces, EqualOnesStandInTheOrderOfTheirPlaces) {
  const auto pieces = pieces_of(solid_of(plate({saw_cut(65.0, 70.0), saw_cut(30.0, 35.0)})));
  ASSERT_EQ(pieces.size(), 3U);
  EXPECT_NEAR(pieces[0].centre_of_gravity().x, 15.0, 1e-9);
  EXPECT_NEAR(pieces[1].centre_of_gravity().x, 50.0, 1e-9);
  EXPECT_NEAR(pieces[2].centre_of_gravity().x, 85.0, 1e-9);
}

TEST(Pieces, TogetherTheyAreTheWork) {
  auto cutters = tests::bracket_cutters();
  cutters.push_back(saw_cut(60.0, 62.0));
  const Solid sawn = solid_of(plate(cutters));
  double volume = 0.0;
  for (const Solid& piece : pieces_of(sawn))
    volume += piece.volume_mm3();
  // The kernel integrates over round faces about another centre each time.
  EXPECT_NEAR(volume, sawn.volume_mm3(), 1e-8 * volume);
}

TEST(Pieces, HaveAFrameOfTheirOwn) {
  const Solid sawn = solid_of(plate({saw_cut(40.0, 43.0)}));
  const Solid far = pieces_of(sawn)[0];
  const Solid own = in_its_own_frame(far);
  EXPECT_NEAR(own.centre_of_gravity().x, 28.5, 1e-9);
  EXPECT_NEAR(own.bounds().low.x, 0.0, 1e-9);
  EXPECT_NEAR(own.volume_mm3(), far.volume_mm3(), 1e-6);
  EXPECT_NEAR(far.bounds().low.x, 43.0, 1e-9) << "the piece itself has not moved";
}

TEST(Pieces, RepeatByteForByte) {
  const auto steps = [] {
    std::vector<std::string> all;
    for (const Solid& piece : pieces_of(solid_of(plate({saw_cut(65.0, 70.0), saw_cut(30.0, 35.0)}))))
      all.push_back(*write_step(piece, "piece"));
    return all;
  };
  EXPECT_EQ(steps(), steps());
}

}  // namespace
}  // namespace sparewright::solid
