// The lead-angle term of the measurement over wires against its slow twin: a straight wire laid into the
// exact groove.
//
// A flank of a thread is a helicoid, in the axial section straight: z = lead t / 2 pi + P/4 + (r - E/2) tan A
// at the angle t, the groove's middle on the x axis. The wire is a cylinder whose axis crosses the x axis at
// c, leaning in the plane square to it. Turned half a turn about the x axis the other flank becomes this one
// and the axis itself, so one flank decides. The wire sinks until it touches, leaning as lets it sink
// deepest.
#include <cmath>
#include <numbers>
#include <string>

#include <gtest/gtest.h>

#include "core/handbook/thread_designation.hpp"
#include "core/handbook/thread_wires.hpp"

namespace sparewright::handbook {
namespace {

// The least value of f between low and high, where f falls and then rises: golden section.
template <class F>
double least(F f, double low, double high, int rounds) {
  constexpr double kGolden = 0.6180339887498949;
  double a = high - kGolden * (high - low);
  double b = low + kGolden * (high - low);
  double at_a = f(a);
  double at_b = f(b);
  for (int i = 0; i < rounds; ++i) {
    if (at_a < at_b) {
      high = b;
      b = a;
      at_b = at_a;
      a = high - kGolden * (high - low);
      at_a = f(a);
    } else {
      low = a;
      a = b;
      at_a = at_b;
      b = low + kGolden * (high - low);
      at_b = f(b);
    }
  }
  return std::min(at_a, at_b);
}

struct Groove {
  double pitch_radius, pitch, lead, tangent;

  // Distance of the wire's axis from the flank, all in mm.
  [[nodiscard]] double distance(double c, double lean) const {
    constexpr int kRounds = 40;
    const auto at = [&](double radius, double turn) {
      const double x = radius * std::cos(turn) - c;
      const double y = radius * std::sin(turn);
      const double z = lead * turn / (2 * std::numbers::pi) + pitch / 4 + (radius - pitch_radius) * tangent;
      const double off = y * std::sin(lean) - z * std::cos(lean);  // square to the axis, beside x
      return std::hypot(x, off);
    };
    const double span = 0.4 * pitch;
    return least(
        [&](double radius) {
          return least([&](double turn) { return at(radius, turn); }, -0.4, 0.4, kRounds);
        },
        pitch_radius - span, pitch_radius + span, kRounds);
  }

  // Where the axis of a wire of that radius crosses the x axis.
  [[nodiscard]] double centre(double wire_radius, double lean, double guess) const {
    double low = guess - 0.05 * pitch;
    double high = guess + 0.3 * pitch;
    for (int i = 0; i < 36; ++i) {
      const double middle = (low + high) / 2;
      (distance(middle, lean) < wire_radius ? low : high) = middle;
    }
    return (low + high) / 2;
  }
};

double over_exactly_mm(const ThreadShape& thread, double wire_mm) {
  const double half = profile_of(thread.form).flank_angle.base() / 2.0;
  const Groove groove{thread.pitch_diameter.base() / 2, thread.pitch.base(), thread.lead().base(),
                      std::tan(half)};
  const double guess = groove.pitch_radius + wire_mm / 2 / std::sin(half) - groove.pitch / 4 / std::tan(half);
  const double lead_angle = std::atan(tangent_of_lead(thread.lead().base(), thread.pitch_diameter.base()));
  constexpr int kRounds = 12;  // the centre hardly moves where it lies lowest
  const double lowest = least([&](double lean) { return groove.centre(wire_mm / 2, lean, guess); },
                              0.8 * lead_angle, 1.05 * lead_angle, kRounds);
  return 2 * lowest + wire_mm;
}

struct Case {
  const char* thread;
  double off_in;  // how much too large the term is, as the header says
};
class WireInAHelicoid : public testing::TestWithParam<Case> {};
TEST_P(WireInAHelicoid, TheLeadTermIsAsGoodAsTheHeaderSays) {
  const ThreadShape thread = shape_of(read_thread(GetParam().thread).value());
  const auto best = wires_for(thread).best;
  const OverWires over = over_three_wires(thread, thread.pitch_diameter, best).value();
  const double off_mm = over.over.base() - over_exactly_mm(thread, best.base());
  EXPECT_NEAR(off_mm / 25.4, GetParam().off_in, 0.1 * GetParam().off_in + 0.0000015);
  EXPECT_GT(over.lead_correction.base(), 5 * off_mm) << "the term is most of what there is to correct";
  EXPECT_LT(off_mm, 0.08 * over.lead_correction.base() + 0.00004);
}
INSTANTIATE_TEST_SUITE_P(Threads, WireInAHelicoid,
                         testing::Values(Case{"#4-40 UNC", 0.000005}, Case{"1/4-20 UNC", 0.000007},
                                         Case{"1-8 UNC", 0.000004}, Case{"1-5 ACME", 0.000030},
                                         Case{"1/2-10 ACME 2 START", 0.000078}, Case{"Tr20x8P4", 0.000120}));

}  // namespace
}  // namespace sparewright::handbook
