// What was measured, with what, and where: the plain input of measuring up. No text format here.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/ledger/figure.hpp"
#include "core/quantity/kind.hpp"
#include "core/quantity/typed.hpp"
#include "core/quantity/unit.hpp"
#include "core/survey/condition.hpp"
#include "core/survey/touched.hpp"
#include "core/survey/warmth.hpp"

namespace sparewright::survey {

// The pair of faces that touched the work. Each has a zero error of its own: what the outside jaws read when
// closed says nothing about the inside jaws or the depth rod. A one-pair instrument (a micrometer, an
// indicator) has whichever of the three it is.
enum class Jaws { kOutside, kInside, kDepth };

[[nodiscard]] std::string_view name_of(Jaws jaws);  // "outside jaws", "inside jaws", "depth rod"

// What is known of one pair of faces. Where a field is empty, what is said of the instrument counts.
struct JawPair {
  Jaws jaws = Jaws::kOutside;
  std::optional<quantity::Typed> zero_found;   // what it read at zero; taken off every reading
  std::optional<quantity::Typed> zero_within;  // half-width of what may be left of it
};

// What a standard, or the trade, allows an instrument of its kind. Of the rows for its faces, the first that reaches up to
// the size counts; past the last, the last.
struct AllowedError {
  std::optional<Jaws> jaws;     // empty: whichever touch
  std::optional<double> up_to;  // base unit; empty: any size
  quantity::Typed error;        // plus or minus
  std::string source;           // "DIN 862, ..."
};

// What one step of what it shows is of the size.
enum class Shows { kTheSize, kHalfOfIt, kTwiceIt };

struct Instrument {
  std::string name;         // "caliper 8"; no '/', unique
  std::string kind;         // "dial caliper": for people to read
  quantity::Typed good_to;  // permissible error, plus or minus, as maker or shop states it; more than 0
  quantity::Typed reads;    // resolution: its finest step; more than 0
  std::optional<quantity::Typed> zero_found;   // what it read at zero; having it means the zero was checked
  bool zero_checked = false;                   // looked at and found at zero
  std::optional<quantity::Typed> zero_within;  // half-width of the zero error one jaw pair's readings share
  std::optional<quantity::Typed> turn;         // what one turn of its thimble, collar or dial shows
  std::vector<JawPair> jaw_pairs;              // the faces it has; empty: not said (faces_of)
  std::vector<AllowedError> allowed;  // where the shop states no good_to (which is then the first of these)
  std::optional<quantity::Typed>
      comes_back;                       // repeatability: how far readings of one place lie off, either way
  std::optional<quantity::Typed> from;  // measuring range: the least
  std::optional<quantity::Typed> to;    // and the most it measures
  Shows shows = Shows::kTheSize;
  std::optional<Warmth> at;          // the temperature of the shop, where it lies
  std::optional<Expansion> expands;  // of its scale
};

// The faces it touches with: those it is said to have; else those that its kind tells, in words as people write them
// (common usage of the names):
//   outside micrometer, micrometer, snap gauge, outside caliper                     outside jaws
//   inside micrometer, bore gauge, telescoping gauge, small hole gauge, inside caliper   inside jaws
//   depth micrometer, depth gauge                                                   depth rod
// Of any other kind, a dial caliper or a comparator, all three.
[[nodiscard]] std::vector<Jaws> faces_of(const Instrument& instrument);

// How a reading was taken. ways.hpp says what each reads.
enum class Way {
  kOutside,
  kInside,
  kDepth,
  kStep,
  kThickness,
  kCentres,
  kEdgeToHoleNear,
  kEdgeToHoleFar,
  kBetweenHoles,
  kOverHoles,
  kSameSides,
  kOverPins,
  kBetweenPins,
  kFaceToPinNear,
  kFaceOverPin,
  kHeightOfArc,
  kChord,
  kRadiusGauge,
  kPitch,
  kOverWires,
  kGearOutside,
  kOverRollers,
  kOverRollersRaised,
  kSineBar,
  kDovetailOver,
  kDovetailBetween,
  kAngle,
  kRunOut,
  kOvality,
  kThreeLobes,
  kOutOfSquare,
  kSpan20,
  kSpan14,
  kTwoDiscs,
  kBallInTaper,
  kBallOverTaper,
  kDiscInTaper,
  kTaperBoreAt,
  kTaperShaftAt,
  kRubbing,
  kCrushedSolder,
  kSlipPack,
  kExpression,  // is = "centres + pin/2"
};

[[nodiscard]] std::string_view name_of(Way way);  // "outside", "over pins", ...

// What a plug, a drill shank, a feeler or the mate itself did when it was tried.
enum class Trial { kGoes, kGoesWithAPush, kWillNotGo };

[[nodiscard]] std::string_view name_of(Trial trial);

struct Reading {
  std::string name;  // "over both"; no '/', unique
  Way way = Way::kOutside;
  std::vector<std::string> of;  // names of dimensions, as Way says; empty for an expression
  std::string is;               // the expression, for Way::kExpression only
  std::string instrument;
  std::optional<Jaws> jaws;              // where they are not those the way of measuring calls for
  std::vector<quantity::Typed> repeats;  // at least one; of a worn place each somewhere in it
  std::string place;                     // "inboard of the worn band"
  Condition condition = Condition::kSound;
  std::optional<int> count;    // of threads or teeth, where the way of measuring wants one; more than 0
  std::optional<int> spanned;  // teeth between the jaws, where the way of measuring wants that; more than 0
  std::optional<quantity::Typed>
      transfer;  // half-width of what a spring or telescoping gauge, set and then measured, adds
  std::optional<Trial> trial;  // of outside and inside: `repeats` is the size of what was tried
  std::optional<Expansion>
      work;  // what the work is of, where that is said: then sizes are reduced to 20 degC
  std::optional<Warmth> work_at;  // the work's own temperature; empty: that of the shop
};

// An unknown: a dimension of the old part or of a mate. The name is one that expressions can use: letters,
// digits, '_' and '.', starting with a letter.
struct Dimension {
  std::string name;
  quantity::Kind kind = quantity::Kind::kLength;
};

// What is known without measuring: two sizes are equal, places are symmetric, holes concentric, faces parallel, lengths that
// make up a whole. One equation with its own doubt.
struct Known {
  std::string name;  // no '/', no reading's name, unique
  std::string is;    // "left = right", "a + b + c = whole", "offset = 0"
  std::optional<quantity::Typed>
      within;       // by how much the two sides may differ, either way; exact where left out
  std::string why;  // "bored in one setting"
};

// All that measuring up starts from.
struct Survey {
  std::vector<Instrument> instruments;
  std::vector<Dimension> dimensions;
  std::vector<Reading> readings;
  std::vector<Known> known;
  quantity::UnitSystem system =
      quantity::UnitSystem::kInch;  // of bare numbers in expressions, and of messages
  std::vector<Touched> touched;
  std::vector<Between> between;
  std::vector<HolePattern> patterns;
};

// The jaws a reading is taken with: as said, else outside jaws for what has metal between the faces (outside,
// near edge of a hole, over pins, expressions), inside jaws for what has air between them (inside, between
// pins), the depth rod for depths and for the far edge of a hole.
[[nodiscard]] Jaws jaws_of(const Reading& reading);

// What a reading says of the size as it was before wear.
//   worn, outside jaws: metal has gone from between the faces, so the original is at least this
//   worn, inside jaws, or a gauge set inside: metal has gone from around the gap: the original is at most this
//   worn, depth rod:    not bounded: a worn rim makes a depth less, a worn floor more
//   bent, or across a break: not bounded
//   goes, in a hole or a gap:           at least the plug's size; will not go: at most
//   goes, a ring or a gap over metal:   at most its size; will not go: at least
//   goes with a push: its size, known no finer than the plug
//   the same at a worn place says something of the original only where it will not go (a hole: at most, metal: at least)
//   or goes with a push; where it goes there, the original is not bounded
// An expression on a worn place is bounded only where its jaws are said, since it need not be a plain size.
[[nodiscard]] ledger::Bound bound_of(const Reading& reading);

}  // namespace sparewright::survey
