#include "core/judge/screw_joint.hpp"

#include <fmt/format.h>

#include "core/handbook/tap_holes.hpp"
#include "core/handbook/thread_designation.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

constexpr auto kApart = [](auto a, auto b) {
  using std::abs;
  return abs(a - b);
};

const Figure& write_grip(Pen& pen, const part::Feature& feature, const part::Hole& hole) {
  const std::string path = part::feature_path(feature.name);
  const auto same = [](auto x) { return x; };
  if (!hole.beyond)
    return pen.work("grip", Kind::kLength, "what the screw goes through before the hole", same,
                    pen.ask(path + "/through"));
  const Figure& near = pen.work("near part", Kind::kLength, "from where it starts to the slit or split",
                                kApart, pen.ask(path + "/starts at"), pen.ask(path + "/gap/near"));
  if (!hole.counterbore) return pen.work("grip", Kind::kLength, "the near part", same, near);
  return pen.work(
      "grip", Kind::kLength, "the near part less the counterbore", [](auto n, auto c) { return n - c; }, near,
      pen.ask(path + "/counterbore depth"));
}

const Figure& write_gap(Pen& pen, const part::Feature& feature, const part::Hole& hole) {
  const std::string path = part::feature_path(feature.name);
  if (!hole.beyond) return limit(pen, "gap", 0.0, Origin::kChoice, "no slit or split in between");
  return pen.work("gap", Kind::kLength, "the slit or split, open", kApart, pen.ask(path + "/gap/near"),
                  pen.ask(path + "/gap/far"));
}

const Figure& write_there(Pen& pen, const part::Part& part, const part::Feature& feature,
                          const part::Hole& hole) {
  const std::string path = part::feature_path(feature.name);
  const Figure& start = pen.ask(path + (hole.beyond ? "/gap/far" : "/starts at"));
  if (!hole.depth)
    return pen.work("there", Kind::kLength, "from where the thread starts to the far side", kApart, start,
                    pen.ask(part::side_path(part, part::opposite(hole.into))));
  const double lead = lead_and_room_mm(hole);
  return pen.work(
      "there", Kind::kLength,
      "depth beyond where the thread starts, less the longest lead of a plug tap and one pitch for chips",
      [lead](auto depth, auto from, auto to) {
        using std::abs;
        return depth - abs(from - to) - lead;
      },
      pen.ask(path + "/depth"), pen.ask(path + "/starts at"), start);
}

void write_joint(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Hole& hole) {
  const Figure& grip = write_grip(pen, feature, hole);
  const Figure& gap = write_gap(pen, feature, hole);
  const Figure& there = write_there(pen, subject.route.part, feature, hole);
  ledger::Root written;
  written.kind = Kind::kLength;
  written.origin = Origin::kChoice;
  written.typed = hole.screw->designation;
  written.value = hole.screw->length_mm;
  const Figure& length = pen.root("screw length", written);
  const Figure& reaches = pen.work(
      "reaches", Kind::kLength, "the screw's length less what it goes through",
      [](auto l, auto g, auto s) { return l - g - s; }, length, grip, gap);
  pen.work(
      "engaged", Kind::kLength, "how far the screw reaches, at most the thread that is there",
      [](auto r, auto t) { return r < t ? r : t; }, reaches, there);
}

}  // namespace

std::string ScrewJoint::grade_words() const {
  return fmt::format("{}{}", grade.grade, grade_is_assumed ? " (assumed)" : "");
}

std::optional<ScrewJoint> screw_joint(const part::Hole& hole) {
  if (!hole.screw) return std::nullopt;
  const auto thread = handbook::read_screw_thread(hole.screw->size);
  if (!thread) return std::nullopt;
  const bool assumed = hole.screw->grade.empty();
  const std::string usual = thread->is_metric() ? "12.9" : "A574";
  const auto grade = handbook::screw_grade(assumed ? usual : hole.screw->grade, *thread);
  if (!grade) return std::nullopt;
  return ScrewJoint{*thread, *grade, assumed};
}

double lead_and_room_mm(const part::Hole& hole) {
  const auto thread = handbook::read_thread(hole.thread);
  if (!thread) return 0.0;
  const quantity::Length none =
      handbook::full_thread_in(handbook::shape_of(*thread), quantity::Length(), handbook::TapChamfer::kPlug);
  return -none.base();
}

bool is_tapped_here(const part::Hole& hole) {
  return hole.screw && (hole.beyond || hole.through);
}

std::string screw_joint_path(std::string_view feature, std::string_view local) {
  return fmt::format("check/screw joint/{}/{}", feature, local);
}

void add_screw_joints(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr || !is_tapped_here(*hole)) continue;
    stages.push_back(check_stage(subject, "screw joint", feature.name, [subject, feature](Pen& pen) {
      write_joint(pen, *subject, feature, std::get<part::Hole>(feature.shape));
    }));
  }
}

}  // namespace sparewright::judge
