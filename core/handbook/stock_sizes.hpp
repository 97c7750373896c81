// What reamers, end mills, taps, bar, plate, tube and pipe are usually sold in. What the mill may leave on a
// bar is in bar_stock.hpp, drills are in drills.hpp.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class StockKind {
  kInchReamer,  // of 64ths; number and letter reamers come in the sizes of the drills
  kDowelReamer,
  kMetricReamer,
  kInchEndMill,
  kMetricEndMill,
  kInchRoundSteel,
  kInchHexagonSteel,  // across the flats
  kInchSquareSteel,
  kInchFlatThickness,
  kInchFlatWidth,
  kInchRoundAluminium,
  kMetricRoundSteel,
  kMetricSquareSteel,
  kMetricHexagonSteel,
  kMetricFlatThickness,
  kMetricFlatWidth,
  kInchPlate,
  kMetricPlate,
  kInchTubeOutside,
  kInchTubeWall,
  kLast,  // one past the last; not a kind
};
[[nodiscard]] std::string_view name_of(StockKind kind);  // "inch end mill"

struct StockSize {
  StockKind kind = StockKind::kInchReamer;
  std::string name;  // "3/8 in", "0.2510 in", "12 mm"
  quantity::Length size;
  std::string_view note;  // may be empty
  Source source;
};

// The sizes of one kind, smallest first, none twice. Every one is from memory or practice.
[[nodiscard]] std::vector<StockSize> stock_sizes(StockKind kind);

// The sizes of a kind on either side of a wanted one; one that equals it stands in both.
struct StockAround {
  std::optional<StockSize> at_or_below;
  std::optional<StockSize> at_or_above;
};
[[nodiscard]] StockAround stock_around(StockKind kind, quantity::Length wanted);

struct StockTap {
  std::string_view thread;  // "1/4-20", "M8x1.25"
  quantity::Diameter major;
  quantity::Length pitch;
  Source source;
};
[[nodiscard]] std::span<const StockTap> stock_taps();

// The tap of a thread: its major diameter within 0.01 mm and its pitch within 0.1 %. None where it is not in
// the list.
[[nodiscard]] std::optional<StockTap> stock_tap(quantity::Diameter major, quantity::Length pitch);

// The taps nearest to a thread, nearest first: by the major diameter, then by the pitch.
[[nodiscard]] std::vector<StockTap> nearest_stock_taps(quantity::Diameter major, quantity::Length pitch,
                                                       std::size_t most = 3);

// Steel pipe by its nominal size, which is not its diameter.
struct Pipe {
  std::string_view nominal;  // "1/2"
  quantity::Diameter outside;
  quantity::Length wall_40;  // schedule 40
  quantity::Length wall_80;
  Source source;
};
[[nodiscard]] std::span<const Pipe> pipes();

}  // namespace sparewright::handbook
