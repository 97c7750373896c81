// Pairs of the checks of fits, tools of a size, bushes, threads and instruments.
#include "check_pairs.hpp"
#include "part_text.hpp"

namespace sparewright::tests {
namespace {

using ledger::State;

// The pin is 0.5000; a clearance of 0.0010 to 0.0020 is asked, and the hole 0.0004 wide.
std::string fitted_hole() {
  return job_with(hole_text("bore", "2", "1.5",
                            "how = \"bored\"\ndiameter = { size = \"@\", tol = \"±0.0002\", mate = \"pin\", "
                            "clearance = \"+0.0010 to +0.0020\", with = \"fine\" }"));
}

const std::string kReamer = tool_text("drill 31/64", "twist drill", "diameter = \"31/64\"") +
                            tool_text("odd reamer", "reamer", "diameter = \"@\"");

// The same asked of a reamed hole, which comes out as its reamer is.
std::string reamed_on_the_pin() {
  return job_with(
      hole_text("bore", "2", "1.5",
                "how = \"reamed\"\ndiameter = { on = \"pin\", clearance = \"+0.0010 to +0.0020\", "
                "with = \"fine\" }") +
      made_with("bore", "\"drill 31/64\", \"odd reamer\""));
}

const CheckPairs kFits{{
    // Hole at its least less 0.5000: 0.0011, 0.0009.
    {.check = "fit, tight end",
     .subject = "bore",
     .job = fitted_hole(),
     .inside = "0.5013",
     .outside = "0.5011",
     .by = 0.1 * kThou},
    // Hole at its most less 0.5000: 0.0019, 0.0021.
    {.check = "fit, loose end",
     .subject = "bore",
     .job = fitted_hole(),
     .inside = "0.5017",
     .outside = "0.5019",
     .by = 0.1 * kThou},
    {.check = "fit as it can be measured",
     .subject = "bore",
     .about = "tight",
     .job = reamed_on_the_pin(),
     .inside = "0.5011",
     .outside = "0.5009",
     .by = 0.1 * kThou,
     .shop = plain_shop() + kReamer},
    {.check = "fit as it can be measured",
     .subject = "bore",
     .about = "loose",
     .job = reamed_on_the_pin(),
     .inside = "0.5019",
     .outside = "0.5021",
     .by = 0.1 * kThou,
     .shop = plain_shop() + kReamer},
}};

// --- tools of a size ----------------------------------------------------------------------------------------------

std::string drilled_half_inch() {
  return job_with(hole_text("bore", "2", "1.5", "how = \"drilled\"\ndiameter = \"@ ±0.005\"") +
                  made_with("bore", "\"drill 1/2\""));
}
// Limits 0.4995 to 0.5015.
std::string reamed_half_inch() {
  return job_with(
      hole_text("bore", "2", "1.5", "how = \"reamed\"\ndiameter = { size = \"0.5005\", tol = \"±0.0010\" }") +
      made_with("bore", "\"drill 31/64\", \"odd reamer\""));
}
std::string reamed_after_a_drill() {
  return job_with(hole_text("bore", "2", "1.5", "how = \"reamed\"\ndiameter = \"0.500\"") +
                  made_with("bore", "\"odd drill\", \"reamer\""));
}
const std::string kOddDrill = tool_text("odd drill", "twist drill", "diameter = \"@\"");

const CheckPairs kTools{{
    {.check = "the drill has the size",
     .subject = "bore",
     .about = "too small",
     .job = drilled_half_inch(),
     .inside = "0.504",  // from 0.499 on
     .outside = "0.506",
     .by = 1 * kThou},
    {.check = "the drill has the size",
     .subject = "bore",
     .about = "too large",
     .job = drilled_half_inch(),
     .inside = "0.496",  // up to 0.501
     .outside = "0.494",
     .by = 1 * kThou},
    {.check = "the reamer has the size",
     .subject = "bore",
     .about = "too small",
     .job = reamed_half_inch(),
     .inside = "0.4996",
     .outside = "0.4994",
     .by = 0.1 * kThou,
     .shop = plain_shop() + kReamer},
    {.check = "the reamer has the size",
     .subject = "bore",
     .about = "too large",
     .job = reamed_half_inch(),
     .inside = "0.5014",
     .outside = "0.5016",
     .by = 0.1 * kThou,
     .shop = plain_shop() + kReamer},
    // For a hole of 0.500 cutter makers leave 0.010 to 0.016; half the least, 0.005, and twice the most, 0.032, are let
    // pass (a choice of the check).
    {.check = "metal left for the reamer",
     .subject = "bore",
     .about = "too little",
     .job = reamed_after_a_drill(),
     .inside = "0.494",
     .outside = "0.496",
     .by = 1 * kThou,
     .shop = plain_shop() + kOddDrill},
    {.check = "metal left for the reamer",
     .subject = "bore",
     .about = "too much",
     .job = reamed_after_a_drill(),
     .inside = "0.469",
     .outside = "0.467",
     .by = 1 * kThou,
     .shop = plain_shop() + kOddDrill},
    {.check = "the boring bar goes in",
     .subject = "bore",
     .job = job_with(hole_text("bore", "2", "1.5", "how = \"bored\"\ndiameter = \"0.600\"") +
                     made_with("bore", "\"drill 1/2\", \"bar\"")),
     .inside = "0.499",
     .outside = "0.501",
     .by = 1 * kThou,
     .shop = plain_shop() + tool_text("bar", "boring head", "division = \"0.001\"\nleast_bore = \"@\"")},
    {.check = "the tap has the thread",
     .subject = "bore",
     .job = job_with(hole_text("bore", "2", "1.5", "how = \"tapped\"\nthread = \"1/4-20 UNC-2B\"") +
                     made_with("bore", "\"drill #7\", \"@\"")),
     .inside = "tap",
     .outside = "fine tap",
     .inside_is = kSilent,
     .shop = plain_shop() + tool_text("drill #7", "twist drill", "diameter = \"#7\"") +
             tool_text("fine tap", "tap", "thread = \"1/4-28\"")},
}};

// --- bushes and threads -------------------------------------------------------------------------------------------

// In a hole of 20.000 to 20.021.
std::string bushed(const std::string& how, const std::string& diameter, const std::string& bore_in_it) {
  return plate() +
         "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"30\"\nat.y = \"30\"\n"
         "diameter = \"20 +0.021/-0.000\"\n" +
         feature_text("it", "bush",
                      fmt::format("in = \"bore\"\nhow = \"{}\"\ndiameter = \"{}\"\nbore = \"{}\"\n"
                                  "length = \"20\"",
                                  how, diameter, bore_in_it));
}
const std::string kPressed = "20.03 +0.000/-0.008";
const std::string kSlit =
    "[[feature]]\nname = \"slit\"\nkind = \"slit\"\nin = \"bore\"\nside = \"left end\"\nwidth = \"2\"\n";

// M24x3-6g: the allowance of g at a pitch of 3 is 0.048 and the tolerance of the major diameter in grade 6 is 0.375 (ISO
// 965-1, from memory): 24 - 0.048 = 23.952, and 23.577.
std::string threaded(const std::string& tolerance) {
  return bar() + feature_text("it", "thread",
                              "side = \"left end\"\nthread = \"M24x3\"\nlength = \"25\"\ndiameter = \"23.9 " +
                                  tolerance + "\"");
}

const CheckPairs kBushesAndThreads{{
    // Least bush less most hole: 20.022 - 20.021, 20.020 - 20.021.
    {.check = "bush stays in its hole",
     .subject = "it",
     .job = bushed("pressed in", "20.03 +0.000/-@", "14 +0.02/-0.00"),
     .inside = "0.008",
     .outside = "0.010",
     .by = 0.001},
    // Most bush against the least hole of 20.000: 19.99, 20.01.
    {.check = "bush leaves room for the compound",
     .subject = "it",
     .job = bushed("bonded", "19.95 +@/-0.00", "14 +0.02/-0.00"),
     .inside = "0.04",
     .outside = "0.06",
     .by = 0.01},
    // (20.022 - most bore) / 2 against 0.5 (a choice of the check): most bore 18.982 and 19.062.
    {.check = "bush has a wall",
     .subject = "it",
     .job = bushed("pressed in", kPressed, "@ +0.02/-0.00"),
     .inside = "18.962",
     .outside = "19.042",
     .by = 0.02},
    {.check = "no press in a slit boss",
     .subject = "it",
     .job = bushed("pressed in", kPressed, "14 +0.02/-0.00") + "@",
     .inside = "",
     .outside = kSlit,
     .inside_is = kSilent},
    // 23.9 - 0.322 = 23.578, 23.576 against 23.577.
    {.check = "thread is full enough",
     .subject = "it",
     .job = threaded("+0.05/-@"),
     .inside = "0.322",
     .outside = "0.324",
     .by = 0.001},
    // 23.951, 23.953 against 23.952.
    {.check = "thread goes into its nut",
     .subject = "it",
     .job = threaded("+@/-0.30"),
     .inside = "0.051",
     .outside = "0.053",
     .by = 0.001},
}};

// --- instruments --------------------------------------------------------------------------------------------------

// The caliper is good to 0.001 in either way, reads in steps of 0.001, and its zero is left within half a step, each
// rectangular: u = sqrt(0.001^2 + 0.0005^2 + 0.0005^2) / sqrt(3) = 0.00070711 in = 0.0179605 mm, and 1.959964 u =
// 0.0352020 mm at each limit: 0.0704039 in all. From four times 0.0352020, 0.1408078, on nothing is said.
std::string calipered() {
  return plate() +
         "[[feature]]\nname = \"it\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"30\"\nat.y = \"30\"\n"
         "diameter = { size = \"20\", tol = \"+@/-0.000\", duty = \"fits\", with = \"caliper\" }\n";
}

std::string micrometer(const std::string& name, const std::string& kind) {
  return fmt::format(
      "[[instrument]]\nname = \"{}\"\nkind = \"{}\"\nreads = \"0.0001\"\ngood_to = \"0.0001\"\n"
      "zero = \"0\"\n",
      name, kind);
}

const CheckPairs kInstruments{{
    {.check = "instrument proves diameter",
     .subject = "it",
     .job = calipered(),
     .inside = "0.0714039",
     .outside = "0.0694039",
     .by = 0.001,
     .inside_is = State::kClose},
    {.check = "instrument proves diameter",
     .subject = "it",
     .about = "with ease",
     .job = calipered(),
     .inside = "0.1418078",
     .outside = "0.1398078",
     .by = 0.001,
     .inside_is = kSilent,
     .outside_is = State::kClose,
     .outside_margin = 0.1398078 - 0.0704039},
    // It has no faces that go into a hole.
    {.check = "instrument touches diameter",
     .subject = "it",
     .job = replaced(filled(calipered(), "0.500"), "\"caliper\"", "\"@\""),
     .inside = "inside micrometer",
     .outside = "micrometer",
     .inside_is = kSilent,
     .shop = plain_shop() + micrometer("micrometer", "outside micrometer") +
             micrometer("inside micrometer", "inside micrometer")},
}};

}  // namespace
}  // namespace sparewright::tests
