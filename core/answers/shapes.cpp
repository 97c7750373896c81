// Shapes milled and measured: polygons on a round, dovetails over pins.
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/handbook/over_pins.hpp"
#include "core/handbook/polygons.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

}  // namespace

base::Result<Answer> polygon(const Question& question) {
  constexpr int kMostSides = 60;
  EntryReader read(question);
  const int sides = read.count("sides", 3, kMostSides);
  const bool by_flats = read.has("flats");
  const Length given = by_flats ? read.size("flats") : read.size("corners");
  const auto round = read.maybe_size("round");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const Length corners =
      by_flats ? Length::from_base(handbook::across_corners_mm(given.base(), sides)) : given;
  const Length flats = by_flats ? given : Length::from_base(handbook::across_flats_mm(given.base(), sides));
  const Length bar = round.value_or(corners);
  const Length depth = Length::from_base(handbook::flat_depth_mm(bar.base(), flats.base()));
  if (!(depth > Length()))
    return base::fail(base::Code::kValueNotAccepted, both_ways(bar, system),
                      fmt::format("more than across the flats, {}", both_ways(flats, system)), "--round");
  Answer answer;
  answer.asked = fmt::format("{} sides, {} across flats", sides, both_ways(flats, system));
  answer.says = fmt::format("{} off the round for each flat", both_ways(depth, system));
  TableWriter writer("the polygon", system);
  writer.length("across flats", flats, handbook::kPolygon);
  writer.length("across corners", corners, handbook::kPolygon, "the round it wants for sharp corners");
  writer.length("off the round, each flat", depth, handbook::kPolygon,
                bar < corners ? "the corners stay round" : "");
  writer.length("width of a flat, sharp corners",
                Length::from_base(handbook::flat_width_mm(flats.base(), sides)), handbook::kPolygon);
  writer.number("turn between flats", 2.0 * std::acos(-1.0) / sides, Kind::kAngle, 4, handbook::kPolygon);
  if (sides % 2 == 1)
    writer.length("a micrometer reads, flat to corner",
                  Length::from_base(handbook::flat_to_corner_mm(flats.base(), sides)), handbook::kPolygon,
                  "where the corners are sharp");
  answer.tables.push_back(writer.take());
  return answer;
}

base::Result<Answer> dovetail(const Question& question) {
  EntryReader read(question);
  const Length pin = read.size("pin");
  const double angle = read.maybe_positive("angle", Kind::kAngle).value_or(unit::degree.to_base(60.0));
  const bool slide = read.word("side", {"slide", "way"}) == "slide";
  const auto width = read.maybe_size("width");
  const auto measured = read.maybe_size("measured");
  const auto height = read.maybe_size("height");
  if (!read.failed()) {
    const double degrees = angle / unit::degree.to_base(1.0);
    read.refuse_unless(degrees >= 30.0 && degrees <= 80.0, "angle", "of the flank to the base, 30 to 80 deg");
    read.refuse_unless(width.has_value() != measured.has_value(), "width", "either --width or --measured");
  }
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const double pins = 2.0 * handbook::pin_reach_mm(pin.base(), angle);
  const double sign = slide ? 1.0 : -1.0;
  const Length corner = width ? *width : *measured - Length::from_base(sign * pins);
  const Length over = measured ? *measured : *width + Length::from_base(sign * pins);
  if (!(corner > Length()) || !(over > Length()))
    return base::fail(base::Code::kValueNotAccepted, both_ways(pin, system),
                      "pins that fit between the corners", "--pin");
  Answer answer;
  answer.asked = fmt::format("dovetail {} over pins of {}", slide ? "slide" : "way", both_ways(pin, system));
  answer.says =
      width ? fmt::format("{} {}", both_ways(over, system), slide ? "over the pins" : "between the pins")
            : fmt::format("{} from corner to corner", both_ways(corner, system));
  TableWriter writer("at the sharp corners", system);
  writer.length(slide ? "width at its narrow line" : "width at its wide line", corner,
                handbook::kDovetailOverPins);
  writer.length(slide ? "over two pins" : "between two pins", over, handbook::kDovetailOverPins);
  if (height) {
    const Length wider = Length::from_base(handbook::dovetail_widening_mm(height->base(), angle));
    writer.length(slide ? "width at its wide line" : "width at its narrow line",
                  slide ? corner + wider : corner - wider, handbook::kDovetailOverPins);
  }
  answer.tables.push_back(writer.take());
  if (!read.has("angle")) answer.assumed.emplace_back("60 deg from flank to base");
  answer.assumed.emplace_back("the pins touch base and flank, below the edge of the flank");
  return answer;
}

}  // namespace sparewright::answers
