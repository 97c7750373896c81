#include "core/base/name.hpp"

#include <array>
#include <functional>
#include <mutex>
#include <ostream>
#include <unordered_set>

namespace sparewright::base {
namespace {

struct HashOfText {
  using is_transparent = void;
  std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>{}(text); }
};

// Holds every name; its entries never move and never leave.
struct Shelf {
  std::mutex mutex;
  std::unordered_set<std::string, HashOfText, std::equal_to<>> names;
};

const std::string* on_the_shelf(std::string_view text) {
  static Shelf& shelf = *new Shelf;  // never ended: names may be used by what ends last
  const std::lock_guard lock(shelf.mutex);
  auto found = shelf.names.find(text);
  if (found == shelf.names.end()) found = shelf.names.emplace(text).first;
  return &*found;
}

// The empty name is made again and again, by default: it has its place outside the shelf.
const std::string& nothing() {
  static const std::string& text = *new std::string;  // never ended, as the shelf
  return text;
}

// Each thread keeps at hand what it asked for last: one place for each remainder of the hash.
const std::string* kept(std::string_view text) {
  if (text.empty()) return &nothing();
  thread_local std::array<const std::string*, 1024> at_hand{};
  const std::string*& place = at_hand[HashOfText{}(text) % at_hand.size()];
  if (place == nullptr || *place != text) place = on_the_shelf(text);
  return place;
}

}  // namespace

Name::Name() : text_(&nothing()) {}

Name::Name(std::string_view text) : text_(kept(text)) {}

std::ostream& operator<<(std::ostream& out, Name name) {
  return out << name.text();
}

}  // namespace sparewright::base
