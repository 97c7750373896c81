#include "drawing/standings.hpp"

#include <algorithm>
#include <string_view>
#include <utility>

namespace sparewright::drawing {
namespace {

constexpr double kHatchLeftOut_mm = 0.7;  // round text

// What a name with no room is shown by: a letter not easily taken for another or for a figure.
constexpr std::string_view kLetters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

}  // namespace

Standings::Standings(std::vector<Name> names, const Ground& ground, const Ruler& ruler)
    : names_(std::move(names)), by_letter_(names_.size(), false), ground_(ground), ruler_(ruler) {
  constexpr int kTries = 4;
  for (int i = 0; i < kTries; ++i) {
    place();
    if (!give_letters()) break;
  }
}

void Standings::add_to(Picture& picture, DisplayList& words, std::vector<Box>& not_hatched) const {
  for (std::size_t i = 0; i < names_.size(); ++i) {
    if (!standing_[i]) {
      picture.not_named.push_back(names_[i].says);
      continue;
    }
    if (by_letter_[i]) picture.key.push_back({labels_[i].lines.front(), names_[i].says});
    add_label(words, ruler_, labels_[i], *standing_[i]);
    not_hatched.push_back(grown(standing_[i]->box, kHatchLeftOut_mm));
  }
}

void Standings::place() {
  labels_.clear();
  std::size_t letter = 0;
  for (std::size_t i = 0; i < names_.size(); ++i) {
    labels_.push_back(names_[i].label);
    if (by_letter_[i]) labels_.back().lines = {next_letter(letter)};
  }
  standing_ = place_labels(ruler_, labels_, ground_);
}

std::string Standings::next_letter(std::size_t& letter) const {
  while (true) {
    const std::size_t round = letter / kLetters.size();
    const std::string says =
        kLetters[letter % kLetters.size()] + (round == 0 ? std::string() : std::to_string(round + 1));
    ++letter;
    if (std::none_of(names_.begin(), names_.end(), [&](const Name& name) { return name.says == says; }))
      return says;
  }
}

bool Standings::give_letters() {
  bool any = false;
  for (std::size_t i = 0; i < names_.size(); ++i) {
    if (standing_[i] || by_letter_[i] || !names_[i].of_feature) continue;
    by_letter_[i] = true;
    any = true;
  }
  return any;
}

}  // namespace sparewright::drawing
