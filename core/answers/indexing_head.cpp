// The dividing head that is asked about, and how its moves are said.
#include <cstdlib>

#include <fmt/format.h>

#include "core/answers/dividing.hpp"
#include "core/answers/quick.hpp"

namespace sparewright::answers {
namespace {

constexpr int kUsualWorm = 40;
constexpr int kRotaryTableWorm = 90;

std::string counted(int count, std::string_view what) {
  return fmt::format("{} {}{}", count, what, count == 1 ? "" : "s");
}

// "15,16,17 / 21,23": the circles of each plate.
base::Result<std::vector<handbook::IndexPlate>> own_plates(const std::string& text) {
  std::vector<handbook::IndexPlate> plates;
  for (std::string_view rest = text;;) {
    const std::size_t slash = rest.find('/');
    auto circles = read_counts(rest.substr(0, slash), "circles", 2, handbook::kMostHoles);
    if (!circles) return tl::unexpected(circles.error());
    plates.push_back({fmt::format("plate {}", plates.size() + 1), std::move(*circles)});
    if (slash == std::string_view::npos) return plates;
    rest.remove_prefix(slash + 1);
  }
}

base::Result<std::vector<handbook::IndexPlate>> plates_of(const Question& question, int worm,
                                                          std::vector<std::string>& assumed) {
  if (const std::string* circles = find_entry(question, "circles")) return own_plates(*circles);
  const std::string* named = find_entry(question, "plates");
  const std::string usual = worm == kRotaryTableWorm ? "rotary table" : "three-plate";
  const auto set = handbook::find_index_plates(named == nullptr ? usual : *named);
  if (!set) return tl::unexpected(set.error());
  if (named == nullptr)
    assumed.push_back(
        fmt::format("no plates were given: the set '{}' is taken; count the circles of yours", usual));
  return set->plates;
}

}  // namespace

std::vector<Entry> indexing_head_entries() {
  return {{"worm", "TURNS", "turns of the crank for one of the spindle; 40 where left out"},
          {"circles", "HOLES", "of your plates: 15,16,17,18,19,20 / 21,23,27"},
          {"plates", "SET", "or a usual set: three-plate, two-sided, rotary table"},
          {"on", "HEAD", "a dividing head of the shop text, instead of these"}};
}

base::Result<handbook::DividingHead> head_of(const Question& question, std::vector<std::string>& assumed) {
  if (find_entry(question, "on") != nullptr) {
    const auto head = on_entry(question, &shop::Shop::indexing_heads, "dividing head");
    if (!head) return tl::unexpected(head.error());
    return (*head)->head;
  }
  const auto worm = count_or(question, "worm", handbook::kLeastWorm, handbook::kMostWorm, kUsualWorm);
  if (!worm) return tl::unexpected(worm.error());
  if (find_entry(question, "worm") == nullptr)
    assumed.push_back(
        fmt::format("a worm of {}:1: count the crank's turns for one of the spindle", kUsualWorm));
  auto plates = plates_of(question, *worm, assumed);
  if (!plates) return tl::unexpected(plates.error());
  return handbook::checked({*worm, std::move(*plates)});
}

std::string crank_words(int turns, int holes, int circle) {
  if (holes == 0) return counted(turns, "turn");
  const std::string on = fmt::format("{} on {}", counted(holes, "hole"), circle);
  return turns == 0 ? on : fmt::format("{} and {}", counted(turns, "turn"), on);
}

std::string move_words(const handbook::CompoundIndexing& move) {
  return fmt::format("{} forward, then {} on {} {}",
                     crank_words(move.turns, move.first_holes, move.first_circle),
                     counted(std::abs(move.second_holes), "hole"), move.second_circle,
                     move.second_holes < 0 ? "back" : "forward");
}

}  // namespace sparewright::answers
