#include "core/survey/repeats.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using quantity::UnitSystem;
using testing::AllOf;
using testing::EndsWith;
using testing::HasSubstr;
using testing::Not;
using tests::instrument;
using tests::reading;
using tests::typed;

// The words of the query; empty where there is none.
std::string says(const Reading& read, const Instrument& with) {
  const auto query = repeats_apart(read, with, UnitSystem::kInch);
  return query ? query->says : "";
}

Instrument of_kind(std::string kind, std::string_view good_to, std::string_view reads) {
  Instrument out = instrument("one", good_to, reads);
  out.kind = std::move(kind);
  return out;
}

Reading read_as(std::initializer_list<std::string_view> repeats) {
  return reading("lug", Way::kThickness, {"lug"}, "one", repeats);
}

// 0.4015 less 0.3760 is 0.0255: a turn and 0.0005. Explained are 4 x 0.0002 + 0.001 = 0.0018.
TEST(Repeats, ATurnOfTheThimbleApart) {
  const Instrument micrometer = of_kind("outside micrometer", "0.0002", "0.001");
  EXPECT_EQ(
      says(read_as({"0.3765", "0.3760", "0.4015"}), micrometer),
      "misread? 'lug' was read 0.3760 and 0.4015, 0.0255 in apart; agrees to 0.0005 in with one turn of the "
      "thimble (0.025 in)");
  EXPECT_THAT(says(read_as({"0.3760", "0.4515"}), micrometer),
              EndsWith("agrees to 0.0005 in with three turns of the thimble (0.025 in each)"));
  // Four are no longer a few: 0.1 in is a figure of the scale.
  EXPECT_THAT(says(read_as({"0.3760", "0.4760"}), micrometer),
              EndsWith("agrees to 0.0000 in with one figure of the scale (0.1 in)"));
}

TEST(Repeats, WhatNoTurnComesToIsSaidWithoutOne) {
  const Instrument micrometer = of_kind("outside micrometer", "0.0002", "0.001");
  EXPECT_THAT(says(read_as({"0.3760", "0.3860"}), micrometer), EndsWith("0.0100 in apart"));
  EXPECT_EQ(says(read_as({"0.3760", "0.3775"}), micrometer), "");  // 0.0015: explained
  // Good to no more than 0.002 it explains 0.009, more than a quarter turn: any amount lies near some turn.
  EXPECT_THAT(says(read_as({"0.376", "0.401"}), of_kind("micrometer", "0.002", "0.001")),
              AllOf(HasSubstr("misread?"), Not(HasSubstr("turn"))));
}

TEST(Repeats, TheTurnIsTheInstrumentsOrThatOfItsKind) {
  Instrument collar = of_kind("collar of the mill", "0.001", "0.001");
  EXPECT_THAT(says(read_as({"1.250", "1.376"}), collar),
              EndsWith("agrees to 0.0010 in with one turn of the collar (0.125 in)"));
  collar.turn = typed("0.200");
  EXPECT_THAT(says(read_as({"1.250", "1.376"}), collar), EndsWith("0.1260 in apart"));
  EXPECT_THAT(says(read_as({"1.250", "1.649"}), collar),
              EndsWith("agrees to 0.0010 in with two turns of the collar (0.2 in each)"));
  const Instrument micrometer = of_kind("outside micrometer", "0.004 mm", "0.01 mm");
  EXPECT_THAT(says(read_as({"12.41 mm", "12.92 mm"}), micrometer),
              HasSubstr("one turn of the thimble (0.5 mm)"));
  EXPECT_THAT(says(read_as({"1.250", "1.290"}), of_kind("rule", "0.001", "0.001")), Not(HasSubstr("turn")));
}

TEST(Repeats, AWornPlaceMayDiffer) {
  Reading worn = read_as({"0.3760", "0.4015"});
  worn.condition = Condition::kWorn;
  EXPECT_EQ(says(worn, of_kind("outside micrometer", "0.0002", "0.001")), "");
}

}  // namespace
}  // namespace sparewright::survey
