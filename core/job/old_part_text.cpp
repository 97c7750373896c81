#include "core/job/old_part_text.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/formula/expression.hpp"
#include "core/job/instrument_text.hpp"
#include "core/job/touched_text.hpp"
#include "core/job/vocabulary.hpp"
#include "core/survey/check.hpp"
#include "core/survey/known.hpp"

namespace sparewright::job {
namespace {

using quantity::Kind;
using text::TableReader;

survey::Reading read_reading(const TableReader& in, std::size_t number) {
  survey::Reading reading;
  reading.name = in.text("name").value_or(fmt::format("reading {}", number));
  reading.way = in.word("what", kWays).value_or(survey::Way::kOutside);
  reading.of = in.texts("of");
  reading.is = in.typed("is").value_or("");
  reading.instrument = in.text("with").value_or("");
  reading.jaws = in.word("jaws", kJaws);
  reading.repeats = in.numbers("got", survey::row_of(reading.way).repeats);
  reading.transfer = in.number("transfer", Kind::kLength);
  reading.trial = in.word("tried", kTrials);
  if (const auto count = in.whole("count"))
    reading.count = static_cast<int>(std::clamp<std::int64_t>(*count, 0, 100000));
  if (const auto spanned = in.whole("spanned"))
    reading.spanned = static_cast<int>(std::clamp<std::int64_t>(*spanned, 0, 100000));
  reading.place = in.text("place").value_or("");
  reading.condition = in.word("condition", kConditions).value_or(survey::Condition::kSound);
  reading.work = read_expansion(in, "material");
  reading.work_at = read_warmth(in);
  if (reading.work_at && !in.node().find("material"))
    in.problems().add(text::failure_at(*in.node().find("temperature"), base::Code::kKeyMissing, "material",
                                       "what was measured is of: steel 1018, 6061, cast iron"));
  return reading;
}

// Its kind is that of its equation, so the dimensions have to be there before.
survey::Known read_known(const TableReader& in, std::size_t number, const survey::Survey& survey) {
  survey::Known known;
  known.name = in.text("name").value_or(fmt::format("known {}", number));
  known.is = in.typed("is").value_or("");
  known.why = in.text("why").value_or("");
  const auto equation = survey::equation_of(known, survey.dimensions, survey.system);
  const Kind kind = equation ? equation->kind() : Kind::kLength;
  known.within = in.number("within", kind == Kind::kRadius ? Kind::kLength : kind);
  return known;
}

// What the way of measuring says of the dimension at a place in `of`.
Kind usual_kind(survey::Way way, std::size_t place) {
  const survey::WayRow& row = survey::row_of(way);
  return place < row.names ? row.kinds.at(place) : Kind::kLength;
}

class Dimensions {
 public:
  explicit Dimensions(const TableReader& in) {
    const auto table = in.table("dimension");
    if (!table) return;
    for (const text::Node& node : table->node()) {
      if (const auto kind = table->word(node.key(), kKinds)) {
        all_.push_back({std::string(node.key()), *kind});
        said_.emplace_back(node.key());
      }
    }
  }

  // A diameter said by one reading outranks the plain length of another.
  void meet(const std::string& name, Kind kind) {
    const auto known = std::find_if(all_.begin(), all_.end(), [&](const auto& d) { return d.name == name; });
    if (known == all_.end()) {
      all_.push_back({name, kind});
    } else if (kind != Kind::kLength && std::find(said_.begin(), said_.end(), name) == said_.end()) {
      known->kind = kind;
    }
  }

  [[nodiscard]] std::vector<survey::Dimension> all() const { return all_; }

 private:
  std::vector<survey::Dimension> all_;
  std::vector<std::string> said_;
};

std::string key_of(const std::string& field) {
  if (field == "instrument") return "with";
  if (field == "repeats") return "got";
  if (field == "way") return "what";
  if (field == "trial") return "tried";
  return field;
}

// The list of the text that a trouble is about.
std::string_view list_of(survey::Trouble::In in) {
  using In = survey::Trouble::In;
  switch (in) {
    case In::kDimension:
      return "dimension";
    case In::kTouched:
      return "touched";
    case In::kBetween:
      return "between";
    case In::kPattern:
      return "hole_pattern";
    case In::kKnown:
      return "known";
    default:
      return "reading";
  }
}

// The trouble at the value it is about, in the list the text has.
base::Failure placed(const survey::Trouble& trouble, const TableReader& in) {
  const std::string_view list = list_of(trouble.in);
  if (trouble.in != survey::Trouble::In::kDimension && trouble.in != survey::Trouble::In::kSurvey) {
    const auto tables = in.tables(list);
    if (trouble.index < tables.size()) {
      const text::Node& table = tables[trouble.index].node();
      const auto value = table.find(key_of(trouble.field));
      return text::located(trouble.failure, value ? *value : table);
    }
  }
  if (const auto node = in.node().find(list)) return text::located(trouble.failure, *node);
  return trouble.failure;
}

}  // namespace

survey::Survey read_survey(const TableReader& in, const ShopText& shop) {
  survey::Survey survey;
  survey.instruments = shop.instruments;
  survey.system = in.system().value_or(quantity::UnitSystem::kInch);
  const auto tables = in.tables("reading");
  Dimensions dimensions(in);
  for (const TableReader& table : tables) {
    survey.readings.push_back(read_reading(table, survey.readings.size() + 1));
    const survey::Reading& reading = survey.readings.back();
    for (std::size_t i = 0; i < reading.of.size(); ++i)
      dimensions.meet(reading.of[i], usual_kind(reading.way, i));
    if (reading.way != survey::Way::kExpression) continue;
    if (const auto expression = formula::Expression::read(reading.is)) {
      for (const std::string& name : expression->names())
        dimensions.meet(name, Kind::kLength);
    }
  }
  read_touched(in, shop.shop.tools, survey);
  for (const survey::Gives& given : given_by(survey))
    dimensions.meet(given.dimension, survey::row_of(given.told).kind);
  survey.dimensions = dimensions.all();
  const auto known = in.tables("known");
  for (const TableReader& table : known)
    survey.known.push_back(read_known(table, survey.known.size() + 1, survey));
  if (survey.readings.empty() && survey.touched.empty() && survey.known.empty()) return survey;
  for (const survey::Trouble& trouble : survey::troubles(survey)) {
    if (trouble.in == survey::Trouble::In::kInstrument) continue;  // told when the shop was read
    in.problems().add(placed(trouble, in));
  }
  return survey;
}

}  // namespace sparewright::job
