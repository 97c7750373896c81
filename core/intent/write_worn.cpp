// What wear has done to a pair, and what the new part has to take up.
#include <optional>

#include <fmt/format.h>

#include "core/intent/writing.hpp"
#include "core/survey/worn.hpp"

namespace sparewright::intent {
namespace {

using ledger::Figure;
using ledger::Pen;
using quantity::Kind;

// One of the pair: what it was where it is sound, what it is where it is worn most.
struct Member {
  const std::string* name = nullptr;
  const Figure* sound = nullptr;  // as measuring up gives it
  const Figure* now = nullptr;    // the same where it is not worn
  bool is_worn = false;
};

Member member_of(Pen& pen, const std::string& name) {
  const Figure& sound = pen.ask(measured_path(name));
  const Figure& now = pen.ask(survey::worn_now_path(name));
  return {&name, &sound, now.known() ? &now : &sound, now.known()};
}

bool is_exact(const Figure& figure) {
  return figure.known() && figure.bound == ledger::Bound::kExact;
}

std::string who_wore(const Member& hole, const Member& shaft) {
  if (hole.is_worn && shaft.is_worn) return fmt::format("{} and {} are worn", *hole.name, *shaft.name);
  const Member& worn = hole.is_worn ? hole : shaft;
  const Member& sound = hole.is_worn ? shaft : hole;
  return fmt::format("{} is worn, {} is taken as sound", *worn.name, *sound.name);
}

}  // namespace

void write_worn_pair(Pen& pen, const Pair& pair) {
  const Member hole = member_of(pen, pair.hole);
  const Member shaft = member_of(pen, pair.shaft);
  if ((!hole.is_worn && !shaft.is_worn) || !is_exact(*hole.now) || !is_exact(*shaft.now)) return;
  const auto less = [](auto a, auto b) { return a - b; };
  pen.work("clearance now", Kind::kLength,
           fmt::format("the hole less the shaft as they are; {}", who_wore(hole, shaft)), less, *hole.now,
           *shaft.now);
  if (!is_exact(*hole.sound) || !is_exact(*shaft.sound)) return;
  const Figure& then =
      pen.work("clearance then", Kind::kLength, "the hole less the shaft, both where they are sound", less,
               *hole.sound, *shaft.sound);
  pen.work(
      "clearance grown", Kind::kLength, "the clearance now less that of the sound places",
      [](auto h, auto s, auto h_sound, auto s_sound) { return (h - s) - (h_sound - s_sound); }, *hole.now,
      *shaft.now, *hole.sound, *shaft.sound);
  pen.work(
      "new hole for the shaft as it is", hole.sound->kind,
      fmt::format("one way: {} stays as it is; a new hole of this size has the clearance of the sound places",
                  pair.shaft),
      [](auto s, auto c) { return s + c; }, *shaft.now, then);
  pen.work(
      "new shaft for the hole as it is", shaft.sound->kind,
      fmt::format(
          "one way: {} stays as it is; a new shaft of this size has the clearance of the sound places",
          pair.hole),
      [](auto h, auto c) { return h - c; }, *hole.now, then);
  pen.work(
      "hole restored", hole.sound->kind, "the other way: both are restored; the hole where it is sound",
      [](auto h) { return h; }, *hole.sound);
  pen.work(
      "shaft restored", shaft.sound->kind, "the other way: both are restored; the shaft where it is sound",
      [](auto s) { return s; }, *shaft.sound);
}

}  // namespace sparewright::intent
