#include "app/session.hpp"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "app/card.hpp"
#include "app/measuring.hpp"
#include "app/measuring_sheets.hpp"
#include "app/offered_names.hpp"
#include "app/packet.hpp"
#include "app/printing.hpp"
#include "app/sizes.hpp"
#include "app/solid_file.hpp"
#include "core/base/nearest.hpp"
#include "core/job/job.hpp"
#include "core/part/dimension_tree.hpp"
#include "core/route/printing.hpp"
#include "core/text/limits.hpp"
#include "sheets/drawing_file.hpp"
#include "sheets/pdf.hpp"
#include "solid/shelf.hpp"

namespace sparewright::app {

// What the solids of an open job may take of memory, the work after every cut of theirs included.
constexpr std::size_t kSolidsBudget_bytes = std::size_t{256} * 1024 * 1024;

struct Session::Inside {
  job::Job job;
  ledger::Ledger ledger;

  // Kept from one question to the next; its worker starts with the first.
  solid::Shelf& solids() {
    if (!shelf_) shelf_ = std::make_unique<solid::Shelf>(kSolidsBudget_bytes);
    return *shelf_;
  }

 private:
  std::unique_ptr<solid::Shelf> shelf_;
};

namespace {

tl::unexpected<Troubles> failed(const base::Failure& failure) {
  return tl::unexpected<Troubles>(Troubles{trouble_of(failure)});
}
tl::unexpected<Troubles> failed(const base::Failures& failures) {
  return tl::unexpected<Troubles>(troubles_of(failures));
}

// What keeps a solid from being made is what keeps the part's volume from being known.
base::Failure no_recipe(const std::string& subject, const ledger::Figure& volume) {
  base::Failure failure;
  failure.code = base::Code::kKernel;
  failure.subject = subject;
  failure.found = volume.missing.empty() ? "its geometry cannot be" : "not known: " + volume.missing.front();
  failure.accepted = "see the checks";
  return failure;
}

sheets::Paper sheets_paper(Paper paper) {
  return paper == Paper::kA4 ? sheets::Paper::kA4 : sheets::Paper::kLetter;
}

// Why there is nothing to draw, to print or to make a solid of.
std::optional<base::Failure> no_part_in(const job::Job& job) {
  if (job.has_part) return std::nullopt;
  base::Failure failure;
  failure.code = base::Code::kKeyMissing;
  failure.subject = fmt::format("'{}'", job.title);
  failure.found = "blank";
  failure.accepted = "[blank] and what is made of it; `measure -o` prints the sheets for measuring";
  return failure;
}

// 1, 2, ...; nothing where it is a name.
std::optional<std::size_t> piece_number(const std::string& piece) {
  if (piece.empty() || piece.size() > 4 || piece.find_first_not_of("0123456789") != std::string::npos)
    return std::nullopt;
  return static_cast<std::size_t>(std::stoul(piece));
}

// A bush is the only piece that has a recipe of its own.
base::Result<std::string> bush_recipe(const part::Part& part, const std::string& name) {
  std::vector<std::string> known;
  for (const part::Feature& feature : part.features) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed == nullptr || formed->form != part::Form::kBush) continue;
    if (feature.name == name) return part::feature_path(name) + "/recipe";
    known.push_back(feature.name);
  }
  known.emplace_back("1, 2, ... for what a split leaves");
  return base::fail(base::Code::kNotInTheJob, name, base::known_words(name, known), "piece");
}

// Limits as the drawing and the sheets print them: never wider than they are.
void show_inwards(ledger::Ledger& ledger, const std::string& name, quantity::UnitSystem system,
                  DimensionRow& row) {
  const route::Printing print(system);
  const auto inwards = [&](const char* which, NumberRow& number) {
    const ledger::Figure figure = ledger.get(name + which);
    const bool is_length =
        quantity::dimension_of(figure.kind) == quantity::dimension_of(quantity::Kind::kLength);
    if (!figure.known() || !is_length) return;
    const bool is_least = std::string_view(which) == "/least";
    number.shown =
        fmt::format("{} {}", is_least ? print.least(figure.value, true) : print.most(figure.value, true),
                    print.unit_name());
  };
  inwards("/least", row.least);
  inwards("/most", row.most);
}

// "X" of "X READS".
std::string dial_of(const route::SetupSheet& sheet, std::size_t which) {
  std::string dial = sheet.dials.at(which);
  constexpr std::string_view kReads = " READS";
  if (dial.ends_with(kReads)) dial.resize(dial.size() - kReads.size());
  return dial;
}

std::vector<std::string> order_lines(const route::SetupSheet& sheet) {
  std::vector<std::string> lines;
  for (const route::Item& item : sheet.items) {
    if (const auto* line = std::get_if<route::Line>(&item)) {
      std::string text = fmt::format("{:2}  {}", line->number, line->says);
      for (const auto& [axis, reads] : {std::pair{dial_of(sheet, 0), line->x_reads},
                                        {dial_of(sheet, 1), line->y_reads},
                                        {dial_of(sheet, 2), line->z_reads}}) {
        if (!reads.empty()) text += fmt::format("  {} {}", axis, reads);
      }
      if (!line->rpm.empty()) text += fmt::format("  {} rpm", line->rpm);
      if (!line->feed.empty()) text += fmt::format("  {}", line->feed);
      if (!line->expect.empty()) text += fmt::format("  -> {}", line->expect);
      lines.push_back(std::move(text));
    } else if (const auto* stop = std::get_if<route::Stop>(&item)) {
      lines.push_back("    " + stop->says);
      for (const route::ProofReading& reading : stop->readings) {
        lines.push_back(fmt::format("        {} {}", reading.what, reading.expect));
      }
      lines.push_back("        " + stop->rule);
    } else {
      lines.push_back("    " + std::get<route::Note>(item).says);
    }
  }
  return lines;
}

}  // namespace

Session::Session(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Session::Session(Session&&) noexcept = default;
Session& Session::operator=(Session&&) noexcept = default;
Session::~Session() = default;

Outcome<Session> Session::open(Text job, Text shop) {
  const auto shop_document = text::Document::parse(std::move(shop.content), std::move(shop.name));
  const auto job_document = text::Document::parse(std::move(job.content), std::move(job.name));
  base::Failures failures;
  for (const auto& document : {shop_document, job_document}) {
    if (!document) failures.push_back(document.error());
  }
  if (!failures.empty()) return failed(failures);
  const auto shop_read = job::read_shop(*shop_document);
  if (!shop_read) return failed(shop_read.error());
  auto job_read = job::read_job(*job_document, *shop_read);
  if (!job_read) return failed(job_read.error());
  auto stages = job::stages(*job_read);
  if (!stages) return failed(stages.error());
  auto inside = std::make_unique<Inside>();
  inside->job = std::move(*job_read);
  inside->ledger.declare(std::move(*stages));
  return Session(std::move(inside));
}

std::string Session::title() const {
  return inside_->job.title;
}

std::vector<NumberRow> Session::numbers() {
  std::vector<NumberRow> rows;
  for (const ledger::Figure& figure : inside_->ledger.figures())
    rows.push_back(row_of(figure, inside_->job.system));
  return rows;
}

std::vector<DimensionRow> Session::dimensions() {
  std::vector<DimensionRow> rows;
  if (!inside_->job.has_part) return rows;
  const auto number = [&](const std::string& name) {
    return row_of(inside_->ledger.get(name), inside_->job.system);
  };
  for (const part::TreeDimension& d : part::dimension_tree(inside_->job.subject.route.part)) {
    DimensionRow row;
    row.of = d.of;
    row.name = d.name;
    row.from = d.from;
    row.to = d.to;
    row.links = d.links;
    row.nominal = number(d.figure);
    row.least = number(d.figure + "/least");
    row.most = number(d.figure + "/most");
    show_inwards(inside_->ledger, d.figure, inside_->job.system, row);
    if (d.dimension != nullptr) {
      row.duty = part::name_of(d.dimension->duty);
      row.instrument = d.dimension->instrument;
      if (part::has_aim(*d.dimension)) row.aim = number(d.figure + "/aim");
    }
    rows.push_back(std::move(row));
  }
  return rows;
}

Measured Session::measured() {
  return measured_of(inside_->job, inside_->ledger);
}

Outcome<Drawn> Session::drawn(std::size_t draws) {
  auto rows = drawn_of(inside_->job, inside_->ledger, draws);
  if (!rows) return failed(rows.error());
  return std::move(*rows);
}

Outcome<std::string> Session::measuring_pdf(Paper paper) {
  const auto packet = measuring_packet(inside_->job, inside_->ledger, measured());
  const auto pdf = sheets::render_measuring(packet, {sheets_paper(paper), inside_->job.dialect});
  if (!pdf) return failed(pdf.error());
  return *pdf;
}

Sizes Session::sizes() {
  return sizes_of(inside_->job, inside_->ledger);
}

std::vector<VerdictRow> Session::verdicts() {
  std::vector<VerdictRow> rows;
  const ledger::Snapshot figures = inside_->ledger.keep();
  for (const ledger::Verdict& verdict : figures.verdicts()) {
    rows.push_back(row_of(verdict, figures, inside_->job.system));
  }
  return rows;
}

std::vector<QueryRow> Session::queries() {
  std::vector<QueryRow> rows;
  for (const ledger::Query& query : job::queries(inside_->job, inside_->ledger.queries()))
    rows.push_back(row_of(query));
  return rows;
}

Outcome<TrailRow> Session::why(std::string_view name) {
  const ledger::Snapshot figures = inside_->ledger.keep();
  if (figures.find(name) == nullptr) {
    std::vector<std::string> known;
    for (const ledger::Figure* figure : figures.figures())
      known.push_back(figure->name);
    base::Failure failure;
    failure.code = base::Code::kNameUnknown;
    failure.subject = "number of this job";
    failure.found = name;
    failure.accepted = offered_names(name, known);
    return failed(failure);
  }
  return row_of(inside_->ledger.why(name), inside_->job.system);
}

Outcome<std::string> Session::card_pdf(std::string_view name, Paper paper) {
  const auto trail = why(name);
  if (!trail) return tl::unexpected(trail.error());
  sheets::Card card = card_of(*trail);
  card.title = inside_->job.title;
  card.revision = inside_->job.revision;
  const auto pdf = sheets::render_card(card, {sheets_paper(paper), inside_->job.dialect});
  if (!pdf) return failed(pdf.error());
  return *pdf;
}

std::vector<OrderRow> Session::order() {
  std::vector<OrderRow> rows;
  for (const route::Setup& setup : inside_->job.subject.route.plan.setups) {
    const auto sheet = inside_->ledger.value<route::SetupSheet>(route::sheet_path(setup));
    if (!sheet) continue;
    std::vector<std::string> lines = order_lines(*sheet);
    for (std::string& line : lines)
      line = base::worded(line, inside_->job.dialect);
    rows.push_back({setup.op, setup.name, setup.machine.name, std::move(lines)});
  }
  return rows;
}

Outcome<std::string> Session::sheets_pdf(Paper paper, std::optional<int> only) {
  if (const auto none = no_part_in(inside_->job)) return failed(*none);
  sheets::Packet packet = packet_of(inside_->job, inside_->ledger, inside_->solids());
  const sheets::PaperOptions options{sheets_paper(paper), inside_->job.dialect};
  if (only) {
    const auto path = route::recipe_path_after(inside_->job.subject.route.plan, *only);
    if (!path) return failed(path.error());
  }
  const auto pdf = sheets::render_pdf(packet, options, only);
  if (!pdf) return failed(pdf.error());
  return *pdf;
}

Outcome<std::vector<std::string>> Session::drawing_files(DrawingFile kind, Paper paper) {
  if (const auto none = no_part_in(inside_->job)) return failed(*none);
  const sheets::Packet packet = packet_of(inside_->job, inside_->ledger, inside_->solids());
  if (!packet.drawing) {
    base::Failure failure;
    failure.code = base::Code::kKernel;
    failure.subject = packet.title;
    failure.found = packet.no_drawing;
    failure.accepted = "see the checks";
    return failed(failure);
  }
  const auto files = sheets::render_drawing(packet, {sheets_paper(paper), inside_->job.dialect},
                                            kind == DrawingFile::kSvg   ? sheets::Picture::kSvg
                                            : kind == DrawingFile::kPng ? sheets::Picture::kPng
                                                                        : sheets::Picture::kJson);
  if (!files) return failed(files.error());
  return *files;
}

Outcome<std::string> Session::solid_file(SolidFile kind, const SolidAsked& asked) {
  if (const auto none = no_part_in(inside_->job)) return failed(*none);
  std::string path(part::kRecipe);
  std::string name = inside_->job.title;
  if (asked.after_op) {
    const auto after = route::recipe_path_after(inside_->job.subject.route.plan, *asked.after_op);
    if (!after) return failed(after.error());
    path = *after;
    name += fmt::format(", after op {}", *asked.after_op);
  }
  const auto number = piece_number(asked.piece);
  if (!asked.piece.empty() && !number) {
    const auto bush = bush_recipe(inside_->job.subject.route.part, asked.piece);
    if (!bush) return failed(bush.error());
    path = *bush;
    name += ", " + asked.piece;
  }
  const auto recipe = inside_->ledger.value<shape::Recipe>(path);
  if (!recipe) return failed(no_recipe(name, inside_->ledger.get("part/volume")));
  const auto made = inside_->solids().solid(*recipe).get();
  if (!made) return failed(made.error());
  const auto bytes = number ? piece_bytes(*made, name, kind, *number) : solid_bytes(*made, name, kind);
  if (!bytes) return failed(bytes.error());
  return *bytes;
}

Outcome<std::string> shop_named_in(const Text& job) {
  const auto document = text::Document::parse(job.content, job.name);
  if (!document) return failed(document.error());
  const auto name = job::shop_name_of(*document);
  if (!name) return failed(name.error());
  return *name;
}

std::size_t longest_text() {
  return text::kLargestText;
}

}  // namespace sparewright::app
