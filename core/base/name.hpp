// A name kept once for the whole program: copying one costs a pointer, comparing two for equality an address.
#pragma once

#include <compare>
#include <cstddef>
#include <functional>
#include <iosfwd>
#include <string>
#include <string_view>

#include "core/base/hash.hpp"

namespace sparewright::base {

// One text on the shelf.
struct KeptName {
  std::string text;
  Fingerprint print;
};

// Ordered by its text, byte by byte. The text stays for the life of the program, so this is for names that
// come again and again (figures, causes), not for text of any length from outside. Safe from any thread.
class Name {
 public:
  Name();
  // From text without a word of its own: wherever a name is asked for, text is one.
  Name(std::string_view text);                                     // NOLINT(google-explicit-constructor)
  Name(const std::string& text) : Name(std::string_view(text)) {}  // NOLINT(google-explicit-constructor)
  Name(const char* text) : Name(std::string_view(text)) {}         // NOLINT(google-explicit-constructor)

  [[nodiscard]] const std::string& text() const { return kept_->text; }
  operator const std::string&() const { return kept_->text; }  // NOLINT(google-explicit-constructor)
  operator std::string_view() const { return kept_->text; }    // NOLINT(google-explicit-constructor)
  [[nodiscard]] bool empty() const { return kept_->text.empty(); }
  // Of its text; worked out once.
  [[nodiscard]] const Fingerprint& print() const { return kept_->print; }

  friend bool operator==(Name a, Name b) { return a.kept_ == b.kept_; }
  friend std::strong_ordering operator<=>(Name a, Name b) {
    return a.kept_ == b.kept_ ? std::strong_ordering::equal : a.text().compare(b.text()) <=> 0;
  }
  friend std::ostream& operator<<(std::ostream& out, Name name);

 private:
  friend struct std::hash<Name>;
  const KeptName* kept_;
};

}  // namespace sparewright::base

template <>
struct std::hash<sparewright::base::Name> {
  std::size_t operator()(sparewright::base::Name name) const {
    return std::hash<const sparewright::base::KeptName*>{}(name.kept_);
  }
};
