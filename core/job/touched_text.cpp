#include "core/job/touched_text.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include <fmt/format.h>

#include "core/job/vocabulary.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::job {
namespace {

using quantity::Kind;
using survey::HoleLayout;
using survey::TipSide;
using survey::Told;
using survey::TouchedForm;
using text::field;
using text::Field;
using text::free_text;
using text::list_of;
using text::measure;
using text::TableReader;
using text::word_of;

constexpr std::array kForms{Meaning{"circle", TouchedForm::kCircle, "a hole, a boss, or an arc of one"},
                            Meaning{"line", TouchedForm::kLine, "a face touched along x or y"},
                            Meaning{"plane", TouchedForm::kPlane, "a face touched all over"}};
constexpr std::array kSides{
    Meaning{"inside", TipSide::kInside, "in a hole"},
    Meaning{"outside", TipSide::kOutside, "round a boss"},
    Meaning{"left", TipSide::kLeft, "the tip to the left of a face, where x is smaller"},
    Meaning{"right", TipSide::kRight, ""},
    Meaning{"front", TipSide::kFront, "where y is smaller"},
    Meaning{"back", TipSide::kBack, ""},
    Meaning{"below", TipSide::kBelow, "where z is smaller"},
    Meaning{"above", TipSide::kAbove, ""}};
constexpr std::array kLayouts{Meaning{"circle", HoleLayout::kCircle, "a bolt circle"},
                              Meaning{"row", HoleLayout::kRow, "in a line, equally spaced"}};

constexpr std::array kOfForms{Told::kX,    Told::kY,     Told::kDiameter, Told::kRadius, Told::kAt,
                              Told::kLean, Told::kLeanX, Told::kLeanY,    Told::kLeanZ};
constexpr std::array kOfBetween{Told::kDistance, Told::kAngle};
constexpr std::array kOfPatterns{Told::kX,     Told::kY,     Told::kDiameter,
                                 Told::kStart, Told::kPitch, Told::kAngle};

// One key for each result: the dimension that gets it.
template <std::size_t count>
std::vector<Field> with_results(std::vector<Field> fields, const std::array<Told, count>& told) {
  for (const Told one : told) {
    const survey::ToldRow& row = survey::row_of(one);
    fields.push_back(field(std::string(row.key), free_text("a dimension")).says(std::string(row.says)));
  }
  return fields;
}

template <std::size_t count>
std::vector<survey::Gives> read_gives(const TableReader& in, const std::array<Told, count>& told) {
  std::vector<survey::Gives> gives;
  for (const Told one : told) {
    if (const auto dimension = in.text(survey::row_of(one).key)) gives.push_back({one, *dimension});
  }
  return gives;
}

base::Result<std::vector<quantity::Typed>> read_touch(const text::Node& node, text::System system) {
  std::vector<quantity::Typed> touch;
  for (const text::Node& item : node) {
    auto number = text::read_number(item, Kind::kLength, system);
    if (!number) return tl::unexpected(std::move(number.error()));
    touch.push_back(std::move(*number));
  }
  return touch;
}

survey::Tip read_tip(const TableReader& in, const std::vector<shop::Tool>& tools,
                     quantity::UnitSystem system) {
  survey::Tip tip;
  tip.diameter.kind = Kind::kDiameter;
  tip.within = in.number("tip_good_to", Kind::kLength);
  const std::string typed = in.typed("tip").value_or("");
  const auto tool = std::find_if(tools.begin(), tools.end(), [&](const shop::Tool& one) {
    return one.name == typed && one.kind == shop::ToolKind::kEdgeFinder && one.diameter;
  });
  if (tool != tools.end()) {
    tip.name = tool->name;
    tip.diameter = *tool->diameter;
    tip.finds = tool->good_to;
  } else if (const auto size = in.number("tip", Kind::kDiameter)) {
    tip.diameter = *size;
    tip.name =
        quantity::shown(size->base, Kind::kDiameter, system, quantity::usual_places(Kind::kDiameter, system));
  }
  return tip;
}

survey::Touched read_form(const TableReader& in, const std::vector<shop::Tool>& tools,
                          quantity::UnitSystem system, std::size_t number) {
  survey::Touched touched;
  touched.name = in.text("name").value_or(fmt::format("touched {}", number));
  touched.form = in.word("form", kForms).value_or(TouchedForm::kCircle);
  touched.instrument = in.text("with").value_or("");
  touched.tip = read_tip(in, tools, system);
  touched.side = in.word("side", kSides).value_or(TipSide::kInside);
  touched.touches =
      in.values("touches", [&](const text::Node& node) { return read_touch(node, in.system()); });
  touched.gives = read_gives(in, kOfForms);
  touched.place = in.text("place").value_or("");
  touched.condition = in.word("condition", kConditions).value_or(survey::Condition::kSound);
  return touched;
}

survey::Between read_between(const TableReader& in) {
  survey::Between between;
  const std::vector<std::string> of = in.texts("of");
  if (of.size() == 2) {
    between.first = of[0];
    between.second = of[1];
  }
  between.name = in.text("name").value_or(fmt::format("{} to {}", between.first, between.second));
  between.gives = read_gives(in, kOfBetween);
  return between;
}

survey::HolePattern read_pattern(const TableReader& in, std::size_t number) {
  survey::HolePattern pattern;
  pattern.name = in.text("name").value_or(fmt::format("pattern {}", number));
  pattern.layout = in.word("layout", kLayouts).value_or(HoleLayout::kCircle);
  pattern.of = in.texts("of");
  pattern.gives = read_gives(in, kOfPatterns);
  return pattern;
}

}  // namespace

text::Shape touched_shape() {
  return text::table(with_results(
      {field("name", free_text()).says("what the trail calls it; touched 1, 2, ... where left out"),
       field("form", word_of(kForms)).required().says("what the touches lie on"),
       field("with", free_text("an instrument"))
           .required()
           .says("the readout, or the collars as an instrument of the shop: what each touch was read off"),
       field("tip", measure("a diameter, or an edge finder of the shop"))
           .required()
           .says("what touched; 0 where the numbers are of the surface itself"),
       field("tip_good_to", measure(Kind::kLength))
           .says("how far its diameter may be out, either way: shared by all touches with it"),
       field("side", word_of(kSides)).required().says("where the tip stood"),
       field("touches",
             list_of(list_of(measure("a coordinate of the tip's middle")).at_least(2).at_most(3)).at_least(2))
           .required()
           .says("x, y of each touch, of a plane x, y, z: [[\"1.100\", \"0\"], [\"0\", \"1.100\"]]"),
       field("place", free_text()).says("where on the part"),
       field("condition", word_of(kConditions))
           .says("sound where left out; of a worn place the size is a bound, the middle and the lean are not "
                 "used")},
      kOfForms));
}

text::Shape between_shape() {
  return text::table(with_results(
      {field("name", free_text()).says("left hole to right hole, where left out"),
       field("of", list_of(free_text("a touched form")).at_least(2).at_most(2)).required().says("from, to")},
      kOfBetween));
}

text::Shape hole_pattern_shape() {
  return text::table(with_results({field("name", free_text()).says("pattern 1, 2, ... where left out"),
                                   field("layout", word_of(kLayouts)).says("circle where left out"),
                                   field("of", list_of(free_text("a touched circle")).at_least(3))
                                       .required()
                                       .says("the holes, the first first")},
                                  kOfPatterns));
}

void read_touched(const TableReader& job, const std::vector<shop::Tool>& tools, survey::Survey& survey) {
  for (const TableReader& in : job.tables("touched"))
    survey.touched.push_back(read_form(in, tools, survey.system, survey.touched.size() + 1));
  for (const TableReader& in : job.tables("between"))
    survey.between.push_back(read_between(in));
  for (const TableReader& in : job.tables("hole_pattern"))
    survey.patterns.push_back(read_pattern(in, survey.patterns.size() + 1));
}

std::vector<survey::Gives> given_by(const survey::Survey& survey) {
  std::vector<survey::Gives> all;
  const auto add = [&](const std::vector<survey::Gives>& gives) {
    all.insert(all.end(), gives.begin(), gives.end());
  };
  for (const survey::Touched& touched : survey.touched)
    add(touched.gives);
  for (const survey::Between& between : survey.between)
    add(between.gives);
  for (const survey::HolePattern& pattern : survey.patterns)
    add(pattern.gives);
  return all;
}

}  // namespace sparewright::job
