// Two parts as they are: the play between them, a shim in it, a pattern of them, a key between them.
#include <algorithm>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"

namespace sparewright::answers {
namespace {

using quantity::Length;
using quantity::UnitSystem;

constexpr handbook::Source kHoleLessShaft{"hole less shaft", "", handbook::Basis::kDerived};
constexpr handbook::Source kShimBothSides{"a shim all round lies there twice across the diameter", "",
                                          handbook::Basis::kDerived};
constexpr handbook::Source kPatternPlay{
    "every pair goes where play on the diameter is twice the places of both, geometry", "",
    handbook::Basis::kDerived};
constexpr handbook::Source kUsualPlaces{"places as they are usually kept on hand-operated machines", "",
                                        handbook::Basis::kCommonPractice};
constexpr handbook::Source kKeyRoom{"over the hub's keyway less over the shaft's keyseat less the key", "",
                                    handbook::Basis::kDerived};
// Room over a key that is meant. Common practice: 0.005 in, more on large ones.
constexpr Length kLeastOverKey = Length::of(0.003, quantity::unit::inch);
constexpr handbook::Source kRoomOverKey{"about 0.005 in (0.13 mm) over the key, 0.010 in over large ones", "",
                                        handbook::Basis::kCommonPractice};

// "0.0030 in (0.076 mm) clear", or tight.
std::string clear_words(Length clearance, UnitSystem system) {
  return fmt::format("{} {}", both_ways(magnitude(clearance), system),
                     clearance < Length() ? "tight" : "clear");
}
std::string clear_words(const Band& clearance, UnitSystem system) {
  if (clearance.width() < Length::of(1e-6, quantity::unit::millimetre))
    return clear_words(clearance.low, system);
  return fmt::format("{} to {}", clear_words(clearance.low, system), clear_words(clearance.high, system));
}

}  // namespace

base::Result<Answer> play(const Question& question) {
  EntryReader read(question);
  const Band hole = read.band("hole");
  const Band shaft = read.band("shaft");
  const auto shim = read.maybe_size("shim");
  const auto wanted = read.maybe_size("leave");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const Band clearance{hole.low - shaft.high, hole.high - shaft.low};
  Answer answer;
  answer.asked =
      fmt::format("hole {} to {}, shaft {} to {}", both_ways(hole.low, system), both_ways(hole.high, system),
                  both_ways(shaft.low, system), both_ways(shaft.high, system));
  if (hole.width() == Length() && shaft.width() == Length())
    answer.asked =
        fmt::format("hole {}, shaft {}", both_ways(hole.low, system), both_ways(shaft.low, system));
  answer.says = clear_words(clearance, system);
  TableWriter writer("between them", system);
  writer.range("clearance on the diameter", clearance.low, clearance.high, kHoleLessShaft,
               clearance.low < Length() ? "under zero it is tight" : "");
  writer.range("on each side, shaft in the middle", clearance.low / 2.0, clearance.high / 2.0,
               kHoleLessShaft);
  if (clearance.low < Length())
    writer.number("most interference, for 1000 of diameter", -clearance.low / shaft.high * 1000.0,
                  quantity::Kind::kNumber, 2, kHoleLessShaft, "thou to the inch");
  answer.tables.push_back(writer.take());
  if (shim || wanted) {
    TableWriter shims("a shim all round", system);
    if (shim) {
      const Band left{clearance.low - *shim * 2.0, clearance.high - *shim * 2.0};
      shims.range("leaves, on the diameter", left.low, left.high, kShimBothSides,
                  left.low < Length() ? "it does not go in" : "");
      answer.says = fmt::format("the shim leaves {}", clear_words(left, system));
    }
    if (wanted)
      shims.range("thickness to leave that", (clearance.low - *wanted) / 2.0,
                  (clearance.high - *wanted) / 2.0, kShimBothSides);
    answer.tables.push_back(shims.take());
  }
  answer.assumed.emplace_back("both round, straight and at one temperature");
  if (clearance.low <= Length() && clearance.high >= Length() && hole.low == hole.high)
    answer.cautions.emplace_back("Hole and shaft of one size are no fit: say how much they shall differ.");
  return answer;
}

base::Result<Answer> pattern(const Question& question) {
  EntryReader read(question);
  const Length hole_place = read.size("hole-place");
  const Length post_place = read.size("post-place");
  const bool has_sizes = read.has("hole") || read.has("post");
  const Band hole = has_sizes ? read.band("hole") : Band();
  const Band post = has_sizes ? read.band("post") : Band();
  const bool bolted = read.has("second-hole");
  const Band second = bolted ? read.band("second-hole") : Band();
  if (bolted) read.refuse_unless(has_sizes, "second-hole", "the first hole and the screw as well");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const Length needed = (hole_place + post_place) * 2.0;
  Answer answer;
  answer.asked = fmt::format("a pattern of holes over {}, places good to {} and {}",
                             bolted ? "holes, with screws through both" : "posts",
                             both_ways(hole_place, system), both_ways(post_place, system));
  answer.says = fmt::format("{} of play on the diameter at every one", both_ways(needed, system));
  TableWriter writer("so that it always goes on", system);
  writer.length("play on the diameter, at least", needed, kPatternPlay,
                "for two of them or twenty: it is the same");
  if (has_sizes) {
    // A screw through two holes floats in both: the play of both counts.
    const Length least = hole.low - post.high + (bolted ? second.low - post.high : Length());
    const bool enough = needed - least < Length::of(1e-6, quantity::unit::millimetre);
    writer.length("play there is, at least", least, kHoleLessShaft, bolted ? "of both holes together" : "");
    writer.length("missing", std::max(Length(), needed - least), kPatternPlay);
    answer.says = fmt::format("{}: play {}, needed {}",
                              least < Length() ? "NO"
                              : enough         ? "OK"
                                               : "may not go on, at worst",
                              both_ways(least, system), both_ways(needed, system));
  }
  answer.tables.push_back(writer.take());
  TableWriter usual("how good a place usually is, each way", system);
  usual.range("scribed and punched", Length::of(0.010, quantity::unit::inch),
              Length::of(0.020, quantity::unit::inch), kUsualPlaces,
              "the drill wanders from the punch on top");
  usual.range("by the collars of a mill", Length::of(0.002, quantity::unit::inch),
              Length::of(0.005, quantity::unit::inch), kUsualPlaces);
  usual.words("spotted through the mate", "no place to be out", kUsualPlaces, "the two belong together then");
  answer.tables.push_back(usual.take());
  answer.assumed.emplace_back(
      "each place is good to that on the radius: how far a centre may lie from where it should");
  answer.assumed.emplace_back("holes and posts square to the faces");
  return answer;
}

base::Result<Answer> key_room(const Question& question) {
  EntryReader read(question);
  const Length hub = read.size("hub");
  const Length back = read.size("back");
  const Length key = read.size("key");
  if (!read.failed()) read.refuse_unless(back < hub, "back", "less than over the hub's keyway");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const Length room = hub - back - key;
  Answer answer;
  answer.asked = fmt::format("room over a key {} high", both_ways(key, system));
  answer.says = room < Length()        ? fmt::format("NO: the key is {} too high", both_ways(-room, system))
                : room < kLeastOverKey ? fmt::format("CLOSE: {} over the key", both_ways(room, system))
                                       : fmt::format("OK: {} over the key", both_ways(room, system));
  TableWriter writer("over the key", system);
  writer.length("room", room, kKeyRoom, room < Length() ? "it wedges the hub off the shaft" : "");
  writer.length("usual", Length::of(0.005, quantity::unit::inch), kRoomOverKey);
  writer.length("key, to have the usual room", hub - back - Length::of(0.005, quantity::unit::inch),
                kKeyRoom);
  answer.tables.push_back(writer.take());
  answer.assumed.emplace_back(
      "hub: from the far side of its bore to the top of the keyway; back: from the bottom of the keyseat to "
      "the far side of the shaft; shaft and bore together without play");
  if (room < Length())
    answer.cautions.emplace_back(
        "A key that is too high stretches the hub as it is pressed or shrunk on, and leaves its bore oval.");
  return answer;
}

}  // namespace sparewright::answers
