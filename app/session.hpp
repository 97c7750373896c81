// One job, opened from texts: the facade of the house. It opens texts, never paths.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include <tl/expected.hpp>

#include "app/rows.hpp"

namespace sparewright::app {

using Troubles = std::vector<Trouble>;
template <typename Value>
using Outcome = tl::expected<Value, Troubles>;

struct Text {
  std::string content;
  std::string name;  // what messages call it
};

enum class Paper { kA4, kLetter };

// STEP for other people's drawing programs, binary glTF for looking at, STL for printing.
enum class SolidFile { kStep, kGlb, kStl };

enum class DrawingFile { kSvg, kPng, kJson };

// Which solid is meant.
struct SolidAsked {
  std::optional<int> after_op;  // the work as that setup leaves it; none: the finished part
  std::string
      piece;  // a bush by its name, or 1, 2, ... of what has come apart, the largest first; empty: all
};

class Session {
 public:
  // Reads both texts and tells everything that is wrong with them at once.
  [[nodiscard]] static Outcome<Session> open(Text job, Text shop);

  Session(Session&&) noexcept;
  Session& operator=(Session&&) noexcept;
  ~Session();

  [[nodiscard]] std::string title() const;
  [[nodiscard]] std::vector<NumberRow> numbers();
  // Every dimension of the part, in the order of the text; the blank's first.
  [[nodiscard]] std::vector<DimensionRow> dimensions();
  // The readings adjusted together: every measured dimension with what its doubt is made of, every reading with how it
  // fits the others.
  [[nodiscard]] Measured measured();
  // The same by so many draws of the readings' errors. Fails with too-many for a number of draws that is not taken, with
  // readings-too-few where a size is left open.
  [[nodiscard]] Outcome<Drawn> drawn(std::size_t draws);
  // What measured() gives with pictures, PDF.
  [[nodiscard]] Outcome<std::string> measuring_pdf(Paper paper);
  // What the measured dimensions were made to, and the fits of the pairs.
  [[nodiscard]] Sizes sizes();
  [[nodiscard]] std::vector<VerdictRow> verdicts();
  [[nodiscard]] std::vector<QueryRow> queries();

  // Fails with name-unknown, the nearest names offered.
  [[nodiscard]] Outcome<TrailRow> why(std::string_view name);
  // The same as a bench card, a quarter of a sheet, PDF.
  [[nodiscard]] Outcome<std::string> card_pdf(std::string_view name, Paper paper);
  [[nodiscard]] std::vector<OrderRow> order();

  // The bytes of the files.
  // only: the sheet of that setup alone. Fails with not-in-the-job where there is none.
  [[nodiscard]] Outcome<std::string> sheets_pdf(Paper paper, std::optional<int> only = std::nullopt);
  // The sheets of the drawing, without head and foot; as JSON their display lists. Fails as the solid does.
  [[nodiscard]] Outcome<std::vector<std::string>> drawing_files(DrawingFile kind, Paper paper);
  // The finished part; or with an op the work as it stands after that setup, the blank cut by what is made up to then.
  // A piece of what a split leaves comes in a frame of its own. Fails with not-in-the-job for an op, a piece or a bush that
  // is not there, naming those that are.
  [[nodiscard]] Outcome<std::string> solid_file(SolidFile kind, const SolidAsked& asked = {});

 private:
  struct Inside;
  explicit Session(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

// The shop text that a job text names; empty where it names none.
[[nodiscard]] Outcome<std::string> shop_named_in(const Text& job);

// Largest text that is read.
[[nodiscard]] std::size_t longest_text();

}  // namespace sparewright::app
