// A bench card: one question answered on a quarter of a sheet, to stand at the machine.
#pragma once

#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "sheets/pages.hpp"

namespace sparewright::sheets {

// What went into the answer, or what it is made of. With a name alone it is a heading over the rows below it.
struct CardRow {
  std::string name;   // as typed
  std::string value;  // "0.6248 in"
  std::string from;   // the instrument, the standard or the formula; may be empty
};

struct Card {
  std::string title;                 // of the job, as typed
  std::string revision;              // empty where there is none
  std::string asked;                 // "feature/pivot bore/diameter/aim"
  std::string answer;                // "0.6261 in" or "NOT KNOWN"; empty where it is the rows
  std::string good_to;               // "0.0003 in, 19 times in 20"; may be empty
  std::vector<std::string> missing;  // what is not known
  std::string how;                   // the formula in words
  std::string source;                // of the formula, or of the value itself
  std::vector<std::string> cautions;
  std::string rows_label = "WHAT WENT IN";
  std::vector<CardRow> rows;
  std::vector<std::string> notes;  // in the smallest type, below the rows
};

// A quarter of an A4 (ISO 216 A6) or Letter sheet, upright; what does not fit on one card goes on to the next, "card 1 of
// 2". The answer is 9 mm high, less where it is long. Texts are printed, worded and set as in pages(). Fails with kTooMany
// where one text is higher than a card, with kFileUnreadable where the font is not installed.
[[nodiscard]] base::Result<std::vector<Page>> card_pages(const Card& card, const PaperOptions& options = {});

// The bytes of a PDF without a date. Fails as card_pages() does.
[[nodiscard]] base::Result<std::string> render_card(const Card& card, const PaperOptions& options = {});

}  // namespace sparewright::sheets
