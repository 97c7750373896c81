// A job: the old part as measured, the new part, the order of work. Read from texts; turned into stages.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/base/words.hpp"
#include "core/judge/judge.hpp"
#include "core/ledger/ledger.hpp"
#include "core/shop/shop.hpp"
#include "core/survey/reading.hpp"
#include "core/text/document.hpp"

namespace sparewright::job {

// The shop as its text gives it.
struct ShopText {
  shop::Shop shop;
  std::vector<survey::Instrument> instruments;
};

struct Job {
  std::string title;
  std::string revision = "A";
  quantity::UnitSystem system = quantity::UnitSystem::kInch;
  base::Dialect dialect = base::Dialect::kAmerican;
  std::optional<part::Face> faces_you;  // the side that faces the viewer when it is in its place
  bool both_units = false;              // on the drawing
  bool first_angle = false;             // how the views of the drawing stand
  std::string material_assumed;         // what had to be assumed to find the material; may be empty
  bool has_part = true;                 // false: no blank is said, and the old part is only being measured
  survey::Survey survey;
  judge::Subject subject;  // the route, and in it the part; hand, room, limits and original sizes
  std::map<std::string, std::string> overruled;  // query by its id -> the reason
  bool shop_has_lathe = false;                   // one that can be used
};

// Every failure of a text is told at once, each with its place.
[[nodiscard]] base::ResultOrAll<ShopText> read_shop(const text::Document& document);

// The job's shop text must have been read before; what the job names must be in it.
[[nodiscard]] base::ResultOrAll<Job> read_job(const text::Document& document, const ShopText& shop);

// The name of the shop text that the job asks for; empty where it names none. Fails as the job text's syntax does.
[[nodiscard]] base::Result<std::string> shop_name_of(const text::Document& document);

// All stages of the job: measuring up, part, order of work, checks.
[[nodiscard]] base::ResultOrAll<std::vector<ledger::Stage>> stages(const Job& job);

// The queries of a job: those the job overrules have their reason and are closed; the open ones first, of those the
// serious ones. An overruling that meets no query is asked about, so that a slip in a name does not pass for one.
[[nodiscard]] std::vector<ledger::Query> queries(const Job& job, std::vector<ledger::Query> all);

}  // namespace sparewright::job
