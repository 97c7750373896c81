#include "core/survey/touched_check.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include <fmt/format.h>

#include "core/base/nearest.hpp"
#include "core/survey/between.hpp"
#include "core/survey/orthogonal_fit.hpp"
#include "core/survey/pattern_work.hpp"
#include "core/survey/told_formula.hpp"
#include "core/survey/touched_stages.hpp"
#include "core/survey/trouble_with.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using base::Failure;
using In = Trouble::In;

template <typename Named>
std::vector<std::string> names_of(const std::vector<Named>& list) {
  std::vector<std::string> names;
  for (const Named& one : list)
    names.push_back(one.name);
  return names;
}

class TouchedChecker {
 public:
  explicit TouchedChecker(const Survey& survey) : survey_(survey), forms_(names_of(survey.touched)) {}

  std::vector<Trouble> run() {
    add_name_troubles(troubles_, survey_.touched, In::kTouched, "touched form");
    for (std::size_t i = 0; i < survey_.touched.size(); ++i)
      check_touched(i);
    add_name_troubles(troubles_, survey_.between, In::kBetween, "between");
    for (std::size_t i = 0; i < survey_.between.size(); ++i)
      check_between(i);
    add_name_troubles(troubles_, survey_.patterns, In::kPattern, "hole pattern");
    for (std::size_t i = 0; i < survey_.patterns.size(); ++i)
      check_pattern(i);
    return std::move(troubles_);
  }

 private:
  void add(In in, std::size_t index, std::string_view field, Failure f) {
    troubles_.push_back({in, index, std::string(field), std::move(f)});
  }

  void check_touched(std::size_t i) {
    check_instrument(i);
    check_tip(i);
    const Touched& touched = survey_.touched[i];
    const bool circle = touched.form == TouchedForm::kCircle;
    const bool line = touched.form == TouchedForm::kLine;
    const bool suits = is_round(touched.side) == circle && !(line && axis_of(touched.side) == 2);
    if (!suits) {
      add(In::kTouched, i, "side",
          failure_of(Code::kValueNotAccepted, name_of(touched.side),
                     circle ? "inside, outside"
                     : line ? "left, right, front, back"
                            : "left, right, front, back, below, above",
                     "side"));
      return;
    }
    check_touches(i);
    check_gives(In::kTouched, i, touched.name, told_of(touched), touched.gives);
  }

  void check_touches(std::size_t i) {
    const Touched& touched = survey_.touched[i];
    const std::size_t axes = touched.form == TouchedForm::kPlane ? 3 : 2;
    for (const auto& touch : touched.touches) {
      if (touch.size() == axes) continue;
      add(In::kTouched, i, "touches",
          failure_of(Code::kValueNotAccepted, fmt::format("{} numbers", touch.size()),
                     axes == 2 ? "x and y of each touch" : "x, y and z of each touch", "touches"));
      return;
    }
    const std::size_t least = touched.form == TouchedForm::kLine ? 2 : 3;
    if (touched.touches.size() < least) {
      add(In::kTouched, i, "touches",
          failure_of(Code::kReadingsTooFew, "", fmt::format("{} touches or more", least),
                     fmt::format("'{}'", touched.name)));
    } else if (touched.touches.size() > kMostTouches) {
      add(In::kTouched, i, "touches",
          failure_of(Code::kTooMany, fmt::format("{} touches", touched.touches.size()),
                     fmt::format("at most {}", kMostTouches), touched.name));
    }
  }

  void check_instrument(std::size_t i) {
    const std::string& name = survey_.touched[i].instrument;
    const auto found = std::find_if(survey_.instruments.begin(), survey_.instruments.end(),
                                    [&](const Instrument& each) { return each.name == name; });
    if (found == survey_.instruments.end()) {
      add(In::kTouched, i, "instrument",
          failure_of(Code::kNotInTheShop, name, base::known_words(name, names_of(survey_.instruments)),
                     "instrument"));
    } else if (!quantity::is_length_like(found->good_to.kind) ||
               !quantity::is_length_like(found->reads.kind)) {
      add(In::kTouched, i, "instrument",
          failure_of(Code::kUnitOfAnotherKind, name, "a readout of lengths", "a length"));
    }
  }

  void check_tip(std::size_t i) {
    const Tip& tip = survey_.touched[i].tip;
    if (tip.name.empty() || tip.name.find('/') != std::string::npos)
      add(In::kTouched, i, "tip", failure_of(Code::kValueNotAccepted, tip.name, "a name without '/'", "tip"));
    if (tip.diameter.base < 0.0)
      add(In::kTouched, i, "tip",
          failure_of(Code::kSizeNotPositive, tip.diameter.typed, "0 or more", "the tip"));
    if (tip.within && tip.within->base < 0.0)
      add(In::kTouched, i, "tip_good_to",
          failure_of(Code::kValueNotAccepted, tip.within->typed, "0 or more", "tip_good_to"));
    const auto [known, is_new] = tips_.emplace(tip.name, &tip);
    const auto within = [](const Tip& one) { return one.within ? one.within->base : 0.0; };
    if (!is_new &&
        (known->second->diameter.base != tip.diameter.base || within(*known->second) != within(tip)))
      add(In::kTouched, i, "tip",
          failure_of(Code::kValueNotAccepted, tip.name,
                     "one diameter, and what it is good to, for all touches with it", "tip"));
  }

  void check_gives(In in, std::size_t i, const std::string& name, const std::vector<Told>& told,
                   const std::vector<Gives>& gives) {
    std::vector<std::string> keys;
    for (const Told one : told)
      keys.emplace_back(row_of(one).key);
    for (const Gives& given : gives) {
      const ToldRow& row = row_of(given.told);
      if (std::find(told.begin(), told.end(), given.told) == told.end()) {
        add(in, i, row.key,
            failure_of(Code::kValueNotAccepted, given.dimension,
                       keys.empty() ? "two forms that tell of one another"
                                    : fmt::format("{}", fmt::join(keys, ", ")),
                       row.key));
        continue;
      }
      const ToldReading reading{fmt::format("{} {}", name, row.figure), "", given.dimension, row.kind};
      const bool twice = std::any_of(survey_.readings.begin(), survey_.readings.end(),
                                     [&](const Reading& other) { return other.name == reading.name; });
      if (twice || !results_.insert(reading.name).second)
        add(in, i, "name", failure_of(Code::kNameTwice, reading.name, "another name", "reading"));
      const auto formula = told_formula(reading, survey_.dimensions, survey_.system);
      if (!formula) add(in, i, row.key, formula.error());
    }
  }

  // The form of that name; nothing, and told, where there is none.
  const Touched* form_of(In in, std::size_t i, const std::string& name) {
    for (const Touched& touched : survey_.touched) {
      if (touched.name == name) return &touched;
    }
    add(in, i, "of", failure_of(Code::kNotInTheJob, name, base::known_words(name, forms_), "touched form"));
    return nullptr;
  }

  // Whether dimensions get the middle of a touched circle.
  static bool gives_place(const Touched& touched) {
    const auto gives = [&](Told what) {
      return std::any_of(touched.gives.begin(), touched.gives.end(),
                         [&](const Gives& one) { return one.told == what; });
    };
    return gives(Told::kX) && gives(Told::kY);
  }

  void check_between(std::size_t i) {
    const Between& between = survey_.between[i];
    const Touched* first = form_of(In::kBetween, i, between.first);
    const Touched* second = form_of(In::kBetween, i, between.second);
    if (first == nullptr || second == nullptr) return;
    if (first == second) {
      add(In::kBetween, i, "of",
          failure_of(Code::kNameTwice, between.first, "two touched forms", "touched form"));
      return;
    }
    if (gives_place(*first) && gives_place(*second) && !between.gives.empty()) {
      add(In::kBetween, i, "distance",
          failure_of(Code::kValueNotAccepted, between.gives.front().dimension,
                     "either x and y of both or what lies between them: the one follows from the other",
                     "distance"));
      return;
    }
    const std::vector<Told> told =
        told_between({first->name, first->form, first->side}, {second->name, second->form, second->side});
    if (told.empty())
      add(In::kBetween, i, "of",
          failure_of(Code::kValueNotAccepted,
                     fmt::format("a {} and a {}", name_of(first->form), name_of(second->form)),
                     "two circles, a circle and a line, two lines or two planes", "of"));
    if (!told.empty()) check_gives(In::kBetween, i, between.name, told, between.gives);
  }

  void check_pattern(std::size_t i) {
    const HolePattern& pattern = survey_.patterns[i];
    std::set<std::string_view> holes;
    for (const std::string& name : pattern.of) {
      const Touched* hole = form_of(In::kPattern, i, name);
      if (hole != nullptr && hole->form != TouchedForm::kCircle)
        add(In::kPattern, i, "of", failure_of(Code::kValueNotAccepted, name, "circles", "of"));
      if (!holes.insert(name).second)
        add(In::kPattern, i, "of", failure_of(Code::kNameTwice, name, "each hole once", "hole"));
    }
    if (holes.size() < 3)
      add(In::kPattern, i, "of",
          failure_of(Code::kReadingsTooFew, "", "three touched circles or more",
                     fmt::format("'{}'", pattern.name)));
    check_gives(In::kPattern, i, pattern.name, told_of(pattern.layout), pattern.gives);
  }

  const Survey& survey_;
  std::vector<std::string> forms_;
  std::map<std::string, const Tip*> tips_;
  std::set<std::string> results_;
  std::vector<Trouble> troubles_;
};

}  // namespace

std::vector<Trouble> touched_troubles(const Survey& survey) {
  return TouchedChecker(survey).run();
}

}  // namespace sparewright::survey
