// Standard tapers: Morse, Jacobs, Brown & Sharpe, R8, taper pins; what to measure on a plug or a socket, and
// what a measured taper is.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class TaperFamily { kMorse, kJacobs, kBrownAndSharpe, kR8 };
[[nodiscard]] std::string_view name_of(TaperFamily family);  // "Brown & Sharpe"

struct Taper {
  TaperFamily family = TaperFamily::kMorse;
  std::string_view number;                      // "2", "2 short", "R8"
  quantity::Length taper_per_foot;              // on the diameter
  std::optional<quantity::Diameter> large_end;  // at the gauge line, the end of the socket; none for R8
  std::optional<quantity::Diameter> small_end;
  std::optional<quantity::Length> length;  // from gauge line to small end
  std::string_view other;                  // another size in print; empty where there is none
  Source source;

  [[nodiscard]] double ratio() const {
    return taper_per_foot / quantity::Length::of(1.0, quantity::unit::foot);
  }
  [[nodiscard]] quantity::Angle included_angle() const;
};
[[nodiscard]] std::span<const Taper> tapers();
[[nodiscard]] std::string to_string(const Taper& taper);  // "Morse 2", "R8"

// A taper by its name: MT2, 2MT, Morse 2, JT33, Jacobs 33, Jacobs 2 short, B&S 9, Brown & Sharpe 9, R8.
// Fails with kNameUnknown, naming the nearest.
[[nodiscard]] base::Result<Taper> find_taper(std::string_view text);

// A taper pin: 1/4 in per foot.
struct TaperPin {
  std::string_view number;  // "4", "2/0"
  quantity::Diameter large_end;
  Source source;

  // Large end less length / 48. Smaller than nothing beyond 48 diameters.
  [[nodiscard]] quantity::Diameter small_end(quantity::Length length) const;
};
[[nodiscard]] std::span<const TaperPin> taper_pins();
// 4, #4, 2/0, "No. 7". Fails with kNameUnknown.
[[nodiscard]] base::Result<TaperPin> find_taper_pin(std::string_view text);

// What a plug that stands on its small end should measure over two rollers, first lying on the plate, then on
// equal blocks of `blocks`; the difference of the two is the taper alone.
struct PlugCheck {
  quantity::Length on_plate;
  quantity::Length on_blocks;
  Source source;
};
// Fails with kSizeNotPositive, and with kOutsideDomain where a roller would touch beyond the plug, or the
// taper has no ends here (R8).
[[nodiscard]] base::Result<PlugCheck> check_plug(const Taper& taper, quantity::Diameter roller,
                                                 quantity::Length blocks);

// How deep the tops of two balls lie below the face of a socket, one at a time; the face at the gauge line.
// Negative stands out.
struct SocketCheck {
  quantity::Length large_ball;
  quantity::Length small_ball;
  Source source;
};
// Fails with kSizeNotPositive, and with kOutsideDomain where a ball does not touch within the length, the
// balls are the wrong way round, or the taper has no ends here.
[[nodiscard]] base::Result<SocketCheck> check_socket(const Taper& taper, quantity::Diameter large_ball,
                                                     quantity::Diameter small_ball);

// A cone as measured.
struct MeasuredTaper {
  quantity::Length taper_per_foot;
  quantity::Angle half_angle;
  quantity::Diameter at_end;  // plug: its small end; socket: at its face
};
// Back from a plug measured on the plate and on blocks. Fails with kSizeNotPositive where a size is not more
// than zero or it does not grow.
[[nodiscard]] base::Result<MeasuredTaper> measured_plug(quantity::Length on_plate, quantity::Length on_blocks,
                                                        quantity::Length blocks, quantity::Diameter roller);
// Back from two balls in a socket and the depths of their tops. Fails with kSizeNotPositive, and with
// kOutsideDomain where the two balls cannot lie so in a cone.
[[nodiscard]] base::Result<MeasuredTaper> measured_socket(quantity::Diameter large_ball,
                                                          quantity::Length large_depth,
                                                          quantity::Diameter small_ball,
                                                          quantity::Length small_depth);

// The tapers nearest to a measured one, nearest first: by how far a plug of the standard taper would stand
// off at one end when it fits at the other, and with a large end known by that too.
struct NearTaper {
  Taper taper;
  quantity::Length taper_off;                     // measured less standard, per foot
  std::optional<quantity::Length> large_end_off;  // measured less standard
};
[[nodiscard]] std::vector<NearTaper> nearest_tapers(quantity::Length taper_per_foot,
                                                    std::optional<quantity::Diameter> large_end,
                                                    std::size_t most = 3);

}  // namespace sparewright::handbook
