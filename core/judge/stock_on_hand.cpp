// The blank against the stock that lies in the shop, where the shop's text lists any.
#include <fmt/format.h>

#include "core/judge/checks.hpp"
#include "core/route/on_hand.hpp"
#include "core/route/stock.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;

constexpr const char* kSource = "the shop's list of stock";

std::string to_buy(const Subject& subject) {
  const part::Blank& blank = subject.route.part.blank;
  return fmt::format("buy it: {}, {}, and what the saw takes", blank.material,
                     route::blank_words(blank, route::Printing(subject.route.system)));
}

void judge_stock(Pen& pen, const Subject& subject) {
  const auto there = route::on_hand(subject.route.part.blank, subject.route.on_hand);
  if (!there) {
    pen.state({.check = "stock on hand",
               .subject = "blank",
               .state = ledger::State::kNo,
               .reason = "there is none of that material and section",
               .source = kSource,
               .todo = to_buy(subject),
               .missing = {}});
    return;
  }
  const route::Printing print(subject.route.system);
  const Figure& spare = limit(pen, "to spare", there->to_spare_mm, Origin::kChoice,
                              fmt::format("{}, as the shop lists it, less the blank", there->piece->name));
  pen.judge({.check = "stock on hand",
             .subject = "blank",
             .figure = &spare,
             .low = &limit(pen, "nothing to spare", 0.0, Origin::kChoice, "as long as the blank"),
             .reason = spare.value < 0.0
                           ? fmt::format("{} is {} too short", there->piece->name, print.plain(-spare.value))
                           : fmt::format("{} has {} to spare, the saw's cut in it", there->piece->name,
                                         print.plain(spare.value)),
             .source = kSource,
             .todo = to_buy(subject)});
}

}  // namespace

void add_stock_on_hand_checks(const Shared& subject, Stages& stages) {
  const route::Route& route = subject->route;
  const part::Blank& blank = route.part.blank;
  if (route.on_hand.empty() || blank.shape == part::BlankShape::kCasting || route::is_in_hand(blank)) return;
  stages.push_back(
      check_stage(subject, "stock on hand", "blank", [subject](Pen& pen) { judge_stock(pen, *subject); }));
}

}  // namespace sparewright::judge
