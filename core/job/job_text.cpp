// Reading a job text as a whole.
#include <algorithm>

#include <fmt/format.h>

#include "core/job/job.hpp"
#include "core/job/old_part_text.hpp"
#include "core/job/original_text.hpp"
#include "core/job/overrule_text.hpp"
#include "core/job/part_text.hpp"
#include "core/job/pattern_text.hpp"
#include "core/job/route_text.hpp"
#include "core/job/seat_text.hpp"
#include "core/job/shapes.hpp"
#include "core/job/space_text.hpp"
#include "core/job/vocabulary.hpp"
#include "core/text/validate.hpp"

namespace sparewright::job {
namespace {

using text::TableReader;

Names names_for(const TableReader& in, const survey::Survey& survey) {
  Names names;
  for (const survey::Dimension& dimension : survey.dimensions) {
    names.dimensions.emplace(dimension.name, dimension.kind);
    names.dimension_names.push_back(dimension.name);
  }
  for (const survey::Instrument& instrument : survey.instruments)
    names.instruments.push_back(instrument.name);
  for (const TableReader& feature : in.tables("feature")) {
    const std::vector<std::string> made = names_made_by(feature);
    if (made.size() > 1) names.rows[feature.text("name").value_or("")] = made;
    names.features.insert(names.features.end(), made.begin(), made.end());
  }
  return names;
}

// Where the hand is said by what it was drawn from, that is said too.
std::string drawn_from_hand(const std::string& hand) {
  const bool by_picture = hand.find("photo") != std::string::npos || hand.find("sketch") != std::string::npos;
  return by_picture ? hand : "";
}

void read_head(const TableReader& in, Job& job) {
  job.title = in.text("title").value_or("");
  job.revision = in.text("revision").value_or("A");
  job.dialect = in.word("words", kDialects).value_or(base::Dialect::kAmerican);
  job.subject.hand = in.text("hand").value_or("");
  job.faces_you = in.word("faces_you", kFaces);
  job.both_units = in.truth("both_units").value_or(false);
  job.first_angle = in.word("projection", kProjections).value_or(false);
  job.subject.drawn_from = in.text("drawn_from").value_or(drawn_from_hand(job.subject.hand));
  job.subject.side_seen = in.word("side_seen", kFaces);
  job.subject.turn_over = in.truth("turn_over");
  job.subject.least_wall = in.number("least_wall", quantity::Kind::kLength);
  job.subject.route.part.surroundings.general = read_general_tolerances(in, job.system);
}

// What is made is made of something.
void expect_no_part(const TableReader& in) {
  for (const char* key : {"feature", "seat", "setup", "space"}) {
    const auto node = in.node().find(key);
    if (!node) continue;
    in.problems().add(text::failure_at(*node, base::Code::kKeyMissing, "blank",
                                       "[blank], the stock it is made of; a job that only measures has none "
                                       "of feature, seat, setup, space"));
    return;
  }
}

}  // namespace

base::ResultOrAll<Job> read_job(const text::Document& document, const ShopText& shop) {
  text::Problems problems;
  problems.add(text::validate(document, job_shape()));
  if (!problems.empty()) return tl::unexpected(problems.sorted());
  const auto units = TableReader(*document.root().find("job"), std::nullopt, problems).word("units", kUnits);
  const TableReader in(document.root(), units, problems);
  Job job;
  job.system = units.value_or(quantity::UnitSystem::kInch);
  read_head(*in.table("job"), job);
  job.survey = read_survey(in, shop);
  job.shop_has_lathe =
      std::any_of(shop.shop.machines.begin(), shop.shop.machines.end(), [](const shop::Machine& machine) {
        return machine.kind == shop::MachineKind::kLathe && machine.out_of_use.empty();
      });
  const Names names = names_for(in, job.survey);
  job.subject.space = read_space(in);

  route::Route& route = job.subject.route;
  route.system = job.system;
  route.on_hand = shop.shop.stock;
  route.part.surroundings.system = job.system;
  const auto blank = in.table("blank");
  job.has_part = blank.has_value();
  if (blank) {
    const MaterialText material = read_material(*blank);
    job.material_assumed = material.assumed;
    if (material.material) route.work = handbook::work_of(*material.material);
    route.part.blank = read_blank(*blank, material, names);
  } else {
    expect_no_part(in);
  }
  route.part.features = read_features(in, route.part.blank.shape, names);
  job.subject.seats = read_seats(in, route.part);
  for (const std::string& name : names.dimension_names) {
    route.part.surroundings.dimension_figures[name] = intent::measured_path(name);
  }
  job.subject.originals = read_originals(in, job.survey);
  for (const intent::Original& original : job.subject.originals.all) {
    if (original.accepted)
      route.part.surroundings.accepted_figures[original.name] = intent::accepted_path(original.name);
  }
  job.overruled = read_overruled(in);
  route.plan = read_plan(in, shop.shop, names);
  return problems.unless_any(std::move(job));
}

base::Result<std::string> shop_name_of(const text::Document& document) {
  const auto job = document.root().find("job");
  const auto shop = job && job->type() == text::Type::kTable ? job->find("shop") : std::nullopt;
  return shop ? std::string(shop->typed()) : std::string();
}

}  // namespace sparewright::job
