#include "cli/json.hpp"

#include <nlohmann/json.hpp>

namespace sparewright::cli {
namespace {

using Json = nlohmann::ordered_json;

template <typename Value>
Json or_null(const std::optional<Value>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json json_of(const app::NumberRow& row) {
  Json choice = nullptr;
  if (row.origin == "choice" || row.origin == "default") {
    choice = Json{{"origin", row.origin}, {"flips_after", or_null(row.flips_after)}};
  }
  return Json{{"name", row.name},       {"kind", row.kind},     {"value", or_null(row.value)},
              {"unit", row.unit},       {"u", or_null(row.u)},  {"dof", or_null(row.dof)},
              {"bound", row.bound},     {"typed", row.typed},   {"state", row.state},
              {"missing", row.missing}, {"origin", row.origin}, {"formula", row.formula},
              {"inputs", row.inputs},   {"source", row.source}, {"choice", choice}};
}

Json json_of(const app::VerdictRow& row) {
  return Json{{"check", row.check},
              {"subject", row.subject},
              {"verdict", row.verdict},
              {"figure", row.figure},
              {"limit", Json{{"low", or_null(row.low)}, {"high", or_null(row.high)}}},
              {"margin", or_null(row.margin)},
              {"unit", row.unit},
              {"reason", row.reason},
              {"source", row.source},
              {"todo", row.todo},
              {"missing", row.missing}};
}

Json json_of(const app::QueryRow& row) {
  return Json{{"id", row.id},   {"about", row.about},     {"says", row.says},   {"happens", row.happens},
              {"do", row.todo}, {"serious", row.serious}, {"state", row.state}, {"reason", row.reason}};
}

Json json_of(const app::TrailRow& trail) {
  Json json = json_of(trail.number);
  json["shown_before"] = trail.shown_before;
  json["from"] = Json::array();
  for (const app::TrailRow& input : trail.inputs)
    json["from"].push_back(json_of(input));
  return json;
}

Json json_of(const app::DimensionRow& row) {
  return Json{{"of", row.of},
              {"dimension", row.name},
              {"number", row.nominal.name},
              {"from", row.from},
              {"to", row.to},
              {"links", row.links},
              {"duty", row.duty},
              {"with", row.instrument},
              {"nominal", or_null(row.nominal.value)},
              {"least", or_null(row.least.value)},
              {"most", or_null(row.most.value)},
              {"aim", row.aim ? or_null(row.aim->value) : Json(nullptr)},
              {"unit", row.nominal.unit},
              {"missing", row.nominal.missing}};
}

Json json_of(const app::CandidateRow& row) {
  return Json{{"name", row.name},
              {"number", row.size.name},
              {"size", or_null(row.size.value)},
              {"leaves_over", or_null(row.leaves_over.value)},
              {"chance", row.chance},
              {"odds", row.odds},
              {"may_be_it", row.may_be_it},
              {"reason", row.reason}};
}

Json json_of(const app::NearFitRow& row) {
  return Json{{"duty", row.duty},   {"standard", row.standard}, {"fit", row.fit}, {"name", row.name},
              {"least", row.least}, {"most", row.most},         {"out", row.out}, {"source", row.source}};
}

Json json_of(const app::SizeRow& row);
Json json_of(const app::PairRow& row);
Json json_of(const app::DoubtRow& row);
Json json_of(const app::FollowsRow& row);
Json json_of(const app::PartRow& row);
Json json_of(const app::TogetherRow& row);
Json json_of(const app::MeasuredRow& row);
Json json_of(const app::ReadingRow& row);
Json json_of(const app::GivesRow& row);
Json json_of(const app::TouchedRow& row);
Json json_of(const app::WithoutRow& row);
Json json_of(const app::DrawnRow& row);
Json json_of(const app::PlanRow& row);
Json json_of(const app::MetRow& row);

template <typename Row>
Json list_of(const std::vector<Row>& rows) {
  Json list = Json::array();
  for (const Row& row : rows)
    list.push_back(json_of(row));
  return list;
}

Json value_or_null(const std::optional<app::NumberRow>& row) {
  return row ? or_null(row->value) : Json(nullptr);
}

Json json_of(const app::SizeRow& row) {
  return Json{{"name", row.name},
              {"measured", or_null(row.measured.value)},
              {"u", or_null(row.measured.u)},
              {"bound", row.measured.bound},
              {"unit", row.measured.unit},
              {"missing", row.measured.missing},
              {"disputed", !row.without.empty()},
              {"without", list_of(row.without)},
              {"in_question", row.in_question},
              {"proposed", list_of(row.candidates)},
              {"none", row.none},
              {"settled", row.is_settled},
              {"decides", row.decides},
              {"accepted", value_or_null(row.accepted)},
              {"leaves_over", value_or_null(row.leaves_over)},
              {"least", value_or_null(row.least)},
              {"most", value_or_null(row.most)},
              {"duty", row.duty},
              {"mate_of", row.mate_of}};
}

Json json_of(const app::PairRow& row) {
  return Json{{"hole", row.hole},
              {"shaft", row.shaft},
              {"both_measured", row.is_measured},
              {"clearance", value_or_null(row.clearance)},
              {"least", or_null(row.least.value)},
              {"most", or_null(row.most.value)},
              {"unit", row.unit},
              {"near", list_of(row.near)},
              {"made_to", row.made_to}};
}

Json json_of(const app::DoubtRow& row) {
  return Json{{"cause", row.cause}, {"part", row.part}};
}

Json json_of(const app::FollowsRow& row) {
  return Json{{"reading", row.reading}, {"by", row.by}};
}

Json json_of(const app::PartRow& row) {
  return Json{{"reading", row.reading}, {"part", row.part}};
}

Json json_of(const app::TogetherRow& row) {
  return Json{{"name", row.name}, {"correlation", row.correlation}};
}

Json json_of(const app::MeasuredRow& row) {
  return Json{{"name", row.name},
              {"value", or_null(row.size.value)},
              {"unit", row.size.unit},
              {"u", or_null(row.size.u)},
              {"expanded", or_null(row.expanded)},
              {"k", or_null(row.k)},
              {"dof", or_null(row.size.dof)},
              {"bound", row.size.bound},
              {"missing", row.size.missing},
              {"checked", row.is_checked},
              {"unchecked_readings", row.unchecked},
              {"doubt_from", list_of(row.doubts)},
              {"doubt_by_reading", list_of(row.by_reading)},
              {"follows", list_of(row.follows)},
              {"moves_with", list_of(row.together)},
              {"disputed", !row.without.empty()},
              {"without", list_of(row.without)},
              {"in_question", row.in_question},
              {"now", value_or_null(row.now)},
              {"wear", value_or_null(row.wear)}};
}

Json json_of(const app::ReadingRow& row) {
  return Json{{"name", row.name},
              {"what", row.way},
              {"of", row.of},
              {"is", row.is},
              {"with", row.instrument},
              {"place", row.place},
              {"typed", row.counts.typed},
              {"counts_as", or_null(row.counts.value)},
              {"u", or_null(row.counts.u)},
              {"unit", row.counts.unit},
              {"use", row.use},
              {"differs", value_or_null(row.differs)},
              {"times_its_doubt", or_null(row.times_its_doubt)},
              {"redundancy", row.redundancy}};
}

Json json_of(const app::GivesRow& row) {
  return Json{{"what", row.what}, {"dimension", row.dimension}};
}

Json json_of(const app::TouchedRow& row) {
  return Json{{"name", row.name},
              {"form", row.form},
              {"side", row.side},
              {"touches", row.touches},
              {"with", row.instrument},
              {"tip", row.tip},
              {"place", row.place},
              {"use", row.use},
              {"gives", list_of(row.gives)},
              {"form_error", value_or_null(row.form_error)},
              {"furthest_off", value_or_null(row.furthest_off)},
              {"furthest", row.furthest_off ? row.furthest_off->formula : ""},
              {"unit", row.form_error ? row.form_error->unit : ""}};
}

Json json_of(const app::WithoutRow& row) {
  Json json = json_of(row.size);
  json["made_to"] = row.made_to ? json_of(*row.made_to) : Json(nullptr);
  return json;
}

Json json_of(const app::PlanRow& row) {
  return Json{{"what", row.what},
              {"of_new_part", row.of_new_part},
              {"needed_for", row.needed_for},
              {"verdict", row.verdict},
              {"says", row.says},
              {"with", row.with}};
}

Json json_of(const app::MetRow& row) {
  return Json{{"feature", row.feature}, {"mate", row.mate}, {"verdict", row.verdict},
              {"says", row.says},       {"do", row.todo},   {"missing", row.missing}};
}

Json json_of(const app::DrawnRow& row) {
  return Json{{"name", row.name}, {"mean", row.mean}, {"deviation", row.deviation}, {"low", row.low},
              {"high", row.high}, {"unit", row.unit}, {"holds", row.holds}};
}

// Names and titles come from users' texts, which are checked to be UTF-8; nothing else may stop the printing.
std::string dumped(const Json& json) {
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace

std::string as_json(const Printed& printed) {
  return dumped(Json{{"numbers", list_of(printed.numbers)},
                     {"verdicts", list_of(printed.verdicts)},
                     {"queries", list_of(printed.queries)}});
}

std::string as_json(const app::Measured& measured, const std::optional<app::Drawn>& drawn) {
  Json json{{"sizes", list_of(measured.sizes)},
            {"readings", list_of(measured.readings)},
            {"touched", list_of(measured.touched)},
            {"agreement", Json{{"spare_readings", measured.spare_readings},
                               {"total", or_null(measured.total)},
                               {"limit", or_null(measured.limit)}}},
            {"plan", list_of(measured.plan)},
            {"met", list_of(measured.met)},
            {"queries", list_of(measured.queries)}};
  if (drawn) {
    json["drawn"] =
        Json{{"draws", drawn->draws}, {"unsettled", drawn->unsettled}, {"sizes", list_of(drawn->sizes)}};
  }
  return dumped(json);
}

std::string as_json(const app::Sizes& sizes) {
  return dumped(Json{{"sizes", list_of(sizes.sizes)},
                     {"pairs", list_of(sizes.pairs)},
                     {"queries", list_of(sizes.queries)},
                     {"chance_of_inch", sizes.chance_of_inch},
                     {"machine", sizes.machine}});
}

std::string as_json(const std::vector<app::DimensionRow>& dimensions) {
  return dumped(Json{{"dimensions", list_of(dimensions)}});
}

std::string as_json(const app::TrailRow& trail) {
  return dumped(json_of(trail));
}

std::string as_json(const std::vector<app::OrderRow>& order) {
  Json setups = Json::array();
  for (const app::OrderRow& row : order) {
    setups.push_back(
        Json{{"op", row.op}, {"name", row.name}, {"machine", row.machine}, {"lines", row.lines}});
  }
  return dumped(Json{{"setups", setups}});
}

std::string as_json(const app::AnswerRow& answer) {
  Json tables = Json::array();
  for (const app::AnswerTable& table : answer.tables) {
    Json lines = Json::array();
    for (const app::AnswerLine& line : table.lines)
      lines.push_back(Json{{"what", line.what},
                           {"value", line.value},
                           {"numbers", line.numbers},
                           {"unit", line.unit},
                           {"note", line.note},
                           {"source", line.source}});
    tables.push_back(Json{{"heading", table.heading}, {"lines", lines}});
  }
  const Json json{{"asked", answer.asked},
                  {"answer", answer.says},
                  {"assumed", answer.assumed},
                  {"cautions", answer.cautions},
                  {"tables", tables}};
  return json.dump(2) + "\n";
}

std::string as_json(const std::vector<app::Trouble>& troubles) {
  Json list = Json::array();
  for (const app::Trouble& trouble : troubles) {
    list.push_back(Json{{"code", trouble.code},
                        {"says", trouble.says},
                        {"accepted", trouble.accepted},
                        {"file", trouble.file},
                        {"line", trouble.line},
                        {"column", trouble.column}});
  }
  return dumped(Json{{"troubles", list}});
}

}  // namespace sparewright::cli
