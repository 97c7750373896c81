#include "core/handbook/screw_card.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/handbook/inch_size.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/screw_size.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

struct HeadWords {
  std::string_view words;
  HeadKind head;
};
// Longer words of one ending stand first.
constexpr std::array kHeadWords{
    HeadWords{"flat head machine screw", HeadKind::kFlatMachineHead},
    HeadWords{"flat head socket screw", HeadKind::kFlatSocketHead},
    HeadWords{"flat head cap screw", HeadKind::kFlatSocketHead},
    HeadWords{"flat head machine", HeadKind::kFlatMachineHead},
    HeadWords{"flat head socket", HeadKind::kFlatSocketHead},
    HeadWords{"flat socket head", HeadKind::kFlatSocketHead},
    HeadWords{"flat machine", HeadKind::kFlatMachineHead},
    HeadWords{"flat socket", HeadKind::kFlatSocketHead},
    HeadWords{"flat head", HeadKind::kFlatSocketHead},
    HeadWords{"fhcs", HeadKind::kFlatSocketHead},
    HeadWords{"socket button head", HeadKind::kButtonHead},
    HeadWords{"button head cap screw", HeadKind::kButtonHead},
    HeadWords{"button head screw", HeadKind::kButtonHead},
    HeadWords{"button head", HeadKind::kButtonHead},
    HeadWords{"button", HeadKind::kButtonHead},
    HeadWords{"bhcs", HeadKind::kButtonHead},
    HeadWords{"socket set screw", HeadKind::kSetScrew},
    HeadWords{"set screw", HeadKind::kSetScrew},
    HeadWords{"grub screw", HeadKind::kSetScrew},
    HeadWords{"socket head cap screw", HeadKind::kSocketHead},
    HeadWords{"socket head screw", HeadKind::kSocketHead},
    HeadWords{"socket cap screw", HeadKind::kSocketHead},
    HeadWords{"socket head", HeadKind::kSocketHead},
    HeadWords{"socket", HeadKind::kSocketHead},
    HeadWords{"shcs", HeadKind::kSocketHead},
    HeadWords{"hex head cap screw", HeadKind::kHexHead},
    HeadWords{"hex head bolt", HeadKind::kHexHead},
    HeadWords{"hex cap screw", HeadKind::kHexHead},
    HeadWords{"hex bolt", HeadKind::kHexHead},
    HeadWords{"hex head", HeadKind::kHexHead},
    HeadWords{"hex", HeadKind::kHexHead},
};

constexpr std::string_view kExamples =
    "a thread and a head, such as 5/16-18 socket head, M8 button head, "
    "1/4-20 flat head, 1/2-13 hex, #10 set screw";

// text without as many of its last words as there are in `words`; text has more.
std::string_view without_last_words(std::string_view text, std::string_view words) {
  std::vector<std::size_t> starts;
  bool in_word = false;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t blanks = quantity::blanks_at(text.substr(at));
    if (blanks == 0 && !in_word) starts.push_back(at);
    in_word = blanks == 0;
    at += blanks == 0 ? 1 : blanks;
  }
  const auto count = static_cast<std::size_t>(std::count(words.begin(), words.end(), ' ')) + 1;
  return quantity::trimmed(text.substr(0, starts.at(starts.size() - count)));
}

// A size alone is the coarse thread: "5/16" as 5/16 UNC; the others as they are written.
base::Result<ScrewThread> thread_of(std::string_view text, std::vector<std::string>& assumed) {
  const auto size = inch_size_at(text);
  const bool size_alone = size && quantity::trimmed(text.substr(size->taken)).empty();
  if (!size_alone) return read_screw_thread(text);
  const auto screw = read_screw_size(text);
  if (!screw) return tl::unexpected(screw.error());
  auto thread = read_screw_thread(screw->name + " UNC");
  if (!thread) return tl::unexpected(thread.error());
  if (!screw->assumed.empty()) assumed.push_back(screw->assumed);
  assumed.push_back(fmt::format("{} taken as the coarse thread {}", screw->name, thread->name));
  thread->assumed.clear();
  return thread;
}

base::Result<HeadRow> head_row(HeadKind head, std::string_view size) {
  const auto as_row = [](const auto& row) { return HeadRow(row); };
  switch (head) {
    case HeadKind::kSocketHead:
      return socket_head_screw(size).map(as_row);
    case HeadKind::kButtonHead:
      return button_head_screw(size).map(as_row);
    case HeadKind::kFlatSocketHead:
      return flat_head_screw(FlatHeadStyle::kSocket, size).map(as_row);
    case HeadKind::kFlatMachineHead:
      return flat_head_screw(FlatHeadStyle::kMachine, size).map(as_row);
    case HeadKind::kHexHead:
      return hex_head(size).map(as_row);
    case HeadKind::kSetScrew:
      return set_screw(size).map(as_row);
  }
  return not_tabled("the head", size, {});
}

template <class Value>
std::optional<Value> if_tabled(base::Result<Value> result) {
  if (!result) return std::nullopt;
  return *std::move(result);
}

// The holes a screw of that head goes with.
void add_holes(ScrewCard& card, const std::string& size) {
  const HeadKind head = card.screw.head;
  card.tap_drill = if_tabled(charted_tap_drill(card.screw.thread.name, TapChartColumn::kNominal75));
  if (head == HeadKind::kSetScrew) return;
  for (const ClearanceFit fit : {ClearanceFit::kClose, ClearanceFit::kNormal, ClearanceFit::kLoose}) {
    if (const auto hole = clearance_hole(size, fit)) card.clearance_holes.push_back(*hole);
  }
  if (head == HeadKind::kSocketHead)
    card.counterbores = counterbores(size).value_or(std::vector<Counterbore>{});
  if (head == HeadKind::kFlatSocketHead) card.sink = if_tabled(countersink(FlatHeadStyle::kSocket, size));
  if (head == HeadKind::kFlatMachineHead) card.sink = if_tabled(countersink(FlatHeadStyle::kMachine, size));
  if (head == HeadKind::kHexHead) {
    card.nut = if_tabled(hex_nut(size));
    card.washer = if_tabled(plain_washer(size));
    card.face = if_tabled(spotface(SpotfaceUnder::kHexHead, size));
  }
}

base::Result<void> add_strength(ScrewCard& card, std::optional<std::string_view> grade) {
  NamedScrew& screw = card.screw;
  if (!grade && screw.head != HeadKind::kSocketHead) return {};
  const std::string_view usual = screw.thread.is_metric() ? "class 12.9" : "A574";
  const auto row = screw_grade(grade.value_or(usual), screw.thread);
  if (!row) return tl::unexpected(row.error());
  if (!grade)
    screw.assumed.push_back(
        fmt::format("a socket head cap screw taken as {}, {}", row->standard, row->grade));
  card.grade = *row;
  card.loads = screw_loads(screw.thread, *row);
  card.oiled = if_tabled(tightening(screw.thread, *row, ThreadState::kMachineOil));
  return {};
}

}  // namespace

std::string_view name_of(HeadKind head) {
  constexpr std::array<std::string_view, 6> kNames{"socket head cap screw",  "button head screw",
                                                   "flat head socket screw", "flat head machine screw",
                                                   "hex head screw",         "socket set screw"};
  return kNames.at(static_cast<std::size_t>(head));
}

base::Result<NamedScrew> read_named_screw(std::string_view text) {
  const std::string_view typed = quantity::trimmed(text);
  const std::string low = folded(typed);
  for (const HeadWords& one : kHeadWords) {
    if (!low.ends_with(one.words)) continue;
    if (low.size() == one.words.size() || low[low.size() - one.words.size() - 1] != ' ') continue;
    NamedScrew out;
    out.head = one.head;
    auto thread = thread_of(without_last_words(typed, one.words), out.assumed);
    if (!thread) return tl::unexpected(thread.error());
    out.thread = *std::move(thread);
    out.assumed.insert(out.assumed.end(), out.thread.assumed.begin(), out.thread.assumed.end());
    if (one.words == "flat head") out.assumed.emplace_back("flat head taken as the socket screw");
    return out;
  }
  return unknown(typed, "screw", {}, kExamples);
}

base::Result<ScrewCard> screw_card(std::string_view text, std::optional<std::string_view> grade) {
  const auto screw = read_named_screw(text);
  if (!screw) return tl::unexpected(screw.error());
  const auto size = read_screw_size(screw->thread.name);
  if (!size) return tl::unexpected(size.error());
  const auto head = head_row(screw->head, size->name);
  if (!head) return tl::unexpected(head.error());
  ScrewCard card;
  card.screw = *screw;
  card.head = *head;
  add_holes(card, size->name);
  const auto strength = add_strength(card, grade);
  if (!strength) return tl::unexpected(strength.error());
  return card;
}

}  // namespace sparewright::handbook
