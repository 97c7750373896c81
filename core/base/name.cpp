#include "core/base/name.hpp"

#include <array>
#include <cstdint>
#include <cstring>
#include <memory>
#include <mutex>
#include <ostream>
#include <string>
#include <unordered_map>

namespace sparewright::base {
namespace {

KeptName kept_name(std::string_view text) {
  return {std::string(text), Hasher().add(text).done()};
}

// Holds every name; its entries never move and never leave.
struct Shelf {
  std::mutex mutex;
  std::unordered_map<std::string_view, std::unique_ptr<const KeptName>> names;  // by their own texts
};

const KeptName* on_the_shelf(std::string_view text) {
  static Shelf& shelf = *new Shelf;  // never ended: names may be used by what ends last
  const std::lock_guard lock(shelf.mutex);
  if (const auto found = shelf.names.find(text); found != shelf.names.end()) return found->second.get();
  auto kept = std::make_unique<const KeptName>(kept_name(text));
  const KeptName* name = kept.get();
  shelf.names.emplace(name->text, std::move(kept));
  return name;
}

// The empty name is made again and again, by default: it has its place outside the shelf.
const KeptName& nothing() {
  static const KeptName& name = *new KeptName(kept_name({}));  // never ended, as the shelf
  return name;
}

constexpr std::size_t kPlaceBits = 13;  // room for the names of a large job: 64 kB a thread
constexpr std::size_t kPlaces = std::size_t{1} << kPlaceBits;

// Where a text is kept at hand: one multiplication for eight bytes, the last eight again where they do not fill up. It is
// only a place to look, the text there is compared.
std::size_t place_of(std::string_view text) {
  std::uint64_t mixed = text.size();
  const auto mix = [&](std::uint64_t word) {
    mixed = (mixed ^ word) * 0x9E3779B97F4A7C15U;
  };  // 2^64 / golden ratio
  constexpr std::size_t kWord = sizeof(std::uint64_t);
  const auto word_at = [&](std::size_t at) {
    std::uint64_t word = 0;
    std::memcpy(&word, text.data() + at, kWord);
    return word;
  };
  if (text.size() < kWord) {
    for (const char c : text)
      mix(static_cast<unsigned char>(c));
  } else {
    for (std::size_t at = 0; at + kWord < text.size(); at += kWord)
      mix(word_at(at));
    mix(word_at(text.size() - kWord));
  }
  return static_cast<std::size_t>(mixed >> (64U - kPlaceBits));
}

// Each thread keeps at hand what it asked for last, one name a place.
const KeptName* kept(std::string_view text) {
  if (text.empty()) return &nothing();
  thread_local std::array<const KeptName*, kPlaces> at_hand{};
  const KeptName*& place = at_hand[place_of(text)];
  if (place == nullptr || place->text != text) place = on_the_shelf(text);
  return place;
}

}  // namespace

Name::Name() : kept_(&nothing()) {}

Name::Name(std::string_view text) : kept_(kept(text)) {}

std::ostream& operator<<(std::ostream& out, Name name) {
  return out << name.text();
}

}  // namespace sparewright::base
