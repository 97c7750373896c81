// What a stage writes with: it asks other stages, and writes figures, verdicts and values of its own.
//
//   void fit(Pen& pen) {
//     const Figure& bore = pen.need("feature/pivot bore/diameter");
//     const Figure& pin = pen.need("survey/pin");
//     const Figure& gap = pen.work("clearance", Kind::kLength, "bore less pin",
//                                  [](auto b, auto p) { return b - p; }, bore, pin);
//     pen.judge({.check = "fit with the mate", .subject = "pivot bore", .figure = &gap, .low = &least, ...});
//   }
//
// References handed out stay good until the stage returns. Local names are put behind the stage's own name:
// "clearance" in the stage "check/fit/pivot bore" is the figure "check/fit/pivot bore/clearance". Each is
// written once.
//
// A stage whose question would make it wait for itself ends at that question; it and the stages it would wait
// for are NOT KNOWN, and what is missing is the circle: "a -> b -> a".
#pragma once

#include <array>
#include <forward_list>
#include <initializer_list>
#include <limits>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <typeinfo>
#include <utility>
#include <vector>

#include "core/base/hash.hpp"
#include "core/formula/dual.hpp"
#include "core/ledger/figure.hpp"
#include "core/ledger/output.hpp"
#include "core/ledger/verdict.hpp"

namespace sparewright::ledger {

class Ledger;
struct Replacement;

// A root as a stage states it. value in the base unit of the kind; it is not known where there is no value,
// or where the value or one of the shares is not a finite number.
struct Root {
  quantity::Kind kind = quantity::Kind::kNumber;
  std::optional<double> value;
  Shares shares;  // in any order
  Bound bound = Bound::kExact;
  Origin origin = Origin::kReading;
  std::string typed;
  std::string source;
};

// A choice: a speed the machine has, a number of cuts. It has no slope; flips_after says how many standard
// uncertainties of what it was decided on would turn it.
struct Decision {
  quantity::Kind kind = quantity::Kind::kNumber;
  double value = 0.0;
  std::string words;
  std::vector<const Figure*> inputs;
  std::string source;
  std::optional<double> flips_after;
};

// One term of a figure whose slopes are handed in: least squares, typed formulas. What has no part in the
// figure is left out: a slope of 0 is that of an input which may count at another value (see scaled in
// figure.hpp).
struct Term {
  const Figure* figure = nullptr;
  double slope = 0.0;
};

// A figure and what it is held against; all three of one kind, or lengths of different kinds.
struct Judgement {
  std::string check;
  std::string subject;
  const Figure* figure = nullptr;
  const Figure* low = nullptr;  // at least one of low and high
  const Figure* high = nullptr;
  std::string reason;
  std::string source;
  std::string todo;               // dropped where the verdict is OK
  std::string margin = "margin";  // local name of the figure that holds the margin
  bool close_at_best = false;     // the check itself says that OK is too much
};

class Pen {
 public:
  Pen(const Pen&) = delete;
  Pen& operator=(const Pen&) = delete;

  // A figure of any stage, by its whole name; NOT KNOWN where there is none of that name.
  const Figure& ask(base::Name name);

  // The same; where it is not known, the stage ends here, and whatever it has not written is not known
  // either.
  const Figure& need(base::Name name);

  // A value of any type that another stage has published; none where there is none of that name and type.
  template <typename Value>
  const Value* value(std::string_view name) {
    return static_cast<const Value*>(ask_value(name, typeid(Value)));
  }
  // The same; where there is none, the stage ends here, missing what kept the other stage from publishing it.
  template <typename Value>
  const Value& need_value(std::string_view name) {
    return *static_cast<const Value*>(need_published(name, typeid(Value)));
  }

  // The names of the figures another stage has written, in order; none where there is no such stage. What a
  // stage that ended early has not written is not among them.
  std::vector<std::string> names(std::string_view stage);

  // Writes a root. A replacement set for its name in the ledger takes its place.
  const Figure& root(std::string_view local, Root root);

  // Works out a figure by a formula that is generic in its scalar: value, slopes and shares at once. The
  // scalars are in base units. The formula is not run where an input is not known.
  //
  // A bounded input is taken to be one in which the formula goes on in the direction it has at the value.
  template <typename Formula, typename... Figures>
  const Figure& work(std::string_view local, quantity::Kind kind, std::string_view words,
                     const Formula& formula, const Figures&... inputs) {
    constexpr std::size_t kWidth = sizeof...(Figures);
    const std::array<const Figure*, kWidth> list{&inputs...};
    const auto y = (inputs.known() && ...)
                       ? formula::with_slopes(formula, inputs.value...)
                       : formula::ValueAndSlopes<kWidth>{std::numeric_limits<double>::quiet_NaN(), {}};
    std::array<Term, kWidth> terms;
    for (std::size_t i = 0; i < kWidth; ++i)
      terms[i] = {list[i], y.slopes[i]};
    return linear(local, kind, words, y.value, terms);
  }

  // Writes a figure whose value and slopes are handed in. Not known where an input is not, or where the value
  // or a slope is not a finite number (the figure then names itself as missing).
  const Figure& linear(std::string_view local, quantity::Kind kind, std::string_view words, double value,
                       std::span<const Term> terms, std::string_view source = {});

  // The same for a formula that does away with the bounds of what goes in: the middle of an "at least" and an "at
  // most"; a worn place, read for what it is itself. The figure is exact.
  const Figure& exact(std::string_view local, quantity::Kind kind, std::string_view words, double value,
                      std::span<const Term> terms, std::string_view source = {});

  const Figure& decide(std::string_view local, const Decision& decision);

  // Writes the margin and the verdict. With two limits the one with the worse verdict counts (NO, NOT KNOWN,
  // CLOSE, OK), of two equal ones the one with the smaller margin. A margin that is bounded can only decide
  // on its own side: one that is at least so much says OK or CLOSE but not NO. A margin of no more than a few
  // last bits of the two sizes is 0.
  State judge(const Judgement& judgement);

  // Writes a verdict that no margin decides: a tool that does not suit, a geometry that cannot be.
  void state(Verdict verdict);

  void query(Query query);

  // Publishes a value for other stages. print must differ where the value does.
  template <typename Value>
  void publish(std::string_view local, Value value, const base::Fingerprint& print) {
    publish_value(local, std::make_shared<const Value>(std::move(value)), typeid(Value), print);
  }

  [[nodiscard]] const std::string& stage() const { return stage_; }

 private:
  friend class Ledger;
  Pen(Ledger& ledger, Output& output, std::vector<Question>& questions, const std::string& stage)
      : ledger_(ledger), output_(output), questions_(questions), stage_(stage), path_(stage + "/") {}

  [[nodiscard]] base::Name full_name(std::string_view local);
  // The figure of that name, empty still.
  Figure& begin(std::string_view local);
  // What a figure of such terms holds; its name is known.
  static void work_out(Figure& figure, quantity::Kind kind, std::string_view words, double value,
                       std::span<const Term> terms);
  std::vector<std::string> missing_for(const Figure& margin, std::initializer_list<const Figure*> judged);
  Answer asked(Question::Of of, base::Name name);
  const Replacement* replacement_of(base::Name root);
  const void* ask_value(std::string_view name, const std::type_info& type);
  const void* need_published(std::string_view name, const std::type_info& type);
  void publish_value(std::string_view local, std::shared_ptr<const void> value, const std::type_info& type,
                     const base::Fingerprint& print);

  Ledger& ledger_;
  Output& output_;
  std::vector<Question>& questions_;
  const std::string& stage_;
  std::string path_;                   // the stage, a slash, and the local name last asked for
  std::forward_list<Figure> unknown_;  // stand-ins for figures that are not there
};

// How many standard uncertainties of the figure lie between it and the threshold; infinite where it is
// certain.
[[nodiscard]] double sigmas_to(const Figure& figure, double threshold);

}  // namespace sparewright::ledger
