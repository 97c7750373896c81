// The files of solids through the program: their kinds, and the work as it stands after a setup.
#include <gmock/gmock.h>

#include "bytes.hpp"
#include "program.hpp"

namespace sparewright {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::StartsWith;
using tests::Bytes;
using tests::ProgramTest;
using tests::Ran;

struct Metal {
  double volume_mm3 = 0.0;
  double top_mm = 0.0;
};

Metal measured(const std::string& stl) {
  const Bytes bytes(stl);
  Metal metal;
  for (std::size_t i = 0; i < bytes.u32(80); ++i) {
    double c[9];
    for (std::size_t k = 0; k < 9; ++k)
      c[k] = static_cast<double>(bytes.f32(84 + 50 * i + 12 + 4 * k));
    metal.volume_mm3 += (c[0] * (c[4] * c[8] - c[5] * c[7]) + c[1] * (c[5] * c[6] - c[3] * c[8]) +
                         c[2] * (c[3] * c[7] - c[4] * c[6])) /
                        6.0;
    for (const std::size_t z : {2U, 5U, 8U})
      metal.top_mm = std::max(metal.top_mm, c[z]);
  }
  return metal;
}

class SolidFiles : public ProgramTest {
 protected:
  // The example with its two screw holes made in a setup of their own, op 30.
  void write_two_setups() {
    const std::string text = read("bracket.job.toml");
    const std::size_t head = text.find("[[setup]]");
    const std::size_t works = text.find("[[setup.do]]");
    const std::size_t screws = text.find("[[setup.do]]\nmake = \"screw hole 1\"");
    ASSERT_TRUE(head < works && works < screws && screws != std::string::npos);
    std::string second = text.substr(head, works - head);
    second.replace(second.find("20"), 2, "30");
    write("two.job.toml", text.substr(0, screws) + second + text.substr(screws));
  }
  Metal stl(const std::string& arguments) {
    const Ran ran = run("solid " + arguments + " -o part.stl");
    EXPECT_THAT(ran.err, HasSubstr("wrote part.stl")) << arguments;
    return measured(read("part.stl"));
  }
};

TEST_F(SolidFiles, TheEndingSaysWhichKind) {
  for (const char* name : {"part.step", "part.stp", "PART.STEP", "Part.Stp"}) {
    ASSERT_EQ(run(std::string("solid bracket.job.toml -o ") + name).status, 0) << name;
    EXPECT_THAT(read(name), StartsWith("ISO-10303-21;")) << name;
  }
  for (const char* name : {"part.glb", "part.GLB"}) {
    ASSERT_EQ(run(std::string("solid bracket.job.toml -o ") + name).status, 0) << name;
    EXPECT_THAT(read(name), AllOf(StartsWith("glTF"), HasSubstr("\"name\":\"Idler bracket, seed cleaner\"")))
        << name;
  }
  for (const char* name : {"part.stl", "part.Stl"}) {
    ASSERT_EQ(run(std::string("solid bracket.job.toml -o ") + name).status, 0) << name;
    EXPECT_THAT(read(name), StartsWith("Sparewright, binary STL")) << name;
  }
  EXPECT_EQ(read("part.GLB"), read("part.glb"));
  EXPECT_EQ(read("part.Stl"), read("part.stl"));
}

TEST_F(SolidFiles, WithoutANameItIsStepBesideTheJob) {
  ASSERT_EQ(run("solid bracket.job.toml").status, 0);
  EXPECT_THAT(read("bracket.step"), StartsWith("ISO-10303-21;"));
  ASSERT_EQ(run("solid bracket.job.toml --after 20").status, 0);
  EXPECT_THAT(read("bracket.op20.step"), HasSubstr("PRODUCT('Idler bracket, seed cleaner, after op 20'"));
}

TEST_F(SolidFiles, EndingsOfOtherKindsAreRefused) {
  for (const char* name : {"part.xyz", "part", "part.gltf", "step"}) {
    const Ran ran = run(std::string("solid bracket.job.toml -o ") + name);
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, AllOf(HasSubstr(name), HasSubstr(".step, .stp, .glb or .stl")));
    EXPECT_FALSE(std::filesystem::exists(at(name)));
  }
}

TEST_F(SolidFiles, AfterASetupOnlyWhatIsMadeByThenIsCut) {
  write_two_setups();
  const Metal first = stl("two.job.toml --after 20");
  const Metal second = stl("two.job.toml --after 30");
  const Metal finished = stl("two.job.toml");
  EXPECT_NEAR(second.volume_mm3, finished.volume_mm3, 1e-5 * finished.volume_mm3);
  // Two holes 9/32 through, and counterbores 7/16 for the heads, which are 1/4 high (ASME B18.3) and a little more.
  const double holes = 2.0 * 3.14159 / 4.0 * (7.14 * 7.14 * 14.3 + (11.11 * 11.11 - 7.14 * 7.14) * 6.5);
  EXPECT_NEAR(first.volume_mm3 - second.volume_mm3, holes, 0.3 * holes);
  EXPECT_NEAR(first.top_mm, 19.0, 0.2);
}

TEST_F(SolidFiles, AnOpThatIsNotThereNamesThoseThatAre) {
  write_two_setups();
  write("part.glb", "the old one");
  const Ran ran = run("solid two.job.toml --after 40 -o part.glb");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("the job has no op '40'"), HasSubstr("20, 30")));
  EXPECT_EQ(read("part.glb"), "the old one");
  EXPECT_EQ(run("solid two.job.toml --after twenty").status, 2);
}

TEST_F(SolidFiles, AJobWithoutSetupsHasNoOpToGoBy) {
  const std::string text = read("bracket.job.toml");
  write("none.job.toml", text.substr(0, text.find("[[setup]]")));
  const Ran ran = run("solid none.job.toml --after 20");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, HasSubstr("the job has no [[setup]]"));
}

TEST_F(SolidFiles, ASizeThatIsNotKnownIsNamed) {
  // Of the two readings that fix edge and bore together only one is left.
  std::string text = read("bracket.job.toml");
  for (const std::string name : {"old bore", "edge to bore, far side"}) {
    const std::size_t at = text.find("[[reading]]\nname  = \"" + name);
    ASSERT_NE(at, std::string::npos);
    text.erase(at, text.find("[[reading]]", at + 1) - at);
  }
  write("unknown.job.toml", text);
  for (const char* after : {"", " --after 20"}) {
    const Ran ran = run("solid unknown.job.toml -o part.stl" + std::string(after));
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr("not known: survey/wanted/a reading of edge_to_bore or old_bore"));
    EXPECT_FALSE(std::filesystem::exists(at("part.stl")));
  }
}

TEST_F(SolidFiles, WhatCannotBeWrittenLeavesTheOldFile) {
  for (const char* name : {"part.step", "part.glb", "part.stl"}) {
    write(name, "the old solid");
    const Ran ran = run(std::string("solid bracket.job.toml -o ") + name, "trap '' XFSZ; ulimit -f 2;");
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr("cannot be written: File too large"));
    EXPECT_EQ(read(name), "the old solid");
    EXPECT_EQ(leftovers(), 0U);
  }
  EXPECT_EQ(run("solid bracket.job.toml -o none/part.glb").status, 2);
}

TEST_F(SolidFiles, AreTheSameBytesEveryTime) {
  for (const std::string kind : {"step", "glb", "stl"}) {
    ASSERT_EQ(run("solid bracket.job.toml --after 20 -o first." + kind).status, 0);
    ASSERT_EQ(run("solid bracket.job.toml --after 20 -o second." + kind).status, 0);
    EXPECT_EQ(read("first." + kind), read("second." + kind));
  }
}

}  // namespace
}  // namespace sparewright
