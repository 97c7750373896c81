// A packet's texts as they go to the press.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/words.hpp"
#include "sheets/card.hpp"
#include "sheets/measuring.hpp"
#include "sheets/packet.hpp"
#include "sheets/press.hpp"

namespace sparewright::sheets {

// One line of valid UTF-8 that has only letters the press has: line ends and tabs become spaces; a letter it has not
// becomes its number, "U+2603", a byte that is no letter "0xFF". Sets `replaced` where one did.
[[nodiscard]] std::string printable(std::string_view text, const Press& press, bool& replaced);

// The same packet with every text printable; product text worded (base/words.hpp) and typeset (typeset.hpp), the blank
// and the stock typeset; names as typed (title, revision, hand, names of ops and mates, names in the picture) otherwise
// left alone.
struct PrintablePacket {
  Packet packet;
  bool head_replaced = false;         // in what stands on every sheet
  bool first_replaced = false;        // on the first sheet
  bool drawing_replaced = false;      // on the drawing
  std::vector<bool> setups_replaced;  // on each setup's sheet
  std::vector<bool> before_replaced;  // on each sheet of lists
  std::vector<bool> after_replaced;
};
[[nodiscard]] PrintablePacket printable(const Packet& packet, base::Dialect dialect, const Press& press);

// The sheets of measuring up the same way; names of sizes and readings, and what stands in the pictures, as typed.
struct PrintableMeasuring {
  MeasuringPacket packet;
  bool replaced = false;
};
[[nodiscard]] PrintableMeasuring printable(const MeasuringPacket& packet, base::Dialect dialect,
                                           const Press& press);

// A bench card the same way; its title and the names of numbers as typed.
struct PrintableCard {
  Card card;
  bool replaced = false;
};
[[nodiscard]] PrintableCard printable(const Card& card, base::Dialect dialect, const Press& press);

}  // namespace sparewright::sheets
