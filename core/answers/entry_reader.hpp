// Reads the entries of one question, one after the other, and keeps the first failure: after it every reading is zero, so
// that a question reads all it needs and asks once whether it may go on. Used inside this room only.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/answers/question.hpp"
#include "core/handbook/materials.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::answers {

// From the least to the greatest a size may be; both the same for one that was measured.
struct Band {
  quantity::Length low;
  quantity::Length high;

  [[nodiscard]] quantity::Length width() const { return high - low; }
  [[nodiscard]] quantity::Length middle() const { return (low + high) / 2.0; }
};

// A taper on the diameter, a plain number up to 1/2: "1:20", "7:24" or "0.602 in/ft".
[[nodiscard]] base::Result<double> taper_entry(const Question& question, std::string_view name);

class EntryReader {
 public:
  explicit EntryReader(const Question& question) : question_(question) {}

  [[nodiscard]] bool has(std::string_view name) const { return find_entry(question_, name) != nullptr; }

  quantity::Length size(std::string_view name);                       // more than zero
  std::optional<quantity::Length> maybe_size(std::string_view name);  // the same, where it is there
  quantity::Length place(std::string_view name);                      // any sign; has to be there
  quantity::Length place_or_zero(std::string_view name);              // any sign; zero where it is not there
  int count(std::string_view name, int least, int most);
  int count_or(std::string_view name, int least, int most, int otherwise);
  double number(std::string_view name, quantity::Kind kind);  // in the base unit of its kind
  std::optional<double> maybe_number(std::string_view name, quantity::Kind kind);
  double positive(std::string_view name, quantity::Kind kind);  // more than zero
  std::optional<double> maybe_positive(std::string_view name, quantity::Kind kind);

  // "5.996 to 6.000 mm", "6 +- 0.001 mm" or one size; a unit behind the last number counts for both. Low over zero.
  Band band(std::string_view name);
  // Lengths of any sign, parted by blanks behind commas: "1.0002, 1.0004, 1.0001 in".
  std::vector<quantity::Length> lengths(std::string_view name, std::size_t least, std::size_t most);
  // The same, each with its tolerance where it has one: "2.500 +- 0.005, 1.25 in".
  std::vector<Band> bands(std::string_view name, std::size_t least, std::size_t most);

  // One of the words, the first where the entry is not there.
  std::string word(std::string_view name, const std::vector<std::string>& accepted);
  double taper(std::string_view name);
  handbook::FoundMaterial material(std::string_view name, std::string_view otherwise);

  // Keeps the failure that an entry has another value than may be.
  void refuse(std::string_view name, std::string accepted);
  void refuse_unless(bool fine, std::string_view name, std::string accepted) {
    if (!fine) refuse(name, std::move(accepted));
  }
  void keep(const base::Failure& failure) {
    if (!failure_) failure_ = failure;
  }

  // Of the first length that was read; that of the question where none was.
  [[nodiscard]] quantity::UnitSystem system() const { return system_.value_or(question_.system); }

  [[nodiscard]] bool failed() const { return failure_.has_value(); }
  [[nodiscard]] tl::unexpected<base::Failure> failure() const {
    return tl::unexpected<base::Failure>(failure_.value_or(base::Failure()));
  }

 private:
  quantity::Length length_of(const quantity::Typed& typed);
  // A number of lengths, its unit that of the text where it has none of its own.
  quantity::Length part(std::string_view name, std::string_view text, std::string_view unit);
  Band band_part(std::string_view name, std::string_view text, std::string_view unit);

  const Question& question_;
  std::optional<quantity::UnitSystem> system_;
  std::optional<base::Failure> failure_;
};

}  // namespace sparewright::answers
