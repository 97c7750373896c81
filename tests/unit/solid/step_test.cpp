#include "solid/step.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "random_shapes.hpp"
#include "solid/make_solid.hpp"

namespace sparewright::solid {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

// A part with all kinds of cuts, some of them crossing, so that the kernel has choices to make.
shape::Recipe part() {
  const auto bore = [](double x) {
    return shape::Cutter{"bore", shape::Cylinder{shape::Frame::at({x, 20.0, 0.0}), 6.0, 25.0},
                         shape::Open::kThrough};
  };
  std::vector<shape::Cutter> cutters{bore(12.0), bore(30.0), bore(48.0)};
  cutters.push_back({"cross",
                     shape::Cylinder{shape::Frame::along({0.0, 20.0, 12.0}, {1.0, 0.0, 0.0}), 4.0, 60.0},
                     shape::Open::kThrough});
  cutters.push_back({"oil hole",
                     shape::DrilledHole{shape::Frame::along({30.0, 0.0, 12.0}, {0.0, 1.0, 0.0}), 2.0, 15.0},
                     shape::Open::kStart});
  cutters.push_back({"step", shape::Box{shape::Frame::at({0.0, 30.0, 10.0}), {60.0, 10.0, 15.0}},
                     shape::Open::kXLow | shape::Open::kXHigh | shape::Open::kYHigh | shape::Open::kZHigh});
  const auto made = shape::Recipe::make({"block", shape::Box{{}, {60.0, 40.0, 25.0}}}, cutters);
  EXPECT_TRUE(made);
  return made.value();
}

std::string bytes_of(const shape::Recipe& recipe, std::string_view name = "clamp arm") {
  const auto made = make_solid(recipe);
  EXPECT_TRUE(made);
  const auto bytes = write_step(made->solid, name);
  EXPECT_TRUE(bytes);
  return *bytes;
}

TEST(Step, ReadsBackWithTheSameVolume) {
  const auto made = make_solid(part());
  ASSERT_TRUE(made);
  const auto back = read_step(*write_step(made->solid, "clamp arm"));
  ASSERT_TRUE(back);
  EXPECT_NEAR(back->volume_mm3(), made->solid.volume_mm3(), 1e-6 * made->solid.volume_mm3());
  EXPECT_EQ(back->faces(), made->solid.faces());
  EXPECT_EQ(back->pieces(), 1);
}

TEST(Step, IsInMillimetresAndSaysNothingOfTheDayOrTheUser) {
  const std::string bytes = bytes_of(part());
  EXPECT_THAT(bytes, HasSubstr("SI_UNIT(.MILLI.,.METRE.)"));
  EXPECT_THAT(bytes, HasSubstr("FILE_NAME('clamp arm','1970-01-01T00:00:00',(''),(''),"));
  EXPECT_THAT(bytes, HasSubstr("PRODUCT('clamp arm','clamp arm'"));
  EXPECT_THAT(bytes, Not(HasSubstr("Unknown")));
  EXPECT_THAT(bytes, Not(HasSubstr("STEP translator")));
}

TEST(Step, NamesAreEscaped) {
  const std::string bytes = bytes_of(part(), "O'Brien's \\ lever \xC3\xA9\xFF");
  EXPECT_THAT(bytes, HasSubstr("'O''Brien''s \\\\ lever \\X4\\000000E9\\X0\\\\X4\\0000FFFD\\X0\\'"));
}

TEST(Step, RepeatsByteForByte) {
  const std::string first = bytes_of(part());
  tests::Random random(51);
  for (int i = 0; i < 3; ++i) {  // other work in between moves memory about and counters on
    const auto other = shape::Recipe::make({"block", shape::Box{{}, {60.0, 40.0, 25.0}}},
                                           tests::grid_cutters(random, 3, {60.0, 40.0, 25.0}));
    ASSERT_TRUE(other);
    const auto made = make_solid(*other);
    if (made) {
      ASSERT_TRUE(write_step(made->solid, "other"));
    }
    EXPECT_EQ(bytes_of(part()), first);
  }
}

TEST(Step, TheKernelPrintsNothing) {
  ::testing::internal::CaptureStdout();
  ::testing::internal::CaptureStderr();
  const auto made = make_solid(part());
  const auto bytes = write_step(made->solid, "clamp arm");
  const auto back = read_step(*bytes);
  const auto broken = read_step("ISO-10303-21; nonsense");
  EXPECT_EQ(::testing::internal::GetCapturedStdout(), "");
  EXPECT_EQ(::testing::internal::GetCapturedStderr(), "");
  EXPECT_TRUE(back);
  EXPECT_FALSE(broken);
}

TEST(Step, WhatIsNoStepFails) {
  for (const std::string_view bytes :
       {"", "hello", "ISO-10303-21;HEADER;ENDSEC;DATA;ENDSEC;END-ISO-10303-21;"}) {
    const auto read = read_step(bytes);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, base::Code::kKernel);
  }
}

}  // namespace
}  // namespace sparewright::solid
