// Pairs of the checks of the order of work: holding, reach, collars, speeds, tools.
#include "check_pairs.hpp"

namespace sparewright::tests {
namespace {

using ledger::State;

const std::string kDrilled = "how = \"drilled\"\ndiameter = \"0.500\"";

std::string drilled_on(const std::string& parallels, const std::string& y = "1.5") {
  return job_with(hole_text("bore", "2", y, kDrilled) +
                  made_with("bore", "\"spot\", \"drill 1/2\"", parallels));
}
// The shop with parallels of the gap's height.
std::string with_odd_parallels() {
  return replaced(plain_shop(), "parallels = [", "parallels = [\"@ x 1/8\", ");
}

// --- stock --------------------------------------------------------------------------------------------------------

// The block of 4 x 3 x 1 against a piece of the shop's.
const CheckPairs kStock{{
    {.check = "stock on hand",
     .subject = "blank",
     .job = job_with(""),
     .inside = "4.001",
     .outside = "3.999",
     .by = 1 * kThou,
     .shop = plain_shop() + "[[stock]]\nname = \"piece\"\nshape = \"block\"\nmaterial = \"1018 cold drawn\"\n"
                            "size = { length = \"@\", width = \"3.5\", thickness = \"1.5\" }\n"},
    {.check = "stock on hand",
     .subject = "blank",
     .about = "of that section",
     .job = job_with(""),
     .inside = "1018 cold drawn",
     .outside = "6061-T6",
     .shop = plain_shop() + "[[stock]]\nname = \"piece\"\nshape = \"block\"\nmaterial = \"@\"\n"
                            "size = { length = \"4\", width = \"3\", thickness = \"1\" }\n"},
}};

// --- holding ------------------------------------------------------------------------------------------------------

const CheckPairs kHolding{{
    // Jaws 2 deep: 0.251, 0.249 are gripped over the parallels; 1/4 in is wanted (common practice).
    {.check = "grip",
     .subject = "op 10",
     .job = drilled_on("@ x 1/8"),
     .inside = "1.749",
     .outside = "1.751",
     .by = 1 * kThou,
     .shop = with_odd_parallels()},
    // They open 4.
    {.check = "jaws open far enough",
     .subject = "op 10",
     .job = job_with(hole_text("bore", "2", "1.5", kDrilled) + made_with("bore", "\"drill 1/2\""),
                     R"({ length = "4", width = "@", thickness = "1" })"),
     .inside = "3.999",
     .outside = "4.001",
     .by = 1 * kThou},
    // The jaws' tops are 2 up and the underside 1-1/2: 0.021, 0.019 over them; 0.020 is kept off (common practice).
    {.check = "cutter clears the jaws",
     .subject = "flat",
     .job = job_with(feature_text("flat", "flat", "leaves = \"@\"") + made_with("flat", "\"end mill\"")),
     .inside = "0.521",
     .outside = "0.519",
     .by = 1 * kThou},
}};

// --- a drill under the spindle ------------------------------------------------------------------------------------

const CheckPairs kDrills{{
    // A parallel 1/8 wide stands at the front jaw: y - 0.250 - 0.125 against 0.020 (common practice).
    {.check = "drill clears the parallels",
     .subject = "bore",
     .job = drilled_on("1-1/2 x 1/8", "@"),
     .inside = "0.396",
     .outside = "0.394",
     .by = 1 * kThou},
    // A point of 0.250 / tan 59 = 0.1502152, and 1.5 mm = 0.0590551 further (common practice): 0.2092703.
    {.check = "drill point clears what is under the work",
     .subject = "bore",
     .job = drilled_on("@ x 1/8"),
     .inside = "0.2102703",
     .outside = "0.2082703",
     .by = 1 * kThou,
     .shop = with_odd_parallels()},
    // 1 - 0.1502152 = 0.8497848.
    {.check = "drill point stays in the metal",
     .subject = "bore",
     .job = job_with(hole_text("bore", "2", "1.5", kDrilled + "\ndepth = \"@\"") +
                     made_with("bore", "\"spot\", \"drill 1/2\"")),
     .inside = "0.8487848",
     .outside = "0.8507848",
     .by = 1 * kThou},
}};

// --- places -------------------------------------------------------------------------------------------------------

// The collar of 0.001 divisions makes either 2.0000, 0.0003 off. It is good to 0.0008 there: never better than CLOSE.
std::string located(const std::string& x) {
  return job_with(
      feature_text("bore", "hole",
                   "at.x = { size = \"" + x +
                       "\", tol = \"±@\", duty = \"locates\", with = \"fine\" }\nat.y = \"1.5\"\n" +
                       kDrilled) +
      made_with("bore", "\"spot\", \"drill 1/2\""));
}

const CheckPairs kPlaces{{
    {.check = "build-up in x",
     .subject = "bore",
     .about = "too little",
     .job = located("2.0003"),
     .inside = "0.0004",
     .outside = "0.0002",
     .by = 0.1 * kThou,
     .inside_is = State::kClose},
    {.check = "build-up in x",
     .subject = "bore",
     .about = "too much",
     .job = located("1.9997"),
     .inside = "0.0004",
     .outside = "0.0002",
     .by = 0.1 * kThou,
     .inside_is = State::kClose},
    // Half a division and 0.0005 of repeating, rectangular each, and 0.0001 of the edge finder: u = sqrt(0.0005^2 +
    // 0.0005^2 + 0.0001^2) / sqrt(3) = 0.00041231, and 1.959964 u = 0.00080812.
    {.check = "build-up in x",
     .subject = "bore",
     .about = "or not sure",
     .job = located("2.0000"),
     .inside = "0.00081812",
     .outside = "0.00079812",
     .by = 0.01 * kThou,
     .outside_is = State::kClose,
     .inside_margin = 0.81812 * kThou,
     .outside_margin = 0.79812 * kThou},
    // 2 from the left end.
    {.check = "the slide goes that far",
     .subject = "op 10, x",
     .job = drilled_on("1-1/2 x 1/8"),
     .inside = "2.001",
     .outside = "1.999",
     .by = 1 * kThou,
     .inside_is = kSilent,
     .shop = replaced(plain_shop(), "quiet_cut = ", "travel = { x = \"@\", y = \"6\" }\nquiet_cut = ")},
    {.check = "spindle reaches it",
     .subject = "bore",
     .job = job_with(feature_text("bore", "hole", "at.x = \"2\"\n@\n" + kDrilled) +
                     made_with("bore", "\"drill 1/2\"")),
     .inside = "into = \"top\"\nat.y = \"1.5\"",
     .outside = "into = \"front\"\nat.z = \"0.5\"",
     .inside_is = kSilent},
    {.check = "it is made in a setup",
     .subject = "other",
     .job = job_with(hole_text("bore", "2", "1.5", kDrilled) + hole_text("other", "3", "1.5", kDrilled) +
                     setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [\"drill 1/2\"]\n@")),
     .inside = "[[setup.do]]\nmake = \"other\"\nwith = [\"drill 1/2\"]\n",
     .outside = "",
     .inside_is = kSilent},
}};

// --- tools and speeds ---------------------------------------------------------------------------------------------

const CheckPairs kTooling{{
    // The handbook drills 1018 at 70 ft/min with high-speed steel: 70 x 12 / (pi x 3) = 89.1268 rpm.
    {.check = "the machine has the speed",
     .subject = "bore/drill 3",
     .job = job_with(hole_text("bore", "2", "1.5", "how = \"drilled\"\ndiameter = \"3.000\"") +
                         made_with("bore", "\"drill 3\""),
                     R"({ length = "8", width = "4", thickness = "1" })"),
     .inside = "89.0268",
     .outside = "89.2268",
     .by = quantity::unit::rpm.to_base(0.1),
     .inside_is = kSilent,
     .shop = replaced(plain_shop(), "speeds = [80,", "speeds = [@,")},
    {.check = "a tool makes it",
     .subject = "bore",
     .job = job_with(hole_text("bore", "2", "1.5", "how = \"bored\"\ndiameter = \"0.600\"") +
                     made_with("bore", "\"drill 1/2\"@")),
     .inside = ", \"boring head\"",
     .outside = "",
     .inside_is = kSilent},
    {.check = "how it is cut",
     .subject = "way",
     .job = job_with("[[feature]]\nname = \"way\"\nat.x = \"2\"\nat.y = \"1.5\"\n@\n" +
                     made_with("way", "\"drill 1/2\", \"end mill\"")),
     .inside = "kind = \"hole\"\n" + kDrilled,
     .outside = "kind = \"dovetail\"\nwidth = \"1\"\ndepth = \"0.3\"\nangle = \"60\"",
     .inside_is = kSilent,
     .outside_is = State::kNotKnown},
}};

}  // namespace
}  // namespace sparewright::tests
