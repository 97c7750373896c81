#include "core/job/screw_text.hpp"

#include "core/handbook/screw_grades.hpp"
#include "core/handbook/socket_head_screws.hpp"
#include "core/job/vocabulary.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::job {
namespace {

using base::Code;
using quantity::Kind;
using text::TableReader;

constexpr std::string_view kHead = " socket head";  // the only head there is here so far
constexpr std::string_view kBy = " x ";             // M8x1.25 has no blanks, so it is no length

void refuse(const TableReader& in, std::string_view key, std::string_view found, std::string_view accepted) {
  in.problems().add(text::failure_at(*in.node().find(key), Code::kValueNotAccepted, found, accepted));
}

// A grade that the screw's system does not have is told at its place.
std::string read_grade(const TableReader& in, const std::string& size) {
  const auto grade = in.text("grade");
  const auto thread = handbook::read_screw_thread(size);
  if (!grade || !thread) return grade.value_or("");
  (void)in.problems().keep(text::located(handbook::screw_grade(*grade, *thread), *in.node().find("grade")));
  return *grade;
}

}  // namespace

std::optional<WrittenScrew> read_written_screw(const TableReader& in) {
  const auto screw = in.text("screw");
  if (!screw) return std::nullopt;
  const auto head = screw->find(kHead);
  if (head == std::string::npos) {
    refuse(
        in, "screw", *screw,
        "a size, its length where that counts, and its head: 1/4-20 socket head, 5/16-18 x 2 socket head, M6 "
        "x 30 socket head");
    return std::nullopt;
  }
  const std::string written = screw->substr(0, head);
  const auto by = written.find(kBy);
  if (by == std::string::npos) return WrittenScrew{written, std::nullopt};
  WrittenScrew read{written.substr(0, by), std::nullopt};
  const auto system =
      read.size.starts_with('M') ? quantity::UnitSystem::kMetric : quantity::UnitSystem::kInch;
  const auto length = in.problems().keep(
      text::located(quantity::read_number(written.substr(by + kBy.size()), Kind::kLength, system),
                    *in.node().find("screw")));
  if (!length) return std::nullopt;
  if (!(length->base > 0.0)) {
    in.problems().add(
        text::failure_at(*in.node().find("screw"), Code::kSizeNotPositive, length->typed, "more than 0"));
    return std::nullopt;
  }
  read.length = length->length();
  return read;
}

std::optional<part::ScrewHead> read_screw(const TableReader& in) {
  const auto written = read_written_screw(in);
  if (!written) return std::nullopt;
  const text::Node node = *in.node().find("screw");
  const auto screw = in.problems().keep(text::located(handbook::socket_head_screw(written->size), node));
  if (!screw) return std::nullopt;
  part::ScrewHead head;
  head.designation = *in.text("screw");
  head.size = written->size;
  if (written->length) head.length_mm = written->length->base();
  head.head_diameter_mm = screw->knurled_head_max.value_or(screw->head_max).base();
  head.head_height_mm = screw->head_height_max.base();
  head.source = handbook::cite(screw->source);
  head.stands = in.word("head", kHeads).value_or(part::HeadStands::kFlushOrBelow);
  head.grade = read_grade(in, written->size);
  if (const auto torque = in.number("torque", Kind::kTorque)) {
    if (!(torque->base > 0.0)) refuse(in, "torque", torque->typed, "more than 0");
    head.torque = quantity::Torque::from_base(torque->base);
  }
  return head;
}

}  // namespace sparewright::job
