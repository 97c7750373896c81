// Pairs of the checks of work on a lathe: how it is held, what the lathe has room for, the collars and the tools.
#include "check_pairs.hpp"
#include "lathe_job.hpp"

namespace sparewright::tests {
namespace {

using ledger::State;

// A bar of a material with no mill limits, so that it is as large as it says: 80 long.
std::string plain_bar(const std::string& job) {
  return replaced(job, "1018 cold drawn", "not known");
}
std::string seat_of(const std::string& diameter, const std::string& length = "15") {
  return feature_text("seat", "turned",
                      "side = \"right end\"\ndiameter = " + diameter + "\nlength = { size = \"" + length +
                          "\", tol = \"±0.10\" }");
}
// Held in the chuck, the seat turned on it.
std::string in_chuck(const std::string& gripped, const std::string& bar = "25.57",
                     const std::string& seat = "\"4\"", const std::string& length = "15") {
  return replaced(plain_bar(lathe_job(seat_of(seat, length), lathe_work("seat", "\"R0.8\""), "", bar)),
                  "gripped = \"30\"", "gripped = \"" + gripped + "\"");
}
std::string with_steady(const std::string& job) {
  return replaced(job, "free_end = \"right end\"", "free_end = \"right end\", tail = \"steady\"");
}
// A line more of the lathe, or of its chuck.
std::string lathe_with(const std::string& line) {
  return replaced(lathe_shop(), "tapers = ", line + "\ntapers = ");
}
std::string chuck_with(const std::string& line) {
  return replaced(lathe_shop(), "jaws = \"30\"\n", "jaws = \"30\"\n" + line + "\n");
}

// --- in the jaws --------------------------------------------------------------------------------------------------

const CheckPairs kInTheJaws{{
    // A quarter of an inch, 6.35 (common practice).
    {.check = "grip",
     .subject = "op 20",
     .about = "in a chuck",
     .job = in_chuck("@"),
     .inside = "6.37",
     .outside = "6.33",
     .by = 0.02,
     .shop = lathe_shop()},
    // The bar is 25.57.
    {.check = "the chuck takes it",
     .subject = "op 20",
     .about = "not too large",
     .job = in_chuck("30"),
     .inside = "25.59",
     .outside = "25.55",
     .by = 0.02,
     .shop = replaced(lathe_shop(), "to = \"110\"", "to = \"@\"")},
    {.check = "the chuck takes it",
     .subject = "op 20",
     .about = "not too small",
     .job = in_chuck("30"),
     .inside = "25.55",
     .outside = "25.59",
     .by = 0.02,
     .shop = replaced(lathe_shop(), "from = \"3\"", "from = \"@\"")},
    // 80 - 30 = 50 stand out; 0.020 in = 0.508 is kept off (common practice): 49.492.
    {.check = "cuts stay off the jaws",
     .subject = "op 20",
     .job = in_chuck("30", "25.57", "\"25\"", "@"),
     .inside = "49.472",
     .outside = "49.512",
     .by = 0.02,
     .shop = lathe_shop()},
    // 80 - 20 = 60 stand out, 3 times 20 (common practice, as the two below).
    {.check = "stands out of the chuck",
     .subject = "op 20",
     .about = "more than three diameters",
     .job = in_chuck("@", "20"),
     .inside = "20.02",
     .outside = "19.98",
     .by = 0.02 / 20.0,
     .inside_is = kSilent,
     .outside_is = State::kClose,
     .shop = lathe_shop()},
    // 5 times 12.
    {.check = "stands out of the chuck",
     .subject = "op 20",
     .about = "more than five diameters",
     .job = in_chuck("@", "12"),
     .inside = "20.02",
     .outside = "19.98",
     .by = 0.02 / 12.0,
     .inside_is = State::kClose,
     .shop = lathe_shop()},
    // 12 times 5.
    {.check = "stands out of the chuck",
     .subject = "op 20",
     .about = "more than twelve diameters with the tail",
     .job = with_steady(in_chuck("@", "5")),
     .inside = "20.02",
     .outside = "19.98",
     .by = 0.02 / 5.0,
     .inside_is = kSilent,
     .outside_is = State::kClose,
     .shop = lathe_shop()},
}};

// --- what the lathe has room for ----------------------------------------------------------------------------------

const CheckPairs kRoom{{
    {.check = "swings over the bed",
     .subject = "op 20",
     .job = in_chuck("30"),
     .inside = "25.59",
     .outside = "25.55",
     .by = 0.02,
     .shop = lathe_with("swing = \"@\"")},
    {.check = "swings over the cross slide",
     .subject = "op 20",
     .job = in_chuck("30"),
     .inside = "25.59",
     .outside = "25.55",
     .by = 0.02,
     .shop = lathe_with("swing_over_slide = \"@\"")},
    {.check = "goes into the spindle",
     .subject = "op 20",
     .job = in_chuck("31"),
     .inside = "25.59",
     .outside = "25.55",
     .by = 0.02,
     .shop = lathe_with("spindle_bore = \"@\"")},
    // The jaws reach 30 along it; what is longer lies in a bore of 20: 20 - 25.57.
    {.check = "goes into the spindle",
     .subject = "op 20",
     .about = "what the jaws do not hold alone",
     .job = in_chuck("@"),
     .inside = "29.98",
     .outside = "30.02",
     .by = 0.02,
     .inside_is = kSilent,
     .outside_margin = -5.57,
     .shop = lathe_with("spindle_bore = \"20\"")},
    // The bar is 80 long.
    {.check = "goes between the centres",
     .subject = "op 20",
     .job = with_steady(in_chuck("30")),
     .inside = "80.02",
     .outside = "79.98",
     .by = 0.02,
     .shop = lathe_with("between_centres = \"@\"")},
    {.check = "goes between the centres",
     .subject = "op 20",
     .about = "only with something at the tail",
     .job = replaced(in_chuck("30"), "free_end = \"right end\"", "free_end = \"right end\"@"),
     .inside = "",
     .outside = ", tail = \"steady\"",
     .inside_is = kSilent,
     .shop = lathe_with("between_centres = \"79\"")},
    // 50 of it stands out; a chuck takes 60 of the way between the centres (from memory).
    {.check = "the bed is long enough",
     .subject = "op 20",
     .job = in_chuck("30"),
     .inside = "110.02",
     .outside = "109.98",
     .by = 0.02,
     .shop = lathe_with("between_centres = \"@\"")},
    // The lathe has one speed, 60; 1018 may be turned many times as fast.
    {.check = "the chuck may turn that fast",
     .subject = "op 20",
     .job = lathe_job(seat_of("\"25\""), lathe_work("seat", "\"R0.8\"")),
     .inside = "61",
     .outside = "59",
     .by = quantity::unit::rpm.to_base(1.0),
     .shop = replaced(chuck_with("most_rpm = @"), "[60, 100, 160, 260, 420, 700, 1100, 1800]", "[60]")},
}};

// --- sizes and tools ----------------------------------------------------------------------------------------------

const CheckPairs kCuts{{
    // 15 long, and 25 k6 is 0.013 wide (ISO 286-2).
    {.check = "the headstock turns it straight enough",
     .subject = "seat",
     .job =
         lathe_job(seat_of("{ size = \"25\", tol = \"k6\", duty = \"fits\", with = \"micrometer 25-50\" }"),
                   lathe_work("seat", "\"R0.8\"")),
     .inside = "0.0129",
     .outside = "0.0131",
     .by = 0.0001,
     .shop = replaced(lathe_shop(), "{ by = \"0.010\", over = \"150\" }", "{ by = \"@\", over = \"15\" }")},
    // 0.05 more at most, and the tool is 2 wide.
    {.check = "the tool goes into the groove",
     .subject = "groove",
     .job = lathe_job(feature_text("groove", "groove",
                                   "side = \"right end\"\ndiameter = \"23\"\nfrom_end = \"4\"\nwidth = { "
                                   "size = \"@\", tol = \"±0.05\" }"),
                      lathe_work("groove", "\"groover\"")),
     .inside = "1.97",
     .outside = "1.93",
     .by = 0.02,
     .shop = lathe_shop()},
    {.check = "the tool goes into the groove",
     .subject = "groove",
     .about = "where its width is said",
     .job = lathe_job(feature_text("groove", "groove",
                                   "side = \"right end\"\ndiameter = \"23\"\nfrom_end = \"4\"\nwidth = { "
                                   "size = \"2.5\", tol = \"±0.05\" }"),
                      lathe_work("groove", "\"groover\"")),
     .inside = "width = \"2\"",
     .outside = "",
     .outside_is = State::kNotKnown,
     .shop = replaced(lathe_shop(), "width = \"2\"", "@")},
}};

// --- what is there to hold it by ----------------------------------------------------------------------------------

std::string centre_in(const std::string& end, const std::string& which = "centre") {
  return feature_text(end + " " + which, "centre hole",
                      "side = \"" + end + "\"\ndiameter = \"6.3\"\npilot = \"2.5\"");
}
std::string setup_on_lathe(int op, const std::string& hold, const std::string& works) {
  return fmt::format("[[setup]]\nop = {}\nname = \"turn\"\nmachine = \"lathe\"\nhold = {{ {} }}\n{}", op,
                     hold, works);
}
// The bar with a centre drilled in its left end and one in its right, each as the lists say, then the seat turned.
std::string held_anew(const std::string& first, const std::string& hold, const std::string& then) {
  const std::string all = lathe_job(
      centre_in("left end") + centre_in("right end") + centre_in("right end", "pilot") + seat_of("\"24\"") +
          feature_text("journal", "turned", "side = \"left end\"\ndiameter = \"24\"\nlength = \"20\"") +
          feature_text("rim", "turned", "side = \"left end\"\ndiameter = \"25\"\nlength = \"20\"") +
          feature_text("bore", "hole", "how = \"drilled\"\ninto = \"left end\"\ndiameter = \"12\"") +
          setup_on_lathe(10, "in = \"chuck\", free_end = \"left end\"", first),
      then + lathe_work("seat", "\"R0.8\""));
  return replaced(all, "in = \"chuck\", free_end = \"right end\", gripped = \"30\"",
                  "free_end = \"right end\", " + hold);
}
std::string holders_more() {
  return lathe_shop() +
         "[[holding]]\nname = \"centres\"\nkind = \"centres\"\n[[holding]]\nname = \"mandrel\"\nkind = "
         "\"mandrel\"\n";
}
const std::string kLeftCentre = lathe_work("left end centre", "\"centre drill\"");
const std::string kRightCentre = lathe_work("right end centre", "\"centre drill\"");
const std::string kBetween = "in = \"centres\", tail = \"live centre\"";

const CheckPairs kSupport{{
    {.check = "a centre finds its hole",
     .subject = "op 20, right end",
     .about = "drilled before the tail comes up",
     .job = held_anew(kLeftCentre, "in = \"chuck\", tail = \"live centre\"", "@"),
     .inside = kRightCentre,
     .outside = "",
     .inside_is = kSilent,
     .shop = holders_more()},
    {.check = "a centre finds its hole",
     .subject = "op 20, left end",
     .about = "at the headstock",
     .job = held_anew("@" + kRightCentre, kBetween, ""),
     .inside = kLeftCentre,
     .outside = "",
     .inside_is = kSilent,
     .shop = holders_more()},
    // Between centres nothing can be drilled where the centre is: what this setup makes is not there yet.
    {.check = "a centre finds its hole",
     .subject = "op 20, right end",
     .about = "at the tail between centres",
     .job = held_anew(kLeftCentre + "@", kBetween, kRightCentre),
     .inside = lathe_work("right end pilot", "\"centre drill\""),
     .outside = "",
     .inside_is = kSilent,
     .shop = holders_more()},
    {.check = "between centres",
     .subject = "op 20",
     .job = held_anew(kLeftCentre + kRightCentre, "in = \"centres\"@", ""),
     .inside = ", tail = \"dead centre\"",
     .outside = "",
     .inside_is = kSilent,
     .shop = holders_more()},
    {.check = "it is gripped on what is there",
     .subject = "op 20",
     .about = "made in a setup before",
     .job = held_anew(lathe_work("@", "\"R0.8\""), "in = \"chuck\", on = \"journal\"", ""),
     .inside = "journal",
     .outside = "rim",
     .inside_is = kSilent,
     .shop = holders_more()},
    {.check = "it is gripped on what is there",
     .subject = "op 20",
     .about = "a mandrel in a bore",
     .job = held_anew(lathe_work("bore", "\"drill 12\""), "in = \"mandrel\"@", ""),
     .inside = ", on = \"bore\"",
     .outside = "",
     .inside_is = kSilent,
     .outside_is = State::kNotKnown,
     .shop = holders_more()},
}};

}  // namespace
}  // namespace sparewright::tests
