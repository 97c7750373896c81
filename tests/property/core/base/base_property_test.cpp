// Slow twins and round trips of core/base.
#include <algorithm>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/base/hash.hpp"
#include "core/base/messages.hpp"
#include "core/base/nearest.hpp"
#include "core/base/place.hpp"
#include "property.hpp"

namespace sparewright::base {
namespace {

using tests::holds;

// The definition, written as a recursion.
std::size_t slow_distance(std::string_view a, std::string_view b) {
  if (a.empty()) return b.size();
  if (b.empty()) return a.size();
  const std::string_view a1 = a.substr(0, a.size() - 1);
  const std::string_view b1 = b.substr(0, b.size() - 1);
  std::size_t best = std::min({slow_distance(a1, b) + 1, slow_distance(a, b1) + 1,
                               slow_distance(a1, b1) + (a.back() == b.back() ? 0U : 1U)});
  if (!a1.empty() && !b1.empty() && a.back() == b1.back() && a1.back() == b.back()) {
    best = std::min(best, slow_distance(a1.substr(0, a1.size() - 1), b1.substr(0, b1.size() - 1)) + 1);
  }
  return best;
}

rc::Gen<std::string> word(int longest) {
  return rc::gen::mapcat(rc::gen::inRange(0, longest + 1), [](int n) {
    return rc::gen::container<std::string>(static_cast<std::size_t>(n), rc::gen::element('a', 'b', 'c'));
  });
}

TEST(NearestProperty, DistanceIsThatOfTheDefinition) {
  int swaps = 0;
  EXPECT_TRUE(holds("edit distance equals its recursive definition", [&] {
    const std::string a = *word(6);
    std::string b = *word(6);
    if (a.size() > 1 && *rc::gen::arbitrary<bool>()) {
      b = a;
      std::swap(b[b.size() - 2], b.back());
    }
    RC_ASSERT(edit_distance(a, b) == slow_distance(a, b));
    RC_ASSERT(edit_distance(a, b) == edit_distance(b, a));
    if (a != b && a.size() == b.size() && std::is_permutation(a.begin(), a.end(), b.begin())) ++swaps;
  }));
  EXPECT_GT(swaps, 50) << "too few words that are swaps of each other";
}

// Texts of lines and characters of one to four bytes.
rc::Gen<std::string> text() {
  return rc::gen::map(rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
                          "a", "=", "\n", "\r\n", "\t", "é", "±", "漢", "😀", " ")),
                      [](const std::vector<std::string>& pieces) {
                        std::string all;
                        for (const auto& piece : pieces)
                          all += piece;
                        return all;
                      });
}

TEST(PlaceProperty, OffsetAndPlaceAreInverse) {
  int lines = 0;
  EXPECT_TRUE(holds("the place of every character leads back to it", [&] {
    const std::string t = *text();
    for (std::size_t i = 0; i <= t.size(); ++i) {
      const bool inside = i < t.size() && (static_cast<unsigned char>(t[i]) & 0xC0U) == 0x80U;
      if (inside) continue;
      const Place p = place_of("f", t, i);
      RC_ASSERT(offset_of(t, p.line, p.column) == i);
      lines = std::max(lines, p.line);
    }
  }));
  EXPECT_GT(lines, 3) << "no text of several lines was made";
}

TEST(HashProperty, SplittingATextChangesIt) {
  EXPECT_TRUE(holds("two texts are not their joined text", [] {
    const std::string a = *rc::gen::arbitrary<std::string>();
    const std::string b = *rc::gen::arbitrary<std::string>();
    RC_ASSERT(Hasher().add(a).add(b).done() == Hasher().add(a).add(b).done());
    RC_ASSERT(Hasher().add(a).add(b).done() != Hasher().add(a + b).done());
    if (a != b) RC_ASSERT(Hasher().add(a).add(b).done() != Hasher().add(b).add(a).done());
  }));
}

bool is_valid_utf8(std::string_view text) {
  for (std::size_t i = 0; i < text.size();) {
    const auto lead = static_cast<unsigned char>(text[i]);
    const std::size_t size = lead < 0x80        ? 1
                             : lead >> 5U == 6  ? 2
                             : lead >> 4U == 14 ? 3
                             : lead >> 3U == 30 ? 4
                                                : 0;
    if (size == 0 || i + size > text.size()) return false;
    for (std::size_t k = 1; k < size; ++k) {
      if ((static_cast<unsigned char>(text[i + k]) & 0xC0U) != 0x80U) return false;
    }
    i += size;
  }
  return true;
}

TEST(MessageProperty, AnyBytesBecomeOneLineOfText) {
  EXPECT_TRUE(holds("a message is one line of valid UTF-8", [] {
    Failure f;
    f.code = static_cast<Code>(*rc::gen::inRange(0, static_cast<int>(Code::kLast)));
    f.found = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
    f.subject = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
    const std::string said = sentence(f);
    RC_ASSERT(is_valid_utf8(said));
    RC_ASSERT(
        std::none_of(said.begin(), said.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20; }));
  }));
}

}  // namespace
}  // namespace sparewright::base
