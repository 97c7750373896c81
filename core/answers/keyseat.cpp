#include <algorithm>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/answers/fasteners.hpp"
#include "core/answers/quick.hpp"
#include "core/handbook/keyseat_formulas.hpp"
#include "core/handbook/shaft_size.hpp"

namespace sparewright::answers {
namespace {

using handbook::ParallelKey;
using handbook::ShaftSize;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

// What the bench asks of every keyseat, whatever its key.
struct Cut {
  std::string key;
  Length crest_depth;
  std::vector<Table> tables;
};

Cut cut_of(const handbook::ParallelKeyseat& seat, UnitSystem system) {
  return {std::string(seat.key.name), seat.crest_depth, {keyseat_table(seat, system)}};
}

base::Result<Cut> woodruff(const std::string& number, const ShaftSize& shaft) {
  const auto key = handbook::woodruff_key(number);
  if (!key) return tl::unexpected(key.error());
  const auto seat = handbook::woodruff_keyseat(*key, shaft.diameter);
  if (!seat) return tl::unexpected(seat.error());
  return Cut{
      fmt::format("Woodruff {}", key->number), seat->crest_depth, {keyseat_table(*seat, shaft.system)}};
}

// A key of no standard: half its height lies in the shaft, as square keys do.
base::Result<Cut> odd_key(Length width, Length height, const ShaftSize& shaft) {
  const double diameter_mm = shaft.diameter.base();
  const Length side = height / 2.0;
  const Length arc = Length::from_base(handbook::keyseat_arc_height_mm(diameter_mm, width.base()));
  TableWriter writer("in the shaft", shaft.system);
  writer.length("depth from the crest", arc + side, handbook::kKeyseatGeometry,
                "fed down from touching the shaft");
  writer.length("depth at the side", side, handbook::kKeyseatGeometry);
  writer.length("crest to the edges", arc, handbook::kKeyseatGeometry);
  writer.length("over the back",
                Length::from_base(handbook::keyseat_over_back_mm(diameter_mm, width.base(), side.base())),
                handbook::kKeyseatGeometry, "from its bottom to the other side of the shaft");
  return Cut{"of no standard, half its height in the shaft", arc + side, {writer.take()}};
}

const ParallelKey* standard_key(Length width, Length height) {
  constexpr double kSame_mm = 1e-6;
  for (const ParallelKey& key : handbook::parallel_keys()) {
    if (std::abs((key.width - width).base()) < kSame_mm && std::abs((key.height - height).base()) < kSame_mm)
      return &key;
  }
  return nullptr;
}

base::Result<Cut> by_its_size(const Question& question, const ShaftSize& shaft) {
  const auto width = size_entry(question, "width");
  if (!width) return tl::unexpected(width.error());
  const auto height = size_entry(question, "height");
  if (!height) return tl::unexpected(height.error());
  const Length radius = reach(half(shaft.diameter));
  if (!(width->length() < radius))
    return base::fail(base::Code::kValueNotAccepted, width->typed, "less than half the shaft", "--width");
  if (!(height->length() < radius))
    return base::fail(base::Code::kValueNotAccepted, height->typed, "less than half the shaft", "--height");
  const ParallelKey* key = standard_key(width->length(), height->length());
  if (key == nullptr) return odd_key(width->length(), height->length(), shaft);
  const auto seat = handbook::parallel_keyseat(*key, shaft.diameter);
  if (!seat) return tl::unexpected(seat.error());
  return cut_of(*seat, shaft.system);
}

base::Result<Cut> standard_of(const std::string& text, const ShaftSize& shaft) {
  const auto seats = handbook::keyseats_for_shaft(text);
  if (!seats) return tl::unexpected(seats.error());
  return cut_of(seats->front(), shaft.system);
}

base::Result<Cut> cut_asked(const Question& question, const std::string& text, const ShaftSize& shaft) {
  if (const std::string* number = find_entry(question, "woodruff")) return woodruff(*number, shaft);
  if (find_entry(question, "width") != nullptr || find_entry(question, "height") != nullptr)
    return by_its_size(question, shaft);
  return standard_of(text, shaft);
}

}  // namespace

base::Result<Answer> keyseat(const Question& question) {
  const auto text = text_entry(question, "shaft");
  if (!text) return tl::unexpected(text.error());
  const auto shaft = handbook::read_shaft_size(*text);
  if (!shaft) return tl::unexpected(shaft.error());
  auto cut = cut_asked(question, *text, *shaft);
  if (!cut) return tl::unexpected(cut.error());
  Answer answer;
  answer.asked = fmt::format("keyseat in a shaft of {}, key {}",
                             both_ways(across(shaft->diameter), shaft->system), cut->key);
  answer.says = fmt::format("down {} from the crest", both_ways(cut->crest_depth, shaft->system));
  answer.assumed.emplace_back(
      "the shaft measures what was given: one that is smaller measures as much less over the back");
  if (find_entry(question, "on") != nullptr) {
    const auto machine = machine_entry(question);
    if (!machine) return tl::unexpected(machine.error());
    auto down = depth_on(**machine, cut->crest_depth, shaft->system);
    if (!down) return tl::unexpected(down.error());
    answer.tables.push_back(std::move(*down));
  }
  std::move(cut->tables.begin(), cut->tables.end(), std::back_inserter(answer.tables));
  answer.cautions.emplace_back(
      "Cutter stopped before a gauge or a key goes near it; chips off with a brush.");
  return answer;
}

}  // namespace sparewright::answers
