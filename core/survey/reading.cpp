#include "core/survey/reading.hpp"

#include <algorithm>
#include <array>
#include <span>

#include "core/survey/ways.hpp"

namespace sparewright::survey {
namespace {

using ledger::Bound;

constexpr std::array<std::string_view, 3> kOutsideWords{"outside", "external", "snap"};
constexpr std::array<std::string_view, 6> kInsideWords{"inside",   "internal",   "bore",
                                                       "telescop", "small hole", "small-hole"};
constexpr std::array<std::string_view, 1> kDepthWords{"depth"};

std::string lower(std::string_view text) {
  std::string small(text);
  for (char& c : small) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return small;
}

bool has_one_of(std::string_view text, std::span<const std::string_view> words) {
  return std::any_of(words.begin(), words.end(),
                     [&](std::string_view word) { return text.find(word) != std::string_view::npos; });
}

// Empty where the kind does not tell.
std::vector<Jaws> faces_told_by(std::string_view written) {
  const std::string kind = lower(written);
  const auto has = [&](std::string_view word) { return kind.find(word) != std::string::npos; };
  if (has("caliper") || has("calliper")) {  // that it has a depth rod, too, says nothing against its jaws
    const bool outside = kind.starts_with("outside");
    const bool inside = kind.starts_with("inside");
    if (!outside && !inside) return {};
    return {outside ? Jaws::kOutside : Jaws::kInside};
  }
  std::vector<Jaws> faces;
  if (has_one_of(kind, kOutsideWords)) faces.push_back(Jaws::kOutside);
  if (has_one_of(kind, kInsideWords)) faces.push_back(Jaws::kInside);
  if (has_one_of(kind, kDepthWords)) faces.push_back(Jaws::kDepth);
  if (faces.empty() && has("micrometer")) faces.push_back(Jaws::kOutside);
  return faces;
}

}  // namespace

std::vector<Jaws> faces_of(const Instrument& instrument) {
  std::vector<Jaws> faces;
  for (const JawPair& pair : instrument.jaw_pairs)
    faces.push_back(pair.jaws);
  if (faces.empty()) faces = faces_told_by(instrument.kind);
  if (faces.empty()) faces = {Jaws::kOutside, Jaws::kInside, Jaws::kDepth};
  return faces;
}

std::string_view name_of(Jaws jaws) {
  switch (jaws) {
    case Jaws::kOutside:
      return "outside jaws";
    case Jaws::kInside:
      return "inside jaws";
    case Jaws::kDepth:
      return "depth rod";
  }
  return "";
}

std::string_view name_of(Way way) {
  return row_of(way).name;
}

std::string_view name_of(Trial trial) {
  switch (trial) {
    case Trial::kGoes:
      return "goes";
    case Trial::kGoesWithAPush:
      return "goes with a push";
    case Trial::kWillNotGo:
      return "will not go";
  }
  return "";
}

Jaws jaws_of(const Reading& reading) {
  if (reading.jaws) return *reading.jaws;
  if (reading.trial) return Jaws::kOutside;  // the plug was measured, not the hole
  return row_of(reading.way).jaws;
}

namespace {

// What was tried in a hole tells the least of it where it goes; over metal the most.
Bound bound_of_trial(Trial trial, Way way) {
  if (trial == Trial::kGoesWithAPush) return Bound::kExact;
  const bool in_a_gap = way == Way::kInside;
  return in_a_gap == (trial == Trial::kGoes) ? Bound::kAtLeast : Bound::kAtMost;
}

}  // namespace

Bound bound_of(const Reading& reading) {
  if (reading.trial && reading.condition == Condition::kSound)
    return bound_of_trial(*reading.trial, reading.way);
  if (reading.condition == Condition::kSound) return Bound::kExact;
  if (reading.condition != Condition::kWorn) return Bound::kNeither;
  if (reading.trial == Trial::kGoes) return Bound::kNeither;
  if (reading.way == Way::kExpression && !reading.jaws) return Bound::kNeither;
  if (reading.way == Way::kInside)
    return Bound::kAtMost;  // also by outside jaws over a gauge that was set in it
  switch (jaws_of(reading)) {
    case Jaws::kOutside:
      return Bound::kAtLeast;
    case Jaws::kInside:
      return Bound::kAtMost;
    case Jaws::kDepth:
      return Bound::kNeither;
  }
  return Bound::kNeither;
}

}  // namespace sparewright::survey
